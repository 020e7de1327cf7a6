"""The plan's lines: what is made of each choice on each side, where it lies and what it weighs.

Weights are expected figures. `Occupied` keeps what lies where, for what is taken of the rest.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from shared.cutting.answer import PlanLine, Taken
from shared.cutting.capacity import EXPECTED, Animal, Interval, Side
from shared.cutting.demand import Demand, Row
from shared.cutting.run_packing import Layout, Piece
from shared.cutting.search import Problem, Units
from shared.cutting.take import Missing, Option, Strip
from shared.cutting.ways import WayPlan, Ways

ONE = Fraction(1)


@dataclass(slots=True)
class Occupied:
    """What is taken so far, at expected lengths: intervals by strip and lane, fractions of cells.

    `by_share` are fractions of parts by share, `accounts` the lengths split shares have used.
    """

    lanes: dict[tuple[Strip, int], list[Interval]] = field(
        default_factory=dict[tuple[Strip, int], list[Interval]]
    )
    parts: dict[tuple[int, int, str], Fraction] = field(
        default_factory=dict[tuple[int, int, str], Fraction]
    )
    by_share: dict[tuple[int, tuple[int, int, str]], Fraction] = field(
        default_factory=dict[tuple[int, tuple[int, int, str]], Fraction]
    )
    accounts: dict[tuple[int, Strip, int], int] = field(
        default_factory=dict[tuple[int, Strip, int], int]
    )

    def add_length(self, strip: Strip, lanes: int, start: int, end: int) -> None:
        """Note that lanes are taken from start to end, kerf included."""
        for bit in range(lanes.bit_length()):
            if lanes >> bit & 1:
                self.lanes.setdefault((strip, 1 << bit), []).append((start, end))

    def add_part(self, place: tuple[int, int, str], fraction: Fraction) -> None:
        """Note that a fraction of a part is taken."""
        self.parts[place] = self.parts.get(place, Fraction(0)) + fraction

    def charge(self, share: int, strip: Strip, lanes: int, length: int) -> None:
        """Note that a split share took a length of lanes, kerf included."""
        for bit in range(lanes.bit_length()):
            if lanes >> bit & 1:
                key = (share, strip, 1 << bit)
                self.accounts[key] = self.accounts.get(key, 0) + length

    def used_by(self, share: int, strip: Strip, lane: int) -> int:
        """Length of a lane a split share has taken."""
        return self.accounts.get((share, strip, lane), 0)

    def used_of(self, share: int, place: tuple[int, int, str]) -> Fraction:
        """What fraction of a part of a side a share has taken."""
        return self.by_share.get((share, place), Fraction(0))

    def note(self, made: PlanLine) -> None:
        """Note what a line takes for its share."""
        for one in made.taken:
            key = (made.share, (made.carcass, made.side, one.part))
            self.by_share[key] = self.by_share.get(key, Fraction(0)) + one.fraction


@dataclass(slots=True)
class Segment:
    """Neighbouring pieces of one line on one strip."""

    strip: Strip
    piece: Piece
    start: int
    count: int

    @property
    def end(self) -> int:
        """Where the last piece ends."""
        return self.start + self.count * (self.piece.size + self.piece.kerf) - self.piece.kerf


class Parts:
    """Parts taken by one plan line: fractions and weight."""

    def __init__(self, option: Option, ways: Ways, scenario: int) -> None:
        self.animal: Animal = option.animal
        self.both = len(option.held) == 2
        self.ways = ways
        self.scenario = scenario
        self.found: dict[str, Fraction] = {}
        self.weight = Fraction(0)

    def add(self, code: str, fraction: Fraction, side: Side | None) -> None:
        """Take a fraction of a part of a side, or of the animal where side is None."""
        part = self.ways.catalogue.parts[code]
        whole = self.animal.part_ng(part) if side is None else side.part_ng(part)
        self.weight += fraction * whole
        told = fraction / 2 if self.both and side is not None else fraction
        self.found[code] = self.found[code] + told if code in self.found else told

    def add_segment(self, one: Segment) -> None:
        """Take what a segment covers of each lane."""
        side = self.animal.sides[one.strip[1] - 1]
        bounds = side.bounds[self.scenario][one.strip[2]]
        places = self.ways.at[one.strip[2]]
        for place in range(len(places)):
            lo, hi = bounds[place], bounds[place + 1]
            if hi <= one.start:
                continue
            if lo >= one.end:
                break
            length = covered(one, hi) - covered(one, lo)
            if length:
                fraction = ONE if length == hi - lo else Fraction(length, hi - lo)
                for bit, part in places[place]:
                    if bit & one.piece.lanes:
                        self.add(part.code, fraction, side)

    def taken(self) -> tuple[Taken, ...]:
        """The parts in the order they were met."""
        return tuple([Taken(code, fraction) for code, fraction in self.found.items()])


def covered(one: Segment, point: int) -> int:
    """How much of a segment's pieces lies before a point, kerfs left out."""
    size, step = one.piece.size, one.piece.size + one.piece.kerf
    reach = point - one.start
    if reach <= 0:
        return 0
    whole, over = divmod(reach, max(1, step))
    if whole >= one.count:
        return one.count * size
    return whole * size + min(over, size)


