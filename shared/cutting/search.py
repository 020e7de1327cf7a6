"""Who is cut from which side: the first assignment, in a fixed order, that can be cut.

Lines are tried in order, each with as many units as possible on its first option, then on the
second, and so on. A side that can't hold a set of pieces can't hold more of them, so the most
units an option has room for is found by halving; states that failed are remembered.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from operator import gt

from shared.cutting.demand import Row
from shared.cutting.run_packing import Layout, Piece
from shared.cutting.run_packing import Strip as Packing
from shared.cutting.take import Cell, Missing, Strip
from shared.cutting.together import too_much_together
from shared.cutting.ways import Ways

PATIENCE = 40  # steps of the search after which sums over all sides are looked at once


@dataclass(frozen=True, slots=True)
class Part:
    """What one unit of an option adds: pieces (packing, kind) and amounts of cells."""

    pieces: tuple[tuple[int, int], ...]
    cells: tuple[tuple[int, int], ...]
    cap: int


@dataclass(slots=True)
class Problem:
    """One group under one set of lengths, numbered: packings, cells, rows and their options."""

    packings: list[Packing]
    where: list[Strip]
    there: list[int]
    rows: list[tuple[int, tuple[Part, ...]]]


State = tuple[tuple[tuple[int, ...], ...], tuple[int, ...]]
Units = tuple[tuple[int, ...], ...]


def problem(rows: Sequence[Row], scenario: int, ways: Ways) -> Problem:
    """Number the packings, kinds and cells of a group's rows."""
    kinds: dict[Strip, dict[Piece, int]] = {}
    for row in rows:
        for option in row.options:
            take = option.take(scenario, ways)
            if not isinstance(take, Missing):
                for strip, piece in take.pieces:
                    kinds.setdefault(strip, {}).setdefault(piece, 0)
    packings: list[Packing] = []
    where: list[Strip] = []
    place: dict[tuple[Strip, Piece], tuple[int, int]] = {}
    for strip, pieces in kinds.items():
        for together in _by_lane(list(pieces)):
            for kind, piece in enumerate(together):
                place[strip, piece] = (len(packings), kind)
            packings.append(Packing(together))
            where.append(strip)
    cells: dict[Cell, int] = {}
    there: list[int] = []
    numbered = [(row.need, _parts(row, scenario, ways, place, cells, there)) for row in rows]
    return Problem(packings, where, there, numbered)


def _parts(
    row: Row,
    scenario: int,
    ways: Ways,
    place: dict[tuple[Strip, Piece], tuple[int, int]],
    cells: dict[Cell, int],
    there: list[int],
) -> tuple[Part, ...]:
    parts: list[Part] = []
    for option in row.options:
        take = option.take(scenario, ways)
        if isinstance(take, Missing):
            parts.append(Part((), (), 0))
            continue
        amounts: list[tuple[int, int]] = []
        for cell, amount, most in take.cells:
            number = cells.setdefault(cell, len(there))
            if number == len(there):
                there.append(most)
            there[number] = max(there[number], most)
            amounts.append((number, amount))
        pieces = tuple([place[strip, piece] for strip, piece in take.pieces])
        parts.append(Part(pieces, tuple(amounts), option.cap))
    return tuple(parts)


def _by_lane(pieces: list[Piece]) -> list[list[Piece]]:
    """Kinds of one strip that share lanes, directly or through others, together."""
    sets: list[tuple[int, list[Piece]]] = []
    for piece in pieces:
        mask, members = piece.lanes, [piece]
        apart: list[tuple[int, list[Piece]]] = []
        for other, others in sets:
            if other & mask:
                mask |= other
                members = others + members
            else:
                apart.append((other, others))
        sets = [*apart, (mask, members)]
    return [members for _, members in sets]


def solve(given: Problem) -> Units | None:
    """Units by row and option of the first assignment that can be cut, or None."""
    return _Search(given).run()


def loads(given: Problem, units: Units) -> State:
    """What an assignment puts on each packing and cell."""
    counts = [[0] * len(packing.kinds) for packing in given.packings]
    used = [0] * len(given.there)
    for (_, parts), made in zip(given.rows, units, strict=True):
        for part, count in zip(parts, made, strict=True):
            for packing, kind in part.pieces:
                counts[packing][kind] += count
            for cell, amount in part.cells:
                used[cell] += amount * count
    return tuple([tuple(one) for one in counts]), tuple(used)


def layouts(given: Problem, units: Units) -> list[Layout] | None:
    """Where everything lies, by packing, or None where it can't lie with these lengths."""
    counts, _ = loads(given, units)
    found: list[Layout] = []
    for packing, one in zip(given.packings, counts, strict=True):
        layout = packing.lay(one)
        if layout is None:
            return None
        found.append(layout)
    return found


