"""The groups of an order, settled one by one; those that didn't change stay as they were."""

from collections.abc import Sequence

from shared.cutting.demand import Demand, Shop
from shared.cutting.groups import groups, keys_of, parted
from shared.cutting.settled import Settled, settle
from shared.cutting.ways import Ways

Group = tuple[int, ...]  # ids of its lines, which what is settled holds


class SettledGroups:
    """The groups of the last lines that were asked about, and what was settled of each."""

    def __init__(self, ways: Ways) -> None:
        """Nothing is settled yet."""
        self._ways = ways
        self._bound: Sequence[Demand] = ()
        self._numbers: list[list[int]] = []
        self._of: dict[int, int] = {}  # a group's place by the place of a line of it
        self._settled: list[Settled] = []

    def groups_of(self, bound: Sequence[Demand]) -> list[list[Demand]]:
        """The groups of some lines, mostly those that were settled last."""
        if bound is self._bound:
            return [one.demands for one in self._settled]
        return groups(bound, self._ways)

    def settle(self, bound: Sequence[Demand], shop: Shop) -> list[Settled]:
        """What is settled of each group of some lines."""
        changed = self._changed(bound)
        before, self._bound = self._settled, bound
        if changed is None:
            self._settled = self._anew(bound, before, shop)
        elif changed:
            self._settled = before.copy()
            for place in sorted({self._of[number] for number in changed}):
                group = [bound[number] for number in self._numbers[place]]
                self._settled[place] = settle(group, shop)
        return self._settled

    def _changed(self, bound: Sequence[Demand]) -> list[int] | None:
        """Places of lines that are others, if each touches what the one before it touched."""
        if len(bound) != len(self._bound):
            return None
        last, ways = self._bound, self._ways
        other = [number for number, one in enumerate(bound) if one is not last[number]]
        alike = all(keys_of(bound[it], ways) == keys_of(last[it], ways) for it in other)
        return other if alike else None

    def _anew(
        self, bound: Sequence[Demand], before: Sequence[Settled], shop: Shop
    ) -> list[Settled]:
        """Other groups: those of the same lines as before, or without one set aside, are known."""
        self._numbers = parted(bound, self._ways)
        self._of = {it: place for place, mine in enumerate(self._numbers) for it in mine}
        stood = [one.stood for one in before if one.stood is not None]
        known: dict[Group, Settled] = {
            tuple(map(id, one.demands)): one for one in (*before, *stood)
        }
        found: list[Settled] = []
        for numbers in self._numbers:
            group = [bound[number] for number in numbers]
            one = known.get(tuple(map(id, group)))
            found.append(settle(group, shop, known.values()) if one is None else one)
        return found
