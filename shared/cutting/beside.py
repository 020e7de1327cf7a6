"""What still fits beside the lines of an order that stay as they are.

Many changes of one line are asked about while all others stay, so those are put together once.
How many units of a change fit lies between what fits beside one way of making the others and
what fits beside those of them that have one place only; the search is asked for what lies between.
"""

from collections.abc import Collection, Sequence

from shared.cutting.capacity import EXPECTED, MOST, SURE
from shared.cutting.demand import Demand, Row
from shared.cutting.grouped import Grouped
from shared.cutting.groups import rows_of
from shared.cutting.more_rows import Lines, More, with_rows
from shared.cutting.room_by_sums import RoomBySums
from shared.cutting.search import possible
from shared.cutting.ways import Ways

TRIED = (SURE, EXPECTED, MOST)


class Beside:
    """Lines that stay, and every question what fits beside them, whatever lengths it takes."""

    def __init__(self, stay: Grouped, watched: Collection[int], ways: Ways) -> None:
        """Lines that must be met; those `watched` must stand too where nothing touches them."""
        self._stay, self._ways = stay, ways
        self._watched = stay.places(watched)
        self._known: dict[tuple[int, ...], tuple[_Set, ...]] = {}
        self._fitted: dict[int, tuple[Row, list[tuple[int, int]]]] = {}

    def may_fit(self, one: Demand) -> bool:
        """False where sums say already that no unit of a line of one row fits."""
        (row,) = one.rows
        return any(it.may_fit(row) for it in self._touched(one))

    def fits(self, one: Demand) -> bool:
        """Whether all of a line fits beside the others; the pools aren't looked at."""
        if one.refusal is not None:
            return False
        sets = self._touched(one)
        return any(it.fits(one.rows) for it in sets) if one.rows else bool(sets)

    def most(self, one: Demand) -> int:
        """The most units of a line of one row, up to those it asks for, that fit.

        Worked number: of 6 ham steaks beside a whole ham of the same leg, none.
        """
        (row,) = one.rows
        best = 0
        found: list[tuple[int, int]] = []
        for it in self._touched(one):
            best = it.most(row, best)
            found.append((it.scenario, best))
            if best == row.need:
                break
        self._fitted[id(row.options)] = row, found
        return best

    def lone(self, group: Sequence[Demand]) -> Demand | None:
        """The one line of a group that isn't among these, if others of it have a choice of place.

        Where none has one, the group is as soon tried as a whole.
        """
        found = [one for one in group if self._stay.lines.get(one.choice.line) is not one]
        chooses = any(len(row.options) > 1 for one in group for row in one.rows)
        return found[0] if len(found) == 1 and chooses else None

    def surest(self, one: Demand) -> int | None:
        """The first lengths, from the sure ones on, with which a line stands with what it touches.

        None where it doesn't at any. What is watched isn't looked at. Where the most of it was
        asked for, that says it: if 4 fit at the sure lengths and 6 at the expected, so do 5.
        """
        known = self._fitted.get(id(one.rows[0].options)) if len(one.rows) == 1 else None
        if known is not None and one.rows[0].need <= known[0].need:
            for scenario, most in known[1]:
                if one.rows[0].need <= most:
                    return scenario
        sets = self._set(tuple(sorted(self._stay.touched(one))))
        return next((it.scenario for it in sets if it.fits(one.rows)), None)

    def _touched(self, one: Demand) -> "tuple[_Set, ...]":
        """What a line touches, at all lengths; nothing where what is watched can't stand."""
        touched = self._stay.touched(one)
        for place in self._watched - touched:
            if not any(it.stands() for it in self._set((place,))):
                return ()
        return self._set(tuple(sorted(touched)))

    def _set(self, places: tuple[int, ...]) -> "tuple[_Set, ...]":
        found = self._known.get(places)
        if found is None:
            lines = [one for place in places for one in self._stay.sets[place]]
            rows = rows_of(sorted(lines, key=lambda one: one.choice.line))
            found = tuple([_Set(rows, scenario, self._ways) for scenario in TRIED])
            self._known[places] = found
        return found


class _Set:
    """Some of the lines that stay, at one set of lengths."""

    def __init__(self, rows: Sequence[Row], scenario: int, ways: Ways) -> None:
        self.scenario = scenario
        self._asked = rows, scenario, ways
        self._known: Lines | None = None
        self._added: RoomBySums | None = None

    def _lines(self) -> Lines:
        if self._known is None:
            self._known = Lines(*self._asked)
        return self._known

    def _sums(self) -> RoomBySums:
        if self._added is None:
            self._added = RoomBySums(*self._asked)
        return self._added

    def stands(self) -> bool:
        """Whether the lines themselves can be met."""
        return self._lines().made() is not None

    def may_fit(self, row: Row) -> bool:
        """False where sums say already that no unit of a row fits beside them."""
        return any(self._sums().of_each(row))

    def fits(self, rows: Sequence[Row]) -> bool:
        """Whether rows fit beside them."""
        if len(rows) == 1:
            return self.most(rows[0], 0) == rows[0].need
        if any(sum(self._sums().of_each(row)) < row.need for row in rows):
            return False
        more = with_rows(self._lines(), rows)
        made = more.made()
        if made is None and not more.roomier:
            return False
        if made is not None and more.all_taken(made):
            return True
        return _possible(more, rows[-1].need)

    def most(self, row: Row, best: int) -> int:
        """The most units of a row that fit beside them, if they are more than so many."""
        at_most = self._sums().of_each(row)
        high = min(row.need, sum(at_most))
        if high > best:
            high = min(high, self._sums().over_sides(row))
        if high <= best:
            return best
        lines = self._lines()
        more = with_rows(lines, [row])
        bound = more.bound()
        if bound is not None:
            high = min(high, more.most(bound, at_most))
            if not lines.free and len(row.options) == 1:
                return max(best, high)
        if high <= best or (high == best + 1 and not lines.judged):
            return _between(more, best, high)
        made = more.made()
        if made is None:
            return _between(more, best, high) if more.roomier else best
        return _between(more, max(best, more.taken(made, high)), high)


def _between(more: More, low: int, high: int) -> int:
    """The most units of the last row that can be made with all others; `low` can be."""
    middle = high
    while low < high:
        if _possible(more, middle):
            low = middle
        else:
            high = middle - 1
        middle = (low + high + 1) // 2
    return low


def _possible(more: More, need: int) -> bool:
    """Whether all can be made, with so many units of the last row."""
    given = more.asking(need)
    return possible(given, range(len(given.rows)))