class _Search:
    """One search over a problem."""

    def __init__(self, given: Problem) -> None:
        self.given = given
        self.failed: set[tuple[int, object]] = set()
        self.steps = 0
        self.free: list[int] = []
        self.made: list[tuple[int, ...]] = [()] * len(given.rows)

    def run(self) -> Units | None:
        state = self._forced()
        if state is None or not self._all_have_room(0, state):
            return None
        if not self._from(0, state):
            return None
        return tuple(self.made)

    def _forced(self) -> State | None:
        """Set what has no choice of place; None where that alone doesn't fit."""
        given = self.given
        counts = [[0] * len(packing.kinds) for packing in given.packings]
        used = [0] * len(given.there)
        for number, (need, parts) in enumerate(given.rows):
            if len(parts) != 1:
                self.free.append(number)
                continue
            part = parts[0]
            if 0 <= part.cap < need:
                return None
            self.made[number] = (need,)
            for packing, kind in part.pieces:
                counts[packing][kind] += need
            for cell, amount in part.cells:
                used[cell] += amount * need
        if any(map(gt, used, given.there)):
            return None
        for packing, one in zip(given.packings, counts, strict=True):
            if any(one) and not packing.fits(tuple(one)):
                return None
        return tuple([tuple(one) for one in counts]), tuple(used)

    def _from(self, place: int, state: State) -> bool:
        """Meet the free rows from this one on."""
        if place == len(self.free):
            return True
        self.steps += 1
        if self.steps == PATIENCE and too_much_together(self.given):
            self.steps = -(1 << 60)
        if self.steps < 0:
            return False
        key = (place, self._signature(state))
        if key in self.failed:
            return False
        need, parts = self.given.rows[self.free[place]]
        rooms = [self._room(part, state, need) for part in parts]
        if sum(rooms) >= need and self._spread(place, 0, need, rooms, state, ()):
            return True
        self.failed.add(key)
        return False

    def _spread(
        self,
        place: int,
        option: int,
        left: int,
        rooms: list[int],
        state: State,
        made: tuple[int, ...],
    ) -> bool:
        """Spread what is left of a row over its options from this one on, the most first."""
        parts = self.given.rows[self.free[place]][1]
        if option == len(parts):
            self.made[self.free[place]] = made
            return self._all_have_room(place + 1, state) and self._from(place + 1, state)
        later = sum(rooms[option + 1 :])
        most = min(left, rooms[option])
        if made and any(made):
            most = min(most, self._room(parts[option], state, most))
        for count in range(most, max(0, left - later) - 1, -1):
            after = self._with(state, parts[option], count)
            if self._spread(place, option + 1, left - count, rooms, after, (*made, count)):
                return True
        return False

    def _all_have_room(self, place: int, state: State) -> bool:
        """Whether each free row from here on could still be met on its own."""
        for number in self.free[place:]:
            need, parts = self.given.rows[number]
            left = need
            for part in parts:
                left -= self._room(part, state, left)
                if left <= 0:
                    break
            if left > 0:
                return False
        return True

    def _room(self, part: Part, state: State, limit: int) -> int:
        """The most units of an option that still fit beside a state, up to a limit."""
        counts, used = state
        if part.cap >= 0:
            limit = min(limit, part.cap)
        for cell, amount in part.cells:
            if amount:
                limit = min(limit, (self.given.there[cell] - used[cell]) // amount)
        for packing, kind in part.pieces:
            if limit <= 0:
                return 0
            limit = min(limit, self.given.packings[packing].room(counts[packing], kind, limit))
        if len(part.pieces) > 1:
            while limit > 0 and not self._fits(self._with(state, part, limit), part):
                limit -= 1
        return max(0, limit)

    def _fits(self, state: State, part: Part) -> bool:
        return all(
            self.given.packings[packing].fits(state[0][packing]) for packing, _ in part.pieces
        )

    def _with(self, state: State, part: Part, count: int) -> State:
        if not count:
            return state
        counts, used = list(state[0]), state[1]
        for packing, kind in part.pieces:
            one = list(counts[packing])
            one[kind] += count
            counts[packing] = tuple(one)
        if part.cells:
            more = list(used)
            for cell, amount in part.cells:
                more[cell] += amount * count
            used = tuple(more)
        return tuple(counts), used

    def _signature(self, state: State) -> object:
        """What matters of a state for what may still be added."""
        return (
            tuple(
                [
                    packing.weigh(one) if packing.plain else one
                    for packing, one in zip(self.given.packings, state[0], strict=True)
                ]
            ),
            state[1],
        )
