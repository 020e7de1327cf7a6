"""Where each line's pieces lie: layouts dealt out to the lines, from the head end on."""

from dataclasses import dataclass

from shared.cutting.capacity import EXPECTED, MOST
from shared.cutting.demand import Row
from shared.cutting.problem import Problem, Units, problem
from shared.cutting.run_packing import Layout, lay
from shared.cutting.standing import Standing
from shared.cutting.take import Missing, Option
from shared.cutting.taken import Segment
from shared.cutting.ways import Ways

Dealt = list[list[Segment]]


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
    if found.given is None:
        need = found.rows[0].need
        alone = _alone(found.rows[0].options[0], need, ways)
        if alone is not None:
            return Laid(found.rows, found.units, EXPECTED, {(0, 0, need): alone})
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
    made = [
        (number, place, count)
        for number, units in enumerate(found.units)
        for place, count in enumerate(units)
        if count
    ]
    rows = [
        Row(found.rows[number].line, count, [found.rows[number].options[place]])
        for number, place, count in made
    ]
    units = tuple([(count,) for _, _, count in made])
    given = problem(rows, EXPECTED, ways)
    laid = given.layouts(units)
    if laid is None:
        return None
    dealt = _deal(given, laid, units)
    return {key: dealt[at, 0, key[2]] for at, key in enumerate(made)}


def _alone(option: Option, need: int, ways: Ways) -> Dealt | None:
    """Units of at most one piece each with nothing else there: as far left as they may lie."""
    take = option.take(EXPECTED, ways)
    if isinstance(take, Missing):
        return None
    dealt: Dealt = []
    for strip, piece in take.pieces:
        blocks = lay((piece,), (need,))
        if blocks is None:
            return None
        blocks = sorted(blocks, key=lambda one: one.start) if len(blocks) > 1 else blocks
        dealt.append([Segment(strip, piece, one.start, one.number) for one in blocks])
    return dealt


def _deal(given: Problem, layouts: list[Layout], units: Units) -> dict[tuple[int, int, int], Dealt]:
    """Deal the pieces that lie on each strip out to the rows, in order."""
    queues: dict[tuple[int, int], list[tuple[int, int]]] = {}
    for packing, layout in enumerate(layouts):
        for block in sorted(layout, key=lambda one: one.start):
            queues.setdefault((packing, block.kind), []).append((block.start, block.number))
    dealt: dict[tuple[int, int, int], Dealt] = {}
    for number, ((_, parts), made) in enumerate(zip(given.rows, units, strict=True)):
        for place, (part, count) in enumerate(zip(parts, made, strict=True)):
            if count:
                dealt[number, place, count] = [
                    _next(given, packing, kind, count, queues) for packing, kind in part.pieces
                ]
    return dealt


def _next(
    given: Problem,
    packing: int,
    kind: int,
    count: int,
    queues: dict[tuple[int, int], list[tuple[int, int]]],
) -> list[Segment]:
    """The next pieces of a kind, as segments."""
    piece, strip = given.packings[packing].kinds[kind], given.where[packing]
    queue = queues.get((packing, kind), [])
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
