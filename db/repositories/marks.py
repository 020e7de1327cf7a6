"""The plant's own marks: number, legend's artwork, product numbers."""

from typing import TYPE_CHECKING, cast

from sqlalchemy import delete, select

from db.desk import Desk
from db.tables.marks import Artworks, Marks, ProductNumbers
from shared.marking.plant_marks import Artwork, PlantMarks
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from shared.marking.label import Keep
    from shared.marking.plant_marks import LegendFrom


class MarkBook:
    """`work.marks`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def now(self) -> PlantMarks:
        """The marks in use."""
        run = self._desk.connection.execute
        row = run(select(*Marks.__table__.columns)).one()
        numbers = run(
            select(ProductNumbers.species, ProductNumbers.cut, ProductNumbers.gtin).order_by(
                ProductNumbers.species, ProductNumbers.cut
            )
        )
        return PlantMarks(
            row.establishment,
            cast("LegendFrom", row.legend),
            None if row.artwork_id is None else self._artwork(row.artwork_id),
            {(one.species, one.cut): one.gtin for one in numbers},
            cast("Keep", row.keep),
            row.version,
        )

    def save(self, marks: PlantMarks) -> PlantMarks | StaleEdit:
        """Write the number, the legend and how packages are kept; the version read must hold.

        An artwork that differs from the one in use is added beside it; none is ever changed.
        """
        desk = self._desk
        values: dict[str, object] = {
            "establishment": marks.establishment.strip(),
            "legend": marks.legend,
            "artwork_id": self._artwork_id(marks.artwork),
            "keep": marks.keep,
        }
        stale = desk.edit(Marks, "marks", 1, marks.version, values)
        if stale is not None:
            return stale
        name = "" if marks.artwork is None else marks.artwork.name
        desk.record(
            "marks", 1, "saved", number=marks.establishment, legend=marks.legend, artwork=name
        )
        return self.now()

    def number(self, species: str, cut: str, gtin: str) -> None:
        """Give a product its GTIN; "" takes it away. It is checked before it comes here."""
        desk = self._desk
        desk.must_write()
        desk.connection.execute(
            delete(ProductNumbers).where(
                ProductNumbers.species == species, ProductNumbers.cut == cut
            )
        )
        if gtin:
            desk.add_rows(ProductNumbers, [{"species": species, "cut": cut, "gtin": gtin}])
        desk.record("marks", 1, "numbered", species=species, cut=cut, gtin=gtin)

    def _artwork(self, artwork_id: int) -> Artwork:
        row = self._desk.connection.execute(
            select(Artworks.name, Artworks.png, Artworks.wide, Artworks.high).where(
                Artworks.id == artwork_id
            )
        ).one()
        return Artwork(row.name, row.png, row.wide, row.high)

    def _artwork_id(self, artwork: Artwork | None) -> int | None:
        if artwork is None:
            return None
        known = self._desk.connection.execute(
            select(Artworks.id).where(Artworks.png == artwork.png)
        ).scalar()
        if known is not None:
            return int(known)
        values = {
            "name": artwork.name,
            "png": artwork.png,
            "wide": artwork.wide,
            "high": artwork.high,
            "at": self._desk.now,
        }
        return self._desk.insert(Artworks, {**values, **self._desk.stamp})
