"""Lines that stand, grown by one after the other, and what stands in the way of one that can't.

Whether lines can stand is asked for the longest lengths first, since what fits at all mostly fits
there. One way of cutting the lines that stand is known, so a line that finds room beside it
stands too, and nothing else is asked.
"""

from collections.abc import Sequence

from shared.cutting.accounted import Accounted
from shared.cutting.capacity import EXPECTED, MOST, SURE
from shared.cutting.demand import Demand
from shared.cutting.groups import groups, keys_of, rows_of
from shared.cutting.problem import Problem, State, Witness
from shared.cutting.search import beside, met
from shared.cutting.ways import Ways

SHORTER = (EXPECTED, SURE)


class Growing:
    """The lines that stand so far, and one way of cutting those that can be with the most."""

    def __init__(self, demands: Sequence[Demand], ways: Ways) -> None:
        """All lines that may come; none stands yet."""
        self.standing: list[Demand] = []
        self._ways = ways
        self._rows = rows_of(demands)
        self._touched = _touched(demands, ways)
        self._places: dict[int, list[int]] = {}
        for place, row in enumerate(self._rows):
            self._places.setdefault(row.line, []).append(place)
        self._wholes: dict[int, Accounted] = {}
        self._units: Witness = {}  # by row's place
        self._state: State | None = None
        self._was_hard = False  # what was refused last, with the most

    def add(self, one: Demand) -> list[Demand] | None:
        """Add a line where it can stand beside the others; else what it can't stand beside.

        That is irreducible: of the others each is let go that needn't be there, from the newest
        on. Found among the first so many of them, halving each time: of 8 lines, of which the
        third alone stands in the way, in 5 questions.
        """
        if self._stands_with_most(one):
            self.standing.append(one)
            return None
        others = self.connected(self.standing, one)
        found = self._core(others, one, (MOST,))
        if any(self._can([*found, one], lengths) for lengths in SHORTER):
            if any(self._can([*others, one], lengths) for lengths in SHORTER):
                self.standing.append(one)
                return None
            found = self._core(others, one, (MOST, *SHORTER))
        if any(whole.varies for whole in self._wholes.values()):
            return self._checked(found, others, one)
        return found

    def beside(self, known: Sequence[Demand], one: Demand) -> list[Demand] | None:
        """What a line can't stand beside, of some lines before it that are known to stand.

        As `add` would say it if each had been added. None where it stands beside them, or where
        some of them might not stand without others.
        """
        if self._whole(MOST).varies:
            return None
        self.standing = [*known]
        found = self.add(one)
        if found is None or any(self._whole(lengths).varies for lengths in SHORTER):
            self.standing, self._units, self._state = [], {}, None
            return None
        return found

    def _checked(self, found: list[Demand], others: list[Demand], one: Demand) -> list[Demand]:
        """The same where a line may bring room to an account that others need.

        Then it isn't enough to have asked for more and fewer of the first lines: each is let go,
        until none can be.
        """
        if not self._all_stand([*found, one]) and all(
            self._all_stand([*[other for other in found if other is not it], one]) for it in found
        ):
            return found
        kept, before = others, -1
        while len(kept) != before:
            before = len(kept)
            for it in reversed(kept):
                without = [other for other in kept if other is not it]
                if not self._all_stand([*without, one]):
                    kept = without
        return kept

    def _all_stand(self, lines: list[Demand]) -> bool:
        return all(self._stands(group, (MOST, *SHORTER)) for group in groups(lines, self._ways))

    def _stands_with_most(self, one: Demand) -> bool:
        others = self.connected(self.standing, one)
        rows, mine = self._rows_of(others), self._rows_of([one])
        given = self._given(MOST, [*rows, *mine])
        if all(place in self._units for place in rows):
            state = self._state or given.empty()
            laid = beside(given, state, mine)
            if laid is not None:
                units, self._state = laid
                self._units |= units
                return True
        found = self._met(MOST, [*mine, *reversed(rows)])
        if found is None:
            return False
        self._units |= found
        self._state = given.lying(self._units)
        return True

    def _core(self, others: list[Demand], one: Demand, lengths: tuple[int, ...]) -> list[Demand]:
        """The irreducible set of the others beside which a line can't stand, as all together."""
        kept: list[Demand] = []
        high = len(others)
        while high and self._stands([*kept, one], lengths):
            low = 0
            while high - low > 1:
                middle = (low + high) // 2
                if self._stands([*others[:middle], *kept, one], lengths):
                    low = middle
                else:
                    high = middle
            high -= 1
            kept.insert(0, others[high])
        return kept

    def _stands(self, lines: list[Demand], lengths: tuple[int, ...]) -> bool:
        """Whether the last of some lines, of which the others stand, stands beside them."""
        return any(self._can(lines, one) for one in lengths)

    def _can(self, lines: list[Demand], lengths: int) -> bool:
        connected = self.connected(lines[:-1], lines[-1])
        which = self._rows_of([lines[-1], *reversed(connected)])
        return self._met(lengths, which) is not None

    def _met(self, lengths: int, which: Sequence[int]) -> Witness | None:
        """Units that meet rows at some lengths; where others were hard to refuse, so are these."""
        given = self._given(lengths, which)
        found = met(given, which, hard=lengths != MOST and self._was_hard)
        if found is None and lengths == MOST:
            self._was_hard = given.memory.was_hard
        return found

    def connected(self, others: list[Demand], one: Demand) -> list[Demand]:
        """Those of the others that share a lane or part with a line, directly or through others.

        Worked number: chops of a side meet its bone-in chops, and through them its back ribs;
        without these they don't.
        """
        met = self._touched[one.choice.line]
        left, found = others, list[Demand]()
        while left:
            apart: list[Demand] = []
            for other in left:
                its = self._touched[other.choice.line]
                if its & met:
                    met |= its
                    found.append(other)
                else:
                    apart.append(other)
            if len(apart) == len(left):
                break
            left = apart
        if len(found) == len(others):
            return others
        lines = {other.choice.line for other in found}
        return [other for other in others if other.choice.line in lines]

    def _rows_of(self, lines: Sequence[Demand]) -> list[int]:
        return [place for one in lines for place in self._places[one.choice.line]]

    def _given(self, lengths: int, which: Sequence[int]) -> Problem:
        """The problem of some rows at some lengths, with the accounts they alone have."""
        return self._whole(lengths).of(which)

    def _whole(self, lengths: int) -> Accounted:
        whole = self._wholes.get(lengths)
        if whole is None:
            whole = self._wholes[lengths] = Accounted(self._rows, lengths, self._ways)
        return whole


def _touched(demands: Sequence[Demand], ways: Ways) -> dict[int, int]:
    """The lanes and cells each line touches, as bits, by line."""
    bits: dict[object, int] = {}
    found: dict[int, int] = {}
    for one in demands:
        keys, mine = keys_of(one, ways), 0
        for key in (*keys.lanes, *keys.cells):
            mine |= bits.setdefault(key, 1 << len(bits))
        found[one.choice.line] = mine
    return found
