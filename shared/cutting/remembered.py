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
from shared.cutting.take import Keys, Option
from shared.cutting.ways import Ways


@dataclass(slots=True)
class _Rest:
    """What a line, or one option of it, took, and what was taken before and after where it lies.

    `touches` are the runs and parts it lies on; it was used last in answer number `used`.
    """

    of: Demand | Option
    before: tuple[object, ...]
    lines: list[PlanLine]
    after: Occupied
    touches: frozenset[Place]
    used: int


@dataclass(slots=True)
class Remembered:
    """The rests of the last answers by line and option, its groups, and the open parts.

    `moved` are the runs and parts on which something else is taken than in the answer before
    this one, `changed` those since the open parts were reckoned.
    """

    rests: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
    options: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
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
        there = {one.choice.line: one for one in resting}
        for line in [line for line in self.rests if line not in there]:
            self.moved |= self.rests.pop(line).touches
        if len(self.options) > 4 * sum([len(one.options) for one in there.values()]) + 64:
            alive = {id(it) for one in there.values() for it in one.options}
            self.options = {key: it for key, it in self.options.items() if key in alive}

    def rest_of(self, one: Demand, occupied: Occupied, ways: Ways) -> list[PlanLine]:
        """What one line takes of the rest: again what it took, where nothing else moved there."""
        keys, share = keys_of(one, ways), one.choice.share
        known = self.rests.get(one.choice.line)
        if known is not None and known.of is not one:
            self.moved |= known.touches
        if known is None or not self._holds(known, one, keys, share, occupied):
            before = occupied.of(keys, share)
            lines = [made for it in one.options for made in self._option(one, it, occupied, ways)]
            after = occupied.part_of(keys, share)
            known = _Rest(one, before, lines, after, places_of(keys), self.number)
            self.rests[one.choice.line] = known
        else:
            occupied.join(known.after)
        for made in known.lines if occupied.split else ():
            occupied.note(made)
        return known.lines

    def _holds(
        self, known: _Rest, of: Demand | Option, keys: Keys, share: int, occupied: Occupied
    ) -> bool:
        """Whether what was taken then is what is to be taken now."""
        if known.of is not of:
            return False
        last = known.used == self.number - 1 and known.touches.isdisjoint(self.moved)
        if last or known.before == occupied.of(keys, share):
            known.used = self.number
            return True
        return False

    def _option(
        self, one: Demand, option: Option, occupied: Occupied, ways: Ways
    ) -> list[PlanLine]:
        if option.keys is None:
            option.keys = keys_of_options((option,), ways)
        keys, share = option.keys, one.choice.share
        known = self.options.get(id(option))
        if known is not None and self._holds(known, option, keys, share, occupied):
            occupied.join(known.after)
            return known.lines
        before = occupied.of(keys, share)
        lines = rest_of_option(one, option, occupied, ways)
        after, touches = occupied.part_of(keys, share), places_of(keys)
        self.options[id(option)] = _Rest(option, before, lines, after, touches, self.number)
        self.moved |= touches
        return lines

    def open_parts(
        self, shares: Sequence[Share], shop: Shop, occupied: Occupied
    ) -> tuple[OpenPart, ...]:
        """The open parts; those where nothing moved since they were reckoned again."""
        self.opened.forget(self.changed, shop.ways)
        self.changed = set()
        return open_parts(shares, shop.held, shop.herd, occupied, shop.ways, self.opened)

    def end(self) -> None:
        """All that rests is taken: keep what moved for the open parts."""
        self.changed |= self.moved


def places_of(keys: Keys) -> frozenset[Place]:
    """The runs and parts some keys lie on."""
    found: set[Place] = {strip for strip, _ in keys.lanes}
    found.update([cell[:3] for cell in keys.cells])
    return frozenset(found)
