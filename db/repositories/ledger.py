"""The books as they are written: opening balances, money on account, the drawer; and read back."""

from datetime import date
from itertools import groupby
from typing import cast

from sqlalchemy import ColumnElement, func, select

from db.columns import Cents
from db.desk import Desk
from db.repositories.ledger_posting import (
    About,
    Party,
    must_be_open,
    must_be_taken,
    post,
    shop_day,
)
from db.tables.customers import Customers
from db.tables.ledger import DrawerCounts, LedgerEntries, LedgerPostings
from db.tables.people import Persons
from shared.billing.accounts import CASH, OPENABLE, Account
from shared.billing.posting import (
    Posting,
    cash_moved_postings,
    collected_postings,
    drawer_postings,
    on_account_postings,
    opening_postings,
)
from shared.shop.ledger import DrawerCount, Entry, EntryKind, EntryLine
from shared.shop.money import PaymentMeans
from shared.shop.problems import Refused


class LedgerBook:
    """`work.ledger`. Bills, credits and payments write their entries themselves."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def open_with(
        self,
        account: Account,
        cents: int,
        *,
        day: date | None = None,
        customer_id: int | None = None,
        note: str = "",
    ) -> Entry | Refused:
        """A balance from before these books, on the side where it usually stands.

        $20.00 on "receivable" is owed by the customer, on "tax" owed to the state; below nothing
        it is the other way round. Refused: "not_openable", "nothing", "customer_missing",
        "period_closed", "not_yet" (a day to come).
        """
        if account not in OPENABLE:
            return Refused("not_openable", {"account": account})
        if (account == "receivable") != (customer_id is not None):
            return Refused("customer_missing", {"account": account})
        sign = -1 if account == "tax" else 1
        about = About(memo=note.strip())
        return self._kept(
            "opening", opening_postings(account, sign * cents), Party(customer_id), about, day
        )

    def receive(
        self,
        customer_id: int,
        means: PaymentMeans,
        cents: int,
        note: str = "",
        *,
        day: date | None = None,
    ) -> Entry | Refused:
        """Money for what a customer owed before these books, with the next receipt number.

        Refused: "not_positive", "more_than_due" (with what is due), "not_yet", "period_closed".
        Below the due any part may be paid. `day` is the day it came where that isn't today.
        """
        if cents <= 0:
            return Refused("not_positive")
        due = self.owed_from_before(customer_id)
        if cents > due:
            return Refused("more_than_due", {"due": str(due)})
        postings = on_account_postings(means, cents)
        return self._with_receipt("on_account", postings, Party(customer_id), note, day)

    def owed_from_before(self, customer_id: int) -> int:
        """What a customer still owes from before these books, in cents."""
        return self._desk.connection.execute(
            select(func.coalesce(func.sum(LedgerPostings.cents, type_=Cents()), 0)).where(
                LedgerPostings.account == "receivable",
                LedgerPostings.customer_id == customer_id,
                LedgerPostings.order_id.is_(None),
                LedgerPostings.lot_id.is_(None),
            )
        ).scalar_one()

    def collect(
        self,
        producer_id: int,
        means: PaymentMeans,
        cents: int,
        note: str = "",
        *,
        day: date | None = None,
    ) -> Entry | Refused:
        """Money a buyer pays for the producer's animal, held for him; with a receipt number.

        Refused: "not_positive", "not_yet", "period_closed".
        """
        if cents <= 0:
            return Refused("not_positive")
        return self._for_producer("collected", producer_id, means, cents, note, day)

    def pay_out(
        self,
        producer_id: int,
        means: PaymentMeans,
        cents: int,
        note: str = "",
        *,
        day: date | None = None,
    ) -> Entry | Refused:
        """Hand the producer what was collected for him, never more ("more_than_there")."""
        if cents <= 0:
            return Refused("not_positive")
        held = self.held_for(producer_id)
        if cents > held:
            return Refused("more_than_there", {"there": str(held)})
        return self._for_producer("paid_out", producer_id, means, -cents, note, day)

    def held_for(self, producer_id: int) -> int:
        """What is collected for a producer and not yet paid out, in cents."""
        found = self._desk.connection.execute(
            select(func.coalesce(func.sum(LedgerPostings.cents, type_=Cents()), 0)).where(
                LedgerPostings.account == "producers", LedgerPostings.customer_id == producer_id
            )
        ).scalar_one()
        return -int(found)

    def _for_producer(
        self,
        kind: EntryKind,
        producer_id: int,
        means: PaymentMeans,
        cents: int,
        note: str,
        day: date | None,
    ) -> Entry | Refused:
        postings = collected_postings(means, cents)
        return self._with_receipt(kind, postings, Party(producer_id), note, day)

    def _with_receipt(
        self,
        kind: EntryKind,
        postings: tuple[Posting, ...],
        party: Party,
        note: str,
        day: date | None,
    ) -> Entry | Refused:
        """Keep it under the next receipt number, on a day that money may be taken."""
        wrong = must_be_taken(self._desk, day or shop_day(self._desk))
        if wrong is not None:
            return wrong
        about = About(self._desk.next_number("receipt"), memo=note.strip())
        return self._kept(kind, postings, party, about, day)

    def move_cash(self, cents: int, note: str, *, day: date | None = None) -> Entry | Refused:
        """Cash carried to the bank; below nothing, from the bank into the drawer (change).

        Refused: "nothing", "reason_missing", "more_than_there" (with what the drawer has).
        """
        if not note.strip():
            return Refused("reason_missing")
        there = self.in_drawer()
        if cents > there:
            return Refused("more_than_there", {"there": str(there)})
        return self._kept(
            "cash_moved", cash_moved_postings(cents), Party(), About(memo=note.strip()), day
        )

    def in_drawer(self) -> int:
        """The cash that should be in the drawer."""
        return self._desk.connection.execute(
            select(func.coalesce(func.sum(LedgerPostings.cents, type_=Cents()), 0)).where(
                LedgerPostings.account == CASH
            )
        ).scalar_one()

    def count_drawer(self, counted: int, reason: str = "") -> DrawerCount | Refused:
        """Keep what was counted; a difference needs a reason.

        It is posted, so that the books hold what the drawer holds. Refused: "negative",
        "reason_missing" (with the difference), "period_closed".
        """
        desk = self._desk
        expected, day = self.in_drawer(), shop_day(desk)
        if counted < 0:
            return Refused("negative")
        if counted != expected and not reason.strip():
            return Refused("reason_missing", {"difference": str(counted - expected)})
        closed = must_be_open(desk, day)
        if closed is not None:
            return closed
        new = desk.insert(
            DrawerCounts,
            {
                "day": day,
                "expected_cents": expected,
                "counted_cents": counted,
                "reason": reason.strip(),
                "at": desk.now,
                **desk.stamp,
            },
        )
        about = About(new, memo=reason.strip())
        post(desk, "drawer", drawer_postings(expected, counted), Party(), about, day)
        desk.record("drawer", new, "counted", reason.strip(), expected=expected, counted=counted)
        return next(one for one in self.counts(day, day) if one.id == new)

    def counts(self, start: date, end: date) -> tuple[DrawerCount, ...]:
        """The counts of the drawer of some days; `end` is within."""
        rows = self._desk.connection.execute(
            select(
                DrawerCounts.id,
                DrawerCounts.day,
                DrawerCounts.expected_cents,
                DrawerCounts.counted_cents,
                DrawerCounts.reason,
                DrawerCounts.at,
                Persons.name,
            )
            .join(Persons, Persons.id == DrawerCounts.person_id)
            .where(DrawerCounts.day >= start, DrawerCounts.day <= end)
            .order_by(DrawerCounts.id)
        )
        return tuple(DrawerCount(*row) for row in rows)

    def last_counted(self) -> date | None:
        """The day the drawer was counted last, or None."""
        return self._desk.connection.execute(select(func.max(DrawerCounts.day))).scalar_one()

    def entries(
        self, start: date, end: date, *, limit: int | None = None, offset: int = 0
    ) -> tuple[Entry, ...]:
        """The journal of some days in the order it was written; `end` is within. One query."""
        within = (LedgerEntries.day >= start) & (LedgerEntries.day <= end)
        if limit is None:
            return self._entries(within)
        chosen = (
            select(LedgerEntries.id)
            .where(within)
            .order_by(LedgerEntries.day, LedgerEntries.id)
            .limit(limit)
            .offset(offset)
        )
        return self._entries(LedgerEntries.id.in_(chosen))

    def _entries(self, where: ColumnElement[bool]) -> tuple[Entry, ...]:
        rows = self._desk.connection.execute(
            select(
                LedgerEntries.id,
                LedgerEntries.kind,
                LedgerEntries.day,
                LedgerEntries.number,
                LedgerEntries.memo,
                Persons.name,
                LedgerPostings.account,
                LedgerPostings.cents,
                LedgerPostings.code,
                LedgerPostings.species,
                LedgerPostings.tax_rate,
                func.coalesce(Customers.name, ""),
            )
            .join(LedgerPostings, LedgerPostings.entry_id == LedgerEntries.id)
            .join(Persons, Persons.id == LedgerEntries.person_id)
            .outerjoin(Customers, Customers.id == LedgerPostings.customer_id)
            .where(where)
            .order_by(LedgerEntries.day, LedgerEntries.id, LedgerPostings.position)
        )
        found: list[Entry] = []
        for _, of_entry in groupby(rows, key=lambda row: row[0]):
            each = list(of_entry)
            number, kind, day, paper, memo, person = each[0][:6]
            lines = tuple(EntryLine(*row[6:]) for row in each)
            found.append(Entry(number, cast("EntryKind", kind), day, paper, memo, person, lines))
        return tuple(found)

    def _kept(
        self,
        kind: EntryKind,
        postings: tuple[Posting, ...],
        party: Party,
        about: About,
        day: date | None = None,
    ) -> Entry | Refused:
        today = shop_day(self._desk)
        on = day or today
        if not postings:
            return Refused("nothing")
        if on > today:
            return Refused("not_yet", {"day": on.isoformat()})
        closed = must_be_open(self._desk, on)
        if closed is not None:
            return closed
        entry = post(self._desk, kind, postings, party, about, on)
        self._desk.record("ledger", entry, kind, about.memo, number=about.number)
        return self._entries(LedgerEntries.id == entry)[0]
