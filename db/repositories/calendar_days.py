"""The bookings of some days, as the calendar and the day's list show them."""

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import (
    ColumnElement,
    Connection,
    Row,
    Subquery,
    case,
    exists,
    false,
    func,
    or_,
    select,
)

from db.repositories.ended_orders import not_come
from db.repositories.listing import contains
from db.repositories.recipes import recipes_in_use
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots
from db.tables.orders import OrderLines, Sheets
from db.tables.papers import Papers
from shared.curing.recipe import allergens
from shared.shop.day_order import DayLot, in_turn

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime


def day_lots(connection: Connection, start: date, end: date) -> tuple[DayLot, ...]:
    """What stands from start to end (within), each day in turn; two queries, however many."""
    ages = _ages(start, end)
    rows = connection.execute(
        select(
            Lots.id,
            Lots.number,
            Lots.day,
            Lots.species,
            (Lots.head - not_come()).label("head"),
            Lots.regime,
            Lots.keeps,
            Lots.note,
            Lots.version,
            Customers.name,
            Customers.phone,
            *(ages.c.over, ages.c.unknown),
            _allergens(connection).label("allergens"),
        )
        .join(Customers, Customers.id == Lots.producer_id)
        .join(ages, ages.c.lot_id == Lots.id)
        .where(Lots.day.between(start, end), Lots.cancelled == "", Lots.head > not_come())
    )
    return in_turn(_day_lot(row) for row in rows)


def _day_lot(row: Row[*tuple[Any, ...]]) -> DayLot:
    return DayLot(
        id=row.id,
        number=row.number,
        day=row.day,
        species=row.species,
        head=row.head,
        producer=row.name,
        phone=row.phone,
        regime=cast("Regime", row.regime),
        over=bool(row.over),
        unknown_age=int(row.unknown),
        allergens=bool(row.allergens),
        keeps=row.keeps,
        note=row.note,
        version=row.version,
    )


def _allergens(connection: Connection) -> ColumnElement[bool]:
    """A cut order of the lot asks for a finish or seasoning that has an allergen in it.

    A recipe whose allergens nobody has looked for counts as one that has some.
    """
    minded = [one for one in recipes_in_use(connection) if allergens(one) != ()]
    if not minded:
        return false()
    finishes = {f'"{one.finish}"' for one in minded}
    seasonings = {f'"seasoning":"{one.name.replace(" ", mark)}"' for one in minded for mark in " _"}
    return exists().where(
        OrderLines.lot_id == Lots.id,
        or_(*(contains(OrderLines.choice, one) for one in sorted(finishes | seasonings))),
    )


def _ages(start: date, end: date) -> Subquery:
    """How many animals of each lot are 30 months and over, and of unsaid age."""
    return (
        select(
            Animals.lot_id.label("lot_id"),
            func.sum(case((Animals.age == "30_and_over", 1), else_=0)).label("over"),
            func.sum(case((Animals.age == "unknown", 1), else_=0)).label("unknown"),
        )
        .join(Lots, Lots.id == Animals.lot_id)
        .where(Lots.day.between(start, end))
        .group_by(Animals.lot_id)
        .subquery()
    )


def last_sheets(connection: Connection, lot_ids: Sequence[int]) -> dict[int, bytes]:
    """The last sheet of each lot as it was kept, by number of the lot; one query."""
    last = (
        select(Sheets.lot_id, func.max(Sheets.number).label("number"))
        .where(Sheets.lot_id.in_(lot_ids))
        .group_by(Sheets.lot_id)
        .subquery()
    )
    rows = connection.execute(
        select(Sheets.lot_id, Papers.pdf)
        .join(last, (last.c.lot_id == Sheets.lot_id) & (last.c.number == Sheets.number))
        .join(Papers, Papers.id == Sheets.paper_id)
        .order_by(Sheets.lot_id)
    )
    return {row.lot_id: row.pdf for row in rows}
