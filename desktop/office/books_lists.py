"""The lists of the books: what each is read by and which columns it shows."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, Literal

from PySide6.QtCore import QObject

from desktop.fields.dates import date_text
from desktop.office.money_words import charge_words
from desktop.tables import Column, money_column
from shared.billing.journal import percent_text
from shared.shop.ledger import ClosedPeriod, DrawerCount, HeldDeposit, Income, Owed, TaxOfRate
from shared.shop.ledger import Takings as Taken

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench


@dataclass(frozen=True, slots=True)
class BookList:
    """One list: its name, its columns, and how it is read for days from and to (both within).

    `sums` are the keys of the columns that are added up at the foot; `days` says whether a list
    is of the days from and to, of the last of them, or as it is now.
    """

    key: str
    name: Callable[[], str]
    columns: list[Column[Any]]
    read: Callable[["Work", date, date], Sequence[object]]
    sums: tuple[str, ...] = ()
    days: Literal["span", "end", "now"] = "span"


class BookLists(QObject):
    """Makes the lists; a QObject for the sake of its words."""

    def __init__(self, bench: "Bench", parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench

    def every(self) -> tuple[BookList, ...]:
        """All lists in the order they are offered."""
        return (*self._of_money(), *self._of_books())

    def _of_money(self) -> tuple[BookList, ...]:
        return (
            BookList(
                "owed",
                lambda: self.tr("Who owes what"),
                self._owed(),
                lambda work, _start, end: work.books.receivables(end),
                sums=("all", "a30", "a60", "a90", "over"),
                days="end",
            ),
            BookList(
                "deposits",
                lambda: self.tr("Deposits held"),
                self._deposits(),
                lambda work, _start, _end: work.books.deposits(),
                sums=("cents",),
                days="now",
            ),
            BookList(
                "takings",
                lambda: self.tr("Takings by day"),
                self._takings(),
                lambda work, start, end: work.books.takings(start, end),
                sums=("cents",),
            ),
            BookList(
                "counts",
                lambda: self.tr("Drawer counts"),
                self._counts(),
                lambda work, start, end: work.ledger.counts(start, end),
                sums=("off",),
            ),
        )

    def _of_books(self) -> tuple[BookList, ...]:
        return (
            BookList(
                "tax",
                lambda: self.tr("Tax by rate"),
                self._tax(),
                lambda work, start, end: work.books.tax(start, end),
                sums=("net", "tax"),
            ),
            BookList(
                "income",
                lambda: self.tr("Income by service and species"),
                self._income(),
                lambda work, start, end: work.books.income(start, end),
                sums=("cents",),
            ),
            BookList(
                "closed",
                lambda: self.tr("Closed periods"),
                self._closed(),
                lambda work, _start, _end: work.periods.all(),
                days="now",
            ),
        )

    def _day(self, day: date | None) -> str:
        return "" if day is None else date_text(day, self.bench.words.language)

    def _owed(self) -> list[Column[Owed]]:
        return [
            Column("who", lambda: self.tr("Customer"), lambda row: row.customer, stretch=True),
            Column("phone", lambda: self.tr("Phone"), lambda row: row.phone, width=150),
            Column(
                "since",
                lambda: self.tr("Since"),
                lambda row: self._day(row.since),
                kind="date",
                sort=lambda row: row.since,
                width=170,
            ),
            money_column("all", lambda: self.tr("Owed"), lambda row: row.cents),
            money_column("a30", lambda: self.tr("To 30 days"), lambda row: row.ages[0], 130),
            money_column("a60", lambda: self.tr("31 to 60"), lambda row: row.ages[1]),
            money_column("a90", lambda: self.tr("61 to 90"), lambda row: row.ages[2]),
            money_column("over", lambda: self.tr("Over 90"), lambda row: row.ages[3]),
        ]

    def _deposits(self) -> list[Column[HeldDeposit]]:
        return [
            Column("who", lambda: self.tr("Customer"), lambda row: row.customer, stretch=True),
            Column(
                "order",
                lambda: self.tr("Order"),
                lambda row: str(row.order_number or ""),
                sort=lambda row: row.order_number,
                width=90,
            ),
            Column(
                "since",
                lambda: self.tr("Since"),
                lambda row: self._day(row.since),
                kind="date",
                sort=lambda row: row.since,
                width=170,
            ),
            money_column("cents", lambda: self.tr("Held"), lambda row: row.cents),
        ]

    def _takings(self) -> list[Column[Taken]]:
        return [
            Column(
                "day",
                lambda: self.tr("Day"),
                lambda row: self._day(row.day),
                kind="date",
                sort=lambda row: row.day,
                width=170,
            ),
            Column(
                "means",
                lambda: self.tr("Means"),
                lambda row: self.bench.words.say(f"money.account_money_{row.means}"),
                stretch=True,
            ),
            money_column("cents", lambda: self.tr("Taken"), lambda row: row.cents),
        ]

    def _counts(self) -> list[Column[DrawerCount]]:
        return [
            Column(
                "day",
                lambda: self.tr("Day"),
                lambda row: self._day(row.day),
                kind="date",
                sort=lambda row: row.at,
                width=170,
            ),
            money_column("should", lambda: self.tr("Expected"), lambda row: row.expected_cents),
            money_column("is", lambda: self.tr("Counted"), lambda row: row.counted_cents),
            money_column("off", lambda: self.tr("Difference"), lambda row: row.difference),
            Column("reason", lambda: self.tr("Reason"), lambda row: row.reason, stretch=True),
            Column("person", lambda: self.tr("Person"), lambda row: row.person, width=150),
        ]

    def _tax(self) -> list[Column[TaxOfRate]]:
        return [
            Column(
                "rate",
                lambda: self.tr("Rate"),
                lambda row: f"{percent_text(row.rate)} %",
                sort=lambda row: row.rate,
                stretch=True,
            ),
            money_column("net", lambda: self.tr("Sold"), lambda row: row.net_cents, 140),
            money_column("tax", lambda: self.tr("Tax"), lambda row: row.tax_cents, 140),
        ]

    def _income(self) -> list[Column[Income]]:
        return [
            Column("code", lambda: self.tr("Service"), self._service, stretch=True),
            Column("species", lambda: self.tr("Species"), self._species, width=140),
            money_column("cents", lambda: self.tr("Income"), lambda row: row.cents, 140),
        ]

    def _service(self, row: Income) -> str:
        return charge_words(row.code, self.bench.words) if row.code else self.tr("not told apart")

    def _species(self, row: Income) -> str:
        key = f"species.{row.species}"
        return self.bench.words.name(row.species, key) if row.species else ""

    def _closed(self) -> list[Column[ClosedPeriod]]:
        return [
            Column(
                "through",
                lambda: self.tr("Closed through"),
                lambda row: self._day(row.through),
                kind="date",
                sort=lambda row: row.through,
                width=170,
            ),
            Column("note", lambda: self.tr("Note"), lambda row: row.note, stretch=True),
            Column("person", lambda: self.tr("Person"), lambda row: row.person, width=150),
        ]
