"""What the Office's reports read: one query for each span of days asked for."""

from datetime import date, datetime, time, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Row, ScalarSelect, Subquery, case, func, select
from sqlalchemy.orm import aliased

from db.columns import Day, Nanograms, UtcDateTime
from db.desk import Desk
from db.repositories.calendar import CalendarBook
from db.repositories.cooler import hot_weight
from db.repositories.ended_orders import ENDED
from db.repositories.order_lists import billed, paid
from db.repositories.own_figures import WRAPPED, all_weighed, expected_by_line, made_by_line
from db.tables.boxes import HandedPackages
from db.tables.counted import Counted, HandedCounts
from db.tables.customers import Customers
from db.tables.findings import BlockTicks
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from shared.shop.calendar import minutes_on
from shared.shop.reports import (
    BlockWeek,
    CutMade,
    Cutting,
    Killed,
    LotPacked,
    Sitting,
    minutes_of,
    weeks,
)

OWN, JOINED = aliased(Customers), aliased(Customers)
NAME = func.coalesce(JOINED.name, OWN.name, "")


class ReportBook:
    """`work.reports`; reads only. Days are the shop's, `end` within."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def killed(self, start: date, end: date) -> tuple[Killed, ...]:
        """Every animal killed in those days, with its hot weight as it stands.

        Where no day of killing was kept, what hangs or was cut counts on the day of its booking.
        """
        hung = Animals.state.in_(("hanging", "on_block", "cut"))
        by_booking = Animals.killed_on.is_(None) & Lots.day.between(start, end) & hung
        day = func.coalesce(Animals.killed_on, Lots.day, type_=Day())
        rows = self._desk.connection.execute(
            select(day, Animals.tag, Lots.species, NAME, Lots.number, hot_weight())
            .join(Lots, Lots.id == Animals.lot_id)
            .join(OWN, OWN.id == Lots.producer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(Animals.killed_on.between(start, end) | by_booking)
            .order_by(day, Lots.number, Animals.place_in_lot)
        )
        return tuple(Killed(*row) for row in rows)

    def packed(self, start: date, end: date) -> tuple[LotPacked, ...]:
        """Lots booked for those days whose orders are all wrapped.

        A carcass without a hot weight leaves its lot out: its cut-out would be false. So does a
        package that was counted and not weighed.
        """
        animals = (
            select(Animals.lot_id, hot_weight().label("hot_ng"))
            .join(Lots, Lots.id == Animals.lot_id)
            .where(Lots.day.between(start, end), Animals.state.not_in(ENDED))
            .subquery()
        )
        hung = (
            select(
                animals.c.lot_id,
                func.sum(animals.c.hot_ng, type_=Nanograms()).label("hot_ng"),
                func.count().label("head"),
            )
            .group_by(animals.c.lot_id)
            .having(func.count() == func.count(animals.c.hot_ng))
            .subquery()
        )
        unwrapped = select(Orders.id).where(Orders.lot_id == Lots.id, Orders.state.not_in(WRAPPED))
        rows = self._desk.connection.execute(
            select(Lots.species, NAME, hung.c.head, hung.c.hot_ng, _packed_of_lot())
            .select_from(hung)
            .join(Lots, Lots.id == hung.c.lot_id)
            .join(OWN, OWN.id == Lots.producer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(~unwrapped.exists(), ~_counted_of_lot())
        )
        return tuple(LotPacked(*row) for row in rows if row[4])

    def made(self, start: date, end: date) -> tuple[CutMade, ...]:
        """Expected and made by species and cut, of wrapped orders of lots booked in those days."""
        made, expected = made_by_line(), expected_by_line()
        rows = self._desk.connection.execute(
            select(
                Lots.species,
                expected.c.cut,
                func.count(Orders.lot_id.distinct()),
                func.sum(expected.c.expected_ng, type_=Nanograms()),
                func.sum(made.c.made_ng, type_=Nanograms()),
            )
            .join(Orders, Orders.id == expected.c.order_id)
            .join(Lots, Lots.id == Orders.lot_id)
            .join(made, (made.c.order_id == Orders.id) & (made.c.line == expected.c.line))
            .where(
                Lots.day.between(start, end),
                Orders.state.in_(WRAPPED),
                all_weighed(Lots.id, expected.c.cut),
            )
            .group_by(Lots.species, expected.c.cut)
            .order_by(Lots.species, expected.c.cut)
        )
        return tuple(CutMade(*row) for row in rows)

    def block(self, start: date, end: date) -> tuple[BlockWeek, ...]:
        """Each week's minutes as booked and as ticked; days outside the span aren't in it."""
        filled = CalendarBook(self._desk).filled(start, end)
        cuttings = self._cuttings(start, end)
        found: list[BlockWeek] = []
        for monday in weeks(start, end):
            days = [monday + timedelta(days=past) for past in range(7)]
            days = [day for day in days if start <= day <= end]
            mine = [one for day in days for one in cuttings.get(day, ())]
            reckoned = sum(minutes_on(filled, day) for day in days)
            found.append(BlockWeek(monday, reckoned, minutes_of(mine), len(mine)))
        return tuple(one for one in found if one.reckoned or one.carcasses)

    def sitting(self, today: date | None = None) -> tuple[Sitting, ...]:
        """Wrapped orders that aren't closed and are unpaid or not fetched, longest first."""
        counted = _counted_here()
        since = func.max(func.coalesce(Packages.made_at, counted.c.since))
        here = case((HandedPackages.package_id.is_(None), 1), else_=0)
        left = func.coalesce(func.sum(case((Packages.id.is_not(None), here), else_=0)), 0)
        left += func.coalesce(func.max(counted.c.left), 0)
        due = billed() - paid()
        rows = self._desk.connection.execute(
            select(
                Orders.id,
                Orders.number,
                NAME,
                func.coalesce(JOINED.phone, OWN.phone, ""),
                Lots.species,
                since,
                left,
                due,
            )
            .join(Lots, Lots.id == Orders.lot_id)
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .outerjoin(Packages, (Packages.order_id == Orders.id) & (Packages.void == ""))
            .outerjoin(HandedPackages, HandedPackages.package_id == Packages.id)
            .where(Orders.closed_at.is_(None), Orders.state.in_(WRAPPED))
            .outerjoin(counted, counted.c.order_id == Orders.id)
            .group_by(Orders.id, Lots.species, OWN.id, JOINED.id)
            .having((left > 0) | (due > 0))
            .order_by(since, Orders.number)
        )
        on = today or self._desk.now.astimezone().date()
        return tuple(_sitting(row, on) for row in rows)

    def _cuttings(self, start: date, end: date) -> dict[date, list[Cutting]]:
        """First and last tick of each carcass, by the day it was begun."""
        first, last = _moment(start), _moment(end + timedelta(days=1))
        rows = self._desk.connection.execute(
            select(
                func.min(BlockTicks.at, type_=UtcDateTime()),
                func.max(BlockTicks.at, type_=UtcDateTime()),
            )
            .where(BlockTicks.at >= first, BlockTicks.at < last)
            .group_by(BlockTicks.animal_id)
        )
        found: dict[date, list[Cutting]] = {}
        for begun, done in rows:
            found.setdefault(begun.astimezone().date(), []).append(Cutting(begun, done))
        return found


