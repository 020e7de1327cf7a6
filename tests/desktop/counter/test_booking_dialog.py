"""A booking changed afterwards: moved, named, shared anew, refused after the kill, cancelled."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.booking_dialog import BookingDialog, free_place
from shared.shop.calendar import Plan
from shared.shop.holdings import split_quarter
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.orders import Order
from tests.db.examples import (
    arrived,
    booked,
    customer,
    lot_of_halves,
    lot_of_one,
    order_of,
    weighed,
)
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages

WEEK = timedelta(7)


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """A hog of two owners on a day with one place, and the next week's place taken."""
    with bench.store.work(bench.person, bench.station) as work:
        made = lot_of_halves(work)
        lot_of_one(work, "Carla Olsen", made.day + WEEK)
        work.calendar.save_plan(Plan({made.day.weekday(): {"pork": 1}}))
        work.commit()
    return made


def opened(qtbot: QtBot, bench: Bench, lot: Lot) -> BookingDialog:
    dialog = BookingDialog(bench, lot.id)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def kept(bench: Bench, lot: Lot) -> Lot:
    with bench.store.read() as work:
        found = work.lots.get(lot.id)
    assert found is not None
    return found


def test_its_own_place_is_not_counted_against_it(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    dialog = opened(qtbot, bench, lot)
    assert unnamed(dialog) == []
    dialog.note.set_text("gate code 4")
    dialog.keeps.set_text("hide")
    dialog.try_it()
    now = kept(bench, lot)
    assert (now.note, now.keeps, now.day, now.shares) == (
        "gate code 4",
        "hide",
        lot.day,
        lot.shares,
    )


def test_a_full_day_takes_it_only_with_a_reason(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    dialog = opened(qtbot, bench, lot)
    dialog.day.set_value(lot.day + WEEK)
    dialog.day.changed.emit()
    assert "1 of 1 places taken" in dialog.room.said.text()
    assert not dialog.room.wait.isVisible()
    dialog.try_it()
    assert dialog.overrule.problem()
    assert kept(bench, lot).day == lot.day
    dialog.room.later.click()
    assert dialog.day.value() == lot.day + 2 * WEEK
    dialog.try_it()
    assert kept(bench, lot).day == lot.day + 2 * WEEK


def test_the_place_taken_meanwhile_is_told(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    dialog = opened(qtbot, bench, lot)
    day = lot.day + 2 * WEEK
    dialog.day.set_value(day)
    dialog.day.changed.emit()
    assert not dialog.room.full
    with bench.store.work(bench.person, bench.station) as work:
        lot_of_one(work, "Dora Lind", day)
        work.commit()
    dialog.try_it()
    assert "Another station" in dialog.refusal.text()
    assert kept(bench, lot).day == lot.day


def test_shared_anew_and_an_owner_named(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    dialog = opened(qtbot, bench, lot)
    dialog.shares.set_value("split_quarters")
    dialog.shares.changed.emit()
    assert [one.isVisible() for one in dialog.owners[:5]] == [True] * 4 + [False]
    dialog.owners[3].set_text("Eva Holm 555 010 8888")
    dialog.try_it()
    now = kept(bench, lot)
    assert [one.owner for one in now.shares] == ["Anna Berg", "Bert Iversen", "", "Eva Holm"]
    assert now.shares[0].order_id == lot.shares[0].order_id


def test_after_the_kill_it_says_what_is_fixed(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        weighed(work, arrived(work, lot), "185")
        work.commit()
    dialog = opened(qtbot, bench, lot)
    assert "After the kill the day, the kind and the owners are fixed." in dialog.lead.text()
    assert dialog.day.editor.isEnabled() is False or dialog.day.line.isReadOnly()
    assert not dialog.cancel.isVisible()
    with bench.store.work(bench.person, bench.station) as work:
        found = work.lots.save_details(replace(kept(bench, lot), day=lot.day + WEEK))
    assert not isinstance(found, Lot)


def test_cancelled_it_frees_the_place_for_who_waits(
    qtbot: QtBot, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        waits = customer(work, "Finn Dahl", "(555) 010-0999")
        work.waiting.add(waits.id, "pork", 1, lot.day)
        work.commit()
    dialog = opened(qtbot, bench, lot)
    messages.answers = ["hog died", True]
    dialog.cancel.click()
    assert dialog.lot.cancelled == "hog died"
    free_place(bench, dialog.lot)
    assert "Finn Dahl (555) 010-0999 waits longest" in str(messages.asked[-1])
    with bench.store.read() as work:
        assert [one.state for one in work.waiting.list("pork")] == ["told"]
        assert work.calendar.filled(lot.day, lot.day).bookings == ()


def led_quarters(bench: Bench) -> Lot:
    """A hog of four, 2 cut as 1 says and 4 as 3; all to be named but the first two."""
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = customer(work), customer(work, "Bert Iversen")
        shares = tuple(
            LotShare(number, who, holdings=split_quarter(0, 1 + (number > 2)))
            for number, who in enumerate((anna.id, bert.id, None, None), start=1)
        )
        lot = booked(work, NewLot("pork", 1, date(2026, 3, 9), anna.id, shares))
        for share in (2, 4):
            order = order_of(work, lot, share)
            done = work.orders.lead(order.id, share - 1, version=order.version)
            assert isinstance(done, Order)
        work.commit()
    return lot


def test_shared_anew_who_is_cut_as_another_says_stays_so(qtbot: QtBot, bench: Bench) -> None:
    lot = led_quarters(bench)
    dialog = opened(qtbot, bench, lot)
    dialog.shares.set_value("split_quarters")
    dialog._fit()
    dialog.try_it()
    assert not dialog.isVisible()
    assert [one.leader for one in kept(bench, lot).shares] == [None, 1, None, 3]


def test_shared_so_that_nobody_is_led_any_more_is_said_first(qtbot: QtBot, bench: Bench) -> None:
    lot = led_quarters(bench)
    dialog = opened(qtbot, bench, lot)
    dialog.shares.set_value("halves")
    dialog._fit()
    dialog.try_it()
    assert dialog.refusal.text() == (
        "Bert Iversen is cut as Anna Berg says; shared so that ends, and Bert Iversen is asked for "
        "cuts. Share 4 is cut as Share 3 says; shared so that ends, and Share 4 is asked for cuts. "
        "Keep it again if that is meant."
    )
    assert [one.leader for one in kept(bench, lot).shares] == [None, 1, None, 3]
    dialog.try_it()
    assert [one.leader for one in kept(bench, lot).shares] == [None, None]
