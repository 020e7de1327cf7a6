"""Buttons: one main action to a view, the others plain, the least of them quiet."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget


def button(
    parent: QWidget | None = None, *, main: bool = False, quiet: bool = False
) -> QPushButton:
    """A button without words yet; `retranslate` gives them. `main` is the stamp-coloured one."""
    made = QPushButton(parent)
    made.setProperty("main", "true" if main else "false")
    made.setProperty("quiet", "true" if quiet else "false")
    made.setAutoDefault(False)
    made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    made.setCursor(Qt.CursorShape.PointingHandCursor)
    return made
