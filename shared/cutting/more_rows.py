"""Some lines at one set of lengths, put together once, and the same with some rows more.

Rows that come later only add their own kinds of pieces to the strips they lie on, so what is
known of the lines stays known.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace

from shared.cutting.demand import Row
from shared.cutting.problem import Part, Problem, State, problem, tried
from shared.cutting.run_packing import Piece
from shared.cutting.search import beside, met
from shared.cutting.take import Cell, Missing, Strip, Take
from shared.cutting.ways import Ways

Place = tuple[int, int]  # packing, kind


class Lines:
    """Lines that must all be met, at one set of lengths.

    `bound` is what has no choice of place, None where that alone doesn't fit. `judged` says that
    it is known whether they can be met.
    """

    def __init__(self, rows: Sequence[Row], scenario: int, ways: Ways) -> None:
        """Put the lines' rows together; nothing is looked for yet."""
        self.scenario, self.ways = scenario, ways
        self.given = problem(rows, scenario, ways)
        self.bound = _bound(self.given)
        self.free = [at for at, (_, parts) in enumerate(self.given.rows) if len(parts) != 1]
        self.cells: dict[Cell, int] = {}
        self.on: dict[Strip, list[tuple[int, int]]] = {}  # packings of a strip with their lanes
        for number, (strip, packing) in enumerate(
            zip(self.given.where, self.given.packings, strict=True)
        ):
            self.on.setdefault(strip, []).append((number, _lanes(packing.kinds)))
        for row, (_, parts) in zip(rows, self.given.rows, strict=True):
            for option, part in zip(row.options, parts, strict=True):
                take = option.take(scenario, ways)
                charged = () if isinstance(take, Missing) else take.cells
                cells = dict.fromkeys([cell for cell, _, _ in charged])
                for cell, (number, _) in zip(cells, part.cells, strict=True):
                    self.cells[cell] = number
        self._made: State | None = None
        self.judged = self.bound is None

    def made(self) -> State | None:
        """One way of making all the lines, None where there is none; found when asked for."""
        if not self.judged:
            self.judged = True
            units = met(self.given, range(len(self.given.rows)))
            self._made = None if units is None else self.given.lying(units)
        return self._made


@dataclass(slots=True)
class More:
    """Lines with some rows more, which come last.

    `roomier`: an account has more room with these rows, so that the lines may stand with them
    where they don't stand alone.
    """

    lines: Lines
    given: Problem
    joined: list[tuple[int, list[int]]]  # a packing, and those of the lines that came into it
    roomier: bool = False
    moved: dict[Place, Place] = field(default_factory=dict[Place, Place])
    asked: Problem | None = None

    def bound(self) -> State | None:
        """What has no choice of place of the lines."""
        return None if self.lines.bound is None else self._here(self.lines.bound)

    def made(self) -> State | None:
        """One way of making the lines."""
        made = self.lines.made()
        return None if made is None else self._here(made)

    def _here(self, state: State) -> State:
        """A state of the lines alone with the packings and cells there are now."""
        counts = list(state.counts)
        packings = self.given.packings
        counts += [()] * (len(packings) - len(counts))
        for number, others in self.joined:
            mine = [count for other in others for count in state.counts[other]]
            for other in others:
                counts[other] = (0,) * len(state.counts[other])
            mine += [0] * (len(packings[number].kinds) - len(mine))
            counts[number] = tuple(mine)
        cells = (0,) * (len(self.given.there) - len(state.used))
        return State(tuple(counts), state.used + cells)

    def most(self, state: State, at_most: Sequence[int]) -> int:
        """Beside a state no more units of the last row fit than its options could take alone.

        `at_most` is what is known already of each.
        """
        need, parts = self.given.rows[-1]
        left = need
        for part, limit in zip(parts, at_most, strict=True):
            if limit:
                left -= self.given.room(part, state, min(left, limit))
                if left <= 0:
                    return need
        return need - left

    def taken(self, state: State, limit: int) -> int:
        """Units of the last row that can be made beside a state, on each option what fits."""
        left = limit
        for part in self.given.rows[-1][1]:
            count = self.given.room(part, state, left)
            state = self.given.added(state, part, count)
            left -= count
            if not left:
                break
        return limit - left

    def all_taken(self, state: State) -> bool:
        """Whether all rows that are more can be made beside a state, each where it first fits."""
        more = range(len(self.lines.given.rows), len(self.given.rows))
        return beside(self.given, state, more) is not None

    def asking(self, need: int) -> Problem:
        """The whole as a problem, with so many units asked of the last row."""
        if self.asked is None:
            rows, own = self.given.rows, len(self.lines.given.rows)
            if self.moved:
                old = [(need, tuple(map(self._there, parts))) for need, parts in rows[:own]]
                rows = [*old, *rows[own:]]
            self.asked = replace(self.given, rows=rows)
        rows = self.asked.rows
        return replace(self.asked, rows=[*rows[:-1], (need, rows[-1][1])])

    def _there(self, part: Part) -> Part:
        return part._replace(pieces=tuple([self.moved.get(it, it) for it in part.pieces]))


