"""Ground at each of the usual lean percentages: leaner is fewer pounds (K-State MF3395)."""

from fractions import Fraction

from shared.cutting.grinds import USUAL_LEANS, grind_at, grinds_for
from shared.cutting.order import Amount
from shared.cutting.plan import plan
from shared.units import NG_PER_LB
from tests.shared.cutting.tiny_lot import catalogue, choice, lot, pounds

LEANEST = Fraction(95, 100)


def test_the_scarcer_of_lean_and_fat_sets_the_pounds() -> None:
    """80 lb of lean and 20 of fat, by hand: 20/0.3, 20/0.2, 80/0.85, 80/0.9 lb."""
    leans = [Fraction(part, 100) for part in (70, 80, 85, 90)]
    found = grind_at(80 * NG_PER_LB, 20 * NG_PER_LB, LEANEST, leans)
    assert [one.most_ng for one in found] == [
        200 * NG_PER_LB // 3,
        100 * NG_PER_LB,
        8000 * NG_PER_LB // 85,
        800 * NG_PER_LB // 9,
    ]


def test_leaner_than_the_trim_separates_is_not_offered() -> None:
    found = grind_at(NG_PER_LB, NG_PER_LB, LEANEST)
    assert [one.lean for one in found if one.most_ng is None] == [Fraction(96, 100)]
    assert len(found) == len(USUAL_LEANS)


def test_what_other_lines_draw_is_not_there() -> None:
    """8 lb of lean and 2 lb of fat; 3 lb of stew are lean: 5 lb of lean are 5.56 lb at 90 %."""
    ground = choice(1, "ground", "rest")
    stew = choice(2, "stew", amount=Amount("pounds", weight=pounds(3)))
    found = plan(lot(ground, stew), catalogue())
    (ninety,) = grinds_for(found, 1, 1, LEANEST, [Fraction(9, 10)])
    assert ninety.most_ng == 50 * NG_PER_LB // 9
    # what it says is what the planner draws
    (again,) = plan(
        lot(choice(1, "ground", "rest", lean=Fraction(9, 10)), stew), catalogue()
    ).draws[:1]
    assert again.weight_ng == ninety.most_ng
