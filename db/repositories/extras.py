"""What is also on orders' next bills, and what of it stands on bills already."""

import json
from datetime import date
from fractions import Fraction

from sqlalchemy import bindparam, func, select
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.bills import BillBook
from db.tables.bills import BillLines, Bills
from db.tables.extras import OrderExtras, TakenExtras
from db.tables.orders import Orders
from db.tables.papers import Changes
from db.tables.people import Persons
from shared.billing.extras import BilledExtra, Extras, SaidExtras
from shared.billing.lot import Asked, Credit
from shared.shop.problems import StaleEdit

_LATER = aliased(OrderExtras)
_OF_LOT = (  # read for every lot that F7 and F12 look at
    select(
        OrderExtras.order_id,
        OrderExtras.said,
        OrderExtras.id,
        Persons.name,
        OrderExtras.at,
    )
    .join(Orders, Orders.id == OrderExtras.order_id)
    .join(Persons, Persons.id == OrderExtras.person_id)
    .where(
        Orders.lot_id == bindparam("lot"),
        OrderExtras.id
        == select(func.max(_LATER.id))
        .where(_LATER.order_id == OrderExtras.order_id)
        .scalar_subquery(),
    )
)
_LAST = select(func.max(Changes.at, type_=Changes.at.type)).where(
    Changes.subject == "order",
    Changes.subject_id == bindparam("order"),
    Changes.what == bindparam("what"),
)


class ExtrasBook:
    """`work.extras`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def of_lot(self, lot_id: int) -> dict[int, SaidExtras]:
        """The extras of a lot's orders as they stand, by order; one query."""
        rows = self._desk.connection.execute(_OF_LOT, {"lot": lot_id})
        return {row[0]: SaidExtras(_extras_of(row[1]), *row[2:]) for row in rows}

    def of(self, order_id: int) -> SaidExtras:
        """The extras of one order as they stand."""
        row = self._desk.connection.execute(
            select(OrderExtras.said, OrderExtras.id, Persons.name, OrderExtras.at)
            .join(Persons, Persons.id == OrderExtras.person_id)
            .where(OrderExtras.order_id == order_id)
            .order_by(OrderExtras.id.desc())
            .limit(1)
        ).one_or_none()
        return SaidExtras() if row is None else SaidExtras(_extras_of(row[0]), *row[1:])

    def say(
        self, order_id: int, extras: Extras, after: int, bill_id: int | None = None
    ) -> SaidExtras | StaleEdit:
        """These are on the order's next bill; none at all takes them off it again.

        `after` is the id of what was read before: where somebody said otherwise meanwhile,
        nothing is written. `bill_id` is the bill that took what is no longer among them.
        """
        desk = self._desk
        desk.hold("bill")
        stands = self.of(order_id)
        if stands.id != after:
            return StaleEdit("order_extras", order_id, after, stands.id, stands.by, stands.at)
        if stands.extras == extras:
            return stands
        values = {"order_id": order_id, "said": _text(extras), "at": desk.now, **desk.stamp}
        row = desk.insert(OrderExtras, values)
        if bill_id is not None:
            desk.add_rows(TakenExtras, [{"extras_id": row, "bill_id": bill_id}])
        desk.record("order", order_id, "extras", "; ".join(one.reason for one in extras.credits))
        return self.of(order_id)

    def taken_by(self, bill_id: int) -> dict[int, Extras]:
        """What a bill took of the extras of its lot's orders, by order; empty where not known."""
        before = aliased(OrderExtras)
        last = (
            select(func.max(before.id))
            .where(before.order_id == OrderExtras.order_id, before.id < OrderExtras.id)
            .correlate(OrderExtras)
            .scalar_subquery()
        )
        former = aliased(OrderExtras)
        rows = self._desk.connection.execute(
            select(OrderExtras.order_id, former.said, OrderExtras.said)
            .join(TakenExtras, TakenExtras.extras_id == OrderExtras.id)
            .join(former, former.id == last)
            .where(TakenExtras.bill_id == bill_id)
        )
        return {row[0]: _less(_extras_of(row[1]), _extras_of(row[2])) for row in rows}

    def billed(self, lot_id: int) -> tuple[BilledExtra, ...]:
        """Lines of a lot's bills that aren't credited whole, each with its bill and day."""
        rows = self._desk.connection.execute(
            select(
                Bills.order_id,
                BillLines.key,
                BillLines.code,
                BillLines.quantity,
                Bills.number,
                Bills.issued_at,
                Bills.id,
            )
            .join(Bills, Bills.id == BillLines.bill_id)
            .where(Bills.lot_id == lot_id)
            .order_by(BillLines.bill_id, BillLines.position)
        ).all()
        standing = BillBook(self._desk).standing_bills(lot_id)
        return tuple(
            BilledExtra(order, key, code, much or Fraction(0), number, at.astimezone().date())
            for order, key, code, much, number, at, bill in rows
            if bill in standing
        )

    def ready_on(self, order_id: int) -> date | None:
        """The day the order was last made ready; None where it never was."""
        return self._day_of(order_id, "ready")

    def fetched_on(self, order_id: int) -> date | None:
        """The day it was last handed over; None where it never was."""
        return self._day_of(order_id, "handed_over")

    def _day_of(self, order_id: int, what: str) -> date | None:
        at = self._desk.connection.execute(_LAST, {"order": order_id, "what": what}).scalar()
        return None if at is None else at.astimezone().date()


def _text(extras: Extras) -> str:
    return json.dumps(
        {
            "asked": [[one.code, str(one.quantity)] for one in extras.asked],
            "credits": [[one.reason, one.cents] for one in extras.credits],
        },
        ensure_ascii=False,
    )


def _extras_of(text: str) -> Extras:
    kept = json.loads(text)
    return Extras(
        tuple(Asked(str(code), Fraction(much)) for code, much in kept["asked"]),
        tuple(Credit(str(reason), int(cents)) for reason, cents in kept["credits"]),
    )


def _less(before: Extras, after: Extras) -> Extras:
    """What was among the extras and no longer is."""
    left = {one.code for one in after.asked}
    asked = tuple(one for one in before.asked if one.code not in left)
    return Extras(asked, tuple(one for one in before.credits if one not in after.credits))
