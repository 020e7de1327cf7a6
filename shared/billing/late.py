"""Interest on what is paid late, if the shop wants it: simple interest, billed like any charge.

An issued bill never changes, so interest stands on a bill of its own, with its last day in the
line's key: the same days are never billed twice. Local law bounds such rates; the shop sets its own
and asks somebody who knows.
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

from shared.billing.bill import Bill, BillLine
from shared.billing.rates import LateTerms
from shared.money import round_half_up

DAYS_OF_YEAR = 365
CODE = "late_interest"


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
    if not terms.yearly_rate:
        return None
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
        key=f"{CODE}:{today.isoformat()}",
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
        reason=f"{first.isoformat()}/{today.isoformat()}/{due_cents}/{terms.yearly_rate}",
    )


def still_due(bills: Iterable[tuple[date, int]], taken: int) -> tuple[tuple[date, int], ...]:
    """What is left of bills after money taken, which goes to the oldest first.

    $100 of 1 March and $50 of 10 April with $120 taken: $30 of 10 April.
    """
    found: list[tuple[date, int]] = []
    for day, cents in sorted(bills):
        used = min(cents, max(0, taken))
        taken -= used
        if cents > used:
            found.append((day, cents - used))
    return tuple(found)


def late_lines(
    bills: Iterable[tuple[date, int]],
    taken: int,
    today: date,
    terms: LateTerms,
    *,
    billed_until: date | None = None,
) -> tuple[BillLine, ...]:
    """Interest on each bill that is late, a line each; `bills` are without earlier interest.

    So interest never bears interest. Money taken counts against the bills before it counts
    against interest, and days before it came in aren't charged on it any more: both favour the
    customer. The least amount is looked at line by line.
    """
    found = [
        late_interest(cents, day, today, terms, billed_until=billed_until)
        for day, cents in still_due(bills, taken)
    ]
    lines = [one for one in found if one is not None]
    return tuple(
        one if not at else replace(one, key=f"{one.key}:{at + 1}") for at, one in enumerate(lines)
    )


def billed_until(keys: Iterable[str]) -> date | None:
    """The last day that interest was billed for, from the keys of an order's billed lines.

    {"kill:1", "late_interest:2026-04-30"} is 30 April 2026.
    """
    days = [key.split(":")[1] for key in keys if key.startswith(f"{CODE}:")]
    return max((date.fromisoformat(day) for day in days), default=None)


def late_bill(last: Bill, *lines: BillLine) -> Bill:
    """A bill of the interest alone, to the payer of the bill that is late."""
    return replace(last, lines=lines, paid=(), cautions=(), estimate=False)
