"""What owners of one divided side must agree on, worked out from the order file alone.

Two lines of two owners meet where they may take the same part of the side; a line that meets
lines of another owner, none of which is cut as it is, goes with them into one question.
"""

from collections.abc import Iterator

from tests.oracle.demands import demand
from tests.oracle.lot import Lot
from tests.oracle.species_file import Json, weight_of


def unlike(lot: Lot) -> set[frozenset[int]]:
    """The sets of lines to be asked about."""
    if lot.settings.get("cut_alike", True) is not True:
        return set()
    mine = [one for one in lot.choices if _of_the_side(lot, one)]
    found: set[frozenset[int]] = set()
    for side in lot.sides:
        found |= _components(_edges(lot, side, mine))
    return found


def _of_the_side(lot: Lot, choice: Json) -> bool:
    kind = lot.species.cuts[choice["cut"]]["kind"]
    return kind not in ("pool", "to_trim") and not demand(lot, choice, "expected").refused


def _edges(lot: Lot, side: tuple[int, int], choices: list[Json]) -> Iterator[tuple[int, int]]:
    parts = {one["line"]: _parts(lot, side, one) for one in choices}
    for one in choices:
        for share in lot.shares:
            if share == one["share"]:
                continue
            theirs = [it for it in choices if it["share"] == share]
            meet = [it for it in theirs if parts[it["line"]] & parts[one["line"]]]
            if not any(alike(lot, one, it) for it in meet):
                for it in meet:
                    yield one["line"], it["line"]


def _parts(lot: Lot, side: tuple[int, int], choice: Json) -> set[str]:
    """Parts of the side the line's ways name, of which the owner holds a fraction."""
    codes = {code for way in lot.species.ways(choice) for code in lot.species.parts_of(way)}
    codes = {code for code in codes if lot.species.parts[code].get("per", "side") == "side"}
    return {code for code in codes if 0 < lot.holds_part(choice["share"], side, code) < 1}


def alike(lot: Lot, one: Json, other: Json) -> bool:
    """Same cut, way, thickness, ribs and roast weight; a way left open goes with any."""
    if one.get("way") and other.get("way") and one["way"] != other["way"]:
        return False
    return figures(lot, one) == figures(lot, other)


def figures(lot: Lot, choice: Json) -> tuple[object, ...]:
    cut = lot.species.cuts[choice["cut"]]
    sizes = {way.get("run", {}).get("size") for way in cut.get("way", [])}
    weight = choice.get("piece_weight")
    return (
        choice["cut"],
        lot.species.thickness(choice) if "slice" in sizes else None,
        choice.get("ribs"),
        weight_of(weight) if weight else None,
    )


def _components(edges: Iterator[tuple[int, int]]) -> set[frozenset[int]]:
    found: list[set[int]] = []
    for edge in edges:
        mine = set(edge)
        for other in [one for one in found if one & mine]:
            mine |= other
            found.remove(other)
        found.append(mine)
    return {frozenset(one) for one in found}
