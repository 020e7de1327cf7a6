"""How full places can be made with what is left: of 10 in pieces of 3 in fill no more than 9.

A bin is a lane of a strip between two points, or a cell. What lies there lies there whole, so no
more units than fit lie there, and the most that pieces of the sizes left can fill of it is a sum
of those sizes; the rest is waste wherever they come to lie. So the bins together refuse what
their sum alone doesn't.
"""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

LONG = 16  # times that nothing was told
MANY = 4  # sizes with which mostly all of a bin can be filled


class Bin(NamedTuple):
    """A bin's place among the sums, and by row's place the steps of its units that lie there.

    What every unit of a row takes there in any way is its `least`. A cell `is_cell`.
    """

    place: int
    steps: Mapping[int, tuple[int, ...]]
    least: Mapping[int, int]
    is_cell: bool = False


class Fills:
    """The bins of one question, and the rows that may lie in bins only.

    `long` has the least step of those that lie on strips only.
    """

    def __init__(self, bins: Sequence[Bin], rows: set[int], long: Mapping[int, int]) -> None:
        """Nothing is filled yet; they don't `tell` anything where they long haven't."""
        self.bins, self._rows, self._long = bins, rows, long
        self._known: dict[tuple[int, tuple[int, ...]], int] = {}
        self._asked = 0
        self.tell = True

    def too_little(self, left: Sequence[int], asked: Sequence[tuple[int, int]]) -> bool:
        """Whether bins, of which so much is left, can't be filled with what is asked.

        `left` holds for each bin what is left beside the least of all rows, `asked` are rows'
        places and units.

        Worked number: 7 pieces of 3 in take 21 in; three bins of 8 in hold 6 in each.
        """
        units = sum([count for row, count in asked if row in self._rows])
        length = sum([count * self._long.get(row, 0) for row, count in asked])
        for one, there in zip(self.bins, left, strict=True):
            steps: set[int] = set()
            long: set[int] = set()
            for row, count in asked:
                if row in self._rows and count:
                    there += count * one.least.get(row, 0)
                    steps.update(one.steps.get(row, ()))
                    if row in self._long:
                        long.update(one.steps.get(row, ()))
            if steps:
                units -= max(0, there) // min(steps)
            if not one.is_cell:
                length -= self._most(there, tuple(sorted(long)))
        told = units > 0 or length > 0
        self._asked = 0 if told else self._asked + 1
        self.tell = self._asked < LONG
        return told

    def _most(self, there: int, steps: tuple[int, ...]) -> int:
        """The most of a bin that any number of steps fill; all of it where there are many."""
        if not steps or there < steps[0]:
            return 0
        if len(steps) > MANY:
            return there
        if len(steps) == 1:
            return there - there % steps[0]
        known = self._known.get((there, steps))
        if known is None:
            step, others = steps[-1], steps[:-1]
            known = 0
            for full in range(there - there % step, -1, -step):
                known = max(known, full + self._most(there - full, others))
                if known == there:
                    break
            self._known[there, steps] = known
        return known
