"""Tables of the rail: scales, what was found on arrival, holds, gradings, the cooler.

Rows of all but the scales are never changed: of one animal (order, room) the last row holds.
"""

from datetime import date, datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Scales(Row):
    """A scale on a station's serial line. `own_pattern` is canonical JSON, "" where none."""

    __tablename__ = "scales"
    __table_args__ = (
        CheckConstraint("parity IN ('N', 'E', 'O')", name="parity"),
        CheckConstraint("unit IN ('lb', 'oz', 'kg', 'g')", name="unit"),
    )

    id: Mapped[Id]
    name: Mapped[str]
    at_station: Mapped[int] = mapped_column(ForeignKey("stations.id"), index=True)
    port: Mapped[str]
    baud: Mapped[int]
    bits: Mapped[int]
    parity: Mapped[str]
    stop_bits: Mapped[int]
    pattern: Mapped[str]
    own_pattern: Mapped[str]
    unit: Mapped[str]
    division_count: Mapped[int | None]
    division_unit: Mapped[str | None]
    division_exponent: Mapped[int | None]
    hook_count: Mapped[int | None]
    hook_unit: Mapped[str | None]
    hook_exponent: Mapped[int | None]
    gambrel_count: Mapped[int | None]
    gambrel_unit: Mapped[str | None]
    gambrel_exponent: Mapped[int | None]
    used: Mapped[bool]
    version: Mapped[int]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Arrivals(Row):
    """What was seen and said when an animal came; "" and null are not said."""

    __tablename__ = "arrivals"
    __table_args__ = (
        CheckConstraint("condition IN ('', 'sound', 'lame', 'down', 'dead')", name="condition"),
        CheckConstraint("age_by IN ('', 'teeth', 'papers', 'said')", name="age_by"),
    )

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    condition: Mapped[str]
    note: Mapped[str]
    age_by: Mapped[str]
    age_said: Mapped[str]
    penned_at: Mapped[datetime | None]
    healthy: Mapped[bool | None]
    withdrawn_drugs: Mapped[bool | None]
    drugs: Mapped[str]
    statement_of: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class DeerIntakes(Row):
    """The intake of a deer: whose, by which licence and tag, where and when it was killed."""

    __tablename__ = "deer_intakes"
    __table_args__ = (
        CheckConstraint("meat IN ('', 'apart', 'batch')", name="meat"),
        CheckConstraint("cape IN ('', 'keep', 'leave')", name="cape"),
        CheckConstraint("head IN ('', 'keep', 'leave')", name="head"),
        CheckConstraint("antlers IN ('', 'keep', 'leave')", name="antlers"),
    )

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    hunter: Mapped[str]
    license: Mapped[str]
    game_tag: Mapped[str]
    killed_on: Mapped[date | None]
    county: Mapped[str]
    cape: Mapped[str]
    head: Mapped[str]
    antlers: Mapped[str]
    meat: Mapped[str]
    signed_by: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Holds(Row):
    """An animal is held for something, or what ended it (`on` false); the last of a kind holds."""

    __tablename__ = "holds"
    __table_args__ = (CheckConstraint("kind IN ('disease_test', 'other')", name="kind"),)

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    kind: Mapped[str]
    held: Mapped[bool]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Dressings(Row):
    """How a carcass was dressed on the scale; "" is the usual way of its species."""

    __tablename__ = "dressings"
    __table_args__ = (
        CheckConstraint("head IN ('', 'on', 'off')", name="head"),
        CheckConstraint("feet IN ('', 'on', 'off')", name="feet"),
        CheckConstraint("leaf IN ('', 'in', 'out')", name="leaf"),
        CheckConstraint("kidneys IN ('', 'in', 'out')", name="kidneys"),
    )

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    head: Mapped[str]
    feet: Mapped[str]
    leaf: Mapped[str]
    kidneys: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Gradings(Row):
    """Measures taken of a carcass: `measures` is canonical JSON, exact decimals as text."""

    __tablename__ = "gradings"

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    measures: Mapped[str]
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class CoolerReadings(Row):
    """A temperature read in a room, in tenths of a degree; a correction is a row of its own."""

    __tablename__ = "cooler_readings"
    __table_args__ = (CheckConstraint("unit IN ('F', 'C')", name="unit"),)

    id: Mapped[Id]
    room: Mapped[str] = mapped_column(index=True)
    read_at: Mapped[datetime]
    tenths: Mapped[int]
    unit: Mapped[str]
    note: Mapped[str]
    corrects: Mapped[int | None] = mapped_column(ForeignKey("cooler_readings.id"), unique=True)
    withdrawn: Mapped[bool]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class CoolerLimits(Row):
    """The shop's own limits of a room, in tenths of a degree; the last row of a room holds."""

    __tablename__ = "cooler_limits"
    __table_args__ = (CheckConstraint("unit IN ('F', 'C')", name="unit"),)

    id: Mapped[Id]
    room: Mapped[str] = mapped_column(index=True)
    low_tenths: Mapped[int | None]
    high_tenths: Mapped[int | None]
    unit: Mapped[str]
    used: Mapped[bool]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class HangWishes(Row):
    """How many days an owner wants the meat to hang; null takes a wish back."""

    __tablename__ = "hang_wishes"
    __table_args__ = (CheckConstraint("days IS NULL OR days >= 0", name="days"),)

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    days: Mapped[int | None]
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class OrderNews(Row):
    """What an owner must be told: what is lost of an order, and what would work (canonical JSON).

    Told by the first call about the order that spoke with somebody after it.
    """

    __tablename__ = "order_news"
    __table_args__ = (
        CheckConstraint(
            "kind IN ('part_gone', 'condemned', 'refused', 'held', 'block', 'age')", name="kind"
        ),
    )

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"))
    kind: Mapped[str]
    told: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class LossFindings(Row):
    """Who took a part: the inspector condemned it, or the plant trimmed or discarded it."""

    __tablename__ = "loss_findings"
    __table_args__ = (CheckConstraint("how IN ('condemned', 'trimmed', 'discarded')", name="how"),)

    id: Mapped[Id]
    loss_id: Mapped[int] = mapped_column(ForeignKey("losses.id"), unique=True)
    how: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
