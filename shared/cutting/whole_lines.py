"""Plan lines of what takes all of a cut, or a fraction of it: a line for each block of a way."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shared.cutting.answer import PlanLine
from shared.cutting.demand import Demand
from shared.cutting.piece_length import piece_length
from shared.cutting.take import Missing, Option
from shared.cutting.taken import Parts, Segment, line, side_of
from shared.cutting.ways import WayPlan, Ways
from shared.cutting.windows import window


@dataclass(slots=True)
class _Entry:
    """One line in the making: its way, the block it is made of (None off the runs), its parts."""

    plan: WayPlan
    block: Segment | None
    parts: Parts
    count: int = 0


def whole_lines(
    demand: Demand,
    option: Option,
    dealt: Sequence[list[Segment]],
    scenario: int,
    ways: Ways,
) -> list[PlanLine]:
    """All of a cut on one side: blocks by way; parts beside them go with their way's first line.

    What takes both sides at once is one line.
    """
    entries: list[_Entry] = []
    beside: list[Segment] = []
    for segments in dealt:
        for one in segments:
            plan = _way_of_block(option.ways, one)
            if plan is None or (len(option.held) == 2 and _first(entries, plan)):
                beside.append(one)
            else:
                entries.append(_Entry(plan, one, Parts(option, ways, scenario)))
                entries[-1].parts.add_segment(one)
    for one in beside:
        plan = _way_of_part(option.ways, one)
        _entry(entries, plan, option, scenario, ways).parts.add_segment(one)
    _add_cells(entries, option, scenario, ways)
    lines: list[PlanLine] = []
    for entry in entries:
        count, start, end, size = entry.count, None, None, None
        if entry.block is not None:
            count, size = pieces_of(
                entry.plan, option, entry.block.end - entry.block.start, scenario, ways
            )
            start, end = entry.block.start, entry.block.end
        taken = entry.parts.taken()
        lines.append(line(demand, option, entry.plan, count, taken, start, end, size))
    return lines


def _first(entries: Iterable[_Entry], plan: WayPlan) -> _Entry | None:
    return next((one for one in entries if one.plan is plan), None)


def _entry(
    entries: list[_Entry], plan: WayPlan, option: Option, scenario: int, ways: Ways
) -> _Entry:
    """The first line of a way, a new one where it has none."""
    found = _first(entries, plan)
    if found is None:
        found = _Entry(plan, None, Parts(option, ways, scenario))
        entries.append(found)
    return found


def _way_of_block(plans: Sequence[WayPlan], one: Segment) -> WayPlan | None:
    """The way whose window a block is, None for a part taken beside it."""
    for plan in plans:
        on_run = plan.on_run
        if on_run is not None and on_run.run == one.strip[2] and on_run.lanes & one.piece.lanes:
            return plan

    return None


def _way_of_part(plans: Sequence[WayPlan], one: Segment) -> WayPlan:
    """The way that takes a part lying on a run beside its own."""
    for plan in plans:
        for off in plan.off_run:
            if off.run == one.strip[2] and off.lane & one.piece.lanes:
                return plan
    return plans[0]


def _add_cells(entries: list[_Entry], option: Option, scenario: int, ways: Ways) -> None:
    """Add the parts off the runs to the first way that takes each."""
    take = option.take(scenario, ways)
    if isinstance(take, Missing):
        return
    whole = option.wanted.denominator
    for (_, side, code, share, _), amount, _ in take.cells:
        if share:
            continue
        plan, each = next(
            (plan, off.share)
            for plan in option.ways
            for off in plan.off_run
            if off.part.code == code
        )
        entry = _entry(entries, plan, option, scenario, ways)
        entry.parts.add(ways.catalogue.parts[code], amount, whole, side_of(option, side))
        pieces = amount * each.denominator // (whole * each.numerator)
        entry.count = max(entry.count, pieces, 1)


def pieces_of(
    plan: WayPlan, option: Option, length: int, scenario: int, ways: Ways
) -> tuple[int, int | None]:
    """How many pieces a block of some length gives, and their size where it is known."""
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
