"""Whether lines can be met at all: the row with the fewest ways left is always tried next.

No order is kept, so this only says yes, with a witness, or no; it is exact both ways.
"""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from shared.cutting.apart import met_apart
from shared.cutting.by_sums import BySums
from shared.cutting.problem import Part, Problem, State, Witness
from shared.cutting.run_search import ENDLESS

# Steps of a judgement, and of one place by place, after which the other has its turn.
EFFORTS = ((100, 3000), (1000, 20_000), (10_000, 1_000_000))
FEW = 12  # steps of a judgement before sums are worth adding up
MANY = 7  # steps to a refusal, after which sums are added up at once with other lengths


class Left(NamedTuple):
    """So many units of a row still to be made, on its options from `first` on."""

    row: int
    need: int
    first: int


class Judge:
    """Judgements over one problem, with its memory of what failed."""

    def __init__(self, given: Problem, hard: bool = False, by_sums: bool = True) -> None:
        """A judge of one problem; where it is `hard`, as is known, sums are added up at once."""
        self._by_sums = by_sums
        self.given = given
        self.tired = False
        self.steps = 0
        self._memory = given.memory
        self._limit = 0
        self._hardest = ENDLESS
        self._hard = hard
        self._adds = False

    def meet(self, state: State, rows: tuple[Left, ...]) -> Witness | None:
        """Units of each row by option that meet all rows beside a state, None if there are none.

        The units of a row before its `first` option are told as 0. Rows with the same options
        are judged as one: 7 and 4 of the same steak as 11, of which the first row gets the first.
        """
        alike = self._alike(rows)
        if len(alike) == len(rows):
            return self._met(state, rows)
        found = self._met(state, _together(alike))
        return None if found is None else _dealt_out(alike, found)

    def known(self, state: State, rows: tuple[Left, ...]) -> Witness | None:
        """The units `meet` gave, where it was asked the same and there were any."""
        alike = self._alike(rows)
        found = self._memory.met.get((_together(alike), self.given.signature(state)))
        return None if found is None else _dealt_out(alike, found)

    def _alike(self, rows: tuple[Left, ...]) -> list[list[Left]]:
        """Rows that have the same options together."""
        alike: dict[int, list[Left]] = {}
        for one in rows:
            alike.setdefault(self._shape(one), []).append(one)
        return [*alike.values()]

    def _shape(self, one: Left) -> int:
        """A number that rows with the same options, and no bounds of their own, have in common."""
        shapes, numbers = self._memory.shapes, self._memory.numbers
        key = (one.row, one.first)
        known = shapes.get(key)
        if known is None:
            parts = self.given.rows[one.row][1][one.first :]
            row = one.row if any(part.cap >= 0 for part in parts) else -1
            known = shapes[key] = numbers.setdefault((row, parts), len(numbers))
        return known

    def _met(self, state: State, rows: tuple[Left, ...]) -> Witness | None:
        """The same for rows each judged alone: by trying, or place by place where that grows."""
        met, key = self._memory.met, (rows, self.given.signature(state))
        if key not in met:
            met[key] = self._tried(state, rows)
            if met[key] is None:
                self._memory.was_hard = self._adds or self.steps >= MANY
        return met[key]

    def _tried(self, state: State, rows: tuple[Left, ...]) -> Witness | None:
        if not self._hard:
            self.steps, self._limit, self._adds = 0, FEW, False
            self._hardest = self.given.hard()
            found = self._meet(state, rows)
            self._hardest = ENDLESS
            if found is not None or not self.tired:
                return found
        if self._by_sums:
            decided = BySums(self.given, state, rows).any()
            if decided.known:
                return decided.witness
        self._adds = True
        if self._rooms(state, rows, None, 0) is None:
            return None
        for tries, sums in EFFORTS:
            self.steps, self._limit = 0, tries
            found = self._meet(state, rows)
            if found is not None or not self.tired:
                return found
            decided = met_apart(self.given, state, rows, sums)
            if decided.known:
                return decided.witness
        self._limit = 0
        return self._meet(state, rows)

    def _meet(
        self,
        state: State,
        rows: tuple[Left, ...],
        known: Sequence[tuple[int, ...]] | None = None,
        touched: int = 0,
    ) -> Witness | None:
        """The same for rows that are each judged alone.

        `known` are the rooms of the rows before what is `touched` now was laid.
        """
        if not rows:
            return {}
        self.steps += 1
        self.tired = 0 < self._limit < self.steps or (
            self._hardest < ENDLESS and self.given.hard() > self._hardest
        )
        if self.tired:
            return None
        failed = self._memory.failed
        key = (rows, self.given.signature(state))
        if key in failed:
            return None
        rooms = self._rooms(state, rows, known, touched)
        if rooms is not None:
            place = self._fewest(rows, rooms)
            mine, others = rows[place], (*rows[:place], *rows[place + 1 :])
            mine_rooms = rooms.pop(place)
            parts, (_, masks) = self.given.rows[mine.row][1], self._masks(mine)
            for after, made in self._spreads(state, parts[mine.first :], mine.need, mine_rooms):
                now = 0
                for count, mask in zip(made, masks, strict=True):
                    if count:
                        now |= mask
                found = self._meet(after, others, rooms, now)
                if found is not None:
                    found[mine.row] = (0,) * mine.first + made
                    return found
                if self.tired:
                    return None
        failed.add(key)
        return None

    def _rooms(
        self,
        state: State,
        rows: tuple[Left, ...],
        known: Sequence[tuple[int, ...]] | None,
        touched: int,
    ) -> list[tuple[int, ...]] | None:
        """The rooms of each row on its options, each on its own; None where that is too little.

        Where nothing was touched since there is as much room as there was.
        """
        room, weights = self.given.room, self._memory.weights
        rooms: list[tuple[int, ...]] = []
        for place, one in enumerate(rows):
            row, need, first = one
            parts = self.given.rows[row][1]
            parts = parts[first:] if first else parts
            if known is None:
                mine = tuple([room(part, state, need) for part in parts])
            else:
                mine = known[place]
                whole, masks = self._masks(one)
                if whole & touched:
                    mine = tuple(
                        [
                            room(part, state, left) if left and mask & touched else left
                            for part, left, mask in zip(parts, mine, masks, strict=True)
                        ]
                    )
            if sum(mine) < need or self._together(row, first, mine) < need:
                weights[row] = weights.get(row, 1) + 1
                return None
            rooms.append(mine)
        if self._adds and len(rows) > 1 and self.given.sums().overfull(state, rows, rooms):
            return None
        return rooms

    def _fewest(self, rows: tuple[Left, ...], rooms: list[tuple[int, ...]]) -> int:
        """The place of the row with the fewest ways left, the less the oftener it found no room.

        Worked number: 6 ways of a row that twice found no room count as 2, and come before 3.
        """
        best, least, weight = 0, -1, 1
        weights = self._memory.weights
        for place, (one, mine) in enumerate(zip(rows, rooms, strict=True)):
            ways, its = _count(one.need, mine), weights.get(one.row, 1)
            if least < 0 or ways * weight < least * its:
                best, least, weight = place, ways, its
        return best

    def _masks(self, one: Left) -> tuple[int, tuple[int, ...]]:
        """The strips and cells a row touches, as bits: with all its options, and with each."""
        known, key = self._memory.masks, (one.row, one.first)
        if key not in known:
            parts = self.given.rows[one.row][1][one.first :]
            masks = tuple([_mask(part, len(self.given.packings)) for part in parts])
            whole = 0
            for mask in masks:
                whole |= mask
            known[key] = whole, masks
        return known[key]

    def _together(self, row: int, first: int, rooms: tuple[int, ...]) -> int:
        """No more units of a row than this can be made, seen strip by strip.

        The small end, the middle and the large end of a 7-rib primal each have room for 7
        one-rib roasts, but together for 7 and not for 21.
        """
        key, strips = (row, first), self._memory.strips
        if key not in strips:
            strips[key] = _strips(self.given, self.given.rows[row][1][first:])
        return sum([min(most, sum([rooms[at] for at in ats])) for ats, most in strips[key]])

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


