"""Where packages lie, and what left the shop with whom; a package leaves once."""

from collections.abc import Collection, Mapping

from sqlalchemy import func, select
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.desk import Desk
from db.repositories.counted import CountedBook
from db.tables.boxes import HandedPackages, HandOvers, PackagePlaces
from db.tables.counted import HandedCounts
from db.tables.packages import Packages
from db.tables.people import Persons
from shared.shop.hand_overs import Boxed, HandOver
from shared.shop.problems import Refused


class HandOverBook:
    """`work.hand_overs`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def put(self, package_ids: Collection[int], box: str, place: str) -> None:
        """Packages lie in that box from now on, and it stands there."""
        desk = self._desk
        told = {"box": box.strip(), "place": place.strip(), "at": desk.now, **desk.stamp}
        desk.add_rows(PackagePlaces, [{"package_id": one, **told} for one in package_ids])

    def places(self, order_id: int) -> Mapping[int, Boxed]:
        """Where each boxed package of an order lies, the last word holding; one query."""
        later = aliased(PackagePlaces)
        last = select(func.max(later.id)).where(later.package_id == PackagePlaces.package_id)
        rows = self._desk.connection.execute(
            select(PackagePlaces.package_id, PackagePlaces.box, PackagePlaces.place)
            .join(Packages, Packages.id == PackagePlaces.package_id)
            .where(Packages.order_id == order_id, PackagePlaces.id == last.scalar_subquery())
        )
        return {row[0]: Boxed(row[1], row[2]) for row in rows}

    def left(self, order_id: int) -> frozenset[int]:
        """Packages of an order that are still here; void ones never were."""
        rows = self._desk.connection.execute(
            select(Packages.id)
            .outerjoin(HandedPackages, HandedPackages.package_id == Packages.id)
            .where(
                Packages.order_id == order_id,
                Packages.void == "",
                HandedPackages.package_id.is_(None),
            )
        )
        return frozenset(rows.scalars())

    def give(
        self,
        order_id: int,
        package_ids: Collection[int],
        fetched_by: str = "",
        reason: str = "",
        *,
        unfrozen: int = 0,
        counted_ids: Collection[int] = (),
    ) -> HandOver | Refused:
        """Those packages and counts leave. Refused: "nothing", "not_here" for one that isn't.

        So many of them aren't frozen; that is kept with the change.
        """
        wanted, counted = frozenset(package_ids), frozenset(counted_ids)
        if not (wanted or counted):
            return Refused("nothing")
        counts = {one.id: one.packages for one in CountedBook(self._desk).left(order_id)}
        if not (wanted <= self.left(order_id) and counted <= counts.keys()):
            return Refused("not_here")
        desk = self._desk
        new = desk.insert(
            HandOvers,
            {
                "order_id": order_id,
                "fetched_by": fetched_by.strip(),
                "reason": reason.strip(),
                "at": desk.now,
                **desk.stamp,
            },
        )
        rows: list[dict[str, object]] = [
            {"package_id": one, "hand_over_id": new} for one in sorted(wanted)
        ]
        desk.add_rows(HandedPackages, rows)
        gone: list[dict[str, object]] = [
            {"counted_id": one, "hand_over_id": new} for one in sorted(counted)
        ]
        desk.add_rows(HandedCounts, gone)
        whole = len(wanted) + sum(counts[one] for one in counted)
        told = {"count": whole, "unfrozen": unfrozen}
        desk.record("order", order_id, "packages_left", reason, **told)
        return next(one for one in self.of_order(order_id) if one.id == new)

    def of_order(self, order_id: int) -> tuple[HandOver, ...]:
        """Every pick-up of an order, first to last."""
        run = self._desk.connection.execute
        packages = self._gone(order_id, HandedPackages.hand_over_id, HandedPackages.package_id)
        counted = self._gone(order_id, HandedCounts.hand_over_id, HandedCounts.counted_id)
        rows = run(
            select(
                HandOvers.id,
                HandOvers.fetched_by,
                HandOvers.reason,
                HandOvers.at,
                Persons.name,
            )
            .join(Persons, Persons.id == HandOvers.person_id)
            .where(HandOvers.order_id == order_id)
            .order_by(HandOvers.id)
        )
        return tuple(
            HandOver(
                id=row[0],
                order_id=order_id,
                fetched_by=row[1],
                reason=row[2],
                packages=frozenset(packages.get(row[0], ())),
                at=row[3],
                person=row[4],
                counted=frozenset(counted.get(row[0], ())),
            )
            for row in rows
        )

    def _gone(
        self,
        order_id: int,
        hand_over: InstrumentedAttribute[int],
        what: InstrumentedAttribute[int],
    ) -> dict[int, set[int]]:
        found: dict[int, set[int]] = {}
        for left, one in self._desk.connection.execute(
            select(hand_over, what)
            .join(HandOvers, HandOvers.id == hand_over)
            .where(HandOvers.order_id == order_id)
        ):
            found.setdefault(left, set()).add(one)
        return found
