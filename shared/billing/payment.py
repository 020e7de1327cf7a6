"""Taking money, giving it back, and setting it right: tenders, change, refunds, write-offs.

Whole cents throughout. What comes out is what the store keeps as `Payment` rows; nothing that
was taken is ever changed.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from shared.billing.problems import BillingProblem
from shared.money import money_text
from shared.shop.money import Balance, PaymentKind, PaymentMeans


@dataclass(frozen=True, slots=True)
class Tender:
    """Money of one kind put on the counter."""

    means: PaymentMeans
    cents: int
    note: str = ""


@dataclass(frozen=True, slots=True)
class Taken:
    """What to keep of the tenders, the change to give in cash, and the balance after it."""

    kind: PaymentKind
    tenders: tuple[Tender, ...]
    change_cents: int
    balance: Balance


def take(
    balance: Balance, tenders: Sequence[Tender], *, deposit: bool = False
) -> Taken | BillingProblem:
    """Take a payment by one or several means; cash above what is due comes back as change.

    $573.30 due, $400.00 by card and $200.00 in cash: $26.70 change, $173.30 of the cash kept.
    "not_positive" · "nothing_due" · "overpaid" where more than the due isn't cash. A deposit may
    be any amount above nothing and is kept whole.
    """
    if not tenders or any(one.cents <= 0 for one in tenders):
        return BillingProblem("not_positive")
    tendered = sum(one.cents for one in tenders)
    if deposit:
        after = replace(balance, deposits=balance.deposits + tendered)
        return Taken("deposit", tuple(tenders), 0, after)
    if balance.due <= 0:
        return BillingProblem("nothing_due", {"due": money_text(balance.due)})
    change = max(0, tendered - balance.due)
    cash = sum(one.cents for one in tenders if one.means == "cash")
    if change > cash:
        data = {"due": money_text(balance.due), "tendered": money_text(tendered)}
        return BillingProblem("overpaid", data)
    after = replace(balance, paid=balance.paid + tendered - change)
    return Taken("payment", _less_change(tenders, change), change, after)


def refund(
    balance: Balance, cents: int, means: PaymentMeans = "cash", note: str = ""
) -> Tender | BillingProblem:
    """Give back what is owed to the customer, or a part of it; never more ("more_than_owed")."""
    if cents <= 0:
        return BillingProblem("not_positive")
    if cents > -balance.due:
        data = {"owed": money_text(max(0, -balance.due)), "asked": money_text(cents)}
        return BillingProblem("more_than_owed", data)
    return Tender(means, cents, note)


def write_off(balance: Balance, cents: int, reason: str) -> Tender | BillingProblem:
    """Give up a part of what is due, with a reason; never more than is due ("more_than_due")."""
    if not reason.strip():
        return BillingProblem("reason_missing")
    if cents <= 0:
        return BillingProblem("not_positive")
    if cents > balance.due:
        data = {"due": money_text(max(0, balance.due)), "asked": money_text(cents)}
        return BillingProblem("more_than_due", data)
    return Tender("other", cents, reason.strip())


def _less_change(tenders: Sequence[Tender], change: int) -> tuple[Tender, ...]:
    """The tenders with the change taken out of the cash, last cash first."""
    kept: list[Tender] = []
    for one in reversed(tenders):
        out = min(change, one.cents) if one.means == "cash" else 0
        change -= out
        if one.cents > out:
            kept.append(replace(one, cents=one.cents - out))
    return tuple(reversed(kept))
