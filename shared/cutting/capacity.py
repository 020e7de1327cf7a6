"""What hangs there in whole numbers: lengths of each side, what is gone, and who holds what.

Three sets of lengths are kept for a side: sure, expected and most. Positions run from the head
end of a run, in 1/203,200 in.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction
from math import lcm
from typing import NamedTuple

from shared.carcass import thirty_months
from shared.carcass.carcass import Carcass, Gone, Share
from shared.carcass.catalogue import Part, Quarter, Run
from shared.carcass.weights import side_weights
from shared.cutting.order import Question, Settings
from shared.cutting.ways import Ways
from shared.units import SIXTY_FOURTH, scaled_length

SURE, EXPECTED, MOST = 0, 1, 2
SCENARIOS = (SURE, EXPECTED, MOST)
Interval = tuple[int, int]
NOTHING, ALL, HALF = Fraction(0), Fraction(1), Fraction(1, 2)


@dataclass(slots=True)
class Side:
    """One side of a carcass. `number` is 1 or 2, `carcass` counts from 0.

    `bounds[scenario][run]` are the stretch borders. `blocked[run][stretch]` is a mask of lanes
    nothing may be cut from; `lost` says why, by part: "gone", "srm" or "skin". `trimmed` are
    nanograms cut away of a part that is still there, `weights` what is left of each part.
    `reckoned` is memory, by what is held of the side.
    """

    carcass: int
    number: int
    weight_ng: int
    bounds: tuple[tuple[tuple[int, ...], ...], ...]
    blocked: dict[int, dict[int, int]]
    lost: dict[str, str]
    trimmed: dict[str, int]
    weights: dict[str, int] = field(default_factory=lambda: {})
    reckoned: dict[object, "Reckoned"] = field(default_factory=lambda: {})

    def part_ng(self, part: Part) -> int:
        """Expected weight of a part that comes one to a side: its share, less what is gone."""
        return self.weights[part.code]


@dataclass(slots=True)
class Animal:
    """One carcass: its two sides, and its parts that come one to an animal.

    `rooms` are the fractions its owners may have of parts they share, by share and part.
    """

    number: int
    carcass: Carcass
    sides: tuple[Side, Side]
    weight_ng: int
    lost: dict[str, str]
    trimmed: dict[str, int]
    rooms: dict[tuple[int, str], Fraction] = field(default_factory=lambda: {})

    def part_ng(self, part: Part) -> int:
        """Expected weight of a part that comes one to an animal."""
        if part.code in self.lost and self.lost[part.code] == "gone":
            return 0
        whole = self.weight_ng * part.share.numerator // part.share.denominator
        return max(0, whole - self.trimmed.get(part.code, 0))


@dataclass(slots=True)
class Held:
    """What one share holds of one side.

    `fractions` by quarter, "" being what lies in neither. `whole`: all of the side. `split`:
    something is held in part only. `of_animal` is what of the animal this is: a side is half of
    it, a quarter half of a side. `uniform`: the same fraction of everything. `turn`: whose turn it
    is where a side is divided evenly, and this share's `place` among them. `quarters` are those
    something is held of. The rest is memory.
    """

    side: Side
    fractions: dict[str, Fraction]
    whole: bool
    split: bool
    of_animal: Fraction
    uniform: bool
    turn: "Turn | None" = None
    place: int = 0
    quarters: frozenset[str] = frozenset()
    known: "Reckoned" = field(default_factory=lambda: Reckoned())
    turns: dict[tuple[int, int, int, int, int], int] = field(default_factory=lambda: {})

    def fraction(self, quarter: Quarter) -> Fraction:
        """The fraction held of what lies in that quarter."""
        return self.fractions[quarter]


@dataclass(slots=True)
class Reckoned:
    """What was reckoned for one way of holding a side; all who hold it so share it.

    `windows` by run take and lengths, `weighed` their ends and weight by run take, `accounts` by
    run, lane and lengths.
    """

    windows: dict[int, "Window | None"] = field(default_factory=lambda: {})
    weighed: dict[int, tuple[int, int, Fraction]] = field(default_factory=lambda: {})
    accounts: dict[tuple[int, int, int], int] = field(default_factory=lambda: {})


def held_of(side: Side, parts: list[tuple[Quarter, Fraction]]) -> Held:
    """What several holdings of one side are together."""
    of_side, of_quarters, fractions = _fractions(parts)
    whole = of_side >= 1
    split = not whole and any(part < 1 for _, part in parts)
    of_animal = min(of_side / 2 + of_quarters / 4, HALF) if of_quarters else min(of_side, ALL) / 2
    uniform = not of_quarters
    quarters = frozenset([name for name, part in fractions.items() if part])
    alike = (whole, *fractions.values())
    known = side.reckoned.setdefault(alike, Reckoned())
    return Held(side, fractions, whole, split, of_animal, uniform, quarters=quarters, known=known)


def _fractions(
    parts: list[tuple[Quarter, Fraction]],
) -> tuple[Fraction, Fraction, dict[str, Fraction]]:
    """What is held of the side as such, of quarters in all, and of what lies in each quarter."""
    if len(parts) == 1:
        name, part = parts[0]
        most = part if part < 1 else ALL
        if not name:
            return part, NOTHING, {"": most, "fore": most, "hind": most}
        return NOTHING, part, {"": NOTHING, "fore": NOTHING, "hind": NOTHING, name: most}
    of_side = sum([part for name, part in parts if not name], NOTHING)
    of_quarters = sum([part for name, part in parts if name], NOTHING)
    found = {"": min(of_side, ALL)}
    for quarter in ("fore", "hind"):
        mine = sum([part for name, part in parts if name == quarter], of_side)
        found[quarter] = min(mine, ALL)
    return of_side, of_quarters, found


def animals(question: Question, ways: Ways) -> tuple[Animal, ...]:
    """Compile every carcass of the question."""
    return tuple(
        _animal(number, carcass, question.settings, ways)
        for number, carcass in enumerate(question.carcasses)
    )


def holdings(share: Share, question: Question, herd: tuple[Animal, ...]) -> tuple[Held, ...]:
    """What a share holds, by carcass and side; shares that are led count with their leader."""
    found: dict[tuple[int, int], list[tuple[Quarter, Fraction]]] = {}
    for one in question.shares:
        if one.number == share.number or one.leader == share.number:
            for held in one.holdings:
                found.setdefault((held.carcass, held.side), []).append(
                    (held.quarter, held.fraction)
                )
    return tuple(
        [
            held_of(herd[carcass].sides[side - 1], parts)
            for (carcass, side), parts in sorted(found.items())
        ]
    )


def owners(question: Question, herd: tuple[Animal, ...]) -> dict[int, tuple[Held, ...]]:
    """What every share holds, and whose turn it is where a side is divided evenly."""
    held = {share.number: holdings(share, question, herd) for share in question.shares}
    sides: dict[tuple[int, int], list[Held]] = {}
    for share in sorted(question.shares, key=lambda one: one.number):
        for one in held[share.number] if share.leader is None else ():
            sides.setdefault((one.side.carcass, one.side.number), []).append(one)
    for mine in sides.values():
        if len(mine) > 1 and all(one.split and one.uniform for one in mine):
            turn = in_turn([one.fractions[""] for one in mine])
            for place, one in enumerate(mine):
                one.turn, one.place = turn, place
    return held


class Turn(NamedTuple):
    """Owners who have pieces of one side in turn: each one's part in `whole`, by share number."""

    parts: tuple[int, ...]
    whole: int

    def dealt(self, count: int, place: int) -> int:
        """How many of so many pieces an owner gets: whole ones, then the odd ones in turn.

        Worked numbers: 15 slices of two halves are 8 and 7; 17 of three thirds are 6, 6 and 5.
        """
        whole = self.whole
        each = [count * part // whole for part in self.parts]
        return each[place] + (place < count * sum(self.parts) // whole - sum(each))


def in_turn(fractions: Iterable[Fraction]) -> Turn:
    """The turn of owners who hold these fractions, by share number."""
    parts = list(fractions)
    whole = lcm(*[part.denominator for part in parts])
    return Turn(tuple([part.numerator * (whole // part.denominator) for part in parts]), whole)


def by_carcass(
    held: dict[int, tuple[Held, ...]],
) -> dict[int, list[tuple[int, list[Held]]]]:
    """What each share holds, carcass by carcass."""
    found: dict[int, list[tuple[int, list[Held]]]] = {}
    for share, mine in held.items():
        carcasses: dict[int, list[Held]] = {}
        for one in mine:
            carcasses.setdefault(one.side.carcass, []).append(one)
        found[share] = list(carcasses.items())
    return found


def _animal(number: int, carcass: Carcass, settings: Settings, ways: Ways) -> Animal:
    catalogue = ways.catalogue
    first, second = side_weights(carcass, catalogue)
    own = dict(settings.own_lengths)
    bound = _bound(carcass, settings, ways)
    sides = (
        _side(number, carcass, 1, first.nanograms, own, bound, ways),
        _side(number, carcass, 2, second.nanograms, own, bound, ways),
    )
    animal = Animal(number, carcass, sides, first.nanograms + second.nanograms, {}, {})
    if carcass.condemned:
        animal.lost = {it.code: "gone" for it in catalogue.parts.values() if it.per == "animal"}
        return animal
    for part in ways.bound_parts:
        if part.per == "animal" and part.code in bound:
            animal.lost[part.code] = bound[part.code]
    for gone in carcass.gone:
        part = catalogue.parts.get(gone.part)
        if part is not None and part.per == "animal":
            _take_away(animal, part, gone)
    return animal


def _bound(carcass: Carcass, settings: Settings, ways: Ways) -> dict[str, str]:
    """Parts nobody may have: vertebrae from 30 months on, and skin where it was pulled."""
    old = thirty_months.counts_as_over(carcass.age, settings.at_block)
    bound: dict[str, str] = {}
    for part in ways.bound_parts:
        if part.srm_from_30_months and old:
            bound[part.code] = "srm"
        elif part.needs_skin and carcass.skin == "skinned":
            bound[part.code] = "skin"
    return bound


def _side(
    carcass_number: int,
    carcass: Carcass,
    number: int,
    weight_ng: int,
    own: dict[str, int],
    bound: dict[str, str],
    ways: Ways,
) -> Side:
    measured = {one.stretch: one.length for one in carcass.measured if one.side == number}
    bounds = _bounds(ways, weight_ng, own, measured)
    side = Side(carcass_number, number, weight_ng, bounds, {}, {}, {})
    for part in ways.bound_parts:
        if part.code in bound and part.per == "side":
            side.lost[part.code] = bound[part.code]
    for gone in carcass.gone:
        part = ways.catalogue.parts.get(gone.part)
        if part is not None and part.per == "side" and gone.side == number:
            _take_away(side, part, gone)
    if carcass.condemned:
        side.lost = {it.code: "gone" for it in ways.catalogue.parts.values() if it.per == "side"}
    side.weights = _weights(side, ways)
    for code in side.lost:
        part = ways.catalogue.parts[code]
        if part.run:
            run = ways.run_place[part.run]
            on_run = ways.runs[run]
            stretches = side.blocked.setdefault(run, {})
            place = on_run.place(part.stretch)
            stretches[place] = stretches.get(place, 0) | 1 << on_run.lanes.index(part.lane)
    return side


def _weights(side: Side, ways: Ways) -> dict[str, int]:
    """Expected weight of each part of a side: its share, less what is gone."""
    weight = side.weight_ng
    found = {code: weight * above // below for code, above, below in ways.of_side}
    for code, trimmed in side.trimmed.items():
        found[code] = max(0, found[code] - trimmed)
    for code, why in side.lost.items():
        if why == "gone":
            found[code] = 0
    return found


def _take_away(owner: Side | Animal, part: Part, gone: Gone) -> None:
    if gone.weight is None:
        owner.lost[part.code] = "gone"
        return
    owner.trimmed[part.code] = owner.trimmed.get(part.code, 0) + gone.weight.nanograms
    whole = owner.weight_ng * part.share.numerator // part.share.denominator
    if owner.trimmed[part.code] >= whole:
        owner.lost[part.code] = "gone"


def _bounds(
    ways: Ways, weight_ng: int, own: dict[str, int], measured: dict[str, int]
) -> tuple[tuple[tuple[int, ...], ...], ...]:
    reference = ways.catalogue.reference_side_ng
    by_run = [_run_bounds(run, weight_ng, reference, own, measured) for run in ways.runs]
    return (
        tuple(one[0] for one in by_run),
        tuple(one[1] for one in by_run),
        tuple(one[2] for one in by_run),
    )


def _run_bounds(
    run: Run, weight_ng: int, reference_ng: int, own: dict[str, int], measured: dict[str, int]
) -> tuple[tuple[int, ...], tuple[int, ...], tuple[int, ...]]:
    sure, expected, most = [0], [0], [0]
    for stretch in run.stretches:
        if stretch.code in measured:
            low = length = high = measured[stretch.code]
        else:
            reference = own.get(stretch.code, stretch.length)
            length = scaled_length(reference, weight_ng, reference_ng)
            above, below = stretch.band.numerator, stretch.band.denominator
            low = _sixty_fourths(length * (below - above), below)
            high = _sixty_fourths(length * (below + above), below)
        sure.append(sure[-1] + low)
        expected.append(expected[-1] + length)
        most.append(most[-1] + high)
    return tuple(sure), tuple(expected), tuple(most)


def _sixty_fourths(above: int, below: int) -> int:
    return above // (below * SIXTY_FOURTH) * SIXTY_FOURTH


class Window(NamedTuple):
    """Where a run take may lie on one side: from `lo` to `hi`, within `allowed` only.

    `first` and `last` are the stretches held of it; `lost` is why something of it is missing
    ("gone", "srm", "skin" or ""), `lost_part` which part.
    """

    lo: int
    hi: int
    first: int
    last: int
    allowed: tuple[Interval, ...]
    lost: str = ""
    lost_part: str = ""
