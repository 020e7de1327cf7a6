"""Calls: logged, listed by order, and who is still to be rung."""

from collections.abc import Collection, Sequence
from datetime import date, timedelta
from typing import cast

from sqlalchemy import select

from db.desk import Desk, Written
from db.repositories.calendar import CalendarBook
from db.repositories.ended_orders import ended_orders
from db.repositories.news import NewsBook
from db.repositories.order_lists import OrderFilter, order_rows
from db.repositories.waiting import WaitingBook
from db.tables.calendar import WaitingRows
from db.tables.calls import CallOffers, Calls
from db.tables.calls import CallRules as Rules
from db.tables.customers import Customers
from db.tables.lots import Animals
from db.tables.orders import Orders
from db.tables.people import Persons, Stations
from shared.shop.calendar import Booking, Waiting, hang_days, why_full
from shared.shop.calls import (
    About,
    Call,
    CallRules,
    CountedFrom,
    Offered,
    Outcome,
    PlaceFree,
    ToRing,
    WithoutAnswer,
    due_on,
    in_the_end,
    rules_fault,
    silent_calls,
)
from shared.shop.lists import OrderRow
from shared.shop.problems import Refused, StaleEdit

STOPPED = ("held", "condemned", "refused")
MOST = 500
# How far ahead a free place is told to those who wait (our choice: later ones were there before).
SOON = timedelta(days=14)


