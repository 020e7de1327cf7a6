"""One search over customers, phone digits, tags, and the numbers of orders and lots."""

from sqlalchemy import ColumnElement, func, or_, select
from sqlalchemy.orm import InstrumentedAttribute

from db.desk import Desk
from db.repositories.customers import matching
from db.repositories.name_words import name_words
from db.repositories.near import near_customers
from db.repositories.order_lists import JOINED, OWN
from db.repositories.text_index import tag_holds
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from shared.marking.package_code import PackageCode, read_package
from shared.marking.serial import BoxSerial, read_box
from shared.shop.customers import name_key, phone_digits
from shared.shop.lists import Found

FEW = 4
MOST_NEAR = 5


class SearchBook:
    """`work.search`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def find(self, text: str, limit: int = 20) -> tuple[Found, ...]:
        """Exact numbers first, then tags, then customers; at most `limit` in all.

        A package's or box's code, as it is or within a GS1 label, is its order alone.
        Where that is few, customers follow whose names are written nearly so, marked as near.
        """
        if not name_key(text):
            return ()
        scanned = self._scanned(text)
        if scanned:
            return scanned
        found = [*self._numbers(text, 4), *self._tags(text, limit), *self._customers(text, limit)]
        if len(found) < FEW:
            found += self._near(text, {one.id for one in found if one.kind == "customer"})
        return tuple(found[:limit])

    def read_names(self) -> None:
        """Read the words of all names, 60 ms at 33,000 customers, before they are asked for."""
        name_words(self._desk.connection)

    def customers(self, text: str, limit: int) -> tuple[Found, ...]:
        """Customers alone: by name those that hold the text, then, where few do, those near it."""
        if not name_key(text):
            return ()
        found = self._customers(text, limit)
        if len(found) < FEW:
            found += self._near(text, {one.id for one in found})
        return tuple(found)

    def _near(self, text: str, but: set[int]) -> list[Found]:
        near = near_customers(self._desk.connection, text, MOST_NEAR + len(but))
        ids = [one for one in near if one not in but][:MOST_NEAR]
        if not ids:
            return []
        rows = self._desk.connection.execute(
            select(Customers.id, Customers.name, Customers.phone).where(Customers.id.in_(ids))
        )
        found = {row[0]: Found("customer", row[0], None, row[1], row[2], near=True) for row in rows}
        return [found[one] for one in ids if one in found]

    def _scanned(self, text: str) -> tuple[Found, ...]:
        """The order a label's code is of; () for what is no such code or stands for nothing."""
        box, codes = read_box(text), read_package(text)
        if isinstance(box, BoxSerial):
            of = Orders.number == box.order
        elif isinstance(codes, tuple):
            of = or_(*(_labeled(one) for one in codes))
        else:
            return ()
        row = self._desk.connection.execute(
            select(
                Orders.id,
                Orders.lot_id,
                Orders.number,
                func.coalesce(JOINED.name, OWN.name, "").label("owner"),
            )
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(of)
        ).first()
        if row is None:
            return ()
        return (Found("order", row.id, row.lot_id, str(row.number), row.owner),)

    def _numbers(self, text: str, limit: int) -> list[Found]:
        digits = phone_digits(text)
        if digits != text.strip().removeprefix("#") or not 0 < len(digits) < 10:
            return []
        if not int(digits):
            return []  # none begins with nothing but noughts
        run = self._desk.connection.execute
        orders = run(
            select(
                Orders.id, Orders.lot_id, Orders.number, func.coalesce(JOINED.name, OWN.name, "")
            )
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(_starts(Orders.number, digits))
            .order_by(Orders.number + 0)  # not by the index: few begin so, and all are looked at
            .limit(limit)
        )
        lots = run(
            select(Lots.id, Lots.number, Customers.name)
            .join(Customers, Customers.id == Lots.producer_id)
            .where(_starts(Lots.number, digits))
            .order_by(Lots.number + 0)
            .limit(limit)
        )
        return [
            *(Found("order", row[0], row[1], str(row[2]), row[3]) for row in orders),
            *(Found("lot", row[0], row[0], str(row[1]), row[2]) for row in lots),
        ]

    def _tags(self, text: str, limit: int) -> list[Found]:
        rows = self._desk.connection.execute(
            select(Animals.id, Animals.lot_id, Animals.tag, Customers.name)
            .join(Lots, Lots.id == Animals.lot_id)
            .join(Customers, Customers.id == Lots.producer_id)
            .where(tag_holds(self._desk.connection, text))
            .order_by(Animals.tag_key != name_key(text), Animals.id.desc())
            .limit(limit)
        )
        return [Found("animal", row[0], row[1], row[2], row[3]) for row in rows]

    def _customers(self, text: str, limit: int) -> list[Found]:
        rows = self._desk.connection.execute(
            select(Customers.id, Customers.name, Customers.phone)
            .where(Customers.id.in_(matching(self._desk.connection, text).limit(limit)))
            .order_by(Customers.name_key, Customers.id)
        )
        return [Found("customer", row[0], None, row[1], row[2]) for row in rows]


def _starts(number: InstrumentedAttribute[int], digits: str) -> ColumnElement[bool]:
    """The number begins with the digits: 12 is 12, 120 to 129, 1,200 to 1,299 and so on."""
    low = int(digits)
    spans = [(low * 10**more, low * 10**more + 10**more - 1) for more in range(10 - len(digits))]
    return or_(*(number.between(*span) for span in spans))


def _labeled(code: PackageCode) -> ColumnElement[bool]:
    """The order has that number and a package with that label."""
    made = select(Packages.id).where(
        Packages.order_id == Orders.id, Packages.label_number == code.package
    )
    return (Orders.number == code.order) & made.exists()
