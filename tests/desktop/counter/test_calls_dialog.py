"""Ringing owners: the list, a call logged by keyboard, the order opened from it."""

from datetime import timedelta

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.calls_dialog import CallsDialog
from tests.db.examples import lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import opened, pressed

CTRL = Qt.KeyboardModifier.ControlModifier


def test_a_call_is_logged_and_its_order_opened_by_keyboard(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, day=bench.today() - timedelta(days=2))
        work.commit()
    place = opened(qtbot, bench)
    pressed(Qt.Key.Key_R, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, CallsDialog)
    assert unnamed(dialog) == []
    assert [one.order.owner for one in dialog.table.rows.rows()] == ["Anna Berg", "Bert Iversen"]
    dialog.table.choose(1)
    dialog.note.set_text("back on Friday")
    dialog.try_it()
    assert dialog.isVisible()
    chosen = dialog.table.chosen()
    assert chosen is not None
    assert chosen.order.owner == "Bert Iversen"
    assert chosen.last is not None
    assert (chosen.last.outcome, chosen.last.note) == ("message", "back on Friday")
    dialog.table.picked.emit(chosen)
    assert not dialog.isVisible()
    assert place.order.desk is not None
    assert place.order.desk.order.id == lot.shares[1].order_id
