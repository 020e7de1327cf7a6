"""Tables of who works here and where, of the shop, and of the counters of its numbers."""

from fractions import Fraction

from sqlalchemy import CheckConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Persons(Row):
    """Someone who works in the shop."""

    __tablename__ = "persons"

    id: Mapped[Id]
    name: Mapped[str] = mapped_column(unique=True)
    active: Mapped[bool]


class Stations(Row):
    """A place with a screen."""

    __tablename__ = "stations"

    id: Mapped[Id]
    name: Mapped[str] = mapped_column(unique=True)


class Shop(Row):
    """The shop's name and settings; one row."""

    __tablename__ = "shop"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("wrapped IN ('weighed', 'counted')", name="wrapped"),
        CheckConstraint(
            "storage_days IN ('every_day', 'weekdays', 'six_days')", name="storage_days"
        ),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    name: Mapped[str]
    address: Mapped[str]
    phone: Mapped[str]
    email: Mapped[str]
    language: Mapped[str]
    paper: Mapped[str]
    stock: Mapped[str]
    dpi: Mapped[int]
    weight_unit: Mapped[str]
    hanging_basis: Mapped[str]
    fore_share: Mapped[Fraction | None]
    kerf_saw: Mapped[int | None]
    kerf_slicer: Mapped[int | None]
    wrapped: Mapped[str] = mapped_column(server_default="weighed")
    storage_days: Mapped[str] = mapped_column(server_default="every_day")
    version: Mapped[int]


class OwnLengths(Row):
    """A stretch the shop has measured for itself, in 1/203,200 in."""

    __tablename__ = "own_lengths"

    species: Mapped[str] = mapped_column(primary_key=True)
    stretch: Mapped[str] = mapped_column(primary_key=True)
    length: Mapped[int]


class OwnNames(Row):
    """A shop's own word for a cut, part or finish; it wins over the catalogue's."""

    __tablename__ = "own_names"

    language: Mapped[str] = mapped_column(primary_key=True)
    key: Mapped[str] = mapped_column(primary_key=True)
    text: Mapped[str]


class Counters(Row):
    """The last number given out of each series; the row is locked while one is taken."""

    __tablename__ = "counters"

    name: Mapped[str] = mapped_column(primary_key=True)
    last: Mapped[int]
