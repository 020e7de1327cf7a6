"""The plan's lines: what is made of each choice on each side, where it lies and what it weighs.

Weights are expected figures. What lies where is kept in `Occupied`, for what takes the rest.
"""

from collections.abc import Iterator, Sequence

from shared.cutting.answer import PlanLine
from shared.cutting.capacity import EXPECTED, Side, window
from shared.cutting.demand import Demand
from shared.cutting.laying import Laid
from shared.cutting.occupied import Occupied
from shared.cutting.piece_length import piece_length
from shared.cutting.take import Cell, Missing, Option
from shared.cutting.taken import Parts, Segment
from shared.cutting.ways import WayPlan, Ways


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
        if option.wanted.fraction is None:
            made = _piece_lines(demand, option, count, dealt, laid.scenario, ways)
        else:
            made = _all_lines(demand, option, dealt, laid.scenario, ways)
        lines += made
    if occupied.split:
        for made in lines:
            occupied.note(made)
    return lines


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


def _side_of(option: Option, number: int) -> Side | None:
    return None if number == 0 else option.animal.sides[number - 1]


def _add_cells(option: Option, count: int, parts: Parts, scenario: int, ways: Ways) -> None:
    take = option.take(scenario, ways)
    if isinstance(take, Missing):
        return
    known = ways.catalogue.parts
    for (_, side, code, share, _), amount, _ in take.cells:
        if share == 0:
            whole = option.wanted.denominator
            parts.add(known[code], amount * count, whole, _side_of(option, side))


def _piece_lines(
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
        yield line(demand, option, plan, count, first, start, end, size)
        return
    for number, one in enumerate(dealt[0]):
        parts = first if number == 0 else Parts(option, ways, scenario)
        parts.add_segment(one)
        yield line(demand, option, plan, one.count, parts, one.start, one.end, one.piece.size)


def line(
    demand: Demand,
    option: Option,
    plan: WayPlan,
    count: int,
    parts: Parts,
    start: int | None,
    end: int | None,
    size: int | None,
) -> PlanLine:
    """One plan line."""
    return PlanLine(
        demand.choice.line,
        demand.choice.share,
        demand.choice.cut,
        plan.way.code,
        option.carcass,
        option.side,
        count,
        parts.taken(),
        parts.weight,
        start,
        end,
        size,
    )


def _all_lines(
    demand: Demand,
    option: Option,
    dealt: Sequence[list[Segment]],
    scenario: int,
    ways: Ways,
) -> Iterator[PlanLine]:
    """All of a cut: a line for each block, and the parts off the run with their way."""
    left = list(option.ways)
    take = option.take(scenario, ways)
    cells = () if isinstance(take, Missing) else take.cells
    for segments in dealt:
        for one in segments:
            plan = covering(option.ways, one.strip[2], one.piece.lanes)
            parts = Parts(option, ways, scenario)
            parts.add_segment(one)
            if any(one is plan for one in left):
                left = [one for one in left if one is not plan]
                _add_way_cells(option, plan, cells, parts, ways)
            count, size = pieces_of(plan, option, one, scenario, ways)
            yield line(demand, option, plan, count, parts, one.start, one.end, size)
    for plan in left:
        parts = Parts(option, ways, scenario)
        count = _add_way_cells(option, plan, cells, parts, ways)
        if parts.found:
            yield line(demand, option, plan, count, parts, None, None, None)


def _add_way_cells(
    option: Option, plan: WayPlan, cells: Sequence[tuple[Cell, int, int]], parts: Parts, ways: Ways
) -> int:
    """Add the cells that are this way's; how many pieces they make."""
    count, whole = 0, option.wanted.denominator
    shares = {off.part.code: off.share for off in plan.off_run}
    for (_, side, code, share, _), amount, _ in cells:
        if share == 0 and code in shares and code not in parts.found:
            parts.add(ways.catalogue.parts[code], amount, whole, _side_of(option, side))
            one = shares[code]
            count = max(count, amount * one.denominator // (whole * one.numerator), 1)
    return count


def covering(plans: Sequence[WayPlan], run: int, lanes: int) -> WayPlan:
    """The first way that takes any of these lanes of the run."""
    for plan in plans:
        if plan.on_run is not None and plan.on_run.run == run and plan.on_run.lanes & lanes:
            return plan
    return plans[0]


def pieces_of(
    plan: WayPlan, option: Option, one: Segment, scenario: int, ways: Ways
) -> tuple[int, int | None]:
    """How many pieces a block gives, and their size where it is known."""
    length = one.end - one.start
    if length <= 0:
        return 0, None
    if plan.on_run is None or plan.on_run.take.size == "whole":
        return 1, None
    size, kerf = piece_size(plan, option, scenario, ways), option.wanted.kerf
    if size is None or size <= 0:
        return 1, None
    return (length + kerf) // (size + kerf), size


def piece_size(plan: WayPlan, option: Option, scenario: int, ways: Ways) -> int | None:
    """Length of one piece where the choice or the cut sets it, else None."""
    if plan.on_run is None:
        return None
    want, take = option.wanted, plan.on_run.take
    if take.size == "slice":
        return want.thickness
    if want.ribs is None and want.piece_ng is None and take.piece_share is None:
        return None
    held = option.held[0]
    there = window(held, plan.on_run, scenario, ways)
    return None if there is None else piece_length(held, plan.on_run, there, want, scenario, ways)
