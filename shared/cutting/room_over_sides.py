"""How much room rows leave for more of another over all the places it may lie in, by sums alone."""

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import ENDLESS
from shared.cutting.take import Cell, Missing, Strip, Take

Reach = dict[Strip, tuple[int, int]]
Account = tuple[str, int, int]  # part, share, lane


class _Length(NamedTuple):
    """What a row takes of one lane wherever it is made: the least of a unit, and the ends."""

    need: int
    each: int
    kerf: int
    reach: Reach


class _Charge(NamedTuple):
    """What a row takes of one account on whatever side: the least of a unit, and what is there."""

    need: int
    each: int
    there: dict[Cell, int]


class RoomOverSides:
    """Rows that must be met: no more of another row than this fit beside them on all sides."""

    def __init__(self, rows: Iterable[tuple[int, Sequence[Take | Missing]]]) -> None:
        """Rows: so many units with any of these takes."""
        self._lanes: dict[int, list[_Length]] = {}
        self._accounts: dict[Account, list[_Charge]] = {}
        self._there: dict[Cell, int] = {}  # the most that any row brings to a cell
        for need, takes in rows:
            mine = [take for take in takes if not isinstance(take, Missing)]
            for cell, _, there in [one for take in mine for one in take.cells]:
                self._there[cell] = max(there, self._there.get(cell, 0))
            for lane, length in _lengths(mine, need).items():
                self._lanes.setdefault(lane, []).append(length)
            for account, charge in _charges(mine, need).items():
                self._accounts.setdefault(account, []).append(charge)

    def most(self, takes: Sequence[Take | Missing]) -> int:
        """No more units with any of some takes than this fit; whether so many do is not said.

        Worked number: 3 steaks of 1 1/2 in lie on two sides of 12 in each, kerfs 1/16 in. Beside
        them no more than 14 of 1 1/4 in fit: of 24 1/8 in less 4 11/16 in each takes 1 5/16 in.
        """
        mine = [take for take in takes if not isinstance(take, Missing)]
        most = ENDLESS
        for lane, length in _lengths(mine, 1).items():
            most = min(most, _left(length, self._lanes.get(lane, ())))
        for account, charge in _charges(mine, 1).items():
            most = min(most, self._unspent(charge, self._accounts.get(account, ())))
        return max(0, most)

    def _unspent(self, one: _Charge, others: Sequence[_Charge]) -> int:
        """Units that what is there pays for, less what others surely take of it."""
        there = [max(most, self._there.get(cell, 0)) for cell, most in one.there.items()]
        spent = [
            other.need * other.each for other in others if other.there.keys() <= one.there.keys()
        ]
        return (sum(there) - sum(spent)) // one.each


def _left(one: _Length, others: Sequence[_Length]) -> int:
    """Units that fit into the windows of one row, and into any that hold all of them."""
    most = ENDLESS
    around = [one.reach, *[other.reach for other in others if _within(one.reach, other.reach)]]
    for window in around:
        inside = [other for other in others if _within(other.reach, window)]
        kerf = max([one.kerf, *[other.kerf for other in inside]])
        left = sum([hi - lo + kerf for lo, hi in window.values()])
        left -= sum([other.need * other.each for other in inside])
        most = min(most, left // one.each)
    return most


def _within(
    reach: Mapping[Strip, tuple[int, int]], window: Mapping[Strip, tuple[int, int]]
) -> bool:
    return all(
        strip in window and window[strip][0] <= lo and hi <= window[strip][1]
        for strip, (lo, hi) in reach.items()
    )


def _lengths(takes: Sequence[Take], need: int) -> dict[int, _Length]:
    """By lane, of those that every take takes of."""
    found: dict[int, _Length] = {}
    for first, take in enumerate(takes):
        mine: dict[int, _Length] = {}
        for strip, piece in take.pieces:
            step = piece.size + piece.kerf
            if not step or not piece.allowed:
                continue
            lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
            for lane in bits_of(piece.lanes):
                here = mine.get(lane)
                if here is None:
                    mine[lane] = _Length(need, step, piece.kerf, {strip: (lo, hi)})
                else:
                    mine[lane] = _both(here, step + here.each, piece.kerf, {strip: (lo, hi)})
        found = (
            mine
            if not first
            else {
                lane: _both(found[lane], min(found[lane].each, one.each), one.kerf, one.reach)
                for lane, one in mine.items()
                if lane in found
            }
        )
    return found


def _both(one: _Length, each: int, kerf: int, reach: Reach) -> _Length:
    """The same with more places to lie in."""
    joined = dict(one.reach)
    for strip, (lo, hi) in reach.items():
        there = joined.get(strip, (lo, hi))
        joined[strip] = min(lo, there[0]), max(hi, there[1])
    return _Length(one.need, each, max(one.kerf, kerf), joined)


def _charges(takes: Sequence[Take], need: int) -> dict[Account, _Charge]:
    """By account, of those that every take takes of."""
    found: dict[Account, _Charge] = {}
    for first, take in enumerate(takes):
        mine: dict[Account, _Charge] = {}
        for cell, amount, there in take.cells:
            if amount:
                _, _, part, share, lane = cell
                here = mine.get((part, share, lane), _Charge(need, 0, {}))
                mine[part, share, lane] = _paid(here, here.each + amount, {cell: there})
        found = (
            mine
            if not first
            else {
                account: _paid(found[account], min(found[account].each, one.each), one.there)
                for account, one in mine.items()
                if account in found
            }
        )
    return found


def _paid(one: _Charge, each: int, more: Mapping[Cell, int]) -> _Charge:
    """The same of more cells."""
    there = dict(one.there)
    for cell, room in more.items():
        there[cell] = max(there.get(cell, 0), room)
    return _Charge(one.need, each, there)
