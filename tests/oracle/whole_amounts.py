"""All of a cut and fractions of it: blocks of whole windows, whole parts or a part of them."""

from fractions import Fraction

from tests.oracle.bundles import (
    Bundle,
    Cell,
    Lane,
    Made,
    Stick,
    charged,
    fixed,
    is_divided,
    is_split,
    of_animal,
    off_run,
    on_side,
    single_ways,
)
from tests.oracle.lot import Lot
from tests.oracle.species_file import Json

Interval = tuple[int, int]
Reach = tuple[int, int, tuple[Interval, ...]]


def all_of_it(lot: Lot, choice: Json, level: str, part: Fraction) -> list[Bundle]:
    """All there is (or a part of it), a bundle for each side, animal or pair of sides."""
    found: list[Bundle] = []
    share = choice["share"]
    single = single_ways(lot, choice)
    for side in lot.sides_of(share):
        here = [made for way in single if (made := whole(lot, choice, way, side, level, part))]
        if here:
            made = together(lot, share, here, part, level)
            found.append(charged(lot, share, (*side, ""), made, level, most=1))
    for carcass in sorted({c for c, _ in lot.sides_of(share)}):
        for way in lot.species.ways(choice):
            made = None
            if of_animal(lot, way):
                made = off_run(lot, share, (carcass, 0), way)
            elif not single:
                made = _pair(lot, choice, way, carcass, level, part)
            if made is not None:
                made = together(lot, share, [made], part, level)
                found.append(charged(lot, share, (carcass, 0, way["code"]), made, level, most=1))
    return found


def _pair(
    lot: Lot, choice: Json, way: Json, carcass: int, level: str, part: Fraction
) -> Made | None:
    if way["sides"] == "joined" and is_split(lot, carcass):
        return None
    first = whole(lot, choice, way, (carcass, 1), level, part)
    second = whole(lot, choice, way, (carcass, 2), level, part)
    if first is None or second is None:
        return None
    return Made(first.sticks + second.sticks, first.cells + second.cells)


def whole(
    lot: Lot, choice: Json, way: Json, side: tuple[int, int], level: str, part: Fraction
) -> Made | None:
    """One way on one side; None where something it needs is not there or not its owner's.

    Of a window that lost a stretch nobody can have all; a part of it may fit in what is left.
    """
    made = on_side(lot, choice, way, side, level, entire=part == 1)
    if made is None or not way.get("run"):
        return made
    window = lot.window(choice["share"], side, way["run"], level)
    if window is None or (window.lost and part == 1):
        return None
    return made


def together(lot: Lot, share: int, made: list[Made], part: Fraction, level: str) -> Made:
    """Several ways at once: windows that overlap in a lane united there, each part taken once."""
    cells: dict[Cell, Fraction] = {}
    by_lane: dict[Lane, list[Stick]] = {}
    for one in made:
        for cell, _ in one.cells:
            mine = lot.part_of_single(share, cell[0], cell[2])
            if cell[1]:
                mine = lot.holds_part(share, cell[:2], cell[2])
            cells[cell] = part * mine
        for each in one.sticks:
            for lane in each.lanes:
                by_lane.setdefault(lane, []).append(each)
    sticks: list[Stick] = []
    alike: dict[tuple[int, int, str, Reach], list[Lane]] = {}
    for lane, mine in by_lane.items():
        if part == 1 and not is_divided(lot, share, lane[:2]):
            spans = [span for one in mine for span in one.open]
            sticks += [fixed([lane], lo, hi) for lo, hi in united(spans)]
            continue
        for reach in reaches(mine):
            alike.setdefault((*lane[:3], reach), []).append(lane)
    for (carcass, side, run, (lo, hi, opened)), lanes in alike.items():
        length = (hi - lo) * part * mean_held(lot, share, (carcass, side), run, (lo, hi), level)
        sticks.append(Stick(tuple(lanes), opened, lo, hi, int(length), 0))
    return Made(tuple(sticks), tuple(cells.items()))


def mean_held(
    lot: Lot, share: int, side: Interval, run: str, reach: Interval, level: str
) -> Fraction:
    """The fraction a share holds of a reach of a run; 1 on a side that is not divided."""
    lo, hi = reach
    if not is_divided(lot, share, side) or hi <= lo:
        return Fraction(1)
    borders = lot.bounds(side, run, level)
    total = Fraction(0)
    for place, stretch in enumerate(lot.species.runs[run]):
        inside = min(hi, borders[place + 1]) - max(lo, borders[place])
        if inside > 0:
            total += inside * lot.fraction(share, side, stretch.quarter)
    return total / (hi - lo)


def united(spans: list[Interval]) -> list[Interval]:
    """Overlapping and touching intervals joined."""
    joined: list[Interval] = []
    for lo, hi in sorted(spans):
        if joined and lo <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(hi, joined[-1][1]))
        else:
            joined.append((lo, hi))
    return joined


def reaches(sticks: list[Stick]) -> list[Reach]:
    """Windows of one lane: those that overlap become one, open wherever one of them is."""
    found: list[Reach] = []
    for lo, hi, opened in sorted((one.lo, one.hi, one.open) for one in sticks):
        if found and found[-1][1] > lo:
            start, end, before = found[-1]
            found[-1] = (start, max(end, hi), tuple(united([*before, *opened])))
        else:
            found.append((lo, hi, opened))
    return found


def places_held(lot: Lot, choice: Json) -> set[tuple[int, int]]:
    """Sides of which the owner holds what a way needs, lost or not; 0: animal or both sides."""
    found: set[tuple[int, int]] = set()
    single = single_ways(lot, choice)
    for way in lot.species.ways(choice):
        if single and way not in single and not of_animal(lot, way):
            continue
        codes = set(lot.species.parts_of(way))
        mine = lot.sides_of(choice["share"])
        if way not in single and not of_animal(lot, way):
            mine = [(c, s) for c, s in mine if (c, 3 - s) in mine]
        for side in mine:
            held = [lot.holds_part(choice["share"], side, code) > 0 for code in codes]
            if (all if way.get("run", {}).get("size", "whole") == "whole" else any)(held):
                found.add(side if way in single else (side[0], 0))
    return found
