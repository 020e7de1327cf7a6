"""Orders as the Counter, the Wrap and the Office list them, with what is billed and due."""

from dataclasses import dataclass
from datetime import date
from typing import Any, Literal, TypeVar, cast

from sqlalchemy import (
    ColumnElement,
    CompoundSelect,
    Connection,
    Row,
    Select,
    case,
    func,
    or_,
    select,
    union,
)
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.columns import Cents
from db.repositories.listing import tags_of_lot
from db.repositories.text_index import customer_holds, tag_holds
from db.tables.bills import Bills, Payments
from db.tables.counted import Counted
from db.tables.customers import Customers
from db.tables.ledger import LedgerPostings
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import OrderLines, Orders
from db.tables.packages import Packages
from shared.shop.customers import name_key, phone_digits
from shared.shop.lists import OrderRow
from shared.shop.states import OrderState

OrderSort = Literal["day", "number", "owner", "state", "due"]
# A share's customer as written when it was booked, and whom he was joined into.
OWN, JOINED = aliased(Customers), aliased(Customers)
OWNER_KEY: ColumnElement[str] = func.coalesce(JOINED.name_key, OWN.name_key, "")
SORTS: dict[str, InstrumentedAttribute[Any] | ColumnElement[Any]] = {
    "day": Lots.day,
    "number": Orders.number,
    "owner": OWNER_KEY,
    "state": Orders.state,
    "due": Orders.due,
}


@dataclass(frozen=True, slots=True)
class OrderFilter:
    """Which orders: by state, text (owner, phone, tag, number), day, customer, closed or not.

    An order of nobody yet is found by whose animal it is of.

    `but` is one order that is left out; of `only` no other is in. `unbalanced` are those on which
    the books have something owed, deposited or overpaid.
    """

    states: tuple[OrderState, ...] = ()
    text: str = ""
    start: date | None = None
    end: date | None = None
    customer_id: int | None = None
    closed: bool | None = None
    species: str = ""
    but: int | None = None
    only: tuple[int, ...] = ()
    unbalanced: bool = False


def billed() -> ColumnElement[int]:
    """Bills less credits of the order at hand, in cents."""
    signed = case((Bills.kind == "credit", -Bills.total_cents), else_=Bills.total_cents)
    return (
        select(func.coalesce(func.sum(signed, type_=Cents()), 0))
        .where(Bills.order_id == Orders.id)
        .correlate(Orders)
        .scalar_subquery()
    )


def paid() -> ColumnElement[int]:
    """Deposits, payments and write-offs less refunds of the order at hand, in cents."""
    signed = case((Payments.kind == "refund", -Payments.cents), else_=Payments.cents)
    return (
        select(func.coalesce(func.sum(signed, type_=Cents()), 0))
        .where(Payments.order_id == Orders.id)
        .correlate(Orders)
        .scalar_subquery()
    )


def _producer() -> ColumnElement[str]:
    """Whose animal it is, by the name he has today."""
    own, joined = aliased(Customers), aliased(Customers)
    return (
        select(func.coalesce(joined.name, own.name))
        .select_from(own)
        .outerjoin(joined, joined.id == own.joined_into)
        .where(own.id == Lots.producer_id)
        .correlate(Lots)
        .scalar_subquery()
    )


def _count_of(order_id: InstrumentedAttribute[int]) -> ColumnElement[int]:
    return select(func.count()).where(order_id == Orders.id).correlate(Orders).scalar_subquery()


def _packages() -> ColumnElement[int]:
    """Packages made, weighed and counted."""
    weighed = select(func.count()).where(Packages.order_id == Orders.id, Packages.void == "")
    counted = select(func.coalesce(func.sum(Counted.packages), 0)).where(
        Counted.order_id == Orders.id, Counted.void == ""
    )
    first, second = (one.correlate(Orders).scalar_subquery() for one in (weighed, counted))
    return first + second


SHOWN = (
    Orders.id,
    Orders.number,
    Orders.lot_id,
    Lots.number.label("lot_number"),
    Orders.share,
    Lots.day,
    Lots.species,
    func.coalesce(JOINED.name, OWN.name, "").label("owner"),
    _producer().label("producer"),
    func.coalesce(JOINED.id, OWN.id).label("customer_id"),
    func.coalesce(JOINED.phone, OWN.phone, "").label("phone"),
    Orders.state,
    tags_of_lot().label("tags"),
    _count_of(OrderLines.order_id).label("lines"),
    _packages().label("packages"),
    Orders.sheet,
    Orders.acknowledged,
    billed().label("billed"),
    paid().label("paid"),
    Orders.closed_at,
    Orders.version,
)


