"""What changes the shop's money: a bill issued, money taken, a credit, an order closed."""

from typing import TYPE_CHECKING

from desktop.office.billing import Billing, address_lines
from desktop.office.lot_reading import producers_codes
from desktop.paper_words import words_for
from shared.billing.bill import Bill
from shared.billing.credit_note import (
    CreditNote,
    credit_from_text,
    credit_note,
    credit_text,
)
from shared.billing.division import new_divisions
from shared.billing.extras import given_back, left_over, put_back
from shared.billing.lot import BilledLot
from shared.billing.payment import Taken, Tender, refund, take, write_off
from shared.billing.problems import BillingProblem
from shared.billing.snapshot import from_snapshot, snapshot
from shared.shop.money import IssuedBill, Payment
from shared.shop.problems import NotClosed, Refused, StaleEdit

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.office.money_dialog import Given
    from printing.words import Words
    from shared.shop.orders import Order


def bill_pdf(
    bill: Bill, billing: Billing, made: "datetime", words: "Words"
) -> "Callable[[int], bytes]":
    """What makes the bill's paper once its number is known; number 0 is a draft.

    It speaks the language of who pays it, `words` where none is kept of him.
    """

    def paper(number: int) -> bytes:
        from printing.bill import bill as paper_of

        return paper_of(
            bill,
            number=number,
            shop=billing.shop,
            customer=address_lines(billing.customer, billing.payer),
            made=made,
            words=words_for(billing.customer, words),
            order_number=0 if billing.for_producer else billing.order.number,
            lot_number=billing.lot.number,
        )

    return paper


def issue(bench: "Bench", billing: Billing) -> IssuedBill | Refused | BillingProblem:
    """Issue what isn't billed yet, keep its paper and how the charges were divided."""
    bill, lot = billing.next_bill, billing.billed
    if isinstance(bill, BillingProblem):
        return bill
    if isinstance(lot, BillingProblem):
        return lot
    divisions = new_divisions(lot)
    if isinstance(divisions, BillingProblem):
        return divisions
    with bench.store.work(bench.person, bench.station) as work:
        found = work.bills.issue(
            billing.order_id,
            lot_id=billing.lot.id,
            total_cents=bill.total_cents,
            snapshot=snapshot(bill),
            pdf=bill_pdf(bill, billing, bench.now(), bench.words),
            lines=bill.lines,
            divisions=divisions,
        )
        if isinstance(found, IssuedBill):
            if work.extras.of_lot(billing.lot.id) != dict(billing.said):
                return Refused("extras_changed")
            _take_off(work, billing, bill, lot, found.id)
            work.commit()
    return found


def _take_off(work: "Work", billing: Billing, bill: Bill, lot: BilledLot, bill_id: int) -> None:
    """What is on the bill now is no longer on the next ones."""
    his = producers_codes(lot)
    for order_id, said in billing.said.items():
        left = left_over(said.extras, bill, his, own=order_id == billing.order_id)
        if left != said.extras:
            work.extras.say(order_id, left, said.id, bill_id)


def take_money(
    bench: "Bench", billing: Billing, given: "Given"
) -> tuple[tuple[Payment, ...], int] | BillingProblem | Refused:
    """Take money or give it back; what was kept, and the change to give out of cash."""
    tenders = _tenders(billing, given)
    if isinstance(tenders, BillingProblem):
        return tenders
    kept, change = tenders
    payments: list[Payment] = []
    with bench.store.work(bench.person, bench.station) as work:
        for one in kept:
            made = work.payments.take(
                billing.order_id,
                given.kind,
                one.means,
                one.cents,
                one.note,
                lot_id=billing.lot.id,
                payer_id=given.payer_id,
                day=given.day,
            )
            if isinstance(made, Refused):
                return made
            payments.append(made)
        work.commit()
    return tuple(payments), change