class CallBook:
    """`work.calls`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def rules(self) -> CallRules:
        """When cut sheets are due, and what happens without an answer."""
        row = self._desk.connection.execute(
            select(
                Rules.due_days,
                Rules.without_answer,
                Rules.version,
                Rules.counted_from,
                Rules.remind_days,
                Rules.most_calls,
            )
        ).one()
        without, counted = cast("WithoutAnswer", row[1]), cast("CountedFrom", row[3])
        return CallRules(row[0], without, row[2], counted, row[4], row[5])

    def save_rules(self, rules: CallRules) -> CallRules | StaleEdit | Refused:
        """Write the rules; the version read must still hold. Refused: as `rules_fault` says."""
        fault = rules_fault(rules)
        if fault:
            return Refused(fault)
        values: dict[str, Written] = {
            "due_days": rules.due_days,
            "without_answer": rules.without_answer,
            "counted_from": rules.counted_from,
            "remind_days": rules.remind_days,
            "most_calls": rules.most_calls,
        }
        stale = self._desk.edit(Rules, "call_rules", 1, rules.version, values)
        if stale is not None:
            return stale
        self._desk.record("call_rules", 1, "saved", "", **values)
        return self.rules()

    def log(
        self,
        order_id: int,
        outcome: Outcome,
        note: str = "",
        *,
        told_to: str = "",
        offered: Sequence[Offered] = (),
    ) -> Call | Refused:
        """Keep a call, with who was told and what was offered; they are never changed.

        Who made it, when and at which station comes from the unit.
        """
        known = self._desk.connection.execute(select(Orders.id).where(Orders.id == order_id))
        if known.first() is None:
            return Refused("no_such_order")
        values = {"order_id": order_id, "outcome": outcome, "note": note.strip()}
        values["told_to"] = told_to.strip()
        new = self._desk.insert(Calls, {**values, "at": self._desk.now, **self._desk.stamp})
        offers: list[dict[str, object]] = [
            {"call_id": new, "offer": one.offer, "cents": one.cents} for one in offered
        ]
        self._desk.add_rows(CallOffers, offers)
        return next(one for one in self.of_order(order_id) if one.id == new)

    def of_order(self, order_id: int) -> tuple[Call, ...]:
        """The calls about an order, first to last."""
        return self._calls([order_id])

    def _calls(self, order_ids: Sequence[int]) -> tuple[Call, ...]:
        rows = self._desk.connection.execute(
            select(
                Calls.id,
                Calls.order_id,
                Calls.outcome,
                Calls.note,
                Calls.at,
                Persons.name,
                Stations.name,
                Calls.told_to,
            )
            .join(Persons, Persons.id == Calls.person_id)
            .join(Stations, Stations.id == Calls.station_id)
            .where(Calls.order_id.in_(order_ids))
            .order_by(Calls.at, Calls.id)
        ).all()
        offered = self._offered([row.id for row in rows])
        return tuple(
            Call(*row[:2], cast("Outcome", row[2]), *row[3:], offered.get(row.id, ()))
            for row in rows
        )

    def _offered(self, call_ids: Sequence[int]) -> dict[int, tuple[Offered, ...]]:
        found: dict[int, tuple[Offered, ...]] = {}
        rows = self._desk.connection.execute(
            select(CallOffers.call_id, CallOffers.offer, CallOffers.cents)
            .where(CallOffers.call_id.in_(call_ids))
            .order_by(CallOffers.id)
        )
        for call_id, offer, cents in rows:
            found[call_id] = (*found.get(call_id, ()), Offered(offer, cents))
        return found

    def due(self, order: OrderRow, written: date | None) -> date:
        """The day written on the order, else by the shop's rules.

        Killed on March 9, due after 3 days: March 12.
        """
        plan = CalendarBook(self._desk).plan()
        return written or due_on(self.rules(), order.day, hang_days(plan, order.species))

    def to_ring(self, today: date, agree: Collection[int] = ()) -> tuple[ToRing, ...]:
        """Owners to be rung, the most pressing first: open orders about to be due by the rules.

        An order whose animal the inspection stopped, or of which something was lost, is told
        whatever its day, the loss in any state until somebody was spoken to. `agree` are orders
        whose owners must agree on something, as the planner says.
        """
        run = self._desk.connection.execute
        news = NewsBook(self._desk).to_tell()
        rows = self._rows(OrderFilter(states=("open",), closed=False))
        missing = {*news, *agree} - {one.id for one in rows}
        if missing:
            rows = (*rows, *self._rows(OrderFilter(closed=False, only=tuple(missing))))
        ids, lots = [one.id for one in rows], {one.lot_id for one in rows}
        dues = run(select(Orders.id, Orders.due).where(Orders.id.in_(ids)))
        written = {row[0]: row[1] for row in dues}
        stopped = set(
            run(
                select(Animals.lot_id).where(Animals.lot_id.in_(lots), Animals.state.in_(STOPPED))
            ).scalars()
        )
        ended = set(run(ended_orders().where(Orders.id.in_(ids))).scalars())
        calls: dict[int, list[Call]] = {}
        for call in self._calls(ids):
            calls.setdefault(call.order_id, []).append(call)
        rules, plan = self.rules(), CalendarBook(self._desk).plan()
        found: list[ToRing] = []
        for row in rows:
            due = written[row.id] or due_on(rules, row.day, hang_days(plan, row.species))
            lost = news.get(row.id, ())
            reminded = due - timedelta(days=rules.remind_days) <= today
            about = _about(
                row,
                due=reminded and row.id not in ended,
                stopped=row.lot_id in stopped,
                lost=bool(lost),
                agree=row.id in agree,
            )
            made = tuple(calls.get(row.id, ()))
            if about:
                silent = silent_calls(made)
                end = in_the_end(rules, due, today, silent)
                last = made[-1] if made else None
                found.append(ToRing(row, due, about, last, len(made), lost, silent, end))
        return tuple(sorted(found, key=lambda one: (not one.news, one.due, one.order.number)))

    def places_free(self, today: date) -> tuple[PlaceFree, ...]:
        """Who waits and has a place now, within two weeks of the day he asked for.

        A shop without a calendar has no full days, and so tells nobody.
        """
        calendar = CalendarBook(self._desk)
        if not calendar.plan().week:
            return ()
        rows = self._desk.connection.execute(
            select(WaitingRows.id, Customers.phone)
            .join(Customers, Customers.id == WaitingRows.customer_id)
            .where(WaitingRows.state == "waiting")
        )
        phones = {row[0]: row[1] for row in rows}
        waits = [one for one in WaitingBook(self._desk).list() if one.id in phones]
        if not waits:
            return ()
        last = max(max(one.from_day for one in waits), today) + SOON
        filled = calendar.filled(today, last)
        found: list[PlaceFree] = []
        for one in waits:
            start = max(one.from_day, today)
            days = (start + timedelta(days=n) for n in range(SOON.days + 1))
            day = next((d for d in days if not why_full(filled, _asked(one, d))), None)
            if day is not None:
                found.append(PlaceFree(one, phones[one.id], day))
        return tuple(found)

    def _rows(self, chosen: OrderFilter) -> tuple[OrderRow, ...]:
        return order_rows(
            self._desk.connection, chosen, sort="day", descending=False, limit=MOST, offset=0
        )


def _asked(waiting: Waiting, day: date) -> Booking:
    return Booking(day, waiting.species, waiting.head)


def _about(
    row: OrderRow, *, due: bool, stopped: bool, lost: bool, agree: bool
) -> tuple[About, ...]:
    about: list[About] = ["loss"] if lost else []
    if agree:
        about.append("agree")
    if row.state != "open":
        return tuple(about)
    if stopped:
        about.append("inspection")
    if due:
        about.append("not_settled" if row.lines else "no_cut_sheet")
    return tuple(about)
