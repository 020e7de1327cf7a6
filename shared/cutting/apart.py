"""Rows met place by place: what each place can hold of all rows at once, added up over places.

Options that share no strip and no part can't stand in one another's way: two sides, or the chuck
and the plate of one side. In each such place the most of one row beside every number of the
others is found on its own; then the places are added up, one after another. So the work grows
with the number of places, where walking through all spreads grows as its power.
"""

from operator import add, ge, mul
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from shared.cutting.judge import Left
    from shared.cutting.problem import Part, Problem, State, Witness

Made = tuple[tuple[int, int, int], ...]  # row's place, option's place, units
Most = dict[tuple[int, ...], Made]  # units of each row that fit together, none of them bettered

CROWDED = 128  # ways of filling a place after which those that are bettered are left out


class Decided(NamedTuple):
    """What is known: a witness, that there is none, or (`known` False) nothing."""

    known: bool
    witness: "Witness | None" = None


class _Grown(Exception):  # noqa: N818 - no error: it only ends a search that grew
    """More steps than it is worth."""


class _Option(NamedTuple):
    """One option of one row, by their places, and the most of it that fits alone."""

    row: int
    at: int
    part: "Part"
    room: int


class _Place(NamedTuple):
    """Options that meet, their packings and cells, and what is known from each option on."""

    options: "list[_Option]"
    packings: list[int]
    cells: list[int]
    known: "dict[object, Most]"


def met_apart(given: "Problem", state: "State", rows: "Sequence[Left]", steps: int) -> Decided:
    """Decide whether rows can be met beside a state, place by place, in so many steps.

    A step is a look at a place, or the sum of two.

    Worked number: of 5 roasts and 4 chops on two sides, each with room for 4 roasts, or 3 beside
    1 chop, or 2 beside 2, the sides together hold 4 roasts beside 4 chops: they can't be met.
    """
    if len(rows) < 2:
        return Decided(known=False)
    try:
        return _Places(given, rows, steps).met(state)
    except _Grown:
        return Decided(known=False)


