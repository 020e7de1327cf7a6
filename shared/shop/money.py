"""What was billed and what was paid, order by order, in whole cents."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

PaymentKind = Literal["deposit", "payment", "refund", "write_off"]
PaymentMeans = Literal["cash", "check", "card", "transfer", "other", "moved"]
"""How money is given; "moved" is between two orders, no money changes hands."""


@dataclass(frozen=True, slots=True)
class Payment:
    """Money taken (or, for a refund, given back); `cents` is positive. Never changed.

    order_id None: paid by the producer for the lot, not for one share's order. `day` is the day
    it came, which the books have it on; `at` the moment it was typed.
    """

    id: int
    number: int
    order_id: int | None
    customer_id: int | None
    kind: PaymentKind
    means: PaymentMeans
    cents: int
    note: str
    at: datetime
    person: str
    station: str
    lot_id: int
    day: date


@dataclass(frozen=True, slots=True)
class IssuedBill:
    """A bill or credit note as issued; never changed. A credit's `total_cents` is positive too.

    `credits` is the bill a credit note takes back, None for a bill.
    """

    id: int
    number: int
    order_id: int | None
    customer_id: int | None
    total_cents: int
    issued_at: datetime
    person: str
    paper_id: int
    credits: int | None = None
    reason: str = ""
    lot_id: int = 0


@dataclass(frozen=True, slots=True)
class Balance:
    """One order's money in cents: due = billed - credited - deposits - paid.

    `paid` is payments and write-offs less refunds. A negative `due` is owed to the customer.
    """

    billed: int = 0
    credited: int = 0
    deposits: int = 0
    paid: int = 0
    deposit_asked: int = 0

    @property
    def due(self) -> int:
        """What is still to be paid; before the bill it is the deposit with its sign turned."""
        return self.billed - self.credited - self.deposits - self.paid


def balance_of(
    issued: Iterable[IssuedBill], payments: Iterable[Payment], deposit_asked: int = 0
) -> Balance:
    """The balance of an order from its bills, credits and payments.

    A bill of $106.00, a credit of $6.00, $50.00 deposited, $30.00 paid and $5.00 given back leave
    $25.00 due.
    """
    billed = credited = deposits = paid = 0
    for bill in issued:
        if bill.credits is None:
            billed += bill.total_cents
        else:
            credited += bill.total_cents
    for one in payments:
        if one.kind == "deposit":
            deposits += one.cents
        else:
            paid += -one.cents if one.kind == "refund" else one.cents
    return Balance(billed, credited, deposits, paid, deposit_asked)
