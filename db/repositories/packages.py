"""Packages: weighed, labelled with a number that is never used again, made void with a reason."""

import json
from collections.abc import Collection
from typing import Any

from sqlalchemy import ColumnElement, Row, func, select, update
from sqlalchemy.orm import aliased

from db.columns import Nanograms
from db.desk import Desk
from db.repositories.led_orders import holds_line
from db.repositories.open_order import not_open
from db.repositories.order_lists import JOINED, OWN
from db.tables.lots import Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from db.tables.people import Persons, Stations
from db.weights import known_weight, weight_of, weight_values
from shared.shop.packages import MOST_EQUAL, CountRow, NewPackage, PackageMade
from shared.shop.problems import Refused

# Who made a package void.
VOIDED_BY = aliased(Persons)
COLUMNS = (
    *(column for column in Packages.__table__.columns if column.name != "net_ng"),
    Orders.lot_id,
    Orders.share,
    Persons.name.label("person"),
    Stations.name.label("station"),
    VOIDED_BY.name.label("voider"),
)


class PackageBook:
    """`work.packages`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, new: NewPackage) -> PackageMade | Refused:
        """Keep a package as weighed and give it the next label number.

        A package on no line of the order (line 0) needs a reason.
        """
        made = self.add_equal(new, 1)
        return made if isinstance(made, Refused) else made[0]

    def add_equal(self, new: NewPackage, count: int) -> tuple[PackageMade, ...] | Refused:
        """Keep so many packages of one weight in one stroke, each with a number of its own.

        Refused as `add` refuses one; "too_many" above MOST_EQUAL, "none" below 1, "not_open" where
        the order is not at the block or being wrapped, nor the line out of a batch.
        """
        if not 1 <= count <= MOST_EQUAL:
            return Refused("too_many" if count > 1 else "none", {"most": str(MOST_EQUAL)})
        if new.net.count <= 0:
            return Refused("not_positive")
        if new.line == 0 and not new.reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        shut = not_open(desk, new.order_id, new.line)
        if shut is not None:
            return shut
        if new.line != 0 and not self._on_order(new):
            return Refused("not_on_order", {"line": str(new.line)})
        numbers = desk.next_numbers("label", count)
        values: dict[str, object] = {
            "order_id": new.order_id,
            "line": new.line,
            "cut": new.cut,
            "product": new.product,
            "owner": self._owner(new.order_id),
            **weight_values("net", new.net),
            **weight_values("tare", new.tare),
            "pieces": new.pieces,
            "finishes": json.dumps(list(new.finishes)),
            "reason": new.reason.strip(),
            "made_at": desk.now,
            "void": "",
            "voided_at": None,
            "voided_by": None,
            "labelled_at": None,
            **desk.stamp,
        }
        desk.add_rows(
            Packages,
            [{"label_number": number, "stroke": numbers[0], **values} for number in numbers],
        )
        return self._packages(Packages.label_number.between(numbers[0], numbers[-1]))

    def _on_order(self, new: NewPackage) -> bool:
        return holds_line(self._desk, new.order_id, new.line)

    def _owner(self, order_id: int) -> str:
        return self._desk.connection.execute(
            select(func.coalesce(JOINED.name, OWN.name, ""))
            .select_from(Orders)
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .outerjoin(OWN, OWN.id == Shares.customer_id)
            .outerjoin(JOINED, JOINED.id == OWN.joined_into)
            .where(Orders.id == order_id)
        ).scalar_one()

    def void(self, package_id: int, reason: str) -> PackageMade | Refused:
        """The package is none after all (wrong weight, torn); its number stays taken."""
        if not reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        desk.must_write()
        changed = desk.connection.execute(
            update(Packages)
            .where(Packages.id == package_id, Packages.void == "")
            .values(void=reason.strip(), voided_at=desk.now, voided_by=desk.person.id)
        ).rowcount
        if changed != 1:
            return Refused("already_void")
        desk.record("package", package_id, "void", reason)
        return self._there(package_id)

    def void_equal(
        self, package_ids: Collection[int], reason: str
    ) -> tuple[PackageMade, ...] | Refused:
        """Packages of one stroke made void together; those void already stay as they are."""
        if not reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        desk.must_write()
        still = Packages.id.in_(package_ids) & (Packages.void == "")
        ids = desk.connection.execute(select(Packages.id).where(still)).scalars().all()
        if not ids:
            return Refused("already_void")
        desk.connection.execute(
            update(Packages)
            .where(Packages.id.in_(ids), Packages.void == "")
            .values(void=reason.strip(), voided_at=desk.now, voided_by=desk.person.id)
        )
        desk.record("package", min(ids), "void_together", reason, count=len(ids), last=max(ids))
        return self._packages(Packages.id.in_(ids))

    def labelled(self, package_ids: Collection[int]) -> int:
        """Their labels were handed to the printer; the first time stays. How many were new."""
        desk = self._desk
        desk.must_write()
        return desk.connection.execute(
            update(Packages)
            .where(Packages.id.in_(package_ids), Packages.labelled_at.is_(None))
            .values(labelled_at=desk.now)
        ).rowcount

    def get(self, package_id: int) -> PackageMade | None:
        """The package, or None."""
        found = self._packages(Packages.id == package_id)
        return found[0] if found else None

    def _there(self, package_id: int) -> PackageMade:
        found = self.get(package_id)
        assert found is not None
        return found

    def by_label(self, label_number: int) -> PackageMade | None:
        """The package with that label number, or None."""
        found = self._packages(Packages.label_number == label_number)
        return found[0] if found else None

    def of_order(self, order_id: int, *, void: bool = True) -> tuple[PackageMade, ...]:
        """The packages of an order as they were made; `void=False` leaves void ones out."""
        where = Packages.order_id == order_id
        return self._packages(where if void else where & (Packages.void == ""))

    def of_lot(self, lot_id: int, *, void: bool = True) -> tuple[PackageMade, ...]:
        """The packages of all orders of a lot."""
        where = Orders.lot_id == lot_id
        return self._packages(where if void else where & (Packages.void == ""))

    def counts(self, order_id: int) -> tuple[CountRow, ...]:
        """What was made of each line and product, void ones left out."""
        rows = self._desk.connection.execute(
            select(
                Packages.line,
                Packages.cut,
                Packages.product,
                func.count(),
                func.sum(Packages.pieces, type_=Nanograms()),
                func.sum(Packages.net_ng, type_=Nanograms()),
            )
            .where(Packages.order_id == order_id, Packages.void == "")
            .group_by(Packages.line, Packages.cut, Packages.product)
            .order_by(Packages.line, Packages.cut, Packages.product)
        )
        return tuple(CountRow(*row) for row in rows)

    def _packages(self, where: ColumnElement[bool]) -> tuple[PackageMade, ...]:
        rows = self._desk.connection.execute(
            select(*COLUMNS)
            .join(Orders, Orders.id == Packages.order_id)
            .join(Persons, Persons.id == Packages.person_id)
            .join(Stations, Stations.id == Packages.station_id)
            .outerjoin(VOIDED_BY, VOIDED_BY.id == Packages.voided_by)
            .where(where)
            .order_by(Packages.id)
        )
        return tuple(_package(row) for row in rows)


def _package(row: Row[*tuple[Any, ...]]) -> PackageMade:
    return PackageMade(
        id=row.id,
        label_number=row.label_number,
        stroke=row.stroke,
        lot_id=row.lot_id,
        order_id=row.order_id,
        share=row.share,
        line=row.line,
        cut=row.cut,
        product=row.product,
        owner=row.owner,
        net=known_weight(row.net_count, row.net_unit, row.net_exponent),
        tare=weight_of(row.tare_count, row.tare_unit, row.tare_exponent),
        pieces=row.pieces,
        finishes=tuple(json.loads(row.finishes)),
        reason=row.reason,
        made_at=row.made_at,
        person=row.person,
        station=row.station,
        void=row.void,
        voided_at=row.voided_at,
        voided_by=row.voider or "",
        labelled_at=row.labelled_at,
    )
