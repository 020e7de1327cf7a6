"""What one piece, or all of a cut, takes of one side in one way: lengths of lanes, parts, accounts.

An `Option` is one way of making one choice on one side (or on both sides, or from the animal).
Under each set of lengths it becomes a `Take`: pieces on strips and whole amounts of cells. A
strip is one run of one side. A cell is a part of a side or of an animal, or a split share's
account of either.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, NamedTuple

from shared.cutting.accounts import account_length, slices_in_turn
from shared.cutting.capacity import ALL, EXPECTED, NOTHING, Animal, Held, Interval
from shared.cutting.intervals import Block, united
from shared.cutting.lanes import bits_of
from shared.cutting.piece_length import Wanted, piece_length
from shared.cutting.run_packing import Piece
from shared.cutting.ways import OffRun, OnRun, WayPlan, Ways
from shared.cutting.windows import window

if TYPE_CHECKING:
    from shared.cutting.answer import PlanLine
    from shared.cutting.laying import Dealt

Strip = tuple[int, int, int]  # carcass, side, run
Lane = tuple[Strip, int]
Cell = tuple[int, int, str, int, int]  # carcass, side (0 the animal), part, share (0 all), lane


class Keys(NamedTuple):
    """The lanes and cells something touches."""

    lanes: tuple[Lane, ...]
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Missing:
    """Why an option can't be: "not_owned", "gone", "srm", "skin" or "joined", and the part."""

    kind: str
    part: str = ""


class Take(NamedTuple):
    """What one unit takes: pieces on strips, and of cells (cell, amount, what is there).

    `undivided`: a piece is bigger than its owner's account.
    """

    pieces: tuple[tuple[Strip, Piece], ...]
    cells: tuple[tuple[Cell, int, int], ...]
    undivided: bool = False


@dataclass(slots=True)
class Option:
    """One way on one side; several ways at once where all of them are wanted.

    `side` is 0 for both sides or the animal. `cap` is how many units may be made here at most,
    -1 for no bound of its own. `takes` is memory, by lengths, and
    `made` what was made with it last: units, lengths, where they lie, and the lines.
    """

    carcass: int
    side: int
    ways: tuple[WayPlan, ...]
    held: tuple[Held, ...]
    animal: Animal
    wanted: Wanted
    cap: int = -1
    takes: dict[int, Take | Missing] | None = None
    made: "tuple[int, int, Dealt, list[PlanLine]] | None" = None

    def take(self, scenario: int, ways: Ways) -> Take | Missing:
        """What one unit takes with these lengths."""
        known = self.takes
        if known is None:
            known = self.takes = {}
        found = known.get(scenario)
        if found is None:
            if self.wanted.fraction is None:
                found = _one_piece(self, scenario, ways)
            else:
                found = _all_of(self, scenario, ways)
            known[scenario] = found
        return found


def missing(option: Option, ways: Ways) -> Missing | None:
    """Why nothing can be made of a one-way option that takes what is left; None where it can."""
    plan = option.ways[0]
    for held in option.held or (None,):
        if plan.on_run is not None and held is not None:
            found = window(held, plan.on_run, EXPECTED, ways)
            if found is None:
                return Missing("not_owned")
            allowed, whole = found.allowed, plan.on_run.take.size == "whole"
            if not allowed or (whole and allowed != ((found.lo, found.hi),)):
                return Missing(found.lost or "gone", found.lost_part)
        for off in plan.off_run:
            lost = _part_missing(option, held, off)
            if lost is not None:
                return lost
    return None


def _part_missing(option: Option, held: Held | None, off: OffRun) -> Missing | None:
    part = off.part
    if part.per == "animal":
        animal = option.animal
        return Missing(animal.lost[part.code], part.code) if part.code in animal.lost else None
    if held is None or not held.fraction(part.quarter):
        return Missing("not_owned", part.code)
    side = held.side
    return Missing(side.lost[part.code], part.code) if part.code in side.lost else None


def _one_piece(option: Option, scenario: int, ways: Ways) -> Take | Missing:
    plan = option.ways[0]
    pieces: list[tuple[Strip, Piece]] = []
    cells: list[tuple[Cell, int, int]] = []
    undivided = False
    for held in option.held or (None,):
        if plan.on_run is not None and held is not None:
            found = _run_piece(held, plan.on_run, option.wanted, scenario, ways)
            if isinstance(found, Missing):
                return found
            strip = (option.carcass, held.side.number, plan.on_run.run)
            pieces.append((strip, found))
            if held.split:
                sliced = plan.on_run.take.size == "slice"
                undivided |= _charge_run(
                    cells, strip, found, held, option.wanted, scenario, ways, sliced
                )
        for off in plan.off_run:
            first = held is None or held is option.held[0]
            lost = _take_part(option, held, off, off.share, first, scenario, ways, pieces, cells)
            if isinstance(lost, Missing):
                return lost
            undivided |= lost
    if len(cells) > 1:
        cells, too_much = _summed(cells)
        undivided |= too_much
    if undivided:
        cells = [one for one in cells if not one[0][3] or not one[0][1]]
    return Take(tuple(pieces), tuple(cells), undivided)


