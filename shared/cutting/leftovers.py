"""What is left when every counted line lies: the lines that take the rest, and the open parts."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part
from shared.cutting.answer import Caution, OpenPart, PlanLine
from shared.cutting.capacity import ALL, EXPECTED, NOTHING, Animal, Held, Interval, Side
from shared.cutting.demand import Demand
from shared.cutting.lanes import bits_of
from shared.cutting.occupied import Occupied
from shared.cutting.take import Option, Strip, account_length
from shared.cutting.taken import Parts, line, ratio
from shared.cutting.ways import OffRun, Ways
from shared.cutting.whole_lines import pieces_of
from shared.cutting.windows import window

Block = tuple[Strip, int, int, int]  # strip, lanes, start, end
_Left = tuple[Part, Fraction]


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
        run, lanes = plan.on_run.run, plan.on_run.lanes
        for held in option.held:
            there = window(held, plan.on_run, EXPECTED, ways)
            if there is None:
                continue
            strip = (option.carcass, held.side.number, run)
            for lo, hi in free_of(strip, lanes, there.allowed, occupied):
                if held.split:
                    hi = min(hi, lo + _account_left(option, held, strip, lanes, occupied, ways))
                if hi > lo:
                    block = strip, lanes, lo, hi
                    lines.append(_rest_line(demand, option, held, block, occupied, ways))
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
    demand: Demand, option: Option, held: Held, block: Block, occupied: Occupied, ways: Ways
) -> PlanLine:
    plan, alone = option.ways[0], option
    strip, lanes, start, end = block
    if len(option.held) > 1 or option.side != held.side.number:
        alone = Option(
            option.carcass, held.side.number, option.ways, (held,), option.animal, option.wanted
        )
    parts = Parts(alone, ways, EXPECTED)
    parts.add_block(strip, lanes, start, end)
    occupied.add_length(strip, lanes, start, end)
    if held.split:
        occupied.charge(option.wanted.share, strip, lanes, end - start)
    count, size = pieces_of(plan, alone, end - start, EXPECTED, ways)
    return line(demand, alone, plan, count, parts, start, end, size)


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


def _account_left(
    option: Option, held: Held, strip: Strip, lanes: int, occupied: Occupied, ways: Ways
) -> int:
    """What a split share may still take of these lanes."""
    run, share, used = strip[2], option.wanted.share, occupied.accounts
    return min(
        [
            account_length(held, run, bit, EXPECTED, ways) - used.get((share, strip, bit), 0)
            for bit in bits_of(lanes)
        ]
    )


def free_of(
    strip: Strip, lanes: int, allowed: Sequence[Interval], occupied: Occupied
) -> Sequence[Interval]:
    """What of some intervals is free in all these lanes."""
    known, left = occupied.lanes, allowed
    for bit in bits_of(lanes):
        for begin, end in known.get((strip, bit), ()):
            if len(left) == 1 and (end <= left[0][0] or left[0][1] <= begin):
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
            left = kept
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
    sides: dict[tuple[int, int], list[_Left]] = {}
    for share in shares:
        if share.leader is None:
            for one in held[share.number]:
                carcass, side = one.side.carcass, one.side.number
                mine = known.get((share.number, carcass, side))
                if mine is None:
                    if (carcass, side) not in sides:
                        sides[carcass, side] = _left_of_side(one.side, occupied, ways)
                    mine = _open_of_side(share.number, one, sides[carcass, side], occupied)
                    known[share.number, carcass, side] = mine
                whole = known.get((share.number, carcass, -side))
                if whole is None:
                    whole = _open_of_animal(share.number, one, herd[carcass], occupied, ways)
                    known[share.number, carcass, -side] = whole
                found += mine
                found += whole
    return tuple(found)


def _open_of_side(
    share: int, held: Held, there: Iterable[_Left], occupied: Occupied
) -> tuple[OpenPart, ...]:
    """The open parts of a side for one who holds of it."""
    found: list[OpenPart] = []
    carcass, number, fractions = held.side.carcass, held.side.number, held.fractions
    for part, left in there:
        mine = fractions[part.quarter]
        if not mine:
            continue
        if mine is not ALL and mine < 1:
            used = occupied.used_of(share, (carcass, number, part.code))
            left = min(left, max(NOTHING, mine - used))
        if left:
            found.append(OpenPart(share, carcass, number, part.code, left))
    return tuple(found)


def _left_of_side(side: Side, occupied: Occupied, ways: Ways) -> list[_Left]:
    """What nobody has taken of each part of a side that may be open."""
    found: list[_Left] = []
    carcass, number, lost, whole = side.carcass, side.number, side.lost, occupied.denominator
    for part, run, lane, place in ways.may_be_open:
        if part.code in lost:
            continue
        if run < 0:
            above, below = whole - occupied.parts.get((carcass, number, part.code), 0), whole
        elif ((carcass, number, run), lane) in occupied.lanes:
            bounds = side.bounds[EXPECTED][run]
            above, below = _open_length((carcass, number, run), lane, bounds, place, occupied)
        else:
            above = below = 1
        if above > 0:
            found.append((part, ALL if above == below else ratio(above, below)))
    return found


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
