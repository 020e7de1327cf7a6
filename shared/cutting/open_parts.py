"""The parts nobody has settled: what of each is left when every line lies, owner by owner."""

from collections.abc import Iterable, Sequence, Set
from dataclasses import dataclass, field
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part
from shared.cutting.answer import OpenPart
from shared.cutting.capacity import ALL, EXPECTED, NOTHING, Animal, Held, Interval, Side
from shared.cutting.leftovers import free_of
from shared.cutting.occupied import Occupied, Place
from shared.cutting.take import Strip, account_length
from shared.cutting.taken import ratio
from shared.cutting.ways import Ways


@dataclass(slots=True)
class Opened:
    """Open parts reckoned before, by share, carcass and side, and what is left of each part.

    `left` are fractions nobody has taken, by carcass and side, in the order of the parts that may
    be open; None was not reckoned, or has changed since.
    """

    of_side: dict[tuple[int, int, int], tuple[OpenPart, ...]] = field(
        default_factory=dict[tuple[int, int, int], tuple[OpenPart, ...]]
    )
    of_animal: dict[tuple[int, int, int], tuple[OpenPart, ...]] = field(
        default_factory=dict[tuple[int, int, int], tuple[OpenPart, ...]]
    )
    left: dict[tuple[int, int], list[Fraction | None]] = field(
        default_factory=dict[tuple[int, int], list[Fraction | None]]
    )

    def forget(self, changed: Set[Place], ways: Ways) -> None:
        """Forget what lies where something else is taken now."""
        sides = {one[0][:2] if len(one) == 2 else one[:2] for one in changed}
        carcasses = {carcass for carcass, side in sides if not side}
        self.of_side = {at: it for at, it in self.of_side.items() if at[1:] not in sides}
        self.of_animal = {at: it for at, it in self.of_animal.items() if at[1] not in carcasses}
        for (carcass, side), left in self.left.items():
            if (carcass, side) in sides:
                for place, (part, run, lane, _) in enumerate(ways.may_be_open):
                    off = carcass, side, part.code
                    if (off if run < 0 else ((carcass, side, run), lane)) in changed:
                        left[place] = None

    def left_of(self, side: Side, occupied: Occupied, ways: Ways) -> list[Fraction | None]:
        """What nobody has taken of each part of a side that may be open."""
        key = side.carcass, side.number
        left = self.left.get(key)
        if left is None:
            left = self.left[key] = [None] * len(ways.may_be_open)
        for place, known in enumerate(left):
            if known is None:
                left[place] = _left_of_part(side, ways.may_be_open[place], occupied)
        return left


def open_parts(
    shares: Sequence[Share],
    held: dict[int, tuple[Held, ...]],
    herd: Sequence[Animal],
    occupied: Occupied,
    ways: Ways,
    known: Opened,
) -> tuple[OpenPart, ...]:
    """Parts nobody has settled, share by share; trim by nature and named losses aren't open.

    `known` are those reckoned before; what is new is added.
    """
    found: list[OpenPart] = []
    for share in shares:
        if share.leader is None:
            for one in held[share.number]:
                carcass, side = one.side.carcass, one.side.number
                mine = known.of_side.get((share.number, carcass, side))
                if mine is None:
                    left = known.left_of(one.side, occupied, ways)
                    mine = _open_of_side(share.number, one, left, occupied, ways)
                    known.of_side[share.number, carcass, side] = mine
                whole = known.of_animal.get((share.number, carcass, side))
                if whole is None:
                    whole = _open_of_animal(share.number, one, herd[carcass], occupied, ways)
                    known.of_animal[share.number, carcass, side] = whole
                found += mine
                found += whole
    return tuple(found)


def _open_of_side(
    share: int, held: Held, there: Iterable[Fraction | None], occupied: Occupied, ways: Ways
) -> tuple[OpenPart, ...]:
    """The open parts of a side for one who holds of it.

    Of a divided side a share has no more open than it hasn't taken, and than its account of the
    lane still holds: the kerfs of its slices are its own, and what rounding leaves is nobody's.
    """
    found: list[OpenPart] = []
    carcass, number, fractions = held.side.carcass, held.side.number, held.fractions
    for (part, run, lane, place), left in zip(ways.may_be_open, there, strict=True):
        if not left:
            continue
        mine = fractions[part.quarter]
        if mine is not ALL and mine < 1:
            if run >= 0:
                account = account_length(held, run, lane, EXPECTED, ways)
                account -= occupied.used_by(share, (carcass, number, run), lane)
                if account <= 0:
                    continue
                bounds = held.side.bounds[EXPECTED][run]
                left = min(left, ratio(account, bounds[place + 1] - bounds[place]))
            used = occupied.used_of(share, (carcass, number, part.code))
            left = min(left, max(NOTHING, mine - used))
        if left:
            found.append(OpenPart(share, carcass, number, part.code, left))
    return tuple(found)


def _left_of_part(side: Side, at: tuple[Part, int, int, int], occupied: Occupied) -> Fraction:
    part, run, lane, place = at
    carcass, number = side.carcass, side.number
    if part.code in side.lost:
        return NOTHING
    if run < 0:
        whole = occupied.denominator
        above, below = whole - occupied.parts.get((carcass, number, part.code), 0), whole
    elif ((carcass, number, run), lane) in occupied.lanes:
        bounds = side.bounds[EXPECTED][run]
        above, below = _open_length((carcass, number, run), lane, bounds, place, occupied)
    else:
        return ALL
    if above <= 0:
        return NOTHING
    return ALL if above == below else ratio(above, below)


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
