"""Tables of the shop's recipes, and of batches in cure, smoke and the mixer."""

from datetime import datetime
from fractions import Fraction

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Recipes(Row):
    """A recipe; `ingredients` is canonical JSON. Rows are never changed but for `retired`."""

    __tablename__ = "recipes"

    id: Mapped[Id]
    name: Mapped[str]
    finish: Mapped[str] = mapped_column(index=True)
    species: Mapped[str]
    language: Mapped[str]
    ingredients: Mapped[str]
    allergens_known: Mapped[bool]
    product: Mapped[str]
    strength: Mapped[Fraction | None]
    ready: Mapped[str]
    retired: Mapped[bool]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Batches(Row):
    """A batch: its state, what of its cure is known, and the finished weight."""

    __tablename__ = "batches"
    __table_args__ = (
        CheckConstraint(
            "state IN ('gathering', 'curing', 'smoking', 'done', 'packed')", name="state"
        ),
    )

    id: Mapped[Id]
    number: Mapped[int] = mapped_column(unique=True)
    recipe_id: Mapped[int] = mapped_column(ForeignKey("recipes.id"))
    state: Mapped[str] = mapped_column(index=True)
    note: Mapped[str]
    cure_count: Mapped[int | None]
    cure_unit: Mapped[str | None]
    cure_exponent: Mapped[int | None]
    brine_count: Mapped[int | None]
    brine_unit: Mapped[str | None]
    brine_exponent: Mapped[int | None]
    pickup: Mapped[Fraction | None]
    out_count: Mapped[int | None]
    out_unit: Mapped[str | None]
    out_exponent: Mapped[int | None]
    version: Mapped[int]


class BatchStages(Row):
    """When a batch came to a state; rows are never changed."""

    __tablename__ = "batch_stages"

    id: Mapped[Id]
    batch_id: Mapped[int] = mapped_column(ForeignKey("batches.id"), index=True)
    state: Mapped[str]
    note: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BatchMeat(Row):
    """Meat of an order's line that went in, as weighed; only `void` may be written after."""

    __tablename__ = "batch_meat"
    __table_args__ = (CheckConstraint("weight_count > 0", name="above_nothing"),)

    id: Mapped[Id]
    batch_id: Mapped[int] = mapped_column(ForeignKey("batches.id"), index=True)
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    line: Mapped[int]
    cut: Mapped[str]
    weight_count: Mapped[int]
    weight_unit: Mapped[str]
    weight_exponent: Mapped[int]
    pieces: Mapped[int]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    void: Mapped[str]


class BatchAdded(Row):
    """Fat or pork from inspected stock that went in, with its source; locked as meat is."""

    __tablename__ = "batch_added"
    __table_args__ = (CheckConstraint("weight_count > 0", name="above_nothing"),)

    id: Mapped[Id]
    batch_id: Mapped[int] = mapped_column(ForeignKey("batches.id"), index=True)
    what: Mapped[str]
    weight_count: Mapped[int]
    weight_unit: Mapped[str]
    weight_exponent: Mapped[int]
    source: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))
    void: Mapped[str] = mapped_column(server_default="")
