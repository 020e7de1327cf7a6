"""The side as it hangs, each primal in its state: a map of the order's table, nothing more."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
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
WIDTH_OF_TWO = 236
DRAWN = 108.0
DRAWN_OF_TWO = 64.0
FOCUS_EDGE = 3.0
FOOT = 18.0


@dataclass(frozen=True, slots=True)
class SideShown:
    """One side as it is drawn: its words below it ("" none) and its primals' states."""

    words: str
    marks: Mapping[str, Mark]
    mirrored: bool = False


class CarcassMap(QWidget):
    """Shows and picks primals by mouse; the keyboard and the screen reader have the table.

    One side, or both with their backs together where the order tells them apart.

    Signals:
        picked: a region was clicked; carries the primal.
    """

    picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFixedWidth(MAP_WIDTH)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._shapes: Mapping[str, QPainterPath] = {}
        self._sides: tuple[SideShown, ...] = ()
        self._names: Mapping[str, str] = {}
        self._focused = ""
        self._room = True

    def show_primals(
        self,
        species: str,
        sides: Sequence[SideShown],
        names: Mapping[str, str],
        focused: str,
    ) -> None:
        """Show every primal in its state; the focused one with a stamp edge.

        Primals without a name are somebody else's: drawn faintly.
        """
        self._shapes = shapes(species)
        self._sides = tuple(sides)
        self._names, self._focused = names, focused
        self.setFixedWidth(MAP_WIDTH if len(sides) < 2 else WIDTH_OF_TWO)
        self.setVisible(self._room and bool(self._shapes))
        self.update()

    def set_room(self, room: bool) -> None:
        """Whether there is room for the map; it hides where there is none."""
        self._room = room
        self.setVisible(room and bool(self._shapes))

    def primal_at(self, point: QPointF) -> str:
        """The primal drawn at a point of the widget; "" beside the side."""
        for placed in self._placed():
            for primal, path in placed.items():
                if path.contains(point) and primal in self._names:
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
        sides = self._placed()
        for side, placed in zip(self._sides, sides, strict=True):
            self._paint_side(painter, side, placed, theme)
        if sides:
            self._paint_names(painter, sides[-1], theme)

    def _paint_side(
        self,
        painter: QPainter,
        side: SideShown,
        placed: Mapping[str, QPainterPath],
        theme: "Theme",
    ) -> None:
        for primal, path in placed.items():
            if primal not in self._names:
                painter.setPen(QPen(theme.color("line"), 1))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawPath(path)
                continue
            painter.fillPath(path, theme.color("tint" if primal == self._focused else "card"))
            hatch_path(painter, path, side.marks.get(primal, Mark.PLAIN), theme)
        if self._focused in placed:
            painter.setPen(QPen(theme.color("stamp"), FOCUS_EDGE))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(placed[self._focused])
        if side.words and placed:
            painter.setFont(theme.font("small"))
            painter.setPen(theme.color("steel"))
            left = min(path.boundingRect().left() for path in placed.values())
            right = max(path.boundingRect().right() for path in placed.values())
            low = max(path.boundingRect().bottom() for path in placed.values())
            below = QRectF(left - STEP, low + STEP, right - left + 2 * STEP, FOOT)
            painter.drawText(below, Qt.AlignmentFlag.AlignCenter, side.words)

    def _placed(self) -> list[dict[str, QPainterPath]]:
        """The shapes of each side at their place in the widget, as high as there is room."""
        two = len(self._sides) > 1
        wide = DRAWN_OF_TWO if two else DRAWN
        foot = FOOT if two else 0.0
        scale = min((self.height() - 2 * STEP - foot) / HEIGHT, DRAWN / WIDTH * 1.6)
        placed: list[dict[str, QPainterPath]] = []
        for at, side in enumerate(self._sides):
            left = STEP + at * (wide + STEP)
            move = QTransform.fromTranslate(left + (wide if side.mirrored else 0), STEP)
            move.scale((-wide if side.mirrored else wide) / WIDTH, scale)
            placed.append({primal: move.map(path) for primal, path in self._shapes.items()})
        return placed

    def _paint_names(
        self, painter: QPainter, placed: Mapping[str, QPainterPath], theme: "Theme"
    ) -> None:
        """Names at the right, one below the other, each on a leader line to its region."""
        font = theme.font("small")
        painter.setFont(font)
        metrics = QFontMetrics(font)
        right = max(path.boundingRect().right() for path in placed.values())
        left = right + 3 * STEP
        room = self.width() - left
        wrap = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter
        last = 0.0
        named = [primal for primal in placed if primal in self._names]
        for primal in sorted(named, key=lambda one: _middle(placed[one]).y()):
            middle = _middle(placed[primal])
            name = self._names[primal]
            fits = metrics.boundingRect(0, 0, int(room), 200, int(wrap), name)
            top = max(middle.y() - fits.height() / 2, last)
            last = top + fits.height() + STEP
            painter.setPen(QPen(theme.color("edge"), 1))
            painter.drawLine(middle, QPointF(left - STEP, top + fits.height() / 2))
            painter.setPen(theme.color("stamp" if primal == self._focused else "ink"))
            painter.drawText(QRectF(left, top, room, fits.height()), int(wrap), name)


def _middle(path: QPainterPath) -> QPointF:
    """The middle of the greatest outline of a region."""
    boxes = [polygon.boundingRect() for polygon in path.toSubpathPolygons()]
    greatest = max(boxes, key=lambda box: box.width() * box.height(), default=QRectF())
    return greatest.center()
