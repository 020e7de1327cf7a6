"""What is charged for: hanging weights of shares, and what was made of each order line.

Pounds are exact `Fraction`s, from the weights as weighed.
"""

from collections import Counter
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.billing.problems import BillingProblem
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.carcass.catalogue import Catalogue, Quarter
from shared.carcass.weights import side_weights
from shared.cutting.forecast import SPREAD, Forecast
from shared.cutting.order import Choice
from shared.shop.counted import CountedPackages, CountedWeight, weight_together
from shared.shop.holdings import animal_fraction
from shared.shop.lots import LotShare
from shared.shop.packages import PackageMade
from shared.units import NG_PER_LB

WeightKind = Literal["hot", "chilled"]
Pick = Literal["low", "mid", "high"]
WeightSource = Literal[
    "weighed", "half_of_whole", "by_table", "by_difference", "estimate", "waiting"
]


@dataclass(frozen=True, slots=True)
class HeldWeight:
    """What one holding weighs, in pounds, and where the figure comes from.

    "by_table": the side's weight × the shop's fore or hind share. "by_difference": the side less
    the other quarter. "half_of_whole": the carcass was weighed unsplit. pounds None waits.
    """

    carcass: int
    side: int
    quarter: Quarter
    fraction: Fraction
    pounds: Fraction | None
    source: WeightSource


@dataclass(frozen=True, slots=True)
class HangingWeights:
    """A share's hanging weights, holding by holding."""

    kind: WeightKind
    held: tuple[HeldWeight, ...]

    @property
    def pounds(self) -> Fraction | None:
        """All of it, or None while a weight is missing."""
        return _total(one.pounds for one in self.held)

    def of(self, carcass: int) -> Fraction | None:
        """What it has of one carcass, or None while a weight is missing."""
        return _total(one.pounds for one in self.held if one.carcass == carcass)

    @property
    def by_table(self) -> bool:
        """Whether a quarter's weight comes from the shop's fore and hind share."""
        return any(one.source == "by_table" for one in self.held)

    @property
    def estimated(self) -> bool:
        """Whether any of it is an estimate."""
        return any(one.source == "estimate" for one in self.held)


@dataclass(frozen=True, slots=True)
class ExpectedSides:
    """What the two sides of a carcass are expected to hang, in pounds; for a quote."""

    hot: tuple[Fraction, Fraction]
    chilled: tuple[Fraction, Fraction]


_Product = tuple[int, str, tuple[str, ...]]  # line, cut and finishes


@dataclass(frozen=True, slots=True)
class MadeLine:
    """What one order line has come to: packages, pounds finished, pounds that went in.

    `complete` says that nothing more of it is to come; until then a charge on it waits. `into`
    None was not weighed in. `estimated` figures come from the forecast. `counted` of the
    packages were wrapped by count: what is finished isn't known while there are any, but where
    they were `together` on the scale, which `finished` then holds.
    """

    line: int
    cut: str
    kind: str
    finishes: tuple[str, ...]
    packages: int
    finished: Fraction
    into: Fraction | None
    complete: bool
    estimated: bool = False
    counted: int = 0
    together: bool = False

    @property
    def not_weighed(self) -> bool:
        """Whether packages of it have no weight, not even together."""
        return self.counted > 0 and not self.together


def head_fraction(holdings: Sequence[Holding], carcass: int) -> Fraction:
    """What the holdings are of one animal by head: a side 1/2, a quarter 1/4, fore or hind."""
    return animal_fraction(LotShare(0, None, holdings=tuple(holdings)), carcass)


