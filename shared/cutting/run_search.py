"""Every order of laying pieces on a run that could matter, with a memory of what failed.

Some layout with the smallest sum of starts exists wherever any layout does; in it each piece, by
order of start, lies as far left as those before it let it, and no piece could be laid wholly
before the next one starts. So it is enough to try such sequences. Two states with the same
pieces left differ only in how far each lane is filled; one that is filled further in no lane is
the better, and what failed for the better one fails for the worse.
"""

from operator import ge, le
from typing import NamedTuple

from shared.cutting.capacity import Interval


class Free(NamedTuple):
    """So many pieces of one kind that may lie anywhere in their allowed intervals."""

    lanes: int
    allowed: tuple[Interval, ...]
    size: int
    kerf: int
    kind: int
    number: int


class _State(NamedTuple):
    """Pieces left of each kind, and where each lane is free from."""

    left: tuple[int, ...]
    fronts: tuple[int, ...]


def search(free: list[Free]) -> list[tuple[int, int]] | None:
    """(place in `free`, start) of each piece in order of start, or None where they can't lie."""
    return _Search(free).run()


class _Search:
    """One search; kinds are numbered by place, lanes by bit."""

    def __init__(self, free: list[Free]) -> None:
        bits = max(one.lanes for one in free).bit_length()
        self.free = free
        self.lanes = [[bit for bit in range(bits) if one.lanes >> bit & 1] for one in free]
        self.bits = bits
        self.due = _due_sums(free, bits)
        self.failed: dict[tuple[int, ...], list[tuple[int, ...]]] = {}

    def run(self) -> list[tuple[int, int]] | None:
        """Depth first with a stack of our own: hundreds of slices are no rarity."""
        first = _State(tuple(one.number for one in self.free), (0,) * self.bits)
        stack = [(first, self._moves(first))]
        path: list[tuple[int, int]] = []
        while stack:
            state, moves = stack[-1]
            if not any(state.left):
                return path
            if not moves:
                stack.pop()
                self._remember(state)
                if path:
                    path.pop()
                continue
            place, start = moves.pop()
            after = self._after(state, place, start)
            if self._hopeless(after):
                continue
            path.append((place, start))
            stack.append((after, self._moves(after)))
        return None

    def _moves(self, state: _State) -> list[tuple[int, int]]:
        """Pieces that may come next with their starts, the most pressing last."""
        found: list[tuple[int, int, int]] = []
        first_end = -1
        for place, left in enumerate(state.left):
            if not left:
                continue
            one = self.free[place]
            front = max([state.fronts[bit] for bit in self.lanes[place]])
            start = _earliest(one, front)
            if start < 0:
                return []
            end = start + one.size + one.kerf
            if first_end < 0 or end < first_end:
                first_end = end
            found.append((one.allowed[-1][1], start, place))
        found = [move for move in found if move[1] < first_end]
        found.sort(reverse=True)
        return [(place, start) for _, start, place in found]

    def _after(self, state: _State, place: int, start: int) -> _State:
        one = self.free[place]
        left = list(state.left)
        left[place] -= 1
        fronts = [max(front, start) for front in state.fronts]
        for bit in self.lanes[place]:
            fronts[bit] = start + one.size + one.kerf
        return _State(tuple(left), tuple(fronts))

    def _hopeless(self, state: _State) -> bool:
        """Whether it failed before, or what is due by some point can't be laid before it."""
        left, fronts = state
        for failed in self.failed.get(left, ()):
            if all(map(ge, fronts, failed)):
                return True
        for bit, end, steps in self.due:
            total, kerf = fronts[bit], 0
            for place, step, its_kerf in steps:
                if left[place]:
                    total += left[place] * step
                    kerf = max(kerf, its_kerf)
            if kerf == 0 and total == fronts[bit]:
                continue
            if total - kerf > end:
                return True
        return False

    def _remember(self, state: _State) -> None:
        known = self.failed.setdefault(state.left, [])
        known[:] = [other for other in known if not all(map(le, state.fronts, other))]
        known.append(state.fronts)


def _earliest(one: Free, front: int) -> int:
    for lo, hi in one.allowed:
        start = max(lo, front)
        if hi - start >= one.size:
            return start
    return -1


def _due_sums(free: list[Free], bits: int) -> list[tuple[int, int, list[tuple[int, int, int]]]]:
    """For each lane and end of a window: the kinds that must be laid there before that end."""
    sums: list[tuple[int, int, list[tuple[int, int, int]]]] = []
    for bit in range(bits):
        mine = [place for place, one in enumerate(free) if one.lanes >> bit & 1]
        for end in sorted({free[place].allowed[-1][1] for place in mine}):
            steps = [
                (place, free[place].size + free[place].kerf, free[place].kerf)
                for place in mine
                if free[place].allowed[-1][1] <= end
            ]
            sums.append((bit, end, steps))
    return sums
