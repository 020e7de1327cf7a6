"""Ctrl+T: from any tag or number to everything that is kept."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench, Target
from desktop.trace.trace_dialog import TraceDialog
from shared.shop.lots import Lot
from shared.shop.people import SignedOn
from tests.db.examples import arrived, line, lot_of_halves, order_of, package, weighed
from tests.desktop.audit import unnamed
from tests.desktop.typing_in import type_into


@pytest.fixture
def lot(store: Store, signed: SignedOn) -> Lot:
    with store.work(signed.person, signed.station) as work:
        made = lot_of_halves(work)
        animal = arrived(work, made)
        weighed(work, animal, "92.5", 1)
        order = order_of(work, made)
        package(work, order, line(work, order))
        work.commit()
    return made


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench, lot: Lot) -> TraceDialog:
    made = TraceDialog(bench)
    qtbot.addWidget(made)
    made.open()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def column(dialog: TraceDialog, key: str) -> list[str]:
    columns = dialog.table.rows.columns
    shown = next(one for one in columns if one.key == key)
    return [str(shown.show(row)) for row in dialog.table.rows.rows()]


def test_a_tag_and_enter_tell_what_happened(dialog: TraceDialog) -> None:
    type_into(dialog.sought.line, "114")
    QTest.keyClick(dialog.sought.line, Qt.Key.Key_Return)
    said = column(dialog, "what")
    assert said[0] == "Booked: 1 head"
    assert "Hot weight, side 1: 92.5\u00a0lb" in said
    assert "1 package, 16.25\u00a0lb, label 1" in said
    assert "Anna Berg" in dialog.facts.text()
    assert dialog.page.isEnabled()


def test_what_nobody_has_is_said_at_the_field(dialog: TraceDialog) -> None:
    type_into(dialog.sought.line, "nope")
    QTest.keyClick(dialog.sought.line, Qt.Key.Key_Return)
    assert "Nothing is kept" in dialog.sought.complaint.text()
    assert dialog.table.rows.rowCount() == 0
    assert not dialog.page.isEnabled()


def test_picking_an_event_leads_to_it(dialog: TraceDialog, lot: Lot, qtbot: QtBot) -> None:
    type_into(dialog.sought.line, "114")
    QTest.keyClick(dialog.sought.line, Qt.Key.Key_Return)
    at = column(dialog, "what").index("Arrived, tag 114")
    dialog.table.choose(at)
    with qtbot.waitSignal(dialog.go) as told:
        QTest.keyClick(dialog.table, Qt.Key.Key_Return)
    assert told.args == [Target("rail", "animal", lot.animals[0].id, lot.id)]


def test_all_that_takes_the_keyboard_has_a_name(dialog: TraceDialog) -> None:
    assert unnamed(dialog) == []


def test_the_page_is_printed_from_a_worker(dialog: TraceDialog, qtbot: QtBot) -> None:
    type_into(dialog.sought.line, "114")
    QTest.keyClick(dialog.sought.line, Qt.Key.Key_Return)
    dialog.print_page()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    assert dialog.preview.pdf.startswith(b"%PDF")
    dialog.preview.close()
