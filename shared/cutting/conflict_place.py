"""Where lines that can't stand together meet, with what each takes there and what is there.

A place is a part off the runs, or a lane of a run from one stretch to another, added over the
sides the lines may use. What a line *must* take there whatever its way counts first; where that
explains nothing, what it takes in its first way.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import NamedTuple

from shared.cutting.answer import Where
from shared.cutting.capacity import EXPECTED, MOST, Animal
from shared.cutting.demand import Demand
from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import Piece
from shared.cutting.take import Option, Strip, Take
from shared.cutting.ways import Ways

Reach = tuple[int, int, int, int]  # run, lane, first and last stretch
OnLanes = dict[tuple[int, int], list[tuple[Strip, Piece]]]  # by run and lane
Taker = list[tuple[int, list[Sequence[tuple[Strip, Piece]]]]]  # by row, its need and its options
Takers = dict[tuple[int, int], dict[int, Taker]]  # by run and lane, and by line
Cells = tuple[str, int, int]  # part or run, share and lane, on all sides


@dataclass(slots=True)
class Place:
    """Somewhere lines meet. `must`: by line, whatever the way; `may`: in the first way there.

    All are whole numbers: lengths, or so many of a part's `unit` equal pieces. `spare` is the
    kerf that the last piece on each side needs no more.
    """

    kind: str
    where: Where
    expected: int
    most: int
    span: int = 0
    unit: int = 1
    spare: int = 0
    must: dict[int, int] = field(default_factory=lambda: {})
    may: dict[int, int] = field(default_factory=lambda: {})
    last_kerfs: dict[int, int] = field(default_factory=lambda: {})

    def explains(self) -> bool:
        """Whether what the lines must take is more than there can be."""
        return sum(self.must.values()) - self.spare > self.most

    @property
    def asked(self) -> int:
        """What the lines take here together."""
        amounts = self.must if self.explains() else self.may
        return max(0, sum(amounts.values()) - self.spare)

    def amounts(self) -> tuple[tuple[int, Fraction], ...]:
        """What each line takes here on its own."""
        amounts = self.must if self.explains() else self.may
        return tuple(
            (line, Fraction(amount - self.last_kerfs.get(line, 0), self.unit))
            for line, amount in sorted(amounts.items())
            if amount
        )

    def rank(self) -> tuple[bool, bool, int, int, Fraction | int]:
        """The clearest is greatest: it explains, most lines meet there, and it is short."""
        explains = self.explains()
        amounts = self.must if explains else self.may
        asked = max(0, sum(amounts.values()) - self.spare)
        lines = sum(map(bool, amounts.values()))
        much = asked if self.unit == 1 else Fraction(asked, self.unit)
        return explains, asked > self.most, lines, -self.span, much


def places(lines: Sequence[Demand], ways: Ways) -> Iterator[Place]:
    """Every place where one of the lines takes something."""
    yield from _parts(lines, ways)
    lanes = _Lanes(lines, ways)
    for reach in lanes.reaches:
        yield lanes.place(reach)


def clearest(lines: Sequence[Demand], ways: Ways) -> Place | None:
    """The place that is most clearly overfull, the first of those that are alike.

    Where several lines must take too much together no place of one of them alone is clearer.
    """
    lanes, parts = _Lanes(lines, ways), [*_parts(lines, ways)]
    shared = {reach: lanes.place(reach) for reach in lanes.reaches if lanes.is_shared(reach)}
    best = max([*parts, *shared.values()], key=Place.rank, default=None)
    if best is not None and best.explains() and sum(map(bool, best.must.values())) > 1:
        return best
    every = [shared.get(reach) or lanes.place(reach) for reach in lanes.reaches]
    return max([*parts, *every], key=Place.rank, default=None)


def _options(lines: Sequence[Demand], ways: Ways) -> Iterator[tuple[Option, Take]]:
    for one in lines:
        for row in one.rows:
            for option in row.options:
                take = option.take(EXPECTED, ways)
                if isinstance(take, Take):
                    yield option, take


def _parts(lines: Sequence[Demand], ways: Ways) -> Iterator[Place]:
    """Parts off the runs, and split shares' accounts of parts and lanes."""
    cells: dict[Cells, dict[tuple[int, int], int]] = {}
    unit = 1
    for option, take in _options(lines, ways):
        for (carcass, side, code, share, lane), _, there in take.cells:
            cells.setdefault((code, share, lane), {})[carcass, side] = there
            unit = option.wanted.denominator
    if not cells:
        return
    taken = [[_of_cells(option, ways) for option in _all(one)] for one in lines]
    for (code, share, lane), sides in cells.items():
        there = sum(sides.values())
        (carcass, side), many = next(iter(sides)), len(sides) > 1
        where = (
            Where(carcass, 0 if many else side, run=code)
            if lane
            else Where(carcass, 0 if many else side, part=code)
        )
        of_unit = 1 if lane else unit
        place = Place("length" if lane else "share", where, there, there, unit=of_unit)
        for one, mine in zip(lines, taken, strict=True):
            _add(place, one, [amounts.get((code, share, lane), 0) for amounts in mine])
        if not lane:
            place.kind = _part_kind(place, all(side == 0 for _, side in sides))
        yield place


