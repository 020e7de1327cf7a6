"""What a planner remembers between questions of what is left over: rests, and open parts.

Every answer is as from scratch: what is used again was reckoned from the same values.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import count

from shared.carcass.carcass import Share
from shared.cutting.answer import OpenPart, PlanLine
from shared.cutting.demand import Demand, Shop
from shared.cutting.leftovers import rest_of_option
from shared.cutting.moved import Moved, Reach, Reached, Took, reach_of, took_since
from shared.cutting.occupied import Place
from shared.cutting.open_parts import Opened, open_parts
from shared.cutting.settled import Settled
from shared.cutting.tally import Tally
from shared.cutting.ways import Ways

NOTHING = Took()
OPTIONS = 1 << 20  # turns kept for the options of one line


@dataclass(slots=True)
class _Group:
    """A group that is settled, what it takes and its turn; held, so that no other has its id."""

    settled: Settled
    took: Took
    turn: int


@dataclass(slots=True)
class _Rest:
    """What a line takes of the rest, option by option: where it may, its lines, what they take.

    `flat` are the lines of all options. It was used last in the answer of that number.
    """

    of: Demand
    reach: list[Reach]
    lines: list[list[PlanLine]]
    took: list[Took]
    flat: list[PlanLine] = field(default_factory=list[PlanLine])
    used: int = 0


@dataclass(slots=True)
class Remembered:
    """The rests of the last answer by line, its groups, and the open parts.

    `moved` is what is taken otherwise than in the answer before this one, as far as this one is
    reckoned; `changed` are the places of which that holds since the open parts were reckoned.
    """

    tally: Tally
    rests: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
    groups: dict[int, _Group] = field(default_factory=dict[int, _Group])
    opened: Opened = field(default_factory=Opened)
    moved: Moved = field(default_factory=Moved)
    reached: Reached = field(default_factory=Reached)
    changed: set[Place] = field(default_factory=set[Place])
    number: int = 0
    turns: "count[int]" = field(default_factory=lambda: count(-1, -1))

    def begin(self, settled: Sequence[Settled], resting: Iterable[Demand]) -> None:
        """Another answer: note what moved with the groups, and with lines that rest no more."""
        self.number += 1
        self.moved = Moved()
        now = {id(one): one for one in settled}
        gone = [self.groups.pop(key) for key in [key for key in self.groups if key not in now]]
        come = [one for key, one in now.items() if key not in self.groups]
        for one in gone:
            self.tally.drop(one.turn, one.took)
        took: list[Took] = []
        for one in come:
            mine = took_since(None, one.occupied)
            turn = next(self.turns)
            self.groups[id(one)] = _Group(one, mine, turn)
            self.tally.add(turn, mine)
            took.append(mine)
        if self.number > 1:
            self.moved.note([one.took for one in gone], took, self.reached)
        there = {one.choice.line for one in resting}
        for line in [line for line in self.rests if line not in there]:
            self._forget(line)

    def end(self) -> None:
        """All that rests is taken: keep what moved for the open parts."""
        self.changed |= self.moved.places

    def rest_of(self, one: Demand, ways: Ways) -> list[PlanLine]:
        """What one line takes of the rest: again what it took, where nothing else moved there."""
        known = self.rests.get(one.choice.line)
        if known is None or known.of is not one or known.used != self.number - 1:
            if known is not None:
                self._forget(one.choice.line)
            known = self.rests[one.choice.line] = _nothing_yet(one, ways)
            self.reached.add(one.choice.line, known.reach)
            for place in range(len(one.options)):
                self._take(known, place, ways)
            known.flat = [made for mine in known.lines for made in mine]
        elif one.choice.line in self.moved.waiting:
            self._again(known, ways)
        known.used = self.number
        return known.flat

    def _again(self, known: _Rest, ways: Ways) -> None:
        """Take the rest anew with the options where something moved, one after the other.

        What one takes otherwise may move what later ones find.
        """
        waiting, place = self.moved.waiting[known.of.choice.line], -1
        while later := [option for option in waiting if option > place]:
            place = min(later)
            self._take(known, place, ways)
        known.flat = [made for mine in known.lines for made in mine]

    def _take(self, known: _Rest, place: int, ways: Ways) -> None:
        """Take the rest with one option, and note what it takes otherwise than before."""
        one, turn = known.of, known.of.choice.line * OPTIONS + place
        there = self.tally.before(turn, known.reach[place])
        before = there.copied()
        lines = rest_of_option(one, one.options[place], there, ways)
        if lines == known.lines[place]:
            return  # what lies there and what it counts as is in the lines
        for made in lines if there.split else ():
            there.note(made)
        took, was = took_since(before, there), known.took[place]
        self.tally.drop(turn, was)
        self.tally.add(turn, took)
        if self.number > 1:  # at first nothing was otherwise, and every line is still to come
            self.moved.note((was,), (took,), self.reached)
        known.lines[place], known.took[place] = lines, took

    def _forget(self, line: int) -> None:
        """A line that takes the rest no more, or is another one now."""
        known = self.rests.pop(line)
        for place, took in enumerate(known.took):
            self.tally.drop(line * OPTIONS + place, took)
        self.reached.drop(line, known.reach)
        self.moved.note(known.took, (), self.reached)

    def open_parts(self, shares: Sequence[Share], shop: Shop) -> tuple[OpenPart, ...]:
        """The open parts; those where nothing moved since they were reckoned again."""
        self.opened.forget(self.changed)
        self.changed = set()
        occupied = self.tally.in_all()
        return open_parts(shares, shop.held, shop.herd, occupied, shop.ways, self.opened)


def _nothing_yet(one: Demand, ways: Ways) -> _Rest:
    reach = [reach_of(option, ways) for option in one.options]
    return _Rest(one, reach, [[] for _ in reach], [NOTHING] * len(reach))
