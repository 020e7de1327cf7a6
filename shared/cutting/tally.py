"""What every group and every line that takes the rest takes, place by place and turn by turn.

What lies at a place before a line takes its rest is added up where somebody asks, so that one
changed line costs what it touches and not the whole carcass.
"""

from collections.abc import Hashable, Iterable
from typing import Generic, TypeVar

from shared.cutting.capacity import Interval
from shared.cutting.moved import Reach, Took
from shared.cutting.occupied import Account, Fractions, Occupied, PartPlace, Used
from shared.cutting.take import Lane

Key = TypeVar("Key", bound=Hashable)
Much = TypeVar("Much", int, tuple[Interval, ...], Fractions)


class _Kind(Generic[Key, Much]):
    """Places of one kind: what is taken there by turn, and in `all` altogether."""

    __slots__ = ("_stale", "all", "by")

    def __init__(self, everything: dict[Key, Much]) -> None:
        self.by: dict[Key, dict[int, Much]] = {}
        self.all = everything
        self._stale: set[Key] = set()

    def add(self, turn: int, taken: Iterable[tuple[Key, Much]]) -> None:
        by, stale = self.by, self._stale
        for key, much in taken:
            mine = by.get(key)
            if mine is None:
                mine = by[key] = {}
            mine[turn] = much
            stale.add(key)

    def drop(self, turn: int, taken: Iterable[tuple[Key, Much]]) -> None:
        for key, _ in taken:
            del self.by[key][turn]
            self._stale.add(key)

    def refresh(self) -> None:
        for key in self._stale:
            several = [*self.by[key].values()]
            if several:
                found = several[0]
                for one in several[1:]:
                    found = found + one
                self.all[key] = found
            else:
                self.all.pop(key, None)
        self._stale.clear()


class Tally:
    """What is taken by place and turn: groups in turns below 0, what takes the rest after them."""

    def __init__(self, denominator: int, split: bool) -> None:
        """Nothing is taken yet."""
        self._denominator = denominator
        self._split = split
        self._all = Occupied(denominator, split)
        self._lanes = _Kind[Lane, tuple[Interval, ...]](self._all.lanes)
        self._parts = _Kind[PartPlace, int](self._all.parts)
        self._accounts = _Kind[Account, int](self._all.accounts)
        self._used = _Kind[Used, Fractions](self._all.by_share)

    def add(self, turn: int, took: Took) -> None:
        """Something is taken in that turn."""
        self._lanes.add(turn, took.lanes)
        self._parts.add(turn, took.parts)
        self._accounts.add(turn, took.accounts)
        self._used.add(turn, took.used)

    def drop(self, turn: int, took: Took) -> None:
        """It is taken no more."""
        self._lanes.drop(turn, took.lanes)
        self._parts.drop(turn, took.parts)
        self._accounts.drop(turn, took.accounts)
        self._used.drop(turn, took.used)

    def in_all(self) -> Occupied:
        """All that is taken."""
        for kind in (self._lanes, self._parts, self._accounts, self._used):
            kind.refresh()
        return self._all

    def before(self, turn: int, reach: Reach) -> Occupied:
        """What lies where an option reaches when its turn comes."""
        found = Occupied(self._denominator, self._split)
        for lane, _ in reach.lanes:
            there = self._lanes.by.get(lane)
            if there:
                every = [it for mine, some in there.items() if mine < turn for it in some]
                found.lanes[lane] = tuple(every)
        for place in reach.parts:
            amounts = self._parts.by.get(place)
            if amounts:
                found.parts[place] = sum([it for mine, it in amounts.items() if mine < turn])
            used = self._used.by.get((reach.share, place)) if self._split else None
            if used:
                parts = [it for mine, some in used.items() if mine < turn for it in some]
                found.by_share[reach.share, place] = tuple(parts)
        for account in reach.accounts:
            lengths = self._accounts.by.get(account)
            if lengths:
                found.accounts[account] = sum([it for mine, it in lengths.items() if mine < turn])
        return found
