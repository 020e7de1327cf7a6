"""Joining two entries of one person from the counter."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.join_dialog import JoinDialog
from tests.db.examples import customer, lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import listed, opened, pressed

CTRL = Qt.KeyboardModifier.ControlModifier


def test_two_entries_become_one_and_the_orders_follow(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        right = customer(work, "Ana Bergh", "(555) 010-0999")
        work.commit()
    place = opened(qtbot, bench)
    pressed(Qt.Key.Key_J, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, JoinDialog)
    assert unnamed(dialog) == []
    dialog.duplicate.set_value(right.id)
    dialog.stays.set_value(right.id)
    dialog.try_it()
    assert dialog.refusal.text() == "That is one and the same entry."
    dialog.duplicate.set_value(lot.producer_id)
    dialog.try_it()
    assert not dialog.isVisible()
    listed(qtbot, bench)
    assert [row.owner for row in place.list.table.rows.rows()] == ["Ana Bergh", "Bert Iversen"]
    with bench.store.read() as work:
        assert len(work.orders.list(text="anna berg")) == 1
