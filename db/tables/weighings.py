"""Tables of what the rail and the block found: weights, losses and measured lengths."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from db.columns import Nanograms
from db.tables.row import Id, Row, nanograms_column


class Weighings(Row):
    """A weight as weighed; rows are never changed, a correction is a row of its own."""

    __tablename__ = "weighings"
    __table_args__ = (
        CheckConstraint("kind IN ('live', 'hot', 'chilled')", name="kind"),
        CheckConstraint("side IN (0, 1, 2)", name="side"),
        CheckConstraint("weight_count >= 0", name="not_negative"),
        CheckConstraint("weight_ng IS NOT NULL", name="known_unit"),
        Index("ix_weighings_animal_id_kind_weight_ng", "animal_id", "kind", "weight_ng"),
    )

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"))
    kind: Mapped[str]
    side: Mapped[int]
    quarter: Mapped[str]
    weight_count: Mapped[int]
    weight_unit: Mapped[str]
    weight_exponent: Mapped[int]
    weight_ng: Mapped[int] = mapped_column(Nanograms, nanograms_column("weight"))
    tare_count: Mapped[int | None]
    tare_unit: Mapped[str | None]
    tare_exponent: Mapped[int | None]
    division_count: Mapped[int | None]
    division_unit: Mapped[str | None]
    division_exponent: Mapped[int | None]
    scale: Mapped[str]
    source: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    corrects: Mapped[int | None] = mapped_column(ForeignKey("weighings.id"), unique=True)
    withdrawn: Mapped[bool]
    reason: Mapped[str]


class Losses(Row):
    """A part, or some pounds of it, taken from an animal; no weight means all of it."""

    __tablename__ = "losses"

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    part: Mapped[str]
    side: Mapped[int]
    weight_count: Mapped[int | None]
    weight_unit: Mapped[str | None]
    weight_exponent: Mapped[int | None]
    reason: Mapped[str]
    before_scale: Mapped[bool]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    void: Mapped[str]


class Measurements(Row):
    """A stretch measured at the block; the last of a stretch and side holds."""

    __tablename__ = "measurements"

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    stretch: Mapped[str]
    side: Mapped[int]
    length: Mapped[int]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
