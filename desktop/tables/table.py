"""A table as every place shows one: rows of one height, sorted by heading, copied by Ctrl+C."""

from collections.abc import Mapping, Sequence
from typing import Generic

from PySide6.QtCore import QEvent, QItemSelectionModel, QModelIndex, Qt, Signal
from PySide6.QtGui import QFont, QGuiApplication, QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from desktop.look.space import ROW_DESK
from desktop.look.theme import theme_of
from desktop.tables.columns import Row
from desktop.tables.delegate import CellDelegate
from desktop.tables.large_letters import column_width, least_width, letters_that_fit, texts_of
from desktop.tables.rows import RowsModel


class Table(QTableView, Generic[Row]):
    """A RowsModel on the screen.

    Signals:
        picked: Enter or a double click on a row; carries the row.
        moved: another row is the current one; carries it, or None.
    """

    picked = Signal(object)
    moved = Signal(object)

    def __init__(
        self,
        rows: RowsModel[Row],
        parent: QWidget | None = None,
        *,
        height: int = ROW_DESK,
        sortable: bool = True,
    ) -> None:
        super().__init__(parent)
        self.rows = rows
        rows.setParent(self)
        self._height = height
        self._spared: tuple[str, ...] = ()
        self._letters, self._stretched = 0, ""
        self.setModel(rows)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setMouseTracking(True)
        self.setCornerButtonEnabled(False)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.delegate = CellDelegate(self, rows, height)
        self.setItemDelegate(self.delegate)
        self._set_headings(sortable=sortable)
        self.doubleClicked.connect(self._pick)
        self.selectionModel().currentRowChanged.connect(self._current_changed)
        rows.modelReset.connect(self._reset)

    def set_name(self, name: str) -> None:
        """The table's name for a screen reader; give it in `retranslate`."""
        self.setAccessibleName(name)

    def chosen(self) -> Row | None:
        """The current row; None when there is none."""
        at = self.currentIndex().row()
        return self.rows.row(at) if 0 <= at < self.rows.rowCount() else None

    def choose(self, at: int) -> None:
        """Make the row at a place the current one; past the end it is the last."""
        at = min(at, self.rows.rowCount() - 1)
        index = self.rows.index(at, 0) if at >= 0 else QModelIndex()
        flags = QItemSelectionModel.SelectionFlag
        self.selectionModel().setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
        if index.isValid():
            self.scrollTo(index)

    def show_rows(self, rows: list[Row], keep: object = None) -> None:
        """Show rows anew; the row equal to `keep`, else the same place in the list, is chosen."""
        at = max(self.currentIndex().row(), 0)
        self.rows.show(rows)
        shown = list(self.rows.rows())
        self.choose(shown.index(keep) if keep in shown else at)  # pyright: ignore[reportArgumentType]

    def set_letters(self, pixels: int, stretched: str = "") -> None:
        """Rows for letters of that height, a column by its key taking the room; 0: as usual."""
        across = self.horizontalHeader()
        self._letters, self._stretched = pixels, stretched
        self.delegate.letters = {}
        for at, column in enumerate(self.rows.columns):
            takes = column.key == stretched if pixels else column.stretch
            mode = QHeaderView.ResizeMode
            across.setSectionResizeMode(at, mode.Stretch if takes else mode.Interactive)
        if not pixels:
            self._set_widths()
            return
        self._spared = ()
        self.verticalHeader().setDefaultSectionSize(pixels * 3 // 2)
        self._fit_letters()

    def room_for(self, pixels: int, texts: Mapping[str, set[str]], stretched: str) -> int:
        """How wide it must be for columns by key to show these texts whole in such letters.

        The `stretched` one in the least letters it may have.
        """
        self.ensurePolished()  # else the letters would be those before
        font = QFont(self.font())
        font.setPixelSize(pixels)
        bar = self.verticalScrollBar().sizeHint().width()
        return (
            bar
            + 2 * self.frameWidth()
            + sum(
                least_width(font, found) if key == stretched else column_width(font, 0, found)
                for key, found in texts.items()
            )
        )

    def _fit_letters(self) -> None:
        """Columns as wide as their words; one has the rest, in letters that show it whole."""
        across, rows = self.horizontalHeader(), list(self.rows.rows())
        font = QFont(self.font())
        font.setPixelSize(self._letters)
        room = self.viewport().width()
        for at, column in enumerate(self.rows.columns):
            if not self.isColumnHidden(at) and column.key != self._stretched:
                title = across.fontMetrics().horizontalAdvance(column.title())
                wide = column_width(font, title, texts_of(column.show, rows))
                across.resizeSection(at, wide)
                room -= wide
        for at, column in enumerate(self.rows.columns):
            if column.key == self._stretched:
                fits = letters_that_fit(font, room, texts_of(column.show, rows))
                self.delegate.letters = {at: fits}
        self.viewport().update()

    def spare(self, keys: Sequence[str]) -> None:
        """Columns to be hidden where the table is narrow, the first first, so that none scroll."""
        self._spared = tuple(keys)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        if self._letters:
            self._fit_letters()
        if not self._spared:
            return
        columns = self.rows.columns
        across = self.horizontalHeader()
        percent = theme_of(self).percent
        shown = {one.key: one.width * percent // 100 for one in columns}
        room = self.viewport().width()
        gone: set[str] = set()
        for key in self._spared:
            if sum(wide for it, wide in shown.items() if it not in gone) <= room:
                break
            gone.add(key)
        for at, one in enumerate(columns):
            across.setSectionHidden(at, one.key in gone)

    def copy(self) -> None:
        """The chosen row, or every row when none is, with headings, tabs between, on the board."""
        QGuiApplication.clipboard().setText(self.as_text())

    def as_text(self) -> str:
        """The rows that Ctrl+C copies: headings first, tab between cells, one row a line."""
        heads = [column.title() for column in self.rows.columns]
        chosen = sorted({index.row() for index in self.selectionModel().selectedRows()})
        lines = ["\t".join(heads)]
        for at in chosen or range(self.rows.rowCount()):
            cells = [str(self.rows.index(at, c).data() or "") for c in range(len(heads))]
            lines.append("\t".join(cell.replace("\t", " ").replace("\n", " ") for cell in cells))
        return "\n".join(lines) + "\n"

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy()
        elif event.matches(QKeySequence.StandardKey.SelectAll):
            self.clearSelection()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not (
            event.modifiers() & Qt.KeyboardModifier.ControlModifier
        ):
            self._pick(self.currentIndex())
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if not hasattr(self, "rows"):
            return
        if event.type() is QEvent.Type.LanguageChange:
            self.rows.retranslate()
        elif event.type() is QEvent.Type.FontChange:
            self._set_widths()
            self._fit()

    def _set_headings(self, *, sortable: bool) -> None:
        down = self.verticalHeader()
        down.hide()
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        across = self.horizontalHeader()
        across.setHighlightSections(False)
        across.setMinimumSectionSize(40)
        across.setSectionsMovable(True)
        self.setSortingEnabled(False)
        if sortable:
            across.setSortIndicatorShown(True)
            across.setSectionsClickable(True)
            across.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
            across.setSortIndicatorClearable(False)
            self.setSortingEnabled(True)
        self._set_widths()

    def _set_widths(self) -> None:
        if self._letters:  # a theme put on meanwhile changes nothing of them
            return
        percent = theme_of(self).percent
        self.verticalHeader().setDefaultSectionSize(self._height * max(percent, 100) // 100)
        across = self.horizontalHeader()
        for at, column in enumerate(self.rows.columns):
            if column.stretch:
                across.setSectionResizeMode(at, QHeaderView.ResizeMode.Stretch)
            else:
                across.resizeSection(at, column.width * percent // 100)

    def _reset(self) -> None:
        if self._letters:
            self._fit_letters()
        self.moved.emit(None)

    def _pick(self, index: QModelIndex) -> None:
        if index.isValid():
            self.picked.emit(self.rows.row(index.row()))

    def _current_changed(self, current: QModelIndex, _before: QModelIndex) -> None:
        self.moved.emit(self.rows.row(current.row()) if current.isValid() else None)
