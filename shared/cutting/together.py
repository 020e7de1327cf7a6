"""Sums over all sides at once: lines that are too much for all the places they may lie in.

A `Region` is a set of lanes of strips, each from one point to another, or of cells. What one unit
of an option takes of it at least, wherever its pieces come to lie, times the units that find room
nowhere else, can't be more than what is there. Sound, never complete: False says nothing.
"""

from collections.abc import Iterable, Iterator, Sequence
from operator import add, mul
from typing import TYPE_CHECKING, NamedTuple

from shared.cutting.lanes import bits_of

if TYPE_CHECKING:
    from shared.cutting.judge import Left
    from shared.cutting.problem import Part, Problem, State
    from shared.cutting.run_packing import Piece

Window = tuple[int, int]
Lanes = dict[tuple[int, int], Window]  # by packing and lane
_Name = tuple[frozenset[tuple[tuple[int, int], Window]], frozenset[int]]


class Region(NamedTuple):
    """A set of lanes or of cells, what is there, and what takes of it.

    `there` holds the last kerf of each lane, which may fall outside. `by_kind` are packings with
    what one piece of each kind takes at least, `by_row` what one unit of a row takes on each of
    its options, with the options in order of that, as far as it was asked for.
    """

    there: int
    by_kind: dict[int, list[int]]
    cells: frozenset[int]
    by_row: dict[int, tuple[tuple[int, int], ...]]

    def taken(self, counts: "Sequence[Sequence[int]]", used: "Sequence[int]") -> int:
        """What so many pieces of each kind, by packing, and amounts of cells take of it."""
        found = sum([used[cell] for cell in self.cells])
        for packing, takes in self.by_kind.items():
            found += sum(map(mul, counts[packing], takes))
        return found


class Sums:
    """The regions of one problem, whatever it asks of each row; each as it is first needed."""

    def __init__(self, given: "Problem") -> None:
        """Nothing is added up yet."""
        self._given = given
        self._kinds = [packing.kinds for packing in given.packings]
        self._different = _different(self._kinds)
        self._stretches = _Stretches(given.there, self._kinds)
        self._regions: list[Region] = []
        self._numbers: dict[_Name, int] = {}
        self._of_rows: dict[int, set[int]] = {}

    def overfull(
        self,
        state: "State",
        rows: "Iterable[Left]",
        rooms: "Sequence[Sequence[int]] | None" = None,
    ) -> bool:
        """Whether rows can't be met beside a state, as some region is too short for them.

        `rooms` are how many units of each row find room on each of its options from the first
        on, on their own; as many as are asked where not given.

        Worked number: 5 chops of 1 in and 4 of 2 in on two sides of 6 in take 13 of 12 in.
        """
        asked = list(zip(rows, rooms, strict=True)) if rooms else [(one, None) for one in rows]
        meant: set[int] = set()
        for one, _ in asked:
            meant |= self._of_row(one.row)
        return any(self._too_short(self._regions[number], state, asked) for number in meant)

    def _too_short(
        self,
        region: Region,
        state: "State",
        asked: "Sequence[tuple[Left, Sequence[int] | None]]",
    ) -> bool:
        left = region.there - region.taken(state.counts, state.used)
        for (row, need, first), mine in asked:
            takes = region.by_row.get(row)
            if takes is None:
                takes = region.by_row[row] = _takes_of(self._given.rows[row][1], region)
            if takes:
                left -= _least(need, first, takes, mine)
        return left < 0

    def regions(self, rows: "Iterable[int]") -> "list[Region]":
        """All regions some rows may lie in, and every cell they take of."""
        meant: dict[int, None] = {}
        for row in rows:
            meant |= dict.fromkeys(self._of_row(row))
            for part in self._given.rows[row][1]:
                for cell, _ in part.cells:
                    meant[self._number({}, frozenset((cell,)))] = None
        return [self._regions[number] for number in meant]

    def _of_row(self, row: int) -> set[int]:
        """The numbers of the regions that come from where this row may lie."""
        known = self._of_rows.get(row)
        if known is None:
            known = self._of_rows[row] = set()
            parts = self._given.rows[row][1]
            for reach in _reaches(self._kinds, parts, self._different):
                known.add(self._number(reach, frozenset()))
                known.add(self._number(self._stretches.widened(reach), frozenset()))
            for cells in _cells(parts):
                known.add(self._number({}, cells))
        return known

    def _number(self, lanes: Lanes, cells: frozenset[int]) -> int:
        name = frozenset(lanes.items()), cells
        number = self._numbers.get(name)
        if number is None:
            number = self._numbers[name] = len(self._regions)
            self._regions.append(self._stretches.region(lanes, cells))
        return number


def _cells(parts: "Sequence[Part]") -> Iterator[frozenset[int]]:
    """The cells a row's units take of: all of them, and the first of each option."""
    taken = [[cell for cell, amount in part.cells if amount] for part in parts]
    cells = frozenset([cell for mine in taken for cell in mine])
    if cells:
        yield cells
        yield frozenset([mine[0] for mine in taken if mine])


def _takes_of(parts: "Sequence[Part]", region: Region) -> tuple[tuple[int, int], ...]:
    """What one unit takes on each option, and the option, the least first; nothing: none."""
    found: list[tuple[int, int]] = []
    for at, (pieces, cells, cap) in enumerate(parts):
        if cap:
            take = 0
            for packing, kind in pieces:
                if packing in region.by_kind:
                    take += region.by_kind[packing][kind]
            for cell, amount in cells:
                if cell in region.cells:
                    take += amount
            found.append((take, at))
    found.sort()
    return tuple(found) if found and found[-1][0] else ()


