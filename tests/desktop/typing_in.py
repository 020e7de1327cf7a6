"""Typing as a person does, also letters QTest has no keys for (é, ¼, ł)."""

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget


def type_into(widget: QWidget, text: str) -> None:
    """Press and let go of a key for each letter."""
    for letter in text:
        for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
            key = ord(letter.upper()) if letter.isascii() else Qt.Key.Key_unknown.value
            QApplication.sendEvent(
                widget, QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier, letter)
            )
