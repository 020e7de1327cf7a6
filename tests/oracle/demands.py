"""What each choice demands of the carcass, in whole lengths and exact fractions, at one level.

A demand is a list of needs; a need is so many units in all, of bundles to choose from.
"""

from dataclasses import dataclass, field
from fractions import Fraction

from tests.oracle.bundles import Bundle, lane_weight, unit_bundles
from tests.oracle.lot import Lot
from tests.oracle.species_file import Json, length_of, share_of, weight_of
from tests.oracle.whole_amounts import all_of_it, places_held


@dataclass(frozen=True)
class Need:
    """So many units in all; pinned: (carcass, side) made so many there."""

    bundles: tuple[Bundle, ...]
    total: int
    pinned: tuple[tuple[int, int, int], ...] = ()


@dataclass
class Demand:
    """A choice's needs, none for what takes only what is left. `refused` says why it can't be."""

    line: int
    share: int
    needs: list[Need] = field(default_factory=list[Need])
    refused: str = ""


def demand(lot: Lot, choice: Json, level: str) -> Demand:
    """What a choice demands at a level of lengths."""
    made = Demand(choice["line"], choice["share"], refused=refusal(lot, choice))
    amount = choice["amount"]
    pool = lot.species.cuts[choice["cut"]]["kind"] == "pool"
    if made.refused or pool or amount == "rest" or "up_to" in amount:
        return made
    if amount == "all" or ("fraction" in amount and amount.get("of", "side") == "side"):
        part = Fraction(1) if amount == "all" else share_of(amount["fraction"])
        made.needs = [Need((one,), 1) for one in all_of_it(lot, choice, level, part)]
        made.refused = "" if made.needs else "gone"
        return made
    bundles = tuple(unit_bundles(lot, choice, level))
    if "fraction" in amount:
        bundles, count = fraction_of_animal(lot, choice, level, bundles)
        made.refused = "" if count else "not_whole"
    else:
        count = units(lot, choice)
    pins = tuple((one["carcass"], one["side"], one["count"]) for one in choice.get("pinned", []))
    made.needs = [Need(bundles, count, pins)]
    return made


def units(lot: Lot, choice: Json) -> int:
    """Pieces or slices asked; pounds over the expected weight of one on the first side."""
    amount = choice["amount"]
    for kind in ("pieces", "slices", "at_least"):
        if kind in amount:
            return amount[kind]
    one = unit_weight(lot, unit_bundles(lot, choice, "expected")[0])
    if one <= 0:
        return 1
    return max(1, int(weight_of(amount["pounds"]) / one + Fraction(1, 2)))


def unit_weight(lot: Lot, bundle: Bundle) -> Fraction:
    """Expected weight of one unit: the lanes' weight by length, and the fractions of parts."""
    total = sum(
        (share * lot.part_weight((c, max(s, 1)), code) for (c, s, code), share in bundle.cells),
        Fraction(0),
    )
    for stick in bundle.sticks:
        whole = lane_weight(lot, stick.lanes, stick.lo, stick.hi)
        if stick.hi > stick.lo:
            total += whole * stick.size / (stick.hi - stick.lo)
    return total


def refusal(lot: Lot, choice: Json) -> str:
    """Why a choice can't be asked whatever else is asked, or ""."""
    if lot.shares[choice["share"]].get("leader"):
        return "led"
    cut = lot.species.cuts[choice["cut"]]
    amount = choice["amount"]
    kind = amount if isinstance(amount, str) else next(key for key in amount if key != "of")
    ways = lot.species.ways(choice)
    if kind not in lot.species.amounts(cut) or (not ways and cut["kind"] != "pool"):
        return "amount"
    if any(way.get("run", {}).get("size") == "slice" for way in ways):
        thickness = choice.get("thickness") or cut.get("thickness") or "0 in"
        if length_of(thickness) < lot.species.least_thickness(choice):
            return "thickness"
    if cut["kind"] == "pool" or unit_bundles(lot, choice, "sure"):
        return ""
    if isinstance(amount, dict) and _of_each_side_there(lot, choice):
        return ""
    sides = lot.sides_of(choice["share"])
    codes = [code for way in ways for code in lot.species.parts_of(way)]
    held = [
        (side, code)
        for side in sides
        for code in codes
        if lot.holds_part(choice["share"], side, code) > 0
    ]
    return next((lot.lost(*one) for one in held if lot.lost(*one)), "not_owned")


def _of_each_side_there(lot: Lot, choice: Json) -> bool:
    """Whether a fraction of each side may still fit where a window lost a stretch on all sides."""
    amount = choice["amount"]
    if "fraction" not in amount or amount.get("of", "side") != "side":
        return False
    return bool(all_of_it(lot, choice, "sure", share_of(amount["fraction"])))


def fraction_of_animal(
    lot: Lot, choice: Json, level: str, single: tuple[Bundle, ...]
) -> tuple[tuple[Bundle, ...], int]:
    """So much of the animal must be whole sides, else whole pieces; 0 when it is neither."""
    part = share_of(choice["amount"]["fraction"])
    total = part * len(places_held(lot, choice))
    if total.denominator == 1:
        return tuple(all_of_it(lot, choice, level, Fraction(1))), int(total)
    counts = [one.at_most() if counted_in_pieces(lot, choice, one) else 0 for one in single]
    total = part * sum(counts)
    return single, int(total) if total.denominator == 1 else 0


def counted_in_pieces(lot: Lot, choice: Json, bundle: Bundle) -> bool:
    """Whether "all" is so many pieces: what is sliced or cut to length is not."""
    way = next(one for one in lot.species.ways(choice) if one["code"] == bundle.way)
    return way.get("run", {}).get("size", "whole") == "whole"
