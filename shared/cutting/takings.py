"""What options that take the rest have taken, turn by turn, so that one can be taken anew alone."""

from collections.abc import Iterable, Sequence, Set
from fractions import Fraction
from typing import NamedTuple, TypeVar

from shared.cutting.answer import PlanLine
from shared.cutting.capacity import Interval
from shared.cutting.lanes import bits_of
from shared.cutting.occupied import Account, Occupied, PartPlace, Place, Used
from shared.cutting.take import Lane, Option

K = TypeVar("K")
V = TypeVar("V")


class Reach(NamedTuple):
    """Where an option may take of the rest: lanes, with a window on each, parts, and accounts.

    `places` are its lanes and parts, `share` is whose it is.
    """

    places: tuple[Place, ...]
    lanes: tuple[Lane, ...]
    windows: tuple[tuple[Lane, int, int], ...]
    parts: tuple[PartPlace, ...]
    accounts: tuple[Account, ...]
    share: int


class Taking(NamedTuple):
    """What one option takes: intervals of lanes, lengths of accounts, fractions for its share."""

    lanes: list[tuple[Lane, Interval]]
    accounts: list[tuple[Account, int]]
    used: list[tuple[Used, Fraction]]


class Takings:
    """What each of some options takes, which all lie on runs and take nothing else, by turn."""

    def __init__(self) -> None:
        """Nothing is taken."""
        self._turns: dict[int, Taking] = {}
        self._lanes: dict[Lane, dict[int, list[Interval]]] = {}
        self._accounts: dict[Account, dict[int, list[int]]] = {}
        self._used: dict[Used, dict[int, list[Fraction]]] = {}

    def show(self, found: Occupied, base: Occupied, reach: Reach, turn: int) -> None:
        """What a turn finds taken where it reaches: at first, and by those before it."""
        for lane in reach.lanes:
            there = base.lanes.get(lane, ())
            for other, mine in self._lanes.get(lane, {}).items():
                if other < turn:
                    there = (*there, *mine)
            found.lanes[lane] = there
        for account in reach.accounts:
            spent = base.accounts.get(account, 0)
            for other, lengths in self._accounts.get(account, {}).items():
                if other < turn:
                    spent += sum(lengths)
            found.accounts[account] = spent

    def put(self, turn: int, new: Taking) -> Taking | None:
        """A turn takes this; what it took before."""
        before = self._turns.get(turn)
        if before is not None:
            _remove(self._lanes, before.lanes, turn)
            _remove(self._accounts, before.accounts, turn)
            _remove(self._used, before.used, turn)
        self._turns[turn] = new
        _insert(self._lanes, new.lanes, turn)
        _insert(self._accounts, new.accounts, turn)
        _insert(self._used, new.used, turn)
        return before

    def write(self, base: Occupied, every: Occupied, keys: Set[object]) -> None:
        """Note in `every` what is taken under some keys, at first and by all turns."""
        for lane in self._lanes.keys() & keys:
            taken = (*base.lanes.get(lane, ()), *_all(self._lanes[lane]))
            _put(every.lanes, lane, taken)
        for account in self._accounts.keys() & keys:
            spent = base.accounts.get(account, 0) + sum(_all(self._accounts[account]))
            _put(every.accounts, account, spent)
        for used in self._used.keys() & keys:
            fractions = (*base.by_share.get(used, ()), *_all(self._used[used]))
            _put(every.by_share, used, fractions)

    def used(self) -> set[Used]:
        """What is taken of for shares."""
        return {used for used, mine in self._used.items() if mine}


def taking_of(option: Option, lines: Sequence[PlanLine], split: bool) -> Taking:
    """What lines of an option take; accounts and fractions where a side is divided."""
    found = Taking([], [], [])
    on_run = option.ways[0].on_run
    for made in lines:
        assert on_run is not None, "it has no other parts"
        assert made.start is not None, "it lies on a run"
        assert made.end is not None, "it lies on a run"
        carcass, side, share = made.carcass, made.side, made.share
        strip, bits = (carcass, side, on_run.run), bits_of(on_run.lanes)
        for bit in bits:
            found.lanes.append(((strip, bit), (made.start, made.end)))
        if split:
            held = option.held[0] if option.held[0].side.number == side else option.held[1]
            for bit in bits if held.split else ():
                found.accounts.append(((share, strip, bit), made.end - made.start))
            for part, fraction in made.taken:
                found.used.append(((share, (carcass, side, part)), fraction))
    return found


def _all(mine: dict[int, list[V]]) -> list[V]:
    return [it for some in mine.values() for it in some]


def _put(there: dict[K, V], key: K, it: V) -> None:
    if it:
        there[key] = it
    else:
        there.pop(key, None)


def _insert(there: dict[K, dict[int, list[V]]], some: Iterable[tuple[K, V]], turn: int) -> None:
    for key, it in some:
        there.setdefault(key, {}).setdefault(turn, []).append(it)


def _remove(there: dict[K, dict[int, list[V]]], some: Iterable[tuple[K, V]], turn: int) -> None:
    for key, _ in some:
        there[key].pop(turn, None)
