"""What is left when every counted line lies: the lines that take the rest, and the open parts."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part
from shared.cutting.answer import Caution, OpenPart, PlanLine
from shared.cutting.capacity import EXPECTED, Animal, Held, Interval, window
from shared.cutting.demand import Demand
from shared.cutting.plan_lines import Occupied, Parts, Segment, line, pieces_of
from shared.cutting.run_packing import Piece
from shared.cutting.take import Option, Strip, account_length, merged
from shared.cutting.ways import OffRun, WayPlan, Ways

ONE = Fraction(1)


def take_rest(demand: Demand, occupied: Occupied, ways: Ways) -> list[PlanLine]:
    """Everything that is free where this line may lie, at expected lengths."""
    lines: list[PlanLine] = []
    for option in demand.options:
        plan = option.ways[0]
        pending = [part for off in plan.off_run if (part := _rest_part(option, off, occupied))]
        for held in option.held:
            if plan.on_run is None:
                break
            for segment in _free(option, held, plan, occupied, ways):
                lines.append(_rest_line(demand, option, held, segment, occupied, ways))
        if pending:
            parts = Parts(option, ways, EXPECTED)
            count = 0
            for off, held, fraction in pending:
                number = 0 if held is None else held.side.number
                place = (option.carcass, number, off.part.code)
                occupied.add_part(place, fraction)
                parts.add(off.part.code, fraction, None if held is None else held.side)
                pieces = fraction / off.share
                count = max(count, pieces.numerator // pieces.denominator)
            lines.append(line(demand, option, plan, count, parts, None, None, None))
    for made in lines:
        occupied.note(made)
    return lines


def _rest_line(
    demand: Demand, option: Option, held: Held, segment: Segment, occupied: Occupied, ways: Ways
) -> PlanLine:
    plan = option.ways[0]
    alone = Option(
        option.carcass, held.side.number, option.ways, (held,), option.animal, option.wanted
    )
    parts = Parts(alone, ways, EXPECTED)
    parts.add_segment(segment)
    occupied.add_length(segment.strip, segment.piece.lanes, segment.start, segment.end)
    if held.split:
        length = segment.end - segment.start
        occupied.charge(option.wanted.share, segment.strip, segment.piece.lanes, length)
    count, size = pieces_of(plan, alone, segment, EXPECTED, ways)
    return line(demand, alone, plan, count, parts, segment.start, segment.end, size)


def _rest_part(
    option: Option, off: OffRun, occupied: Occupied
) -> tuple[OffRun, Held | None, Fraction] | None:
    held = None if off.part.per == "animal" or not option.held else option.held[0]
    number = 0 if held is None else held.side.number
    place = (option.carcass, number, off.part.code)
    left = ONE - occupied.parts.get(place, Fraction(0))
    if held is not None and held.split:
        used = occupied.used_of(option.wanted.share, place)
        left = min(left, held.fraction(off.part.quarter) - used)
    if off.run >= 0 or left <= 0:
        return None
    return off, held, left


def _free(
    option: Option, held: Held, plan: WayPlan, occupied: Occupied, ways: Ways
) -> Iterator[Segment]:
    """Free intervals of all lanes of a way together, within its window."""
    assert plan.on_run is not None
    there = window(held, plan.on_run, EXPECTED, ways)
    if there is None:
        return
    strip = (option.carcass, held.side.number, plan.on_run.run)
    lanes = plan.on_run.lanes
    for lo, hi in free_of(strip, lanes, there.allowed, occupied):
        length = min(hi - lo, _account_left(option, held, strip, lanes, occupied, ways))
        if length > 0:
            yield Segment(strip, Piece(lanes, ((lo, lo + length),), length, 0), lo, 1)


def _account_left(
    option: Option, held: Held, strip: Strip, lanes: int, occupied: Occupied, ways: Ways
) -> int:
    """What a split share may still take of these lanes; no bound for a share that isn't split."""
    if not held.split:
        return 1 << 60
    return min(
        account_length(held, strip[2], 1 << bit, EXPECTED, ways)
        - occupied.used_by(option.wanted.share, strip, 1 << bit)
        for bit in range(lanes.bit_length())
        if lanes >> bit & 1
    )


