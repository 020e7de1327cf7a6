"""Who changed what: opened by key, newest first, named for a screen reader."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.history_dialog import HistoryDialog
from shared.cutting.order import Amount, Choice
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, pressed, with_order
from tests.desktop.counter.test_order_view import halves

CTRL = Qt.KeyboardModifier.ControlModifier


def test_every_change_is_there_the_newest_first(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk = desk_of(place)
    desk.add([Choice(0, 1, "ham_steak", Amount("slices", 4))])
    (line,) = desk.order.choices
    desk.change(Choice(line.line, 1, "ham_steak", Amount("slices", 3), note="thin"))
    desk.move("settled")
    pressed(Qt.Key.Key_H, CTRL)
    dialog = place.order.dialogs.shown
    assert isinstance(dialog, HistoryDialog)
    assert unnamed(dialog) == []
    told = dialog.table.rows.rows()
    assert sorted(one.what for one in told) == ["changed", "put on", "settled"]
    (changed,) = [one for one in told if one.what == "changed"]
    assert changed.was.startswith("4 ham steaks")
    assert changed.became.startswith("3 ham steaks")
    assert "“thin”" in changed.became
    assert {(one.person, one.station) for one in told} == {("Test", "Bench")}
    dialog.try_it()
    assert not dialog.isVisible()
