"""Lines that must be met in their groups, and the same without some of them."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from shared.cutting.demand import Demand
from shared.cutting.groups import groups, keys_of
from shared.cutting.take import Cell, Lane
from shared.cutting.ways import Ways

Places = dict[Lane | Cell, int]  # a group's place, by what its lines touch


class Grouped:
    """Lines, the groups of those that must be met, and which group a lane or part is of.

    `lines` are all, by number. A group that was broken up leaves an empty one in its place.
    """

    def __init__(
        self, lines: Mapping[int, Demand], sets: list[list[Demand]], of: Places, ways: Ways
    ) -> None:
        """As `grouped` or `without` make it."""
        self.lines, self.sets, self._of, self._ways = lines, sets, of, ways

    def touched(self, one: Demand) -> set[int]:
        """The places of the groups a line that must be met shares a lane or part with."""
        if not one.rows:
            return set()
        return {self._of[key] for key in _keys([one], self._ways) if key in self._of}

    def places(self, numbers: Collection[int]) -> set[int]:
        """The places of the groups some lines are in."""
        return {
            place
            for place, group in enumerate(self.sets)
            if any(one.choice.line in numbers for one in group)
        }

    def add(self, group: list[Demand]) -> None:
        """Lines of which each touches another, and none a line of another group."""
        self._of.update(dict.fromkeys(_keys(group, self._ways), len(self.sets)))
        self.sets.append(group)

    def without(self, numbers: Collection[int]) -> "Grouped":
        """The same without some lines: only the groups they are in are made anew."""
        lines = {line: one for line, one in self.lines.items() if line not in numbers}
        found = Grouped(lines, self.sets.copy(), self._of.copy(), self._ways)
        for place in self.places(numbers):
            group, found.sets[place] = self.sets[place], []
            for key in _keys(group, self._ways):
                found._of.pop(key, None)
            for some in groups([one for one in group if one.choice.line in lines], self._ways):
                found.add(some)
        return found


def grouped(demands: Sequence[Demand], sets: Iterable[list[Demand]], ways: Ways) -> Grouped:
    """Lines, and the groups of those that are planned: of them, those that must be met.

    Worked number: chops, a rib roast of the same lane, and up to 2 hocks are planned in two
    groups; one of them, of chops and roast, must be met.
    """
    found = Grouped({one.choice.line: one for one in demands}, [], {}, ways)
    for group in sets:
        must = [one for one in group if one.rows]
        for some in [must] if len(must) == len(group) else groups(must, ways):
            found.add(some)
    return found


def _keys(lines: Iterable[Demand], ways: Ways) -> Iterator[Lane | Cell]:
    for one in lines:
        lanes, cells = keys_of(one, ways)
        yield from lanes
        yield from cells
