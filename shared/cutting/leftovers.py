"""What is left when every counted line lies, and the lines that take it."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from shared.cutting.accounts import account_length
from shared.cutting.answer import Caution, PlanLine
from shared.cutting.capacity import ALL, EXPECTED, Held, Interval, Window
from shared.cutting.demand import Demand
from shared.cutting.lanes import bits_of
from shared.cutting.occupied import Occupied
from shared.cutting.run_packing import ENDLESS
from shared.cutting.take import Option, Strip
from shared.cutting.taken import Parts, line, taken_between
from shared.cutting.ways import OffRun, WayPlan, Ways
from shared.cutting.whole_lines import pieces_of
from shared.cutting.windows import window

Block = tuple[Held, Window, int, int]  # whose, the window it lies in, start and end


def take_rest(demand: Demand, occupied: Occupied, ways: Ways) -> list[PlanLine]:
    """Everything that is free where this line may lie, at expected lengths."""
    lines: list[PlanLine] = []
    for option in demand.options:
        lines += rest_of_option(demand, option, occupied, ways)
    for made in lines:
        occupied.note(made)
    return lines


def rest_of_option(
    demand: Demand, option: Option, occupied: Occupied, ways: Ways
) -> list[PlanLine]:
    """What is free for one option; it is taken, but not yet noted for its share."""
    plan = option.ways[0]
    pending: list[tuple[OffRun, Held | None, int]] = []
    for off in plan.off_run:
        part = _rest_part(option, off, occupied)
        if part is not None:
            pending.append(part)
    lines: list[PlanLine] = []
    on_run = plan.on_run
    if on_run is not None:
        for block in free_blocks(option, occupied, ways):
            lines.append(rest_line(demand, option, block, ways))
            held, _, start, end = block
            strip = option.carcass, held.side.number, on_run.run
            occupied.add_length(strip, on_run.lanes, start, end)
            if held.split:
                occupied.charge(option.wanted.share, strip, on_run.lanes, end - start)
    if pending:
        parts = Parts(option, ways, EXPECTED)
        count = 0
        for off, held, left in pending:
            number = 0 if held is None else held.side.number
            occupied.add_part((option.carcass, number, off.part.code), left)
            whole = option.wanted.denominator
            parts.add(off.part, left, whole, None if held is None else held.side)
            room = _room(option, off)
            one = off.share if room is ALL else min(off.share, room)
            count = max(count, left * one.denominator // (whole * one.numerator))
        lines.append(line(demand, option, plan, count, parts.taken(), None, None, None))
    return lines


def free_blocks(option: Option, occupied: Occupied, ways: Ways) -> list[Block]:
    """The lengths that are free for an option on its run, as far as its share's accounts go."""
    on_run = option.ways[0].on_run
    blocks: list[Block] = []
    if on_run is None:
        return blocks
    for held in option.held:
        there = window(held, on_run, EXPECTED, ways)
        if there is None:
            continue
        strip, lanes = (option.carcass, held.side.number, on_run.run), on_run.lanes
        free = free_of(strip, lanes, there.allowed, occupied)
        if not held.split:
            blocks += [(held, there, lo, hi) for lo, hi in free]
            continue
        left = _account_left(option, held, strip, lanes, occupied, ways) if free else 0
        for lo, hi in free:
            end = min(hi, lo + left)
            if end > lo:
                blocks.append((held, there, lo, end))
                left -= end - lo
    return blocks


def _is_one(plan: WayPlan, held: Held, length: int, there: Window) -> bool:
    """Whether what is left makes the cut: of what is taken whole all must be left.

    The leg that gave its hock has no whole ham, shank on, any more. What is given to the trim, and
    what owners divide, is no less for being a part.
    """
    if plan.on_run is None or plan.on_run.take.size != "whole" or held.split:
        return True
    return plan.cut.kind == "to_trim" or length >= there.hi - there.lo


