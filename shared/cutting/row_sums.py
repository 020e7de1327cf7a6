"""What rows may take too much of, all sums side by side in one number.

Each sum is a limit of one strip (`limits`), a cell, or a region over all sides (`together`). What
is `free` has for every sum what is there beside what lies and the least that the rows take
wherever they are made; a unit of an option `takes` what it needs beyond that least. So any rows
may still be open, in any order.
"""

from collections.abc import Mapping, Sequence
from operator import mul
from typing import TYPE_CHECKING, NamedTuple

from shared.cutting.fills import Bin, Fills
from shared.cutting.limits import limits
from shared.cutting.side_by_side import SideBySide

if TYPE_CHECKING:
    from shared.cutting.judge import Left
    from shared.cutting.problem import Part, Problem, State

Rooms = tuple[int, ...]  # by option
Piece = tuple[int, ...]  # packing and kind; or CELL, a cell, and how much of it
CELL = -1


class _Sum(NamedTuple):
    """What is left of something, what may be asked of it, and what kinds and cells take of it."""

    left: int
    asked: int
    takes: Mapping[int, Sequence[int]]
    cells: frozenset[int] = frozenset()


class RowSums:
    """The sums of some rows beside a state, and the pieces of each kind they may add to it.

    `takes` and `adds` are by row's place and option what a unit takes of the sums and adds to the
    pieces. Looked at `closely` there are more sums.
    """

    def __init__(
        self,
        given: "Problem",
        state: "State",
        rows: "Sequence[Left]",
        rooms: Sequence[Rooms],
        closely: bool,
    ) -> None:
        """Add up what is there, and what the rows take of it; `rooms` is how many units fit."""
        self._given, self._state, self._rows, self._rooms = given, state, rows, rooms
        self._parts = [given.rows[one.row][1] for one in rows]
        self._sums = self._meant(closely)
        self.fields = SideBySide([one.left + one.asked for one in self._sums])
        self.takes: list[list[int]] = []
        self._least: list[int] = []
        self.free = self._add_up()
        kinds: dict[Piece, int] = {}
        for need, part in self._options():
            for piece in part.pieces:
                kinds[piece] = kinds.get(piece, 0) + need
        self.counts = SideBySide(kinds.values())
        self._shifts = {piece: self.counts.width * place for place, piece in enumerate(kinds)}
        self.adds = [
            [
                sum([1 << self._shifts[piece] for piece in part.pieces]) if room else 0
                for part, room in zip(parts, mine, strict=True)
            ]
            for parts, mine in zip(self._parts, rooms, strict=True)
        ]

    def _options(self) -> "list[tuple[int, Part]]":
        """The options with room, with what is asked of their row."""
        return [
            (one.need, part)
            for one, parts, rooms in zip(self._rows, self._parts, self._rooms, strict=True)
            for part, room in zip(parts, rooms, strict=True)
            if room
        ]

    def _meant(self, closely: bool) -> list[_Sum]:
        """What the rows may take too much of."""
        kinds = [[0] * len(strip.kinds) for strip in self._given.packings]
        cells = [0] * len(self._given.there)
        for need, part in self._options():
            for packing, kind in part.pieces:
                kinds[packing][kind] += need
            for cell, amount in part.cells:
                cells[cell] += need * amount
        found: list[_Sum] = []
        for number, (strip, mine) in enumerate(zip(self._given.packings, kinds, strict=True)):
            if any(mine):
                for left, takes in limits(strip.kinds, self._state.counts[number], mine, closely):
                    found.append(_Sum(left, sum(map(mul, takes, mine)), {number: takes}))
        for region in self._given.sums().regions([one.row for one in self._rows]):
            asked = region.taken(kinds, cells)
            left = region.there - region.taken(self._state.counts, self._state.used)
            if asked > left:
                found.append(_Sum(max(0, left), asked, region.by_kind, region.cells))
        return found

    def _add_up(self) -> int:
        """What is there of all sums beside the least of all rows; what a unit takes is noted."""
        by_kind = [[0] * len(strip.kinds) for strip in self._given.packings]
        by_cell = [0] * len(self._given.there)
        for place, one in enumerate(self._sums):
            shift = self.fields.width * place
            for packing, takes in one.takes.items():
                mine = by_kind[packing]
                for kind, take in enumerate(takes):
                    if take:
                        mine[kind] |= take << shift
            for cell in one.cells:
                by_cell[cell] |= 1 << shift
        free = self.fields.joined([one.left for one in self._sums]) | self.fields.tops
        for (_, need, _), parts, rooms in zip(self._rows, self._parts, self._rooms, strict=True):
            takes = [_taken(part, by_kind, by_cell) for part in parts]
            least = self.fields.least(
                [take for take, room in zip(takes, rooms, strict=True) if room]
            )
            free -= need * least
            self._least.append(least)
            self.takes.append(
                [take - least if room else 0 for take, room in zip(takes, rooms, strict=True)]
            )
        return free

    def cut(self, packing: int, counts: Sequence[int]) -> tuple[int, int]:
        """So many pieces of each kind beside what lies there, and the fields they are in.

        Both are nothing where some of them are made in no way.
        """
        cut = fields = 0
        lying = self._state.counts[packing]
        for kind, (count, there) in enumerate(zip(counts, lying, strict=True)):
            if count > there:
                shift = self._shifts.get((packing, kind))
                if shift is None:
                    return 0, 0
                cut |= (count - there) << shift
                fields |= self.counts.field << shift
        return cut, fields

    def bins(self) -> Fills:
        """The sums of single strips and cells as bins, no kind in two of one strip."""
        within = [self._within(one) for one in self._sums]
        chosen: dict[Piece, int] = {}
        for place in sorted(range(len(within)), key=lambda place: -len(within[place])):
            if within[place] and not within[place].keys() & chosen.keys():
                chosen |= dict.fromkeys(within[place], place)
        steps: dict[int, dict[int, tuple[int, ...]]] = {place: {} for place in chosen.values()}
        rows: set[int] = set()
        long: dict[int, int] = {}
        for row, (parts, rooms) in enumerate(zip(self._parts, self._rooms, strict=True)):
            open_parts = [part for part, room in zip(parts, rooms, strict=True) if room]
            pieces = [
                next((piece for piece in _pieces(part) if piece in chosen), None)
                for part in open_parts
            ]
            taken: list[int] = []
            for piece in pieces:
                if piece is not None:
                    place = chosen[piece]
                    taken.append(within[place][piece])
                    steps[place][row] = (*steps[place].get(row, ()), taken[-1])
            if None not in pieces:
                rows.add(row)
                if all(piece is not None and piece[0] != CELL for piece in pieces):
                    long[row] = min(taken, default=0)
        bins = [
            Bin(place, mine, self._least_of(place), bool(self._sums[place].cells))
            for place, mine in steps.items()
        ]
        return Fills(bins, rows, long)

    def _within(self, one: _Sum) -> dict[Piece, int]:
        """The kinds that lie in a strip's sum wholly, with their steps, or a cell with amounts."""
        found: dict[Piece, int] = {}
        if len(one.cells) == 1 and not one.takes:
            cell = next(iter(one.cells))
            for _, part in self._options():
                found |= {piece: piece[2] for piece in _cells(part) if piece[1] == cell}
        elif len(one.takes) == 1 and not one.cells:
            for packing, takes in one.takes.items():
                for kind, take in enumerate(takes):
                    piece = self._given.packings[packing].kinds[kind]
                    if take and take == piece.size + piece.kerf:
                        found[packing, kind] = take
        return found

    def _least_of(self, place: int) -> dict[int, int]:
        shift, field = self.fields.width * place, self.fields.field
        least = {row: one >> shift & field for row, one in enumerate(self._least)}
        return {row: take for row, take in least.items() if take}


def _cells(part: "Part") -> list[Piece]:
    return [(CELL, cell, amount) for cell, amount in part.cells if amount]


def _pieces(part: "Part") -> list[Piece]:
    """What a unit of an option takes, of strips and of cells."""
    return [*part.pieces, *_cells(part)]


def _taken(part: "Part", by_kind: Sequence[Sequence[int]], by_cell: Sequence[int]) -> int:
    """What a unit of an option takes of all sums, side by side."""
    found = sum([by_kind[packing][kind] for packing, kind in part.pieces])
    for cell, amount in part.cells:
        found += by_cell[cell] * amount
    return found
