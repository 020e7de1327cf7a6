"""Interest on what is paid late: worked out, asked about, and issued as a bill of its own."""

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.fields.dates import date_text
from shared.billing.bill import Bill
from shared.billing.late import CODE, billed_until, late_bill, late_lines
from shared.billing.problems import BillingProblem
from shared.billing.snapshot import from_snapshot, snapshot
from shared.money import money_text
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from collections.abc import Callable

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.office.billing import Billing
    from shared.billing.rates import LateTerms
    from shared.shop.money import IssuedBill


def terms_of(billing: "Billing") -> "LateTerms | None":
    """The terms of the payer's card: the owner's, or on the producer's own bill the producer's."""
    if isinstance(billing.billed, BillingProblem):
        return None
    card = billing.billed.producer_card if billing.for_producer else billing.card
    return None if card is None else card.late


def bears_interest(billing: "Billing") -> bool:
    """Whether interest can be asked for: terms on the card, a bill, and something due."""
    return terms_of(billing) is not None and bool(billing.bills) and billing.balance.due > 0


def late_bill_of(work: "Work", billing: "Billing", today: date) -> Bill | None:
    """The bill of the interest up to today; None where nothing is late beyond the free days."""
    terms = terms_of(billing)
    papers = [(one, work.papers.get(one.paper_id)) for one in billing.bills]
    found = [(one, from_snapshot(paper.snapshot)) for one, paper in papers if paper is not None]
    kept = [(one, bill) for one, bill in found if isinstance(bill, Bill)]
    if terms is None or not kept:
        return None
    interest = {one.id for one, bill in kept if any(line.code == CODE for line in bill.lines)}
    back = [one for one in billing.issued if one.credits is not None]
    taken = billing.balance.deposits + billing.balance.paid
    taken += sum(one.total_cents for one in back if one.credits not in interest)
    bills = [
        (one.issued_at.astimezone().date(), one.total_cents)
        for one, _bill in kept
        if one.id not in interest
    ]
    keys = work.bills.billed_keys(billing.order_id, billing.lot.id)
    lines = late_lines(bills, taken, today, terms, billed_until=billed_until(keys))
    last = next((bill for one, bill in reversed(kept) if one.id not in interest), kept[-1][1])
    return late_bill(last, *lines) if lines else None


class LateBilling(QObject):
    """Asks before it bills; `done` gets the bill, or why there is none."""

    def __init__(
        self,
        bench: "Bench",
        done: "Callable[[IssuedBill | Refused | BillingProblem], object]",
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self.bench = bench
        self._done = done

    def begin(self, billing: "Billing") -> None:
        """Work the interest out and ask whether it is billed."""
        self.bench.work.run(
            self._read, billing, then=lambda bill: self._ask(billing, bill), owner=self
        )

    def _read(self, billing: "Billing") -> Bill | None:
        with self.bench.store.read() as work:
            return late_bill_of(work, billing, self.bench.today())

    def _ask(self, billing: "Billing", bill: Bill | None) -> None:
        title, ask = self.tr("Interest on late payment"), self.bench.messages
        terms = terms_of(billing)
        if bill is None or terms is None:
            days = terms.free_days if terms is not None else 0
            said = self.tr(
                "Nothing is late beyond the {days} days without interest, or too little."
            )
            ask.tell(title, said.format(days=days))
            return
        text = self.tr(
            "{payer} is late. Simple interest at {rate} % a year up to {day}: {total}. It is a "
            "bill of its own; interest bears no interest. Local law bounds such interest: ask "
            "somebody who knows before charging it."
        ).format(
            payer=billing.payer,
            rate=f"{round(terms.yearly_rate * 10_000) / 100:g}",
            day=date_text(self.bench.today(), self.bench.words.language),
            total=money_text(bill.total_cents),
        )
        if ask.ask(title, text, self.tr("Bill the interest"), self.tr("Leave it")):
            self.bench.work.run(self._issue, billing, bill, then=self._done, owner=self)

    def _issue(self, billing: "Billing", bill: Bill) -> "IssuedBill | Refused":
        from desktop.office.issuing import bill_pdf

        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.bills.issue(
                billing.order_id,
                lot_id=billing.lot.id,
                total_cents=bill.total_cents,
                snapshot=snapshot(bill),
                pdf=bill_pdf(bill, billing, self.bench.now(), self.bench.words),
                lines=bill.lines,
            )
            if not isinstance(found, Refused):
                work.commit()
        return found
