"""Issued bills and credit notes: numbered without gaps, kept whole, never changed."""

from collections.abc import Callable, Collection, Sequence
from datetime import date, datetime, timedelta
from typing import Literal

from sqlalchemy import ColumnElement, func, select

from db.columns import Cents
from db.desk import Desk
from db.repositories.bill_lists import BillSort, bill_rows, open_orders
from db.repositories.ledger_posting import (
    About,
    must_be_open,
    party_of,
    post,
    shop_day,
    species_of,
    standing,
    tax_rates,
)
from db.repositories.papers import PaperBook
from db.repositories.payments import payer
from db.tables.bills import BillLines, Bills, Divisions
from db.tables.people import Persons
from shared.billing.bill import BillLine
from shared.billing.credit_note import CreditLine
from shared.billing.lot import Division
from shared.billing.posting import bill_postings, credit_postings
from shared.shop.lists import BillRow
from shared.shop.money import IssuedBill
from shared.shop.problems import Refused
from shared.shop.states import OrderState


class BillBook:
    """`work.bills`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def issue(
        self,
        order_id: int | None,
        *,
        total_cents: int,
        snapshot: str,
        pdf: Callable[[int], bytes],
        lines: Sequence[BillLine] = (),
        divisions: Sequence[Division] = (),
        lot_id: int | None = None,
    ) -> IssuedBill | Refused:
        """Issue a bill. `pdf` makes its paper from the number it is given.

        The producer's own bill has no order: order_id is None and the lot is named. A line whose
        key was billed before and not credited is refused: "already_billed". Lines that wait for
        a weight are on the paper only. Its entry in the books is written with it; "period_closed"
        where today is closed.
        """
        closed = must_be_open(self._desk, shop_day(self._desk))
        if closed is not None:
            return closed
        lot, customer = payer(self._desk, order_id, lot_id)
        lines = [line for line in lines if line.kind != "waiting"]
        twice = self.billed_keys(order_id, lot) & {line.key for line in lines}
        if twice:
            return Refused("already_billed", {"keys": ", ".join(sorted(twice))})
        number = self._desk.next_number("bill")
        bill = self._keep(
            "bill", number, (lot, order_id, customer), total_cents, snapshot, pdf(number)
        )
        self._keep_lines(bill.id, lines)
        self._keep_divisions(lot, divisions)
        party = party_of(self._desk, lot, order_id, customer)
        before, species = standing(self._desk, party), species_of(self._desk, lot)
        moved = bill_postings(total_cents, lines, species, before)
        post(self._desk, "bill", moved, party, About(number, bill_id=bill.id))
        return bill

    def _keep_lines(self, bill_id: int, lines: Sequence[BillLine]) -> None:
        self._desk.add_rows(
            BillLines,
            [
                {
                    "bill_id": bill_id,
                    "position": position,
                    "key": line.key,
                    "code": line.code,
                    "basis": line.basis,
                    "quantity": line.quantity,
                    "unit": line.unit,
                    "rate": line.rate,
                    "amount_cents": line.amount_cents,
                    "tax_cents": line.tax_cents,
                }
                for position, line in enumerate(lines, start=1)
            ],
        )

    def _keep_divisions(self, lot_id: int, divisions: Sequence[Division]) -> None:
        """Keep what isn't kept yet; the first division of a charge holds for good."""
        known = {(one.charge, one.share) for one in self.divisions(lot_id)}
        self._desk.add_rows(
            Divisions,
            [
                {
                    "lot_id": lot_id,
                    "charge": one.charge,
                    "share": one.share,
                    "cents": one.cents,
                }
                for one in divisions
                if (one.charge, one.share) not in known
            ],
        )

    def credit(
        self,
        bill_id: int,
        *,
        total_cents: int,
        reason: str,
        snapshot: str,
        pdf: Callable[[int], bytes],
        lines: Sequence[CreditLine] = (),
    ) -> IssuedBill | Refused:
        """Issue a credit note on a bill; `total_cents` is positive, at most what is left of it.

        `lines` say which income and tax the books take it from; what they don't account for is
        taken from income without a service.
        """
        closed = must_be_open(self._desk, shop_day(self._desk))
        if closed is not None:
            return closed
        bill = self.get(bill_id)
        if bill is None or bill.credits is not None:
            return Refused("no_such_bill")
        if total_cents <= 0:
            return Refused("not_positive")
        if not reason.strip():
            return Refused("reason_missing")
        left = bill.total_cents - self._credited(bill_id)
        if total_cents > left:
            return Refused("more_than_billed", {"left": str(left)})
        number = self._desk.next_number("credit")
        whose = (bill.lot_id, bill.order_id, bill.customer_id)
        note = self._keep(
            "credit", number, whose, total_cents, snapshot, pdf(number), bill_id, reason.strip()
        )
        species, rates = species_of(self._desk, bill.lot_id), tax_rates(self._desk, bill_id)
        post(
            self._desk,
            "credit",
            credit_postings(total_cents, lines, species, rates),
            party_of(self._desk, *whose),
            About(number, bill_id=note.id, memo=reason.strip()),
        )
        return note

    def _credited(self, bill_id: int) -> int:
        return self._desk.connection.execute(
            select(func.coalesce(func.sum(Bills.total_cents, type_=Cents()), 0)).where(
                Bills.credits == bill_id
            )
        ).scalar_one()

    def _keep(
        self,
        kind: Literal["bill", "credit"],
        number: int,
        whose: tuple[int, int | None, int | None],
        total_cents: int,
        snapshot: str,
        pdf: bytes,
        credited: int | None = None,
        reason: str = "",
    ) -> IssuedBill:
        desk = self._desk
        paper = PaperBook(desk).keep(
            kind, lot_id=whose[0], order_id=whose[1], number=number, snapshot=snapshot, pdf=pdf
        )
        new = desk.insert(
            Bills,
            {
                "kind": kind,
                "number": number,
                "lot_id": whose[0],
                "order_id": whose[1],
                "customer_id": whose[2],
                "total_cents": total_cents,
                "credits": credited,
                "reason": reason,
                "paper_id": paper.id,
                "issued_at": desk.now,
                **desk.stamp,
            },
        )
        desk.record(kind, new, "issued", reason, number=number, cents=total_cents)
        return self._bills(Bills.id == new)[0]

    def get(self, bill_id: int) -> IssuedBill | None:
        """The bill or credit note, or None."""
        found = self._bills(Bills.id == bill_id)
        return found[0] if found else None

    def of_order(self, order_id: int) -> tuple[IssuedBill, ...]:
        """Bills and credit notes of an order, first to last."""
        return self._bills(Bills.order_id == order_id)

    def of_lot(self, lot_id: int) -> tuple[IssuedBill, ...]:
        """Bills and credit notes of a lot, the producer's own too."""
        return self._bills(Bills.lot_id == lot_id)

    def billed_keys(self, order_id: int | None, lot_id: int) -> frozenset[str]:
        """Keys of lines that stand on a bill of this order which isn't credited whole."""
        mine = Bills.order_id.is_(None) if order_id is None else Bills.order_id == order_id
        rows = self._desk.connection.execute(
            select(BillLines.key, BillLines.bill_id, Bills.total_cents)
            .join(Bills, Bills.id == BillLines.bill_id)
            .where(Bills.lot_id == lot_id, mine)
        ).all()
        back = self._credits_of_lot(lot_id)
        return frozenset(
            row.key
            for row in rows
            if row.total_cents == 0 or back.get(row.bill_id, 0) < row.total_cents
        )

    def standing_lines(self, lot_id: int) -> tuple[tuple[int | None, str, int], ...]:
        """Order, key and cents of the lines on bills of a lot that aren't credited whole."""
        rows = self._desk.connection.execute(
            select(
                Bills.order_id,
                BillLines.key,
                BillLines.amount_cents,
                BillLines.bill_id,
                Bills.total_cents,
            )
            .join(Bills, Bills.id == BillLines.bill_id)
            .where(Bills.lot_id == lot_id)
            .order_by(BillLines.bill_id, BillLines.position)
        ).all()
        back = self._credits_of_lot(lot_id)
        return tuple(
            (order_id, key, cents)
            for order_id, key, cents, bill, total in rows
            if total == 0 or back.get(bill, 0) < total
        )

    def standing_bills(self, lot_id: int) -> frozenset[int]:
        """Ids of the bills of a lot that aren't credited whole."""
        back = self._credits_of_lot(lot_id)
        return frozenset(
            one.id
            for one in self.of_lot(lot_id)
            if one.credits is None
            and (one.total_cents == 0 or back.get(one.id, 0) < one.total_cents)
        )

    def _credits_of_lot(self, lot_id: int) -> dict[int, int]:
        """Cents credited, by bill."""
        rows = self._desk.connection.execute(
            select(Bills.credits, func.sum(Bills.total_cents, type_=Cents()))
            .where(Bills.lot_id == lot_id, Bills.kind == "credit")
            .group_by(Bills.credits)
        )
        return {bill: cents for bill, cents in rows if bill is not None}

    def divisions(self, lot_id: int) -> tuple[Division, ...]:
        """How the charges of a lot were divided when first billed."""
        rows = self._desk.connection.execute(
            select(Divisions.charge, Divisions.share, Divisions.cents)
            .where(Divisions.lot_id == lot_id)
            .order_by(Divisions.charge, Divisions.share)
        )
        return tuple(Division(charge=row[0], share=row[1], cents=row[2]) for row in rows)

    def list(
        self,
        *,
        text: str = "",
        start: date | None = None,
        end: date | None = None,
        sort: BillSort = "number",
        descending: bool = False,
        limit: int = 500,
        offset: int = 0,
    ) -> tuple[BillRow, ...]:
        """Bills and credit notes by day (UTC), customer and number, sorted; `end` is within."""
        moments = (_moment(start), None if end is None else _moment(end + timedelta(days=1)))
        return bill_rows(self._desk.connection, text, moments, (sort, descending), (limit, offset))

    def to_bill(self, states: Collection[OrderState]) -> tuple[int, ...]:
        """Ids of all open orders in these states, those without a bill first."""
        return open_orders(self._desk.connection, states, checked=False)

    def to_check(self, states: Collection[OrderState]) -> tuple[int, ...]:
        """Of those, the orders of lots on which something was billed."""
        return open_orders(self._desk.connection, states, checked=True)

    def _bills(self, where: ColumnElement[bool]) -> tuple[IssuedBill, ...]:
        rows = self._desk.connection.execute(
            select(
                Bills.id,
                Bills.number,
                Bills.order_id,
                Bills.customer_id,
                Bills.total_cents,
                Bills.issued_at,
                Persons.name,
                Bills.paper_id,
                Bills.credits,
                Bills.reason,
                Bills.lot_id,
            )
            .join(Persons, Persons.id == Bills.person_id)
            .where(where)
            .order_by(Bills.id)
        )
        return tuple(IssuedBill(*row) for row in rows)


def _moment(day: date | None) -> datetime | None:
    return None if day is None else datetime.fromisoformat(f"{day.isoformat()}T00:00:00+00:00")
