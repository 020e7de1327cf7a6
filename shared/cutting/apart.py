"""Rows met place by place: what each place can hold of all rows at once, added up over places.

Options that share no strip and no part can't stand in one another's way: two sides, or the chuck
and the plate of one side. In each such place the most of one row beside every number of the
others is found on its own; then the places are added up, one after another. So the work grows
with the number of places, where walking through all spreads grows as its power.
"""

from operator import add, ge, mul
from typing import TYPE_CHECKING, NamedTuple

from shared.cutting.lanes import bits_of
from shared.cutting.together import takes_of

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
    """Options that meet: their packings and cells, lengths, and what is known from each on.

    `lengths` are what a unit of each option takes of all its lanes together, `later` what all
    options from each one on can take, `there` what the place has.
    """

    options: "list[_Option]"
    packings: list[int]
    cells: list[int]
    lengths: list[int]
    later: list[int]
    there: int
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
        """A witness that meets all rows, or that there is none.

        Where all places together are hardly longer than what is asked, each must be nearly full:
        what leaves more of one free than that is not looked at. Of 2 sides of 12 in and 23 in
        asked no side may have more than 1 in left.
        """
        places = [self._place(state, options) for options in _apart(self._options(state))]
        weights = self._weights(places)
        spare = sum([place.there for place in places]) - _weight(self.needs, weights)
        if spare < 0:
            return Decided(known=True)
        alike: dict[object, Most] = {}
        found: list[tuple[list[_Option], Most]] = []
        for place in places:
            key = self._looks(state, place.options)
            if key not in alike:
                alike[key] = self._most(state, place, place.there - spare, weights)
            if not alike[key]:
                return Decided(known=True)
            found.append((place.options, alike[key]))
        found.sort(key=lambda one: len(one[1]))
        made = self._added_up(found, weights)
        if made is None:
            return Decided(known=True)
        return Decided(known=True, witness=self._witness(made))

    def _place(self, state: "State", options: "list[_Option]") -> _Place:
        packings = [*{packing: None for one in options for packing, _ in one.part.pieces}]
        cells = [*{cell: None for one in options for cell, amount in one.part.cells if amount}]
        lengths: list[int] = []
        for one in options:
            kinds = [self.given.packings[packing].kinds[kind] for packing, kind in one.part.pieces]
            lengths.append(sum([(it.size + it.kerf) * it.lanes.bit_count() for it in kinds]))
        later = [0]
        for one, length in zip(reversed(options), reversed(lengths), strict=True):
            later.append(later[-1] + one.room * length)
        there = sum([_left(self.given, state, packing, options) for packing in packings])
        return _Place(options, packings, cells, lengths, later[::-1], there, {})

    def _weights(self, places: "Iterable[_Place]") -> list[int]:
        """For each row the least length that one unit takes, all its lanes together."""
        found: dict[int, int] = {}
        for place in places:
            for one, length in zip(place.options, place.lengths, strict=True):
                found[one.row] = min(found.get(one.row, length), length)
        return [found.get(row, 0) for row in range(len(self.rows))]

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

    def _most(self, state: "State", place: "_Place", least: int, weights: "Sequence[int]") -> Most:
        """The most units of each row beside one another that take so much of one place."""
        found = _best(self._spread(state, place, 0, 0, least))
        return {units: made for units, made in found.items() if _weight(units, weights) >= least}

    def _spread(self, state: "State", place: "_Place", at: int, long: int, least: int) -> Most:
        """All that fits on the options of a place from this one on; the last has its most.

        What was made on the options before is so `long`.
        """
        if long + place.later[at] < least:
            return {}
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
            length = long + count * place.lengths[at]
            for units, made in self._spread(after, place, at + 1, length, least).items():
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

    def _added_up(
        self, places: "Sequence[tuple[list[_Option], Most]]", weights: "Sequence[int]"
    ) -> Made | None:
        """Units of all rows over all places, or None where no sum reaches what is needed."""
        heavy = [
            (options, sorted([(_weight(it, weights), it, made) for it, made in most.items()])[::-1])
            for options, most in places
        ]
        later, most_later = [(0,) * len(self.needs)], [0]
        for _, most in reversed(heavy):
            each = tuple([max(column) for column in zip(*[it for _, it, _ in most], strict=True)])
            later.append(tuple(map(add, later[-1], each)))
            most_later.append(most_later[-1] + most[0][0])
        needed = _weight(self.needs, weights)
        sums: Most = {(0,) * len(self.needs): ()}
        for place, (options, most) in enumerate(heavy):
            rest, missing = later[-2 - place], needed - most_later[-2 - place]
            least = tuple([need - more for need, more in zip(self.needs, rest, strict=True)])
            grown: Most = {}
            for units, made in sums.items():
                before = missing - _weight(units, weights)
                for weight, more, others in most:
                    if weight < before:
                        break  # and so are all after it
                    self._step()
                    both = tuple(map(min, self.needs, map(add, units, more)))
                    if both in grown or _weight(both, weights) < missing:
                        continue
                    if all(map(ge, both, least)):
                        named = [(row, options[at].at, count) for row, at, count in others]
                        grown[both] = (*made, *named)
            sums = _best(grown)
        return sums.get(self.needs)

    def _step(self) -> None:
        self.steps += 1
        if self.steps > self.limit:
            raise _Grown


def _weight(units: "Iterable[int]", weights: "Iterable[int]") -> int:
    return sum(map(mul, units, weights))


def _left(given: "Problem", state: "State", number: int, options: "Sequence[_Option]") -> int:
    """What is left of the lanes of a strip where options may lie, with the last kerfs."""
    packing, counts = given.packings[number], state.counts[number]
    kinds = {kind for one in options for its, kind in one.part.pieces if its == number}
    reaches: dict[int, tuple[int, int]] = {}
    for kind in kinds:
        piece = packing.kinds[kind]
        lo, hi = piece.allowed[0][0], piece.allowed[-1][1]
        for bit in bits_of(piece.lanes):
            start, end = reaches.get(bit, (lo, hi))
            reaches[bit] = min(start, lo), max(end, hi)
    left = 0
    for bit, (start, end) in reaches.items():
        takes, last = takes_of(packing.kinds, bit, (start, end))
        left += end - start + last - sum(map(mul, counts, takes))
    return left


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
