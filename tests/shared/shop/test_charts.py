"""Ticks of an axis are round, begin at nothing and reach the highest bar; stacks add up."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.shop.charts import Chart, Series, ticks


@pytest.mark.parametrize(
    ("most", "expected"),
    [
        (1830, [0, 500, 1000, 1500, 2000]),
        (3, [0, 1, 2, 3]),
        (5, [0, 1, 2, 3, 4, 5]),
        (100, [0, 20, 40, 60, 80, 100]),
        (0, [0, 1]),
    ],
)
def test_ticks_are_round(most: int, expected: list[int]) -> None:
    assert list(ticks(Fraction(most))) == expected


@given(st.fractions(min_value=Fraction(1, 1000), max_value=10**9), st.integers(3, 13))
def test_ticks_reach_the_highest_and_waste_little(most: Fraction, at_most: int) -> None:
    found = ticks(most, at_most)
    step = found[1]
    assert found[0] == 0
    assert found[-2] < most <= found[-1]
    assert len(found) <= at_most
    while step >= 10:
        step /= 10
    while step < 1:
        step *= 10
    assert step in (1, 2, 5)


def test_a_stack_is_as_high_as_its_parts_and_bars_side_by_side_as_the_highest() -> None:
    series = (Series("a", (Fraction(2), None)), Series("b", (Fraction(3), Fraction(1))))
    assert Chart("", ("x", "y"), series, stacked=True).most == 5
    assert Chart("", ("x", "y"), series).most == 3
    assert Chart("", ("x",), (Series("a", (None,)),)).empty