def rest_line(demand: Demand, option: Option, block: Block, ways: Ways) -> PlanLine:
    """What an option makes of a block that is free."""
    plan, alone, (held, there, start, end) = option.ways[0], option, block
    assert plan.on_run is not None, "a block lies on a run"
    if len(option.held) > 1 or option.side != held.side.number:
        alone = Option(
            option.carcass, held.side.number, option.ways, (held,), option.animal, option.wanted
        )
    run, lanes = plan.on_run.run, plan.on_run.lanes
    parts = taken_between(held.side, run, lanes, (start, end), EXPECTED, ways)
    count, size = pieces_of(plan, alone, end - start, EXPECTED, ways)
    if not _is_one(plan, held, end - start, there):
        count = 0
    return line(demand, alone, plan, count, parts, start, end, size)


def _rest_part(
    option: Option, off: OffRun, occupied: Occupied
) -> tuple[OffRun, Held | None, int] | None:
    if off.run >= 0:
        return None
    held = None if off.part.per == "animal" or not option.held else option.held[0]
    number = 0 if held is None else held.side.number
    place = (option.carcass, number, off.part.code)
    whole = option.wanted.denominator
    left = whole - occupied.parts.get(place, 0)
    if left <= 0:
        return None
    mine = ALL
    if held is not None and held.split:
        mine = held.fraction(off.part.quarter)
    elif held is None:
        mine = _room(option, off)
    if mine is not ALL and mine < ALL:
        mine -= occupied.used_of(option.wanted.share, place)
        left = min(left, mine.numerator * whole // mine.denominator)
    return (off, held, left) if left > 0 else None


def _room(option: Option, off: OffRun) -> Fraction:
    """What a share may have of a part of the animal that owners share; all of any other."""
    return option.animal.rooms.get((option.wanted.share, off.part.code), ALL)


def _account_left(
    option: Option, held: Held, strip: Strip, lanes: int, occupied: Occupied, ways: Ways
) -> int:
    """What a split share may still take of these lanes."""
    run, share, used, known = strip[2], option.wanted.share, occupied.accounts, held.known.accounts
    least = ENDLESS
    for bit in bits_of(lanes):
        there = known.get((run, bit, EXPECTED))
        if there is None:
            there = account_length(held, run, bit, EXPECTED, ways)
        there -= used.get((share, strip, bit), 0)
        if there < least:
            least = there
    return least


def free_of(
    strip: Strip, lanes: int, allowed: Sequence[Interval], occupied: Occupied
) -> Sequence[Interval]:
    """What of some intervals is free in all these lanes."""
    if not allowed:
        return allowed
    known, left = occupied.lanes, allowed
    first, last = allowed[0][0], allowed[-1][1]
    for bit in bits_of(lanes):
        for begin, end in known.get((strip, bit), ()):
            if end <= first or last <= begin:
                continue
            kept: list[Interval] = []
            for lo, hi in left:
                if end <= lo or hi <= begin:
                    kept.append((lo, hi))
                    continue
                if lo < begin:
                    kept.append((lo, begin))
                if end < hi:
                    kept.append((end, hi))
            if not kept:
                return kept
            left, first, last = kept, kept[0][0], kept[-1][1]
    return left


def rest_cautions(
    demand: Demand,
    lines: Sequence[PlanLine],
    earlier: Sequence[Demand],
    twice: dict[int, bool],
) -> Iterator[Caution]:
    """Tell where the rest came to nothing, or to less than one piece.

    `twice` says by line, as far as it was asked before, whether an earlier one takes the same.
    """
    line = demand.choice.line
    if lines:
        if not any(one.count for one in lines):
            yield Caution("rest_under_one_piece", line)
        return
    if line not in twice:
        twice[line] = any(one.rest and _touch(one, demand) for one in earlier)
    yield Caution("rest_twice" if twice[line] else "rest_empty", line)


def _touch(one: Demand, other: Demand) -> bool:
    mine = {part.code for option in one.options for part in option.ways[0].parts}
    return any(part.code in mine for option in other.options for part in option.ways[0].parts)
