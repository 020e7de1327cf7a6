"""The records the rules ask to be kept, as tables of text for a span of days, read in pieces."""

from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Select, select
from sqlalchemy.orm import InstrumentedAttribute

from db.desk import Desk
from db.tables.bills import Bills, Payments
from db.tables.counted import Counted
from db.tables.customers import Customers
from db.tables.ledger import LedgerEntries
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from db.tables.papers import Changes
from db.tables.people import Persons
from db.tables.weighings import Losses, Weighings
from db.weights import weight_of
from shared.shop.records import RecordTable

PIECE = 1000


class RecordBook:
    """`work.records`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def rows(
        self, table: RecordTable, start: date, end: date
    ) -> Iterator[Sequence[tuple[str, ...]]]:
        """The rows of a table from `start` to `end` inclusive, a thousand at a time, as text."""
        result = self._desk.connection.execution_options(yield_per=PIECE).execute(
            _selects(start, end)[table.name]
        )
        for piece in result.partitions(PIECE):
            yield [_texts(table, tuple(row)) for row in piece]


def _texts(table: RecordTable, row: tuple[Any, ...]) -> tuple[str, ...]:
    """One row as text: a weight's three columns as one, money in dollars."""
    if "weight" in table.columns:
        at = table.columns.index("weight")
        count, unit, exponent = row[at : at + 3]
        weight = weight_of(count, unit, exponent)
        row = (*row[:at], None if weight is None else weight.text(), *row[at + 3 :])
    return tuple(
        _dollars(value) if name == "dollars" else _text(value)
        for name, value in zip(table.columns, row, strict=True)
    )


def _dollars(cents: int) -> str:
    return f"{'-' if cents < 0 else ''}{abs(cents) // 100}.{abs(cents) % 100:02d}"


def _text(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, datetime):
        return value.astimezone().strftime("%Y-%m-%d %H:%M:%S")
    return str(value)


def _selects(start: date, end: date) -> dict[str, Select[*tuple[Any, ...]]]:
    day = Lots.day.between(start, end)
    return {
        "animals": _animals(day),
        "owners": _owners(day),
        "weighings": _weighings(start, end),
        "losses": _losses(start, end),
        "packages": _packages(start, end),
        "counted": _counted(start, end),
        "bills": _bills(start, end),
        "payments": _payments(start, end),
        "changes": _changes(start, end),
    }


def _within(column: InstrumentedAttribute[datetime], start: date, end: date) -> ColumnElement[bool]:
    """Between two days on the shop's wall, as its books are dated."""
    first = datetime.combine(start, time()).astimezone(UTC)
    after = datetime.combine(end + timedelta(days=1), time()).astimezone(UTC)
    return (column >= first) & (column < after)


def _animals(day: ColumnElement[bool]) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Lots.number,
            Lots.day,
            Lots.species,
            Customers.name,
            Customers.address,
            Customers.phone,
            Animals.place_in_lot + 1,
            Animals.tag,
            Animals.sex,
            Animals.age,
            Animals.regime,
            Animals.state,
            Animals.held_for,
            Animals.arrived_at,
            Animals.killed_on,
            Lots.cancelled,
        )
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Customers, Customers.id == Lots.producer_id)
        .where(day)
        .order_by(Lots.day, Lots.number, Animals.place_in_lot)
    )


def _owners(day: ColumnElement[bool]) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Lots.number,
            Shares.number,
            Customers.name,
            Customers.address,
            Customers.phone,
            Orders.number,
            Orders.state,
        )
        .join(Lots, Lots.id == Shares.lot_id)
        .outerjoin(Customers, Customers.id == Shares.customer_id)
        .outerjoin(Orders, (Orders.lot_id == Shares.lot_id) & (Orders.share == Shares.number))
        .where(day)
        .order_by(Lots.day, Lots.number, Shares.number)
    )


def _weighings(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Weighings.at,
            Lots.number,
            Animals.tag,
            Weighings.kind,
            Weighings.side,
            Weighings.quarter,
            Weighings.weight_count,
            Weighings.weight_unit,
            Weighings.weight_exponent,
            Weighings.scale,
            Weighings.source,
            Weighings.withdrawn,
            Weighings.reason,
            Persons.name,
        )
        .join(Animals, Animals.id == Weighings.animal_id)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Persons, Persons.id == Weighings.person_id)
        .where(_within(Weighings.at, start, end))
        .order_by(Weighings.id)
    )


def _losses(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Losses.at,
            Lots.number,
            Animals.tag,
            Losses.part,
            Losses.side,
            Losses.weight_count,
            Losses.weight_unit,
            Losses.weight_exponent,
            Losses.reason,
            Losses.void,
            Persons.name,
        )
        .join(Animals, Animals.id == Losses.animal_id)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Persons, Persons.id == Losses.person_id)
        .where(_within(Losses.at, start, end))
        .order_by(Losses.id)
    )


def _packages(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Packages.made_at,
            Packages.label_number,
            Orders.number,
            Packages.owner,
            Packages.product,
            Packages.net_count,
            Packages.net_unit,
            Packages.net_exponent,
            Packages.pieces,
            Packages.void,
            Persons.name,
        )
        .join(Orders, Orders.id == Packages.order_id)
        .join(Persons, Persons.id == Packages.person_id)
        .where(_within(Packages.made_at, start, end))
        .order_by(Packages.id)
    )


def _counted(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Counted.made_at,
            Orders.number,
            Counted.owner,
            Counted.product,
            Counted.packages,
            Counted.void,
            Persons.name,
        )
        .join(Orders, Orders.id == Counted.order_id)
        .join(Persons, Persons.id == Counted.person_id)
        .where(_within(Counted.made_at, start, end))
        .order_by(Counted.id)
    )


def _bills(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Bills.issued_at,
            Bills.kind,
            Bills.number,
            Lots.number,
            Customers.name,
            Bills.total_cents,
            Bills.reason,
            Persons.name,
        )
        .join(Lots, Lots.id == Bills.lot_id)
        .outerjoin(Customers, Customers.id == Bills.customer_id)
        .join(Persons, Persons.id == Bills.person_id)
        .where(_within(Bills.issued_at, start, end))
        .order_by(Bills.id)
    )


def _payments(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Payments.at,
            LedgerEntries.day,
            Payments.number,
            Lots.number,
            Customers.name,
            Payments.kind,
            Payments.means,
            Payments.cents,
            Payments.note,
            Persons.name,
        )
        .join(LedgerEntries, LedgerEntries.payment_id == Payments.id)
        .join(Lots, Lots.id == Payments.lot_id)
        .outerjoin(Customers, Customers.id == Payments.customer_id)
        .join(Persons, Persons.id == Payments.person_id)
        .where(LedgerEntries.day >= start, LedgerEntries.day <= end)
        .order_by(Payments.id)
    )


def _changes(start: date, end: date) -> Select[*tuple[Any, ...]]:
    return (
        select(
            Changes.at,
            Changes.subject,
            Changes.subject_id,
            Changes.what,
            Changes.reason,
            Changes.data,
            Persons.name,
        )
        .join(Persons, Persons.id == Changes.person_id)
        .where(_within(Changes.at, start, end))
        .order_by(Changes.id)
    )
