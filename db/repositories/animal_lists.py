"""Animals as the Rail, the cooler and the Block list them."""

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING, Any, Literal, cast

from sqlalchemy import ColumnElement, Connection, Select, exists, false, func, or_, select, true
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.columns import Nanograms
from db.repositories.listing import owners_of_lot
from db.repositories.lot_lists import text_ways
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots
from db.tables.rail import Holds
from db.tables.weighings import Weighings
from shared.shop.customers import name_key
from shared.shop.lists import AnimalRow
from shared.shop.states import AnimalState

if TYPE_CHECKING:
    from shared.carcass.carcass import Age, Regime

MOST_ARE = "cut"  # nearly every animal that was ever kept
AnimalSort = Literal["day", "tag", "lot", "state", "hung", "producer"]
SORTS: dict[str, InstrumentedAttribute[Any]] = {
    "day": Lots.day,
    "tag": Animals.tag_key,
    "lot": Lots.number,
    "state": Animals.state,
    "hung": Animals.hung_at,
    "producer": Customers.name_key,
}


@dataclass(frozen=True, slots=True)
class AnimalFilter:
    """Which animals: by state, text (tag, lot, producer, owner), species and day."""

    states: tuple[AnimalState, ...] = ()
    text: str = ""
    species: str = ""
    start: date | None = None
    end: date | None = None


def current_weight(kind: str) -> ColumnElement[int]:
    """The sum of an animal's current weights of that kind; null when it has none."""
    later = aliased(Weighings)
    return (
        select(func.sum(Weighings.weight_ng, type_=Nanograms()))
        .where(
            Weighings.animal_id == Animals.id,
            Weighings.kind == kind,
            Weighings.withdrawn == false(),
            ~exists().where(later.corrects == Weighings.id),
        )
        .correlate(Animals)
        .scalar_subquery()
    )


def on_hold() -> ColumnElement[bool]:
    """Whether the last row of some kind of hold holds the animal."""
    one, later = aliased(Holds), aliased(Holds)
    ended = exists().where(
        later.animal_id == one.animal_id, later.kind == one.kind, later.id > one.id
    )
    return exists().where(one.animal_id == Animals.id, one.held == true(), ~ended)


SHOWN = (
    Animals.id,
    Animals.lot_id,
    Lots.number.label("lot_number"),
    Animals.place_in_lot,
    Animals.tag,
    Lots.species,
    Animals.regime,
    Animals.age,
    Animals.state,
    Lots.day,
    owners_of_lot().label("owners"),
    Customers.name.label("producer"),
    current_weight("live").label("live"),
    current_weight("hot").label("hot"),
    Animals.hung_at,
    Animals.place,
    Animals.version,
    on_hold().label("on_hold"),
)


def animal_rows(
    connection: Connection,
    chosen: AnimalFilter,
    order: tuple[AnimalSort, bool],
    page: tuple[int, int],
) -> tuple[AnimalRow, ...]:
    """One query: the page is found first, then what the list shows of it."""
    key = SORTS[order[0]]
    by = (key.desc() if order[1] else key.asc(), Lots.number, Animals.place_in_lot, Animals.id)
    ids = _chosen(chosen).order_by(*by).limit(page[0]).offset(page[1])
    rows = connection.execute(
        select(*SHOWN)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Customers, Customers.id == Lots.producer_id)
        .where(Animals.id.in_(ids))
        .order_by(*by)
    )
    return tuple(
        AnimalRow(
            id=row.id,
            lot_id=row.lot_id,
            lot_number=row.lot_number,
            index=row.place_in_lot,
            tag=row.tag,
            species=row.species,
            regime=cast("Regime", row.regime),
            age=cast("Age", row.age),
            state=cast("AnimalState", row.state),
            day=row.day,
            owners=row.owners or "",
            producer=row.producer,
            live_ng=row.live,
            hot_ng=row.hot,
            hung_at=row.hung_at,
            place=row.place,
            version=row.version,
            on_hold=bool(row.on_hold),
        )
        for row in rows
    )


def animal_count(connection: Connection, chosen: AnimalFilter) -> int:
    """How many the filter finds."""
    return connection.execute(
        select(func.count()).select_from(_chosen(chosen).subquery())
    ).scalar_one()


def _chosen(chosen: AnimalFilter) -> Select[int]:
    found = (
        select(Animals.id)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Customers, Customers.id == Lots.producer_id)
        .where(Lots.cancelled == "")
    )
    if MOST_ARE in chosen.states:  # by day: an index on the state would read nearly all
        found = found.where((Animals.state + "").in_(chosen.states))
    elif chosen.states:
        found = found.where(Animals.state.in_(chosen.states))
    if chosen.species:
        found = found.where(Lots.species == chosen.species)
    if chosen.start is not None:
        found = found.where(Lots.day >= chosen.start)
    if chosen.end is not None:
        found = found.where(Lots.day <= chosen.end)
    key = name_key(chosen.text)
    if key:
        found = found.where(or_(*text_ways(key)))
    return found
