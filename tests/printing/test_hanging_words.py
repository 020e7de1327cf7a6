"""Pounds on the note of a share's hanging weight: two halves told are the side told."""

from fractions import Fraction

import pytest

from printing.hanging_words import pounds_told


@pytest.mark.parametrize(
    ("pounds", "told"),
    [("198.125", "198.125"), ("396.25", "396.25"), ("99.0625", "99.0625"), ("100/3", "33.33")],
)
def test_shares_are_told_so_that_they_add_up(pounds: str, told: str) -> None:
    assert pounds_told(Fraction(pounds)) == f"{told}\u00a0lb"
