"""A group of lines as numbers: packings, cells and rows, and what an assignment puts on them."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import NamedTuple

from shared.cutting.demand import Row
from shared.cutting.run_packing import Layout, Piece
from shared.cutting.strip import Strip as Packing
from shared.cutting.take import Cell, Missing, Strip
from shared.cutting.together import Sums
from shared.cutting.ways import Ways


class Part(NamedTuple):
    """What one unit of an option adds: pieces (packing, kind) and amounts of cells."""

    pieces: tuple[tuple[int, int], ...]
    cells: tuple[tuple[int, int], ...]
    cap: int


class State(NamedTuple):
    """What lies so far: pieces of each kind by packing, and amounts by cell."""

    counts: tuple[tuple[int, ...], ...]
    used: tuple[int, ...]


Units = tuple[tuple[int, ...], ...]
Witness = dict[int, tuple[int, ...]]  # units by option, of rows by number
Asked = tuple[tuple[tuple[int, int, int], ...], object]  # rows, and a state's signature


class Memory:
    """What judgements over a problem found, whatever is asked of each row.

    `met` are questions with their witness, `failed` what failed on the way to them. `weights` are
    how often each row found no room, and 1. By row and first option: `strips` are the options on
    each strip and the most of them there, `shapes` the number of options that are alike, from
    `numbers`, and `masks` the strips and cells they touch. `grew` tells that trying in the fixed
    order did, `was_hard` that what was refused last took many steps.
    """

    __slots__ = (
        "failed",
        "grew",
        "masks",
        "met",
        "numbers",
        "shapes",
        "strips",
        "sums",
        "was_hard",
        "weights",
    )

    def __init__(self) -> None:
        """Nothing was asked yet."""
        self.met: dict[Asked, Witness | None] = {}
        self.failed: set[Asked] = set()
        self.weights: dict[int, int] = {}
        self.strips: dict[tuple[int, int], list[tuple[list[int], int]]] = {}
        self.shapes: dict[tuple[int, int], int] = {}
        self.numbers: dict[tuple[int, tuple[Part, ...]], int] = {}
        self.masks: dict[tuple[int, int], tuple[int, tuple[int, ...]]] = {}
        self.sums: Sums | None = None
        self.grew = False
        self.was_hard = False


@dataclass(slots=True)
class Problem:
    """One group under one set of lengths. `where` are the strips of the packings.

    `memory` holds for these options whatever is asked, so it goes with a copy that asks for more.
    """

    packings: list[Packing]
    where: list[Strip]
    there: list[int]
    rows: list[tuple[int, tuple[Part, ...]]]
    memory: Memory = field(default_factory=Memory, compare=False, repr=False)

    def empty(self) -> State:
        """Nothing lies anywhere."""
        counts = tuple([(0,) * len(packing.kinds) for packing in self.packings])
        return State(counts, (0,) * len(self.there))

    def sums(self) -> Sums:
        """The sums over its regions, as far as they were needed."""
        if self.memory.sums is None:
            self.memory.sums = Sums(self)
        return self.memory.sums

    def hard(self) -> int:
        """How often it was hard to tell whether pieces can lie on its strips."""
        return sum([packing.hard for packing in self.packings])

    def room(self, part: Part, state: State, limit: int) -> int:
        """The most units of an option that still fit beside a state, up to a limit.

        Pieces on different strips don't meet; only where two lie on one are they tried together.
        """
        pieces, cells, cap = part
        if 0 <= cap < limit:
            limit = cap
        for cell, amount in cells:
            if amount:
                limit = min(limit, (self.there[cell] - state.used[cell]) // amount)
        for packing, kind in pieces:
            if limit <= 0:
                return 0
            limit = self.packings[packing].room(state.counts[packing], kind, limit)
        if len(pieces) > 1:
            twice = _twice(pieces)
            while twice and limit > 0 and not self._fits(self.added(state, part, limit), twice):
                limit -= 1
        return limit if limit > 0 else 0

    def _fits(self, state: State, strips: Iterable[int]) -> bool:
        return all(self.packings[packing].fits(state.counts[packing]) for packing in strips)

    def added(self, state: State, part: Part, count: int) -> State:
        """A state with so many units of an option more."""
        if not count:
            return state
        counts, used = list(state.counts), state.used
        for packing, kind in part.pieces:
            one = list(counts[packing])
            one[kind] += count
            counts[packing] = tuple(one)
        if part.cells:
            more = list(used)
            for cell, amount in part.cells:
                more[cell] += amount * count
            used = tuple(more)
        return State(tuple(counts), used)

    def signature(self, state: State) -> tuple[object, ...]:
        """What matters of a state for what may still be added."""
        return (
            state.used,
            *[
                packing.weigh(one) if packing.plain else one
                for packing, one in zip(self.packings, state.counts, strict=True)
            ],
        )

    def lying(self, units: Mapping[int, tuple[int, ...]]) -> State:
        """The state in which units by option, of rows by number, lie there."""
        state = self.empty()
        for row, made in units.items():
            for part, count in zip(self.rows[row][1], made, strict=True):
                state = self.added(state, part, count)
        return state

    def layouts(self, units: Units) -> list[Layout] | None:
        """Where everything lies, by packing, or None where it can't lie with these lengths."""
        state = self.lying(dict(enumerate(units)))
        found: list[Layout] = []
        for packing, one in zip(self.packings, state.counts, strict=True):
            layout = packing.lay(one)
            if layout is None:
                return None
            found.append(layout)
        return found


