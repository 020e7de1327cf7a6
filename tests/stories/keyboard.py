"""A person at the keyboard: keys go to what has the focus, and fields are reached by Tab."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from tests.desktop.typing_in import type_into

MOST_TABS = 80
CTRL = Qt.KeyboardModifier.ControlModifier
PLAIN = Qt.KeyboardModifier.NoModifier


class Keyboard:
    """Presses keys on whatever has the focus; touches nothing in any other way.

    `count` is every key pressed so far; a key held down with another counts as one more.
    """

    def __init__(self, qtbot: QtBot) -> None:
        self._qtbot = qtbot
        self.count = 0

    def focused(self) -> QWidget:
        """What has the focus; waits for a window that is just opening."""
        self._qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
        widget = QApplication.focusWidget()
        assert widget is not None
        return widget

    def press(self, key: Qt.Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
        """One key, perhaps with Ctrl."""
        self.count += 1 if modifier == PLAIN else 2
        QTest.keyClick(self.focused(), key, modifier)
        QApplication.processEvents()

    def at(self, dialog: QWidget) -> None:
        """Wait until a window that was asked for, or that is left over, has the keyboard.

        There is no window manager here, so it is told to come to the front.
        """
        modal = QApplication.activeModalWidget()
        assert modal in (None, dialog), "another dialog is still open"
        dialog.activateWindow()
        self._qtbot.waitUntil(lambda: QApplication.activeWindow() is dialog)
        self._qtbot.waitUntil(lambda: dialog.isAncestorOf(self.focused()))

    def ctrl(self, key: Qt.Key) -> None:
        """Ctrl and a key."""
        self.press(key, CTRL)

    def tab_to(self, field: QWidget) -> None:
        """Go on with Tab until the field, or what is in it, has the focus."""
        for _ in range(MOST_TABS):
            here = self.focused()
            if here is field or field.isAncestorOf(here):
                return
            self.press(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab never comes to {field.objectName() or field}")

    def fill(self, field: QWidget, text: str) -> None:
        """Go to a field and write over what is in it."""
        self.tab_to(field)
        self.ctrl(Qt.Key.Key_A)
        self.press(Qt.Key.Key_Delete)
        self.type(text)

    def type(self, text: str) -> None:
        """Letters, one key each."""
        self.count += len(text)
        for letter in text:
            type_into(self.focused(), letter)
            QApplication.processEvents()
