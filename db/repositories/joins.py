"""Two entries of one person: joined, and taken apart again; no row of the past is rewritten.

Who was joined into whom is a pointer at the duplicate's row and a row in the log of changes, so
orders, bills and payments keep the entry they were written for, and go back with it.
"""

import json

from sqlalchemy import ColumnElement, ScalarSelect, Select, func, or_, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.tables.bills import Bills, Payments
from db.tables.calendar import WaitingRows
from db.tables.customers import Customers
from db.tables.lots import Lots, Shares
from db.tables.orders import Orders
from db.tables.papers import Changes
from db.tables.people import Persons
from shared.shop.customers import FILLED, Customer, HeldBy, JoinedEntry, lacked, phone_digits

_INTO, _LATER = aliased(Customers), aliased(Changes)


def _him(customer_id: int) -> Select[int]:
    """The entry and those joined into it."""
    return select(Customers.id).where(
        or_(Customers.id == customer_id, Customers.joined_into == customer_id)
    )


def held_by(desk: Desk, customer_id: int) -> HeldBy:
    """What is written for an entry and those joined into it: it goes along when it is joined."""
    him = _him(customer_id)

    def count(*of: ColumnElement[bool]) -> ScalarSelect[int]:
        return select(func.count()).where(*of).scalar_subquery()

    orders = (
        Shares.customer_id.in_(him),
        Orders.lot_id == Shares.lot_id,
        Orders.share == Shares.number,
        Lots.id == Orders.lot_id,
        Lots.cancelled == "",
    )
    row = desk.connection.execute(
        select(
            count(*orders),
            count(*orders, Orders.closed_at.is_(None)),
            count(Lots.producer_id.in_(him), Lots.cancelled == ""),
            count(Bills.customer_id.in_(him)),
            count(Payments.customer_id.in_(him)),
            count(WaitingRows.customer_id.in_(him), WaitingRows.state.in_(("waiting", "told"))),
        )
    ).one()
    return HeldBy(*row)


def join(desk: Desk, duplicate: Customer, stays: Customer) -> None:
    """Point the duplicate, and those joined into it, at the entry that stays.

    What that one lacks of phone, mail and address it takes from the duplicate, which keeps it.
    """
    desk.must_write()
    before = select(Customers.id).where(Customers.joined_into == duplicate.id)
    _lead(desk, duplicate.id, stays.id)
    _take_along(desk, list(desk.connection.execute(before).scalars()), stays.id)
    taken = lacked(duplicate, stays)
    _fill(desk, stays.id, {one: getattr(duplicate, one) for one in taken})
    desk.record("customer", duplicate.id, "joined", into=stays.id, filled=",".join(taken))


def take_apart(desk: Desk, duplicate: Customer, stays: Customer) -> None:
    """Let the duplicate stand alone again, with those who had been joined into it before.

    What the entry that stays had taken from it and still has goes, too.
    """
    desk.must_write()
    direct, filled = _last_joins(desk, stays.id)
    along, found = {duplicate.id}, {duplicate.id}
    while found:
        found = {one for one, into in direct.items() if into in found} - along
        along |= found
    _lead(desk, duplicate.id, None)
    _take_along(desk, sorted(along - {duplicate.id}), duplicate.id)
    back = [one for one in filled.get(duplicate.id, ()) if _same(duplicate, stays, one)]
    _fill(desk, stays.id, dict.fromkeys(back, ""))
    desk.record("customer", duplicate.id, "parted", out_of=stays.id)


def _lead(desk: Desk, customer_id: int, into: int | None) -> None:
    desk.connection.execute(
        update(Customers)
        .where(Customers.id == customer_id)
        .values(joined_into=into, version=Customers.version + 1)
    )


def _take_along(desk: Desk, ids: list[int], into: int) -> None:
    """Those joined before go with him; each is recorded, so that who keeps names hears of it."""
    for one in ids:
        _lead(desk, one, into)
        desk.record("customer", one, "along", into=into)


def _same(duplicate: Customer, stays: Customer, field: str) -> bool:
    return bool(getattr(duplicate, field) == getattr(stays, field))


def _fill(desk: Desk, customer_id: int, values: dict[str, str]) -> None:
    if not values:
        return
    if "phone" in values:
        values["digits"] = phone_digits(values["phone"])
    desk.connection.execute(
        update(Customers)
        .where(Customers.id == customer_id)
        .values(**values, version=Customers.version + 1)
    )


def _last_joins(desk: Desk, stays: int) -> tuple[dict[int, int], dict[int, list[str]]]:
    """Of all who were joined into an entry: into whom at first, and what he filled there."""
    rows = desk.connection.execute(
        select(Changes.subject_id, Changes.data)
        .join(Customers, Customers.id == Changes.subject_id)
        .where(
            Changes.subject == "customer", Changes.what == "joined", Customers.joined_into == stays
        )
        .order_by(Changes.id)
    )
    direct: dict[int, int] = {}
    filled: dict[int, list[str]] = {}
    for who, data in rows:
        said = json.loads(data or "{}")
        direct[who] = int(said["into"])
        filled[who] = [one for one in said.get("filled", "").split(",") if one in FILLED]
    return direct, filled


def joined_entries(desk: Desk, most: int = 200) -> tuple[JoinedEntry, ...]:
    """Who is joined into another, the last joined first, with who did it and when."""
    last = (
        select(func.max(_LATER.id))
        .where(
            _LATER.subject == "customer",
            _LATER.what == "joined",
            _LATER.subject_id == Customers.id,
        )
        .correlate(Customers)
        .scalar_subquery()
    )
    rows = desk.connection.execute(
        select(
            Customers.id,
            Customers.name,
            Customers.phone,
            _INTO.id,
            _INTO.name,
            _INTO.phone,
            Changes.at,
            func.coalesce(Persons.name, ""),
        )
        .join(_INTO, _INTO.id == Customers.joined_into)
        .outerjoin(Changes, Changes.id == last)
        .outerjoin(Persons, Persons.id == Changes.person_id)
        .order_by(Changes.id.desc(), Customers.id)
        .limit(most)
    )
    return tuple(JoinedEntry(*row) for row in rows)
