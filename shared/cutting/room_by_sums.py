"""How much lines that must be met leave for more, by sums alone: before anything is laid."""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from shared.cutting.demand import Row
from shared.cutting.room_left import RoomLeft
from shared.cutting.room_over_sides import RoomOverSides
from shared.cutting.run_packing import ENDLESS
from shared.cutting.take import Cell, Missing, Option, Strip
from shared.cutting.ways import Ways

if TYPE_CHECKING:
    from shared.cutting.run_packing import Piece


class RoomBySums:
    """Lines that must be met at one set of lengths: no more of another row than this fit beside.

    Worked number: beside a whole ham no steak of the same leg fits; its centre is taken.
    """

    def __init__(self, rows: Sequence[Row], scenario: int, ways: Ways) -> None:
        """Add up what has no choice of place."""
        self._rows, self._scenario, self._ways = rows, scenario, ways
        self._pieces: dict[Strip, dict[Piece, int]] = {}
        self._used: dict[Cell, int] = {}
        self._there: dict[Cell, int] = {}
        self._free = self._cant = False
        for row in rows:
            self._add(row)
        self._left: dict[Strip, RoomLeft] = {}
        self._known: dict[int, tuple[list[Option], list[int]]] = {}
        self._over_sides: RoomOverSides | None = None

    def _add(self, row: Row) -> None:
        takes = [option.take(self._scenario, self._ways) for option in row.options]
        for take in takes:
            for cell, _, there in () if isinstance(take, Missing) else take.cells:
                self._there[cell] = max(there, self._there.get(cell, 0))
        if len(takes) != 1:
            self._free = True
            return
        (take,) = takes
        if isinstance(take, Missing) or 0 <= row.options[0].cap < row.need:
            self._cant = True
            return
        for strip, piece in take.pieces:
            mine = self._pieces.setdefault(strip, {})
            mine[piece] = mine.get(piece, 0) + row.need
        for cell, amount, _ in take.cells:
            self._used[cell] = self._used.get(cell, 0) + amount * row.need

    def of_each(self, row: Row) -> list[int]:
        """Units of each option of a row that fit at most beside what has no choice of place."""
        if self._cant:
            return [0] * len(row.options)
        known = self._known.get(id(row.options))
        if known is None:
            each = [self._room(option) for option in row.options]
            known = self._known[id(row.options)] = row.options, each
        return [min(row.need, most) for most in known[1]]

    def over_sides(self, row: Row) -> int:
        """Units of a row that fit at most beside all lines, over all places."""
        if not self._free and len(row.options) == 1:
            return row.need
        scenario, ways = self._scenario, self._ways
        if self._over_sides is None:
            rows = [
                (one.need, [option.take(scenario, ways) for option in one.options])
                for one in self._rows
            ]
            self._over_sides = RoomOverSides(rows)
        return self._over_sides.most([option.take(scenario, ways) for option in row.options])

    def _room(self, option: Option) -> int:
        take = option.take(self._scenario, self._ways)
        if isinstance(take, Missing):
            return 0
        limit = ENDLESS if option.cap < 0 else option.cap
        for cell, amount, there in take.cells:
            if amount:
                most = max(there, self._there.get(cell, 0))
                limit = min(limit, (most - self._used.get(cell, 0)) // amount)
        for strip, piece in take.pieces:
            if limit <= 0:
                return 0
            limit = min(limit, self._on(strip).most(piece))
        return max(0, limit)

    def _on(self, strip: Strip) -> RoomLeft:
        found = self._left.get(strip)
        if found is None:
            pieces = self._pieces.get(strip, {})
            found = self._left[strip] = RoomLeft([*pieces], [*pieces.values()])
        return found
