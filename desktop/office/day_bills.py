"""A day's bills in one go: read what each order would be billed, issue them, and one PDF of all."""

from dataclasses import dataclass
from io import BytesIO
from typing import TYPE_CHECKING

from desktop.office import issuing
from desktop.office.billing import Billing, BillingReader, read_billing
from desktop.office.lot_reading import COMPLETE
from shared.billing.bill import Bill
from shared.billing.problems import BillingProblem
from shared.shop.money import IssuedBill
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from db.store import Store
    from desktop.bench import Bench
    from desktop.office.progress import Steps


@dataclass(frozen=True, slots=True)
class DayBill:
    """What one order, or the producer of a lot, would be billed; a problem where it can't be."""

    billing: Billing
    problem: BillingProblem | Refused | None = None
    issued: IssuedBill | None = None

    @property
    def bill(self) -> Bill | None:
        """The bill to issue."""
        made = self.billing.next_bill
        return made if isinstance(made, Bill) else None

    @property
    def total_cents(self) -> int | None:
        """What it comes to; None where it can't be made."""
        return None if self.bill is None else self.bill.total_cents

    @property
    def waits(self) -> int:
        """Lines that come on a further bill: what is still in cure or not weighed."""
        return 0 if self.bill is None else len(self.bill.waiting)


@dataclass(frozen=True, slots=True)
class ReadDay:
    """The bills that can be issued, of `looked_at` orders of `orders`: fewer where stopped."""

    bills: tuple[DayBill, ...] = ()
    looked_at: int = 0
    orders: int = 0


def read_day(store: "Store", steps: "Steps") -> ReadDay:
    """The bills of all orders that are ready or handed over, and of their producers.

    Orders without a bill come first, so that stopping leaves out those that may only have a
    further one. Orders with nothing to bill aren't listed.
    """
    found: list[DayBill] = []
    producers: set[int] = set()
    looked_at = 0
    with store.read() as work:
        ids, reader = work.bills.to_bill(COMPLETE), BillingReader(work)
        for order_id in steps.over(ids):
            looked_at += 1
            billing = reader.read(order_id)
            if billing is None:
                continue
            mine = [billing]
            if billing.producers is not None and billing.lot.id not in producers:
                producers.add(billing.lot.id)
                mine.append(billing.producers)
            found += [one for one in map(_day_bill, mine) if one is not None]
    found.sort(key=lambda one: one.billing.order.number)
    return ReadDay(tuple(found), looked_at, len(ids))


def _day_bill(billing: Billing) -> DayBill | None:
    if isinstance(billing.next_bill, BillingProblem):
        return DayBill(billing, billing.next_bill)
    return DayBill(billing) if billing.has_next else None


def issue_day(bench: "Bench", bills: "Iterable[DayBill]", steps: "Steps") -> tuple[DayBill, ...]:
    """Issue them one by one, each whole or not at all; stopped, the rest is not issued.

    Each is read again first: one that no longer comes to what was checked is left, "changed".
    """
    return tuple(_issue(bench, one) for one in steps.over(bills))


def _issue(bench: "Bench", checked: DayBill) -> DayBill:
    fresh = read_billing(bench.store, checked.billing.order.id)
    if fresh is not None and checked.billing.for_producer:
        fresh = fresh.producers
    now = None if fresh is None else _day_bill(fresh)
    if fresh is None or now is None or now.total_cents != checked.total_cents:
        return DayBill(checked.billing, Refused("changed"))
    found = issuing.issue(bench, fresh)
    if isinstance(found, IssuedBill):
        return DayBill(fresh, issued=found)
    return DayBill(fresh, found)


def one_pdf(store: "Store", issued: "Sequence[IssuedBill]", steps: "Steps") -> bytes:
    """The papers as kept, one after the other, to be printed in one go."""
    import pypdfium2  # noqa: F401 — 40 ms the preview would take from the window
    from pypdf import PdfWriter

    joined = PdfWriter()
    for one in steps.over(issued):
        with store.read() as work:
            paper = work.papers.get(one.paper_id)
        if paper is not None:
            joined.append(BytesIO(paper.pdf), import_outline=False)
    out = BytesIO()
    joined.write(out)
    return out.getvalue()
