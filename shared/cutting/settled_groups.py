"""The groups of an order, settled one by one; those that nothing new touches stay as they were."""

from collections.abc import Iterable, Iterator, Sequence

from shared.cutting.demand import Demand, Shop
from shared.cutting.groups import groups, keys_of
from shared.cutting.settled import Settled, settle
from shared.cutting.take import Cell, Lane
from shared.cutting.ways import Ways


class SettledGroups:
    """The groups of the last lines that were asked about, and what was settled of each."""

    def __init__(self, ways: Ways) -> None:
        """Nothing is settled yet."""
        self._ways = ways
        self._bound: Sequence[Demand] = ()
        self._settled: dict[int, Settled] = {}  # by place, a number of its own
        self._at: dict[int, int] = {}  # a group's place by a line of it
        self._of: dict[Lane | Cell, int] = {}  # and by what it touches
        self._places = 0

    def groups_of(self, bound: Sequence[Demand]) -> list[list[Demand]]:
        """The groups of some lines, mostly those that were settled last."""
        if bound is self._bound:
            return [one.demands for one in self._settled.values()]
        return groups(bound, self._ways)

    def settle(self, bound: Sequence[Demand], shop: Shop) -> list[Settled]:
        """What is settled of each group of some lines, the groups in any order."""
        last, self._bound = self._bound, bound
        if bound is not last:
            other = self._other(last, bound)
            if other is None:
                before, now = {id(one) for one in last}, {id(one) for one in bound}
                gone = [one for one in last if id(one) not in now]
                self._regroup(gone, [one for one in bound if id(one) not in before], shop)
            elif other:
                self._replace(other, shop)
        return [*self._settled.values()]

    def _other(
        self, last: Sequence[Demand], bound: Sequence[Demand]
    ) -> list[tuple[Demand, Demand]] | None:
        """Lines in whose place others are, with these, if each touches what the other did."""
        if len(last) != len(bound):
            return None
        ways = self._ways
        other = [pair for pair in zip(last, bound, strict=True) if pair[0] is not pair[1]]
        alike = all(
            was.choice.line == one.choice.line and keys_of(was, ways) == keys_of(one, ways)
            for was, one in other
        )
        return other if alike else None

    def _replace(self, other: Sequence[tuple[Demand, Demand]], shop: Shop) -> None:
        """Groups stay, some of their lines are others."""
        new = {id(was): one for was, one in other}
        for place in {self._at[was.choice.line]: None for was, _ in other}:
            group = [new.get(id(one), one) for one in self._settled[place].demands]
            self._settled[place] = settle(group, shop)

    def _regroup(self, gone: Sequence[Demand], come: Sequence[Demand], shop: Shop) -> None:
        """Lines came and went: only the groups they were in, or now touch, are others."""
        away = {id(one) for one in gone}
        touched = {self._at[one.choice.line]: None for one in gone}
        touched |= {self._of[key]: None for key in self._keys(come) if key in self._of}
        was = [self._settled.pop(place) for place in touched]
        for key in self._keys(gone):
            self._of.pop(key, None)
        for one in gone:
            del self._at[one.choice.line]
        stay = [one for group in was for one in group.demands if id(one) not in away]
        lines = sorted([*stay, *come], key=lambda one: one.choice.line)
        was += [one.stood for one in was if one.stood is not None]
        known = {tuple(map(id, one.demands)): one for one in was}
        for group in groups(lines, self._ways):
            found = known.get(tuple(map(id, group)))
            self._add(settle(group, shop, was) if found is None else found)

    def _add(self, one: Settled) -> None:
        self._places += 1
        self._settled[self._places] = one
        self._of.update(dict.fromkeys(self._keys(one.demands), self._places))
        self._at.update(dict.fromkeys([it.choice.line for it in one.demands], self._places))

    def _keys(self, lines: Iterable[Demand]) -> Iterator[Lane | Cell]:
        for one in lines:
            lanes, cells = keys_of(one, self._ways)
            yield from lanes
            yield from cells
