"""Open balances: who owes what, and every bill and credit that was issued."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.fields.dates import date_text
from desktop.look.space import GROUP, TOGETHER, column
from desktop.office.bill_columns import BillColumns
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table, count_column, money_column
from shared.money import money_text
from shared.shop.lists import BillRow, OrderRow

if TYPE_CHECKING:
    from desktop.bench import Bench


class BalancesPage(QWidget):
    """Orders with a balance above, issued bills below.

    Signals:
        picked: an order's id, to be opened under Bills.
        bill_picked: a BillRow, its paper to be shown.
    """

    picked = Signal(int)
    bill_picked = Signal(object)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self._open: list[OrderRow] = []
        down = column(self, gap=TOGETHER, edge=GROUP)
        self.heading = Words("group", parent=self)
        self.orders: Table[OrderRow] = Table(RowsModel(BillColumns(bench, self).orders()), self)
        self.bills_heading = Words("group", parent=self)
        self.bills: Table[BillRow] = Table(RowsModel(self._columns()), self)
        down.addWidget(self.heading)
        down.addWidget(self.orders, 3)
        down.addWidget(self.bills_heading)
        down.addWidget(self.bills, 2)
        self.orders.picked.connect(lambda row: self.picked.emit(row.id))
        self.bills.picked.connect(self.bill_picked)
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the page."""
        total = sum(one.due_cents for one in self._open)
        self.heading.setText(
            self.tr("Open balances: {total}").format(total=money_text(total))
            if self._open
            else self.tr("No open balances")
        )
        self.bills_heading.setText(self.tr("Bills and credits issued"))
        self.orders.set_name(self.tr("Orders with a balance"))
        self.bills.set_name(self.tr("Bills and credits issued"))

    def refresh(self) -> None:
        """Read balances and bills again."""
        with self.bench.store.read() as work:
            rows = work.orders.list(closed=False, sort="number")
            bills = work.bills.list(sort="number", descending=True)
        self._open = [one for one in rows if one.due_cents]
        self.orders.show_rows(self._open, self.orders.chosen())
        self.bills.show_rows(list(bills), self.bills.chosen())
        self.retranslate()

    def _columns(self) -> list[Column[BillRow]]:
        return [
            count_column("number", lambda: self.tr("No."), lambda row: row.number, width=70),
            Column(
                "kind",
                lambda: self.tr("Paper"),
                lambda row: self.tr("bill") if row.credits is None else self.tr("credit"),
                width=90,
            ),
            Column("customer", lambda: self.tr("Owner"), lambda row: row.customer, stretch=True),
            Column(
                "issued",
                lambda: self.tr("Issued"),
                lambda row: date_text(row.issued_at.astimezone().date(), self.bench.words.language),
                kind="date",
                sort=lambda row: row.issued_at,
                width=150,
            ),
            *self._sums(),
        ]

    def _sums(self) -> list[Column[BillRow]]:
        return [
            money_column("total", lambda: self.tr("Total"), lambda row: row.total_cents),
            money_column(
                "balance",
                lambda: self.tr("Balance"),
                lambda row: None if row.credits is not None else row.due_cents,
            ),
        ]
