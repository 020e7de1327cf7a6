"""The main thing of an open order: the carcass and the table, or the owners side by side."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.counter.carcass_map import CarcassMap, SideShown
from desktop.counter.order_rows import in_full
from desktop.counter.order_table import OrderTable
from desktop.counter.owners_view import OwnersView
from desktop.counter.side_marks import held_primals, side_marks, sides_apart
from desktop.counter.ways_offered import more_than_offered, to_do
from desktop.look.space import GROUP, row

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk


class OrderStage(QWidget):
    """Keeps the map, the table and the owners at the same primal.

    Signals:
        reading: the chosen row in full, as it is read to the owner.
        opened: another owner's order is wanted; carries its id and the primal that was shown.
    """

    reading = Signal(str)
    opened = Signal(int, str)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bench = bench
        self._desk: OrderDesk | None = None
        self.map = CarcassMap(self)
        self.table = OrderTable(self)
        self.owners = OwnersView(bench, self)
        self.owners.hide()
        across = row(self, gap=GROUP)
        across.addWidget(self.map)
        across.addWidget(self.table, 1)
        across.addWidget(self.owners, 1)
        self.table.moved.connect(self._show_map)
        self.map.picked.connect(self._go_to)
        self.owners.opened.connect(self.opened)
        self.owners.stood.connect(self._stood)

    def show_order(self, desk: "OrderDesk", line: int = 0) -> None:
        """Show the order as it stands, at a line, else where it was."""
        self._desk = desk
        self.table.show_order(desk, self._bench.words, line)
        self._show_map()
        if self.side_by_side():
            self.owners.show_owners(desk, self.owners.primal)

    def side_by_side(self) -> bool:
        """Whether the owners stand side by side in place of one order."""
        return not self.owners.isHidden()

    def turn(self, *, side_by_side: bool) -> None:
        """The owners side by side, or the order of one of them; the keyboard goes there."""
        self.table.setVisible(not side_by_side)
        self.owners.setVisible(side_by_side)
        self.owners.primal = self.table.unfolded
        if self._desk is not None:
            self.show_order(self._desk)
            if side_by_side:
                self._stood(self.owners.primal)
        (self.owners if side_by_side else self.table).setFocus()

    def _show_map(self) -> None:
        """The map says what the table says: the primals' states, and which is unfolded."""
        desk = self._desk
        if desk is None:
            return
        heads = [one for one in self.table.rows.rows() if not one.line and one.offer is None]
        names = {one.primal: one.cut for one in heads}
        sides = [SideShown("", {one.primal: one.mark for one in heads})]
        if sides_apart(desk):
            said = self.tr("side {number}")
            sides = [
                SideShown(said.format(number=side), side_marks(desk, side), mirrored=side == 2)
                for side in (1, 2)
            ]
        self.map.show_primals(desk.catalogue.species, sides, names, self.table.unfolded)
        self.reading.emit(self._read_out())

    def _read_out(self) -> str:
        """The chosen row in full; on a primal that is open also what Enter takes."""
        row, desk = self.table.chosen(), self._desk
        text = in_full(row)
        first = self.table.offer(1)
        if row is None or desk is None or row.line or row.offer is not None or first is None:
            return text
        if to_do(desk, row.primal):
            shown = next(one for one in self.table.rows.rows() if one.offer == first)
            text += "\n" + self.tr("Enter takes {way}").format(way=in_full(shown))
        more = more_than_offered(desk, row.primal)
        if more:
            text += "\n" + self.tr("{count} more cuts: type a name").format(count=more)
        return text

    def _go_to(self, primal: str) -> None:
        self.table.go_to(primal)
        if self.side_by_side():
            self.owners.go_to(primal)
        else:
            self.table.setFocus()

    def _stood(self, primal: str) -> None:
        """The table goes along as far as the shown owner has the primal."""
        if self._desk is not None and primal in held_primals(self._desk):
            self.table.go_to(primal)
        else:
            self.reading.emit("")
