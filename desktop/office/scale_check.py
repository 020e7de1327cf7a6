"""Bills that no longer agree with the scale: what was billed beside what it would be today."""

from collections import Counter
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from desktop.office import issuing
from desktop.office.billing import Billing, BillingReader, read_billing
from desktop.office.lot_reading import COMPLETE
from shared.billing.bill import Bill, BillLine, make_bill, make_producer_bill
from shared.billing.credit_note import CreditNote, credit_from_text
from shared.billing.problems import BillingProblem
from shared.billing.snapshot import from_snapshot
from shared.shop.money import IssuedBill

if TYPE_CHECKING:
    from collections.abc import Iterable

    from db.store import Store
    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.office.progress import Steps
    from shared.shop.problems import Refused

SLACK_CENTS = 1
"""A cent may have gone to another owner when an amount was divided; it is no disagreement."""


@dataclass(frozen=True, slots=True)
class Disagreement:
    """One line that was billed, and what the scale or the rates make of it now."""

    billing: Billing
    line: BillLine
    bill: IssuedBill
    billed_cents: int
    now_cents: int

    @property
    def more_cents(self) -> int:
        """What a new bill would come to more; below nothing, less."""
        return self.now_cents - self.billed_cents


@dataclass(frozen=True, slots=True)
class Checked:
    """What disagrees, of `looked_at` orders of `orders`: fewer where it was stopped."""

    found: tuple[Disagreement, ...]
    looked_at: int
    orders: int

    @property
    def whole(self) -> bool:
        """Whether all were looked at."""
        return self.looked_at == self.orders


def disagreements(store: "Store", steps: "Steps") -> Checked:
    """Billed lines of all open orders, and of their producers, that would be others today.

    Side 1 billed at 93.5 lb and corrected to 95.5 lb at $0.70 stands at $65.45 and would be
    $66.85.
    """
    found: list[Disagreement] = []
    producers: set[int] = set()
    looked_at = 0
    with store.read() as work:
        ids, reader = work.bills.to_check(COMPLETE), BillingReader(work)
        for order_id in steps.over(ids):
            looked_at += 1
            billing = reader.read(order_id)
            if billing is None:
                continue
            found += _of(work, billing)
            if billing.producers is not None and billing.lot.id not in producers:
                producers.add(billing.lot.id)
                found += _of(work, billing.producers)
    return Checked(tuple(found), looked_at, len(ids))


def read_checked(store: "Store", order_id: int) -> Billing | None:
    """An order's money, and whether its bills still agree with the scale."""
    with store.read() as work:
        billing = BillingReader(work).read(order_id)
        if billing is None:
            return None
        his = billing.producers
        if his is not None:
            his = replace(his, differs=bool(_of(work, his)))
        return replace(billing, producers=his, differs=bool(_of(work, billing)))


def _of(work: "Work", billing: Billing) -> list[Disagreement]:
    lot = billing.billed
    if not billing.bills or isinstance(lot, BillingProblem):
        return []
    fresh = replace(lot, kept=())
    today = (
        make_producer_bill(fresh) if billing.for_producer else make_bill(fresh, billing.order.share)
    )
    if isinstance(today, BillingProblem):
        return []
    now = {line.key: line for line in today.lines if line.kind == "charge"}
    stands, where = _standing(work, billing)
    return [
        Disagreement(billing, now[key], where[key], cents, now[key].amount_cents)
        for key, cents in stands.items()
        if key in now and cents and abs(now[key].amount_cents - cents) > SLACK_CENTS
    ]


def _standing(work: "Work", billing: Billing) -> tuple[dict[str, int], dict[str, IssuedBill]]:
    """Cents by line that stand after credits, and the last bill each line is on."""
    cents: Counter[str] = Counter()
    where: dict[str, IssuedBill] = {}
    papers = [(one, work.papers.get(one.paper_id)) for one in billing.issued]
    for issued, paper in papers:
        if paper is None:
            continue
        if issued.credits is None:
            bill = from_snapshot(paper.snapshot)
            lines = bill.lines if isinstance(bill, Bill) else ()
            for line in lines:
                if line.kind == "charge":
                    cents[line.key] += line.amount_cents
                    where[line.key] = issued
            continue
        note = credit_from_text(paper.snapshot)
        for back in note.lines if isinstance(note, CreditNote) else ():
            cents[back.key] -= back.amount_cents
    return dict(cents), where


@dataclass(frozen=True, slots=True)
class Mended:
    """What was credited and billed again, or why it stopped."""

    credits: tuple[IssuedBill, ...]
    bills: tuple[IssuedBill, ...]
    problem: "BillingProblem | Refused | None" = None


def credit_and_bill_again(
    bench: "Bench", found: "Iterable[Disagreement]", reason: str, steps: "Steps"
) -> Mended:
    """Credit the bills whole, with the reason, then bill their orders anew.

    All credits come first: owners who share a charge are then divided anew together.
    """
    bills = {one.bill.id: one for one in found}
    notes: list[IssuedBill] = []
    again: list[IssuedBill] = []
    whose = {(one.billing.order.id, one.billing.for_producer) for one in bills.values()}
    jobs: list[Disagreement | tuple[int, bool]] = [*bills.values(), *sorted(whose)]
    for job in steps.over(jobs):
        if isinstance(job, Disagreement):
            note = issuing.credit(bench, job.billing, reason, "", None, job.bill)
            if not isinstance(note, IssuedBill):
                return Mended(tuple(notes), tuple(again), note)
            notes.append(note)
            continue
        made = _bill_again(bench, *job)
        if isinstance(made, IssuedBill):
            again.append(made)
        elif made is not None:
            return Mended(tuple(notes), tuple(again), made)
    return Mended(tuple(notes), tuple(again))


def _bill_again(
    bench: "Bench", order_id: int, for_producer: bool
) -> "IssuedBill | BillingProblem | Refused | None":
    billing = read_billing(bench.store, order_id)
    if billing is not None and for_producer:
        billing = billing.producers
    if billing is None or not billing.has_next:
        return None
    return issuing.issue(bench, billing)