def _summed(cells: list[tuple[Cell, int, int]]) -> tuple[list[tuple[Cell, int, int]], bool]:
    """Each cell once, with all that one unit takes of it; whether that is more than an account.

    A unit that is bigger than its owner's account in anything is charged to the side alone.
    """
    found: dict[Cell, tuple[int, int]] = {}
    for cell, amount, there in cells:
        before = found.get(cell)
        found[cell] = (
            (amount, there) if before is None else (amount + before[0], max(there, before[1]))
        )
    if len(found) == len(cells):
        return cells, False
    both = [(cell, amount, there) for cell, (amount, there) in found.items()]
    return both, any(cell[3] and cell[1] and amount > there for cell, amount, there in both)


def _run_piece(
    held: Held, on_run: OnRun, want: Wanted, scenario: int, ways: Ways
) -> Piece | Missing:
    found = window(held, on_run, scenario, ways)
    if found is None:
        return Missing("not_owned")
    size = on_run.take.size
    lo, hi, allowed = found.lo, found.hi, found.allowed
    if size == "whole":
        if allowed != ((lo, hi),):
            return Missing(found.lost or "gone", found.lost_part)
        return Piece(on_run.lanes, allowed, hi - lo, 0)
    if not allowed:
        return Missing(found.lost or "gone", found.lost_part)
    if size == "slice":
        return Piece(on_run.lanes, allowed, want.thickness, want.kerf)
    length = piece_length(held, on_run, found, want, scenario, ways)
    if on_run.take.anchor == "head":
        allowed = allowed[:1] if allowed[0][0] == lo else ()
        return Piece(on_run.lanes, allowed, length, want.kerf, -1)
    if on_run.take.anchor == "tail":
        allowed = allowed[-1:] if allowed[-1][1] == hi else ()
        return Piece(on_run.lanes, allowed, length, want.kerf, 1)
    return Piece(on_run.lanes, allowed, length, want.kerf)


