"""Joining two entries of one person from the counter."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.apart_dialog import ApartDialog
from desktop.counter.join_dialog import JoinDialog
from tests.db.examples import customer, lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import listed, opened, pressed
from tests.desktop.recorded_messages import RecordedMessages

CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


def test_two_entries_become_one_and_the_orders_follow(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
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
    dialog.stays.changed.emit()
    assert not dialog.what.isVisible()
    dialog.try_it()
    assert dialog.refusal.text() == "That is one and the same entry."
    dialog.duplicate.set_value(lot.producer_id)
    dialog.duplicate.changed.emit()
    assert "Goes along: orders 1" in dialog.what.text()
    messages.answers = [False, True]
    dialog.try_it()
    assert dialog.isVisible()
    assert dialog.refusal.text() == "Not joined: both entries are as they were."
    dialog.try_it()
    asked = messages.asked[-1]
    assert "Anna Berg, (555) 010-0123 becomes Ana Bergh, (555) 010-0999." in asked
    assert "Goes along: orders 1 (1 not closed), bookings as producer 1." in asked
    assert not dialog.isVisible()
    listed(qtbot, bench)
    assert [row.owner for row in place.list.table.rows.rows()] == ["Ana Bergh", "Bert Iversen"]
    with bench.store.read() as work:
        assert len(work.orders.list(text="anna berg")) == 1


def test_who_was_joined_by_mistake_is_taken_apart_again(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        right = customer(work, "Ana Bergh", "(555) 010-0999")
        work.commit()
    place = opened(qtbot, bench)
    said: list[str] = []
    place.said.connect(said.append)
    pressed(Qt.Key.Key_J, CTRL | SHIFT)
    assert said == ["Nobody is joined into another entry."]
    with bench.store.work(bench.person, bench.station) as work:
        work.customers.join(lot.producer_id, right.id)
        work.commit()
    pressed(Qt.Key.Key_J, CTRL | SHIFT)
    dialog = place.dialog
    assert isinstance(dialog, ApartDialog)
    assert unnamed(dialog) == []
    assert dialog.entry.text() == (
        "Anna Berg  (555) 010-0123, joined into Ana Bergh  (555) 010-0999"
    )
    assert "Goes back with it: orders 1 (1 not closed)" in dialog.what.text()
    assert "Joined by " in dialog.what.text()
    dialog.try_it()
    assert not dialog.isVisible()
    assert said[-1] == "Taken apart: Anna Berg  (555) 010-0123 stands alone again."
    listed(qtbot, bench)
    assert [row.owner for row in place.list.table.rows.rows()] == ["Anna Berg", "Bert Iversen"]
