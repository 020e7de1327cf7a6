"""Interest on late payment: simple, on days counted once."""

from datetime import date, timedelta
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.billing.bill import make_bill
from shared.billing.late import (
    billed_until,
    late_bill,
    late_interest,
    late_lines,
    still_due,
)
from shared.billing.rates import Charge, LateTerms, check_terms
from tests.shared.billing.lots import HALVES, good, hung, lot_of

TERMS = LateTerms(30, Fraction(12, 100))
MARCH = date(2026, 3, 1)
KILL = Charge("kill", "per_head", Fraction(200_000))


def test_the_worked_number() -> None:
    """100,000 × 0.12 × 30 / 365 = 986.30."""
    line = late_interest(100_000, MARCH, date(2026, 4, 30), TERMS)
    assert line is not None
    assert (line.amount_cents, line.quantity, line.unit) == (986, 30, "day")
    assert (line.key, line.reason) == (
        "late_interest:2026-04-30",
        "2026-03-31/2026-04-30/100000/3/25",
    )


def test_nothing_is_charged_within_the_free_days_or_for_nothing() -> None:
    assert late_interest(100_000, MARCH, date(2026, 3, 31), TERMS) is None
    assert late_interest(0, MARCH, date(2026, 6, 30), TERMS) is None
    assert late_interest(100_000, MARCH, date(2026, 6, 30), LateTerms()) is None
    small = LateTerms(0, Fraction(1, 10), least_cents=50)
    assert late_interest(1_000, MARCH, date(2026, 4, 1), small) is None


@pytest.mark.parametrize(
    ("terms", "code"),
    [
        (LateTerms(30, Fraction(-1, 100)), "rate_negative"),
        (LateTerms(30, Fraction(1, 2)), "rate_absurd"),
        (LateTerms(-1, Fraction(1, 10)), "days_negative"),
    ],
)
def test_absurd_terms_are_said(terms: LateTerms, code: str) -> None:
    assert [one.code for one in check_terms(terms)] == [code]
    assert check_terms(TERMS) == ()


@given(st.integers(1, 10**8), st.integers(1, 200), st.integers(1, 200))
def test_billed_in_two_pieces_it_is_the_same_to_a_cent(due: int, first: int, more: int) -> None:
    terms = LateTerms(0, Fraction(9, 100))
    middle = MARCH + timedelta(days=first)
    end = middle + timedelta(days=more)
    one = late_interest(due, MARCH, middle, terms)
    two = late_interest(due, MARCH, end, terms, billed_until=middle)
    whole = late_interest(due, MARCH, end, terms)
    sums = sum(line.amount_cents for line in (one, two) if line is not None)
    assert abs(sums - (whole.amount_cents if whole else 0)) <= 1
    assert one is None or billed_until([one.key, "kill:1"]) == middle


def test_interest_is_a_bill_of_its_own() -> None:
    bill = good(make_bill(lot_of(hung("350", "350"), HALVES, KILL), 1))
    line = late_interest(bill.total_cents, MARCH, date(2026, 4, 30), TERMS)
    assert line is not None
    late = late_bill(bill, line)
    assert (late.owner, late.total_cents, late.lines) == (bill.owner, line.amount_cents, (line,))
    assert billed_until(["kill:1"]) is None


def test_money_goes_to_the_oldest_bill_first() -> None:
    bills = [(date(2026, 4, 10), 5_000), (MARCH, 10_000)]
    assert still_due(bills, 12_000) == ((date(2026, 4, 10), 3_000),)
    assert still_due(bills, 15_000) == ()
    assert still_due(bills, -100) == ((MARCH, 10_000), (date(2026, 4, 10), 5_000))


def test_every_late_bill_has_its_own_days_and_none_is_charged_twice() -> None:
    bills = [(MARCH, 100_000), (date(2026, 3, 21), 50_000), (date(2026, 4, 25), 9_000)]
    first = late_lines(bills, 0, date(2026, 4, 30), TERMS)
    assert [(one.amount_cents, one.quantity) for one in first] == [(986, 30), (164, 10)]
    keys = [one.key for one in first]
    assert keys == ["late_interest:2026-04-30", "late_interest:2026-04-30:2"]
    assert billed_until(keys) == date(2026, 4, 30)
    assert late_lines(bills, 0, date(2026, 4, 30), TERMS, billed_until=billed_until(keys)) == ()
    more = late_lines(bills, 0, date(2026, 5, 30), TERMS, billed_until=billed_until(keys))
    assert [one.quantity for one in more] == [30, 30, 5]
