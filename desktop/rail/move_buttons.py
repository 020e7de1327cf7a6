"""Buttons in a row of the rail's side, whole in large letters too: below one another, smaller."""

from collections.abc import Sequence

from PySide6.QtWidgets import QBoxLayout, QPushButton

from desktop.look.space import TOGETHER

LEAST = 0.6  # of the letters asked for: 16 mm asked are 9.6 mm at the least


def lay_buttons(layout: QBoxLayout, buttons: Sequence[QPushButton], room: int) -> None:
    """Side by side where their words stand whole in that room, else one below the other.

    One that is too wide by itself gets smaller letters: "Inspector passed" in letters of 83
    pixels takes 769, and 72 make it stand in the 674 there are.
    """
    wide = [_fitted(one, room) for one in buttons]
    beside = sum(wide) + TOGETHER * (len(wide) - 1) <= room
    across, down = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
    layout.setDirection(across if beside else down)


def _fitted(one: QPushButton, room: int) -> int:
    """Its width, in letters as large as the room lets them be."""
    if one.styleSheet():
        one.setStyleSheet("")
    one.ensurePolished()
    wide, asked = one.sizeHint().width(), one.font().pixelSize()
    if wide <= room or asked <= 0:
        return wide
    words = one.fontMetrics().horizontalAdvance(one.text().replace("&", ""))
    around = wide - words
    pixels = max(asked * (room - around) // max(words, 1), int(asked * LEAST))
    one.setStyleSheet(f"font-size: {pixels}px;")
    one.ensurePolished()
    return min(one.sizeHint().width(), room)
