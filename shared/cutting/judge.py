"""Whether lines can be met at all: the row with the fewest ways left is always tried next.

No order is kept, so this only says yes, with a witness, or no; it is exact both ways.
"""

from collections.abc import Iterator
from typing import NamedTuple

from shared.cutting.problem import Part, Problem, State

Witness = dict[int, tuple[int, ...]]


class Left(NamedTuple):
    """So many units of a row still to be made, on its options from `first` on."""

    row: int
    need: int
    first: int


class Judge:
    """Judgements over one problem, with a memory of what failed."""

    def __init__(self, given: Problem, patience: int = 0) -> None:
        """A judge who has tried nothing yet; `patience` 0 never tires.

        Once `tired`, a None means nothing.
        """
        self.given = given
        self.patience = patience
        self.tired = False
        self.steps = 0
        self.failed: set[tuple[object, ...]] = set()

    def meet(self, state: State, rows: tuple[Left, ...]) -> Witness | None:
        """Units of each row by option that meet all rows beside a state, None if there are none.

        The units of a row before its `first` option are told as 0.
        """
        if not rows:
            return {}
        self.steps += 1
        self.tired = 0 < self.patience < self.steps
        if self.tired:
            return None
        key = (rows, self.given.signature(state))
        if key in self.failed:
            return None
        chosen = self._fewest(state, rows)
        if chosen is not None:
            place, rooms = chosen
            mine, others = rows[place], (*rows[:place], *rows[place + 1 :])
            parts = self.given.rows[mine.row][1]
            for after, made in self._spreads(state, parts[mine.first :], mine.need, rooms):
                found = self.meet(after, others)
                if found is not None:
                    found[mine.row] = (0,) * mine.first + made
                    return found
                if self.tired:
                    return None
        self.failed.add(key)
        return None

    def _fewest(self, state: State, rows: tuple[Left, ...]) -> tuple[int, tuple[int, ...]] | None:
        """The row with the fewest ways left, and its rooms; None where one has none."""
        best: tuple[int, int, tuple[int, ...]] | None = None
        for place, (row, need, first) in enumerate(rows):
            parts = self.given.rows[row][1][first:]
            rooms = tuple([self.given.room(part, state, need) for part in parts])
            if sum(rooms) < need:
                return None
            ways = _count(need, rooms)
            if best is None or ways < best[0]:
                best = (ways, place, rooms)
        return None if best is None else best[1:]

    def _spreads(
        self, state: State, parts: tuple[Part, ...], need: int, rooms: tuple[int, ...]
    ) -> Iterator[tuple[State, tuple[int, ...]]]:
        """Every way to spread so many units over options, the most on the first option first.

        `rooms` hold each option on its own; they are looked at again after every one, since
        options may stand in each other's way.
        """
        if len(parts) == 1:
            if need <= rooms[0]:
                yield self.given.added(state, parts[0], need), (need,)
            return
        part, others = parts[0], parts[1:]
        later = sum(rooms[1:])
        for count in range(min(need, rooms[0]), max(0, need - later) - 1, -1):
            after, left = state, rooms[1:]
            if count:
                after = self.given.added(state, part, count)
                left = tuple([self.given.room(one, after, need - count) for one in others])
                if sum(left) < need - count:
                    continue
            for end, made in self._spreads(after, others, need - count, left):
                yield end, (count, *made)


def _count(need: int, rooms: tuple[int, ...]) -> int:
    """About how many ways there are to spread so many units: exact for two rooms."""
    ways, slack = 1, sum(rooms) - need
    for room in sorted(rooms)[:-1]:
        ways *= min(room, need, slack) + 1
    return ways
