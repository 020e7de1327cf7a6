"""Every order of laying pieces on a run that could matter, with a memory of what failed.

Some layout with the smallest sum of starts exists wherever any layout does; in it each piece, by
order of start, lies as far left as those before it let it, and no piece could be laid wholly
before the next one starts. So it is enough to try such sequences. Two states with the same
pieces left differ only in how far each lane is filled; one that is filled further in no lane is
the better, and what failed for the better one fails for the worse.
"""

from operator import add, le
from typing import NamedTuple

from shared.cutting.capacity import Interval
from shared.cutting.lanes import bits_of

ENDLESS = 1 << 62
SLICE = 64  # steps after which the search from the other end has its turn


class Free(NamedTuple):
    """So many pieces of one kind that may lie anywhere in their allowed intervals."""

    lanes: int
    allowed: tuple[Interval, ...]
    size: int
    kerf: int
    kind: int
    number: int


class _Kind(NamedTuple):
    """A kind by its place: where it may lie, its size, with the kerf its step, and its lanes."""

    place: int
    allowed: tuple[Interval, ...]
    size: int
    step: int
    last: int
    lanes: tuple[int, ...]


_State = tuple[tuple[int, ...], tuple[int, ...]]  # pieces left of each kind, fronts of lanes


def search(free: list[Free]) -> list[tuple[int, int]] | None:
    """(place in `free`, start) of each piece in order of start, or None where they can't lie."""
    found = _Search(free, least_waste=False)
    return found.path if found.run(ENDLESS) else None


def lies(free: list[Free]) -> bool:
    """Whether they can lie, tried from either end by turns.

    What is hard from one end mostly isn't from the other.

    Worked number: 3 in, 4 in at the head of 12 in and 5 in at its tail lie; two of 3 in don't.
    """
    either = [_Search(free, least_waste=True)]
    found = either[0].run(SLICE)
    if found is None:
        either.append(_Search(mirrored(free), least_waste=True))
    while found is None:
        either.reverse()
        found = either[0].run(SLICE)
    return found


def mirrored(free: list[Free]) -> list[Free]:
    """The same pieces on the run laid the other way round, the kerf still after each.

    Worked number: 3 in with a kerf of 1 between 2 and 12 in may lie between 0 and 10 in of a run
    that then ends with that kerf, at 13 in.
    """
    end = max([one.allowed[-1][1] + one.kerf for one in free])
    return [
        one._replace(
            allowed=tuple([(end - hi - one.kerf, end - lo - one.kerf) for lo, hi in one.allowed])[
                ::-1
            ]
        )
        for one in free
    ]


