"""Arrival facts, deer, holds and dressing: the last row holds, and none is ever changed."""

from datetime import date
from fractions import Fraction

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from db.unit_of_work import Work
from shared.carcass import anatomy
from shared.carcass.carcass import Gone
from shared.carcass.dressing import Dressing, hung_fraction
from shared.carcass.weights import side_weights
from shared.shop.animals import Loss
from shared.shop.arrival import Arrival, DeerIntake, Hold, standing
from shared.shop.problems import MoveRefused, Refused
from tests.db import examples


def test_the_last_facts_hold_with_who_wrote_them(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    assert work.arrivals.of(animal.id) is None
    work.arrivals.write(animal.id, Arrival("lame", "left hind"))
    found = work.arrivals.write(animal.id, Arrival("sound", healthy=True, statement_of="Anna"))
    assert (found.condition, found.healthy, found.withdrawn_drugs) == ("sound", True, None)
    assert (found.person, found.station, found.at) == ("Test", "Bench", work.now)


def test_a_deers_intake_is_kept_whole(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work, "deer"))
    given = DeerIntake(
        "Hal Moss", "H-1", "T-9", date(2026, 11, 21), "Alder", "keep", "leave", "keep", "batch", "H"
    )
    found = work.arrivals.write_deer(animal.id, given)
    assert (found.license, found.killed_on, found.county) == ("H-1", date(2026, 11, 21), "Alder")
    assert (found.cape, found.head, found.antlers) == ("keep", "leave", "keep")
    assert (found.meat, found.signed_by) == ("batch", "H")


def test_a_held_deer_isnt_cut_until_its_result(work: Work) -> None:
    lot = examples.lot_of_halves(work, "deer")
    animal = examples.arrived(work, lot)
    examples.weighed(work, animal, "96")
    hung = examples.moved(work, animal.id, "passed", "hanging")
    assert isinstance(work.arrivals.hold(animal.id, "disease_test", "  "), Refused)
    assert isinstance(work.arrivals.hold(animal.id, "disease_test", "sample 77"), Hold)
    refused = work.animals.move(animal.id, "on_block", version=hung.version)
    assert refused == MoveRefused("on_hold", "hanging", "on_block")
    assert isinstance(work.arrivals.let_go(animal.id, "other", "no"), Refused)
    assert isinstance(work.arrivals.let_go(animal.id, "disease_test", "not detected"), Hold)
    assert standing(work.arrivals.holds(animal.id)) == ()
    examples.moved(work, animal.id, "on_block")


def test_a_carcass_weighed_with_its_head_is_cut_as_a_lighter_one(work: Work) -> None:
    lot = examples.lot_of_halves(work)
    animal = examples.arrived(work, lot)
    for side in (1, 2):
        examples.weighed(work, animal, "100", side)
    (usual,) = work.lots.question(lot.id).carcasses
    work.arrivals.dress(animal.id, Dressing(head="on"))
    (with_head,) = work.lots.question(lot.id).carcasses
    assert with_head.dressing == Dressing(head="on")
    animal_data = anatomy.catalogue("pork")
    hung = hung_fraction(animal_data, "unknown", with_head.dressing)
    before, after = (side_weights(one, animal_data)[0] for one in (usual, with_head))
    assert hung > 1
    assert abs(Fraction(before.nanograms, after.nanograms) - hung) < Fraction(1, 10**9)
    work.arrivals.dress(animal.id, Dressing())
    assert work.lots.question(lot.id).carcasses == (usual,)


def test_who_took_a_part_is_kept_beside_it(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    loss = work.animals.record_loss(animal.id, Gone("liver", 0, None, "flukes"))
    assert isinstance(loss, Loss)
    work.arrivals.found_by(loss.id, "condemned")
    assert work.arrivals.findings([loss.id]) == {loss.id: "condemned"}


@pytest.mark.parametrize("what", ["UPDATE arrivals SET note = 'x'", "DELETE FROM arrivals"])
def test_what_was_written_is_never_changed(work: Work, what: str) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    work.arrivals.write(animal.id, Arrival("sound"))
    with pytest.raises(IntegrityError, match="rows are locked"):
        work.arrivals._desk.connection.execute(text(what))  # nobody else may try


def test_the_list_tells_an_animal_on_hold(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))

    def told() -> list[bool]:
        return [one.on_hold for one in work.animals.list() if one.id == animal.id]

    assert told() == [False]
    work.arrivals.hold(animal.id, "disease_test", "sample 77")
    work.arrivals.hold(animal.id, "other", "the owner rings")
    assert told() == [True]
    work.arrivals.let_go(animal.id, "other", "he rang")
    assert told() == [True]
    work.arrivals.let_go(animal.id, "disease_test", "not detected")
    assert told() == [False]
