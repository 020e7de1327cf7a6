"""The table of an animal's owners, one a column: its keys, and rows as high as their words."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QModelIndex, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QWidget

from desktop.look.patterns import Mark
from desktop.look.space import ROW_DENSE, TOGETHER
from desktop.tables import Column, RowsModel, TallTable
from desktop.tables.delegate import lines_of
from desktop.tables.large_letters import mark_room

if TYPE_CHECKING:
    from desktop.counter.owners_rows import OwnersRow

LEAST_COLUMN = 150  # more of them than there is room for scroll
HEAD_PADDING = 16
MOST_HEAD_LINES = 2


class OwnersTable(TallTable["OwnersRow"]):
    """Owners as columns; left and right go along them, up and down along the primals.

    Signals:
        stepped: another primal; carries how many down, or up where it is less than nothing.
        opened: Enter on an owner; carries the place of the owner.
        turned: Space: one primal, or all of them.
        stood: a row was clicked; carries its primal.
    """

    stepped = Signal(int)
    opened = Signal(int)
    turned = Signal()
    stood = Signal(str)

    def __init__(self, owners: int, columns: "list[Column[OwnersRow]]", parent: QWidget) -> None:
        super().__init__(RowsModel(columns), parent, height=ROW_DENSE, sortable=False)
        self.owners = owners
        across = self.horizontalHeader()
        across.setMinimumSectionSize(LEAST_COLUMN)
        across.setTextElideMode(Qt.TextElideMode.ElideRight)
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        across.setDefaultAlignment(left | Qt.AlignmentFlag(Qt.TextFlag.TextWordWrap.value))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.clicked.connect(self._clicked)
        self.at = 0
        self.primal = ""

    def stand(self, owner: int, primal: str) -> None:
        """Choose an owner's column, and the row of a primal where every primal has one."""
        self.at, self.primal = owner % max(self.owners, 1), primal
        rows = self.rows.rows()
        last = len(rows) - 1
        chosen = QItemSelection(self.rows.index(0, self.at + 1), self.rows.index(last, self.at + 1))
        at = next((at for at, row in enumerate(rows) if row.primal == primal), 0)
        if sum(1 for row in rows if row.primal) > 1:
            across = QItemSelection(self.rows.index(at, 0), self.rows.index(at, self.owners))
            chosen.merge(across, QItemSelectionModel.SelectionFlag.Select)
        flags = QItemSelectionModel.SelectionFlag
        here = self.rows.index(at, self.at + 1)
        self.selectionModel().setCurrentIndex(here, flags.NoUpdate)
        self.selectionModel().select(chosen, flags.ClearAndSelect)
        self.scrollTo(here)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        steps = {
            Qt.Key.Key_Down: 1,
            Qt.Key.Key_PageDown: 1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_PageUp: -1,
        }
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if plain and key in steps:
            self.stepped.emit(steps[Qt.Key(key)])
        elif plain and key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.stand(self.at + (1 if key == Qt.Key.Key_Right else -1), self.primal)
        elif plain and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.opened.emit(self.at)
        elif plain and key == Qt.Key.Key_Space:
            self.turned.emit()
        else:
            super().keyPressEvent(event)

    def _fit_heights(self) -> None:
        """As many lines as the longest cell of a row takes, and as the longest name does."""
        usual, metrics = self.verticalHeader().defaultSectionSize(), self.fontMetrics()
        for at, row in enumerate(self.rows.rows()):
            named = self._lines_in(row.what, 0, Mark.PLAIN, metrics)
            said = [
                self._lines_in(text, place, mark, metrics)
                for place, (text, mark) in enumerate(row.cells, start=1)
            ]
            self.setRowHeight(at, usual + (max(named, *said) - 1) * metrics.height())
        across = self.horizontalHeader()
        heads = across.fontMetrics()
        many = max(
            len(lines_of(column.title(), heads, self.columnWidth(at) - HEAD_PADDING))
            for at, column in enumerate(self.rows.columns)
        )
        across.setFixedHeight(heads.height() * min(many, MOST_HEAD_LINES) + TOGETHER)

    def _lines_in(self, text: str, at: int, mark: Mark, metrics: QFontMetrics) -> int:
        room = self.columnWidth(at) - 2 * TOGETHER
        if mark is not Mark.PLAIN:
            room -= mark_room(metrics.height())
        return len(lines_of(text, metrics, room))

    def _clicked(self, index: QModelIndex) -> None:
        self.stand(max(index.column() - 1, 0) if index.column() else self.at, self.primal)
        row = self.rows.row(index.row())
        if row.primal:
            self.stood.emit(row.primal)