def _part_kind(place: Place, of_the_animal: bool) -> str:
    if of_the_animal:
        return "single"
    return "whole" if all(one % place.unit == 0 for one in place.may.values()) else "share"


def _all(one: Demand) -> list[Option]:
    return [option for row in one.rows for option in row.options]


def _of_cells(option: Option, ways: Ways) -> dict[Cells, int]:
    """What one unit takes of each part or account, on all sides together."""
    take = option.take(EXPECTED, ways)
    found: dict[Cells, int] = {}
    if isinstance(take, Take):
        for (_, _, code, share, lane), amount, _ in take.cells:
            key = code, share, lane
            found[key] = found.get(key, 0) + amount
    return found


def _add(place: Place, one: Demand, amounts: Sequence[int]) -> None:
    """Add a line: what it must take over all its rows, and what it takes where it first can."""
    must = may = start = 0
    for row in one.rows:
        mine = amounts[start : start + len(row.options)]
        start += len(row.options)
        must += row.need * min(mine, default=0)
        may += row.need * next((amount for amount in mine if amount), 0)
    place.must[one.choice.line] = must
    place.may[one.choice.line] = may


class _Bounds(NamedTuple):
    """The borders of a strip's stretches at two lengths."""

    expected: tuple[int, ...]
    most: tuple[int, ...]


class _Lanes:
    """Stretches of lanes the lines' pieces may lie on, from each line's first to its last.

    Of lanes that every piece takes together, eye and bone of a chop, the first stands for all.
    """

    def __init__(self, lines: Sequence[Demand], ways: Ways) -> None:
        self.reaches: dict[Reach, None] = {}
        self._ways = ways
        self._strips: dict[int, dict[Strip, _Bounds]] = {}
        self._takers: Takers = {}
        self._pieces = 0
        touching: dict[tuple[int, int], list[int]] = {}
        pieces: dict[tuple[Strip, Piece], Animal] = {}
        for one in lines:
            mine = [
                [self._by_lane(option, pieces, touching) for option in row.options]
                for row in one.rows
            ]
            for lane in {lane: None for row in mine for option in row for lane in option}:
                self._takers.setdefault(lane, {})[one.choice.line] = [
                    (row.need, [option.get(lane, ()) for option in options])
                    for row, options in zip(one.rows, mine, strict=True)
                    if options
                ]
        first_of = _first_of_alike(touching)
        for (strip, piece), animal in pieces.items():
            run = strip[2]
            bounds = self._bounds(strip, animal)
            lanes = [bit for bit in bits_of(piece.lanes) if (run, bit) in first_of]
            for first, last in ranges(piece, bounds.expected):
                for bit in lanes:
                    self.reaches[run, bit, first, last] = None
        self._sawn = {
            one.choice.line: one.options[0].wanted.kerf for one in lines if _is_sawn(one, ways)
        }

    def _by_lane(
        self,
        option: Option,
        pieces: dict[tuple[Strip, Piece], Animal],
        touching: dict[tuple[int, int], list[int]],
    ) -> OnLanes:
        """What one unit takes on runs, by run and lane, as far as it may lie anywhere.

        Its pieces are added to those there are, and as what touches each lane.
        """
        take = option.take(EXPECTED, self._ways)
        found: OnLanes = {}
        for one in take.pieces if isinstance(take, Take) else ():
            pieces.setdefault(one, option.animal)
            (_, _, run), piece = one
            self._pieces += 1
            for bit in bits_of(piece.lanes):
                touching.setdefault((run, bit), []).append(self._pieces)
                if piece.allowed:
                    found.setdefault((run, bit), []).append(one)
        return found

    def _bounds(self, strip: Strip, animal: Animal) -> _Bounds:
        """The borders of a strip's stretches."""
        strips = self._strips.setdefault(strip[2], {})
        if strip not in strips:
            bounds = animal.sides[strip[1] - 1].bounds
            strips[strip] = _Bounds(bounds[EXPECTED][strip[2]], bounds[MOST][strip[2]])
        return strips[strip]

    def is_shared(self, reach: Reach) -> bool:
        """Whether several lines have pieces in its lane."""
        return len(self._takers.get(reach[:2], ())) > 1

    def place(self, reach: Reach) -> Place:
        """One reach with what each line takes of it."""
        run, lane, first, last = reach
        strips = self._strips[run]
        ends: dict[Strip, tuple[int, int]] = {
            strip: (one.expected[first], one.expected[last + 1]) for strip, one in strips.items()
        }
        taken: set[Strip] = set()
        must: dict[int, int] = {}
        may: dict[int, int] = {}
        for line, rows in self._takers.get((run, lane), {}).items():
            must[line] = may[line] = 0
            for need, options in rows:
                mine = [_of_lane(pieces, ends, taken) for pieces in options]
                must[line] += need * min(mine)
                may[line] += need * next((amount for amount in mine if amount), 0)
        used = [strip for strip in strips if strip in taken] or list(strips)
        there = most = 0
        for strip in used:
            there += ends[strip][1] - ends[strip][0]
            most += strips[strip].most[last + 1] - strips[strip].most[first]
        place = Place("length", _where(reach, used, self._ways), there, most, last - first)
        place.must, place.may = must, may
        place.last_kerfs = {line: kerf * len(used) for line, kerf in self._sawn.items()}
        place.spare = max(place.last_kerfs.values(), default=0)
        return place


