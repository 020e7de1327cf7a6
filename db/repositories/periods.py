"""Closing the books through a day, for good: nothing slips into a closed period."""

from datetime import date

from sqlalchemy import select, update

from db.desk import Desk
from db.repositories.ledger_posting import closed_through, shop_day
from db.tables.ledger import ClosedPeriods
from db.tables.people import Counters, Persons
from shared.shop.ledger import ClosedPeriod
from shared.shop.problems import Refused


class PeriodBook:
    """`work.periods`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def close(self, through: date, note: str = "") -> ClosedPeriod | Refused:
        """Close the books through a day; no period opens again.

        A mistake found later is set right by a credit, a refund or a count dated today.
        Refused: "not_over" (only days that are over are closed), "closed_already".
        """
        desk = self._desk
        if through >= shop_day(desk):
            return Refused("not_over", {"day": through.isoformat()})
        self._wait_for_writers()
        last = closed_through(desk)
        if last is not None and through <= last:
            return Refused("closed_already", {"through": last.isoformat()})
        new = desk.insert(
            ClosedPeriods,
            {"through": through, "note": note.strip(), "at": desk.now, **desk.stamp},
        )
        desk.record("period", new, "closed", note.strip(), through=through.isoformat())
        return ClosedPeriod(through, note.strip(), desk.now, desk.person.name)

    def _wait_for_writers(self) -> None:
        """Hold the journal's counter, so that no other station is writing an entry meanwhile."""
        self._desk.must_write()
        self._desk.connection.execute(
            update(Counters).where(Counters.name == "entry").values(last=Counters.last)
        )

    def closed_through(self) -> date | None:
        """The last day that is closed, or None."""
        return closed_through(self._desk)

    def all(self) -> tuple[ClosedPeriod, ...]:
        """Every closing, first to last."""
        rows = self._desk.connection.execute(
            select(ClosedPeriods.through, ClosedPeriods.note, ClosedPeriods.at, Persons.name)
            .join(Persons, Persons.id == ClosedPeriods.person_id)
            .order_by(ClosedPeriods.through)
        )
        return tuple(ClosedPeriod(*row) for row in rows)