class _Search:
    """One search; kinds are numbered by place, lanes by turn, those that are alike only once.

    Where asked, what leaves the `least_waste` in its lanes comes first, then what is due first,
    then what is small.
    """

    def __init__(self, free: list[Free], least_waste: bool) -> None:
        self._least_waste = least_waste
        takers: dict[int, list[int]] = {}
        for place, one in enumerate(free):
            for bit in bits_of(one.lanes):
                takers.setdefault(bit, []).append(place)
        lanes = list(dict.fromkeys(map(tuple, takers.values())))
        self._kinds = [
            _Kind(
                place,
                one.allowed,
                one.size,
                one.size + one.kerf,
                one.allowed[-1][1],
                tuple([lane for lane, mine in enumerate(lanes) if place in mine]),
            )
            for place, one in enumerate(free)
        ]
        self._due = [_due(free, self._kinds, lane, mine) for lane, mine in enumerate(lanes)]
        self._failed: dict[tuple[int, ...], list[tuple[int, ...]]] = {}
        first = tuple([one.number for one in free]), (0,) * len(lanes)
        self._stack = [(first, self._moves(first, [ENDLESS] * len(lanes)))]
        self.path: list[tuple[int, int]] = []

    def run(self, steps: int) -> bool | None:
        """Whether they can lie, None where so many steps more don't tell.

        Depth first with a stack of our own: hundreds of slices are no rarity.
        """
        stack, path = self._stack, self.path
        while stack:
            state, moves = stack[-1]
            if not moves:
                if not any(state[0]):
                    return True
                stack.pop()
                self._remember(state)
                if path:
                    path.pop()
                continue
            if not steps:
                return None
            steps -= 1
            place, start = moves.pop()
            after = self._after(state, place, start)
            spare = self._spare(after)
            if spare is not None:
                path.append((place, start))
                stack.append((after, self._moves(after, spare)))
        return False

    def _moves(self, state: _State, spare: list[int]) -> list[tuple[int, int]]:
        """Pieces that may come next with their starts, the most pressing last.

        What would leave more of a lane empty than it has to spare is left out.
        """
        left, fronts = state
        found: list[tuple[int, int, int, int, int]] = []
        first_end = ENDLESS
        for place, allowed, size, step, last, lanes in self._kinds:
            if not left[place]:
                continue
            front = fronts[lanes[0]]
            for lane in lanes:
                if fronts[lane] > front:
                    front = fronts[lane]
            for lo, hi in allowed:
                start = lo if lo > front else front
                if hi - start >= size:
                    break
            else:
                return []
            if start + step < first_end:
                first_end = start + step
            waste = small = 0
            if self._least_waste:
                small = size
                for lane in lanes:
                    waste += start - fronts[lane]
            found.append((waste, last, small, start, place))
        most = min(first_end - 1, *map(add, fronts, spare))
        found = [move for move in found if move[3] <= most]
        found.sort(reverse=True)
        return [(place, start) for _, _, _, start, place in found]

    def _after(self, state: _State, place: int, start: int) -> _State:
        left = list(state[0])
        left[place] -= 1
        fronts = [front if front > start else start for front in state[1]]
        kind = self._kinds[place]
        for lane in kind.lanes:
            fronts[lane] = start + kind.step
        return tuple(left), tuple(fronts)

    def _spare(self, state: _State) -> list[int] | None:
        """What each lane has to spare; None where it failed before, or has less than nothing.

        That is where what is due by some point can't be laid before it.

        What takes another lane too can't begin before both are free. Worked number: where one
        lane is free from 4 in and another from 8 in, 2 in of the first and then 5 in of both end
        at 13 in.
        """
        left, fronts = state
        for failed in self._failed.get(left, ()):
            for was, now in zip(failed, fronts, strict=True):
                if was > now:
                    break
            else:
                return None
        found: list[int] = []
        for lane, kinds in enumerate(self._due):
            front = fronts[lane]
            soon = later = 0
            begin = spare = ENDLESS
            for place, free, step, others, end in kinds:
                if left[place]:
                    for other in others:
                        if fronts[other] > free:
                            free = fronts[other]
                    if free > front:
                        later += left[place] * step
                        if free < begin:
                            begin = free
                    else:
                        soon += left[place] * step
                if end and (soon or later):
                    left_over = end - front - soon - later
                    if left_over < 0 or (later and begin + later > end):
                        return None
                    if left_over < spare:
                        spare = left_over
            found.append(spare)
        return found

    def _remember(self, state: _State) -> None:
        left, fronts = state
        known = self._failed.setdefault(left, [])
        known[:] = [other for other in known if not all(map(le, fronts, other))]
        known.append(fronts)


def _due(
    free: list[Free], kinds: list[_Kind], lane: int, mine: tuple[int, ...]
) -> list[tuple[int, int, int, tuple[int, ...], int]]:
    """Kinds of a lane by the ends before which they must lie: place, start, step, and other lanes.

    The last before each end has it, with the longest kerf of those so far; the others have 0.
    """
    found: list[tuple[int, int, int, tuple[int, ...], int]] = []
    order = sorted(mine, key=lambda place: kinds[place].last)
    kerf = 0
    for number, place in enumerate(order):
        kerf = max(kerf, free[place].kerf)
        kind = kinds[place]
        is_last = number + 1 == len(order) or kinds[order[number + 1]].last > kind.last
        others = tuple([other for other in kind.lanes if other != lane])
        end = kind.last + kerf if is_last else 0
        found.append((place, kind.allowed[0][0], kind.step, others, end))
    return found
