"""The second view of an order: its lot's owners as columns, one primal at a time."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QWidget

from desktop.counter.owners_rows import OwnersRow, calls, matters, owners_rows
from desktop.look.patterns import Mark
from desktop.look.space import ROW_DENSE, TOGETHER, column
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table

if TYPE_CHECKING:
    from collections.abc import Callable

    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk

NAME_WIDTH = 132
LEAST_COLUMN = 128


class OwnersTable(Table[OwnersRow]):
    """Owners as columns; left and right go along them, up and down along the primals.

    Signals:
        stepped: another primal; carries 1 down or -1 up.
        opened: Enter on an owner; carries the place of the owner.
    """

    stepped = Signal(int)
    opened = Signal(int)

    def __init__(self, owners: int, columns: list[Column[OwnersRow]], parent: QWidget) -> None:
        super().__init__(RowsModel(columns), parent, height=ROW_DENSE, sortable=False)
        self.owners = owners
        across = self.horizontalHeader()
        across.setMinimumSectionSize(LEAST_COLUMN)  # five of them scroll
        across.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectColumns)
        self.at = 0

    def choose_owner(self, at: int) -> None:
        """Make an owner's column the chosen one."""
        self.at = at % max(self.owners, 1)
        self.selectColumn(self.at + 1)
        self.scrollTo(self.rows.index(0, self.at + 1))

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
            self.choose_owner(self.at + (1 if key == Qt.Key.Key_Right else -1))
        elif plain and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.opened.emit(self.at)
        else:
            super().keyPressEvent(event)


class OwnersView(QWidget):
    """The table of owners, what they must agree on, and whom to ring.

    Signals:
        opened: an owner's order is wanted; carries its id.
        stepped: another primal; carries 1 down or -1 up.
    """

    opened = Signal(int)
    stepped = Signal(int)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bench = bench
        self._desk: OrderDesk | None = None
        self.table: OwnersTable | None = None
        self.agree = Words("body", "tight", self).wrapped()
        self.ring = Words("body", parent=self).wrapped()
        self._column = column(self, gap=TOGETHER)
        self._column.addWidget(self.agree)
        self._column.addWidget(self.ring)

    def show_owners(self, desk: "OrderDesk", primal: str) -> None:
        """Show one primal of every owner; the shown order's column is chosen."""
        words = self._bench.words
        fresh = self.table is None or self._desk is not desk
        self._desk = desk
        if fresh or self.table is None or self.table.owners != len(desk.orders):
            self._make(desk)
        table = self.table
        assert table is not None
        table.rows.show(owners_rows(desk, primal, words))
        table.choose_owner([one.id for one in desk.orders].index(desk.order.id))
        said = matters(desk, words)
        worst = "contested" if any(mark is Mark.CONTESTED for _, mark in said) else "tight"
        self.agree.set_role(worst if said else "quiet")
        agree = self.tr("To agree on: {what}").format(what="\n".join(text for text, _ in said))
        self.agree.setText(agree if said else self.tr("There is nothing they must agree on."))
        with self._bench.store.read() as work:
            phones = work.orders.phones(desk.lot.id)
        who = calls(desk, phones)
        ring = self.tr("Ring {whom}").format(whom="\n".join(who))
        self.ring.setText(ring if who else self.tr("Every owner has answered."))

    def _make(self, desk: "OrderDesk") -> None:
        if self.table is not None:
            self._column.removeWidget(self.table)
            self.table.deleteLater()
        columns: list[Column[OwnersRow]] = [
            Column("what", lambda: "", lambda row: row.what, width=NAME_WIDTH),
            *(self._owner(place) for place in range(len(desk.orders))),
        ]
        self.table = OwnersTable(len(desk.orders), columns, self)
        self.table.set_name(self.tr("Owners side by side"))
        self.table.stepped.connect(self.stepped)
        self.table.opened.connect(self._open)
        self._column.insertWidget(0, self.table, 1)
        self.table.show()  # now, so that it can have the keyboard at once
        self.setFocusProxy(self.table)

    def _owner(self, place: int) -> Column[OwnersRow]:
        return Column(
            f"owner{place}",
            self._title(place),
            lambda row: row.cells[place][0],
            kind="state",
            mark=lambda row: None if row.cells[place][1] is Mark.PLAIN else row.cells[place][1],
            width=LEAST_COLUMN,
            stretch=True,
            tip=lambda row: row.cells[place][0],
        )

    def _title(self, place: int) -> "Callable[[], str]":
        def title() -> str:
            orders = () if self._desk is None else self._desk.orders
            if place >= len(orders):
                return ""
            return orders[place].owner or self.tr("to be named")

        return title

    def _open(self, place: int) -> None:
        if self._desk is not None:
            self.opened.emit(self._desk.orders[place].id)
