"""Payments, deposits and refunds, and what an order still owes."""

from datetime import date
from typing import cast

from sqlalchemy import ColumnElement, case, func, select
from sqlalchemy.orm import InstrumentedAttribute

from db.columns import Cents
from db.desk import Desk
from db.problems import StoreBug
from db.repositories.ledger_posting import (
    About,
    must_be_taken,
    party_of,
    post,
    shop_day,
    standing,
)
from db.tables.bills import Bills, Payments
from db.tables.ledger import LedgerEntries
from db.tables.lots import Lots, Shares
from db.tables.orders import Orders
from db.tables.people import Persons, Stations
from shared.billing.posting import payment_postings
from shared.shop.money import Balance, Payment, PaymentKind, PaymentMeans
from shared.shop.problems import Refused


class PaymentBook:
    """`work.payments`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def take(
        self,
        order_id: int | None,
        kind: PaymentKind,
        means: PaymentMeans,
        cents: int,
        note: str = "",
        *,
        lot_id: int | None = None,
        from_before: bool = False,
        payer_id: int | None = None,
        day: date | None = None,
    ) -> Payment | Refused:
        """Keep a payment with the next receipt number; a refund is kept as what was given back.

        For what the producer pays for a lot, order_id is None and the lot is named. Its entry is
        written with it; what was taken `from_before` these books is an opening balance there.
        `payer_id` is the customer who pays, where it isn't the owner: each of several payers has
        a receipt of his own. `day` is the day it came where that isn't today.
        Refused: "not_positive", "reason_missing", "not_yet" (a day to come), "period_closed".
        """
        if cents <= 0:
            return Refused("not_positive")
        if kind in ("refund", "write_off") and not note.strip():
            return Refused("reason_missing")
        desk = self._desk
        on = day or shop_day(desk)
        wrong = must_be_taken(desk, on)
        if wrong is not None:
            return wrong
        lot, customer = payer(desk, order_id, lot_id)
        party = party_of(desk, lot, order_id, customer)
        before = standing(desk, party)
        number = desk.next_number("receipt")
        row = {"number": number, "kind": kind, "means": means, "cents": cents}
        whose = {"lot_id": lot, "order_id": order_id, "customer_id": payer_id or customer}
        kept = {"note": note.strip(), "at": desk.now, **desk.stamp}
        new = desk.insert(Payments, {**row, **whose, **kept})
        moved = payment_postings(kind, means, cents, before, from_before=from_before)
        about = About(number, payment_id=new, memo=note.strip())
        post(desk, "opening" if from_before else kind, moved, party, about, on)
        return self._payments(Payments.id == new)[0]

    def move(
        self, order_id: int, to_order_id: int, cents: int, notes: tuple[str, str]
    ) -> tuple[Payment, Payment] | Refused:
        """Move what is held on an order to another: off the one, a deposit on the other.

        Two receipts and two entries of today, each with its note, that cancel out on "moved". What
        the other order owes uses it at once. Refused: "same_order", "order_closed",
        "not_positive", "more_than_owed" (with what is held), "reason_missing", "period_closed".
        """
        desk = self._desk
        if order_id == to_order_id:
            return Refused("same_order")
        shut = select(Orders.closed_at, Lots.cancelled).join(Lots, Lots.id == Orders.lot_id)
        row = desk.connection.execute(shut.where(Orders.id == to_order_id)).one()
        if row[0] is not None or row[1]:
            return Refused("order_closed")
        held = self.held(order_id)
        if cents > held:
            return Refused("more_than_owed", {"owed": str(held), "asked": str(cents)})
        off = self.take(order_id, "refund", "moved", cents, notes[0])
        if isinstance(off, Refused):
            return off
        on = self.take(to_order_id, "deposit", "moved", cents, notes[1])
        return on if isinstance(on, Refused) else (off, on)

    def held(self, order_id: int) -> int:
        """What is deposited on an order and used by no bill, or owed back on it, in cents."""
        desk = self._desk
        lot, customer = payer(desk, order_id, None)
        now = standing(desk, party_of(desk, lot, order_id, customer))
        return now.held + max(0, -now.owes)

    def of_order(self, order_id: int) -> tuple[Payment, ...]:
        """The payments of an order, first to last."""
        return self._payments(Payments.order_id == order_id)

    def of_lot(self, lot_id: int) -> tuple[Payment, ...]:
        """All payments of a lot, the producer's own too."""
        return self._payments(Payments.lot_id == lot_id)

    def balance(self, order_id: int) -> Balance:
        """What is billed, credited, paid and due of an order, in cents."""
        asked = self._desk.connection.execute(
            select(Shares.deposit_asked)
            .join(Orders, (Orders.lot_id == Shares.lot_id) & (Orders.share == Shares.number))
            .where(Orders.id == order_id)
        ).scalar_one()
        return self._balance(Bills.order_id == order_id, Payments.order_id == order_id, asked)

    def producer_balance(self, lot_id: int) -> Balance:
        """The same of what falls to the producer of a lot and to no share's order."""
        return self._balance(
            (Bills.lot_id == lot_id) & Bills.order_id.is_(None),
            (Payments.lot_id == lot_id) & Payments.order_id.is_(None),
            0,
        )

    def _balance(
        self, bills: ColumnElement[bool], payments: ColumnElement[bool], asked: int
    ) -> Balance:
        run = self._desk.connection.execute
        cents = Cents()
        billed, credited = run(
            select(
                func.coalesce(_sum(Bills.kind == "bill", Bills.total_cents, cents), 0),
                func.coalesce(_sum(Bills.kind == "credit", Bills.total_cents, cents), 0),
            ).where(bills)
        ).one()
        deposits, taken, given = run(
            select(
                func.coalesce(_sum(Payments.kind == "deposit", Payments.cents, cents), 0),
                func.coalesce(
                    _sum(Payments.kind.in_(("payment", "write_off")), Payments.cents, cents), 0
                ),
                func.coalesce(_sum(Payments.kind == "refund", Payments.cents, cents), 0),
            ).where(payments)
        ).one()
        return Balance(int(billed), int(credited), int(deposits), int(taken) - int(given), asked)

    def _payments(self, where: ColumnElement[bool]) -> tuple[Payment, ...]:
        rows = self._desk.connection.execute(
            select(
                Payments.id,
                Payments.number,
                Payments.order_id,
                Payments.customer_id,
                Payments.kind,
                Payments.means,
                Payments.cents,
                Payments.note,
                Payments.at,
                Persons.name,
                Stations.name,
                Payments.lot_id,
                LedgerEntries.day,
            )
            .join(LedgerEntries, LedgerEntries.payment_id == Payments.id)
            .join(Persons, Persons.id == Payments.person_id)
            .join(Stations, Stations.id == Payments.station_id)
            .where(where)
            .order_by(Payments.id)
        )
        return tuple(
            Payment(
                *row[:4],
                cast("PaymentKind", row[4]),
                cast("PaymentMeans", row[5]),
                *row[6:],
            )
            for row in rows
        )


def _sum(
    where: ColumnElement[bool], column: InstrumentedAttribute[int], cents: Cents
) -> ColumnElement[int]:
    return func.sum(case((where, column), else_=0), type_=cents)


def payer(desk: Desk, order_id: int | None, lot_id: int | None) -> tuple[int, int | None]:
    """The lot, and the customer who pays: the share's owner, or the producer of the lot."""
    run = desk.connection.execute
    if order_id is not None:
        row = run(
            select(Orders.lot_id, Shares.customer_id)
            .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
            .where(Orders.id == order_id)
        ).one_or_none()
    elif lot_id is not None:
        row = run(select(Lots.id, Lots.producer_id).where(Lots.id == lot_id)).one_or_none()
    else:
        raise StoreBug("name an order or a lot")
    if row is None:
        raise StoreBug(f"no order {order_id} or lot {lot_id}")
    return row[0], row[1]
