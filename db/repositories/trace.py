"""From a tag, a label, an order, a lot or a bill to everything that is kept of it."""

from typing import Any

from sqlalchemy import Select, literal, or_, select, union_all
from sqlalchemy.sql.elements import ColumnElement

from db.desk import Desk
from db.repositories.bills import BillBook
from db.repositories.counted import CountedBook
from db.repositories.losses import losses_of
from db.repositories.lots import LotBook
from db.repositories.orders import OrderBook
from db.repositories.packages import PackageBook
from db.repositories.papers import ChangeBook
from db.repositories.payments import PaymentBook
from db.repositories.sheets import SheetBook
from db.repositories.weighings import weighings_of
from db.tables.bills import Bills
from db.tables.customers import Customers
from db.tables.lots import Animals, Lots
from db.tables.orders import Orders
from db.tables.packages import Packages
from shared.marking.package_code import PackageCode, read_package
from shared.shop.customers import name_key
from shared.shop.trace import Trace, TraceHit, TraceKind

MOST = 12


class TraceBook:
    """`work.trace`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def find(self, text: str) -> tuple[TraceHit, ...]:
        """What that tag or number leads to, tags first; one query for tags and one for numbers."""
        key = name_key(text)
        if not key:
            return ()
        codes = read_package(text)
        if isinstance(codes, tuple):
            return self._codes(codes)
        return (*self._tags(key), *self._numbers(key))

    def _codes(self, codes: tuple[PackageCode, ...]) -> tuple[TraceHit, ...]:
        """A label scanned: the package of that order and number."""
        same = or_(
            *(
                (Packages.label_number == one.package) & (Orders.number == one.order)
                for one in codes
            )
        )
        found = (
            self._lots("label", same)
            .add_columns(Packages.label_number)
            .join(Orders, Orders.lot_id == Lots.id)
            .join(Packages, Packages.order_id == Orders.id)
        )
        return tuple(
            TraceHit("label", str(row[3]), row[1], None, row[2])
            for row in self._desk.connection.execute(found)
        )

    def _tags(self, key: str) -> list[TraceHit]:
        rows = self._desk.connection.execute(
            select(Animals.id, Animals.lot_id, Animals.tag, Customers.name)
            .join(Lots, Lots.id == Animals.lot_id)
            .join(Customers, Customers.id == Lots.producer_id)
            .where(Animals.tag_key == key)
            .order_by(Animals.id.desc())
            .limit(MOST)
        )
        return [TraceHit("tag", row[2], row[1], row[0], row[3]) for row in rows]

    def _numbers(self, key: str) -> list[TraceHit]:
        digits = key.removeprefix("#")
        if not (digits.isascii() and digits.isdigit() and len(digits) < 12):
            return []
        number = int(digits)
        found = union_all(
            self._lots("label", Packages.label_number == number)
            .join(Orders, Orders.lot_id == Lots.id)
            .join(Packages, Packages.order_id == Orders.id),
            self._lots("order", Orders.number == number).join(Orders, Orders.lot_id == Lots.id),
            self._lots("lot", Lots.number == number),
            self._lots("bill", (Bills.number == number) & (Bills.kind == "bill")).join(
                Bills, Bills.lot_id == Lots.id
            ),
        )
        return [
            TraceHit(row[0], digits, row[1], None, row[2])
            for row in self._desk.connection.execute(found)
        ]

    def _lots(self, kind: TraceKind, where: ColumnElement[bool]) -> Select[*tuple[Any, ...]]:
        return (
            select(literal(kind), Lots.id, Customers.name)
            .select_from(Lots)
            .join(Customers, Customers.id == Lots.producer_id)
            .where(where)
        )

    def of_lot(self, lot_id: int) -> Trace | None:
        """Everything kept of a lot, in the same number of queries however much it is."""
        desk = self._desk
        lot = LotBook(desk).get(lot_id)
        if lot is None:
            return None
        animals = [one.id for one in lot.animals]
        orders = OrderBook(desk).of_lot(lot_id)
        return Trace(
            lot=lot,
            orders=orders,
            weighings=weighings_of(desk.connection, animals),
            losses=losses_of(desk.connection, animals),
            sheets=SheetBook(desk).of_lot(lot_id),
            packages=PackageBook(desk).of_lot(lot_id),
            counted=CountedBook(desk).of_lot(lot_id),
            bills=BillBook(desk).of_lot(lot_id),
            payments=PaymentBook(desk).of_lot(lot_id),
            changes=ChangeBook(desk).of_all(
                {"lot": [lot_id], "animal": animals, "order": [one.id for one in orders]}
            ),
        )
