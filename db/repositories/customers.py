"""Customers: add, edit, find, and join two that turn out to be one."""

from collections.abc import Collection

from sqlalchemy import Connection, Select, bindparam, func, or_, select
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.joins import held_by, join, joined_entries, take_apart
from db.repositories.near import customers_named_nearly
from db.repositories.order_lists import OrderFilter, order_rows
from db.repositories.text_index import customer_holds
from db.tables.customers import Customers
from db.tables.lots import Shares
from db.tables.orders import Orders
from shared.shop.customers import Customer, HeldBy, JoinedEntry, name_key, phone_digits, town
from shared.shop.lists import CustomerRow, OrderRow
from shared.shop.problems import Refused, StaleEdit

_NAMES = (
    select(Customers.id, Customers.name, Customers.phone)
    .where(Customers.joined_into.is_(None))
    .order_by(Customers.name_key, Customers.id)
    .limit(bindparam("most"))
)
_THESE = select(Customers.id, Customers.name, Customers.phone).where(
    Customers.id.in_(bindparam("ids", expanding=True))
)


def _values(customer: Customer) -> dict[str, object]:
    return {
        "name": customer.name.strip(),
        "name_key": name_key(customer.name),
        "phone": customer.phone.strip(),
        "digits": phone_digits(customer.phone),
        "email": customer.email.strip(),
        "address": customer.address.strip(),
        "notes": customer.notes,
        "rate_group": customer.group,
        "language": customer.language,
    }


class CustomerBook:
    """`work.customers`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, customer: Customer) -> Customer | Refused:
        """Keep a new customer."""
        if not customer.name.strip():
            return Refused("name_missing")
        desk = self._desk
        new = desk.insert(Customers, {**_values(customer), "joined_into": None, "version": 1})
        desk.record("customer", new, "added", name=customer.name)
        return self._there(new)

    def save(self, customer: Customer) -> Customer | StaleEdit | Refused:
        """Write changes; the version read must still hold."""
        if not customer.name.strip():
            return Refused("name_missing")
        desk = self._desk
        stale = desk.edit(Customers, "customer", customer.id, customer.version, _values(customer))
        if stale is not None:
            return stale
        desk.record("customer", customer.id, "saved", name=customer.name)
        return self._there(customer.id)

    def get(self, customer_id: int) -> Customer | None:
        """The customer, or None."""
        row = self._desk.connection.execute(
            select(
                Customers.id,
                Customers.name,
                Customers.phone,
                Customers.email,
                Customers.address,
                Customers.notes,
                Customers.rate_group,
                Customers.language,
                Customers.joined_into,
                Customers.version,
            ).where(Customers.id == customer_id)
        ).one_or_none()
        return None if row is None else Customer(*row)

    def _there(self, customer_id: int) -> Customer:
        found = self.get(customer_id)
        assert found is not None
        return found

    def find(self, text: str, *, limit: int = 50, offset: int = 0) -> tuple[CustomerRow, ...]:
        """Customers whose name or phone holds the text, by name; all of them for an empty text."""
        return self._rows(matching(self._desk.connection, text).limit(limit).offset(offset))

    def names(self, most: int, there: Collection[int] = ()) -> tuple[tuple[int, str, str], ...]:
        """Id, name and phone of the first so many customers by name, and of those `there` too."""
        run = self._desk.connection.execute
        first = run(_NAMES, {"most": most}).all()
        missing = set(there).difference([row[0] for row in first])
        rest = run(_THESE, {"ids": list(missing)}).all() if missing else ()
        return (*first, *rest)

    def alike(self, name: str, phone: str) -> tuple[CustomerRow, ...]:
        """Customers who may be this one: the same name key or the same phone digits."""
        digits, key = phone_digits(phone), name_key(name)
        same = [Customers.name_key == key] if key else []
        if len(digits) >= 7:
            same.append(Customers.digits == digits)
        if not same:
            return ()
        return self._rows(
            select(Customers.id).where(Customers.joined_into.is_(None), or_(*same)).limit(20)
        )

    def nearly(self, name: str) -> tuple[CustomerRow, ...]:
        """Customers whose name is this one but for a letter or two swapped; not the same name."""
        ids = customers_named_nearly(self._desk.connection, name, 5)
        return self._rows(select(Customers.id).where(Customers.id.in_(ids))) if ids else ()

    def _rows(self, ids: Select[int]) -> tuple[CustomerRow, ...]:
        mine = aliased(Customers)
        joined = select(mine.id).where(mine.joined_into == Customers.id).correlate(Customers)
        open_orders = (
            select(func.count())
            .select_from(Orders)
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .where(
                (Shares.customer_id == Customers.id) | Shares.customer_id.in_(joined),
                Orders.closed_at.is_(None),
            )
            .scalar_subquery()
        )
        rows = self._desk.connection.execute(
            select(
                Customers.id,
                Customers.name,
                Customers.phone,
                Customers.email,
                Customers.address,
                open_orders,
            )
            .where(Customers.id.in_(ids))
            .order_by(Customers.name_key, Customers.id)
        )
        return tuple(
            CustomerRow(id_, name, phone, email, town(address), count)
            for id_, name, phone, email, address, count in rows
        )

    def join(self, duplicate_id: int, into_id: int) -> Customer | Refused:
        """The first turns out to be the second. Orders and bills stay as they were written."""
        duplicate, into = self.get(duplicate_id), self.get(into_id)
        if duplicate is None or into is None:
            return Refused("no_such_customer")
        stays = self._there(into.joined_into) if into.joined_into else into
        if stays.id == duplicate.id:
            return Refused("same_customer")
        join(self._desk, duplicate, stays)
        return self._there(stays.id)

    def take_apart(self, duplicate_id: int) -> Customer | Refused:
        """The first turns out to be another after all: it stands alone again, with all it had.

        What was written for the entry it was joined into since then stays with that.
        """
        duplicate = self.get(duplicate_id)
        if duplicate is None:
            return Refused("no_such_customer")
        if duplicate.joined_into is None:
            return Refused("not_joined")
        take_apart(self._desk, duplicate, self._there(duplicate.joined_into))
        return self._there(duplicate.id)

    def held_by(self, customer_id: int) -> HeldBy:
        """How much is written for a customer and those joined into him."""
        return held_by(self._desk, customer_id)

    def joined(self) -> tuple[JoinedEntry, ...]:
        """Who is joined into another, the last first."""
        return joined_entries(self._desk)

    def orders(self, customer_id: int) -> tuple[OrderRow, ...]:
        """The orders of a customer and of those joined into him, newest first."""
        return order_rows(
            self._desk.connection,
            OrderFilter(customer_id=customer_id),
            sort="day",
            descending=True,
            limit=500,
            offset=0,
        )


def matching(connection: Connection, text: str) -> Select[int]:
    """Ids of customers whose name holds the text, or whose phone holds its digits.

    Who was joined into another is found by his old name too, and told as the one he is.
    """
    if not name_key(text):
        alone = select(Customers.id).where(Customers.joined_into.is_(None))
        return alone.order_by(Customers.name_key, Customers.id)
    hit = select(func.coalesce(Customers.joined_into, Customers.id)).where(
        customer_holds(connection, text)
    )
    found = select(Customers.id).where(Customers.id.in_(hit))
    return found.order_by(Customers.name_key, Customers.id)
