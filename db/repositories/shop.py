"""The shop's details, its own words, and what its planner is told."""

from typing import TYPE_CHECKING, cast

from sqlalchemy import bindparam, delete, select

from db.desk import Desk
from db.tables.people import OwnLengths, OwnNames, Shop
from db.tables.usual import UsualRules
from shared.cutting.order import Settings
from shared.shop.details import HangingBasis, PaperSize, ShopDetails
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from shared.billing.storage import StorageDays
    from shared.shop.counted import Wrapped

_KERFS = select(Shop.kerf_saw, Shop.kerf_slicer)
_ALIKE = select(UsualRules.cut_alike)
_LENGTHS = (
    select(OwnLengths.stretch, OwnLengths.length)
    .where(OwnLengths.species == bindparam("species"))
    .order_by(OwnLengths.stretch)
)


class ShopBook:
    """`work.shop`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def details(self) -> ShopDetails:
        """The shop as it stands."""
        row = self._desk.connection.execute(select(Shop.__table__)).mappings().one()
        lengths = self._desk.connection.execute(
            select(OwnLengths.species, OwnLengths.stretch, OwnLengths.length).order_by(
                OwnLengths.species, OwnLengths.stretch
            )
        )
        return ShopDetails(
            name=row["name"],
            address=row["address"],
            phone=row["phone"],
            email=row["email"],
            language=row["language"],
            paper=cast("PaperSize", row["paper"]),
            stock=row["stock"],
            dpi=row["dpi"],
            weight_unit=row["weight_unit"],
            hanging_basis=cast("HangingBasis", row["hanging_basis"]),
            fore_share=row["fore_share"],
            kerf_saw=row["kerf_saw"],
            kerf_slicer=row["kerf_slicer"],
            own_lengths=tuple((one[0], one[1], one[2]) for one in lengths),
            wrapped=cast("Wrapped", row["wrapped"]),
            storage_days=cast("StorageDays", row["storage_days"]),
            version=row["version"],
        )

    def save(self, details: ShopDetails) -> ShopDetails | StaleEdit:
        """Write the shop's details; the version read must still hold."""
        desk = self._desk
        values: dict[str, object] = {
            name: getattr(details, name)
            for name in (
                "name", "address", "phone", "email", "language", "paper", "stock", "dpi",
                "weight_unit", "hanging_basis", "fore_share", "kerf_saw", "kerf_slicer",
                "wrapped", "storage_days",
            )
        }  # fmt: skip
        stale = desk.edit(Shop, "shop", 1, details.version, values)
        if stale is not None:
            return stale
        desk.connection.execute(delete(OwnLengths))
        desk.add_rows(
            OwnLengths,
            [
                {"species": species, "stretch": stretch, "length": length}
                for species, stretch, length in details.own_lengths
            ],
        )
        desk.record("shop", 1, "saved", name=details.name)
        return self.details()

    def own_names(self, language: str) -> dict[str, str]:
        """The shop's own words in that language, by key (`cut.whole_ham`)."""
        rows = self._desk.connection.execute(
            select(OwnNames.key, OwnNames.text).where(OwnNames.language == language)
        )
        return {row[0]: row[1] for row in rows}

    def name(self, language: str, key: str, text: str) -> None:
        """Say it the shop's way; an empty text goes back to the catalogue's."""
        desk = self._desk
        desk.must_write()
        desk.connection.execute(
            delete(OwnNames).where(OwnNames.language == language, OwnNames.key == key)
        )
        if text.strip():
            desk.add_rows(OwnNames, [{"language": language, "key": key, "text": text.strip()}])
        desk.record("shop", 1, "named", key=key, text=text, language=language)

    def planner_settings(self, species: str, *, at_block: bool = False) -> Settings:
        """The shop's kerfs, own lengths of a species, and how it cuts split sides."""
        run = self._desk.connection.execute
        kerfs = run(_KERFS).one()
        lengths = run(_LENGTHS, {"species": species})
        alike = run(_ALIKE).scalar_one()
        own = tuple((one[0], one[1]) for one in lengths)
        return Settings(kerfs[0], kerfs[1], at_block, own, cut_alike=alike)
