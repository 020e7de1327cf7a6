"""Days of storage, all or working ones, and what a published rate makes of them."""

from datetime import date
from fractions import Fraction

from shared.billing.division import exact_amount
from shared.billing.rates import Charge, Step
from shared.billing.storage import days_stored, nth_day

FRIDAY, MONDAY = date(2026, 3, 6), date(2026, 3, 16)


def test_days_from_the_one_after_it_was_ready() -> None:
    assert days_stored(FRIDAY, MONDAY) == 10
    assert days_stored(FRIDAY, FRIDAY) == 0
    assert days_stored(MONDAY, FRIDAY) == 0


def test_five_dollars_a_day_after_five_business_days() -> None:
    """Published: $5/day after 5 business days (trade reference 9.1, a plant's list)."""
    days = days_stored(FRIDAY, MONDAY, "weekdays")
    assert days == 6
    charge = Charge("storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),))
    assert exact_amount(charge, Fraction(days)) == 500
    closed = days_stored(FRIDAY, MONDAY, "weekdays", [date(2026, 3, 9)])
    assert exact_amount(charge, Fraction(closed)) == 0
    assert days_stored(MONDAY, FRIDAY, "weekdays") == 0


def test_a_shop_open_on_saturdays_counts_them_and_no_closed_day() -> None:
    """Saturdays 7 and 14 March count, Sundays don't: 6, 9 to 14, 16 March are eight."""
    assert days_stored(FRIDAY, MONDAY, "six_days") == 8
    assert days_stored(FRIDAY, MONDAY, "six_days", [date(2026, 3, 7), date(2026, 3, 8)]) == 7


def test_where_every_day_counts_closed_days_do_too() -> None:
    assert days_stored(FRIDAY, MONDAY, "every_day", [date(2026, 3, 9)]) == 10


def test_the_day_that_is_counted_as_the_sixth() -> None:
    assert nth_day(FRIDAY, 6) == date(2026, 3, 12)
    assert nth_day(FRIDAY, 6, "weekdays") == MONDAY
    assert nth_day(FRIDAY, 6, "weekdays", [date(2026, 3, 9)]) == date(2026, 3, 17)
    for which in ("every_day", "weekdays", "six_days"):
        for number in range(1, 15):
            assert days_stored(FRIDAY, nth_day(FRIDAY, number, which), which) == number