@dataclass(slots=True)
class Laid:
    """One group as it is laid: its rows, units, problem and layouts, and the lengths used."""

    rows: list[Row]
    units: Units
    given: Problem
    layouts: list[Layout]
    scenario: int


class Hands:
    """Deals the pieces that lie on each strip out to the lines, from the head end on."""

    def __init__(self, laid: Laid) -> None:
        self.laid = laid
        self.queues: dict[tuple[int, int], list[tuple[int, int]]] = {}
        for packing, layout in enumerate(laid.layouts):
            for block in sorted(layout, key=lambda one: one.start):
                self.queues.setdefault((packing, block.kind), []).append(
                    (block.start, block.number)
                )

    def deal(self, packing: int, kind: int, count: int) -> list[Segment]:
        """The next pieces of a kind, as segments."""
        piece = self.laid.given.packings[packing].kinds[kind]
        strip = self.laid.given.where[packing]
        queue = self.queues.get((packing, kind), [])
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


def lines_of(
    laid: Laid, choices: dict[int, Demand], occupied: Occupied, ways: Ways
) -> Iterator[PlanLine]:
    """The plan lines of one group."""
    hands = Hands(laid)
    for (_, parts), row, units in zip(laid.given.rows, laid.rows, laid.units, strict=True):
        demand = choices[row.line]
        for part, option, count in zip(parts, row.options, units, strict=True):
            if not count:
                continue
            dealt = [hands.deal(packing, kind, count) for packing, kind in part.pieces]
            for segments in dealt:
                for one in segments:
                    _occupy(one, option, laid.scenario, occupied)
            _count_parts(option, count, laid.scenario, occupied, ways)
            if option.wanted.fraction is None:
                lines = _piece_lines(demand, option, count, dealt, laid.scenario, ways)
            else:
                lines = _all_lines(demand, option, dealt, laid.scenario, ways)
            for made in lines:
                occupied.note(made)
                yield made


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
            fraction = Fraction(amount * count, option.wanted.denominator)
            occupied.add_part((carcass, side, code), fraction)


def _side_of(option: Option, number: int) -> Side | None:
    return None if number == 0 else option.animal.sides[number - 1]


def _add_cells(option: Option, count: int, parts: Parts, ways: Ways) -> None:
    take = option.take(parts.scenario, ways)
    if isinstance(take, Missing):
        return
    for (_, side, code, share, _), amount, _ in take.cells:
        if share == 0:
            fraction = Fraction(amount * count, option.wanted.denominator)
            parts.add(code, fraction, _side_of(option, side))


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
    _add_cells(option, count, first, ways)
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
        parts.weight.numerator // parts.weight.denominator,
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
            if plan in left:
                left.remove(plan)
                _add_way_cells(option, plan, cells, parts)
            count, size = pieces_of(plan, option, one, scenario, ways)
            yield line(demand, option, plan, count, parts, one.start, one.end, size)
    for plan in left:
        parts = Parts(option, ways, scenario)
        count = _add_way_cells(option, plan, cells, parts)
        if parts.found:
            yield line(demand, option, plan, count, parts, None, None, None)


def _add_way_cells(
    option: Option,
    plan: WayPlan,
    cells: Sequence[tuple[tuple[int, int, str, int, int], int, int]],
    parts: Parts,
) -> int:
    """Add the cells that are this way's; how many pieces they make."""
    count = 0
    shares = {off.part.code: off.share for off in plan.off_run}
    for (_, side, code, share, _), amount, _ in cells:
        if share == 0 and code in shares and code not in parts.found:
            fraction = Fraction(amount, option.wanted.denominator)
            parts.add(code, fraction, _side_of(option, side))
            pieces = fraction / shares[code]
            count = max(count, pieces.numerator // pieces.denominator, 1)
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
    single = Option(
        option.carcass,
        option.side,
        (plan,),
        option.held,
        option.animal,
        want.single(),
    )
    found = single.take(scenario, ways)
    return None if isinstance(found, Missing) else found.pieces[0][1].size
