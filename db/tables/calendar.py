"""Tables of the kill calendar: the shop's week, other days, overruled bookings, who waits."""

from datetime import date, datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class CalendarPlans(Row):
    """The shop's week and rooms as canonical JSON; the last row counts."""

    __tablename__ = "calendar_plans"

    id: Mapped[Id]
    plan: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class OtherDays(Row):
    """A date that isn't as its weekday; `places` is canonical JSON."""

    __tablename__ = "other_days"

    id: Mapped[Id]
    day: Mapped[date] = mapped_column(unique=True)
    closed: Mapped[bool]
    note: Mapped[str]
    places: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Overrules(Row):
    """A booking taken though its day was full: what was full, and why it was taken."""

    __tablename__ = "overrules"

    id: Mapped[Id]
    lot_id: Mapped[int] = mapped_column(ForeignKey("lots.id"), index=True)
    codes: Mapped[str]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class WaitingRows(Row):
    """Who waits for a place."""

    __tablename__ = "waiting"
    __table_args__ = (
        CheckConstraint("head >= 1", name="head"),
        CheckConstraint("state IN ('waiting', 'told', 'booked', 'gone')", name="state"),
        CheckConstraint("skin IN ('scalded', 'skinned', 'unknown')", name="skin"),
        CheckConstraint("regime IN ('custom', 'inspected')", name="regime"),
    )

    id: Mapped[Id]
    customer_id: Mapped[int] = mapped_column(ForeignKey("customers.id"))
    species: Mapped[str]
    head: Mapped[int]
    from_day: Mapped[date]
    note: Mapped[str]
    skin: Mapped[str] = mapped_column(server_default="unknown")
    regime: Mapped[str] = mapped_column(server_default="custom")
    keeps: Mapped[str] = mapped_column(server_default="")
    state: Mapped[str] = mapped_column(index=True)
    version: Mapped[int]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
