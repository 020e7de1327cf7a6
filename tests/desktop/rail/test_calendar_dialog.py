"""The kill calendar: seen, gone through by keyboard, and a booking moved by key and by drop."""

from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, QMimeData, QPointF, Qt
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.calendar_days import cells_of
from desktop.rail.calendar_dialog import CalendarDialog
from desktop.rail.calendar_grid import LOT, DayCell
from shared.shop.calendar import OtherDay, Plan
from shared.shop.lots import Lot
from tests.db.examples import lot_of_one
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """A hog today; one place a day."""
    today = bench.today()
    with bench.store.work(bench.person, bench.station) as work:
        made = lot_of_one(work, "Anna Berg", today)
        lot_of_one(work, "Bert Iversen", today + timedelta(2))
        work.calendar.save_plan(Plan({day: {"pork": 1} for day in range(7)}, hooks=10))
        work.commit()
    return made


@pytest.fixture
def calendar(qtbot: QtBot, bench: Bench, lot: Lot) -> CalendarDialog:
    dialog = CalendarDialog(bench)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    dialog.grid.setFocus()
    return dialog


def day_of(bench: Bench, lot: Lot) -> date:
    with bench.store.read() as work:
        found = work.lots.get(lot.id)
    assert found is not None
    return found.day


def press(*keys: Qt.Key) -> None:
    for key in keys:
        widget = QApplication.focusWidget()
        assert widget is not None
        QTest.keyClick(widget, key)


def test_a_day_says_how_full_it_is(bench: Bench, calendar: CalendarDialog) -> None:
    assert unnamed(calendar) == []
    cell = calendar.grid.cells[bench.today()]
    assert cell.lines == ("1 of 1 hogs", "2 of 10 hooks")
    assert cell.part == 100
    assert calendar.grid.cells[bench.today() + timedelta(1)].part == 0


def test_a_booking_is_moved_by_keys(bench: Bench, calendar: CalendarDialog, lot: Lot) -> None:
    at = bench.today()
    sideways = Qt.Key.Key_Right if at.weekday() < 6 else Qt.Key.Key_Left
    press(Qt.Key.Key_Return, Qt.Key.Key_M)
    assert calendar.held is not None
    press(sideways, Qt.Key.Key_Return)
    step = 1 if sideways == Qt.Key.Key_Right else -1
    assert day_of(bench, lot) == at + timedelta(step)
    assert calendar.held is None
    assert f"Lot {lot.number} is on" in calendar.said.text()


def test_a_full_day_asks_why(
    bench: Bench, calendar: CalendarDialog, lot: Lot, messages: RecordedMessages
) -> None:
    full = bench.today() + timedelta(2)
    messages.answers = [None, "hurt animal"]
    for there in (bench.today(), full):
        at = next(
            calendar.grid.visualItemRect(item).center()
            for row in range(calendar.grid.rowCount())
            for column in range(7)
            if (item := calendar.grid.item(row, column)) is not None
            and (cell := calendar.grid.cell(calendar.grid.indexFromItem(item))) is not None
            and cell.day == full
        )
        event = QDropEvent(
            QPointF(at),
            Qt.DropAction.MoveAction,
            dragged(lot),
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        calendar.grid.dropEvent(event)
        assert day_of(bench, lot) == there
    assert "1 of 1 places taken" in str(messages.asked[0])


KEPT: list[QMimeData] = []


def dragged(lot: Lot) -> QMimeData:
    what = QMimeData()
    what.setData(LOT, QByteArray(str(lot.id).encode()))
    KEPT.append(what)
    return what


def test_pages_turn_and_the_week_is_shown(bench: Bench, calendar: CalendarDialog) -> None:
    press(Qt.Key.Key_PageDown)
    assert calendar.day.month == bench.today().month % 12 + 1
    press(Qt.Key.Key_PageUp, Qt.Key.Key_W)
    assert calendar.grid.rowCount() == 1
    assert bench.today() in calendar.grid.cells


def test_a_date_is_closed(bench: Bench, calendar: CalendarDialog) -> None:
    calendar.other.click()
    dialog = calendar.dialog
    assert dialog is not None
    dialog.how.set_value("closed")  # pyright: ignore[reportAttributeAccessIssue]
    dialog.note.set_text("Fair")  # pyright: ignore[reportAttributeAccessIssue]
    dialog.try_it()
    with bench.store.read() as work:
        others = work.calendar.filled(bench.today(), bench.today()).others
    assert others == {bench.today(): OtherDay(bench.today(), True, "Fair")}
    assert calendar.grid.cells[bench.today()].lines[0] == "Closed: Fair"


def test_saved_for_other_calendars(
    qtbot: QtBot, bench: Bench, calendar: CalendarDialog, messages: RecordedMessages, tmp_path: Path
) -> None:
    where = tmp_path / "days.ics"
    messages.answers = [where]
    with qtbot.waitSignal(bench.work.idle):
        calendar.ics.click()
    text = where.read_bytes().decode()
    assert text.startswith("BEGIN:VCALENDAR\r\n")
    assert "SUMMARY:1 hog\\, Anna Berg\r\n" in text
    assert messages.told == []
    messages.answers = [tmp_path]
    with qtbot.waitSignal(bench.work.idle):
        calendar.ics.click()
    assert messages.told == [f"{tmp_path} is a folder. Give the file a name of its own."]


def test_a_day_that_takes_none_but_holds_some_says_so(bench: Bench, lot: Lot) -> None:
    """Hogs are killed on another weekday only; the one that is booked today is over."""
    today = bench.today()
    plan = Plan({(today.weekday() + 1) % 7: {"pork": 1}})
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(plan)
        work.commit()
    assert cell_of(bench, today).lines == ("1 of 0 hogs",)
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.set_other(OtherDay(today, True, "Holiday", {}))
        work.commit()
    assert cell_of(bench, today).lines == ("Closed: Holiday", "1 hog")
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.as_weekday(today)
        work.calendar.save_plan(Plan({}))
        work.commit()
    assert cell_of(bench, today).lines == ("1 hog",)


def cell_of(bench: Bench, day: date) -> DayCell:
    with bench.store.read() as work:
        filled, lots = work.calendar.filled(day, day), work.calendar.lots(day, day)
    (cell,) = cells_of((day, day), filled, lots, bench.words, day)
    return cell


def test_the_heading_is_the_shown_month_though_a_day_of_the_next_is_chosen(
    calendar: CalendarDialog,
) -> None:
    """March 2026 is shown down to April 5; the arrows go there without turning."""
    assert calendar.heading.text() == "Mar 2026"
    for _ in range(4):
        press(Qt.Key.Key_Down)
    calendar.grid.setCurrentCell(calendar.grid.rowCount() - 1, 6)
    assert calendar.day.month == 4
    assert calendar.heading.text() == "Mar 2026"
    calendar.refresh()
    assert calendar.heading.text() == "Apr 2026"
