"""Distances on a grid of 4 and the two layouts made with them."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

STEP = 4
TOGETHER = 8
GROUP = 16
EDGE = 24

ROW_DENSE = 28
ROW_DESK = 32
ROW_BLOCK = 64


def row(parent: "QWidget | None" = None, gap: int = TOGETHER, edge: int = 0) -> QHBoxLayout:
    """Things side by side, `gap` apart, `edge` from the border."""
    layout = QHBoxLayout(parent) if parent is not None else QHBoxLayout()
    layout.setSpacing(gap)
    layout.setContentsMargins(edge, edge, edge, edge)
    return layout


def column(parent: "QWidget | None" = None, gap: int = TOGETHER, edge: int = 0) -> QVBoxLayout:
    """Things one below the other, `gap` apart, `edge` from the border."""
    layout = QVBoxLayout(parent) if parent is not None else QVBoxLayout()
    layout.setSpacing(gap)
    layout.setContentsMargins(edge, edge, edge, edge)
    return layout
