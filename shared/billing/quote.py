"""A quote: what an order will be billed by the same rules, before the kill, as a range.

The bill is made three times, with the low, the middle and the high figures of the forecast and of
what the animal is expected to hang; what is weighed or made already is taken as it is.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from shared.billing.bill import Bill, BillLine, make_bill
from shared.billing.lot import Asked, BilledLot, billed_lot, with_extras
from shared.billing.problems import BillingProblem
from shared.billing.quantities import Pick
from shared.billing.rates import RateCard
from shared.carcass.catalogue import Catalogue
from shared.cutting.forecast import Forecast
from shared.cutting.order import Question

PICKS: tuple[Pick, ...] = ("low", "mid", "high")


@dataclass(frozen=True, slots=True)
class QuotedLine:
    """One line as it will most likely be, and its cents at least and at most."""

    line: BillLine
    low_cents: int
    high_cents: int


@dataclass(frozen=True, slots=True)
class Quote:
    """What one share will be billed: the middle as an estimate, and the range of its total."""

    bill: Bill
    lines: tuple[QuotedLine, ...]
    low_cents: int
    high_cents: int


def make_quote(
    question: Question,
    catalogue: Catalogue,
    cards: Mapping[int, RateCard],
    forecast: Forecast,
    share: int,
    *,
    asked: Sequence[Asked] = (),
    fore_share: Fraction | None = None,
) -> Quote | BillingProblem:
    """The quote of one share, marked as an estimate.

    A hog expected to hang 180 lb at $0.85 a pound and $60.00 for the kill is $213.00, at least
    162 lb or $197.70 and at most 198 lb or $228.30. Problems as those of the bill.
    """
    bills: list[Bill] = []
    for pick in PICKS:
        lot = billed_lot(
            question, catalogue, cards, forecast=forecast, pick=pick, fore_share=fore_share
        )
        if isinstance(lot, BillingProblem):
            return lot
        bill = quoted_bill(lot, share, asked)
        if isinstance(bill, BillingProblem):
            return bill
        bills.append(bill)
    return range_of(bills[0], bills[1], bills[2])


def quoted_bill(lot: BilledLot, share: int, asked: Sequence[Asked]) -> Bill | BillingProblem:
    """The bill of one share of an expected lot, marked as an estimate."""
    made = make_bill(with_extras(lot, share, asked=asked) if asked else lot, share)
    return made if isinstance(made, BillingProblem) else replace(made, estimate=True)


def range_of(low: Bill, middle: Bill, high: Bill) -> Quote:
    """The three bills of one share beside each other, line by line."""
    every = (low, middle, high)
    lines: list[QuotedLine] = []
    for line in middle.lines:
        found = [one.line(line.key) for one in every]
        cents = [one.amount_cents + one.tax_cents for one in found if one is not None]
        lines.append(QuotedLine(line, min(cents), max(cents)))
    totals = [one.total_cents for one in every]
    return Quote(middle, tuple(lines), min(totals), max(totals))
