"""The house's usual of every species can be cut, of a whole animal and of a half, nothing open."""

from dataclasses import replace

import pytest

from shared.carcass.anatomy import catalogue, species
from shared.carcass.carcass import Carcass, Holding, Share
from shared.carcass.usual_check import usual_faults
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import plan
from shared.units import NG_PER_LB


@pytest.mark.parametrize("sides", [(1,), (1, 2)], ids=["half", "whole"])
@pytest.mark.parametrize("name", species())
def test_the_usual_way_of_cutting_stands(name: str, sides: tuple[int, ...]) -> None:
    file = catalogue(name)
    lines = tuple(
        Choice(
            number,
            1,
            one.cut,
            Amount(one.amount, one.count),  # type: ignore[arg-type]
            thickness=one.thickness,
            piece_weight=one.piece_weight,
            package=Package(one.package_pieces, one.package_weight),
            finishes=one.finishes,
        )
        for number, one in enumerate(file.usual, start=1)
    )
    animal = Carcass(name, age="under_30", skin="scalded")
    share = Share(1, "Ada Brandt", tuple(Holding(0, side) for side in sides))
    answer = plan(Question((animal,), (share,), lines), file)
    assert answer.verdict == "sure", answer.conflicts
    assert answer.open_parts == ()


def test_a_usual_that_leaves_a_part_open_is_found() -> None:
    deer = catalogue("deer")
    short = replace(deer, usual=tuple(one for one in deer.usual if one.cut != "tenderloin"))
    short = replace(short, usual=tuple(one for one in short.usual if one.cut != "grind_back"))
    found = {(one.code, one.place) for one in usual_faults(short)}
    assert ("usual_leaves_open", "part tenderloin") in found


def test_what_a_usual_deer_gives_of_ground() -> None:
    """A deer of 83 lb: about 30 lb ground when backstraps, tenderloins, round are kept.

    From memory; the whole of it boneless is 48 of 100 lb field-dressed (Michigan State).
    """
    deer = catalogue("deer")
    lines = tuple(
        Choice(number, 1, one.cut, Amount(one.amount), thickness=one.thickness)  # type: ignore[arg-type]
        for number, one in enumerate(deer.usual, start=1)
    )
    share = Share(1, "Ada Brandt", (Holding(0, 1), Holding(0, 2)))
    answer = plan(Question((Carcass("deer"),), (share,), lines), deer)
    ground = sum(one.weight_ng for one in answer.draws)
    assert 20 <= ground / NG_PER_LB <= 40
