"""The order's table: up and down go along the primals, the one that is reached unfolds."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.counter.order_rows import OrderRowShown, columns, rows_of
from desktop.counter.side_marks import held_primals
from desktop.look.space import ROW_DENSE, TOGETHER
from desktop.look.theme import theme_of
from desktop.tables import RowsModel, TallTable
from desktop.tables.delegate import lines_of
from desktop.tables.large_letters import mark_room

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from desktop.counter.ways_offered import Offer
    from printing.words import Words

NUMBERS = tuple("123456789")
MOST_LINES = 3  # the usual of many cuts ends in an ellipsis, and is read out beside the table
CUT_OF_ROOM = 45  # in a hundred, the rest is of the finish


class OrderTable(TallTable[OrderRowShown]):
    """Rows of 28 pixels grouped by primal.

    Signals:
        typed: letters were typed on the table; carries them, to find a cut by.
        removed: Del was pressed on a line; carries its number.
        offered: a way of cutting was taken by its number; carries the offer.
    """

    typed = Signal(str)
    removed = Signal(int)
    offered = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(RowsModel(columns()), parent, height=ROW_DENSE, sortable=False)
        self._desk: OrderDesk | None = None
        self._words: Words | None = None
        self.unfolded = ""
        self.ways = False
        self._begun = ""
        self.clicked.connect(self._clicked)

    def _fit(self) -> None:
        """In a wide window the cuts take their part of the room, and amounts stand in full."""
        super()._fit()
        percent = theme_of(self).percent
        widths = (one.width * percent // 100 for one in self.rows.columns if not one.stretch)
        cut, amount, *others = widths
        over = self.viewport().width() - sum(others) - amount
        if over > 3 * cut:
            over -= amount // 2
            self.horizontalHeader().resizeSection(1, amount + amount // 2)
        self.horizontalHeader().resizeSection(0, max(cut, over * CUT_OF_ROOM // 100))

    def _fit_heights(self) -> None:
        """A line or a way whose words don't stand whole in one line has as many as they take.

        Folded primals have them, too, where the whole table is in view even so.
        """
        usual, one_line = self.verticalHeader().defaultSectionSize(), self.fontMetrics().height()
        rows = self.rows.rows()
        full = [self._lines_of(row) for row in rows]
        known = [row.line or row.offer is not None for row in rows]
        least = [many if one else 1 for many, one in zip(full, known, strict=True)]
        folded = [row.primal != self.unfolded for row in rows]
        most = [many if one else few for many, few, one in zip(full, least, folded, strict=True)]
        room = self.viewport().height() - usual * len(rows)
        fits = sum(one - 1 for one in most) * one_line <= room
        for at, many in enumerate(most if fits else least):
            self.setRowHeight(at, usual + (many - 1) * one_line)

    def _lines_of(self, row: OrderRowShown) -> int:
        metrics = self.fontMetrics()
        room = [self.columnWidth(at) - 2 * TOGETHER for at in range(3)]
        room[0] -= mark_room(metrics.height())
        words = (row.cut, row.amount, row.finish)
        most = (len(lines_of(one, metrics, wide)) for one, wide in zip(words, room, strict=True))
        return min(max(most), MOST_LINES)

    def show_order(self, desk: "OrderDesk", words: "Words", line: int = 0) -> None:
        """Show the order as it stands; `line`, else the row chosen before, is chosen."""
        before = self.chosen()
        at = self.currentIndex().row()
        self._desk, self._words = desk, words
        if line:
            choice = desk.choice(line)
            if choice is not None:
                self._unfold(desk.catalogue.cuts[choice.cut].primal)
        held = held_primals(desk)
        if self.unfolded not in held:
            self.unfolded = next(one for one in desk.catalogue.primals if one in held)
        self.rows.show(rows_of(desk, self.unfolded, words, ways=self.ways))
        wanted = line or (before.line if before is not None else 0)
        for place, row in enumerate(self.rows.rows()):
            if row.line and row.line == wanted:
                self.choose(place)
                return
        self._choose_near(at)

    def go_to(self, primal: str) -> None:
        """Unfold a primal and stand on it."""
        if self._desk is None or self._words is None:
            return
        self._unfold(primal)
        self.rows.show(rows_of(self._desk, primal, self._words, ways=self.ways))
        for place, row in enumerate(self.rows.rows()):
            if row.primal == primal:
                last = sum(1 for one in self.rows.rows() if one.primal == primal) - 1
                self.scrollTo(self.rows.index(place + last, 0))
                self.choose(place)
                return

    def show_ways(self, *, shown: bool) -> None:
        """Show every way the unfolded primal may be cut, or only while it is open."""
        self.ways = shown
        if self._desk is not None and self._words is not None:
            self.show_order(self._desk, self._words)

    def offer(self, number: int) -> "Offer | None":
        """The way of cutting that has this number."""
        rows = self.rows.rows()
        return next((one.offer for one in rows if one.offer and one.offer.number == number), None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        plain = held in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier)
        letters = event.text() if plain and event.text().isprintable() else ""
        if self._begun:
            self._begun += letters
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down) and plain:
            self._step(1 if key == Qt.Key.Key_Down else -1)
        elif key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            self.step_primal(1 if key == Qt.Key.Key_PageDown else -1)
        elif key == Qt.Key.Key_Delete:
            row = self.chosen()
            if row is not None and row.line:
                self.removed.emit(row.line)
        elif key == Qt.Key.Key_Space and plain:
            self.show_ways(shown=not self.ways)
        elif plain and event.text() in NUMBERS:
            found = self.offer(int(event.text()))
            if found is not None:
                self.offered.emit(found)
        elif letters.strip():
            # Not at once: letters that have come with it would find this window blocked.
            self._begun = letters
            QTimer.singleShot(0, self, self._say_typed)
        else:
            super().keyPressEvent(event)

    def _say_typed(self) -> None:
        typed, self._begun = self._begun, ""
        self.typed.emit(typed)

    def _unfold(self, primal: str) -> None:
        if primal != self.unfolded:
            self.unfolded, self.ways = primal, False

    def _choose_near(self, at: int) -> None:
        rows = self.rows.rows()
        if 0 <= at < len(rows) and rows[at].primal == self.unfolded:
            self.choose(at)
            return
        places = [place for place, row in enumerate(rows) if row.primal == self.unfolded]
        self.choose(places[-1] if places and at > places[-1] else places[0] if places else 0)

    def _step(self, by: int) -> None:
        at = self.currentIndex().row() + by
        rows = self.rows.rows()
        if not 0 <= at < len(rows):
            return
        if rows[at].line == 0 and rows[at].primal != self.unfolded:
            self.go_to(rows[at].primal)
        else:
            self.choose(at)

    def step_primal(self, by: int) -> None:
        """To the next primal of the share, or the one before."""
        if self._desk is None:
            return
        held = held_primals(self._desk)
        primals = [one for one in self._desk.catalogue.primals if one in held]
        at = primals.index(self.unfolded) + by
        if 0 <= at < len(primals):
            self.go_to(primals[at])

    def _clicked(self, index: QModelIndex) -> None:
        row = self.rows.row(index.row())
        if row.line == 0 and row.primal != self.unfolded:
            self.go_to(row.primal)
