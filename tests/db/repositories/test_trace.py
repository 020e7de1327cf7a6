"""From a tag or a number to everything that is kept of a lot."""

from sqlalchemy import event as sql_event

from db.unit_of_work import Work
from shared.carcass.carcass import Gone
from shared.shop.animals import Loss
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.trace import Trace, events
from shared.units import Weight, weight_text
from tests.db.examples import (
    arrived,
    at_the_block,
    line,
    lot_of_halves,
    moved,
    order_of,
    package,
    weighed,
)
from tests.db.repositories.test_counted import by_count


def full(work: Work) -> Trace:
    lot = lot_of_halves(work)
    animal = arrived(work, lot)
    weighed(work, animal, "92.5", 1)
    weighed(work, animal, "93", 2)
    moved(work, animal.id, "passed", "hanging")
    loss = work.animals.record_loss(animal.id, Gone("liver", 0, None, "abscess", False))
    assert isinstance(loss, Loss)
    order = order_of(work, lot)
    made = line(work, order)
    package(work, order, made)
    second = package(work, order, made, "15.5")
    work.packages.void(second.id, "wrong owner")
    found = work.trace.of_lot(lot.id)
    assert found is not None
    return found


def test_every_number_leads_to_the_lot(work: Work) -> None:
    trace = full(work)
    lot, order, label = trace.lot, trace.orders[0], trace.packages[0]
    tag = work.trace.find("114")
    assert [(one.kind, one.lot_id, one.animal_id) for one in tag if one.kind == "tag"] == [
        ("tag", lot.id, lot.animals[0].id)
    ]
    for kind, number in (
        ("lot", lot.number),
        ("order", order.number),
        ("label", label.label_number),
    ):
        kinds = {one.kind: one.lot_id for one in work.trace.find(f"#{number}")}
        assert kinds[kind] == lot.id


def test_what_nobody_has_leads_nowhere(work: Work) -> None:
    full(work)
    assert work.trace.find("no such tag") == ()
    assert work.trace.find("99999") == ()
    assert work.trace.find("  ") == ()
    assert work.trace.of_lot(999) is None


def test_events_tell_it_from_booking_to_package(work: Work) -> None:
    told = events(full(work))
    what = [one.what for one in told]
    assert what[0] == "booked"
    assert {"arrived", "weight", "passed", "hanging", "loss_all", "packed", "label_void"} <= set(
        what
    )
    # The two hot weights once each: the change rows of weighings aren't told again.
    assert what.count("weight") == 2
    assert "weighed" not in what
    packed = next(one for one in told if one.what == "packed")
    assert packed.data == {"count": "1", "pounds": "16.25\u00a0lb", "first": "1", "last": "2"}


def test_a_count_is_told_and_that_it_was_made_void(work: Work) -> None:
    trace = full(work)
    by_count(work)
    order = trace.orders[0]
    choice = order.choices[0]
    with at_the_block(work, order.id):
        made = work.counted.add(NewCount(order.id, choice.line, choice.cut, "Whole ham", 12))
    assert isinstance(made, CountedPackages)
    work.counted.void(made.id, "ten of them")
    again = work.trace.of_lot(trace.lot.id)
    assert again is not None
    told = {one.what: (one.reason, one.data) for one in events(again)}
    data = {"count": "12", "product": "Whole ham"}
    assert told["counted"] == ("", data)
    assert told["count_void"] == ("ten of them", data)


def test_a_corrected_weight_is_told_with_its_reason(work: Work) -> None:
    trace = full(work)
    first = trace.weighings[0]
    work.weighings.correct(first.id, Weight.from_pounds("91.5"), "hook not taken off")
    again = work.trace.of_lot(trace.lot.id)
    assert again is not None
    corrected = [one for one in events(again) if one.what == "weight_corrected"]
    assert [(one.data["weight"], one.reason) for one in corrected] == [
        (weight_text(Weight.from_pounds("91.5")), "hook not taken off")
    ]


def test_the_number_of_queries_does_not_grow_with_the_lot(work: Work) -> None:
    small = full(work)
    counted: list[str] = []
    connection = work._connection  # pyright: ignore

    def count(*said: object) -> None:
        counted.append(str(said[2]))

    sql_event.listen(connection, "before_cursor_execute", count)
    work.trace.of_lot(small.lot.id)
    few = len(counted)
    order = order_of(work, small.lot)
    for _ in range(5):
        package(work, order, order.choices[0])
    counted.clear()
    work.trace.of_lot(small.lot.id)
    assert len(counted) == few
