"""What plan lines take of parts: exact fractions, and whole nanograms of expected weight."""

from bisect import bisect_right
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from shared.carcass.catalogue import Part
from shared.cutting.answer import PlanLine, Taken
from shared.cutting.capacity import ALL, Animal, Interval, Side
from shared.cutting.demand import Demand
from shared.cutting.run_packing import Piece
from shared.cutting.take import Option, Strip
from shared.cutting.ways import WayPlan, Ways


@lru_cache(maxsize=1 << 14)
def ratio(above: int, below: int) -> Fraction:
    """A fraction, `ALL` where it is all; the plan asks for the same ones over and over."""
    return ALL if above == below else Fraction(above, below)


@lru_cache(maxsize=1 << 14)
def _taken(part: str, above: int, below: int) -> Taken:
    return Taken(part, ratio(above, below))


class Segment(NamedTuple):
    """Neighbouring pieces of one line on one strip, so many by `number`."""

    strip: Strip
    piece: Piece
    start: int
    number: int

    @property
    def end(self) -> int:
        """Where the last piece ends."""
        return self.start + self.number * (self.piece.size + self.piece.kerf) - self.piece.kerf


class Parts:
    """Parts taken by one plan line: fractions and weight, rounded down once for each part."""

    __slots__ = ("_animal", "_both", "_places", "_scenario", "found", "weight")

    def __init__(self, option: Option, ways: Ways, scenario: int) -> None:
        """Nothing yet of the option's animal, at some lengths."""
        self._animal: Animal = option.animal
        self._both = len(option.held) == 2
        self._places = ways.at
        self._scenario = scenario
        self.found: dict[str, tuple[int, int]] = {}
        self.weight = 0

    def add(self, part: Part, above: int, below: int, side: Side | None) -> None:
        """Take above/below of a part of a side, or of the animal where side is None."""
        code, found = part.code, self.found
        whole = self._animal.part_ng(part) if side is None else side.weights[code]
        self.weight += whole if above == below else whole * above // below
        if self._both and side is not None:
            below *= 2
        before = found.get(code)
        if before is not None:
            above, below = above * before[1] + before[0] * below, below * before[1]
        found[code] = (above, below)

    def add_segment(self, one: Segment) -> None:
        """Take what a segment covers of each lane."""
        strip, lanes, start, end = one.strip, one.piece.lanes, one.start, one.end
        if one.number == 1:
            self.add_block(strip, lanes, start, end)
            return
        side = self._animal.sides[strip[1] - 1]
        bounds, places = side.bounds[self._scenario][strip[2]], self._places[strip[2]]
        for place in range(max(0, bisect_right(bounds, start) - 1), len(places)):
            lo, hi = bounds[place], bounds[place + 1]
            if lo >= end:
                break
            length = covered(one, hi) - covered(one, lo)
            if length:
                for bit, part in places[place]:
                    if bit & lanes:
                        self.add(part, length, hi - lo, side)

    def add_block(self, strip: Strip, lanes: int, start: int, end: int) -> None:
        """Take all that lies between two points of some lanes."""
        side = self._animal.sides[strip[1] - 1]
        bounds, places = side.bounds[self._scenario][strip[2]], self._places[strip[2]]
        for part, length, whole in _between(bounds, places, lanes, start, end):
            self.add(part, length, whole, side)

    def taken(self) -> tuple[tuple[Taken, ...], int]:
        """The parts in the order they were met, and their weight."""
        found = [_taken(code, *fraction) for code, fraction in self.found.items()]
        return tuple(found), self.weight


def _between(
    bounds: tuple[int, ...],
    places: tuple[tuple[tuple[int, Part], ...], ...],
    lanes: int,
    start: int,
    end: int,
) -> list[tuple[Part, int, int]]:
    """The parts between two points of some lanes: what length of each, of how much in all."""
    found: list[tuple[Part, int, int]] = []
    for place in range(max(0, bisect_right(bounds, start) - 1), len(places)):
        lo, hi = bounds[place], bounds[place + 1]
        if lo >= end:
            break
        length = (hi if hi < end else end) - (lo if lo > start else start)
        for bit, part in places[place] if length > 0 else ():
            if bit & lanes:
                found.append((part, length, hi - lo))
    return found


def taken_between(
    side: Side, run: int, lanes: int, between: Interval, scenario: int, ways: Ways
) -> tuple[tuple[Taken, ...], int]:
    """All that lies between two points of some lanes of a run, and its weight.

    A part lies on one stretch of one lane, so that it is met once at most.
    """
    weights = side.weights
    found: list[Taken] = []
    weight = 0
    for part, length, of in _between(side.bounds[scenario][run], ways.at[run], lanes, *between):
        code, whole = part.code, weights[part.code]
        if length == of:
            weight += whole
            found.append(_taken(code, 1, 1))
        else:
            weight += whole * length // of
            found.append(_taken(code, length, of))
    return tuple(found), weight


def covered(one: Segment, point: int) -> int:
    """How much of a segment's pieces lies before a point, kerfs left out.

    Worked number: of slices of 3 with kerfs of 1 from 0 on, 5 lie before point 6.
    """
    size, step = one.piece.size, one.piece.size + one.piece.kerf
    reach = point - one.start
    if reach <= 0:
        return 0
    whole, over = divmod(reach, max(1, step))
    if whole >= one.number:
        return one.number * size
    return whole * size + min(over, size)


def side_of(option: Option, number: int) -> Side | None:
    """The side of that number of the option's animal; None for 0, which is no one side."""
    return None if number == 0 else option.animal.sides[number - 1]


def line(
    demand: Demand,
    option: Option,
    plan: WayPlan,
    count: int,
    parts: tuple[tuple[Taken, ...], int],
    start: int | None,
    end: int | None,
    size: int | None,
) -> PlanLine:
    """One plan line; `parts` are what it takes of each, and what that weighs."""
    taken, weight = parts
    return PlanLine(
        demand.choice.line,
        demand.choice.share,
        demand.choice.cut,
        plan.way.code,
        option.carcass,
        option.side,
        count,
        taken,
        weight,
        start,
        end,
        size,
    )
