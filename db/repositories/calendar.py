"""The kill calendar: the shop's week, other days, what is booked, and overruled bookings."""

import json
from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any

from sqlalchemy import ColumnElement, delete, func, or_, select, true

from db.desk import Desk
from db.repositories.block_minutes import cut_minutes
from db.repositories.calendar_days import day_lots, last_sheets
from db.repositories.ended_orders import not_come
from db.repositories.usual import UsualBook
from db.tables.calendar import CalendarPlans, OtherDays, Overrules
from db.tables.lots import Lots
from shared.shop.block_minutes import usual_minutes
from shared.shop.calendar import (
    USUAL_HANG,
    Booking,
    Filled,
    Full,
    OtherDay,
    Plan,
    hang_days,
)
from shared.shop.day_order import DayLot
from shared.shop.problems import Refused
from shared.shop.usual import shop_catalogue


class CalendarBook:
    """`work.calendar`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def plan(self) -> Plan:
        """The shop's week and rooms; an empty plan when none was ever entered."""
        found = self._desk.connection.execute(
            select(CalendarPlans.plan).order_by(CalendarPlans.id.desc()).limit(1)
        ).scalar_one_or_none()
        return Plan() if found is None else _plan_of(found)

    def save_plan(self, plan: Plan) -> None:
        """Keep a new week; the former ones stay to be read."""
        desk = self._desk
        row = desk.insert(CalendarPlans, {"plan": _plan_text(plan), "at": desk.now, **desk.stamp})
        desk.record("calendar", row, "plan_saved")

    def set_other(self, other: OtherDay) -> None:
        """Say that a date is closed or has other places, in the place of what was said before."""
        desk = self._desk
        desk.must_write()
        desk.connection.execute(delete(OtherDays).where(OtherDays.day == other.day))
        row = desk.insert(
            OtherDays,
            {
                "day": other.day,
                "closed": other.closed,
                "note": other.note,
                "places": json.dumps(dict(other.places), sort_keys=True),
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("other_day", row, "set", day=other.day.isoformat(), closed=other.closed)

    def closed_days(self) -> frozenset[date]:
        """The dates on which the shop is closed, all that were ever said."""
        found = select(OtherDays.day).where(OtherDays.closed == true())
        return frozenset(self._desk.connection.execute(found).scalars())

    def as_weekday(self, day: date) -> None:
        """A date is as its weekday again."""
        desk = self._desk
        desk.must_write()
        desk.connection.execute(delete(OtherDays).where(OtherDays.day == day))
        desk.record("other_day", 0, "dropped", day=day.isoformat())

    def filled(
        self, start: date, end: date, *, without: int = 0, count_lines: bool = True
    ) -> Filled:
        """What stands in the days from start to end (within), in three queries.

        Where the shop enters minutes by class of cut some more tell what the orders' lines take;
        without `count_lines` they are left out, and the answer isn't `counted`.

        What was killed before and still hangs is in it; `without` leaves a lot out (to move it).
        In a unit that writes no other station books or moves until it ends; ask before writing.
        """
        if not self._desk.reading:
            self._desk.hold("lot")
        plan = self.plan()
        run = self._desk.connection.execute
        others = {
            row.day: OtherDay(row.day, row.closed, row.note, json.loads(row.places))
            for row in run(
                select(OtherDays.day, OtherDays.closed, OtherDays.note, OtherDays.places).where(
                    OtherDays.day.between(start, end)
                )
            )
        }
        longest = max([*USUAL_HANG.values(), *plan.hang.values()])
        which = (Lots.day.between(start - timedelta(longest), end), Lots.id != without)
        rows = run(  # an animal that didn't come has left its place
            select(Lots.day, Lots.species, func.sum(Lots.head - not_come()).label("head"))
            .where(*which, Lots.cancelled == "")
            .group_by(Lots.day, Lots.species)
        ).all()
        count = bool(count_lines and plan.minutes_a_cut)
        usual = self._usual_minutes(plan) if count else {}
        cut: Mapping[tuple[date, str], int] = {}
        if count:
            cut = self._cut_minutes(plan, usual, which, start)
        bookings = tuple(
            Booking(row.day, row.species, int(row.head), cut.get((row.day, row.species)))
            for row in rows
        )
        return Filled(plan, others, bookings, usual, counted=count or not plan.minutes_a_cut)

    def needed_by(self, lot_id: int) -> int | None:
        """Block minutes that the lines of a lot's orders take; None where none are entered."""
        plan = self.plan()
        if not plan.minutes_a_cut:
            return None
        usual = self._usual_minutes(plan)
        found = cut_minutes(self._desk.connection, plan.minutes_a_cut, usual, (Lots.id == lot_id,))
        return sum(found.values())

    def _cut_minutes(
        self,
        plan: Plan,
        usual: Mapping[str, int],
        which: Sequence[ColumnElement[bool]],
        start: date,
    ) -> Mapping[tuple[date, str], int]:
        """What the lines take of lots that come to the block on `start` or later."""
        to_the_block = or_(
            *(
                (Lots.species == kind) & (Lots.day >= start - timedelta(hang_days(plan, kind)))
                for kind in plan.minutes_a_cut
            )
        )
        entered = plan.minutes_a_cut
        return cut_minutes(self._desk.connection, entered, usual, (*which, to_the_block))

    def _usual_minutes(self, plan: Plan) -> dict[str, int]:
        """What the house's usual takes on a side, by species the shop entered minutes for."""
        found: dict[str, int] = {}
        for species, entered in plan.minutes_a_cut.items():
            known = shop_catalogue(species, UsualBook(self._desk).ways(species))
            found[species] = usual_minutes(entered, known.cuts, known.usual)
        return found

    def lots(self, start: date, end: date) -> tuple[DayLot, ...]:
        """The bookings from start to end (within), each day in its turn; one query."""
        return day_lots(self._desk.connection, start, end)

    def sheets(self, lot_ids: Sequence[int]) -> dict[int, bytes]:
        """The last released block sheet of each lot that has one, as kept; one query."""
        return last_sheets(self._desk.connection, lot_ids)

    def overrule(self, lot_id: int, full: Sequence[Full], reason: str) -> Refused | None:
        """Keep why a booking was taken though its day was full."""
        if not reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        codes = " ".join(one.code for one in full)
        desk.insert(
            Overrules,
            {
                "lot_id": lot_id,
                "codes": codes,
                "reason": reason.strip(),
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("lot", lot_id, "overruled", reason.strip(), full=codes)
        return None


def _plan_text(plan: Plan) -> str:
    return json.dumps(
        {
            "week": {str(day): dict(places) for day, places in plan.week.items()},
            "hooks": plan.hooks,
            "block_minutes": plan.block_minutes,
            "hang": dict(plan.hang),
            "minutes_a_side": dict(plan.minutes_a_side),
            "minutes_a_cut": {kind: dict(one) for kind, one in plan.minutes_a_cut.items()},
        },
        sort_keys=True,
    )


def _plan_of(text: str) -> Plan:
    kept: dict[str, Any] = json.loads(text)
    return Plan(
        week={int(day): places for day, places in kept["week"].items()},
        hooks=kept["hooks"],
        block_minutes=kept["block_minutes"],
        hang=kept["hang"],
        minutes_a_side=kept["minutes_a_side"],
        minutes_a_cut=kept.get("minutes_a_cut", {}),
    )
