"""The grid of a month or a week: seven columns of days, how full each is in words and a bar."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDragMoveEvent, QDropEvent, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from desktop.look.patterns import Mark, paint_mark
from desktop.look.space import TOGETHER
from desktop.look.theme import theme_of

BAR = 8
WEEK = 7
LOT = "application/x-steelyard-lot"


@dataclass(frozen=True, slots=True)
class DayCell:
    """A day as the grid shows it. `part` of 100 is how full; `spoken` is read aloud."""

    day: date
    heading: str
    lines: tuple[str, ...]
    part: int | None
    mark: Mark
    spoken: str
    quiet: bool = False


class CalendarGrid(QTableWidget):
    """Arrows go from day to day; at an edge, and by Page up and down, the span moves.

    Signals:
        turned: another span is wanted; carries -1 or 1.
        opened: Enter on the day.
        dropped: a booking was dragged here; carries its id and the day.
    """

    turned = Signal(int)
    opened = Signal()
    dropped = Signal(int, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(0, WEEK, parent)
        self.cells: Mapping[date, DayCell] = {}
        self._days: list[date] = []
        self.setItemDelegate(_DayPainter(self))
        self.setSelectionMode(QTableWidget.SelectionMode.SingleSelection)
        self.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setAcceptDrops(True)
        self.verticalHeader().hide()
        for header in (self.horizontalHeader(), self.verticalHeader()):
            header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)

    def show_days(self, cells: Sequence[DayCell], names: Sequence[str], keep: date) -> None:
        """Show whole weeks from Monday on; the day to keep is the current one."""
        self.cells = {one.day: one for one in cells}
        self._days = [one.day for one in cells]
        self.setRowCount(len(cells) // WEEK)
        self.setHorizontalHeaderLabels(list(names))
        for place, cell in enumerate(cells):
            item = QTableWidgetItem(cell.heading)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, cell.spoken)
            item.setToolTip(cell.spoken)
            self.setItem(place // WEEK, place % WEEK, item)
        if keep in self._days:
            place = self._days.index(keep)
            self.setCurrentCell(place // WEEK, place % WEEK)

    def cell(self, index: QModelIndex | QPersistentModelIndex) -> DayCell | None:
        """What a place of the grid shows."""
        place = index.row() * WEEK + index.column()
        return self.cells[self._days[place]] if 0 <= place < len(self._days) else None

    def day(self) -> date | None:
        """The day that is chosen."""
        found = self.cell(self.currentIndex())
        return None if found is None else found.day

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            self.turned.emit(-1 if key == Qt.Key.Key_PageUp else 1)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers():
            self.opened.emit()
        else:
            super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasFormat(LOT):
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        there = self.cell(self.indexAt(event.position().toPoint()))
        event.setAccepted(there is not None and event.mimeData().hasFormat(LOT))

    def dropEvent(self, event: QDropEvent) -> None:
        there = self.cell(self.indexAt(event.position().toPoint()))
        if there is not None and event.mimeData().hasFormat(LOT):
            event.acceptProposedAction()
            lot = int(bytes(event.mimeData().data(LOT).data()))
            self.dropped.emit(lot, there.day)


class _DayPainter(QStyledItemDelegate):
    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        grid = self.parent()
        cell = grid.cell(index) if isinstance(grid, CalendarGrid) else None
        if cell is None or not isinstance(grid, CalendarGrid):
            return
        theme = theme_of()
        chosen = grid.currentIndex() == index
        box = QRectF(option.rect)  # pyright: ignore[reportAttributeAccessIssue]
        painter.save()
        painter.fillRect(box, theme.color("tint" if chosen else "page" if cell.quiet else "card"))
        if chosen and grid.hasFocus():
            pen = painter.pen()
            pen.setColor(theme.color("stamp"))
            pen.setWidth(2)
            painter.setPen(pen)
            painter.drawRect(box.adjusted(1, 1, -1, -1))
        within = box.adjusted(TOGETHER, TOGETHER / 2, -TOGETHER, -TOGETHER / 2)
        painter.setPen(theme.color("steel" if cell.quiet else "ink"))
        painter.setFont(theme.font("body"))
        y = within.top() + painter.fontMetrics().height()
        painter.drawText(within, Qt.AlignmentFlag.AlignTop, cell.heading)
        painter.setFont(theme.font("small"))
        high = painter.fontMetrics().height()
        bottom = within.bottom() - (BAR + 4 if cell.part is not None else 0)
        for line in cell.lines:
            if y + high > bottom + 2:
                break
            text = painter.fontMetrics().elidedText(
                line, Qt.TextElideMode.ElideRight, int(within.width())
            )
            painter.drawText(QRectF(within.left(), y, within.width(), high), text)
            y += high
        self._bar(painter, within, cell)
        painter.restore()

    def _bar(self, painter: QPainter, within: QRectF, cell: DayCell) -> None:
        """A trough, and in it the part taken in the pattern of its state."""
        if cell.part is None:
            return
        theme = theme_of()
        trough = QRectF(within.left(), within.bottom() - BAR, within.width(), BAR)
        painter.setPen(theme.color("line"))
        painter.drawRect(trough)
        taken = QRectF(trough)
        taken.setWidth(trough.width() * min(cell.part, 100) / 100)
        if cell.part:
            if cell.mark is Mark.SETTLED:
                painter.fillRect(taken, theme.color("settled"))
            else:
                paint_mark(painter, taken, cell.mark, theme)
