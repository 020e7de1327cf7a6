"""Pounds and packages that an order will give, line by line, with a range.

Everything is read from the plan: the weight each line takes, less its cut's trimming, times the
yield of its finishes. Weights are whole nanograms, each figure rounded down once.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from shared.carcass.catalogue import Catalogue, Cut
from shared.cutting.answer import Answer
from shared.cutting.breaking import package_of
from shared.cutting.order import Choice, Package, Question

SPREAD = Fraction(1, 10)  # common practice, no source: one carcass differs a tenth from the table


@dataclass(frozen=True, slots=True)
class Range:
    """A figure with what it may be at least and at most; nanograms or packages."""

    low: int
    mid: int
    high: int


@dataclass(frozen=True, slots=True)
class LineForecast:
    """One choice: pieces or slices, weight into the package and packages.

    `taken_ng` is the weight before trimming and finish, `into_finish_ng` what goes into the
    cure, smoke or grinder.
    """

    line: int
    share: int
    cut: str
    pieces: int
    taken_ng: int
    into_finish_ng: int
    finished: Range
    packages: Range


@dataclass(frozen=True, slots=True)
class Forecast:
    """The forecast of each line the plan makes something of, in line order."""

    lines: tuple[LineForecast, ...]

    def line(self, number: int) -> LineForecast | None:
        """The forecast of one line, or None where the plan made nothing of it."""
        for one in self.lines:
            if one.line == number:
                return one
        return None

    def of_share(self, share: int) -> tuple[LineForecast, ...]:
        """One owner's lines."""
        return tuple(one for one in self.lines if one.share == share)

    def finished(self, share: int) -> Range:
        """One owner's pounds into packages."""
        return _sum(one.finished for one in self.of_share(share))

    def packages(self, share: int) -> Range:
        """One owner's packages."""
        return _sum(one.packages for one in self.of_share(share))


def forecast(question: Question, answer: Answer, catalogue: Catalogue) -> Forecast:
    """Pounds and packages of every line.

    Worked number: a 20-lb belly with 10 % trimming, cured, smoked and sliced at a yield of 9/10
    gives 20 × 9/10 × 9/10 = 16.2 lb of bacon; at 1 lb a package 17 packages, 15 to 18.
    """
    choices = {choice.line: choice for choice in question.choices}
    taken: dict[int, int] = {}
    pieces: dict[int, int] = {}
    into: dict[int, int] = {}
    for made in answer.lines:
        cut = catalogue.cuts[made.cut]
        if cut.kind == "to_trim":
            continue
        taken[made.line] = taken.get(made.line, 0) + made.weight_ng
        pieces[made.line] = pieces.get(made.line, 0) + _pieces(made.side, made.count, cut)
    for line, weight in taken.items():
        into[line] = int(weight * kept(catalogue.cuts[choices[line].cut]))
    for draw in answer.draws:
        taken[draw.line] = taken.get(draw.line, 0) + draw.weight_ng
        into[draw.line] = into.get(draw.line, 0) + draw.weight_ng
    lines = [
        _line(choices[line], catalogue, taken[line], into[line], pieces.get(line, 0))
        for line in sorted(taken)
    ]
    return Forecast(tuple(lines))


def kept(cut: Cut) -> Fraction:
    """What of the weight taken stays in the cut after its trimming, as a fraction."""
    trim = cut.trimming
    return 1 - trim.lean - trim.fat - trim.bone - trim.skin - trim.loss


def finish_yield(choice: Choice, catalogue: Catalogue) -> Fraction:
    """Finished weight over weight in, all finishes of the choice together."""
    whole = Fraction(1)
    for code in choice.finishes:
        whole *= catalogue.finishes[code].yield_
    return whole


def _pieces(side: int, count: int, cut: Cut) -> int:
    both = side == 0 and any(way.sides != "one" for way in cut.ways)
    return max(count, 1) if both else count


def _line(choice: Choice, catalogue: Catalogue, taken: int, into: int, pieces: int) -> LineForecast:
    cut = catalogue.cuts[choice.cut]
    middle = into * finish_yield(choice, catalogue)
    finished = Range(int(middle * (1 - SPREAD)), int(middle), int(middle * (1 + SPREAD)))
    open_count = choice.amount.kind in ("rest", "all", "fraction")
    return LineForecast(
        line=choice.line,
        share=choice.share,
        cut=choice.cut,
        pieces=pieces,
        taken_ng=taken,
        into_finish_ng=into,
        finished=finished,
        packages=_packages(package_of(choice, cut), pieces, finished, counted=not open_count),
    )


def _packages(package: Package, pieces: int, finished: Range, *, counted: bool) -> Range:
    if package.weight is not None:
        each = package.weight.nanograms
        return Range(
            max(1, ceil(Fraction(finished.low, each))),
            max(1, ceil(Fraction(finished.mid, each))),
            max(1, ceil(Fraction(finished.high, each))),
        )
    each = package.pieces or 1
    if counted or pieces <= 1:
        count = max(1, ceil(Fraction(pieces, each)))
        return Range(count, count, count)
    low, high = int(pieces * (1 - SPREAD)), ceil(pieces * (1 + SPREAD))
    return Range(
        max(1, ceil(Fraction(low, each))),
        ceil(Fraction(pieces, each)),
        ceil(Fraction(high, each)),
    )


def _sum(ranges: Iterable[Range]) -> Range:
    low = mid = high = 0
    for one in ranges:
        low, mid, high = low + one.low, mid + one.mid, high + one.high
    return Range(low, mid, high)
