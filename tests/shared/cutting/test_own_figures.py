"""The shop's own figures against the statistics they are named after.

Python's `statistics` module is the independent judge of medians; the signed-rank chances are
those of the printed table of Wilcoxon (1945): n = 8, rank sum 3, two-sided 0.039; 4, 0.055.
"""

from fractions import Fraction
from itertools import combinations_with_replacement, product
from statistics import median

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.cutting.own_figures import (
    Made,
    OwnFigure,
    hodges_lehmann,
    own_figures,
    signed_rank_chance,
)

LB = 453_592_370_000
ratios = st.lists(st.fractions(Fraction(1, 2), 2, max_denominator=50), min_size=1, max_size=9)


def made(code: str, *hundredths: int) -> list[Made]:
    return [Made(code, 100 * LB, one * LB, 800 * LB) for one in hundredths]


@given(ratios)
def test_hodges_lehmann_is_the_median_of_pair_means(values: list[Fraction]) -> None:
    means = [(a + b) / 2 for a, b in combinations_with_replacement(values, 2)]
    assert hodges_lehmann(values) == median(means)


@pytest.mark.parametrize(("low_rank", "printed"), [(3, "0.0391"), (4, "0.0547"), (0, "0.0078")])
def test_chances_are_those_of_wilcoxons_table(low_rank: int, printed: str) -> None:
    """Eight carcasses apart by 1 to 8 hundredths, one of them (or none) below."""
    values = [Fraction(100 + size * (-1 if size == low_rank else 1), 100) for size in range(1, 9)]
    assert abs(signed_rank_chance(values) - Fraction(printed)) < Fraction(1, 10_000)


@given(ratios)
def test_chances_are_those_of_all_signs_counted_out(values: list[Fraction]) -> None:
    apart = [abs(one - 1) for one in values if one != 1]
    if not apart:
        assert signed_rank_chance(values) == 1
        return
    ordered = sorted(apart)
    rank = {it: Fraction(2 * ordered.index(it) + ordered.count(it) + 1, 2) for it in ordered}
    total = sum((rank[it] for it in apart), Fraction(0))
    above = sum((rank[abs(one - 1)] for one in values if one > 1), Fraction(0))
    least = min(above, total - above)
    sums = [
        sum((rank[it] for it, up in zip(apart, signs, strict=True) if up), Fraction(0))
        for signs in product((True, False), repeat=len(apart))
    ]
    expected = Fraction(2 * sum(one <= least for one in sums), len(sums))
    assert signed_rank_chance(values) == min(1, expected)


def test_the_table_counts_for_four_carcasses() -> None:
    found = own_figures(made("bacon", *[112] * 12))["bacon"]
    assert (found.carcasses, found.shop) == (12, Fraction("1.12"))
    assert found.factor == (4 + 12 * Fraction("1.12")) / 16
    assert found.differs
    assert found.chance == Fraction(2, 2**12)


def test_one_odd_carcass_moves_nothing() -> None:
    usual = own_figures(made("bacon", 98, 100, 101, 99, 102, 100, 103))["bacon"]
    odd = own_figures(made("bacon", 98, 100, 101, 99, 102, 100, 300))["bacon"]
    assert abs(odd.shop - usual.shop) < Fraction(2, 100)
    assert sum((98, 100, 101, 99, 102, 100, 300)) / 700 > 1.28  # what a mean would have said
    assert not usual.differs
    assert not odd.differs


def test_too_few_carcasses_never_differ_by_more_than_chance() -> None:
    """Five all above have 2 of 32 signs as extreme: 6.25 %, above 5 %; six have 2 of 64."""
    assert own_figures(made("bacon", *[150] * 5))["bacon"].chance == Fraction(1, 16)
    assert not own_figures(made("bacon", *[150] * 5))["bacon"].differs
    assert own_figures(made("bacon", *[150] * 6))["bacon"].differs


def test_the_range_narrows_with_the_count_and_never_widens() -> None:
    table = Fraction(30, 100)
    bands = [
        own_figures(made("bacon", *[97, 100, 103, 99, 101, 100] * n))["bacon"].narrowed(table)
        for n in (1, 2, 4, 8)
    ]
    assert bands == sorted(bands, reverse=True)
    assert bands[-1] < Fraction(10, 100)
    assert own_figures(made("bacon", 90))["bacon"].narrowed(table) == table
    told = OwnFigure("bacon", 12, Fraction(1), Fraction(1), Fraction("0.06"), Fraction(1), False)
    assert told.narrowed(table) == Fraction("0.12")


def test_what_was_not_foretold_is_no_figure() -> None:
    assert own_figures([Made("bacon", 0, LB, LB), Made("bacon", LB, 0, LB)]) == {}
