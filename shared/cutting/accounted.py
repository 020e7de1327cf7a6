"""Some of the rows of a problem with the accounts that they alone have.

A split share's account of a lane is its fraction of it, or its slices in turn where that is more:
of 15 slices of 1 in the first of two halves has 8 in, of its 7 1/2 in. So a row may bring room
that others use too, and without it there is less.
"""

from collections.abc import Sequence

from shared.cutting.demand import Row
from shared.cutting.problem import Part, Problem, problem
from shared.cutting.take import Cell, Missing
from shared.cutting.ways import Ways


class Accounted:
    """Rows at one set of lengths. `varies`: some of them bring less room to a cell than others."""

    def __init__(self, rows: Sequence[Row], lengths: int, ways: Ways) -> None:
        """The problem of all the rows; nothing is left out yet."""
        self._whole = problem(rows, lengths, ways)
        self._brings = [
            _brings(row, parts, lengths, ways)
            for row, (_, parts) in zip(rows, self._whole.rows, strict=True)
        ]
        there = self._whole.there
        self.varies = any(
            most != there[cell] for mine in self._brings for cell, most in mine.items()
        )
        self._less: dict[tuple[int, ...], Problem] = {}

    def of(self, which: Sequence[int]) -> Problem:
        """The problem as it is for some of the rows; their numbers stay the same."""
        if not self.varies:
            return self._whole
        brought: dict[int, int] = {}
        for number in which:
            for cell, most in self._brings[number].items():
                brought[cell] = max(brought.get(cell, 0), most)
        whole = self._whole
        there = tuple([brought.get(cell, most) for cell, most in enumerate(whole.there)])
        if there == tuple(whole.there):
            return whole
        if there not in self._less:
            self._less[there] = Problem(whole.packings, whole.where, [*there], whole.rows)
        return self._less[there]


def _brings(row: Row, parts: Sequence[Part], lengths: int, ways: Ways) -> dict[int, int]:
    """What is there of each cell that a row takes of, as far as this row says."""
    found: dict[int, int] = {}
    for option, part in zip(row.options, parts, strict=True):
        take = option.take(lengths, ways)
        if isinstance(take, Missing):
            continue
        mine: dict[Cell, int] = {}
        for cell, _, most in take.cells:
            mine[cell] = max(mine.get(cell, 0), most)
        for most, (number, _) in zip(mine.values(), part.cells, strict=True):
            found[number] = max(found.get(number, 0), most)
    return found