def _least(
    need: int, first: int, takes: "tuple[tuple[int, int], ...]", rooms: "Sequence[int] | None"
) -> int:
    """The least that so many units take of a region: first what takes least, as much as has room.

    5 units, with room for 3 that take nothing and others that take 2 in each, take 4 in.
    """
    total = 0
    for take, at in takes:
        if at >= first:
            room = need if rooms is None else min(need, rooms[at - first])
            total += room * take
            need -= room
            if need <= 0:
                break
    return total


def _different(kinds: "Sequence[Sequence[Piece]]") -> int:
    """Lanes, but of those that every piece takes together only one: eye and bone of a chop."""
    takers: dict[int, list[tuple[int, int]]] = {}
    for packing, mine in enumerate(kinds):
        for number, kind in enumerate(mine):
            for bit in bits_of(kind.lanes):
                takers.setdefault(bit, []).append((packing, number))
    return sum({tuple(those): bit for bit, those in takers.items()}.values())


def _reaches(
    kinds: "Sequence[Sequence[Piece]]", parts: "Sequence[Part]", different: int
) -> Iterator[Lanes]:
    """Where a row's units may lie: in all lanes they take, and lane by lane.

    Lane by lane, an option that doesn't take the lane counts in its first one.
    """
    pieces = [
        [
            (packing, piece, piece.lanes & different or piece.lanes)
            for packing, kind in part.pieces
            for piece in [kinds[packing][kind]]
        ]
        for part in parts
        if part.cap and part.pieces
    ]
    if not pieces:
        return
    lanes = 0
    for mine in pieces:
        for _, _, mask in mine:
            lanes |= mask
    single = bits_of(lanes)
    for only in (lanes, *single) if len(single) > 1 else single:
        found: Lanes = {}
        for mine in pieces:
            taken = [(packing, piece, mask & only) for packing, piece, mask in mine if mask & only]
            if not taken:
                taken = [(packing, piece, bits_of(mask)[0]) for packing, piece, mask in mine[:1]]
            for packing, piece, mask in taken:
                _widen(found, packing, piece, mask)
        yield found


def _widen(found: Lanes, packing: int, piece: "Piece", mask: int) -> None:
    if not piece.allowed:
        return
    lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
    for bit in bits_of(mask):
        a, b = found.setdefault((packing, bit), (lo, hi))
        if lo < a or hi > b:
            found[packing, bit] = (min(a, lo), max(b, hi))


class _Stretches:
    """Lanes of strips from one point to another: what takes of them, remembered."""

    def __init__(self, there: "Sequence[int]", kinds: "Sequence[Sequence[Piece]]") -> None:
        self._there, self._kinds = there, kinds
        self._takes: dict[tuple[int, int, Window], tuple[list[int], int]] = {}
        self._hulls: dict[tuple[int, int], list[Window]] = {}

    def widened(self, lanes: Lanes) -> Lanes:
        """The same lanes, as far as pieces may lie that may lie partly between those points."""
        return {
            (packing, bit): _grown(window, self._hulls_of(packing, bit))
            for (packing, bit), window in lanes.items()
        }

    def _hulls_of(self, packing: int, bit: int) -> list[Window]:
        known = self._hulls.get((packing, bit))
        if known is None:
            kinds = self._kinds[packing]
            hulls = [
                (one.allowed[0][0], one.allowed[-1][1])
                for one in kinds
                if one.lanes & bit and one.allowed
            ]
            known = self._hulls[packing, bit] = list(dict.fromkeys(hulls))
        return known

    def region(self, lanes: Lanes, cells: frozenset[int]) -> Region:
        """What is there of some lanes and cells, and what takes of it."""
        there = sum([self._there[cell] for cell in cells])
        by_kind: dict[int, list[int]] = {}
        for (packing, bit), window in lanes.items():
            takes, last = self._taken(packing, bit, window)
            there += window[1] - window[0] + last
            before = by_kind.get(packing)
            by_kind[packing] = takes if before is None else list(map(add, before, takes))
        return Region(there, by_kind, cells, {})

    def _taken(self, packing: int, bit: int, window: Window) -> tuple[list[int], int]:
        key = packing, bit, window
        if key not in self._takes:
            self._takes[key] = takes_of(self._kinds[packing], bit, window)
        return self._takes[key]


def _grown(window: Window, hulls: list[Window]) -> Window:
    """Widened by all that overlaps it, directly or through others."""
    start, end = window
    while True:
        meet = [(lo, hi) for lo, hi in hulls if lo < end and hi > start]
        grown = min([start, *[lo for lo, _ in meet]]), max([end, *[hi for _, hi in meet]])
        if grown == (start, end):
            return grown
        start, end = grown


def takes_of(kinds: "Sequence[Piece]", bit: int, window: Window) -> tuple[list[int], int]:
    """What a piece of each kind takes of a lane between two points, and the longest kerf.

    What lies within takes its length and kerf, what may lie partly outside the least that it can
    take: 5 in between 0 and 8 in take 1 in of what lies between 4 and 8 in at least.
    """
    start, end = window
    takes, last = [0] * len(kinds), 0
    for kind, (lanes, allowed, size, kerf, _) in enumerate(kinds):
        if not lanes & bit or not allowed:
            continue
        lo, hi = allowed[0][0], allowed[-1][1]
        if start <= lo and hi <= end:
            takes[kind] = size + kerf
            if kerf > last and size + kerf:
                last = kerf
        elif lo < end and start < hi:
            first = min(lo + size, end) - max(lo, start)
            other = min(hi, end) - max(hi - size, start)
            takes[kind] = max(0, min(first, other))
    return takes, last
