"""The parts nobody has settled: what of each is left when every line lies, owner by owner."""

from collections.abc import Iterable, Iterator, Mapping, Sequence, Set
from dataclasses import dataclass, field
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.cutting.accounts import account_length
from shared.cutting.answer import OpenPart
from shared.cutting.capacity import ALL, EXPECTED, NOTHING, Animal, Held, Side
from shared.cutting.leftovers import free_of
from shared.cutting.occupied import Occupied, Place
from shared.cutting.taken import ratio
from shared.cutting.ways import Ways
from shared.units import SIXTY_FOURTH

Spot = tuple[int, int] | str  # a lane of a run, or a part that stands alone


@dataclass(slots=True)
class _Left:
    """What nobody has taken of a side, part by part, those that are taken wholly left out.

    `stale` are the spots to be looked at again.
    """

    parts: dict[int, Fraction]
    stale: Iterable[Spot]


@dataclass(slots=True)
class Opened:
    """Open parts reckoned before, by share, carcass and side, and what is left of each side."""

    of_side: dict[tuple[int, int, int], tuple[OpenPart, ...]] = field(default_factory=lambda: {})
    of_animal: dict[tuple[int, int, int], tuple[OpenPart, ...]] = field(default_factory=lambda: {})
    left: dict[tuple[int, int], _Left] = field(default_factory=lambda: {})

    def forget(self, changed: Set[Place]) -> None:
        """Forget what lies where something else is taken now."""
        stale: dict[tuple[int, int], set[Spot]] = {}
        for one in changed:
            if len(one) == 2:
                (carcass, side, run), lane = one
                stale.setdefault((carcass, side), set()).add((run, lane))
            else:
                stale.setdefault(one[:2], set()).add(one[2])
        carcasses = {carcass for carcass, side in stale if not side}
        self.of_side = {at: it for at, it in self.of_side.items() if at[1:] not in stale}
        self.of_animal = {at: it for at, it in self.of_animal.items() if at[1] not in carcasses}
        for key, spots in stale.items():
            if key in self.left:
                self.left[key].stale = {*self.left[key].stale, *spots}

    def left_of(self, side: Side, occupied: Occupied, ways: Ways) -> dict[int, Fraction]:
        """What nobody has taken of each part of a side that may be open, by its number there."""
        key = side.carcass, side.number
        left = self.left.get(key)
        if left is None:
            left = self.left[key] = _Left({}, ways.open_spots)
        for spot in left.stale:
            for number in ways.open_spots.get(spot, ()):
                left.parts.pop(number, None)
            left.parts.update(_left_of_spot(side, spot, occupied, ways))
        left.stale = ()
        return left.parts


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
    share: int, held: Held, there: Mapping[int, Fraction], occupied: Occupied, ways: Ways
) -> tuple[OpenPart, ...]:
    """The open parts of a side for one who holds of it.

    Of a divided side a share has no more open than it hasn't taken, and than its account of the
    lane still holds: the kerfs of its slices are its own. What is shorter than 1/64 in is nobody's:
    half of an odd length, rounded down.
    """
    found: list[OpenPart] = []
    carcass, number, fractions = held.side.carcass, held.side.number, held.fractions
    for number_there in sorted(there):
        left, (part, run, lane, place) = there[number_there], ways.may_be_open[number_there]
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
        if run >= 0 and left is not ALL:
            bounds = held.side.bounds[EXPECTED][run]
            length = bounds[place + 1] - bounds[place]
            if left.numerator * length < SIXTY_FOURTH * left.denominator:
                continue
        if left:
            found.append(OpenPart(share, carcass, number, part.code, left))
    return tuple(found)


def _left_of_spot(
    side: Side, spot: Spot, occupied: Occupied, ways: Ways
) -> Iterator[tuple[int, Fraction]]:
    """What is left of the parts of a lane, or of one part; kerfs beside pieces count as taken."""
    numbers = ways.open_spots.get(spot, ())
    if isinstance(spot, str):
        whole = occupied.denominator
        left = whole - occupied.parts.get((side.carcass, side.number, spot), 0)
        if left > 0 and spot not in side.lost:
            for number in numbers:
                yield number, ALL if left == whole else ratio(left, whole)
        return
    strip, bounds = (side.carcass, side.number, spot[0]), side.bounds[EXPECTED][spot[0]]
    free = free_of(strip, spot[1], ((0, bounds[-1]),), occupied)
    if not free:
        return
    for number in numbers:
        part, _, _, place = ways.may_be_open[number]
        lo, hi = bounds[place], bounds[place + 1]
        left = 0
        for start, end in free:
            if start < hi and lo < end:
                left += (end if end < hi else hi) - (start if start > lo else lo)
        if left and part.code not in side.lost:
            yield number, ALL if left == hi - lo else ratio(left, hi - lo)


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
