"""How a cell is painted: the chosen row by its edge, figures on the decimal, states marked."""

from typing import Any

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from desktop.look.patterns import Mark, paint_mark, square_beside
from desktop.look.space import TOGETHER
from desktop.look.theme import Theme, theme_of
from desktop.tables.columns import Figure
from desktop.tables.large_letters import mark_room
from desktop.tables.rows import RowsModel

EDGE_WIDTH = 3
_MIDDLE = Qt.AlignmentFlag.AlignVCenter
_LEFT, _RIGHT = _MIDDLE | Qt.AlignmentFlag.AlignLeft, _MIDDLE | Qt.AlignmentFlag.AlignRight
_CHOSEN, _HOVERED = QStyle.StateFlag.State_Selected.value, QStyle.StateFlag.State_MouseOver.value
_Index = QModelIndex | QPersistentModelIndex


class CellDelegate(QStyledItemDelegate):
    """Paints ready cells; nothing in it knows what they mean."""

    def __init__(self, parent: QObject, rows: RowsModel[Any], row_height: int) -> None:
        super().__init__(parent)
        self._rows = rows  # asked itself: through Qt a cell takes three times as long
        self._row_height = row_height
        self.letters: dict[int, int] = {}  # pixels, by columns whose words would not stand whole

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        return QSize(super().sizeHint(option, index).width() + 2 * TOGETHER, self._row_height)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        theme = theme_of()
        rect: QRect = option.rect  # pyright: ignore[reportAttributeAccessIssue]
        painter.save()
        self._paint_ground(painter, rect, option, index, theme)
        font: QFont = option.font  # pyright: ignore[reportAttributeAccessIssue]
        if letters := self.letters.get(index.column()):
            font = QFont(font)
            font.setPixelSize(letters)
        painter.setFont(font)
        inner = rect.adjusted(TOGETHER, 0, -TOGETHER, 0)
        cell, mark, tail, aligned = self._rows.painted(index.row(), index.column())
        if isinstance(cell, Figure):
            paint_figure(painter, inner, cell, tail, theme)
        else:
            painter.setPen(theme.color("ink"))
            if mark is not None:
                self._paint_mark(painter, inner, mark, theme)
            painter.drawText(inner, aligned, fitted(cell, painter.fontMetrics(), inner))
        painter.restore()

    def _paint_mark(self, painter: QPainter, inner: QRect, mark: Mark, theme: Theme) -> None:
        """The square, and its colour for the words; PLAIN has its room, so all stand in a line."""
        side = square_beside(painter.fontMetrics().height())
        if mark is not Mark.PLAIN:
            top = inner.center().y() - side / 2 + 0.5
            paint_mark(painter, QRectF(inner.left(), top, side, side), mark, theme)
            painter.setPen(theme.color(mark.value))
        inner.adjust(mark_room(painter.fontMetrics().height()), 0, 0, 0)

    def _paint_ground(
        self,
        painter: QPainter,
        rect: QRect,
        option: QStyleOptionViewItem,
        index: _Index,
        theme: Theme,
    ) -> None:
        state: int = option.state.value  # pyright: ignore[reportAttributeAccessIssue]
        if state & _CHOSEN:
            painter.fillRect(rect, theme.color("tint"))
            if index.column() == 0:
                edge = QRect(rect.left(), rect.top(), EDGE_WIDTH, rect.height())
                painter.fillRect(edge, theme.color("stamp"))
        elif state & _HOVERED:
            painter.fillRect(rect, theme.color("hover"))
        painter.setPen(theme.color("line"))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())


def fitted(text: str, metrics: QFontMetrics, room: QRect) -> str:
    """A cell's words as far as there is room: in as many lines as the row is high enough for.

    A row that holds two lines of its letters shows "Whole ham, shank on, cured and smoked" in
    two where one would cut it; what doesn't fit ends in an ellipsis, and the tip has all of it.
    """
    wide = room.width()
    if metrics.horizontalAdvance(text) <= wide:
        return text
    shown = lines_of(text, metrics, wide)
    most = max(room.height() // metrics.height(), 1)
    if len(shown) > most:
        shown[most - 1 :] = [" ".join([shown[most - 1], *(one.strip() for one in shown[most:])])]
    return "\n".join(_ended(one, metrics, wide) for one in shown)


def _ended(text: str, metrics: QFontMetrics, wide: int) -> str:
    """A line as it is where it fits; Qt cuts one that is as wide as its room to the pixel."""
    if metrics.horizontalAdvance(text) <= wide:
        return text
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, wide)


def lines_of(text: str, metrics: QFontMetrics, wide: int) -> list[str]:
    """The words in lines no wider than that, but for a word that is; all indented as the first."""
    indent = text[: len(text) - len(text.lstrip())]
    lines: list[str] = []
    for word in text.split(" "):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and metrics.horizontalAdvance(longer) > wide:
            lines.append(indent + word)
        else:
            lines[-1:] = [longer]
    return lines


def paint_figure(painter: QPainter, rect: QRect, figure: Figure, tail: str, theme: Theme) -> None:
    """A number with its point at one place in the column, and its unit in steel behind it."""
    metrics = QFontMetrics(painter.font())
    right = rect.right()
    if figure.unit:
        room = metrics.horizontalAdvance(figure.unit)
        painter.setPen(theme.color("steel"))
        unit = QRect(right - room + 1, rect.top(), room + 1, rect.height())
        painter.drawText(unit, _LEFT, figure.unit)
        right -= room + metrics.horizontalAdvance(" ")
    whole, point, part = figure.number.partition(".")
    right -= metrics.horizontalAdvance(tail)
    painter.setPen(theme.color("ink"))
    before = QRect(rect.left(), rect.top(), max(right - rect.left() + 1, 0), rect.height())
    painter.drawText(before, _RIGHT, whole)
    if point:
        after = QRect(right + 1, rect.top(), metrics.horizontalAdvance(tail) + 1, rect.height())
        painter.drawText(after, _LEFT, point + part)
