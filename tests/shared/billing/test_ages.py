"""How old what is owed is: the oldest charges are paid first."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.ages import Aged, aged

TODAY = date(2026, 4, 15)


def test_the_worked_number() -> None:
    moves = [(date(2026, 3, 1), 10_000), (date(2026, 4, 10), 5_000), (date(2026, 4, 11), -6_000)]
    assert aged(moves, TODAY) == Aged(9_000, date(2026, 3, 1), (5_000, 4_000, 0, 0))


def test_the_limits_are_thirty_sixty_and_ninety_days() -> None:
    days = (30, 31, 60, 61, 90, 91)
    moves = [(TODAY - timedelta(days=back), 10**place) for place, back in enumerate(days)]
    assert aged(moves, TODAY).ages == (1, 110, 11_000, 100_000)


def test_nothing_owed_and_owed_to_the_customer() -> None:
    assert aged([(TODAY, 500), (TODAY, -500)], TODAY) == Aged(0, None, (0, 0, 0, 0))
    assert aged([(TODAY, 500), (TODAY, -700)], TODAY) == Aged(-200, None, (0, 0, 0, 0))


@given(st.lists(st.tuples(st.integers(0, 200), st.integers(-10_000, 10_000)), max_size=12))
def test_the_ages_add_up_to_what_is_owed(moves: list[tuple[int, int]]) -> None:
    found = aged([(TODAY - timedelta(days=back), cents) for back, cents in moves], TODAY)
    assert found.cents == sum(cents for _, cents in moves)
    assert sum(found.ages) == max(0, found.cents)
    assert (found.since is None) == (found.cents <= 0)
