"""Freezer space: the span between farm pages' figures, checked by hand."""

from fractions import Fraction

from shared.cutting.freezer_space import freezer_space
from shared.units import NG_PER_LB


def test_half_a_hog_needs_two_to_four_cubic_feet() -> None:
    # 73 lb at 40 lb a cubic foot is 1.825, 89 lb at 25 is 3.56: common practice, no better source
    assert freezer_space(73 * NG_PER_LB, 89 * NG_PER_LB) == (2, 4)


def test_a_whole_foot_stays_a_whole_foot() -> None:
    assert freezer_space(40 * NG_PER_LB, 25 * NG_PER_LB) == (1, 1)


def test_a_little_more_is_half_a_foot_more() -> None:
    assert freezer_space(40 * NG_PER_LB + 1, 26 * NG_PER_LB) == (Fraction(3, 2), Fraction(3, 2))


def test_nothing_needs_nothing() -> None:
    assert freezer_space(0, 0) == (0, 0)
