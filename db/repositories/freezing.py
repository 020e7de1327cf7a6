"""Since when packages are in a freezer, which orders are fetched fresh, and the shop's hours."""

from collections.abc import Collection, Mapping
from datetime import datetime
from typing import cast

from sqlalchemy import Select, func, select
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.tables.boxes import FreezerRules as Rules
from db.tables.boxes import Freezings, FreshPickUps
from db.tables.counted import Counted, CountedFreezings
from db.tables.packages import Packages
from db.tables.people import Persons
from shared.shop.freezing import MOST_HOURS, FreezeFrom, FreezerRules, InFreezer
from shared.shop.problems import Refused, StaleEdit


class FreezingBook:
    """`work.freezing`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def rules(self) -> FreezerRules:
        """How long a package must lie in a freezer, and counted from when."""
        row = self._desk.connection.execute(
            select(Rules.hours, Rules.counted_from, Rules.version)
        ).one()
        return FreezerRules(row[0], cast("FreezeFrom", row[1]), row[2])

    def save_rules(self, rules: FreezerRules) -> FreezerRules | StaleEdit | Refused:
        """Write the rules; the version read must still hold. Refused: "hours"."""
        if not 0 <= rules.hours <= MOST_HOURS:
            return Refused("hours")
        values: dict[str, object] = {"hours": rules.hours, "counted_from": rules.counted_from}
        stale = self._desk.edit(Rules, "freezer_rules", 1, rules.version, values)
        if stale is not None:
            return stale
        self._desk.record(
            "freezer_rules", 1, "saved", hours=rules.hours, counted_from=rules.counted_from
        )
        return self.rules()

    def put(self, package_ids: Collection[int], since: datetime | None) -> Refused | None:
        """Packages are in a freezer since then, or in none. Refused: "later" than now."""
        desk = self._desk
        if since is not None and since > desk.now:
            return Refused("later")
        told = {"since": since, "at": desk.now, **desk.stamp}
        desk.add_rows(Freezings, [{"package_id": one, **told} for one in package_ids])
        return None

    def put_counts(self, counted_ids: Collection[int], since: datetime | None) -> Refused | None:
        """What was wrapped by count is in a freezer since then, or in none. Refused: "later"."""
        desk = self._desk
        if since is not None and since > desk.now:
            return Refused("later")
        told = {"since": since, "at": desk.now, **desk.stamp}
        desk.add_rows(CountedFreezings, [{"counted_id": one, **told} for one in counted_ids])
        return None

    def of_order(self, order_id: int) -> Mapping[int, InFreezer]:
        """What was last said of each package of an order, by whom and when; one query."""
        later = aliased(Freezings)
        last = select(func.max(later.id)).where(later.package_id == Freezings.package_id)
        return self._told(
            select(Freezings.package_id, Freezings.since, Persons.name, Freezings.at)
            .join(Packages, Packages.id == Freezings.package_id)
            .join(Persons, Persons.id == Freezings.person_id)
            .where(Packages.order_id == order_id, Freezings.id == last.scalar_subquery())
        )

    def counts_of_order(self, order_id: int) -> Mapping[int, InFreezer]:
        """What was last said of each count of an order, by whom and when; one query."""
        later, told = aliased(CountedFreezings), CountedFreezings
        last = select(func.max(later.id)).where(later.counted_id == told.counted_id)
        return self._told(
            select(told.counted_id, told.since, Persons.name, told.at)
            .join(Counted, Counted.id == told.counted_id)
            .join(Persons, Persons.id == told.person_id)
            .where(Counted.order_id == order_id, told.id == last.scalar_subquery())
        )

    def _told(self, asked: Select[int, datetime | None, str, datetime]) -> Mapping[int, InFreezer]:
        rows = self._desk.connection.execute(asked)
        return {row[0]: InFreezer(row[1], row[2], row[3]) for row in rows}

    def agree(self, order_id: int, *, fresh: bool) -> None:
        """It was agreed that the order is fetched fresh, or frozen after all."""
        desk = self._desk
        agreed = "fresh" if fresh else "frozen"
        values = {"order_id": order_id, "agreed": agreed, "at": desk.now, **desk.stamp}
        desk.insert(FreshPickUps, values)
        desk.record("order", order_id, f"fetched_{agreed}")

    def agreed_fresh(self, order_id: int) -> bool:
        """Whether an order is fetched fresh, as was last agreed."""
        found = self._desk.connection.execute(
            select(FreshPickUps.agreed)
            .where(FreshPickUps.order_id == order_id)
            .order_by(FreshPickUps.id.desc())
            .limit(1)
        ).scalar_one_or_none()
        return found == "fresh"
