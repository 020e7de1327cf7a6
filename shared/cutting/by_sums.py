"""Rows met by what regions hold, many sums in one number, and laid only when all are whole.

What the rows take of every region (a lane of a strip from one point to another, cells, or lanes
of all sides together) is kept side by side in one integer, so that a step is a subtraction and a
look at the tops of its fields. The sums say little less than the strips themselves: mostly the
first assignment that no sum refuses can be laid. So it is found without laying anything, and then
laid. Where it can't lie, the first row with which it no longer does is made otherwise.
"""

from collections.abc import Sequence
from typing import TYPE_CHECKING, NamedTuple

from shared.cutting.apart import Decided
from shared.cutting.row_sums import Rooms, RowSums

if TYPE_CHECKING:
    from shared.cutting.fills import Fills
    from shared.cutting.judge import Left
    from shared.cutting.problem import Problem, State, Witness

STEPS = 3000  # rows looked at, after which the strips are asked after all
FEW = 4  # assignments that couldn't be laid, after which it is looked at closely
TIGHT = 12  # rows looked at, after which waste is left out of the sums
UNLAID = 12  # assignments that couldn't be laid, after which likewise


class _Grown(Exception):  # noqa: N818 - no error: it only ends a search that grew
    """More steps than it is worth."""


class _Unlaid(Exception):  # noqa: N818 - no error: it only ends what wasn't looked at closely
    """The first assignment can't be laid."""


class _Refused(Exception):  # noqa: N818 - no error: it only ends a search for what isn't there
    """There is no assignment."""


class _Asked(NamedTuple):
    """So many units of the row at a place, on its options from `first` on."""

    place: int
    left: int
    first: int = 0


Made = dict[int, Rooms]  # units by option, by place


