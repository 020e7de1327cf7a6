"""Lots as the Counter and the Rail list them."""

from datetime import date
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import ColumnElement, Connection, Select, case, func, or_, select
from sqlalchemy.orm import InstrumentedAttribute

from db.repositories.listing import contains, owners_of_lot
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from shared.shop.customers import name_key
from shared.shop.lists import LotRow
from shared.shop.states import ANIMAL_STATES

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime

SORTS: dict[str, InstrumentedAttribute[Any]] = {
    "day": Lots.day,
    "number": Lots.number,
    "species": Lots.species,
    "producer": Customers.name_key,
}


def _least_far() -> ColumnElement[int]:
    ranks = {state: place for place, state in enumerate(ANIMAL_STATES)}
    return (
        select(func.min(case(ranks, value=Animals.state)))
        .where(Animals.lot_id == Lots.id)
        .correlate(Lots)
        .scalar_subquery()
    )


def _open_orders() -> ColumnElement[int]:
    return (
        select(func.count())
        .select_from(Orders)
        .where(Orders.lot_id == Lots.id, Orders.closed_at.is_(None))
        .correlate(Lots)
        .scalar_subquery()
    )


SHOWN = (
    Lots.id,
    Lots.number,
    Lots.day,
    Lots.species,
    Lots.head,
    Customers.name.label("producer"),
    owners_of_lot().label("owners"),
    Lots.regime,
    _least_far().label("least_far"),
    _open_orders().label("orders_open"),
    Lots.cancelled,
)


def lot_rows(
    connection: Connection,
    *,
    text: str,
    days: tuple[date | None, date | None],
    species: str,
    cancelled: bool,
    order: tuple[str, bool],
    page: tuple[int, int],
) -> tuple[LotRow, ...]:
    """One query: the page of lots is found first, then what the list shows of them."""
    key = SORTS[order[0]]
    by = (key.desc() if order[1] else key.asc(), Lots.id)
    ids = _chosen(text, days, species, cancelled).order_by(*by).limit(page[0]).offset(page[1])
    rows = connection.execute(
        select(*SHOWN)
        .join(Customers, Customers.id == Lots.producer_id)
        .where(Lots.id.in_(ids))
        .order_by(*by)
    )
    return tuple(
        LotRow(
            id=row.id,
            number=row.number,
            day=row.day,
            species=row.species,
            head=row.head,
            producer=row.producer,
            owners=row.owners or "",
            regime=cast("Regime", row.regime),
            animals_state=ANIMAL_STATES[int(row.least_far)],
            orders_open=row.orders_open,
            cancelled=row.cancelled,
        )
        for row in rows
    )


def _chosen(
    text: str, days: tuple[date | None, date | None], species: str, cancelled: bool
) -> Select[int]:
    found = select(Lots.id).join(Customers, Customers.id == Lots.producer_id)
    if not cancelled:
        found = found.where(Lots.cancelled == "")
    if days[0] is not None:
        found = found.where(Lots.day >= days[0])
    if days[1] is not None:
        found = found.where(Lots.day <= days[1])
    if species:
        found = found.where(Lots.species == species)
    if name_key(text):
        found = found.where(or_(*text_ways(name_key(text))))
    return found


def text_ways(key: str) -> list[ColumnElement[bool]]:
    """A lot is found by its number, its producer, its owners and its animals' tags."""
    owners = select(Shares.lot_id).join(Customers, Customers.id == Shares.customer_id)
    ways: list[ColumnElement[bool]] = [
        contains(Customers.name_key, key),
        Lots.id.in_(owners.where(contains(Customers.name_key, key))),
        Lots.id.in_(select(Animals.lot_id).where(contains(Animals.tag_key, key))),
    ]
    if key.isascii() and key.isdigit() and len(key) < 10:
        ways.append(Lots.number == int(key))
    return ways
