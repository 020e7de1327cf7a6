"""What stands in the way of a line: as letting go of one after the other finds it."""

import random
from collections.abc import Sequence

from shared.cutting.demand import Demand, demand
from shared.cutting.groups import groups
from shared.cutting.growing import Growing
from shared.cutting.order import Choice
from shared.cutting.plan import compiled, shop_of
from shared.cutting.standing import stands
from tests.shared.cutting.tiny_lot import catalogue, choice, lot

WAYS = compiled(catalogue())
CUTS = (
    *("whole_ham", "ham_steaks", "half_ham", "ham_ends", "grind_ham", "chops", "t_bones"),
    *("boneless_chops", "rib_roast", "loin_roast", "saddle", "tenderloin", "brisket"),
)


def demands(choices: Sequence[Choice], sides: int) -> list[Demand]:
    shop = shop_of(lot(*choices, sides=sides), WAYS)
    found = [demand(one, shop) for one in choices]
    return [one for one in found if one.refusal is None and one.rows]


def let_go(standing: list[Demand], newest: Demand) -> list[Demand] | None:
    """The same by trying: None where all stand, else the others without each that can go."""
    if stands([*standing, newest], WAYS):
        return None
    connected = next(it for it in groups([*standing, newest], WAYS) if it[-1] is newest)
    kept = connected[:-1]
    for one in reversed(connected[:-1]):
        without = [other for other in kept if other is not one]
        if not stands([*without, newest], WAYS):
            kept = without
    return kept


def test_of_eight_lines_the_one_in_the_way_is_found() -> None:
    # One whole ham and chops beside it stand; steaks of the same leg only miss the ham.
    choices = [choice(n, "chops", "slices", 1) for n in range(1, 8)]
    choices.insert(2, choice(9, "whole_ham", "pieces", 1))
    lines = demands([*choices, choice(10, "ham_steaks", "slices", 6)], 1)
    growing = Growing(lines, WAYS)
    assert [growing.add(one) for one in lines[:-1]] == [None] * 8
    assert growing.add(lines[-1]) == [lines[2]]
    assert growing.standing == lines[:-1]


def test_it_finds_what_letting_go_of_one_after_the_other_finds() -> None:
    draw, sizes = random.Random(21), dict[int, int]()
    for _ in range(150):
        sides = draw.randint(1, 2)
        choices = [
            choice(n, draw.choice(CUTS), *draw.choice(
                [("pieces", draw.choice([1, 2, 5, 14])), ("pieces", 1), ("all", 0)])
            ) for n in range(1, draw.randint(5, 12))
        ]  # fmt: skip
        lines = demands(choices, sides)
        growing, standing = Growing(lines, WAYS), list[Demand]()
        for one in lines:
            others, expected = growing.add(one), let_go(standing, one)
            assert others == expected
            if expected is None:
                standing.append(one)
            else:
                sizes[len(expected)] = sizes.get(len(expected), 0) + 1
        assert growing.standing == standing
    assert sizes[0] > 20
    assert sizes[1] > 60
    assert sizes.get(2, 0) + sizes.get(3, 0) > 10


def test_lines_known_to_stand_say_the_same_of_one_more() -> None:
    draw, told = random.Random(33), 0
    for _ in range(60):
        choices = [
            choice(n, draw.choice(CUTS), "pieces", draw.choice([1, 2, 5, 14]))
            for n in range(1, draw.randint(4, 9))
        ]
        lines = demands(choices, 1)
        standing = [one for number, one in enumerate(lines) if stands(lines[: number + 1], WAYS)]
        if not stands(standing, WAYS) or not lines or lines[-1] in standing:
            continue
        known = Growing([*standing, lines[-1]], WAYS)
        found = known.beside(standing, lines[-1])
        assert found == let_go(standing, lines[-1])
        told += found is not None
    assert told > 10


def test_what_stands_beside_them_is_not_told() -> None:
    lines = demands([choice(1, "whole_ham"), choice(2, "chops", "slices", 4)], 1)
    growing = Growing(lines, WAYS)
    assert growing.beside(lines[:1], lines[1]) is None
    assert growing.standing == []
    assert [growing.add(one) for one in lines] == [None, None]


def test_a_line_is_asked_beside_those_that_it_meets_through_others_and_no_more() -> None:
    # Chops and back ribs share no lane of a side; bone-in chops, of both lanes, join them.
    choices = [
        choice(1, "boneless_chops", "slices", 1),
        choice(2, "whole_ham", "pieces", 1),
        choice(3, "chops", "slices", 1),
        choice(4, "back_ribs", "pieces", 1),
    ]
    lines = demands(choices, 1)
    growing = Growing(lines, WAYS)
    for others, meet in (([0, 1], []), ([0, 1, 2], [0, 2]), ([1, 2], [2]), ([2], [2]), ([], [])):
        mine = [lines[other] for other in others]
        expected = next(it for it in groups([*mine, lines[3]], WAYS) if it[-1] is lines[3])
        assert growing.connected(mine, lines[3]) == expected[:-1] == [lines[it] for it in meet]
