"""Lines in their groups, and the same groups with some lines left out."""

from collections.abc import Sequence

from shared.cutting.demand import Demand, demand
from shared.cutting.grouped import Grouped, grouped
from shared.cutting.groups import groups
from shared.cutting.order import Choice
from shared.cutting.plan import compiled, shop_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot

WAYS = compiled(catalogue())


def _grouped(*choices: Choice) -> tuple[Grouped, list[Demand]]:
    shop = shop_of(lot(*choices), WAYS)
    lines = [demand(one, shop) for one in choices]
    return grouped(
        lines, groups([one for one in lines if one.rows or one.up_to], WAYS), WAYS
    ), lines


def _numbers(sets: Sequence[Sequence[Demand]]) -> list[list[int]]:
    return sorted([one.choice.line for one in group] for group in sets if group)


def test_chops_hold_the_lanes_of_ribs_and_roast_together() -> None:
    ribs, roast = choice(1, "back_ribs"), choice(2, "boneless_chops", "slices", 4)
    found, lines = _grouped(ribs, roast, choice(3, "chops", "slices", 4), choice(4, "whole_ham"))
    assert _numbers(found.sets) == [[1, 2, 3], [4]]
    without = found.without([3])
    assert _numbers(without.sets) == [[1], [2], [4]]
    assert [*without.lines] == [1, 2, 4]
    assert {line for at in without.touched(lines[2]) for line in _lines(without, at)} == {1, 2}
    assert _numbers(found.sets) == [[1, 2, 3], [4]]  # as it was


def test_what_is_left_out_is_touched_by_nothing() -> None:
    found, lines = _grouped(choice(1, "whole_ham"), choice(2, "ham_steaks", "slices", 4))
    assert found.without([1]).touched(lines[0]) == found.without([1]).places([2])
    assert found.without([1, 2]).touched(lines[0]) == set()


def test_up_to_so_many_need_not_be_met() -> None:
    found, _ = _grouped(choice(1, "whole_ham"), choice(2, "ham_steaks", "up_to", 4))
    assert _numbers(found.sets) == [[1]]
    assert [*found.lines] == [1, 2]


def _lines(found: Grouped, place: int) -> list[int]:
    return [one.choice.line for one in found.sets[place]]