def _tenders(billing: Billing, given: "Given") -> tuple[tuple[Tender, ...], int] | BillingProblem:
    balance, kind = billing.balance, given.kind
    if kind in ("payment", "deposit"):
        taken = take(balance, given.tenders, deposit=kind == "deposit")
        return (taken.tenders, taken.change_cents) if isinstance(taken, Taken) else taken
    if not given.tenders:
        return BillingProblem("not_positive")
    first = given.tenders[0]
    if kind == "refund":
        one = refund(balance, first.cents, first.means, first.note)
    else:
        one = write_off(balance, first.cents, first.note)
    return one if isinstance(one, BillingProblem) else ((one,), 0)


def credit(
    bench: "Bench",
    billing: Billing,
    reason: str,
    key: str,
    cents: int | None,
    which: IssuedBill | None = None,
) -> IssuedBill | BillingProblem | Refused:
    """Credit a bill, the last unless it's said `which`: all of it (key ""), a line, or `cents`."""
    if not billing.bills:
        return BillingProblem("nothing_to_credit")
    issued = which or billing.bills[-1]
    with bench.store.work(bench.person, bench.station) as work:
        paper = work.papers.get(issued.paper_id)
        bill = from_snapshot(paper.snapshot) if paper is not None else BillingProblem("damaged")
        if isinstance(bill, BillingProblem):
            return bill
        note = credit_note(
            bill,
            issued.number,
            reason,
            keys=None if not key or cents is not None else (key,),
            cents={key: cents} if key and cents is not None else None,
            earlier=_earlier(work, billing, issued),
        )
        if isinstance(note, BillingProblem):
            return note
        found = work.bills.credit(
            issued.id,
            total_cents=note.total_cents,
            reason=note.reason,
            snapshot=credit_text(note),
            pdf=_credit_pdf(note, billing, bench.now(), bench.words),
            lines=note.lines,
        )
        if isinstance(found, IssuedBill):
            if not key:
                _put_back(work, billing, bill, issued.id)
            work.commit()
    return found


def _put_back(work: "Work", billing: Billing, bill: Bill, bill_id: int) -> None:
    """Credited whole, what was also on the bill is on the next one again.

    The producer's bill gives it back to the orders that asked for it.
    """
    taken = work.extras.taken_by(bill_id)
    for order_id, theirs in taken.items():
        said = work.extras.of(order_id)
        work.extras.say(order_id, put_back(said.extras, theirs), said.id)
    if not taken and billing.card is not None and billing.order_id is not None:
        said = work.extras.of(billing.order_id)
        again = given_back(said.extras, bill, billing.card)
        work.extras.say(billing.order_id, again, said.id)


def _earlier(work: "Work", billing: Billing, issued: IssuedBill) -> list[CreditNote]:
    """The credits the bill has already, read from their papers."""
    ids = {one.paper_id for one in billing.issued if one.credits == issued.id}
    papers = [work.papers.get(one) for one in ids]
    read = [credit_from_text(one.snapshot) for one in papers if one is not None]
    return [one for one in read if isinstance(one, CreditNote)]


def _credit_pdf(
    note: CreditNote, billing: Billing, made: "datetime", words: "Words"
) -> "Callable[[int], bytes]":
    def paper(number: int) -> bytes:
        from printing.credit import credit as paper_of

        return paper_of(
            note,
            number=number,
            shop=billing.shop,
            customer=address_lines(billing.customer, billing.payer),
            made=made,
            words=words_for(billing.customer, words),
            order_number=0 if billing.for_producer else billing.order.number,
        )

    return paper


def close(bench: "Bench", billing: Billing) -> "Order | StaleEdit | NotClosed":
    """Close the order for good: handed over, billed and paid."""
    with bench.store.work(bench.person, bench.station) as work:
        found = work.orders.close(billing.order.id, version=billing.order.version)
        if not isinstance(found, StaleEdit | NotClosed):
            work.commit()
    return found
