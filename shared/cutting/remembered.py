"""What a planner remembers between questions of what is left over: rests, and open parts.

Every answer is as from scratch: what is used again was reckoned from the same values.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from shared.carcass.carcass import Share
from shared.cutting.answer import OpenPart, PlanLine
from shared.cutting.demand import Demand, Shop
from shared.cutting.groups import keys_of, keys_of_options
from shared.cutting.leftovers import rest_of_option
from shared.cutting.occupied import Occupied, Place
from shared.cutting.open_parts import Opened, open_parts
from shared.cutting.settled import Settled
from shared.cutting.take import Option
from shared.cutting.ways import Ways


@dataclass(slots=True)
class _Rest:
    """What a line took of the rest, option by option, and all of it; it was used last then.

    `touches` are the lanes and parts each option lies on, `all` those of the line.
    """

    of: Demand
    touches: list[frozenset[Place]]
    all: frozenset[Place]
    lines: list[list[PlanLine]]
    after: Occupied
    used: int


@dataclass(slots=True)
class Remembered:
    """The rests of the last answer by line, its groups, and the open parts.

    `moved` are the lanes and parts of which something else is taken than in the answer before
    this one, `changed` those since the open parts were reckoned.
    """

    rests: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
    settled: dict[int, Settled] = field(default_factory=dict[int, Settled])
    opened: Opened = field(default_factory=Opened)
    moved: set[Place] = field(default_factory=set[Place])
    changed: set[Place] = field(default_factory=set[Place])
    number: int = 0

    def begin(self, settled: Iterable[Settled], resting: Iterable[Demand]) -> None:
        """Another answer: note what moved with the groups, and with lines that rest no more."""
        self.number += 1
        self.moved = set()
        now = {id(one): one for one in settled}
        for mine, others in ((now, self.settled), (self.settled, now)):
            for key, one in mine.items():
                if key not in others:
                    self.moved |= one.occupied.places()
        self.settled = now
        there = {one.choice.line for one in resting}
        for line in [line for line in self.rests if line not in there]:
            self.moved |= self.rests.pop(line).all

    def end(self) -> None:
        """All that rests is taken: keep what moved for the open parts."""
        self.changed |= self.moved

    def rest_of(self, one: Demand, occupied: Occupied, ways: Ways) -> list[PlanLine]:
        """What one line takes of the rest: again what it took, where nothing else moved there."""
        known = self.rests.get(one.choice.line)
        if known is None or known.of is not one or known.used != self.number - 1:
            if known is not None:
                self.moved |= known.all
            touches = [_touches(option, ways) for option in one.options]
            known = _Rest(one, touches, frozenset[Place]().union(*touches), [], occupied, 0)
            self.rests[one.choice.line] = known
            self.moved |= known.all
            known.lines = [rest_of_option(one, it, occupied, ways) for it in one.options]
            known.after = occupied.part_of(keys_of(one, ways), one.choice.share)
        elif known.all.isdisjoint(self.moved):
            occupied.join(known.after)
        else:
            self._again(known, occupied, ways)
        known.used = self.number
        lines = [made for mine in known.lines for made in mine]
        for made in lines if occupied.split else ():
            occupied.note(made)
        return lines

    def _again(self, known: _Rest, occupied: Occupied, ways: Ways) -> None:
        """Take the rest anew where something moved, directly or through another option."""
        left, found = list(range(len(known.touches))), list[int]()
        while True:
            met = [place for place in left if not known.touches[place].isdisjoint(self.moved)]
            if not met:
                break
            for place in met:
                self.moved |= known.touches[place]
            left = [place for place in left if place not in met]
            found += met
        one = known.of
        occupied.join(known.after.outside(self.moved, one.choice.share))
        for place in sorted(found):
            known.lines[place] = rest_of_option(one, one.options[place], occupied, ways)
        known.after = occupied.part_of(keys_of(one, ways), one.choice.share)

    def open_parts(
        self, shares: Sequence[Share], shop: Shop, occupied: Occupied
    ) -> tuple[OpenPart, ...]:
        """The open parts; those where nothing moved since they were reckoned again."""
        self.opened.forget(self.changed)
        self.changed = set()
        return open_parts(shares, shop.held, shop.herd, occupied, shop.ways, self.opened)


def _touches(option: Option, ways: Ways) -> frozenset[Place]:
    """The lanes and parts an option lies on."""
    if option.keys is None:
        option.keys = keys_of_options((option,), ways)
    return frozenset([*option.keys.lanes, *[cell[:3] for cell in option.keys.cells]])
