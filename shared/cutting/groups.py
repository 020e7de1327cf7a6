"""Which lines can fight over anything at all: lines that share no lane and no part stay apart."""

from collections.abc import Iterable, Sequence

from shared.cutting.capacity import SURE
from shared.cutting.connected import connected
from shared.cutting.demand import Demand, Row
from shared.cutting.lanes import bits_of
from shared.cutting.take import Cell, Keys, Lane, Missing, Option
from shared.cutting.ways import Ways


def keys_of(one: Demand, ways: Ways) -> Keys:
    """The lanes and cells the options of a demand touch, whatever the lengths."""
    if one.keys is None:
        one.keys = _keys_of_options(one.options, ways)
    return one.keys


def _keys_of_options(options: Iterable[Option], ways: Ways) -> Keys:
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
    return [[demands[number] for number in numbers] for numbers in parted(demands, ways)]


def parted(demands: Sequence[Demand], ways: Ways) -> list[list[int]]:
    """The same by the demands' places."""
    keys = [keys_of(one, ways) for one in demands]
    return connected([(*one.lanes, *one.cells) for one in keys])


def rows_of(demands: Iterable[Demand]) -> list[Row]:
    """All rows of the demands, by line."""
    return [row for one in demands for row in one.rows]