def _first_of_alike(touching: Mapping[tuple[int, int], Sequence[int]]) -> set[tuple[int, int]]:
    """Runs and lanes, but of those that the same pieces touch only the first."""
    first: dict[tuple[int, ...], tuple[int, int]] = {}
    for lane, mine in touching.items():
        first.setdefault(tuple(mine), lane)
    return {*first.values()}


def ranges(piece: Piece, bounds: Sequence[int]) -> Iterator[tuple[int, int]]:
    """First and last stretch a piece may lie on, and each stretch of a fixed one.

    Worked number: of stretches of 5, 4 and 6 in, between 5 and 10 in lie the second and third.
    """
    if not piece.allowed:
        return
    lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
    first, last = bisect_right(bounds, lo) - 1, bisect_left(bounds, hi, 0, len(bounds) - 1) - 1
    if first > last:
        return
    yield first, last
    if hi - lo == piece.size:
        for place in range(first, last + 1):
            yield place, place


def _where(reach: Reach, used: Sequence[Strip], ways: Ways) -> Where:
    run, lane, first, last = reach
    stretches = ways.runs[run].stretches
    part = next((one.code for bit, one in ways.at[run][first] if bit == lane), "")
    return Where(
        used[0][0],
        used[0][1] if len(used) == 1 else 0,
        run=ways.runs[run].code,
        stretch=stretches[first].code,
        lane=ways.lane_names(run, lane)[0],
        part=part if first == last else "",
        last=stretches[last].code if first != last else "",
    )


def _is_sawn(one: Demand, ways: Ways) -> bool:
    """Whether its pieces have a kerf of their own."""
    take = one.options[0].take(EXPECTED, ways)
    return isinstance(take, Take) and any(piece.kerf for _, piece in take.pieces)


def _of_lane(
    pieces: Sequence[tuple[Strip, Piece]], ends: dict[Strip, tuple[int, int]], taken: set[Strip]
) -> int:
    """What one unit takes of a reach: pieces that can lie nowhere else, and overlaps of fixed.

    The strips where it takes something are added to `taken`.
    """
    total = 0
    for strip, piece in pieces:
        start, end = ends[strip]
        lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
        if hi - lo == piece.size:
            mine = max(0, min(hi, end) - max(lo, start))
        else:
            mine = piece.size + piece.kerf if start <= lo and hi <= end else 0
        if mine:
            total += mine
            taken.add(strip)
    return total
