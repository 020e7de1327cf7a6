"""Interest on what is paid late, if the shop wants it: simple interest, billed like any charge.

An issued bill never changes, so interest stands on a bill of its own, with the days it is for in
its key: the same days are never billed twice. Local law bounds such rates; the shop sets its own
and asks somebody who knows.
"""

from dataclasses import dataclass
from datetime import date, timedelta
from fractions import Fraction

from shared.billing.bill import BillLine
from shared.billing.problems import BillingProblem
from shared.money import round_half_up

DAYS_OF_YEAR = 365
CODE = "late_interest"


@dataclass(frozen=True, slots=True)
class LateTerms:
    """From when and how much: so many days without interest, a rate for a year, a least amount.

    Interest below `least_cents` isn't billed at all.
    """

    free_days: int = 30
    yearly_rate: Fraction = Fraction(0)
    least_cents: int = 0


def check_terms(terms: LateTerms) -> BillingProblem | None:
    """None, "rate_negative", "rate_absurd" (half of the debt a year or more) or "days_negative"."""
    if terms.yearly_rate < 0 or terms.least_cents < 0:
        return BillingProblem("rate_negative", {"rate": str(terms.yearly_rate)})
    if terms.yearly_rate >= Fraction(1, 2):
        return BillingProblem("rate_absurd", {"rate": str(terms.yearly_rate)})
    return BillingProblem("days_negative") if terms.free_days < 0 else None


def late_interest(
    due_cents: int,
    since: date,
    today: date,
    terms: LateTerms,
    *,
    billed_until: date | None = None,
) -> BillLine | None:
    """The line for the interest on what is due since a day, or None where there is none.

    $1,000.00 due since 1 March at 12 % a year, 30 days free: on 30 April, 60 days on, 30 days
    count: 100,000 × 12/100 × 30/365 = 986.3, $9.86. `billed_until` is the last day that earlier
    interest was billed for.
    """
    first = since + timedelta(days=max(0, terms.free_days))
    if billed_until is not None:
        first = max(first, billed_until)
    days = (today - first).days
    if due_cents <= 0 or days <= 0:
        return None
    rate = due_cents * terms.yearly_rate / DAYS_OF_YEAR
    cents = round_half_up(rate * days)
    if not cents or cents < terms.least_cents:
        return None
    return BillLine(
        key=f"{CODE}:{first.isoformat()}",
        code=CODE,
        name="",
        kind="charge",
        basis="per_day",
        animal=0,
        tag="",
        quantity=Fraction(days),
        unit="day",
        rate=None,
        rule="",
        amount_cents=cents,
        reason=f"{first.isoformat()}/{today.isoformat()}",
    )
