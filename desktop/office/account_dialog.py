"""A customer's account of a month: opening, bills, payments, credits, closing."""

from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QWidget

from desktop.fields import DateField
from desktop.fields.dates import date_text
from desktop.file_out import write_out
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.office.opening_dialog import OnAccountDialog
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.paper_words import words_for
from desktop.preview import Preview, show_paper
from desktop.tables import Column, RowsModel, Table, money_column
from desktop.tables.written import cells_of
from shared.money import money_text
from shared.spreadsheet import csv_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.billing.account import Account, Move


@dataclass(frozen=True, slots=True)
class Shown:
    """A row: a move, or where `move` is None the balance before the first day or at the `end`."""

    day: date
    move: "Move | None"
    charged: int | None
    taken_off: int | None
    balance: int
    end: bool = False


class AccountDialog(QDialog):
    """Reads the month at hand when it opens; the month before and after are a button away."""

    def __init__(
        self, bench: "Bench", customer_id: int, name: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.bench, self._customer, self._name = bench, customer_id, name
        self.account: Account | None = None
        self.preview: Preview | None = None
        self.heading = Words("group", parent=self)
        self.start = DateField(bench.today, self)
        self.end = DateField(bench.today, self)
        self.earlier, self.later = button(self), button(self)
        self.sums = Words("body", "quiet", self).wrapped()
        self.table: Table[Shown] = Table(RowsModel(self._columns()), self, sortable=False)
        self.paper, self.csv, self.leave = button(self), button(self), button(self)
        self.money = button(self)
        self.money.hide()
        self._before = 0
        self.resize(980, 560)
        self._lay_out()
        for field in (self.start, self.end):
            field.committed.connect(self.read)
        self.earlier.clicked.connect(lambda: self._month(-1))
        self.later.clicked.connect(lambda: self._month(1))
        self.paper.clicked.connect(self.show_paper)
        QShortcut(QKeySequence("Ctrl+P"), self).activated.connect(self.show_paper)
        self.csv.clicked.connect(self.save_csv)
        self.money.clicked.connect(self.take_money)
        self.leave.clicked.connect(self.reject)
        self.retranslate()
        self.start.set_value(bench.today().replace(day=1))
        self.end.set_value(_last_of(bench.today()))
        self.read()

    def _lay_out(self) -> None:
        down = column(self, gap=GROUP, edge=EDGE)
        down.addWidget(self.heading)
        above = row(gap=TOGETHER)
        for part in (self.start, self.end):
            above.addWidget(part, 1)
        for each in (self.earlier, self.later):
            above.addWidget(each, 0, Qt.AlignmentFlag.AlignBottom)
        down.addLayout(above)
        down.addWidget(self.sums)
        down.addWidget(self.table, 1)
        feet = row(gap=TOGETHER)
        feet.addWidget(self.paper)
        feet.addWidget(self.csv)
        feet.addWidget(self.money)
        feet.addWidget(self.leave)
        feet.addStretch(1)
        down.addLayout(feet)

    def retranslate(self) -> None:
        """Every word of the dialog."""
        title = self.tr("Account of {name}").format(name=self._name)
        self.setWindowTitle(title)
        self.heading.setText(title)
        self.start.set_label(self.tr("&From"))
        self.end.set_label(self.tr("&To"))
        self.earlier.setText(self.tr("&Month before"))
        self.later.setText(self.tr("Month &after"))
        self.paper.setText(self.tr("On &paper… (Ctrl+P)"))
        self.csv.setText(self.tr("Save as CS&V"))
        self.money.setText(self.tr("Money for &before…"))
        self.leave.setText(self.tr("&Close"))
        self.table.set_name(title)
        self._tell()

    def _month(self, by: int) -> None:
        first = (self.start.value() or self.bench.today()).replace(day=1)
        first = (first - timedelta(days=1)).replace(day=1) if by < 0 else _last_of(first)
        if by > 0:
            first += timedelta(days=1)
        self.start.set_value(first)
        self.end.set_value(_last_of(first))
        self.read()

    def read(self) -> None:
        """Read the days asked for, off the window's thread."""
        end = self.end.value() or self.bench.today()
        start = min(self.start.value() or end.replace(day=1), end)
        self.bench.work.run(self._read, start, end, then=self._show, key="office.account")

    def take_money(self) -> None:
        """Ask for money for what was owed before these books."""
        self.money_dialog = OnAccountDialog(self.bench, self._customer, self._before, self)
        self.money_dialog.accepted.connect(self.read)
        self.money_dialog.open()

    def _read(self, start: date, end: date) -> "tuple[Account, int]":
        with self.bench.store.read() as work:
            before = work.ledger.owed_from_before(self._customer)
            return work.books.account(self._customer, start, end), before

    def _show(self, found: "tuple[Account, int]") -> None:
        account, self._before = found
        self.account = account
        self.money.setVisible(self._before > 0)
        rows = [Shown(account.start, None, None, None, account.opening)]
        for one in account.lines:
            cents = one.move.cents
            more, less = (cents, None) if cents > 0 else (None, -cents)
            rows.append(Shown(one.move.day, one.move, more, less, one.balance))
        rows.append(
            Shown(account.end, None, account.charged, account.taken_off, account.closing, end=True)
        )
        self.table.show_rows(rows)
        self._tell()

    def _tell(self) -> None:
        if self.account is None:
            self.sums.setText(self.tr("Reading the books"))
            return
        said = self.tr(
            "Brought forward {opening}, charged {charged}, taken off {off}, closing {closing}."
        )
        owing = self.tr("Below nothing, the shop owes the customer.")
        parts = [
            said.format(
                opening=money_text(self.account.opening),
                charged=money_text(self.account.charged),
                off=money_text(self.account.taken_off),
                closing=money_text(self.account.closing),
            )
        ]
        if min(self.account.opening, self.account.closing) < 0:
            parts.append(owing)
        self.sums.setText(" ".join(parts))

    def show_paper(self) -> None:
        """The account as it is shown, as a paper to look at and print."""
        if self.account is None:
            return
        title = f"{self.heading.text()}, {self.account.start:%Y-%m}"
        self.bench.work.run(
            account_paper,
            self.bench,
            self._customer,
            self.account,
            then=lambda pdf: self._show_paper(pdf, title),
            key="office.account_paper",
        )

    def _show_paper(self, pdf: bytes, title: str) -> None:
        self.preview = show_paper(self.bench, pdf, title, "paper", self)

    def save_csv(self) -> None:
        """The account as it is shown, as CSV."""
        columns = self.table.rows.columns
        heads = [one.title() for one in columns]
        rows = [cells_of(columns, one) for one in self.table.rows.rows()]
        first = self.start.value() or self.bench.today()
        path = self.bench.messages.save_where(
            self.csv.text(), Path.home() / f"account-{self._customer}-{first}.csv", "CSV (*.csv)"
        )
        if path is None:
            return
        write_out(self.bench, path, lambda: csv_text(heads, rows), self._written, self)

    def _written(self, fault: str) -> None:
        if fault:
            self.bench.messages.tell(self.tr("The file was not written"), fault)

    def _columns(self) -> list[Column[Shown]]:
        return [
            Column(
                "day",
                lambda: self.tr("Day"),
                lambda one: date_text(one.day, self.bench.words.language),
                kind="date",
                width=170,
            ),
            Column("what", lambda: self.tr("What"), self._what, stretch=True),
            Column(
                "order",
                lambda: self.tr("Order"),
                lambda one: str((one.move and one.move.order_number) or ""),
                kind="figure",
                width=90,
            ),
            money_column("more", lambda: self.tr("Charged"), lambda one: one.charged),
            money_column("less", lambda: self.tr("Taken off"), lambda one: one.taken_off),
            money_column("left", lambda: self.tr("Balance"), lambda one: one.balance),
        ]

    def _what(self, one: Shown) -> str:
        if one.move is None:
            return self.tr("Closing balance") if one.end else self.tr("Brought forward")
        words, key = self.bench.words, f"money.entry_{one.move.kind}"
        said = words.say(key) if words.has(key) else one.move.kind
        number = f" {one.move.number}" if one.move.number else ""
        memo = f", {one.move.memo}" if one.move.memo else ""
        return f"{said}{number}{memo}"


def account_paper(bench: "Bench", customer_id: int, account: "Account") -> bytes:
    """A customer's account as PDF, with the shop's and the customer's name and address."""
    from desktop.office.billing import address_lines
    from printing.account import account as paper_of

    with bench.store.read() as work:
        shop, customer = work.shop.details(), work.customers.get(customer_id)
    lines, spoken = address_lines(customer, ""), words_for(customer, bench.words)
    return paper_of(account, shop=shop, customer=lines, made=bench.now(), words=spoken)


def _last_of(day: date) -> date:
    """The last day of a day's month."""
    return (day.replace(day=28) + timedelta(days=4)).replace(day=1) - timedelta(days=1)
