"""Open balances: who owes what, and every bill and credit that was issued."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.fields import TextField
from desktop.fields.dates import date_text
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.bill_columns import BillColumns
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, SumLine, Table, count_column, money_column
from shared.money import money_text
from shared.shop.lists import BillRow, OrderRow

if TYPE_CHECKING:
    from desktop.bench import Bench

NEWEST = 500


class BalancesPage(QWidget):
    """Orders with a balance above, issued bills below: the newest, or those that are found.

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
        self._known = False  # not before they are read
        self._count = 0
        down = column(self, gap=TOGETHER, edge=GROUP)
        self.heading = Words("group", parent=self)
        self.orders: Table[OrderRow] = Table(RowsModel(BillColumns(bench, self).orders()), self)
        self.bills_heading = Words("group", parent=self)
        self.wanted = TextField(self)
        self.bills: Table[BillRow] = Table(RowsModel(self._columns()), self)
        between = row(gap=GROUP)
        between.addWidget(self.bills_heading, 3)
        between.addWidget(self.wanted, 2)
        down.addWidget(self.heading)
        self.sums = SumLine(self)
        above = column(gap=0)
        above.addWidget(self.orders, 1)
        above.addWidget(self.sums)
        down.addLayout(above, 3)
        down.addLayout(between)
        down.addWidget(self.bills, 2)
        self.orders.picked.connect(lambda row: self.picked.emit(row.id))
        self.bills.picked.connect(self.bill_picked)
        self.wanted.changed.connect(self.find_bills)
        self.sums.follow(self.orders, ("billed", "due"), lambda: self.tr("Sum"))
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the page."""
        total = sum(one.due_cents for one in self._open)
        self.heading.setText(
            self.tr("Open balances: {total}").format(total=money_text(total))
            if self._open
            else self.tr("No open balances")
            if self._known
            else self.tr("Orders with a balance")
        )
        said = self.tr("Bills and credits issued")
        if self._count == NEWEST:
            said = self.tr("Bills and credits issued, the newest {count}").format(count=NEWEST)
        self.bills_heading.setText(said)
        self.wanted.set_label(self.tr("Find an owner or a &number"))
        self.orders.set_name(self.tr("Orders with a balance"))
        self.bills.set_name(self.tr("Bills and credits issued"))

    def refresh(self) -> None:
        """Read balances and bills again, off the window's thread."""
        self.bench.work.run(self._read_open, then=self._show_open, key="office.open")
        self.find_bills()

    def find_bills(self) -> None:
        """Read the bills of what is typed, the newest first."""
        text = self.wanted.text()
        self.bench.work.run(self._read_bills, text, then=self._show_bills, key="office.bills")

    def _read_open(self) -> tuple[OrderRow, ...]:
        with self.bench.store.read() as work:
            return work.books.open_orders()

    def _read_bills(self, text: str) -> tuple[BillRow, ...]:
        with self.bench.store.read() as work:
            return work.bills.list(text=text, sort="number", descending=True, limit=NEWEST)

    def _show_open(self, rows: tuple[OrderRow, ...]) -> None:
        self._open, self._known = list(rows), True
        self.orders.show_rows(self._open, self.orders.chosen())
        self.retranslate()

    def _show_bills(self, rows: tuple[BillRow, ...]) -> None:
        self._count = len(rows)
        self.bills.show_rows(list(rows), self.bills.chosen())
        self.retranslate()

    def _columns(self) -> list[Column[BillRow]]:
        return [
            count_column("number", lambda: self.tr("No."), lambda row: row.number, width=80),
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
                width=170,
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
