"""What is taken otherwise than in the answer before: where on a lane, of a part, of an account."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple, TypeVar

from shared.cutting.capacity import EXPECTED, Interval
from shared.cutting.lanes import bits_of
from shared.cutting.occupied import Account, Fractions, Occupied, PartPlace, Place, Used
from shared.cutting.take import Lane, Option
from shared.cutting.ways import Ways
from shared.cutting.windows import window

K = TypeVar("K")
V = TypeVar("V")


class Took(NamedTuple):
    """What a group, or a line that takes the rest with one option, takes of each place.

    `used` are the fractions of parts a share has of a divided side.
    """

    lanes: tuple[tuple[Lane, tuple[Interval, ...]], ...] = ()
    parts: tuple[tuple[PartPlace, int], ...] = ()
    accounts: tuple[tuple[Account, int], ...] = ()
    used: tuple[tuple[Used, Fractions], ...] = ()


def took_since(before: Occupied | None, now: Occupied) -> Took:
    """What is taken beside what was taken before, place by place."""
    if before is None:
        return Took(
            tuple(now.lanes.items()),
            tuple(now.parts.items()),
            tuple(now.accounts.items()),
            tuple(now.by_share.items()),
        )
    lanes, parts, accounts, used = before.lanes, before.parts, before.accounts, before.by_share
    return Took(
        tuple([(key, it[len(lanes.get(key, ())) :]) for key, it in _more(lanes, now.lanes)]),
        tuple([(key, it - parts.get(key, 0)) for key, it in _more(parts, now.parts)]),
        tuple([(key, it - accounts.get(key, 0)) for key, it in _more(accounts, now.accounts)]),
        tuple([(key, it[len(used.get(key, ())) :]) for key, it in _more(used, now.by_share)]),
    )


def _more(before: Mapping[K, V], now: Mapping[K, V]) -> list[tuple[K, V]]:
    return [(key, it) for key, it in now.items() if it is not before.get(key)]


class Reach(NamedTuple):
    """Where an option may take of the rest: windows on lanes, parts, and the share's accounts."""

    lanes: tuple[tuple[Lane, Interval], ...]
    parts: tuple[PartPlace, ...]
    accounts: tuple[Account, ...]
    share: int


def reach_of(option: Option, ways: Ways) -> Reach:
    """Where an option of a line that takes the rest may take it, at expected lengths."""
    plan, share = option.ways[0], option.wanted.share
    lanes: dict[Lane, Interval] = {}
    accounts: list[Account] = []
    for held in option.held if plan.on_run is not None else ():
        assert plan.on_run is not None, "looked at only where it lies on a run"
        there = window(held, plan.on_run, EXPECTED, ways)
        strip = (option.carcass, held.side.number, plan.on_run.run)
        for bit in bits_of(plan.on_run.lanes) if there and there.allowed else ():
            assert there is not None, "looked at only where it is there"
            lanes[strip, bit] = (there.allowed[0][0], there.allowed[-1][1])
            if held.split:
                accounts.append((share, strip, bit))
    side = option.held[0].side.number if option.held else 0
    parts = [
        (option.carcass, 0 if off.part.per == "animal" else side, off.part.code)
        for off in plan.off_run
        if off.run < 0
    ]
    return Reach(tuple(lanes.items()), tuple(parts), tuple(accounts), share)


Spot = tuple[int, int]  # a line that takes the rest, and the place of its option


@dataclass(slots=True)
class Reached:
    """The options of all lines that take the rest by where they may; of lanes with windows."""

    lanes: dict[Lane, list[tuple[Spot, int, int]]] = field(
        default_factory=dict[Lane, list[tuple[Spot, int, int]]]
    )
    parts: dict[PartPlace, list[Spot]] = field(default_factory=dict[PartPlace, list[Spot]])
    accounts: dict[Account, list[Spot]] = field(default_factory=dict[Account, list[Spot]])
    used: dict[Used, list[Spot]] = field(default_factory=dict[Used, list[Spot]])

    def add(self, line: int, every: Sequence[Reach]) -> None:
        """A line more, with the reach of each of its options."""
        for option, reach in enumerate(every):
            spot = (line, option)
            for lane, (lo, hi) in reach.lanes:
                self.lanes.setdefault(lane, []).append((spot, lo, hi))
            for place in reach.parts:
                self.parts.setdefault(place, []).append(spot)
                self.used.setdefault((reach.share, place), []).append(spot)
            for account in reach.accounts:
                self.accounts.setdefault(account, []).append(spot)

    def drop(self, line: int, every: Iterable[Reach]) -> None:
        """A line less."""
        for reach in every:
            for lane, _ in reach.lanes:
                self.lanes[lane] = [it for it in self.lanes[lane] if it[0][0] != line]
            for place in reach.parts:
                used = (reach.share, place)
                self.parts[place] = [it for it in self.parts[place] if it[0] != line]
                self.used[used] = [it for it in self.used[used] if it[0] != line]
            for account in reach.accounts:
                self.accounts[account] = [it for it in self.accounts[account] if it[0] != line]


@dataclass(slots=True)
class Moved:
    """What is taken otherwise than in the answer before.

    `places` are the lanes and parts of it, whosever; `waiting` the options, by line, that may
    take where anything moved, as far as their turn is still to come.
    """

    places: set[Place] = field(default_factory=set[Place])
    waiting: dict[int, set[int]] = field(default_factory=dict[int, set[int]])

    def note(self, old: Sequence[Took], new: Sequence[Took], reached: Reached) -> None:
        """Note what is taken otherwise where some groups or lines gave way to others."""
        was, now = _of(old), _of(new)
        found: list[Spot] = []
        for lane in {lane for lane, _ in was.lanes.items() ^ now.lanes.items()}:
            self.places.add(lane)
            others = {*was.lanes.get(lane, ())} ^ {*now.lanes.get(lane, ())}
            for spot, start, end in reached.lanes.get(lane, ()) if others else ():
                if any(lo < end and start < hi for lo, hi in others):
                    found.append(spot)
        for place, _ in was.parts.items() ^ now.parts.items():
            self.places.add(place)
            found += reached.parts.get(place, ())
        for account, _ in was.accounts.items() ^ now.accounts.items():
            self.places.add(account[1:])
            found += reached.accounts.get(account, ())
        for used, _ in was.by_share.items() ^ now.by_share.items():
            self.places.add(used[1])
            found += reached.used.get(used, ())
        for line, option in found:
            self.waiting.setdefault(line, set()).add(option)


def _of(several: Iterable[Took]) -> Occupied:
    """What is taken altogether."""
    found = Occupied(1, split=False)
    lanes, parts, accounts, used = found.lanes, found.parts, found.accounts, found.by_share
    for took in several:
        for lane, intervals in took.lanes:
            lanes[lane] = lanes.get(lane, ()) + intervals
        for place, amount in took.parts:
            parts[place] = parts.get(place, 0) + amount
        for account, length in took.accounts:
            accounts[account] = accounts.get(account, 0) + length
        for key, fractions in took.used:
            used[key] = used.get(key, ()) + fractions
    return found
