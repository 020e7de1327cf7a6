"""Packages wrapped by count: kept as counted, made void with a reason, handed over whole."""

import json
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import ColumnElement, Row, func, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.led_orders import holds_line
from db.repositories.open_order import not_open
from db.repositories.order_lists import JOINED, OWN
from db.tables.counted import Counted, HandedCounts
from db.tables.lots import Lots, Shares
from db.tables.orders import Orders
from db.tables.people import Persons, Shop, Stations
from shared.shop.counted import MOST_COUNTED, CountedPackages, NewCount, may_be_counted
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime
    from shared.shop.counted import Wrapped

VOIDED_BY = aliased(Persons)


class CountedBook:
    """`work.counted`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, new: NewCount) -> CountedPackages | Refused:
        """Keep a count as made.

        Refused: "none", "too_many" above MOST_COUNTED, "not_on_order", "not_open" where the order
        is not at the block or being wrapped, and "not_by_count" where the shop weighs its packages
        or the lot is inspected.
        """
        if not 1 <= new.packages <= MOST_COUNTED:
            return Refused("too_many" if new.packages > 1 else "none", {"most": str(MOST_COUNTED)})
        shut = not_open(self._desk, new.order_id, new.line)
        if shut is not None:
            return shut
        run = self._desk.connection.execute
        if not holds_line(self._desk, new.order_id, new.line):
            return Refused("not_on_order", {"line": str(new.line)})
        shop = run(select(Shop.wrapped)).scalar_one()
        regime, owner = run(
            select(Lots.regime, func.coalesce(JOINED.name, OWN.name, ""))
            .select_from(Orders)
            .join(Lots, Lots.id == Orders.lot_id)
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(Orders.id == new.order_id)
        ).one()
        if not may_be_counted(cast("Wrapped", shop), cast("Regime", regime)):
            return Refused("not_by_count", {"regime": regime})
        return self._there(self._desk.insert(Counted, self._values(new, owner)))

    def _values(self, new: NewCount, owner: str) -> dict[str, object]:
        return {
            "order_id": new.order_id,
            "line": new.line,
            "cut": new.cut,
            "product": new.product,
            "owner": owner,
            "packages": new.packages,
            "finishes": json.dumps(list(new.finishes)),
            "made_at": self._desk.now,
            "void": "",
            "voided_at": None,
            "voided_by": None,
            **self._desk.stamp,
        }

    def void(self, counted_id: int, reason: str) -> CountedPackages | Refused:
        """The count is none after all (miscounted). Refused: "reason_missing", "already_void"."""
        if not reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        desk.must_write()
        gone = select(HandedCounts.counted_id).where(HandedCounts.counted_id == counted_id)
        if desk.connection.execute(gone).first() is not None:
            return Refused("handed_over")
        changed = desk.connection.execute(
            update(Counted)
            .where(Counted.id == counted_id, Counted.void == "")
            .values(void=reason.strip(), voided_at=desk.now, voided_by=desk.person.id)
        ).rowcount
        if changed != 1:
            return Refused("already_void")
        desk.record("counted", counted_id, "void", reason)
        return self._there(counted_id)

    def of_order(self, order_id: int, *, void: bool = True) -> tuple[CountedPackages, ...]:
        """The counts of an order as they were made; `void=False` leaves void ones out."""
        where = Counted.order_id == order_id
        return self._found(where if void else where & (Counted.void == ""))

    def of_lot(self, lot_id: int, *, void: bool = True) -> tuple[CountedPackages, ...]:
        """The counts of all orders of a lot."""
        where = Orders.lot_id == lot_id
        return self._found(where if void else where & (Counted.void == ""))

    def left(self, order_id: int) -> tuple[CountedPackages, ...]:
        """The counts of an order that are still here; void ones never were."""
        gone = select(HandedCounts.counted_id)
        return self._found(
            (Counted.order_id == order_id) & (Counted.void == "") & Counted.id.not_in(gone)
        )

    def _there(self, counted_id: int) -> CountedPackages:
        return self._found(Counted.id == counted_id)[0]

    def _found(self, where: ColumnElement[bool]) -> tuple[CountedPackages, ...]:
        rows = self._desk.connection.execute(
            select(
                *Counted.__table__.columns,
                Orders.lot_id,
                Orders.share,
                Persons.name.label("person"),
                Stations.name.label("station"),
                VOIDED_BY.name.label("voider"),
            )
            .join(Orders, Orders.id == Counted.order_id)
            .join(Persons, Persons.id == Counted.person_id)
            .join(Stations, Stations.id == Counted.station_id)
            .outerjoin(VOIDED_BY, VOIDED_BY.id == Counted.voided_by)
            .where(where)
            .order_by(Counted.id)
        )
        return tuple(_counted(row) for row in rows)


def _counted(row: Row[*tuple[Any, ...]]) -> CountedPackages:
    return CountedPackages(
        id=row.id,
        lot_id=row.lot_id,
        order_id=row.order_id,
        share=row.share,
        line=row.line,
        cut=row.cut,
        product=row.product,
        owner=row.owner,
        packages=row.packages,
        finishes=tuple(json.loads(row.finishes)),
        made_at=row.made_at,
        person=row.person,
        station=row.station,
        void=row.void,
        voided_at=row.voided_at,
        voided_by=row.voider or "",
    )
