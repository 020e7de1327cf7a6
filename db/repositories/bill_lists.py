"""Bills and credit notes as the Office lists them, and the open orders it bills and checks."""

from collections.abc import Collection
from datetime import datetime
from typing import Any, Literal

from sqlalchemy import ColumnElement, Connection, exists, func, or_, select
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.repositories.ended_orders import ended_orders
from db.repositories.listing import contains
from db.repositories.order_lists import billed, paid
from db.tables.bills import Bills
from db.tables.customers import Customers
from db.tables.lots import Lots
from db.tables.orders import Orders
from shared.shop.customers import name_key
from shared.shop.lists import BillRow
from shared.shop.states import OrderState

BillSort = Literal["number", "issued", "customer", "total"]
OWN, JOINED = aliased(Customers), aliased(Customers)
SORTS: dict[str, InstrumentedAttribute[Any] | ColumnElement[Any]] = {
    "number": Bills.number,
    "issued": Bills.issued_at,
    "customer": func.coalesce(JOINED.name_key, OWN.name_key, ""),
    "total": Bills.total_cents,
}


SHOWN = (
    Bills.id,
    Bills.number,
    Bills.lot_id,
    Bills.order_id,
    Orders.number,
    func.coalesce(JOINED.name, OWN.name, ""),
    Bills.issued_at,
    Bills.total_cents,
    Bills.credits,
    func.coalesce(billed() - paid(), 0),
    Bills.paper_id,
)


def bill_rows(
    connection: Connection,
    text: str,
    moments: tuple[datetime | None, datetime | None],
    order: tuple[BillSort, bool],
    page: tuple[int, int],
) -> tuple[BillRow, ...]:
    """One query: the page is found first, then what the list shows of it."""
    key = SORTS[order[0]]
    by = (key.desc() if order[1] else key.asc(), Bills.id.desc() if order[1] else Bills.id)
    chosen = (
        select(Bills.id)
        .outerjoin(OWN, OWN.id == Bills.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
    )
    if moments[0] is not None:
        chosen = chosen.where(Bills.issued_at >= moments[0])
    if moments[1] is not None:
        chosen = chosen.where(Bills.issued_at < moments[1])
    found = name_key(text)
    if found:
        ways = [contains(OWN.name_key, found), contains(JOINED.name_key, found)]
        if found.isascii() and found.isdigit() and len(found) < 10:
            ways.append(Bills.number == int(found))
        chosen = chosen.where(or_(*ways))
    ids = chosen.order_by(*by).limit(page[0]).offset(page[1])
    rows = connection.execute(
        select(*SHOWN)
        .outerjoin(Orders, Orders.id == Bills.order_id)
        .outerjoin(OWN, OWN.id == Bills.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .where(Bills.id.in_(ids))
        .order_by(*by)
    )
    return tuple(BillRow(*row) for row in rows)


def open_orders(
    connection: Connection, states: Collection[OrderState], *, checked: bool
) -> tuple[int, ...]:
    """Ids of all orders in these states that aren't closed, however many.

    Those without a bill come first, each by number. One that was closed is among them while a
    credit leaves its balance at other than nothing. `checked` leaves out those of lots on which
    nothing was billed yet. One of which nothing will be cut is among them in any state, if its
    animals came or something was paid.
    """
    on_it = exists().where(Bills.order_id == Orders.id).correlate(Orders)
    credited = select(Bills.order_id).where(Bills.kind == "credit", Bills.order_id.is_not(None))
    again = Orders.id.in_(credited) & (billed() != paid())
    found = (
        select(Orders.id)
        .join(Lots, Lots.id == Orders.lot_id)
        .where(Lots.cancelled == "", or_(Orders.state.in_(states), _ended()))
        .where(or_(Orders.closed_at.is_(None), again))
        .order_by(on_it, Orders.number)
    )
    if checked:
        found = found.where(exists().where(Bills.lot_id == Orders.lot_id).correlate(Orders))
    return tuple(connection.execute(found).scalars())


def _ended() -> ColumnElement[bool]:
    came = Orders.id.in_(ended_orders(killed=False))
    return came | (Orders.id.in_(ended_orders()) & (billed() != paid()))