def _mask(part: Part, packings: int) -> int:
    mask = 0
    for packing, _ in part.pieces:
        mask |= 1 << packing
    for cell, amount in part.cells:
        if amount:
            mask |= 1 << packings + cell
    return mask


def _together(alike: list[list[Left]]) -> tuple[Left, ...]:
    """Rows that are alike as one: 7 and 4 of the same steak as 11."""
    return tuple(
        [
            mine[0]._replace(need=sum([one.need for one in mine])) if len(mine) > 1 else mine[0]
            for mine in alike
        ]
    )


def _dealt_out(alike: list[list[Left]], found: Witness) -> Witness:
    """Give rows judged as one their own units, the first options to the first row."""
    found = dict(found)
    for mine in alike:
        if len(mine) == 1:
            continue
        left = list(found[mine[0].row][mine[0].first :])
        for one in mine:
            need, units = one.need, list[int]()
            for option, there in enumerate(left):
                units.append(min(need, there))
                left[option] -= units[-1]
                need -= units[-1]
            found[one.row] = (*(0,) * one.first, *units)
    return found


def _count(need: int, rooms: tuple[int, ...]) -> int:
    """About how many ways there are to spread so many units: exact for two rooms."""
    ways, slack = 1, sum(rooms) - need
    for room in sorted(rooms)[:-1]:
        ways *= min(room, need, slack) + 1
    return ways


def _strips(given: Problem, parts: tuple[Part, ...]) -> list[tuple[list[int], int]]:
    """Options by the strip their first piece lies on, and the most units that strip holds.

    Where the pieces share a lane they lie one after the other, so n of them need n times the
    shortest with its kerf, less the last kerf. Elsewhere nothing is said: the most is endless.
    """
    by_strip: dict[int, list[int]] = {}
    for at, part in enumerate(parts):
        by_strip.setdefault(part.pieces[0][0] if part.pieces else -1 - at, []).append(at)
    found: list[tuple[list[int], int]] = []
    for strip, ats in by_strip.items():
        found.append((ats, _most(given, strip, [parts[at] for at in ats])))
    return found


def _most(given: Problem, strip: int, parts: list[Part]) -> int:
    endless = 1 << 62
    if strip < 0:
        return endless
    kinds = [given.packings[strip].kinds[part.pieces[0][1]] for part in parts]
    lanes = kinds[0].lanes
    for kind in kinds:
        lanes &= kind.lanes
    ends = [end for kind in kinds for end in kind.allowed]
    least = min(kind.size + kind.kerf for kind in kinds)
    if not lanes or not ends or least <= 0:
        return endless
    length = max(hi for _, hi in ends) - min(lo for lo, _ in ends)
    return (length + max(kind.kerf for kind in kinds)) // least
