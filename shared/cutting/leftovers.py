"""What is left when every counted line lies: the lines that take the rest, and the open parts."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.cutting.answer import Caution, OpenPart, PlanLine
from shared.cutting.capacity import ALL, EXPECTED, NOTHING, Animal, Held, Interval
from shared.cutting.demand import Demand
from shared.cutting.intervals import merged
from shared.cutting.lanes import bits_of
from shared.cutting.occupied import Occupied
from shared.cutting.run_packing import Piece
from shared.cutting.take import Option, Strip, account_length
from shared.cutting.taken import Parts, Segment, line, ratio
from shared.cutting.ways import OffRun, WayPlan, Ways
from shared.cutting.whole_lines import pieces_of
from shared.cutting.windows import window


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
    pending = [part for off in plan.off_run if (part := _rest_part(option, off, occupied))]
    lines: list[PlanLine] = []
    if plan.on_run is not None:
        for held in option.held:
            for segment in _free(option, held, plan, occupied, ways):
                lines.append(_rest_line(demand, option, held, segment, occupied, ways))
    if pending:
        parts = Parts(option, ways, EXPECTED)
        count = 0
        for off, held, left in pending:
            number = 0 if held is None else held.side.number
            occupied.add_part((option.carcass, number, off.part.code), left)
            whole = option.wanted.denominator
            parts.add(off.part, left, whole, None if held is None else held.side)
            one = min(off.share, _room(option, off))
            count = max(count, left * one.denominator // (whole * one.numerator))
        lines.append(line(demand, option, plan, count, parts, None, None, None))
    return lines


def _rest_line(
    demand: Demand, option: Option, held: Held, segment: Segment, occupied: Occupied, ways: Ways
) -> PlanLine:
    plan, alone = option.ways[0], option
    if len(option.held) > 1 or option.side != held.side.number:
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
) -> tuple[OffRun, Held | None, int] | None:
    held = None if off.part.per == "animal" or not option.held else option.held[0]
    number = 0 if held is None else held.side.number
    place = (option.carcass, number, off.part.code)
    whole = option.wanted.denominator
    left = whole - occupied.parts.get(place, 0)
    mine = ALL
    if held is not None and held.split:
        mine = held.fraction(off.part.quarter)
    elif held is None:
        mine = _room(option, off)
    if mine < 1:
        mine -= occupied.used_of(option.wanted.share, place)
        left = min(left, mine.numerator * whole // mine.denominator)
    if off.run >= 0 or left <= 0:
        return None
    return off, held, left


def _room(option: Option, off: OffRun) -> Fraction:
    """What a share may have of a part of the animal that owners share; all of any other."""
    return option.animal.rooms.get((option.wanted.share, off.part.code), ALL)


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
    run, share, used = strip[2], option.wanted.share, occupied.accounts
    return min(
        [
            account_length(held, run, bit, EXPECTED, ways) - used.get((share, strip, bit), 0)
            for bit in bits_of(lanes)
        ]
    )


def free_of(
    strip: Strip, lanes: int, allowed: Iterable[Interval], occupied: Occupied
) -> list[Interval]:
    """What of some intervals is free in all these lanes."""
    taken: tuple[Interval, ...] = ()
    known = occupied.lanes
    for bit in bits_of(lanes):
        taken += known.get((strip, bit), ())
    if not taken:
        return list(allowed)
    joined = taken if len(taken) == 1 else merged(taken)
    left: list[Interval] = []
    for lo, hi in allowed:
        start = lo
        for begin, end in joined:
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
    known: dict[tuple[int, int, int], tuple[OpenPart, ...]],
) -> tuple[OpenPart, ...]:
    """Parts nobody has settled, share by share; trim by nature and named losses aren't open.

    `known` are those reckoned before, by share, carcass and side, those of the animal by the side
    below nothing; what is new is added.
    """
    found: list[OpenPart] = []
    lengths: dict[tuple[Strip, int, int], Interval] = {}
    for share in shares:
        if share.leader is None:
            for one in held[share.number]:
                carcass, side = one.side.carcass, one.side.number
                mine = known.get((share.number, carcass, side))
                if mine is None:
                    mine = _open_of_side(share.number, one, occupied, ways, lengths)
                    known[share.number, carcass, side] = mine
                whole = known.get((share.number, carcass, -side))
                if whole is None:
                    whole = _open_of_animal(share.number, one, herd[carcass], occupied, ways)
                    known[share.number, carcass, -side] = whole
                found += mine
                found += whole
    return tuple(found)


def _open_of_side(
    share: int,
    held: Held,
    occupied: Occupied,
    ways: Ways,
    lengths: dict[tuple[Strip, int, int], Interval],
) -> tuple[OpenPart, ...]:
    """The open parts of a side for one who holds of it; `lengths` are those reckoned before."""
    found: list[OpenPart] = []
    side, fractions = held.side, held.fractions
    carcass, number, lost = side.carcass, side.number, side.lost
    for part, run, lane, place in ways.may_be_open:
        mine = fractions[part.quarter]
        if not mine or part.code in lost:
            continue
        where = (carcass, number, part.code)
        if run < 0:
            above, below = occupied.denominator - occupied.parts.get(where, 0), occupied.denominator
        elif ((carcass, number, run), lane) in occupied.lanes:
            stretch = (carcass, number, run), lane, place
            if stretch not in lengths:
                bounds = side.bounds[EXPECTED][run]
                lengths[stretch] = _open_length(stretch[0], lane, bounds, place, occupied)
            above, below = lengths[stretch]
        else:
            above = below = 1
        if above <= 0:
            continue
        left = ALL if above == below else ratio(above, below)
        if mine is not ALL and mine < 1:
            left = min(left, max(NOTHING, mine - occupied.used_of(share, where)))
        if left:
            found.append(OpenPart(share, carcass, number, part.code, left))
    return tuple(found)


def _open_length(
    strip: Strip, lane: int, bounds: tuple[int, ...], place: int, occupied: Occupied
) -> Interval:
    """What of a stretch of a lane is open, of its length; kerfs beside pieces count as taken."""
    lo, hi = bounds[place], bounds[place + 1]
    for start, end in occupied.lanes[strip, lane]:
        if start <= lo and hi <= end:
            return 0, 1
    return sum([end - start for start, end in free_of(strip, lane, ((lo, hi),), occupied)]), hi - lo


def _open_of_animal(
    share: int, held: Held, animal: Animal, occupied: Occupied, ways: Ways
) -> tuple[OpenPart, ...]:
    """A part of the animal is open for its owners in proportion to the sides they hold."""
    found: list[OpenPart] = []
    carcass, whole = held.side.carcass, occupied.denominator
    for part in ways.open_of_animal:
        left = whole - occupied.parts.get((carcass, 0, part.code), 0)
        if left > 0 and part.code not in animal.lost:
            mine = ratio(left, whole) * held.of_animal
            found.append(OpenPart(share, carcass, 0, part.code, mine))
    return tuple(found)
