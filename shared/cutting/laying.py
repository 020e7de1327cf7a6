"""Where each line's pieces lie: layouts dealt out to the lines, from the head end on."""

from dataclasses import dataclass
from operator import attrgetter

from shared.cutting.capacity import EXPECTED, MOST
from shared.cutting.demand import Row
from shared.cutting.problem import Problem, Units, by_lane, problem, tried
from shared.cutting.run_packing import Layout, Piece
from shared.cutting.standing import Standing
from shared.cutting.take import Missing, Strip
from shared.cutting.taken import Segment
from shared.cutting.ways import Ways

Dealt = list[list[Segment]]
_start = attrgetter("start")


@dataclass(slots=True)
class Laid:
    """One group as it is laid, and the lengths used.

    `dealt` holds, by (row, option, units), the segments of each of the option's pieces.
    """

    rows: list[Row]
    units: Units
    scenario: int
    dealt: dict[tuple[int, int, int], Dealt]


def lay_out(found: Standing, ways: Ways) -> Laid:
    """Where a standing group lies: at expected lengths where it can, else at its own."""
    if found.scenario != EXPECTED and found.scenario != MOST:
        dealt = _of_what_is_made(found, ways)
        if dealt is not None:
            return Laid(found.rows, found.units, EXPECTED, dealt)
    given = found.given or problem(found.rows, found.scenario, ways)
    laid = given.layouts(found.units)
    assert laid is not None, "a group that stands can be laid out"
    return Laid(found.rows, found.units, found.scenario, _deal(given, laid, found.units))


def _of_what_is_made(found: Standing, ways: Ways) -> dict[tuple[int, int, int], Dealt] | None:
    """Where pieces lie at expected lengths; options nothing is made with aren't looked at."""
    made: list[tuple[tuple[int, int, int], tuple[tuple[Strip, Piece], ...]]] = []
    counts: dict[Strip, dict[Piece, int]] = {}
    for number, (row, units) in enumerate(zip(found.rows, found.units, strict=True)):
        for place, count in enumerate(units):
            take = row.options[place].take(EXPECTED, ways) if count else None
            if take is not None:
                pieces = () if isinstance(take, Missing) else take.pieces
                made.append(((number, place, count), pieces))
                for strip, piece in pieces:
                    mine = counts.setdefault(strip, {})
                    mine[piece] = mine.get(piece, 0) + count
    queues: dict[tuple[Strip, Piece], list[tuple[int, int]]] = {}
    for strip, mine in counts.items():
        for kinds in by_lane([*mine]):
            layout = tried(tuple(kinds), ways).lay(tuple([mine[piece] for piece in kinds]))
            if layout is None:
                return None
            for block in sorted(layout, key=_start):
                queue = queues.setdefault((strip, kinds[block.kind]), [])
                queue.append((block.start, block.number))
    return {
        key: [_next(strip, piece, key[2], queues[strip, piece]) for strip, piece in pieces]
        for key, pieces in made
    }


def _deal(given: Problem, layouts: list[Layout], units: Units) -> dict[tuple[int, int, int], Dealt]:
    """Deal the pieces that lie on each strip out to the rows, in order."""
    queues: dict[tuple[int, int], list[tuple[int, int]]] = {}
    for packing, layout in enumerate(layouts):
        for block in sorted(layout, key=_start):
            queues.setdefault((packing, block.kind), []).append((block.start, block.number))
    dealt: dict[tuple[int, int, int], Dealt] = {}
    for number, ((_, parts), made) in enumerate(zip(given.rows, units, strict=True)):
        for place, (part, count) in enumerate(zip(parts, made, strict=True)):
            if count:
                dealt[number, place, count] = [
                    _next(
                        given.where[packing],
                        given.packings[packing].kinds[kind],
                        count,
                        queues[packing, kind],
                    )
                    for packing, kind in part.pieces
                ]
    return dealt


def _next(strip: Strip, piece: Piece, count: int, queue: list[tuple[int, int]]) -> list[Segment]:
    """The next pieces of a kind, as segments."""
    found: list[Segment] = []
    while count:
        start, there = queue[0]
        mine = min(count, there)
        found.append(Segment(strip, piece, start, mine))
        count -= mine
        if mine == there:
            queue.pop(0)
        else:
            queue[0] = (start + mine * (piece.size + piece.kerf), there - mine)
    return found
