"""The side as it hangs, each primal in its state: a map of the order's table, nothing more."""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QFontMetrics,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QTransform,
)
from PySide6.QtWidgets import QWidget

from desktop.counter.carcass_shapes import HEIGHT, WIDTH, shapes
from desktop.look.patterns import Mark, hatch_path
from desktop.look.space import STEP
from desktop.look.theme import theme_of

if TYPE_CHECKING:
    from desktop.look.theme import Theme

MAP_WIDTH = 208
DRAWN = 108.0
FOCUS_EDGE = 3.0


class CarcassMap(QWidget):
    """Shows and picks primals by mouse; the keyboard and the screen reader have the table.

    Signals:
        picked: a region was clicked; carries the primal.
    """

    picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFixedWidth(MAP_WIDTH)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._shapes: dict[str, QPainterPath] = {}
        self._marks: Mapping[str, Mark] = {}
        self._names: Mapping[str, str] = {}
        self._focused = ""
        self._room = True

    def show_primals(
        self, species: str, marks: Mapping[str, Mark], names: Mapping[str, str], focused: str
    ) -> None:
        """Show every primal in its state; the focused one with a stamp edge."""
        self._shapes = shapes(species)
        self._marks, self._names, self._focused = marks, names, focused
        self.setVisible(self._room and bool(self._shapes))
        self.update()

    def set_room(self, room: bool) -> None:
        """Whether there is room for the map; it hides where there is none."""
        self._room = room
        self.setVisible(room and bool(self._shapes))

    def primal_at(self, point: QPointF) -> str:
        """The primal drawn at a point of the widget; "" beside the side."""
        for primal, path in self._placed().items():
            if path.contains(point):
                return primal
        return ""

    def mousePressEvent(self, event: QMouseEvent) -> None:
        primal = self.primal_at(event.position())
        if primal:
            self.picked.emit(primal)

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme = theme_of(self)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        placed = self._placed()
        for primal, path in placed.items():
            painter.fillPath(path, theme.color("tint" if primal == self._focused else "card"))
            hatch_path(painter, path, self._marks.get(primal, Mark.PLAIN), theme)
        if self._focused in placed:
            painter.setPen(QPen(theme.color("stamp"), FOCUS_EDGE))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(placed[self._focused])
        self._paint_names(painter, placed, theme)

    def _placed(self) -> dict[str, QPainterPath]:
        """The shapes at their place in the widget, as high as there is room."""
        scale = min((self.height() - 2 * STEP) / HEIGHT, DRAWN / WIDTH * 1.6)
        across = DRAWN / WIDTH
        move = QTransform.fromTranslate(STEP, STEP).scale(across, scale)
        return {primal: move.map(path) for primal, path in self._shapes.items()}

    def _paint_names(
        self, painter: QPainter, placed: Mapping[str, QPainterPath], theme: "Theme"
    ) -> None:
        """Names at the right, one below the other, each on a leader line to its region."""
        font = theme.font("small")
        painter.setFont(font)
        metrics = QFontMetrics(font)
        left = STEP + DRAWN + 3 * STEP
        room = self.width() - left
        wrap = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter
        last = 0.0
        for primal in sorted(placed, key=lambda one: _middle(placed[one]).y()):
            middle = _middle(placed[primal])
            name = self._names.get(primal, primal)
            fits = metrics.boundingRect(0, 0, int(room), 200, int(wrap), name)
            top = max(middle.y() - fits.height() / 2, last)
            last = top + fits.height() + STEP
            painter.setPen(QPen(theme.color("edge"), 1))
            painter.drawLine(middle, QPointF(left - STEP, top + fits.height() / 2))
            painter.setPen(theme.color("stamp" if primal == self._focused else "ink"))
            painter.drawText(QRectF(left, top, room, fits.height()), int(wrap), name)


def _middle(path: QPainterPath) -> QPointF:
    """The middle of the first outline of a region."""
    polygons = path.toSubpathPolygons()
    return polygons[0].boundingRect().center() if polygons else QPointF()
