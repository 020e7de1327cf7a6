"""Pounds and packages that an order will give, line by line, with a range.

Everything is read from the plan: the weight each line takes, less its cut's trimming, times the
yield of its finishes. Weights are whole nanograms, each figure rounded down once. The range is
how far published tables lie apart for such a cut, with what isn't known of the carcass's weight.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, isqrt

from shared.carcass.catalogue import Catalogue, Cut
from shared.carcass.spread import band
from shared.carcass.weights import weight_band
from shared.cutting.answer import Answer
from shared.cutting.breaking import package_of
from shared.cutting.order import Choice, Package, Question
from shared.cutting.own_figures import OwnFigure

SPREAD = Fraction(1, 10)  # common practice, no source: a hanging weight nobody has weighed yet
NOBODYS: Mapping[str, OwnFigure] = {}
_FINE = 10_000


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
    cure, smoke or grinder, `by_table_ng` the finished weight before the shop's own figures and the
    carcass's grade.
    """

    line: int
    share: int
    cut: str
    pieces: int
    taken_ng: int
    into_finish_ng: int
    finished: Range
    packages: Range
    by_table_ng: int = 0


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
        """One owner's pounds into packages; what one line falls short another mostly has over."""
        return _sum(one.finished for one in self.of_share(share))

    def packages(self, share: int) -> Range:
        """One owner's packages, every line at its least and most, as a quote by the package is."""
        lines = [one.packages for one in self.of_share(share)]
        return Range(
            sum(one.low for one in lines),
            sum(one.mid for one in lines),
            sum(one.high for one in lines),
        )


def forecast(
    question: Question,
    answer: Answer,
    catalogue: Catalogue,
    own: Mapping[str, OwnFigure] = NOBODYS,
    graded: Fraction = Fraction(1),
) -> Forecast:
    """Pounds and packages of every line; `own` are the shop's figures by cut, where it has any.

    `graded` is what the carcass's grade multiplies its meat by (`shared.carcass.grades`).

    Worked number: a 20-lb belly with 10 % trimming, cured, smoked and sliced at a yield of 9/10
    gives 20 × 9/10 × 9/10 = 16.2 lb of bacon; at 1 lb a package 17 packages.
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
    loose = max(weight_band(carcass, catalogue) for carcass in question.carcasses)
    lines = [
        _line(
            choices[line],
            loose,
            catalogue,
            taken[line],
            into[line],
            pieces.get(line, 0),
            own,
            graded,
        )
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


def range_band(cut: Cut, carcass_band: Fraction, own: OwnFigure | None = None) -> Fraction:
    """How far a line's pounds may lie either way: the cut's own range and the carcass's, squared.

    Worked number: 27 % for a roast and 6 % for a hog known by live weight are
    √(0.27² + 0.06²) = 27.7 %.
    """
    of_cut = band(cut.kind)
    if own is not None:
        of_cut = own.narrowed(of_cut)
    square = of_cut * of_cut + carcass_band * carcass_band
    return min(Fraction(isqrt(int(square * _FINE * _FINE)), _FINE), Fraction(9, 10))


def _line(
    choice: Choice,
    loose: Fraction,
    catalogue: Catalogue,
    taken: int,
    into: int,
    pieces: int,
    own: Mapping[str, OwnFigure],
    graded: Fraction,
) -> LineForecast:
    cut, figure = catalogue.cuts[choice.cut], own.get(choice.cut)
    middle = by_table = into * finish_yield(choice, catalogue)
    if cut.kind not in ("fat", "bones", "offal"):
        middle *= graded
    if figure is not None:
        middle *= figure.factor
    spread = range_band(cut, loose, figure)
    finished = Range(int(middle * (1 - spread)), int(middle), int(middle * (1 + spread)))
    open_count = choice.amount.kind in ("rest", "all", "fraction")
    package = package_of(choice, cut)
    return LineForecast(
        line=choice.line,
        share=choice.share,
        cut=choice.cut,
        pieces=pieces,
        taken_ng=taken,
        into_finish_ng=into,
        finished=finished,
        packages=_packages(package, pieces, finished, counted=not open_count),
        by_table_ng=int(by_table),
    )


def _packages(package: Package, pieces: int, finished: Range, *, counted: bool) -> Range:
    if not finished.high:  # the rest of nothing goes into no package
        return Range(0, 0, 0)
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
    # slices come of length, whose own range is a tenth at the most
    low, high = int(pieces * (1 - SPREAD)), ceil(pieces * (1 + SPREAD))
    return Range(
        max(1, ceil(Fraction(low, each))),
        ceil(Fraction(pieces, each)),
        ceil(Fraction(high, each)),
    )


def _sum(ranges: Iterable[Range]) -> Range:
    """Lines together: what they may lack or have over adds up as squares do.

    Worked number: 10 lb, 3 either way, and 20 lb, 4 either way, are 30 lb, 5 either way.
    """
    mid = below = above = 0
    for one in ranges:
        mid += one.mid
        below += (one.mid - one.low) ** 2
        above += (one.high - one.mid) ** 2
    return Range(mid - isqrt(below), mid, mid + isqrt(above))
