"""Tables of what is booked: lots, their animals, shares and holdings."""

from datetime import date, datetime
from fractions import Fraction

from sqlalchemy import CheckConstraint, ForeignKey, ForeignKeyConstraint, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Money, Row


class Lots(Row):
    """One booking. `last_line` is the last order line given out in it; lines never return."""

    __tablename__ = "lots"
    __table_args__ = (CheckConstraint("head >= 1", name="head"),)

    id: Mapped[Id]
    number: Mapped[int] = mapped_column(unique=True)
    species: Mapped[str]
    head: Mapped[int]
    day: Mapped[date] = mapped_column(index=True)
    producer_id: Mapped[int] = mapped_column(ForeignKey("customers.id"), index=True)
    skin: Mapped[str]
    regime: Mapped[str]
    booked_count: Mapped[int | None]
    booked_unit: Mapped[str | None]
    booked_exponent: Mapped[int | None]
    keeps: Mapped[str]
    note: Mapped[str]
    cancelled: Mapped[str]
    last_line: Mapped[int]
    version: Mapped[int]


class Animals(Row):
    """One animal; `place_in_lot` counts from 0."""

    __tablename__ = "animals"
    __table_args__ = (UniqueConstraint("lot_id", "place_in_lot"),)

    id: Mapped[Id]
    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"))
    place_in_lot: Mapped[int]
    tag: Mapped[str]
    tag_key: Mapped[str] = mapped_column(index=True)
    sex: Mapped[str]
    age: Mapped[str]
    skin: Mapped[str]
    regime: Mapped[str]
    state: Mapped[str] = mapped_column(index=True)
    split: Mapped[bool | None]
    place: Mapped[str]
    arrived_at: Mapped[datetime | None]
    killed_on: Mapped[date | None]
    hung_at: Mapped[datetime | None]
    held_for: Mapped[str]
    version: Mapped[int]


class Shares(Row):
    """An owner's part of a lot; customer_id is null while it is to be named."""

    __tablename__ = "shares"

    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    customer_id: Mapped[int | None] = mapped_column(ForeignKey("customers.id"), index=True)
    leader: Mapped[int | None]
    deposit_asked: Mapped[Money]


class Holdings(Row):
    """What a share holds: a side, a quarter of one, or a fraction of either."""

    __tablename__ = "holdings"
    __table_args__ = (
        ForeignKeyConstraint(["lot_id", "share"], ["shares.lot_id", "shares.number"]),
        UniqueConstraint("lot_id", "share", "carcass", "side", "quarter"),
        CheckConstraint("side IN (1, 2)", name="side"),
        CheckConstraint("quarter IN ('', 'fore', 'hind')", name="quarter"),
    )

    id: Mapped[Id]
    lot_id: Mapped[int]
    share: Mapped[int]
    carcass: Mapped[int]
    side: Mapped[int]
    quarter: Mapped[str]
    fraction: Mapped[Fraction]
