"""Who is cut from which side: the first assignment, in a fixed order, that can be cut.

Lines are tried in order, each with as many units as possible on its first option, then on the
second, and so on. Most groups are done at the first dive. Where one isn't, sums over all sides
are looked at, and `judge` decides whether the lines can be met at all; the first assignment is
then found row by row, each step proved by another judgement.
"""

from collections.abc import Sequence

from shared.cutting.by_sums import BySums
from shared.cutting.judge import Judge, Left
from shared.cutting.problem import Problem, State, Units, Witness

PATIENCE = 6  # steps of the dive beyond its rows after which the judge is called
HARD = 0  # times that it was hard to tell whether pieces can lie, after which likewise


def solve(given: Problem, which: Sequence[int] | None = None) -> Units | None:
    """Units by row and option of the first assignment that can be cut, or None.

    `which` are the rows to be met, all when None; the others have no units.
    """
    dive = _Dive(given, range(len(given.rows)) if which is None else which)
    if not given.memory.grew:
        found = dive.run()
        if found is not None or not dive.tired:
            return found
        given.memory.grew = True
    elif not dive.begin():
        return None
    return _by_judgement(given, dive)


def possible(given: Problem, which: Sequence[int]) -> bool:
    """Whether rows can be met together at all."""
    return met(given, which) is not None


def met(given: Problem, which: Sequence[int], hard: bool = False) -> Witness | None:
    """Units of rows by option that meet them together, None where there are none.

    Where that is `hard` to tell, as may be guessed, sums are added up at once.
    """
    start = _forced(given, which)
    if start is None:
        return None
    state, free, made = start
    rows = tuple([Left(number, given.rows[number][0], 0) for number in free])
    found = Judge(given, hard=hard).meet(state, rows)
    return None if found is None else made | found


def _forced(given: Problem, which: Sequence[int]) -> tuple[State, list[int], Witness] | None:
    """What has no choice of place, set; the rows that have one; and the units of the others.

    None where that alone doesn't fit.
    """
    free: list[int] = []
    made: Witness = {}
    counts: dict[int, list[int]] = {}
    empty = given.empty()
    used = list(empty.used)
    for number in which:
        need, parts = given.rows[number]
        if len(parts) != 1:
            free.append(number)
            continue
        part = parts[0]
        if 0 <= part.cap < need:
            return None
        made[number] = (need,)
        for packing, kind in part.pieces:
            if packing not in counts:
                counts[packing] = list(empty.counts[packing])
            counts[packing][kind] += need
        for cell, amount in part.cells:
            used[cell] += amount * need
            if used[cell] > given.there[cell]:
                return None
    if not made:
        return empty, free, made
    laid = list(empty.counts)
    for packing, one in counts.items():
        laid[packing] = tuple(one)
        if not given.packings[packing].fits(laid[packing]):
            return None
    return State(tuple(laid), tuple(used)), free, made


def beside(given: Problem, state: State, which: Sequence[int]) -> tuple[Witness, State] | None:
    """Rows laid beside a state one after the other, each on its first options with room.

    None where one finds too little room so; they may still be met otherwise.
    """
    units: Witness = {}
    for number in which:
        left, parts = given.rows[number]
        made: list[int] = []
        for part in parts:
            count = given.room(part, state, left) if left else 0
            state = given.added(state, part, count)
            left -= count
            made.append(count)
        if left:
            return None
        units[number] = tuple(made)
    return units, state


class _Dive:
    """The search in the fixed order, given up when it grows."""

    def __init__(self, given: Problem, which: Sequence[int]) -> None:
        self.given = given
        self.which = which
        self.failed: set[tuple[int, object]] = set()
        self.steps = 0
        self.tired = False
        self.free: list[int] = []
        self.made: list[tuple[int, ...]] = [(0,) * len(parts) for _, parts in given.rows]
        self.start = given.empty()
        self._strips = [packing for packing in given.packings if not packing.plain]
        self._was_hard = self._hard()

    def _is_tired(self) -> bool:
        """Whether it grew, or it was hard to tell in this dive whether pieces can lie."""
        hard = self._hard() - self._was_hard if self._strips else 0
        self.tired = self.steps > len(self.free) + PATIENCE or hard > HARD
        return self.tired

    def _hard(self) -> int:
        return sum([strip.hard for strip in self._strips])

    def begin(self) -> bool:
        """Set what has no choice of place; whether it fits."""
        start = _forced(self.given, self.which)
        if start is None:
            return False
        self.start, self.free, made = start
        for number, units in made.items():
            self.made[number] = units
        return True

    def run(self) -> Units | None:
        """The first assignment, or None: with `tired` set nobody knows."""
        if not self.begin():
            return None
        if not self._all_have_room(0, self.start) or not self._from(0, self.start):
            return None
        return tuple(self.made)

    def _from(self, place: int, state: State) -> bool:
        """Meet the free rows from this one on."""
        if place == len(self.free):
            return True
        key = (place, self.given.signature(state))
        if key in self.failed:
            return False
        need, parts = self.given.rows[self.free[place]]
        rooms = [self.given.room(part, state, need) for part in parts]
        if sum(rooms) >= need and self._spread(place, 0, need, rooms, state, ()):
            return True
        self.failed.add(key)
        return False

    def _spread(
        self,
        place: int,
        option: int,
        left: int,
        rooms: list[int],
        state: State,
        made: tuple[int, ...],
    ) -> bool:
        """Spread what is left of a row over its options from this one on, the most first."""
        parts = self.given.rows[self.free[place]][1]
        if option == len(parts):
            self.made[self.free[place]] = made
            self.steps += 1
            if self._is_tired():
                return False
            return self._all_have_room(place + 1, state) and self._from(place + 1, state)
        later = sum(rooms[option + 1 :])
        most = min(left, rooms[option])
        if any(made):
            most = self.given.room(parts[option], state, most)
        for count in range(most, max(0, left - later) - 1, -1):
            after = self.given.added(state, parts[option], count)
            if self._spread(place, option + 1, left - count, rooms, after, (*made, count)):
                return True
            if self.tired:
                return False
        return False

    def _all_have_room(self, place: int, state: State) -> bool:
        """Whether each free row from here on could still be met on its own."""
        for number in self.free[place:]:
            left, parts = self.given.rows[number]
            for part in parts:
                left -= self.given.room(part, state, left)
                if left <= 0:
                    break
            if left > 0:
                return False
        return not (self._strips and self._is_tired())


def _by_judgement(given: Problem, dive: _Dive) -> Units | None:
    """The first assignment where the dive grew: by sums, or a witness, bettered row by row."""
    state, made = dive.start, dive.made
    rows = tuple([Left(number, given.rows[number][0], 0) for number in dive.free])
    judge = Judge(given, by_sums=False)
    decided = BySums(given, state, rows).first(judge.known(state, rows))
    if decided.known and decided.witness is None:
        return None
    if decided.witness is not None:
        for number, units in decided.witness.items():
            made[number] = units
        return tuple(made)
    witness = Judge(given, hard=True).meet(state, rows)
    if witness is None:
        return None
    for place, number in enumerate(dive.free):
        left, parts = given.rows[number]
        counts: list[int] = []
        for option, part in enumerate(parts):
            best = witness[number][option]
            for count in range(given.room(part, state, left), best, -1):
                rest = (Left(number, left - count, option + 1), *rows[place + 1 :])
                better = judge.meet(given.added(state, part, count), rest)
                if better is not None:
                    best = count
                    witness = {**witness, **better}
                    break
            counts.append(best)
            left -= best
            state = given.added(state, part, best)
        made[number] = tuple(counts)
    return tuple(made)
