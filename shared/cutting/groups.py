"""Which lines can fight over anything at all: lines that share no lane and no part stay apart."""

from collections.abc import Iterable, Sequence

from shared.cutting.capacity import SURE
from shared.cutting.demand import Demand, Row
from shared.cutting.lanes import bits_of
from shared.cutting.take import Cell, Keys, Lane, Missing, Option
from shared.cutting.ways import Ways


def keys_of(one: Demand, ways: Ways) -> Keys:
    """The lanes and cells the options of a demand touch, whatever the lengths."""
    if one.keys is None:
        one.keys = keys_of_options(one.options, ways)
    return one.keys


def keys_of_options(options: Iterable[Option], ways: Ways) -> Keys:
    """The lanes and cells some options touch, whatever the lengths."""
    lanes: dict[Lane, None] = {}
    cells: dict[Cell, None] = {}
    for option in options:
        take = option.take(SURE, ways)
        if isinstance(take, Missing):
            continue
        for strip, piece in take.pieces:
            for bit in bits_of(piece.lanes):
                lanes[strip, bit] = None
        for cell, _, _ in take.cells:
            cells[cell] = None
    return Keys(tuple(lanes), tuple(cells))


def groups(demands: Sequence[Demand], ways: Ways) -> list[list[Demand]]:
    """Connected sets of the demands that must be met, each in the order given.

    Worked number: chops and back ribs of one side share no lane and are two groups; bone-in
    chops take both lanes and join them into one.
    """
    parent = list(range(len(demands)))
    seen: dict[Lane | Cell, int] = {}
    for place, one in enumerate(demands):
        lanes, cells = keys_of(one, ways)
        for key in (*lanes, *cells):
            other = seen.setdefault(key, place)
            if other != place:
                _join(parent, other, place)
    found: dict[int, list[Demand]] = {}
    for place, one in enumerate(demands):
        found.setdefault(_root(parent, place), []).append(one)
    return list(found.values())


def rows_of(demands: Iterable[Demand]) -> list[Row]:
    """All rows of the demands, by line."""
    return [row for one in demands for row in one.rows]


def _root(parent: list[int], place: int) -> int:
    while parent[place] != place:
        parent[place] = parent[parent[place]]
        place = parent[place]
    return place


def _join(parent: list[int], one: int, other: int) -> None:
    first, second = _root(parent, one), _root(parent, other)
    parent[max(first, second)] = min(first, second)
