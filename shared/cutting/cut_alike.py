"""A side that owners share is cut one way: choices of the side that differ, asked of its owners.

Of the side: the cut, its way, its thickness, its ribs or roast weight. Of the share: how much,
packing, grind and finish; those may differ.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from shared.carcass.catalogue import Part
from shared.cutting.answer import OwnersQuestion, Where
from shared.cutting.capacity import Held
from shared.cutting.demand import Demand, Shop, opened


@dataclass(slots=True)
class _Entry:
    """One line on one side that owners share, and the shared parts it may take there."""

    demand: Demand
    parts: list[str]
    figures: tuple[object, ...]

    @property
    def share(self) -> int:
        return self.demand.choice.share


def alike_questions(demands: Sequence[Demand], shop: Shop) -> list[OwnersQuestion]:
    """What owners of one side must agree on, side by side, in the order of lines.

    Two owners of a side want its loin, one as chops of 3/4 in, one as chops of 1 in: one
    question that names both lines. Roasts and chops of both owners alike: none.
    """
    if not (shop.split and shop.settings.cut_alike):
        return []
    sides: dict[tuple[int, int], list[_Entry]] = {}
    for one in demands:
        if _of_a_side(one):
            for held in shop.held[one.choice.share]:
                parts = _shared_parts(one, held, shop)
                if parts:
                    place = (held.side.carcass, held.side.number)
                    sides.setdefault(place, []).append(_Entry(one, parts, _of_the_side(one, shop)))
    found: list[OwnersQuestion] = []
    for (carcass, side), entries in sorted(sides.items()):
        for lines, shares, part in _unlike(entries):
            found.append(
                OwnersQuestion("cut_alike", lines, shares, Where(carcass, side, part=part))
            )
    return found


def _of_a_side(one: Demand) -> bool:
    """Whether a line says how a side is cut; one pinned where it can't be still does."""
    stands = one.refusal is None or one.refusal.kind == "pinned"
    return stands and not one.pool and one.cut.kind != "to_trim"


def _shared_parts(one: Demand, held: Held, shop: Shop) -> list[str]:
    """Parts of a side the line may take of which its owner holds a fraction."""
    if not held.split:
        return []
    parts = dict[str, Part]()
    for plan in shop.ways.by_cut[one.cut.code]:
        if not one.choice.way or plan.way.code == one.choice.way:
            parts |= {part.code: part for part in plan.parts if part.per == "side"}
    return [code for code, part in parts.items() if 0 < held.fraction(part.quarter) < 1]


def _unlike(
    entries: Sequence[_Entry],
) -> Iterator[tuple[tuple[int, ...], tuple[int, ...], str]]:
    """Sets of lines that meet in parts of a side and aren't cut alike: lines, shares, a part."""
    sets: list[tuple[set[int], set[int], str]] = []
    for one in entries:
        for share in sorted({other.share for other in entries} - {one.share}):
            meet = [it for it in entries if it.share == share and set(it.parts) & set(one.parts)]
            if not meet or any(_alike(one, it) for it in meet):
                continue
            lines = {one.demand.choice.line, *(it.demand.choice.line for it in meet)}
            part = next(code for code in one.parts if any(code in it.parts for it in meet))
            sets.append((lines, {one.share, share}, part))
    for lines, shares, part in _joined(sets):
        yield tuple(sorted(lines)), tuple(sorted(shares)), part


def _joined(sets: Iterable[tuple[set[int], set[int], str]]) -> list[tuple[set[int], set[int], str]]:
    """Sets that share a line made one."""
    found: list[tuple[set[int], set[int], str]] = []
    for lines, shares, part in sets:
        apart: list[tuple[set[int], set[int], str]] = []
        for others, owners, first in found:
            if others & lines:
                lines, shares, part = lines | others, shares | owners, first
            else:
                apart.append((others, owners, first))
        found = [*apart, (lines, shares, part)]
    return sorted(found, key=lambda one: min(one[0]))


def _alike(one: _Entry, other: _Entry) -> bool:
    """Whether two lines are cut the same way; a way left open goes with any."""
    mine, theirs = one.demand.choice, other.demand.choice
    ways = not mine.way or not theirs.way or mine.way == theirs.way
    return ways and one.figures == other.figures


def _of_the_side(one: Demand, shop: Shop) -> tuple[object, ...]:
    """What of a line is the side's; slices that are opened are as thick as they are cut."""
    choice = one.choice
    weight = choice.piece_weight
    sliced = any(way.run is not None and way.run.size == "slice" for way in one.cut.ways)
    thickness = choice.thickness or one.cut.thickness or 0
    cut_at = thickness * opened(choice, shop) if sliced else None
    return choice.cut, cut_at, choice.ribs, None if weight is None else weight.exact_nanograms
