"""Tables of issued bills and credit notes, how charges were divided, and payments."""

from datetime import datetime
from fractions import Fraction

from sqlalchemy import CheckConstraint, ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Money, Row


class Bills(Row):
    """A bill or a credit note as issued; rows are never changed.

    order_id is null on what falls to the producer of the lot and to no share.
    """

    __tablename__ = "bills"
    __table_args__ = (
        UniqueConstraint("kind", "number"),
        CheckConstraint("kind IN ('bill', 'credit')", name="kind"),
        CheckConstraint("(kind = 'credit') = (credits IS NOT NULL)", name="credits_a_bill"),
    )

    id: Mapped[Id]
    kind: Mapped[str]
    number: Mapped[int]
    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), index=True)
    order_id: Mapped[int | None] = mapped_column(ForeignKey("orders.id"), index=True)
    customer_id: Mapped[int | None] = mapped_column(ForeignKey("customers.id"), index=True)
    total_cents: Mapped[Money]
    credits: Mapped[int | None] = mapped_column(ForeignKey("bills.id"), index=True)
    reason: Mapped[str]
    paper_id: Mapped[int] = mapped_column(ForeignKey("papers.id"))
    issued_at: Mapped[datetime] = mapped_column(index=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BillLines(Row):
    """A line of a bill, for reports; the bill itself is its paper. Rows are never changed."""

    __tablename__ = "bill_lines"

    bill_id: Mapped[int] = mapped_column(ForeignKey("bills.id"), primary_key=True)
    position: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    key: Mapped[str]
    code: Mapped[str]
    basis: Mapped[str]
    quantity: Mapped[Fraction | None]
    unit: Mapped[str]
    rate: Mapped[Fraction | None]
    amount_cents: Mapped[Money]
    tax_cents: Mapped[Money]


class Divisions(Row):
    """How a charge on a shared lot was divided when its first bill was issued; never changed.

    share 0 is the producer's.
    """

    __tablename__ = "divisions"

    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), primary_key=True)
    charge: Mapped[str] = mapped_column(primary_key=True)
    share: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    cents: Mapped[Money]


class Payments(Row):
    """Money taken or given back; rows are never changed, a mistake is a row of its own."""

    __tablename__ = "payments"
    __table_args__ = (
        CheckConstraint("cents > 0", name="above_nothing"),
        CheckConstraint("kind IN ('deposit', 'payment', 'refund', 'write_off')", name="kind"),
    )

    id: Mapped[Id]
    number: Mapped[int] = mapped_column(unique=True)
    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), index=True)
    order_id: Mapped[int | None] = mapped_column(ForeignKey("orders.id"), index=True)
    customer_id: Mapped[int | None] = mapped_column(ForeignKey("customers.id"), index=True)
    kind: Mapped[str]
    means: Mapped[str]
    cents: Mapped[Money]
    note: Mapped[str]
    at: Mapped[datetime] = mapped_column(index=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
