"""Booking on a full day: what is left is said, the next day taken, overruled, or waited for."""

import threading
from collections.abc import Collection, Mapping
from datetime import date, timedelta

import pytest
from pytestqt.qtbot import QtBot
from sqlalchemy import ColumnElement, Connection, text

from db.repositories import calendar
from db.repositories.block_minutes import Minutes
from desktop.bench import Bench
from desktop.counter.book_dialog import BookDialog
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.place import BOOKING
from shared.shop.calendar import Comes, Plan
from tests.db.examples import customer, lot_of_halves
from tests.desktop.counter.opened_counter import opened as opened_counter


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench) -> BookDialog:
    """Two hog places a week, on the weekday of the booked lot; one is taken."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.calendar.save_plan(Plan({lot.day.weekday(): {"pork": 2}}))
        work.commit()
    made = BookDialog(bench)
    qtbot.addWidget(made)
    made.day.set_value(lot.day)
    made.day.changed.emit()
    made.producer.set_text("Carla Olsen 555 010 7777")
    made.show()
    return made


def asked(dialog: BookDialog, head: int) -> None:
    dialog.head.set_value(head)
    dialog.head.changed.emit()


def test_what_is_left_is_in_view(dialog: BookDialog) -> None:
    assert "can still take 1 hog." in dialog.room.said.text()
    assert not dialog.overrule.isVisible()
    assert not dialog.room.wait.isVisible()


def test_a_full_day_offers_the_next(dialog: BookDialog) -> None:
    day = dialog.day.value()
    assert day is not None
    asked(dialog, 2)
    assert "1 of 2 places taken" in dialog.room.said.text()
    assert dialog.overrule.isVisible()
    dialog.room.later.click()
    assert dialog.day.value() == day + timedelta(7)
    assert "can still take 2 hogs." in dialog.room.said.text()


def test_a_full_day_is_overruled_only_with_a_reason(bench: Bench, dialog: BookDialog) -> None:
    asked(dialog, 2)
    dialog.try_it()
    assert dialog.lot is None
    assert dialog.overrule.problem()
    dialog.overrule.set_text("hurt animal")
    dialog.overrule.changed.emit()
    dialog.try_it()
    assert dialog.lot is not None, dialog.grid.problems()
    with bench.store.read() as work:
        run = work._connection.execute  # pyright: ignore[reportPrivateUsage]
        kept = run(text("SELECT lot_id, codes, reason FROM overrules")).all()
    assert [tuple(row) for row in kept] == [(dialog.lot.id, "places", "hurt animal")]


def test_who_can_not_be_booked_waits(bench: Bench, dialog: BookDialog) -> None:
    asked(dialog, 2)
    dialog.skin.set_value("scalded")
    dialog.regime.set_value("inspected")
    dialog.keeps.set_text("the heads")
    dialog.room.wait.click()
    with bench.store.read() as work:
        (waits,) = work.waiting.list("pork")
    assert (waits.customer, waits.head, waits.from_day) == (
        "Carla Olsen",
        2,
        dialog.day.value(),
    )
    assert waits.comes == Comes("scalded", "inspected", "the heads")
    assert dialog.lot is None


def opened(qtbot: QtBot, bench: Bench, plan: Plan) -> BookDialog:
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(plan)
        work.commit()
    made = BookDialog(bench)
    qtbot.addWidget(made)
    made.show()
    return made


def test_it_opens_on_the_next_day_that_takes_one(qtbot: QtBot, bench: Bench) -> None:
    """Hogs are killed the day after tomorrow, lambs the day after that; today takes nothing."""
    today = bench.today()
    hogs, lambs = today + timedelta(2), today + timedelta(3)
    week = {hogs.weekday(): {"pork": 2}, lambs.weekday(): {"lamb": 5}}
    dialog = opened(qtbot, bench, Plan(week))
    assert dialog.day.value() == hogs
    assert "can still take 2 hogs." in dialog.room.said.text()
    assert not dialog.overrule.isVisible()
    assert not dialog.room.later.isVisible()
    dialog.species.set_value("lamb")
    dialog.species.changed.emit()
    assert dialog.day.value() == lambs


def test_a_day_that_was_typed_stays(qtbot: QtBot, bench: Bench) -> None:
    today = bench.today()
    free = today + timedelta(2)
    dialog = opened(qtbot, bench, Plan({free.weekday(): {"pork": 2}}))
    dialog.day.set_value(today)
    dialog.day.changed.emit()
    dialog.species.set_value("lamb")
    dialog.species.changed.emit()
    assert dialog.day.value() == today
    assert dialog.overrule.isVisible()


@pytest.mark.parametrize("takes", [{}, {"pork": 1}])
def test_it_opens_on_today_where_today_takes_it_or_no_week_is_kept(
    qtbot: QtBot, bench: Bench, takes: dict[str, int]
) -> None:
    week = dict.fromkeys(range(7), takes) if takes else {}
    assert opened(qtbot, bench, Plan(week)).day.value() == bench.today()


@pytest.fixture
def counted_on(monkeypatch: pytest.MonkeyPatch) -> list[bool]:
    """Whether each count of orders' lines was made on the window's thread."""
    found: list[bool] = []
    real = calendar.cut_minutes

    def counted(
        connection: Connection,
        entered: Minutes,
        usual: Mapping[str, int],
        which: Collection[ColumnElement[bool]],
    ) -> dict[tuple[date, str], int]:
        found.append(threading.current_thread() is threading.main_thread())
        return real(connection, entered, usual, which)

    monkeypatch.setattr(calendar, "cut_minutes", counted)
    return found


def busy_today(bench: Bench) -> Plan:
    """One hog today; a hog's usual has a line of chops on each side: 20 of tomorrow's 25 minutes.

    A second hog, 20 more, doesn't fit: 40 of 25.
    """
    with bench.store.work(bench.person, bench.station) as work:
        lot_of_halves(work, day=bench.today())
        work.commit()
    week = {weekday: {"pork": 5} for weekday in range(7)}
    return Plan(week, block_minutes=25, minutes_a_cut={"pork": {"steaks": 10}})


def test_lines_are_counted_on_a_worker_and_then_another_day_is_proposed(
    qtbot: QtBot, bench: Bench, counted_on: list[bool]
) -> None:
    dialog = opened(qtbot, bench, busy_today(bench))
    assert dialog.day.value() == bench.today()
    qtbot.waitUntil(lambda: dialog.day.value() == bench.today() + timedelta(1))
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert counted_on
    assert not any(counted_on)
    dialog.day.set_value(bench.today())
    dialog.day.changed.emit()
    qtbot.waitUntil(lambda: [one.code for one in dialog.room.full] == ["block"])
    assert "20 of 25 minutes" in dialog.room.said.text()
    assert dialog.overrule.isVisible()
    assert not any(counted_on)


def test_who_confirms_before_the_lines_are_counted_is_told_all_the_same(
    qtbot: QtBot, bench: Bench
) -> None:
    dialog = opened(qtbot, bench, busy_today(bench))
    dialog.producer.set_text("Carla Olsen 555 010 7777")
    dialog.try_it()
    assert dialog.lot is None
    assert [one.code for one in dialog.room.full] == ["block"]
    assert dialog.overrule.problem()
    dialog.overrule.set_text("we stay late")
    dialog.overrule.changed.emit()
    dialog.try_it()
    assert dialog.lot is not None


def test_who_waits_is_booked_with_what_he_said_and_waits_no_more(
    qtbot: QtBot, bench: Bench
) -> None:
    day = bench.today() + timedelta(days=3)
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(Plan(week={day.weekday(): {"lamb": 5, "pork": 5}}))
        cora = customer(work, "Cora Lind")
        comes = Comes("scalded", "inspected", "the heads")
        work.waiting.add(cora.id, "pork", 3, day, comes=comes)
        work.commit()
    place = opened_counter(qtbot, bench)
    place.ring()
    assert isinstance(place.dialog, CallsDialog)
    (row,) = place.dialog.table.rows.rows()
    place.dialog.table.picked.emit(row)
    dialog = place.dialog
    assert isinstance(dialog, BookDialog)
    assert (dialog.species.value(), dialog.head.value()) == ("pork", 3)
    assert dialog.producer.value() == cora.id
    assert dialog.producer.text().startswith("Cora Lind")
    assert (dialog.skin.value(), dialog.regime.value()) == ("scalded", "inspected")
    assert dialog.keeps.value() == "the heads"
    assert dialog.day.value() == day
    dialog.try_it()
    assert dialog.lot is not None, dialog.grid.problems()
    assert (dialog.lot.head, dialog.lot.skin, dialog.lot.keeps) == (3, "scalded", "the heads")
    with bench.store.read() as work:
        assert work.waiting.list() == ()


def test_a_booking_begun_from_the_waiting_list_is_still_of_it_after_a_kill(
    qtbot: QtBot, bench: Bench
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        cora = customer(work, "Cora Lind")
        work.waiting.add(cora.id, "pork", 3, bench.today())
        work.commit()
    with bench.store.read() as work:
        (waits,) = work.waiting.list()
    place = opened_counter(qtbot, bench)
    place.book(waits)
    kept = bench.journal.found(BOOKING)
    assert kept is not None
    assert isinstance(place.dialog, BookDialog)
    place.dialog.reject()
    assert bench.journal.found(BOOKING) is None
    bench.journal.note(BOOKING, kept)
    again = opened_counter(qtbot, bench).dialog
    assert isinstance(again, BookDialog)
    assert again.waits == waits
    assert again.producer.value() == cora.id
    assert again.head.value() == 3
    again.reject()