class _Places:
    """One decision."""

    def __init__(self, given: "Problem", rows: "Sequence[Left]", limit: int) -> None:
        self.limit = limit
        self.given = given
        self.rows = rows
        self.needs = tuple([one.need for one in rows])
        self.steps = 0

    def met(self, state: "State") -> Decided:
        """A witness that meets all rows, or that there is none."""
        alike: dict[object, Most] = {}
        found: list[tuple[list[_Option], Most]] = []
        for options in _apart(self._options(state)):
            key = self._looks(state, options)
            if key not in alike:
                alike[key] = self._most(state, options)
            found.append((options, alike[key]))
        made = self._added_up(found)
        if made is None:
            return Decided(known=True)
        return Decided(known=True, witness=self._witness(made))

    def _witness(self, made: Made) -> "Witness":
        """Units by row and option; what was made beyond the need is left out again."""
        counts = [[0] * len(self.given.rows[one.row][1]) for one in self.rows]
        left = list(self.needs)
        for row, at, units in made:
            counts[row][at] = min(units, left[row])
            left[row] -= counts[row][at]
        return {one.row: tuple(mine) for one, mine in zip(self.rows, counts, strict=True)}

    def _options(self, state: "State") -> list[_Option]:
        """All options with room, row by row."""
        found: list[_Option] = []
        for place, (row, need, first) in enumerate(self.rows):
            for at, part in enumerate(self.given.rows[row][1]):
                room = self.given.room(part, state, need) if at >= first else 0
                if room:
                    found.append(_Option(place, at, part, room))
        return found

    def _looks(self, state: "State", options: "Sequence[_Option]") -> object:
        """The same for places that hold the same: sides of one weight are looked at once."""
        numbers: dict[tuple[str, int], int] = {}
        strips: list[object] = []
        cells: list[int] = []
        for option in options:
            for packing, _ in option.part.pieces:
                if ("strip", packing) not in numbers:
                    numbers["strip", packing] = len(strips)
                    strips.append((self.given.packings[packing].kinds, state.counts[packing]))
            for cell, _ in option.part.cells:
                if ("cell", cell) not in numbers:
                    numbers["cell", cell] = len(cells)
                    cells.append(self.given.there[cell] - state.used[cell])
        shapes = [
            (
                option.row,
                option.room,
                option.part.cap,
                tuple([(numbers["strip", packing], kind) for packing, kind in option.part.pieces]),
                tuple([(numbers["cell", cell], much) for cell, much in option.part.cells]),
            )
            for option in options
        ]
        return (tuple(shapes), tuple(strips), tuple(cells))

    def _most(self, state: "State", options: "Sequence[_Option]") -> Most:
        """The most units of each row beside one another, on the options of one place."""
        packings = {packing: None for one in options for packing, _ in one.part.pieces}
        cells = {cell: None for one in options for cell, amount in one.part.cells if amount}
        place = _Place(list(options), list(packings), list(cells), {})
        return _best(self._spread(state, place, 0))

    def _spread(self, state: "State", place: "_Place", at: int) -> Most:
        """All that fits on the options of a place from this one on; the last has its most."""
        if at == len(place.options):
            return {(0,) * len(self.rows): ()}
        key = (at, self._signature(state, place))
        if key in place.known:
            return place.known[key]
        self._step()
        row, _, part, room = place.options[at]
        room = self.given.room(part, state, room)
        last = at + 1 == len(place.options)
        found: Most = {}
        for count in range(room, room - 1 if last else -1, -1):
            after = self.given.added(state, part, count)
            for units, made in self._spread(after, place, at + 1).items():
                if count:
                    more = list(units)
                    more[row] = min(self.needs[row], more[row] + count)
                    found.setdefault(tuple(more), ((row, at, count), *made))
                else:
                    found.setdefault(units, made)
        place.known[key] = _best(found) if len(found) > CROWDED else found
        return place.known[key]

    def _signature(self, state: "State", place: "_Place") -> object:
        """What matters of a state in one place."""
        found: list[object] = [state.used[cell] for cell in place.cells]
        for number in place.packings:
            packing, counts = self.given.packings[number], state.counts[number]
            found.append(packing.weigh(counts) if packing.plain else counts)
        return tuple(found)

    def _added_up(self, places: "Sequence[tuple[list[_Option], Most]]") -> Made | None:
        """Units of all rows over all places, or None where no sum reaches what is needed."""
        weights = self._weights()
        later, most_later = [(0,) * len(self.needs)], [0]
        for _, most in reversed(places):
            each = tuple([max(column) for column in zip(*most, strict=True)])
            later.append(tuple(map(add, later[-1], each)))
            heaviest = max([sum(map(mul, units, weights)) for units in most])
            most_later.append(most_later[-1] + heaviest)
        needed = sum(map(mul, self.needs, weights))
        sums: Most = {(0,) * len(self.needs): ()}
        for place, (options, most) in enumerate(places):
            rest, heavy = later[-2 - place], most_later[-2 - place]
            least = tuple([need - more for need, more in zip(self.needs, rest, strict=True)])
            grown: Most = {}
            for units, made in sums.items():
                for more, others in most.items():
                    self._step()
                    both = tuple(map(min, self.needs, map(add, units, more)))
                    if both in grown or sum(map(mul, both, weights)) < needed - heavy:
                        continue
                    if all(map(ge, both, least)):
                        named = [(row, options[at].at, count) for row, at, count in others]
                        grown[both] = (*made, *named)
            sums = _best(grown)
        return sums.get(self.needs)

    def _weights(self) -> list[int]:
        """For each row the least length that one unit takes, all its pieces together."""
        packings = self.given.packings
        found: list[int] = []
        for row, _, first in self.rows:
            steps = [
                sum([packings[p].kinds[k].size + packings[p].kinds[k].kerf for p, k in part.pieces])
                for part in self.given.rows[row][1][first:]
                if part.cap
            ]
            found.append(min(steps, default=0))
        return found

    def _step(self) -> None:
        self.steps += 1
        if self.steps > self.limit:
            raise _Grown


def _best(found: Most) -> Most:
    """Without what another betters in every row."""
    kept: Most = {}
    for units in sorted(found, reverse=True):
        if not any(all(map(int.__ge__, other, units)) for other in kept):
            kept[units] = found[units]
    return kept


def _apart(options: "Iterable[_Option]") -> "list[list[_Option]]":
    """Options that share a strip or a part, directly or through others, together."""
    sets: list[tuple[set[tuple[str, int]], list[_Option]]] = []
    for option in options:
        keys = {("strip", packing) for packing, _ in option.part.pieces}
        keys |= {("cell", cell) for cell, amount in option.part.cells if amount}
        members, others = [option], list[tuple[set[tuple[str, int]], list[_Option]]]()
        for mine, before in sets:
            if mine & keys:
                keys |= mine
                members = before + members
            else:
                others.append((mine, before))
        sets = [*others, (keys, members)]
    return [sorted(members, key=lambda one: (one.row, one.at)) for _, members in sets]
