"""A dialog with more in it than the screen has room for: it scrolls, its buttons stay in view."""

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from desktop.fields import ChoiceField, FormDialog, TextField, form_dialog, on_screen
from tests.desktop.audit import tab_order, unnamed

ROOM = 696  # of 1366 by 768 pixels, less a bar and a title


class Long(FormDialog):
    """Twenty fields in one column, the last three hidden until they are asked for."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, columns=1)
        self.fields = [TextField(required=True) for _ in range(20)]
        self.set_words("Long", "Twenty fields.", "&Keep", "&Leave it")
        for number, field in enumerate(self.fields, start=1):
            field.set_label(f"Field {number}")
            self.grid.add(field)
            field.setVisible(number <= 17)
        self.add_below(QLabel("below"))


@pytest.fixture
def window(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> QWidget:
    """A window on a screen of 1366 by 768 pixels with a bar of 40."""
    monkeypatch.setattr(on_screen, "screen_of", lambda _dialog: QRect(0, 0, 1366, ROOM + 32))
    made = QWidget()
    qtbot.addWidget(made)
    made.resize(1366, ROOM)
    made.show()
    return made


def opened(qtbot: QtBot, dialog: FormDialog) -> None:
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    QApplication.processEvents()


def in_view(dialog: FormDialog, widget: QWidget) -> bool:
    """Whether all of it is seen."""
    return widget.visibleRegion().boundingRect().height() == widget.height()


def test_more_than_the_screen_holds_scrolls(qtbot: QtBot, window: QWidget) -> None:
    dialog = Long(window)
    opened(qtbot, dialog)
    assert dialog.height() <= ROOM
    for shown in (dialog.heading, dialog.main, dialog.leave, dialog.fields[0]):
        assert in_view(dialog, shown)
    assert QApplication.focusWidget() is dialog.fields[0].editor
    assert [one.isHidden() for one in dialog.fields] == [False] * 17 + [True] * 3
    assert dialog.fields[0].width() > 100
    assert tab_order(dialog) == [
        *(one.editor for one in dialog.fields[:17]),
        dialog.main,
        dialog.leave,
    ]
    assert unnamed(dialog) == []


def test_the_keyboard_is_always_in_view(qtbot: QtBot, window: QWidget) -> None:
    """By Tab, and where a complaint leads to it; the complaint below the fields is seen as well."""
    dialog = Long(window)
    opened(qtbot, dialog)
    for field in dialog.fields[:17]:
        assert QApplication.focusWidget() is field.editor
        assert in_view(dialog, field.editor), field.label.text()
        QTest.keyClicks(field.editor, "x")
        QTest.keyClick(field.editor, Qt.Key.Key_Tab)
    dialog.fields[16].setVisible(True)
    dialog.fields[2].set_value(None)
    QTest.keyClick(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert QApplication.focusWidget() is dialog.fields[2].editor
    assert in_view(dialog, dialog.fields[2].editor)
    dialog.refuse("It can't be kept as it stands.")
    QApplication.processEvents()
    assert in_view(dialog, dialog.refusal)
    assert dialog.height() <= ROOM


def test_what_comes_while_it_is_shown_scrolls_too(qtbot: QtBot, window: QWidget) -> None:
    dialog = Long(window)
    for field in dialog.fields[5:]:
        field.hide()
    opened(qtbot, dialog)
    assert dialog.findChildren(QScrollArea) == []
    kind: ChoiceField[int] = ChoiceField()
    kind.set_label("Kind")
    kind.set_choices([(1, "one of many"), (2, "two of many")])
    dialog.grid.add(kind)
    kind.show()
    dialog.fields[1].focus()
    QApplication.processEvents()
    kind.box.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClicks(kind.box, "of")
    for field in dialog.fields[5:]:
        field.show()
    QApplication.processEvents()
    QTest.keyClicks(kind.box, " many")
    assert kind.text() == "of many"
    assert "complaint" not in kind.__dict__, "it was not left"
    assert dialog.height() <= ROOM
    assert len(dialog.findChildren(QScrollArea)) == 1
    assert in_view(dialog, dialog.main)
    assert QApplication.focusWidget() is kind.box


def test_one_that_grows_over_the_edge_of_the_screen_moves_up(qtbot: QtBot, window: QWidget) -> None:
    dialog = Long(window)
    for field in dialog.fields[8:]:
        field.hide()
    opened(qtbot, dialog)
    dialog.move(20, 300)
    for field in dialog.fields[8:10]:
        field.show()
    QApplication.processEvents()
    assert dialog.frameGeometry().bottom() <= ROOM + 32
    assert form_dialog.room_of(dialog) == ROOM