class BySums:
    """One question: rows to be met beside a state."""

    def __init__(self, given: "Problem", state: "State", rows: "Sequence[Left]") -> None:
        """Nothing is asked yet but how much room each row has on its own."""
        self._given, self._state, self._rows = given, state, rows
        self._steps = self._unlaid = 0
        self._weights = [1] * len(rows)
        self._rooms: list[Rooms] = []  # before a row's first option 0
        for number, need, first in rows:
            rooms = [given.room(part, state, need) for part in given.rows[number][1][first:]]
            self._rooms.append((*(0,) * first, *rooms))
        self._all = tuple([_Asked(at, one.need) for at, one in enumerate(rows)])
        self._made: list[list[int]] = [[0] * len(mine) for mine in self._rooms]

    def _look(self, closely: bool) -> None:
        """Add up all sums; what was found with others before is forgotten."""
        self._closely = closely
        self._sums = sums = RowSums(self._given, self._state, self._rows, self._rooms, closely)
        self._free, self._tops = sums.free, sums.fields.tops
        self._takes, self._adds = sums.takes, sums.adds
        self._failed: set[tuple[int, int, tuple[_Asked, ...]]] = set()
        self._fills: Fills | None = None
        self._cuts: list[int] = []
        self._in_cuts = 0
        for number, strip in enumerate(self._given.packings):
            for counts in strip.cant:
                self._cut(number, counts)

    def any(self) -> Decided:
        """Some assignment that can be cut, or that there is none.

        Worked number: 3 pieces of 4 in and 1 of 5 in can be cut from two sides of 10 in, 2 of
        5 in can't.
        """
        return self._decided(None, first=False)

    def first(self, witness: "Witness | None" = None) -> Decided:
        """The first assignment that can be cut, or that there is none; a witness may be known.

        Each row has as many units as possible on its first option, then on the second, and so on.

        Worked number: of 3 pieces of 4 in and then 1 of 5 in on two sides of 10 in the first side
        has 2 of 4 in, the second 1 and that of 5 in.
        """
        return self._decided(witness, first=True)

    def _decided(self, witness: "Witness | None", first: bool) -> Decided:
        if witness is None and self._too_much():
            return Decided(known=True)
        try:
            found = self._found(witness, first)
        except _Grown:
            return Decided(known=False)
        except _Refused:
            found = False
        if not found:
            return Decided(known=True)
        numbers = [one.row for one in self._rows]
        return Decided(True, dict(zip(numbers, map(tuple, self._made), strict=True)))

    def _found(self, witness: "Witness | None", first: bool) -> bool:
        """Whether there is an assignment; looked at closely where the first one can't be laid."""
        for closely in (False, True):
            self._look(closely)
            if witness is not None:
                made: Made | None = {at: witness[one.row] for at, one in enumerate(self._rows)}
            else:
                made = self._some()
            try:
                return made is not None and self._made_of(made, first)
            except _Unlaid:
                continue
        raise _Grown

    def _too_much(self) -> bool:
        """Whether one row alone, or all together, are too much for where they may lie."""
        rooms = [mine[one.first :] for one, mine in zip(self._rows, self._rooms, strict=True)]
        if any(sum(mine) < one.need for one, mine in zip(self._rows, rooms, strict=True)):
            return True
        return self._given.sums().overfull(self._state, self._rows, rooms)

    def _some(self) -> Made | None:
        """Units of all rows that no sum refuses."""
        if self._free & self._tops != self._tops:
            return None
        return self._met(self._free, 0, self._all, self._rooms)

    def _made_of(self, made: Made, first: bool) -> bool:
        """Whether what no sum refuses can lie, else something else; at once the first, if asked."""
        if first:
            return self._row(0, self._free, 0, made)
        other: Made | None = made
        while other is not None:
            for at, mine in other.items():
                self._made[at][:] = mine
            if self._lies():
                return True
            other = self._some()
        return False

    def _met(
        self, free: int, lying: int, asked: tuple[_Asked, ...], rooms: Sequence[Rooms]
    ) -> Made | None:
        """Units of what is asked that no sum refuses; None where there are none."""
        if not asked:
            return {}
        self._steps += 1
        if self._steps > STEPS:
            raise _Grown
        key = free, lying & self._in_cuts, asked
        if key in self._failed:
            return None
        if self._steps > TIGHT and self._wasted(free, asked):
            self._failed.add(key)
            return None
        now = self._now(free, asked, rooms)
        if now is not None:
            at = self._fewest(asked, now)
            mine, others = now.pop(at), (*asked[:at], *asked[at + 1 :])
            found = self._spread(free, lying, asked[at], mine, (), others, now)
            if found is not None:
                return found
        self._failed.add(key)
        return None

    def _wasted(self, free: int, asked: tuple[_Asked, ...]) -> bool:
        """Whether what is left can't be filled with what is asked; first seen from the start."""
        if self._fills is None:
            self._fills = self._sums.bins()
            if self._wasted(self._free, self._all):
                raise _Refused
        if not self._fills.tell:
            return False
        fields = self._sums.fields
        half = 1 << fields.width - 1
        left = [
            (free >> fields.width * one.place & fields.field) - half for one in self._fills.bins
        ]
        return self._fills.too_little(left, [one[:2] for one in asked])

    def _now(
        self, free: int, asked: tuple[_Asked, ...], rooms: Sequence[Rooms]
    ) -> list[Rooms] | None:
        """The rooms of each row that are left; None where one has too little."""
        tops, found = self._tops, list[Rooms]()
        for (place, left, _), mine in zip(asked, rooms, strict=True):
            for at, (take, room) in enumerate(zip(self._takes[place], mine, strict=True)):
                rest = free - room * take
                if rest & tops != tops:
                    while rest & tops != tops:
                        room -= 1
                        rest += take
                    mine = (*mine[:at], room, *mine[at + 1 :])
            if sum(mine) < left:
                self._weights[place] += 1
                return None
            found.append(mine)
        return found

    def _fewest(self, asked: tuple[_Asked, ...], rooms: Sequence[Rooms]) -> int:
        """The place of what has the fewest ways left, the less the oftener it found no room."""
        best, least, weight = 0, -1, 1
        for at, ((place, left, _), mine) in enumerate(zip(asked, rooms, strict=True)):
            slack, ways, most, its = sum(mine) - left, 1, 0, self._weights[place]
            for room in mine:
                if room:
                    one = min(room, left, slack)
                    ways *= one + 1
                    most = max(most, one)
            ways //= most + 1
            if least < 0 or ways * weight < least * its:
                best, least, weight = at, ways, its
        return best

    def _spread(
        self,
        free: int,
        lying: int,
        one: _Asked,
        mine: Rooms,
        made: Rooms,
        others: tuple[_Asked, ...],
        rooms: Sequence[Rooms],
    ) -> Made | None:
        """Spread what is left of a row over its options after those made, and meet the others."""
        place, left, _ = one
        at = len(made)
        if not left:
            found = self._met(free, lying, others, rooms)
            if found is not None:
                found[place] = (*made, *(0,) * (len(mine) - at))
            return found
        take, later = self._takes[place][at], sum(mine[at + 1 :])
        for count in range(min(left, mine[at]), max(0, left - later) - 1, -1):
            rest = free - count * take
            both = lying + count * self._adds[place][at]
            if rest & self._tops == self._tops and not (self._cuts and self._is_cut(both)):
                less = _Asked(place, left - count)
                found = self._spread(rest, both, less, mine, (*made, count), others, rooms)
                if found is not None:
                    return found
        return None

    def _row(self, at: int, free: int, lying: int, witness: Made) -> bool:
        """Make the row at a place and those after it, of which a witness is known by the sums."""
        if at == len(self._rows):
            return self._lies()
        return self._option(at, 0, self._rows[at].need, free, lying, witness)

    def _option(
        self, at: int, option: int, left: int, free: int, lying: int, witness: Made
    ) -> bool:
        """Make what is left of a row on its options from one on, the most first; then the rest."""
        made, rooms = self._made[at], self._rooms[at]
        made[option:] = [0] * (len(made) - option)
        if not left:
            return self._row(at + 1, free, lying, witness)
        take, add = self._takes[at][option], self._adds[at][option]
        later = sum(rooms[option + 1 :])
        for count in range(min(left, rooms[option]), max(0, left - later) - 1, -1):
            rest, both = free - count * take, lying + count * add
            if rest & self._tops != self._tops or self._is_cut(both):
                continue
            known: Made | None = witness
            if count != witness[at][option]:
                known = self._after(at, option + 1, left - count, rest, both)
            if known is None:
                continue
            made[option] = count
            if self._option(at, option + 1, left - count, rest, both, known):
                return True
        return False

    def _after(self, at: int, option: int, left: int, free: int, lying: int) -> Made | None:
        """Units of what is left of a row from an option on, and of the rows after it, by sums."""
        asked = [_Asked(place, self._rows[place].need) for place in range(at + 1, len(self._rows))]
        rooms = self._rooms[at + 1 :]
        if left:
            asked.insert(0, _Asked(at, left, option))
            rooms.insert(0, (*(0,) * option, *self._rooms[at][option:]))
        return self._met(free, lying, (*asked,), rooms)

    def _lies(self) -> bool:
        """Whether all that was made can lie; else what can't lie together is noted."""
        state = self._state
        for one, made in zip(self._rows, self._made, strict=True):
            for part, count in zip(self._given.rows[one.row][1], made, strict=True):
                state = self._given.added(state, part, count)
        lies = True
        for number, strip in enumerate(self._given.packings):
            if not strip.fits(state.counts[number]):
                lies = False
                self._cut(number, strip.too_many(state.counts[number]))
        if not lies:
            self._unlaid += 1
            if self._unlaid == FEW and not self._closely:
                raise _Unlaid
            if self._unlaid > UNLAID:
                raise _Grown
        return lies

    def _cut(self, packing: int, counts: Sequence[int]) -> None:
        """Note that so many pieces of each kind can't lie together on a strip."""
        cut, fields = self._sums.cut(packing, counts)
        if cut:
            self._cuts.append(cut)
            self._in_cuts |= fields

    def _is_cut(self, lying: int) -> bool:
        """Whether pieces that can't lie together are among those made."""
        tops = self._sums.counts.tops
        with_tops = lying | tops
        return any((with_tops - cut) & tops == tops for cut in self._cuts)
