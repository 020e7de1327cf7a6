"""Animals: arrival and tags, states with reasons, losses kept when taken back."""

from dataclasses import replace

from db.unit_of_work import Work
from shared.carcass.carcass import Gone, Measured
from shared.shop.animals import Animal, Loss
from shared.shop.holdings import whole
from shared.shop.lots import LotShare, NewLot
from shared.shop.problems import MoveRefused, Refused, StaleEdit
from shared.units import Weight
from tests.db.examples import (
    KILL_DAY,
    arrived,
    booked,
    customer,
    lot_of_halves,
    lot_of_one,
    moved,
    weighed,
)
from tests.store_fixture import Clock


def test_an_animal_arrives_tagged(work: Work, clock: Clock) -> None:
    lot = lot_of_halves(work)
    animal = lot.animals[0]
    made = work.animals.arrive(
        animal.id, tag=" 114 ", sex="barrow", age="under_30", skin="scalded", version=1
    )
    assert isinstance(made, Animal)
    assert (made.tag, made.state, made.sex, made.skin) == ("114", "arrived", "barrow", "scalded")
    assert made.arrived_at == clock.now
    assert work.animals.by_tag("114") == (made,)
    again = work.animals.arrive(animal.id, tag="115", version=made.version)
    assert again == MoveRefused("no_such_move", "arrived", "arrived")


def test_a_tag_is_carried_by_one_animal_in_the_house(work: Work) -> None:
    first = arrived(work, lot_of_one(work), "A-7")
    other = lot_of_one(work)
    refused = work.animals.arrive(other.animals[0].id, tag="a-7", version=1)
    assert refused == Refused("tag_taken", {"tag": "a-7", "lot": "1", "animal": "1"})
    assert work.animals.arrive(other.animals[0].id, tag=" ", version=1) == Refused("tag_missing")
    weighed(work, first, "185")
    moved(work, first.id, "passed", "hanging", "on_block", "cut")
    assert isinstance(work.animals.arrive(other.animals[0].id, tag="a-7", version=1), Animal)
    assert [one.lot_id for one in work.animals.by_tag("A-7")] == [other.id, first.lot_id]


def test_from_the_pen_to_cut(work: Work, clock: Clock) -> None:
    animal = arrived(work, lot_of_halves(work))
    weighed(work, animal, "92.5", 1)
    clock.pass_by(hours=1)
    hanging = moved(work, animal.id, "passed", "hanging")
    assert hanging.hung_at == work.now
    assert moved(work, animal.id, "on_block", "cut").state == "cut"
    skipped = work.animals.move(animal.id, "hanging", version=1)
    assert skipped == MoveRefused("no_such_move", "cut", "hanging")


def test_going_back_needs_a_reason_and_it_is_kept(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    back = work.animals.move(animal.id, "booked", version=animal.version)
    assert back == MoveRefused("reason_missing", "arrived", "booked")
    back = work.animals.move(animal.id, "booked", reason="wrong truck", version=animal.version)
    assert isinstance(back, Animal)
    assert back.state == "booked"
    change = work.changes.of("animal", animal.id)[0]
    assert (change.what, change.reason) == ("booked", "wrong truck")


def test_an_inspected_animal_is_held_a_custom_one_is_not(work: Work) -> None:
    custom = arrived(work, lot_of_halves(work), "1")
    held = work.animals.move(custom.id, "held", reason="lymph node", version=custom.version)
    assert held == MoveRefused("no_such_move", "arrived", "held")
    refused = work.animals.move(custom.id, "refused", reason="down", version=custom.version)
    assert isinstance(refused, Animal)
    assert refused.held_for == "down"
    anna = customer(work)
    shares = (LotShare(1, anna.id, holdings=whole(0)),)
    lot = booked(work, NewLot("beef", 1, KILL_DAY, anna.id, shares, regime="inspected"))
    animal = arrived(work, lot, "2")
    held = work.animals.move(animal.id, "held", reason="lymph node", version=animal.version)
    assert isinstance(held, Animal)
    assert held.held_for == "lymph node"
    locked = work.animals.move(animal.id, "hanging", version=held.version)
    assert locked == MoveRefused("no_such_move", "held", "hanging")
    assert moved(work, animal.id, "passed").held_for == ""


def test_a_stale_change_is_refused(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    changed = work.animals.change(replace(animal, place="rail 3", split=True))
    assert isinstance(changed, Animal)
    assert (changed.place, changed.split) == ("rail 3", True)
    assert isinstance(work.animals.change(animal), StaleEdit)
    moved_late = work.animals.move(animal.id, "weighed", version=animal.version)
    assert isinstance(moved_late, StaleEdit)


def test_a_loss_needs_a_reason_and_stays_when_taken_back(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    assert work.animals.record_loss(animal.id, Gone("liver", 0, None, " ")) == Refused(
        "reason_missing"
    )
    gone = Gone("picnic", 2, Weight(95, "lb", -1), "abscess")
    loss = work.animals.record_loss(animal.id, gone)
    assert isinstance(loss, Loss)
    assert (loss.gone, loss.person, loss.void) == (gone, "Test", "")
    assert work.animals.void_loss(loss.id, "") == Refused("reason_missing")
    back = work.animals.void_loss(loss.id, "other animal's")
    assert isinstance(back, Loss)
    assert work.animals.losses(animal.id) == (back,)
    assert work.animals.void_loss(loss.id, "again") == Refused("already_void")


def test_measured_again_the_last_figure_holds(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    for length in (2_743_200, 2_755_900):
        work.animals.measure(animal.id, Measured("rib", 1, length))
    assert work.animals.measured(animal.id) == (Measured("rib", 1, 2_755_900),)


def test_the_list_is_filtered_counted_and_paged(work: Work) -> None:
    lots = [lot_of_one(work, name) for name in ("Ada", "Ben", "Cleo")]
    for tag, lot in zip("cab", lots, strict=True):
        arrived(work, lot, tag)
    weighed(work, work.animals.of_lot(lots[1].id)[0], "190.5")
    assert [one.tag for one in work.animals.list(sort="tag")] == ["a", "b", "c"]
    assert [one.tag for one in work.animals.list(sort="tag", descending=True)] == ["c", "b", "a"]
    assert [one.producer for one in work.animals.list(sort="producer")] == ["Ada", "Ben", "Cleo"]
    assert [one.tag for one in work.animals.list(states=("weighed",))] == ["a"]
    assert work.animals.count(states=("arrived", "weighed")) == 3
    assert work.animals.count(text="ben") == 1
    assert [one.tag for one in work.animals.list(sort="tag", limit=1, offset=1)] == ["b"]
    (row,) = work.animals.list(text="ben")
    assert row.hot_ng == Weight(1905, "lb", -1).nanograms
    assert row.live_ng is None