def hanging_weights(
    carcasses: Sequence[Carcass],
    holdings: Sequence[Holding],
    kind: WeightKind,
    fore_share: Fraction,
    expected: Sequence[ExpectedSides] = (),
) -> HangingWeights | BillingProblem:
    """The hanging weights of a share.

    A quarter is its own weight where it was weighed, else the side less the other quarter, else
    the side × the fore or hind share; fore and hind always add up to the side. Half of a 187.5-lb
    side cut together is 93.75 lb. `expected` fills in for what isn't weighed.
    "quarters_differ": a side was weighed whole and in quarters that don't add up to it.
    """
    held: list[HeldWeight] = []
    for holding in holdings:
        if not 0 <= holding.carcass < len(carcasses) or holding.side not in (1, 2):
            return BillingProblem("no_such_animal", {"animal": str(holding.carcass + 1)})
        carcass = carcasses[holding.carcass]
        guess = expected[holding.carcass] if holding.carcass < len(expected) else None
        found = _held(carcass, holding, kind, fore_share, guess)
        if isinstance(found, BillingProblem):
            return found
        pounds, source = found
        held.append(
            HeldWeight(
                holding.carcass,
                holding.side,
                holding.quarter,
                holding.fraction,
                None if pounds is None else pounds * holding.fraction,
                source,
            )
        )
    return HangingWeights(kind, tuple(held))


def expected_sides(carcass: Carcass, catalogue: Catalogue, pick: Pick = "mid") -> ExpectedSides:
    """What the carcass is expected to hang, from the best figure there is.

    The hot weight is the chilled one with the cooler's shrink put back: 98 lb at 2 % is 100 lb.
    Low and high are a tenth less and more, as the forecast's own, 90 and 110 lb; they aren't
    where the scale has weighed it.
    """
    weighed = carcass.hot_whole is not None or any(
        one is not None for side in carcass.hot for one in (side.whole, side.fore, side.hind)
    )
    spread = {"low": 1 - SPREAD, "mid": Fraction(1), "high": 1 + SPREAD}["mid" if weighed else pick]
    first, second = (
        Fraction(side.hanging_ng, NG_PER_LB) * spread for side in side_weights(carcass, catalogue)
    )
    kept = 1 - catalogue.ranges.shrink
    return ExpectedSides((first / kept, second / kept), (first, second))


def made_lines(
    choices: Iterable[Choice],
    catalogue: Catalogue,
    packages: Iterable[PackageMade],
    *,
    complete: bool,
    into: Mapping[int, Fraction] | None = None,
    counted: Iterable[CountedPackages] = (),
    weights: Sequence[CountedWeight] = (),
) -> tuple[MadeLine, ...]:
    """What was made of each line of one order, weighed and counted, void packages left out.

    Packages that stand on no line come at the end, one row for each cut and its finishes.
    `into` gives by line the pounds that were weighed in; `weights` what the counted packages of a
    line weigh together: 12 steaks in 6 counted packages of 9.4 lb in all and one weighed of 1.6
    are 11 lb.
    """
    weighed_in = into or {}
    rows, counts = _by_product(choices, packages, counted)
    together = _together(counts, weights)
    return tuple(
        MadeLine(
            line=line,
            cut=cut,
            kind=catalogue.cuts[cut].kind if cut in catalogue.cuts else "",
            finishes=done,
            packages=len(made) + counts[line, cut, done],
            finished=sum(
                (one.net.pounds for one in made), together.get((line, cut, done), Fraction(0))
            ),
            into=weighed_in.get(line),
            complete=complete,
            counted=counts[line, cut, done],
            together=(line, cut, done) in together,
        )
        for (line, cut, done), made in rows.items()
    )


def _by_product(
    choices: Iterable[Choice],
    packages: Iterable[PackageMade],
    counted: Iterable[CountedPackages],
) -> tuple[dict[_Product, list[PackageMade]], Counter[_Product]]:
    """The packages weighed, and how many were counted, of each line and what is on no line."""
    rows: dict[_Product, list[PackageMade]] = {
        (one.line, one.cut, one.finishes): [] for one in choices
    }
    finishes = {line: finishes for line, _, finishes in rows}
    for package in packages:
        if not package.void:
            key = package.line, package.cut, finishes.get(package.line, package.finishes)
            rows.setdefault(key, []).append(package)
    counts: Counter[_Product] = Counter()
    for count in counted:
        if not count.void:
            key = count.line, count.cut, finishes.get(count.line, count.finishes)
            rows.setdefault(key, [])
            counts[key] += count.packages
    return rows, counts


def _together(
    counts: Mapping[_Product, int], weights: Sequence[CountedWeight]
) -> dict[_Product, Fraction]:
    """The pounds of counted packages that were weighed together.

    A line whose cut was changed while it was counted has packages of two products: of those the
    one weight says nothing.
    """
    lines = Counter(line for line, _, _ in counts)
    found = {
        product: weight_together(product[0], count, weights)
        for product, count in counts.items()
        if lines[product[0]] == 1
    }
    return {product: one.net.pounds for product, one in found.items() if one is not None}


