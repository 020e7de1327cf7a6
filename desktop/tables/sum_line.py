"""The line at the foot of a table: what its columns of money come to, over the rows shown."""

from collections.abc import Callable, Collection
from typing import Any

from PySide6.QtCore import QEvent, QRect, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.look.space import ROW_DESK, TOGETHER
from desktop.look.theme import theme_of
from desktop.tables.columns import Column, Figure
from desktop.tables.delegate import paint_figure
from desktop.tables.table import Table
from shared.money import money_text


class SumLine(QWidget):
    """Stands under a table, its sums under their columns; it follows the rows and the widths.

    Summed are the columns of those keys, by the whole cents they are sorted by; None counts as
    nothing. Without keys, or without rows, the line isn't there.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._table: Table[Any] | None = None
        self._keys: frozenset[str] = frozenset()
        self._name: Callable[[], str] = str
        self._sums: dict[int, str] = {}
        self.hide()

    def follow(self, table: Table[Any], keys: Collection[str], name: Callable[[], str]) -> None:
        """Stand under this table from now on; `name` is the line's heading, asked each time."""
        if self._table is not table:
            across = table.horizontalHeader()
            across.sectionResized.connect(lambda *_: self.update())
            across.sectionMoved.connect(lambda *_: self.update())
            across.geometriesChanged.connect(self.update)
            table.horizontalScrollBar().valueChanged.connect(lambda _: self.update())
            table.rows.modelReset.connect(self.read)
        self._table, self._keys, self._name = table, frozenset(keys), name
        self.read()

    def read(self) -> None:
        """Add the rows up again."""
        if self._table is None:
            return
        rows = self._table.rows.rows()
        columns = self._table.rows.columns
        self._sums = {
            at: money_text(_sum_of(one, rows))
            for at, one in enumerate(columns)
            if one.key in self._keys
        }
        self.setVisible(bool(self._sums) and bool(rows))
        said = [f"{columns[at].title()} {text}" for at, text in self._sums.items()]
        self.setAccessibleName(self._name())
        self.setAccessibleDescription("; ".join(said))
        self.update()

    def cells(self) -> list[str]:
        """The line as texts, one a column, for paper; empty where nothing is summed."""
        if self._table is None or not self._sums:
            return []
        texts = [self._sums.get(at, "") for at in range(len(self._table.rows.columns))]
        free = next((at for at, text in enumerate(texts) if not text), None)
        if free is not None:
            texts[free] = self._name()
        return texts

    def sizeHint(self) -> QSize:
        return QSize(100, ROW_DESK * max(theme_of(self).percent, 100) // 100)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.LanguageChange, QEvent.Type.FontChange):
            self.updateGeometry()
            self.read()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        table = self._table
        if table is None:
            return
        theme, painter = theme_of(self), QPainter(self)
        painter.setPen(theme.color("edge"))
        painter.drawLine(0, 0, self.width(), 0)
        font = QFont(self.font())
        font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        across, left = table.horizontalHeader(), table.viewport().x()
        for at, text in enumerate(self.cells()):
            if not text or across.isSectionHidden(at):
                continue
            x, wide = left + across.sectionViewportPosition(at), across.sectionSize(at)
            inner = QRect(x + TOGETHER, 0, wide - 2 * TOGETHER, self.height())
            if at in self._sums:
                paint_figure(painter, inner, Figure(text), f".{text.partition('.')[2]}", theme)
                continue
            painter.setPen(theme.color("ink"))
            middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            inner.setWidth(max(inner.width(), painter.fontMetrics().horizontalAdvance(text) + 2))
            painter.drawText(inner, middle, text)


def _sum_of(column: Column[Any], rows: Collection[object]) -> int:
    cents = column.sort
    return 0 if cents is None else sum(cents(row) or 0 for row in rows)
