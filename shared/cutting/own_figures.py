"""The shop's own figures: what its carcasses made against what the table foretold.

The history's middle is the Hodges-Lehmann estimate (1963), the median of the means of all pairs:
one odd carcass in four leaves it standing. Whether the shop differs from the table by more than
chance is asked of Wilcoxon's signed-rank test, exact, two-sided, at the level of 1 in 20.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations_with_replacement
from math import isqrt

LEVEL = Fraction(1, 20)
TABLE_WEIGHT = 4  # our rule, no source: the table counts for as much as four carcasses cut here
LEAST_DIFFERENCE = Fraction(1, 50)  # our rule, no source: scales and rounding come to less
MOST_CARCASSES = 200  # the newest are kept: pairs grow with the square
NORMAL_SCATTER = Fraction("1.4826")  # a median deviation as a standard deviation
ONE_IN_TEN = Fraction("1.2816")
_FINE = 10_000


@dataclass(frozen=True, slots=True)
class Made:
    """What one carcass gave of a cut or part, beside what the table foretold; nanograms."""

    code: str
    expected_ng: int
    made_ng: int
    carcass_ng: int

    @property
    def ratio(self) -> Fraction:
        """Made over expected; 11 lb of 10 lb is 11/10."""
        return Fraction(self.made_ng, self.expected_ng)


@dataclass(frozen=True, slots=True)
class OwnFigure:
    """What to multiply the table's pounds by, and how it was come by.

    `shop` is the history alone, `scatter` its range either way, `chance` the probability that
    a shop like the table would differ as much; `differs` where that is below the level.
    """

    code: str
    carcasses: int
    factor: Fraction
    shop: Fraction
    scatter: Fraction
    chance: Fraction
    differs: bool

    @property
    def matters(self) -> bool:
        """It differs, and by enough to be worth telling: 0.999 of the table isn't, 1.12 is."""
        return self.differs and abs(self.shop - 1) >= LEAST_DIFFERENCE

    def narrowed(self, table_band: Fraction) -> Fraction:
        """The range, between the table's and the shop's own scatter by the count of carcasses.

        Worked number: a table's 30 % and a scatter of 6 % after 12 carcasses give
        (4 × 30 + 12 × 6) / 16 = 12 %.
        """
        total = TABLE_WEIGHT + self.carcasses
        mixed = (TABLE_WEIGHT * table_band + self.carcasses * self.scatter) / total
        return min(mixed, table_band)


def own_figures(made: Iterable[Made]) -> Mapping[str, OwnFigure]:
    """A figure for every code that at least one carcass was cut of.

    What was not foretold, or came out as nothing, isn't a figure of yield and is left out.
    """
    by_code: dict[str, list[Fraction]] = {}
    for one in made:
        if one.expected_ng > 0 and one.made_ng > 0:
            by_code.setdefault(one.code, []).append(one.ratio)
    return {code: _figure(code, ratios[-MOST_CARCASSES:]) for code, ratios in by_code.items()}


def hodges_lehmann(values: list[Fraction]) -> Fraction:
    """The median of the means of all pairs, each value with itself too.

    Worked number: 1, 2 and 9 have the means 1, 3/2, 2, 5, 11/2 and 9; their median is 7/2.
    """
    return _median([(a + b) / 2 for a, b in combinations_with_replacement(values, 2)])


def signed_rank_chance(values: list[Fraction], middle: Fraction = Fraction(1)) -> Fraction:
    """Two-sided probability, exact, that values around `middle` differ from it as much.

    Those equal to it say nothing; ties share their ranks. Ranks are doubled to stay whole.
    Worked number: five values all above it have 2 of 32 signs as extreme: 1/16.
    """
    apart = sorted((abs(one - middle), one > middle) for one in values if one != middle)
    if not apart:
        return Fraction(1)
    ranks = _doubled_ranks([size for size, _ in apart])
    above = sum(rank for rank, (_, up) in zip(ranks, apart, strict=True) if up)
    total = sum(ranks)
    ways = [1] + [0] * total
    for rank in ranks:
        for sum_ in range(total, rank - 1, -1):
            ways[sum_] += ways[sum_ - rank]
    least = min(above, total - above)
    return min(Fraction(1), Fraction(2 * sum(ways[: least + 1]), 2 ** len(ranks)))


def _figure(code: str, ratios: list[Fraction]) -> OwnFigure:
    """Worked number: twelve carcasses at 1.12 of the table: (4 × 1 + 12 × 1.12) / 16 = 1.09."""
    shop, count = hodges_lehmann(ratios), len(ratios)
    chance = signed_rank_chance(ratios)
    return OwnFigure(
        code=code,
        carcasses=count,
        factor=(TABLE_WEIGHT + count * shop) / (TABLE_WEIGHT + count),
        shop=shop,
        scatter=_scatter(ratios, shop, count),
        chance=chance,
        differs=chance < LEVEL,
    )


def _scatter(ratios: list[Fraction], shop: Fraction, count: int) -> Fraction:
    deviation = _median([abs(one - shop) for one in ratios])
    if count < 2:
        return Fraction(1)
    spread = ONE_IN_TEN * NORMAL_SCATTER * deviation / shop
    # a mean of few is itself unsure: times the root of 1 + 1/n
    widened = spread * spread * (1 + Fraction(1, count))
    return Fraction(isqrt(int(widened * _FINE * _FINE)), _FINE)


def _doubled_ranks(sizes: list[Fraction]) -> list[int]:
    ranks: list[int] = []
    place = 0
    while place < len(sizes):
        last = place
        while last + 1 < len(sizes) and sizes[last + 1] == sizes[place]:
            last += 1
        ranks += [place + last + 2] * (last - place + 1)
        place = last + 1
    return ranks


def _median(values: list[Fraction]) -> Fraction:
    ordered = sorted(values)
    half = len(ordered) // 2
    if len(ordered) % 2:
        return ordered[half]
    return (ordered[half - 1] + ordered[half]) / 2
