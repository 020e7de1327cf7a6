"""Tables of the plant's own marks: its number, its legend's artwork, and its product numbers."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class Artworks(Row):
    """An image as the plant gave it; never changed, the marks say which one is in use."""

    __tablename__ = "artworks"

    id: Mapped[Id]
    name: Mapped[str]
    png: Mapped[bytes]
    wide: Mapped[int]
    high: Mapped[int]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class Marks(Row):
    """The marks in use; one row."""

    __tablename__ = "plant_marks"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("legend IN ('', 'stock', 'artwork')", name="legend"),
        CheckConstraint("keep IN ('keep_frozen', 'keep_refrigerated')", name="keep"),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    establishment: Mapped[str]
    legend: Mapped[str]
    artwork_id: Mapped[int | None] = mapped_column(ForeignKey("artworks.id"), index=True)
    keep: Mapped[str]
    version: Mapped[int]


class ProductNumbers(Row):
    """A product's GTIN by species and cut."""

    __tablename__ = "product_numbers"

    species: Mapped[str] = mapped_column(primary_key=True)
    cut: Mapped[str] = mapped_column(primary_key=True)
    gtin: Mapped[str]
