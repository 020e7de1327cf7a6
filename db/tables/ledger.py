"""Tables of the ledger: entries with what they move, closed periods, drawer counts."""

from datetime import date, datetime
from fractions import Fraction

from sqlalchemy import CheckConstraint, ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Money, Row


class LedgerEntries(Row):
    """One happening in the books; `id` is its number, without gaps. Rows are never changed.

    It is written after its postings: a trigger refuses it unless they add up to nothing, and
    refuses a day that lies in a closed period.
    """

    __tablename__ = "ledger_entries"
    __table_args__ = (
        CheckConstraint(
            "kind IN ('bill', 'credit', 'deposit', 'payment', 'refund', 'write_off',"
            " 'on_account', 'opening', 'drawer', 'cash_moved', 'collected', 'paid_out')",
            name="kind",
        ),
    )

    id: Mapped[Id]
    kind: Mapped[str]
    day: Mapped[date] = mapped_column(index=True)
    number: Mapped[int]
    bill_id: Mapped[int | None] = mapped_column(ForeignKey("bills.id"), unique=True)
    payment_id: Mapped[int | None] = mapped_column(ForeignKey("payments.id"), unique=True)
    memo: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class LedgerPostings(Row):
    """Cents moved on one account: above nothing a debit, below a credit. Never changed."""

    __tablename__ = "ledger_postings"
    __table_args__ = (
        CheckConstraint("cents <> 0", name="not_nothing"),
        Index(None, "account", "day", "cents"),
        Index(None, "account", "customer_id", "order_id", "lot_id", "cents"),
    )

    entry_id: Mapped[int] = mapped_column(
        ForeignKey("ledger_entries.id", deferrable=True, initially="DEFERRED"), primary_key=True
    )
    position: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    account: Mapped[str]
    cents: Mapped[Money]
    day: Mapped[date]
    code: Mapped[str]
    species: Mapped[str]
    tax_rate: Mapped[Fraction | None]
    customer_id: Mapped[int | None] = mapped_column(ForeignKey("customers.id"))
    order_id: Mapped[int | None] = mapped_column(ForeignKey("orders.id"))
    lot_id: Mapped[int | None] = mapped_column(ForeignKey("lots.id"), index=True)


class ClosedPeriods(Row):
    """A day through which the books are closed; a later row closes more, none opens again."""

    __tablename__ = "closed_periods"

    id: Mapped[Id]
    through: Mapped[date] = mapped_column(unique=True)
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class DrawerCounts(Row):
    """The cash counted at a day's end beside what the books expect, with why they differ."""

    __tablename__ = "drawer_counts"
    __table_args__ = (
        CheckConstraint("counted_cents >= 0", name="counted"),
        CheckConstraint("counted_cents = expected_cents OR reason <> ''", name="reason"),
    )

    id: Mapped[Id]
    day: Mapped[date] = mapped_column(index=True)
    expected_cents: Mapped[Money]
    counted_cents: Mapped[Money]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
