"""The second view of an order: its lot's owners as columns, one primal at a time or all."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.counter.owners_rows import (
    OwnersRow,
    calls,
    matters,
    owners_rows,
    primals_of,
    whole_rows,
)
from desktop.counter.owners_table import LEAST_COLUMN, OwnersTable
from desktop.look.patterns import Mark
from desktop.look.space import TOGETHER, column
from desktop.panels.heading import Words
from desktop.tables import Column

if TYPE_CHECKING:
    from collections.abc import Callable

    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk

NAME_WIDTH = 132


class OwnersView(QWidget):
    """The table of owners, what they must agree on, and whom to ring.

    It goes along the primals that any of the owners has, one at a time or all in view.

    Signals:
        opened: an owner's order is wanted; carries its id and the primal that is shown.
        stood: another primal is shown; carries it.
    """

    opened = Signal(int, str)
    stood = Signal(str)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bench = bench
        self._desk: OrderDesk | None = None
        self.primal = ""
        self.whole = False
        self.table: OwnersTable | None = None
        self.agree = Words("body", "tight", self).wrapped()
        self.ring = Words("body", parent=self).wrapped()
        self.keys = Words("small", "quiet", self).wrapped()
        self._column = column(self, gap=TOGETHER)
        for part in (self.agree, self.ring, self.keys):
            self._column.addWidget(part)

    def show_owners(self, desk: "OrderDesk", primal: str) -> None:
        """Show one primal of every owner, or all; the shown order's column is chosen."""
        words = self._bench.words
        fresh = self.table is None or self._desk is not desk
        self._desk = desk
        if fresh or self.table is None or self.table.owners != len(desk.orders):
            self._make(desk)
        self.primal = _spoken(desk, primal)
        self._show_rows([one.id for one in desk.orders].index(desk.order.id))
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

    def turn(self) -> None:
        """All primals in view, or one of them in full."""
        self.whole = not self.whole
        if self.table is not None:
            self._show_rows(self.table.at)

    def step(self, by: int) -> None:
        """To the next primal that an owner has something of, or the one before."""
        if self._desk is None:
            return
        there = primals_of(self._desk)
        at = there.index(self.primal) + by if self.primal in there else 0
        if 0 <= at < len(there):
            self.go_to(there[at])

    def go_to(self, primal: str) -> None:
        """Show a primal."""
        self.primal = primal
        if self.table is not None:
            self._show_rows(self.table.at)
        self.stood.emit(primal)

    def _show_rows(self, owner: int) -> None:
        desk, table = self._desk, self.table
        if desk is None or table is None:
            return
        words = self._bench.words
        if self.whole:
            self.keys.setText(self.tr("Space shows one primal in full, Enter opens an order."))
            rows = whole_rows(desk, words)
        else:
            self.keys.setText(self.tr("Space shows all primals, Enter opens an order."))
            rows = owners_rows(desk, self.primal, words)
        if list(table.rows.rows()) != rows:
            table.rows.show(rows)
        table.stand(owner, self.primal)

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
        self.table.stepped.connect(self.step)
        self.table.opened.connect(self._open)
        self.table.turned.connect(self.turn)
        self.table.stood.connect(self.go_to)
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
            self.opened.emit(self._desk.orders[place].id, self.primal)


def _spoken(desk: "OrderDesk", primal: str) -> str:
    """The primal, else the first of which an owner has something."""
    there = primals_of(desk)
    return primal if primal in there else next(iter(there), primal)
