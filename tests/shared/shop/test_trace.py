"""How long records are kept."""

from datetime import date

import pytest

from shared.shop.trace import kept_until, may_go_before


# 9 CFR 320.3(a): two years after December 31 of the year in which the transaction occurred.
@pytest.mark.parametrize(
    ("day", "last"),
    [
        (date(2026, 1, 1), date(2028, 12, 31)),
        (date(2026, 12, 31), date(2028, 12, 31)),
        (date(2024, 2, 29), date(2026, 12, 31)),
    ],
)
def test_records_are_kept_two_years_after_their_year(day: date, last: date) -> None:
    assert kept_until(day) == last


@pytest.mark.parametrize("today", [date(2026, 1, 1), date(2026, 11, 25), date(2026, 12, 31)])
def test_the_first_day_to_keep_is_the_first_whose_term_has_not_ended(today: date) -> None:
    first = may_go_before(today)
    assert kept_until(first) >= today
    assert kept_until(date(first.year - 1, 12, 31)) < today
