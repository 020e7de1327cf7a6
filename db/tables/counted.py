"""Tables of packages wrapped by count, without a weight, and of those that left."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Counted(Row):
    """So many packages of a line at one time; afterwards only its void columns may be written."""

    __tablename__ = "counted_packages"
    __table_args__ = (CheckConstraint("packages > 0", name="above_nothing"),)

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    line: Mapped[int]
    cut: Mapped[str]
    product: Mapped[str]
    owner: Mapped[str]
    packages: Mapped[int]
    finishes: Mapped[str]
    made_at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    void: Mapped[str]
    voided_at: Mapped[datetime | None]
    voided_by: Mapped[int | None] = mapped_column(ForeignKey("persons.id"))


class CountedFreezings(Row):
    """Since when a count is in a freezer; None: in none. The last row holds, none is changed."""

    __tablename__ = "counted_freezings"

    id: Mapped[Id]
    counted_id: Mapped[int] = mapped_column(ForeignKey("counted_packages.id"), index=True)
    since: Mapped[datetime | None]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class HandedCounts(Row):
    """A count that left, and when; it leaves once and whole. Rows are never changed."""

    __tablename__ = "handed_counts"

    counted_id: Mapped[int] = mapped_column(
        ForeignKey("counted_packages.id"), primary_key=True, autoincrement=False
    )
    hand_over_id: Mapped[int] = mapped_column(ForeignKey("hand_overs.id"), index=True)