def _packed_of_lot() -> ScalarSelect[int]:
    """What all packages of the lot at hand weigh."""
    return (
        select(func.sum(Packages.net_ng, type_=Nanograms()))
        .join(Orders, Orders.id == Packages.order_id)
        .where(Orders.lot_id == Lots.id, Packages.void == "")
        .correlate(Lots)
        .scalar_subquery()
    )


def _counted_of_lot() -> ColumnElement[bool]:
    """Whether something of the lot at hand was wrapped by count."""
    return (
        select(Counted.id)
        .join(Orders, Orders.id == Counted.order_id)
        .where(Orders.lot_id == Lots.id, Counted.void == "")
        .correlate(Lots)
        .exists()
    )


def _counted_here() -> Subquery:
    """Packages wrapped by count, by order: when the last were, and how many are still here."""
    here = case((HandedCounts.counted_id.is_(None), Counted.packages), else_=0)
    return (
        select(
            Counted.order_id,
            func.max(Counted.made_at, type_=UtcDateTime()).label("since"),
            func.sum(here).label("left"),
        )
        .outerjoin(HandedCounts, HandedCounts.counted_id == Counted.id)
        .where(Counted.void == "")
        .group_by(Counted.order_id)
        .subquery()
    )


def _sitting(row: Row[*tuple[Any, ...]], today: date) -> Sitting:
    since = None if row[5] is None else row[5].astimezone().date()
    days = 0 if since is None else max(0, (today - since).days)
    return Sitting(
        order_id=row[0],
        number=row[1],
        owner=row[2],
        phone=row[3],
        species=row[4],
        since=since,
        days=days,
        packages_left=int(row[6]),
        due_cents=max(0, row[7]),
    )


def _moment(day: date) -> datetime:
    """The first moment of a day on the shop's clock."""
    return datetime.combine(day, time()).astimezone()