def order_rows(
    connection: Connection,
    chosen: OrderFilter,
    *,
    sort: OrderSort,
    descending: bool,
    limit: int,
    offset: int,
) -> tuple[OrderRow, ...]:
    """One query: the page is found first, then what the list shows of it."""
    key = SORTS[sort]
    by = (
        key.desc() if descending else key.asc(),
        Orders.number.desc() if descending else Orders.number,
    )
    ids = (
        _chosen(connection, chosen, by_owner=sort == "owner")
        .order_by(*by)
        .limit(limit)
        .offset(offset)
    )
    rows = connection.execute(_joined(select(*SHOWN)).where(Orders.id.in_(ids)).order_by(*by))
    return tuple(_row(row) for row in rows)


def _row(row: Row[*tuple[Any, ...]]) -> OrderRow:
    return OrderRow(
        id=row.id,
        number=row.number,
        lot_id=row.lot_id,
        lot_number=row.lot_number,
        share=row.share,
        day=row.day,
        species=row.species,
        owner=row.owner,
        customer_id=row.customer_id,
        phone=row.phone,
        state=cast("OrderState", row.state),
        tags=row.tags or "",
        lines=row.lines,
        packages=row.packages,
        sheet=row.sheet,
        acknowledged=row.acknowledged,
        billed_cents=row.billed,
        due_cents=row.billed - row.paid,
        closed=row.closed_at is not None,
        version=row.version,
        producer=row.producer,
    )


def order_count(connection: Connection, chosen: OrderFilter) -> int:
    """How many the filter finds."""
    return connection.execute(
        select(func.count()).select_from(_chosen(connection, chosen).subquery())
    ).scalar_one()


S = TypeVar("S", bound=Select[*tuple[Any, ...]])


def _joined(found: S) -> S:
    """With the order's lot, and its share's customer as he is today."""
    return (
        found.select_from(Orders)
        .join(Lots, Lots.id == Orders.lot_id)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .outerjoin(OWN, OWN.id == Shares.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
    )


def _chosen(connection: Connection, chosen: OrderFilter, *, by_owner: bool = False) -> Select[int]:
    """Ids of the orders the filter finds; owners are joined only where they are looked at."""
    key = name_key(chosen.text)
    found = select(Orders.id)
    if by_owner or chosen.customer_id is not None:
        found = _joined(found)
    else:
        found = found.join(Lots, Lots.id == Orders.lot_id)
    found = found.where(Lots.cancelled == "")
    if chosen.states:
        found = found.where(Orders.state.in_(chosen.states))
    if chosen.start is not None:
        found = found.where(Lots.day >= chosen.start)
    if chosen.end is not None:
        found = found.where(Lots.day <= chosen.end)
    if chosen.customer_id is not None:
        his = select(Customers.id).where(
            or_(Customers.id == chosen.customer_id, Customers.joined_into == chosen.customer_id)
        )
        found = found.where(Shares.customer_id.in_(his))
    if chosen.species:
        found = found.where(Lots.species == chosen.species)
    if chosen.but is not None:
        found = found.where(Orders.id != chosen.but)
    if chosen.only:
        found = found.where(Orders.id.in_(chosen.only))
    if chosen.unbalanced:
        found = found.where(Orders.id.in_(_unbalanced()))
    if chosen.closed is not None:
        closed = Orders.closed_at.is_not(None)
        found = found.where(closed if chosen.closed else ~closed)
    if key:
        found = found.where(Orders.id.in_(_holding(connection, chosen.text)))
    return found


def _unbalanced() -> Select[int | None]:
    """Orders whose postings on what is owed and deposited don't come to nothing."""
    return (
        select(LedgerPostings.order_id)
        .where(
            LedgerPostings.account.in_(("receivable", "deposits")),
            LedgerPostings.order_id.is_not(None),
        )
        .group_by(LedgerPostings.order_id)
        .having(func.sum(LedgerPostings.cents, type_=Cents()) != 0)
    )


def _holding(connection: Connection, typed: str) -> CompoundSelect[int]:
    """Ids of orders by owner, phone, tag and number, each from its own index.

    While an owner is to be named his order goes by the producer.
    """
    key, digits = name_key(typed), phone_digits(typed)
    hit = select(Customers.id).where(customer_holds(connection, typed))
    his = union(hit, select(Customers.id).where(Customers.joined_into.in_(hit)))
    by_owner = (
        select(Orders.id)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .where(Shares.customer_id.in_(his))
    )
    of_nobody = (
        select(Orders.id)
        .join(Lots, Lots.id == Orders.lot_id)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .where(Lots.producer_id.in_(his), Shares.customer_id.is_(None))
    )
    lots = select(Animals.lot_id).where(tag_holds(connection, typed))
    by_tag = select(Orders.id).where(Orders.lot_id.in_(lots))
    ways: list[Select[int]] = [by_owner, of_nobody, by_tag]
    if digits == key and len(digits) < 10:
        ways.append(select(Orders.id).where(Orders.number == int(digits)))
    return union(*ways)