def with_rows(lines: Lines, rows: Sequence[Row]) -> More:
    """Lines with some rows more."""
    old, takes = lines.given, [_takes(row, lines) for row in rows]
    given = Problem(list(old.packings), list(old.where), list(old.there), list(old.rows))
    found = More(lines, given, [])
    place: dict[tuple[Strip, Piece], Place] = {}
    for strip, pieces in _kinds(take for mine in takes for take in mine).items():
        for numbers, kinds in _joined(lines.on.get(strip, ()), pieces):
            for kind, at in _widened(found, strip, numbers, kinds).items():
                place[strip, kind] = at
    cells: dict[Cell, int] = {}
    for row, mine in zip(rows, takes, strict=True):
        parts = [
            Part((), (), 0)
            if isinstance(take, Missing)
            else Part(
                tuple([place[it] for it in take.pieces]), _charged(found, take, cells), option.cap
            )
            for option, take in zip(row.options, mine, strict=True)
        ]
        given.rows.append((row.need, tuple(parts)))
    return found


def _takes(row: Row, lines: Lines) -> list[Take | Missing]:
    return [option.take(lines.scenario, lines.ways) for option in row.options]


def _kinds(takes: Iterable[Take | Missing]) -> dict[Strip, dict[Piece, None]]:
    """The kinds of pieces by strip."""
    found: dict[Strip, dict[Piece, None]] = {}
    for take in takes:
        if not isinstance(take, Missing):
            for strip, piece in take.pieces:
                found.setdefault(strip, {})[piece] = None
    return found


def _joined(
    there: Iterable[tuple[int, int]], pieces: Iterable[Piece]
) -> list[tuple[list[int], list[Piece]]]:
    """New kinds of a strip with the packings they share a lane with, directly or through others."""
    sets = [(lanes, [number], list[Piece]()) for number, lanes in there]
    for piece in pieces:
        lanes, numbers, kinds = piece.lanes, list[int](), [piece]
        apart: list[tuple[int, list[int], list[Piece]]] = []
        for one in sets:
            if one[0] & lanes:
                lanes, numbers, kinds = lanes | one[0], one[1] + numbers, one[2] + kinds
            else:
                apart.append(one)
        sets = [*apart, (lanes, numbers, kinds)]
    return [(numbers, kinds) for _, numbers, kinds in sets if kinds]


def _widened(
    found: More, strip: Strip, numbers: list[int], pieces: list[Piece]
) -> dict[Piece, Place]:
    """Make one packing of some, with new kinds; the first of them is it, or one that is added."""
    given = found.given
    kinds = [kind for number in numbers for kind in given.packings[number].kinds]
    new = [piece for piece in pieces if piece not in kinds]
    number = numbers[0] if numbers else len(given.packings)
    if new or len(numbers) > 1:
        kinds += new
        packing = tried(tuple(kinds), found.lines.ways)
        behind = 0
        for other in numbers:
            there = len(given.packings[other].kinds)
            if other != number:
                found.moved |= {(other, at): (number, behind + at) for at in range(there)}
            behind += there
        if numbers:
            given.packings[number] = packing
        else:
            given.packings.append(packing)
            given.where.append(strip)
        found.joined.append((number, numbers))
    return {piece: (number, kinds.index(piece)) for piece in pieces}


def _charged(found: More, take: Take, new: dict[Cell, int]) -> tuple[tuple[int, int], ...]:
    """Cells by number with what one unit takes; those not there yet are added."""
    charged: dict[int, int] = {}
    there = found.given.there
    for cell, amount, most in take.cells:
        number = found.lines.cells.get(cell, -1)
        if number < 0:
            number = new.setdefault(cell, len(there))
        if number == len(there):
            there.append(most)
        elif there[number] < most:
            there[number] = most
            found.roomier = True
        charged[number] = charged.get(number, 0) + amount
    return tuple(charged.items())


def _lanes(kinds: Iterable[Piece]) -> int:
    lanes = 0
    for kind in kinds:
        lanes |= kind.lanes
    return lanes


def _bound(given: Problem) -> State | None:
    """What has no choice of place; None where that alone doesn't fit."""
    counts = [[0] * len(packing.kinds) for packing in given.packings]
    used = [0] * len(given.there)
    for need, parts in given.rows:
        if len(parts) != 1:
            continue
        ((pieces, cells, cap),) = parts
        if 0 <= cap < need:
            return None
        for packing, kind in pieces:
            counts[packing][kind] += need
        for cell, amount in cells:
            used[cell] += amount * need
            if used[cell] > given.there[cell]:
                return None
    state = State(tuple(map(tuple, counts)), tuple(used))
    for packing, lying in zip(given.packings, state.counts, strict=True):
        if any(lying) and not packing.fits(lying):
            return None
    return state
