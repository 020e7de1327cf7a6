"""Calls: logged, listed by order, and who is still to be rung."""

from collections.abc import Sequence
from datetime import date, timedelta
from typing import cast

from sqlalchemy import select

from db.desk import Desk
from db.repositories.news import NewsBook
from db.repositories.order_lists import OrderFilter, order_rows
from db.tables.calls import CallRules as Rules
from db.tables.calls import Calls
from db.tables.lots import Animals
from db.tables.orders import Orders
from db.tables.people import Persons, Stations
from shared.shop.calls import About, Call, CallRules, Outcome, ToRing, WithoutAnswer
from shared.shop.lists import OrderRow
from shared.shop.problems import Refused, StaleEdit

STOPPED = ("held", "condemned", "refused")
MOST = 500
BEFORE = timedelta(days=3)


class CallBook:
    """`work.calls`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def rules(self) -> CallRules:
        """When cut sheets are due, and what happens without an answer."""
        row = self._desk.connection.execute(
            select(Rules.due_days, Rules.without_answer, Rules.version)
        ).one()
        return CallRules(row[0], cast("WithoutAnswer", row[1]), row[2])

    def save_rules(self, rules: CallRules) -> CallRules | StaleEdit | Refused:
        """Write the rules; the version read must still hold."""
        if not 0 <= rules.due_days <= 60:
            return Refused("days")
        values: dict[str, object] = {
            "due_days": rules.due_days,
            "without_answer": rules.without_answer,
        }
        stale = self._desk.edit(Rules, "call_rules", 1, rules.version, values)
        if stale is not None:
            return stale
        self._desk.record("call_rules", 1, "saved", days=rules.due_days)
        return self.rules()

    def log(self, order_id: int, outcome: Outcome, note: str = "") -> Call | Refused:
        """Keep a call; who made it, when and at which station comes from the unit."""
        known = self._desk.connection.execute(select(Orders.id).where(Orders.id == order_id))
        if known.first() is None:
            return Refused("no_such_order")
        values = {"order_id": order_id, "outcome": outcome, "note": note.strip()}
        new = self._desk.insert(Calls, {**values, "at": self._desk.now, **self._desk.stamp})
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
            )
            .join(Persons, Persons.id == Calls.person_id)
            .join(Stations, Stations.id == Calls.station_id)
            .where(Calls.order_id.in_(order_ids))
            .order_by(Calls.at, Calls.id)
        )
        return tuple(Call(*row[:2], cast("Outcome", row[2]), *row[3:]) for row in rows)

    def due(self, order: OrderRow, written: date | None) -> date:
        """The day written on the order, else so many days after the kill.

        Killed on March 9, due after 3 days: March 12.
        """
        return written or order.day + timedelta(days=self.rules().due_days)

    def to_ring(self, today: date) -> tuple[ToRing, ...]:
        """Owners to be rung, the most pressing first: open orders due in three days or before.

        An order whose animal the inspection stopped, or of which something was lost, is told
        whatever its day, the loss in any state until somebody was spoken to.
        """
        run = self._desk.connection.execute
        news = NewsBook(self._desk).to_tell()
        rows = self._rows(OrderFilter(states=("open",), closed=False))
        missing = set(news) - {one.id for one in rows}
        if missing:
            rows = (*rows, *self._rows(OrderFilter(closed=False, only=tuple(missing))))
        ids, lots = [one.id for one in rows], {one.lot_id for one in rows}
        written = {
            row[0]: row[1] for row in run(select(Orders.id, Orders.due).where(Orders.id.in_(ids)))
        }
        stopped = set(
            run(
                select(Animals.lot_id).where(Animals.lot_id.in_(lots), Animals.state.in_(STOPPED))
            ).scalars()
        )
        calls: dict[int, list[Call]] = {}
        for call in self._calls(ids):
            calls.setdefault(call.order_id, []).append(call)
        days = timedelta(days=self.rules().due_days)
        found: list[ToRing] = []
        for row in rows:
            due = written[row.id] or row.day + days
            lost = news.get(row.id, ())
            about = _about(row, due, today, stopped=row.lot_id in stopped, lost=bool(lost))
            made = calls.get(row.id, [])
            if about:
                found.append(ToRing(row, due, about, made[-1] if made else None, len(made), lost))
        return tuple(sorted(found, key=lambda one: (not one.news, one.due, one.order.number)))

    def _rows(self, chosen: OrderFilter) -> tuple[OrderRow, ...]:
        return order_rows(
            self._desk.connection, chosen, sort="day", descending=False, limit=MOST, offset=0
        )


def _about(
    row: OrderRow, due: date, today: date, *, stopped: bool, lost: bool
) -> tuple[About, ...]:
    about: list[About] = ["loss"] if lost else []
    if row.state != "open":
        return tuple(about)
    if stopped:
        about.append("inspection")
    if due - BEFORE <= today:
        about.append("not_settled" if row.lines else "no_cut_sheet")
    return tuple(about)
