"""A read-only table model over a list of ready rows; `data` only looks up."""

from collections.abc import Sequence
from typing import Generic

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from desktop.look.patterns import Mark
from desktop.tables.columns import Column, Figure, Row

FIGURE = Qt.ItemDataRole.UserRole + 1
MARK = Qt.ItemDataRole.UserRole + 2
ROW = Qt.ItemDataRole.UserRole + 3
TAIL = Qt.ItemDataRole.UserRole + 4

_Index = QModelIndex | QPersistentModelIndex
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class RowsModel(QAbstractTableModel, Generic[Row]):
    """Rows of one kind under columns. Up to some two thousand rows; longer lists are paged.

    A row's cells are put into words when they are first looked at, and then kept.
    """

    def __init__(self, columns: Sequence[Column[Row]], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.columns = tuple(columns)
        self._rows: list[Row] = []
        self._cells: list[tuple[str | Figure, ...] | None] = []
        self._tails: dict[int, str] = {}
        self._sorted: tuple[int, Qt.SortOrder] | None = None

    def show(self, rows: Sequence[Row]) -> None:
        """Show these rows from now on, sorted as the last ones were."""
        self.beginResetModel()
        self._rows = list(rows)
        if self._sorted is not None:
            self._order(*self._sorted)
        self._forget()
        self.endResetModel()

    def rows(self) -> Sequence[Row]:
        """The rows as they stand."""
        return tuple(self._rows)

    def row(self, at: int) -> Row:
        """The row at a place in the table, counted from 0."""
        return self._rows[at]

    def retranslate(self) -> None:
        """Show every title and cell again in the window's language."""
        self._forget()
        if self._rows:
            self.dataChanged.emit(
                self.index(0, 0), self.index(len(self._rows) - 1, len(self.columns) - 1)
            )
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(self.columns) - 1)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid():
            return None
        cell = self._cells_of(index.row())[index.column()]
        column = self.columns[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return str(cell)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if column.kind == "figure" else _LEFT
        if role == FIGURE:
            return cell if isinstance(cell, Figure) else None
        if role == TAIL:
            return self._tail(index.column())
        row = self._rows[index.row()]
        if role == ROW:
            return row
        if role == MARK:
            return column.mark(row) if column.mark else None
        if role == Qt.ItemDataRole.ToolTipRole and column.tip:
            return column.tip(row)
        return None

    def painted(self, row: int, at: int) -> tuple[str | Figure, Mark | None, str, Qt.AlignmentFlag]:
        """All that is painted of a cell: text, state's pattern, longest decimals, side."""
        cell, column = self._cells_of(row)[at], self.columns[at]
        mark = column.mark(self._rows[row]) if column.mark else None
        tail = self._tail(at) if isinstance(cell, Figure) else ""
        return cell, mark, tail, _RIGHT if column.kind == "figure" else _LEFT

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        if orientation is not Qt.Orientation.Horizontal or section >= len(self.columns):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.columns[section].title()
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.columns[section].kind == "figure" else _LEFT
        return None

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        if not 0 <= column < len(self.columns):
            return
        self.layoutAboutToBeChanged.emit()
        before = list(self._rows)
        places = {id(row): at for at, row in enumerate(before)}
        self._sorted = (column, order)
        self._order(column, order)
        self._forget()
        moved = {places[id(row)]: at for at, row in enumerate(self._rows)}
        for old in self.persistentIndexList():
            self.changePersistentIndex(old, self.index(moved[old.row()], old.column()))
        self.layoutChanged.emit()

    def _order(self, column: int, order: Qt.SortOrder) -> None:
        by = self.columns[column]
        key = by.sort or (lambda row: str(by.show(row)).casefold())
        known = [row for row in self._rows if key(row) is not None]
        unknown = [row for row in self._rows if key(row) is None]
        known.sort(key=key, reverse=order is Qt.SortOrder.DescendingOrder)
        self._rows = known + unknown

    def _forget(self) -> None:
        self._cells = [None] * len(self._rows)
        self._tails = {}

    def _cells_of(self, at: int) -> tuple[str | Figure, ...]:
        found = self._cells[at]
        if found is None:
            row = self._rows[at]
            found = tuple(column.show(row) for column in self.columns)
            self._cells[at] = found
        return found

    def _tail(self, column: int) -> str:
        """The longest decimal part in a column, which every figure leaves room for."""
        if column not in self._tails:
            self._tails[column] = self._longest_tail(self.columns[column])
        return self._tails[column]

    def _longest_tail(self, column: Column[Row]) -> str:
        longest = ""
        for row in self._rows:
            cell = column.show(row)
            if isinstance(cell, Figure):
                longest = max(longest, cell.number.partition(".")[2], key=len)
                if column.places is not None and len(longest) >= column.places:
                    break  # no figure of it has more
        return f".{longest}" if longest else ""