@lru_cache(maxsize=4096)
def _twice(pieces: tuple[tuple[int, int], ...]) -> tuple[int, ...]:
    """The packings on which several of the pieces lie: of two on one and one on another the one."""
    strips = [packing for packing, _ in pieces]
    if len({*strips}) == len(strips):
        return ()
    return tuple({packing: None for packing in strips if strips.count(packing) > 1})


def problem(rows: Sequence[Row], scenario: int, ways: Ways) -> Problem:
    """Number the packings, kinds and cells of a group's rows; sides alike share one strip."""
    kinds: dict[Strip, dict[Piece, int]] = {}
    for row in rows:
        for option in row.options:
            take = option.take(scenario, ways)
            if not isinstance(take, Missing):
                for strip, piece in take.pieces:
                    kinds.setdefault(strip, {})[piece] = 0
    packings: list[Packing] = []
    where: list[Strip] = []
    place: dict[tuple[Strip, Piece], tuple[int, int]] = {}
    known = {} if ways.strips is None else ways.strips
    for strip, pieces in kinds.items():
        for together in by_lane([*pieces]):
            for kind, piece in enumerate(together):
                place[strip, piece] = (len(packings), kind)
            packings.append(_known(tuple(together), known))
            where.append(strip)
    cells: dict[Cell, int] = {}
    there: list[int] = []
    numbered = [(row.need, _parts(row, scenario, ways, place, cells, there)) for row in rows]
    return Problem(packings, where, there, numbered)


def tried(kinds: tuple[Piece, ...], ways: Ways) -> Packing:
    """The strip with these kinds: the one that was tried before, where that is remembered."""
    return Packing(kinds) if ways.strips is None else _known(kinds, ways.strips)


def _known(kinds: tuple[Piece, ...], known: dict[tuple[Piece, ...], Packing]) -> Packing:
    found = known.get(kinds)
    if found is None:
        found = known[kinds] = Packing(kinds)
    return found


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
        amounts: dict[int, int] = {}
        for cell, amount, most in take.cells:
            number = cells.setdefault(cell, len(there))
            if number == len(there):
                there.append(most)
            there[number] = max(there[number], most)
            amounts[number] = amounts.get(number, 0) + amount
        pieces = tuple([place[strip, piece] for strip, piece in take.pieces])
        parts.append(Part(pieces, tuple(amounts.items()), option.cap))
    return tuple(parts)


def by_lane(pieces: list[Piece]) -> list[list[Piece]]:
    """Kinds of one strip that share lanes, directly or through others, together."""
    if len(pieces) == 1:
        return [pieces]
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
