"""What a planner remembers between questions of what is left over: rests, and open parts.

Every answer is as from scratch: what is used again was reckoned from the same values.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from shared.carcass.carcass import Share
from shared.cutting.answer import OpenPart, PlanLine
from shared.cutting.demand import Demand, Shop
from shared.cutting.groups import keys_of, keys_of_options
from shared.cutting.leftovers import open_parts, rest_of_option
from shared.cutting.occupied import Occupied, places_of
from shared.cutting.settled import Settled
from shared.cutting.take import Keys, Option
from shared.cutting.ways import Ways

Sides = set[tuple[int, int]]


class _Rest(NamedTuple):
    """What a line, or one option of it, took, and what was taken before and after where it lies."""

    of: Demand | Option
    before: tuple[object, ...]
    lines: list[PlanLine]
    after: Occupied


@dataclass(slots=True)
class Remembered:
    """The rests of the last answer by line and option, its groups, and its open parts by side."""

    rests: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
    options: dict[int, _Rest] = field(default_factory=dict[int, _Rest])
    settled: dict[int, Settled] = field(default_factory=dict[int, Settled])
    opened: dict[tuple[int, int, int], tuple[OpenPart, ...]] = field(
        default_factory=dict[tuple[int, int, int], tuple[OpenPart, ...]]
    )
    changed: Sides = field(default_factory=set[tuple[int, int]])

    def rest_of(self, one: Demand, occupied: Occupied, ways: Ways) -> list[PlanLine]:
        """What one line takes of the rest: again what it took, where nothing else moved there."""
        keys, share = keys_of(one, ways), one.choice.share
        before = occupied.of(keys, share)
        known = self.rests.get(one.choice.line)
        if known is None or known.of is not one or known.before != before:
            if known is not None and known.of is not one and isinstance(known.of, Demand):
                self.changed |= _sides(keys_of(known.of, ways))
            lines = [made for it in one.options for made in self._option(one, it, occupied, ways)]
            known = _Rest(one, before, lines, occupied.part_of(keys, share))
            self.rests[one.choice.line] = known
        else:
            occupied.join(known.after)
        for made in known.lines:
            occupied.note(made)
        return known.lines

    def _option(
        self, one: Demand, option: Option, occupied: Occupied, ways: Ways
    ) -> list[PlanLine]:
        if option.keys is None:
            option.keys = keys_of_options((option,), ways)
        keys, share = option.keys, one.choice.share
        before = occupied.of(keys, share)
        known = self.options.get(id(option))
        if known is not None and known.of is option and known.before == before:
            occupied.join(known.after)
            return known.lines
        lines = rest_of_option(one, option, occupied, ways)
        self.options[id(option)] = _Rest(option, before, lines, occupied.part_of(keys, share))
        self.changed |= _sides(keys)
        return lines

    def open_parts(
        self,
        shares: Sequence[Share],
        shop: Shop,
        demands: Iterable[Demand],
        settled: Iterable[Settled],
        occupied: Occupied,
    ) -> tuple[OpenPart, ...]:
        """The open parts; those of sides where nothing changed since the last answer again."""
        now = {id(one): one for one in settled}
        for mine, others in ((now, self.settled), (self.settled, now)):
            for key, one in mine.items():
                if key not in others:
                    self.changed |= one.occupied.sides()
        self.settled = now
        self._forget(demands, shop.ways)
        if self.changed:
            kept = {at: it for at, it in self.opened.items() if at[1:] not in self.changed}
            self.opened, self.changed = kept, set()
        return open_parts(shares, shop.held, shop.herd, occupied, shop.ways, self.opened)

    def _forget(self, demands: Iterable[Demand], ways: Ways) -> None:
        """Lines that take the rest no more, and options of lines that are gone."""
        there = {one.choice.line: one for one in demands if one.rest and one.refusal is None}
        for line in [line for line in self.rests if line not in there]:
            gone = self.rests.pop(line).of
            if isinstance(gone, Demand):
                self.changed |= _sides(keys_of(gone, ways))
        if len(self.options) > 4 * sum([len(one.options) for one in there.values()]) + 64:
            alive = {id(it) for one in there.values() for it in one.options}
            self.options = {key: it for key, it in self.options.items() if key in alive}


def _sides(keys: Keys) -> Sides:
    """The sides some keys lie on; below nothing both, where something is of the animal."""
    found: Sides = {(strip[0], strip[1]) for strip, _ in keys.lanes}
    for cell in keys.cells:
        found |= places_of(cell[0], cell[1])
    return found
