"""What a planner remembers between questions of what is left over: rests, and open parts.

Every answer is as from scratch: what is used again was reckoned from the same values. A patch of
what takes the rest is taken anew where a group takes otherwise of it than in the answer before.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from operator import is_
from typing import TypeVar

from shared.carcass.carcass import Share
from shared.cutting.answer import OpenPart, PlanLine
from shared.cutting.demand import Demand, Shop
from shared.cutting.occupied import Fractions, Occupied, Place, Used
from shared.cutting.open_parts import Opened, open_parts
from shared.cutting.patches import Moved, Patch, Rest, patches, rest_of
from shared.cutting.settled import Settled
from shared.cutting.ways import Ways

K = TypeVar("K")
V = TypeVar("V")


class Remembered:
    """What the groups of the last answer take, and with what takes the rest; its patches.

    `_base` is what the groups take, `_all` that and the rests. `_changed` are the places of which
    something else is taken than when the open parts were reckoned.
    """

    def __init__(self, denominator: int, split: bool) -> None:
        """Nothing is taken yet."""
        self._base = Occupied(denominator, split)
        self._all = Occupied(denominator, split)
        self._groups: list[Settled] = []
        self._shares: dict[Used, dict[int, Fractions]] = {}  # by what a group takes
        self._rests: dict[int, Rest] = {}
        self._at: dict[Place, Patch] = {}
        self._noted: dict[Used, Patch] = {}
        self._stale: dict[int, Patch] = {}
        self._moved = Moved()
        self._opened = Opened()
        self._changed: set[Place] = set()

    def rests(
        self, settled: Sequence[Settled], resting: Sequence[Demand], ways: Ways
    ) -> list[list[PlanLine]]:
        """What each line takes of the rest when the groups have taken theirs."""
        self._moved = Moved()
        self._regroup(settled)
        known = self._rests
        of = [rest.of for rest in known.values()]
        if len(of) != len(resting) or not all(map(is_, of, resting)):
            self._rest_anew(resting, ways)
        self._take_stale(ways)
        return [rest.flat or rest.all_lines() for rest in self._rests.values()]

    def _regroup(self, settled: Sequence[Settled]) -> None:
        """Put what other groups take in the place of what is settled no more."""
        gone, come = _changed(self._groups, settled)
        if not gone and not come:
            return
        self._groups = [*settled]
        was = [one.occupied for one in gone]
        took = [one.occupied for one in come]
        base, every = self._base, self._all
        moved = self._moved
        for lane, new in _other([one.lanes for one in was], [one.lanes for one in took]):
            moved.note_lane(lane, base.lanes.get(lane, ()), new or ())
            _put(base.lanes, lane, new)
            self._touch(lane, every.lanes, lane, new)
        for place, new in _other([one.parts for one in was], [one.parts for one in took]):
            moved.parts.add(place)
            _put(base.parts, place, new)
            self._touch(place, every.parts, place, new)
        for account, new in _other([one.accounts for one in was], [one.accounts for one in took]):
            moved.accounts.add(account)
            _put(base.accounts, account, new)
            self._touch(account[1:], every.accounts, account, new)
        if base.split:
            self._share_out(was, took)

    def _touch(self, place: Place, every: dict[K, V], key: K, new: V | None) -> None:
        """Something else is taken at a place; who takes the rest there, takes it anew."""
        _put(every, key, new)
        patch = self._at.get(place)
        if patch is not None:
            self._stale[id(patch)] = patch
            patch.reset.add(key)

    def _share_out(self, was: Sequence[Occupied], now: Sequence[Occupied]) -> None:
        """Add up anew what shares have of some parts; several groups may have of one."""
        keys: dict[Used, None] = {}
        for one in was:
            for key in one.by_share:
                del self._shares[key][id(one)]
                keys[key] = None
        for one in now:
            for key, fractions in one.by_share.items():
                self._shares.setdefault(key, {})[id(one)] = fractions
                keys[key] = None
        for key in keys:
            new = sum(self._shares[key].values(), Fractions())
            if self._base.by_share.get(key, ()) != new:
                self._moved.used.add(key)
                _put(self._base.by_share, key, new or None)
                self._touch(key[1], self._all.by_share, key, new or None)
                patch = self._noted.get(key)
                if patch is not None:
                    self._stale[id(patch)] = patch
                    patch.reset.add(key)

    def _rest_anew(self, resting: Sequence[Demand], ways: Ways) -> None:
        """Other lines take the rest: only patches they are in, or come to, are made anew."""
        known, now = self._rests, dict[int, Rest]()
        come: list[Rest] = []
        for one in resting:
            rest = known.get(one.choice.line)
            if rest is None or rest.of is not one:
                rest = rest_of(one, ways)
                come.append(rest)
            now[one.choice.line] = rest
        self._rests = now
        gone = [rest for line, rest in known.items() if now.get(line) is not rest]
        left_out = {id(rest) for rest in gone}
        reached = [place for rest in (*gone, *come) for it in rest.reach for place in it.places]
        touched = {id(patch): patch for place in reached if (patch := self._at.get(place))}
        turns = [(rest, place) for rest in come for place in range(len(rest.reach))]
        for patch in touched.values():
            turns += [turn for turn in patch.turns if id(turn[0]) not in left_out]
            self._stale.pop(id(patch), None)
            self._give_up(patch)
            self._changed.update(patch.lanes, patch.parts, [place for _, place in patch.noted])
            for used in patch.noted:
                del self._noted[used]
            for place in (*patch.lanes, *patch.parts):
                del self._at[place]
        turns.sort(key=lambda turn: (turn[0].of.choice.line, turn[1]))
        for patch in patches(turns):
            self._stale[id(patch)] = patch
            for place in patch.lanes:
                self._at[place] = patch
            for place in patch.parts:
                self._at[place] = patch

    def _give_up(self, patch: Patch) -> None:
        """Take back what a patch took."""
        base, every = self._base, self._all
        for lane in patch.lanes:
            _put(every.lanes, lane, base.lanes.get(lane))
        for place in patch.parts:
            _put(every.parts, place, base.parts.get(place))
        for account in patch.accounts:
            _put(every.accounts, account, base.accounts.get(account))
        for used in patch.noted:
            _put(every.by_share, used, base.by_share.get(used))

    def _take_stale(self, ways: Ways) -> None:
        """Take the rest anew of what was given up, or where something moved."""
        moved = self._moved
        for patch in self._stale.values():
            if patch.fresh or patch.parts:
                self._take(patch, ways)
            else:
                before = patch.noted
                patch.retake(self._base, self._all, moved, ways)
                if patch.noted is not before:
                    self._note(patch, before)
        self._stale.clear()
        self._changed |= moved.lanes.keys()
        self._changed |= moved.parts
        self._changed.update([account[1:] for account in moved.accounts])
        self._changed.update([used[1] for used in moved.used])

    def _take(self, patch: Patch, ways: Ways) -> None:
        """Take the rest of a patch, all of it anew."""
        before = patch.noted
        if not patch.fresh:
            self._give_up(patch)
        elif self._opened.left:
            self._changed.update(patch.lanes, patch.parts)
        patch.take(self._all, self._moved, ways)
        self._note(patch, before)

    def _note(self, patch: Patch, before: Collection[Used]) -> None:
        """A patch takes for other shares than before."""
        for used in before:
            del self._noted[used]
        for used in patch.noted:
            self._noted[used] = patch

    def open_parts(self, shares: Sequence[Share], shop: Shop) -> tuple[OpenPart, ...]:
        """The open parts; those where nothing moved since they were reckoned again."""
        self._opened.forget(self._changed)
        self._changed = set()
        return open_parts(shares, shop.held, shop.herd, self._all, shop.ways, self._opened)


def _changed(
    was: Sequence[Settled], now: Sequence[Settled]
) -> tuple[Sequence[Settled], Sequence[Settled]]:
    """Groups that are there no more, and those that are there now."""
    if len(was) == len(now):
        pairs = [pair for pair in zip(was, now, strict=True) if pair[0] is not pair[1]]
        was, now = [one for one, _ in pairs], [one for _, one in pairs]
    before, after = {id(one) for one in was}, {id(one) for one in now}
    gone = [one for one in was if id(one) not in after]
    return gone, [one for one in now if id(one) not in before]


def _other(
    was: Sequence[Mapping[K, V]], now: Sequence[Mapping[K, V]]
) -> Iterable[tuple[K, V | None]]:
    """What some groups take otherwise than others did; None where nothing is taken any more.

    A place is one group's alone: groups that had one in common would be one.
    """
    before = {key: it for one in was for key, it in one.items()}
    for one in now:
        for key, it in one.items():
            if before.pop(key, None) != it:
                yield key, it
    for key in before:
        yield key, None


def _put(there: dict[K, V], key: K, new: V | None) -> None:
    if new is None:
        there.pop(key, None)
    else:
        there[key] = new
