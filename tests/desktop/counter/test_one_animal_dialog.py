"""One animal of a booking goes to another day; the rest, its orders and its money stay."""

from datetime import date, timedelta

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.booking_dialog import BookingDialog
from desktop.counter.one_animal_dialog import OneAnimalDialog
from shared.shop.calendar import Booking, Plan, why_full
from shared.shop.holdings import whole
from shared.shop.lots import Lot, LotShare, NewLot
from tests.db.examples import GROUND, HAM, arrived, booked, customer, line, lot_of_one, order_of
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages

DAY = date(2026, 3, 9)
WEEK = timedelta(7)


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """Three hogs: Anna's first two, Bert's third, each with lines and $50 paid down."""
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = customer(work), customer(work, "Bert Iversen")
        shares = (
            LotShare(1, anna.id, holdings=(*whole(0), *whole(1)), deposit_asked=5_000),
            LotShare(2, bert.id, holdings=whole(2), deposit_asked=5_000),
        )
        made = booked(work, NewLot("pork", 3, DAY, anna.id, shares, note="gate code 4"))
        for share, choice in ((1, HAM), (2, GROUND)):
            line(work, order_of(work, made, share), choice)
            work.payments.take(order_of(work, made, share).id, "deposit", "check", 5_000)
        berts = order_of(work, made, 2)
        work.orders.save_note(berts.id, "no salt", None, version=berts.version)
        work.calendar.save_plan(Plan({DAY.weekday(): {"pork": 3}}))
        work.commit()
    return made


def opened(qtbot: QtBot, bench: Bench, lot: Lot) -> tuple[BookingDialog, OneAnimalDialog]:
    with bench.store.read() as work:
        now = work.lots.get(lot.id)
    assert now is not None
    over = BookingDialog(bench, now.id)
    qtbot.addWidget(over)
    over.show()
    assert over.one.isVisible()
    over.one.click()
    return over, over.one_dialog


def test_its_only_owner_takes_his_order_and_his_deposit_along(
    qtbot: QtBot, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    with bench.store.read() as work:
        assert why_full(work.calendar.filled(DAY, DAY), Booking(DAY, "pork", 1)) != ()
    over, dialog = opened(qtbot, bench, lot)
    assert unnamed(dialog) == []
    dialog.which.set_value(2)
    dialog.day.set_value(DAY + WEEK)
    dialog.try_it()
    made = dialog.made
    assert made is not None
    assert messages.told == [f"It is lot {made.number} on Mon Mar 16, 2026 now. Tell its owners."]
    assert not over.isVisible()
    with bench.store.read() as work:
        old, stays = order_of(work, lot, 2), order_of(work, lot, 1)
        (new,) = work.orders.of_lot(made.id)
        assert (made.head, made.day, made.note) == (1, DAY + WEEK, "gate code 4")
        assert made.shares[0].holdings == whole(0)
        assert [one.cut for one in new.choices] == ["ground"]
        assert new.note == "no salt"
        assert (work.payments.held(old.id), work.payments.held(new.id)) == (0, 5_000)
        assert work.payments.held(stays.id) == 5_000
        assert old.closed_at is not None
        assert [one.cut for one in stays.choices] == ["whole_ham"]
        states = [(one.state, one.held_for) for one in work.animals.of_lot(lot.id)]
        assert states[:2] == [("booked", ""), ("booked", "")]
        assert states[2] == ("not_come", f"on Mon Mar 16, 2026, lot {made.number}")
        assert why_full(work.calendar.filled(DAY, DAY), Booking(DAY, "pork", 1)) == ()
        assert sum(work.books.balances().values()) == 0


def test_an_owner_of_more_keeps_his_order_where_it_is(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    _over, dialog = opened(qtbot, bench, lot)
    dialog.which.set_value(0)
    dialog.day.set_value(DAY + WEEK)
    dialog.try_it()
    assert dialog.made is not None
    with bench.store.read() as work:
        (new,) = work.orders.of_lot(dialog.made.id)
        assert new.choices == ()
        assert work.payments.held(order_of(work, lot, 1).id) == 5_000
        assert order_of(work, lot, 1).closed_at is None
        assert dialog.made.shares[0].deposit_asked == 0


def test_a_full_day_takes_it_only_with_a_reason(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        for _ in range(3):
            lot_of_one(work, "Carla Olsen", DAY + WEEK)
        work.commit()
    _over, dialog = opened(qtbot, bench, lot)
    dialog.day.set_value(DAY)
    dialog.try_it()
    assert dialog.day.complaint.text() == "It is booked on that day already."
    dialog.day.set_value(DAY + WEEK)
    dialog.try_it()
    assert "too full" in dialog.overrule.complaint.text()
    assert dialog.made is None
    dialog.overrule.set_text("the trailer holds two")
    dialog.try_it()
    assert dialog.made is not None


def test_one_that_has_come_or_is_the_only_one_isnt_offered(
    qtbot: QtBot, bench: Bench, lot: Lot
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        arrived(work, lot)
        alone = lot_of_one(work, "Carla Olsen", DAY)
        work.commit()
    _over, dialog = opened(qtbot, bench, lot)
    assert [dialog.which.value(), dialog._named(1)] == [1, "No. 2 of 3, Anna Berg"]
    other = BookingDialog(bench, alone.id)
    qtbot.addWidget(other)
    other.show()
    assert not other.one.isVisible()
