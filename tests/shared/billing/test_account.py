"""A customer's account of some days."""

from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.account import Account, Move, account_of

MAY, LAST = date(2026, 5, 1), date(2026, 5, 31)


def move(day: date, cents: int) -> Move:
    return Move(day, "bill" if cents > 0 else "payment", 1, 1, "", cents)


def test_a_month_opens_with_what_stood_before() -> None:
    """$100 in April, $60 paid and $25 billed in May: from $100 to $65; June isn't in it."""
    moves = [
        move(date(2026, 4, 20), 10_000),
        move(date(2026, 5, 9), 2_500),
        move(date(2026, 5, 2), -6_000),
        move(date(2026, 6, 1), 99_900),
    ]
    found = account_of(moves, MAY, LAST)
    assert (found.opening, found.charged, found.taken_off, found.closing) == (
        10_000,
        2_500,
        6_000,
        6_500,
    )
    assert [one.balance for one in found.lines] == [4_000, 6_500]


def test_without_a_move_it_closes_as_it_opened() -> None:
    assert account_of([], MAY, LAST) == Account(MAY, LAST, 0, ())
    assert account_of([move(date(2026, 4, 1), 500)], MAY, LAST).closing == 500


@given(st.lists(st.tuples(st.dates(date(2026, 1, 1), LAST), st.integers(-9_999, 9_999))))
def test_it_closes_with_all_there_is(moves: list[tuple[date, int]]) -> None:
    found = account_of([move(day, cents) for day, cents in moves], MAY, LAST)
    assert found.closing == sum(cents for _day, cents in moves)
    assert found.opening + found.charged - found.taken_off == found.closing
