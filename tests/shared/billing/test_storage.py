"""Days of storage, all or working ones, and what a published rate makes of them."""

from datetime import date
from fractions import Fraction

from shared.billing.division import exact_amount
from shared.billing.rates import Charge, Step
from shared.billing.storage import days_stored

FRIDAY, MONDAY = date(2026, 3, 6), date(2026, 3, 16)


def test_days_from_the_one_after_it_was_ready() -> None:
    assert days_stored(FRIDAY, MONDAY) == 10
    assert days_stored(FRIDAY, FRIDAY) == 0
    assert days_stored(MONDAY, FRIDAY) == 0


def test_five_dollars_a_day_after_five_business_days() -> None:
    """Published: $5/day after 5 business days (trade reference 9.1, a plant's list)."""
    days = days_stored(FRIDAY, MONDAY, working_days=True)
    assert days == 6
    charge = Charge("storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),))
    assert exact_amount(charge, Fraction(days)) == 500
    closed = days_stored(FRIDAY, MONDAY, working_days=True, closed=[date(2026, 3, 9)])
    assert exact_amount(charge, Fraction(closed)) == 0
    assert days_stored(MONDAY, FRIDAY, working_days=True) == 0