def free_of(
    strip: Strip, lanes: int, allowed: Iterable[Interval], occupied: Occupied
) -> list[Interval]:
    """What of some intervals is free in all these lanes."""
    taken: list[Interval] = []
    for bit in range(lanes.bit_length()):
        if lanes >> bit & 1:
            taken += occupied.lanes.get((strip, 1 << bit), ())
    left: list[Interval] = []
    for lo, hi in allowed:
        start = lo
        for begin, end in merged(tuple(taken)):
            if begin >= hi:
                break
            if begin > start:
                left.append((start, begin))
            start = max(start, end)
        if start < hi:
            left.append((start, hi))
    return left


def rest_cautions(
    demand: Demand, lines: Sequence[PlanLine], earlier: Sequence[Demand]
) -> Iterator[Caution]:
    """Tell where the rest came to nothing, or to less than one piece."""
    if not lines:
        twice = any(one.rest and _touch(one, demand) for one in earlier)
        yield Caution("rest_twice" if twice else "rest_empty", demand.choice.line)
    elif not any(one.count for one in lines):
        yield Caution("rest_under_one_piece", demand.choice.line)


def _touch(one: Demand, other: Demand) -> bool:
    mine = {part.code for option in one.options for part in option.ways[0].parts}
    return any(part.code in mine for option in other.options for part in option.ways[0].parts)


def open_parts(
    shares: Sequence[Share],
    held: dict[int, tuple[Held, ...]],
    herd: Sequence[Animal],
    occupied: Occupied,
    ways: Ways,
) -> tuple[OpenPart, ...]:
    """Parts nobody has settled, share by share; trim by nature and named losses aren't open."""
    found: list[OpenPart] = []
    parts = [
        part for part in ways.catalogue.parts.values() if not part.by_nature_trim and not part.loss
    ]
    for share in shares:
        if share.leader is not None:
            continue
        for one in held[share.number]:
            animal = herd[one.side.carcass]
            for part in parts:
                if part.per == "side" and part.code not in one.side.lost:
                    found += _open_of_side(share.number, one, part, occupied, ways)
                elif part.per == "animal" and part.code not in animal.lost:
                    found += _open_of_animal(share.number, one, part, occupied)
    return tuple(found)


def _open_of_side(
    share: int, held: Held, part: Part, occupied: Occupied, ways: Ways
) -> list[OpenPart]:
    mine = held.fraction(part.quarter)
    if not mine:
        return []
    place = (held.side.carcass, held.side.number, part.code)
    left = free_fraction(held, part, occupied, ways)
    if mine < 1 and left:
        used = occupied.used_of(share, place)
        left = min(left, max(Fraction(0), mine - used))
    return [OpenPart(share, *place[:2], part.code, left)] if left > 0 else []


def free_fraction(held: Held, part: Part, occupied: Occupied, ways: Ways) -> Fraction:
    """What of a part of a side nobody takes; the kerfs beside pieces count as taken."""
    side = held.side
    if not part.run:
        taken = occupied.parts.get((side.carcass, side.number, part.code), Fraction(0))
        return max(Fraction(0), ONE - taken)
    run = ways.run_place[part.run]
    bounds, place = side.bounds[EXPECTED][run], ways.runs[run].place(part.stretch)
    lo, hi = bounds[place], bounds[place + 1]
    lane = 1 << ways.runs[run].lanes.index(part.lane)
    strip = (side.carcass, side.number, run)
    if (strip, lane) not in occupied.lanes:
        return ONE
    free = sum([end - start for start, end in free_of(strip, lane, ((lo, hi),), occupied)])
    return Fraction(free, hi - lo) if hi > lo else Fraction(0)


def _open_of_animal(share: int, held: Held, part: Part, occupied: Occupied) -> list[OpenPart]:
    """A part of the animal is open for its owners in proportion to the sides they hold."""
    carcass = held.side.carcass
    left = ONE - occupied.parts.get((carcass, 0, part.code), Fraction(0))
    mine = left * held.of_animal()
    return [OpenPart(share, carcass, 0, part.code, mine)] if mine > 0 else []