def _take_part(
    option: Option,
    held: Held | None,
    off: OffRun,
    share: Fraction,
    first: bool,
    scenario: int,
    ways: Ways,
    pieces: list[tuple[Strip, Piece]],
    cells: list[tuple[Cell, int, int]],
) -> bool | Missing:
    """Add what is taken of one part off the run; whether it is bigger than the account."""
    part, want = off.part, option.wanted
    amount = share.numerator * (want.denominator // share.denominator)
    lost = _part_missing(option, held, off)
    if lost is not None:
        return lost
    if part.per == "animal":
        if first:
            _take_single(option, off, share, cells)
        return False
    assert held is not None, "a part of a side that is there is held"
    fraction, side = held.fraction(part.quarter), held.side
    if off.run >= 0:
        return _take_lane(option, held, off, share, scenario, ways, pieces, cells)
    cells.append(((option.carcass, side.number, part.code, 0, 0), amount, want.denominator))
    if not held.split or fraction == 1:
        return False
    there = fraction.numerator * (want.denominator // fraction.denominator)
    if amount > there:
        return True
    cells.append(((option.carcass, side.number, part.code, want.share, 0), amount, there))
    return False


def _take_single(
    option: Option, off: OffRun, share: Fraction, cells: list[tuple[Cell, int, int]]
) -> None:
    """Add what is taken of a part of the animal: where owners share it, of one's own part.

    Worked numbers: of a liver in 12 packages a half has 6; of the tail, one piece, half.
    """
    want, place = option.wanted, (option.carcass, 0, off.part.code)
    room = option.animal.rooms.get((want.share, off.part.code))
    if room is not None:
        share = min(share, room) if want.fraction is None else share * room
    amount = share.numerator * (want.denominator // share.denominator)
    cells.append(((*place, 0, 0), amount, want.denominator))
    if room is not None:
        there = room.numerator * (want.denominator // room.denominator)
        cells.append(((*place, want.share, 0), amount, there))


def _take_lane(
    option: Option,
    held: Held,
    off: OffRun,
    share: Fraction,
    scenario: int,
    ways: Ways,
    pieces: list[tuple[Strip, Piece]],
    cells: list[tuple[Cell, int, int]],
) -> bool:
    """Add a part that lies on a run: its whole stretch of its lane."""
    side = held.side
    bounds = side.bounds[scenario][off.run]
    lo, hi = bounds[off.stretch], bounds[off.stretch + 1]
    strip = (option.carcass, side.number, off.run)
    length = (hi - lo) * share.numerator // share.denominator
    piece = Piece(off.lane, ((lo, hi),), length, 0)
    pieces.append((strip, piece))
    return held.split and _charge_run(cells, strip, piece, held, option.wanted, scenario, ways)


def _charge_run(
    cells: list[tuple[Cell, int, int]],
    strip: Strip,
    piece: Piece,
    held: Held,
    want: Wanted,
    scenario: int,
    ways: Ways,
    sliced: bool = False,
) -> bool:
    """Charge a piece to the account of a split share, lane by lane; whether it is too big."""
    carcass, side, run = strip
    code = ways.runs[run].code
    charged: list[tuple[Cell, int, int]] = []
    for bit in bits_of(piece.lanes):
        there = account_length(held, run, bit, scenario, ways)
        if piece.size > there:
            return True
        cell = (carcass, side, code, want.share, bit)
        room = there + piece.kerf
        if sliced and held.turn is not None:
            room = max(room, slices_in_turn(held, run, bit, piece, scenario, ways))
        charged.append((cell, piece.size + piece.kerf, room))
    cells += charged
    return False


def _all_of(option: Option, scenario: int, ways: Ways) -> Take | Missing:
    """All (or a fraction of all) of every way: blocks on runs and shares of parts."""
    fraction = option.wanted.fraction or ALL
    pieces: list[tuple[Strip, Piece]] = []
    cells: list[tuple[Cell, int, int]] = []
    undivided = False
    for held in option.held or (None,):
        if held is not None:
            strips = _blocks(option, held, scenario, ways)
            if isinstance(strips, Missing):
                return strips
            for run, lanes, reach, allowed in strips:
                length = reach[1] - reach[0]
                part = fraction
                if held.split:
                    part = _times(fraction, _mean_fraction(held, run, reach, scenario, ways))
                if part is not ALL:
                    length = length * part.numerator // part.denominator
                strip = (option.carcass, held.side.number, run)
                piece = Piece(lanes, allowed, length, 0)
                pieces.append((strip, piece))
                if held.split:
                    undivided |= _charge_run(
                        cells, strip, piece, held, option.wanted, scenario, ways
                    )
        first = held is None or held is option.held[0]
        for off in _parts_once(option.ways):
            mine = fraction
            if held is not None and held.split and off.part.per == "side":
                mine = _times(fraction, held.fraction(off.part.quarter))
            lost = _take_part(option, held, off, mine, first, scenario, ways, pieces, cells)
            if isinstance(lost, Missing):
                return lost
            undivided |= lost
    return Take(tuple(pieces), tuple(cells), undivided)


def _times(one: Fraction, other: Fraction) -> Fraction:
    return other if one is ALL else one * other


def _parts_once(plans: tuple[WayPlan, ...]) -> list[OffRun]:
    if len(plans) == 1:
        return list(plans[0].off_run)
    return list({off.part.code: off for plan in plans for off in plan.off_run}.values())


def _blocks(option: Option, held: Held, scenario: int, ways: Ways) -> list[Block] | Missing:
    """The windows of all ways on one side, united: run, lanes, reach, allowed."""
    found: list[Block] = []
    for plan in option.ways:
        if plan.on_run is None:
            continue
        there = window(held, plan.on_run, scenario, ways)
        if there is None:
            return Missing("not_owned")
        if there.lost and (option.wanted.fraction == 1 or not there.allowed):
            return Missing(there.lost, there.lost_part)
        if option.wanted.fraction == 1 and not held.split:
            reaches = [(span, (span,)) for span in there.allowed]
        else:
            reaches = [((there.lo, there.hi), there.allowed)]
        for reach, allowed in reaches:
            found.append((plan.on_run.run, plan.on_run.lanes, reach, allowed))
    return found if len(found) < 2 else united(found)


def _mean_fraction(held: Held, run: int, reach: Interval, scenario: int, ways: Ways) -> Fraction:
    """The fraction a split share holds of a reach of a run."""
    if held.uniform or reach[0] >= reach[1]:
        return held.fractions[""]
    bounds = held.side.bounds[scenario][run]
    total = NOTHING
    for place, stretch in enumerate(ways.runs[run].stretches):
        overlap = min(reach[1], bounds[place + 1]) - max(reach[0], bounds[place])
        if overlap > 0:
            total += overlap * held.fraction(stretch.quarter)
    return total / (reach[1] - reach[0])
