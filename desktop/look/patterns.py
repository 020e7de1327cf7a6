"""The four states as patterns, so that colour never speaks alone.

settled is plain, open has a dotted outline, tight a single hatch, contested a crossed hatch.
Hatches are lines clipped to the shape, in logical pixels, so that they scale with the screen.
"""

from enum import Enum

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from desktop.look.theme import Theme

HATCH_STEP = 5.0
SQUARE = 12


class Mark(Enum):
    """A state's pattern; the value is the colour role that goes with it."""

    PLAIN = "ink"
    SETTLED = "settled"
    OPEN = "steel"
    TIGHT = "tight"
    CONTESTED = "contested"


def hatch_path(
    painter: QPainter, path: QPainterPath, mark: Mark, theme: Theme, step: float = HATCH_STEP
) -> None:
    """Draw a state's outline and hatch over a shape; the ground is the caller's."""
    color = theme.color(mark.value)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if mark in (Mark.TIGHT, Mark.CONTESTED):
        painter.save()
        painter.setClipPath(path, Qt.ClipOperation.IntersectClip)
        painter.setPen(QPen(color, 1.0))
        painter.drawLines(_slanted(path.boundingRect(), step, rising=True))
        if mark is Mark.CONTESTED:
            painter.drawLines(_slanted(path.boundingRect(), step, rising=False))
        painter.restore()
    pen = QPen(color, 1.0)
    if mark is Mark.OPEN:
        pen.setStyle(Qt.PenStyle.CustomDashLine)
        pen.setDashPattern([1.5, 2.5])
    painter.setPen(pen)
    painter.drawPath(path)
    painter.restore()


def square_beside(line: int) -> int:
    """The side of a state's square beside words of that line height: 12 by 18, 60 by 90."""
    return max(SQUARE, line * 2 // 3)


def paint_mark(painter: QPainter, rect: QRectF, mark: Mark, theme: Theme) -> None:
    """A state's square, as in a table row; lines and hatch of a large one grow with it."""
    grown = max(1.0, min(rect.width(), rect.height()) / SQUARE)
    path = QPainterPath()
    path.addRect(QRectF(0.5, 0.5, rect.width() / grown - 1, rect.height() / grown - 1))
    painter.save()
    painter.translate(rect.topLeft())
    painter.scale(grown, grown)
    if mark is Mark.SETTLED:
        painter.fillPath(path, theme.color(mark.value))
    hatch_path(painter, path, mark, theme, step=4.0)
    painter.restore()


def _slanted(box: QRectF, step: float, *, rising: bool) -> list[QLineF]:
    """Parallel lines at 45 degrees across a box, `step` apart along x, on a fixed lattice."""
    height = box.height()
    first = int((box.left() - height) // step)
    last = int((box.right() + height) // step) + 1
    lines = []
    for number in range(first, last):
        x = number * step
        start, end = (x, x + height) if rising else (x + height, x)
        lines.append(QLineF(start, box.bottom(), end, box.top()))
    return lines
