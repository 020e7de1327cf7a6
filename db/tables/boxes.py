"""Tables of the boxes packages lie in, and of what was handed over to whom."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class PackagePlaces(Row):
    """In which box a package lies and where that stands; rows are never changed."""

    __tablename__ = "package_places"

    id: Mapped[Id]
    package_id: Mapped[int] = mapped_column(ForeignKey("packages.id"), index=True)
    box: Mapped[str]
    place: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class HandOvers(Row):
    """One time packages of an order left the shop; rows are never changed."""

    __tablename__ = "hand_overs"

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    fetched_by: Mapped[str]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class HandedPackages(Row):
    """A package that left, and when; it leaves once. Rows are never changed."""

    __tablename__ = "handed_packages"

    package_id: Mapped[int] = mapped_column(
        ForeignKey("packages.id"), primary_key=True, autoincrement=False
    )
    hand_over_id: Mapped[int] = mapped_column(ForeignKey("hand_overs.id"), index=True)


class Freezings(Row):
    """Since when a package is in a freezer; None: in none. The last row holds, none is changed."""

    __tablename__ = "freezings"

    id: Mapped[Id]
    package_id: Mapped[int] = mapped_column(ForeignKey("packages.id"), index=True)
    since: Mapped[datetime | None]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class FreshPickUps(Row):
    """Whether it was agreed that an order is fetched fresh; the last row holds."""

    __tablename__ = "fresh_pick_ups"
    __table_args__ = (CheckConstraint("agreed IN ('fresh', 'frozen')", name="agreed"),)

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    agreed: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class FreezerRules(Row):
    """When a package counts as frozen; one row."""

    __tablename__ = "freezer_rules"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("counted_from IN ('label', 'place')", name="counted"),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    hours: Mapped[int]
    counted_from: Mapped[str]
    version: Mapped[int]
