"""What is gone, a line each; a primal lost whole is one."""

from datetime import date

from desktop.bench import Bench
from desktop.rail.gone_words import gone_lines
from desktop.rail.seen import see
from shared.carcass import anatomy
from shared.carcass.carcass import Gone
from shared.shop.animals import Loss
from shared.units import Weight
from tests.db import examples


def test_a_primal_lost_whole_is_one_line_and_pounds_are_said(bench: Bench) -> None:
    legs = [
        one.code
        for one in anatomy.catalogue("pork").parts.values()
        if one.primal == "ham" and one.per == "side"
    ]
    with bench.store.work(bench.person, bench.station) as work:
        animal = examples.arrived(work, examples.lot_of_halves(work, day=date(2026, 3, 2)))
        liver = work.animals.record_loss(animal.id, Gone("liver", 0, None, "flukes"))
        assert isinstance(liver, Loss)
        work.arrivals.found_by(liver.id, "condemned")
        for part in legs:
            work.animals.record_loss(animal.id, Gone(part, 2, None, "abscess"))
        jowl = Gone("jowl", 1, Weight(2, "lb"), "bruise")
        trimmed = work.animals.record_loss(animal.id, jowl)
        assert isinstance(trimmed, Loss)
        work.arrivals.found_by(trimmed.id, "trimmed")
        work.commit()
    seen = see(bench, animal.id)
    assert seen is not None
    assert len(legs) > 1
    told = [one.replace("\u00a0", " ") for one in gone_lines(seen, bench.words)]
    assert told == [
        "Condemned: liver, all of it. flukes",
        "Gone: all of the ham, side 2. abscess",
        "Trimmed off: jowl, side 1, 2 lb. bruise",
    ]
