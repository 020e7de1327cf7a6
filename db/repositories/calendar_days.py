"""The bookings of some days, as the calendar and the day's list show them."""

from datetime import date
from typing import TYPE_CHECKING, cast

from sqlalchemy import Connection, case, func, select

from db.tables.customers import Customers
from db.tables.lots import Animals, Lots
from shared.shop.day_order import DayLot, in_turn

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime


def day_lots(connection: Connection, start: date, end: date) -> tuple[DayLot, ...]:
    """What stands from start to end (within), each day in turn; one query, however many."""
    ages = (
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
    rows = connection.execute(
        select(
            Lots.id,
            Lots.number,
            Lots.day,
            Lots.species,
            Lots.head,
            Lots.regime,
            Lots.keeps,
            Lots.note,
            Lots.version,
            Customers.name,
            Customers.phone,
            ages.c.over,
            ages.c.unknown,
        )
        .join(Customers, Customers.id == Lots.producer_id)
        .join(ages, ages.c.lot_id == Lots.id)
        .where(Lots.day.between(start, end), Lots.cancelled == "")
    )
    return in_turn(
        DayLot(
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
            keeps=row.keeps,
            note=row.note,
            version=row.version,
        )
        for row in rows
    )