def expected_made(
    choices: Iterable[Choice],
    catalogue: Catalogue,
    forecast: Forecast,
    pick: Pick = "mid",
) -> tuple[MadeLine, ...]:
    """What is expected of each line of one order, for a quote; complete and marked estimated."""
    rows: list[MadeLine] = []
    for choice in choices:
        line = forecast.line(choice.line)
        if line is not None:
            finished, packages = line.finished, line.packages
            chosen = {
                "low": (finished.low, packages.low),
                "mid": (finished.mid, packages.mid),
                "high": (finished.high, packages.high),
            }[pick]
            rows.append(
                MadeLine(
                    line=choice.line,
                    cut=choice.cut,
                    kind=catalogue.cuts[choice.cut].kind,
                    finishes=choice.finishes,
                    packages=chosen[1],
                    finished=Fraction(chosen[0], NG_PER_LB),
                    into=Fraction(line.into_finish_ng, NG_PER_LB),
                    complete=True,
                    estimated=True,
                )
            )
    return tuple(rows)


def matching(
    made: Iterable[MadeLine],
    cuts: Collection[str],
    kinds: Collection[str],
    finishes: Collection[str],
) -> tuple[MadeLine, ...]:
    """The lines that are of one of the cuts, of one of the kinds and with one of the finishes."""
    return tuple(
        line
        for line in made
        if (not cuts or line.cut in cuts)
        and (not kinds or line.kind in kinds)
        and (not finishes or any(finish in finishes for finish in line.finishes))
    )


def _total(parts: Iterable[Fraction | None]) -> Fraction | None:
    total = Fraction(0)
    for part in parts:
        if part is None:
            return None
        total += part
    return total


def _held(
    carcass: Carcass,
    holding: Holding,
    kind: WeightKind,
    fore_share: Fraction,
    guess: ExpectedSides | None,
) -> tuple[Fraction | None, WeightSource] | BillingProblem:
    """What the whole side or quarter weighs that the holding is a fraction of."""
    place = holding.side - 1
    weights = (carcass.hot if kind == "hot" else carcass.chilled)[place]
    side = _side(carcass, weights, kind)
    if side is None and weights.fore is None and weights.hind is None and guess is not None:
        side = (guess.hot if kind == "hot" else guess.chilled)[place], "estimate"
    if side is not None and _disagree(weights, side[0]):
        data = {"tag": carcass.tag, "side": str(holding.side)}
        return BillingProblem("quarters_differ", data)
    if holding.quarter == "":
        return side or (None, "waiting")
    return _quarter(weights, side, holding.quarter, fore_share)


def _side(
    carcass: Carcass, weights: SideWeights, kind: WeightKind
) -> tuple[Fraction, WeightSource] | None:
    if weights.whole is not None:
        return weights.whole.pounds, "weighed"
    if weights.fore is not None and weights.hind is not None:
        return weights.fore.pounds + weights.hind.pounds, "weighed"
    if kind == "hot" and carcass.hot_whole is not None:
        return carcass.hot_whole.pounds / 2, "half_of_whole"
    return None


def _disagree(weights: SideWeights, side: Fraction) -> bool:
    quarters = [one.pounds for one in (weights.fore, weights.hind) if one is not None]
    return sum(quarters) > side or (len(quarters) == 2 and sum(quarters) != side)


def _quarter(
    weights: SideWeights,
    side: tuple[Fraction, WeightSource] | None,
    quarter: Quarter,
    fore_share: Fraction,
) -> tuple[Fraction | None, WeightSource]:
    own, other = (weights.fore, weights.hind) if quarter == "fore" else (weights.hind, weights.fore)
    if own is not None:
        return own.pounds, "weighed"
    if side is None:
        return None, "waiting"
    pounds, source = side
    if other is not None:
        return pounds - other.pounds, "by_difference"
    share = fore_share if quarter == "fore" else 1 - fore_share
    return pounds * share, "estimate" if source == "estimate" else "by_table"
