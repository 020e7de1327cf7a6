"""The plan's lines: what is made of each choice on each side, where it lies and what it weighs.

Weights are expected figures. What lies where is kept in `Occupied`, for what takes the rest.
"""

from collections.abc import Iterator, Sequence

from shared.cutting.answer import PlanLine
from shared.cutting.capacity import EXPECTED
from shared.cutting.demand import Demand
from shared.cutting.laying import Dealt, Laid
from shared.cutting.occupied import Occupied
from shared.cutting.take import Missing, Option
from shared.cutting.taken import Parts, Segment, line, side_of
from shared.cutting.ways import Ways
from shared.cutting.whole_lines import whole_lines


def lines_of(
    laid: Laid, choices: dict[int, Demand], occupied: Occupied, ways: Ways
) -> list[PlanLine]:
    """The plan lines of one group; what they take is added to `occupied`."""
    lines: list[PlanLine] = []
    for (number, place, count), dealt in laid.dealt.items():
        row = laid.rows[number]
        demand, option = choices[row.line], row.options[place]
        for segments in dealt:
            for one in segments:
                _occupy(one, option, laid.scenario, occupied)
        _count_parts(option, count, laid.scenario, occupied, ways)
        lines += _made(demand, option, count, dealt, laid.scenario, ways)
    if occupied.split:
        for made in lines:
            occupied.note(made)
    return lines


def _made(
    demand: Demand,
    option: Option,
    count: int,
    dealt: Dealt,
    scenario: int,
    ways: Ways,
) -> list[PlanLine]:
    """The lines of so many units of an option; those it gave last, where they lie as they lay."""
    last = option.made
    if last is not None and last[0] == count and last[1] == scenario and last[2] == dealt:
        return last[3]
    if option.wanted.fraction is None:
        made = list(piece_lines(demand, option, count, dealt, scenario, ways))
    else:
        made = whole_lines(demand, option, dealt, scenario, ways)
    option.made = count, scenario, dealt, made
    return made


def _occupy(one: Segment, option: Option, scenario: int, occupied: Occupied) -> None:
    start, end = one.start, one.end + one.piece.kerf
    if scenario != EXPECTED:
        side = option.animal.sides[one.strip[1] - 1]
        run = one.strip[2]
        start = moved(start, side.bounds[scenario][run], side.bounds[EXPECTED][run], 0)
        end = moved(end, side.bounds[scenario][run], side.bounds[EXPECTED][run], 1)
    occupied.add_length(one.strip, one.piece.lanes, start, end)
    for held in option.held:
        if held.split and held.side.number == one.strip[1]:
            occupied.charge(option.wanted.share, one.strip, one.piece.lanes, end - start)


def moved(point: int, old: tuple[int, ...], new: tuple[int, ...], up: int) -> int:
    """A point on one set of lengths, at the same part of its stretch on another."""
    for place in range(len(old) - 1):
        lo, hi = old[place], old[place + 1]
        if point <= hi and hi > lo:
            length = (point - lo) * (new[place + 1] - new[place])
            return new[place] + (-(-length // (hi - lo)) if up else length // (hi - lo))
    return new[-1]


def _count_parts(option: Option, count: int, scenario: int, occupied: Occupied, ways: Ways) -> None:
    take = option.take(scenario, ways)
    if isinstance(take, Missing):
        return
    for (carcass, side, code, share, _), amount, _ in take.cells:
        if share == 0:
            occupied.add_part((carcass, side, code), amount * count)


def _add_cells(option: Option, count: int, parts: Parts, scenario: int, ways: Ways) -> None:
    take = option.take(scenario, ways)
    if isinstance(take, Missing):
        return
    known = ways.catalogue.parts
    for (_, side, code, share, _), amount, _ in take.cells:
        if share == 0:
            whole = option.wanted.denominator
            parts.add(known[code], amount * count, whole, side_of(option, side))


def piece_lines(
    demand: Demand,
    option: Option,
    count: int,
    dealt: Sequence[list[Segment]],
    scenario: int,
    ways: Ways,
) -> Iterator[PlanLine]:
    """Single pieces: a line for each row of neighbours; whatever else they take with the first."""
    plan = option.ways[0]
    alone = plan.on_run is not None and len(option.held) == 1
    first = Parts(option, ways, scenario)
    _add_cells(option, count, first, scenario, ways)
    for segments in dealt[1:] if alone else dealt:
        for one in segments:
            first.add_segment(one)
    if not alone:
        start = end = size = None
        if plan.on_run is not None:
            start, end = dealt[0][0].start, dealt[0][-1].end
            size = dealt[0][0].piece.size
        yield line(demand, option, plan, count, first.taken(), start, end, size)
        return
    for number, one in enumerate(dealt[0]):
        parts = first if number == 0 else Parts(option, ways, scenario)
        parts.add_segment(one)
        taken, size = parts.taken(), one.piece.size
        yield line(demand, option, plan, one.number, taken, one.start, one.end, size)
