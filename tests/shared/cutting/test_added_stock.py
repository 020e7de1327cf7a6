"""Fat and pork added to lean meat, by Pearson's square.

The square is the mixing rule of extension sausage sheets and feed tables; every mix here is
worked by hand and checked by adding its lean up again.
"""

from fractions import Fraction

import pytest

from shared.cutting.added_stock import LEAN, pearson
from shared.cutting.answer import Answer
from shared.cutting.order import Added, Amount, Choice
from shared.cutting.plan import plan
from shared.units import NG_PER_LB
from tests.shared.cutting.tiny_lot import catalogue, choice, lot, pounds


def per_cent(count: int) -> Fraction:
    return Fraction(count, 100)


@pytest.mark.parametrize(
    ("own", "stock", "target", "added"),
    [
        # 90 and 10 to 80: 70 parts of own, 10 of fat
        (90, 10, 80, Fraction(1, 8)),
        # 95 and 50 to 80: 30 parts of own, 15 of pork trim
        (95, 50, 80, Fraction(1, 3)),
        # pure lean and fat of 10 to 75: 65 parts of own, 25 of fat
        (100, 10, 75, Fraction(25, 90)),
        (80, 10, 80, Fraction(0)),
        (70, 10, 80, Fraction(0)),
        (90, 50, 40, Fraction(0)),
    ],
)
def test_pearsons_square(own: int, stock: int, target: int, added: Fraction) -> None:
    part = pearson(per_cent(own), per_cent(stock), per_cent(target))
    assert part == added
    if part:
        assert (1 - part) * per_cent(own) + part * per_cent(stock) == per_cent(target)


def ground(lean: int | None, added: Added, count: int | None = None) -> Choice:
    amount = Amount("rest") if count is None else Amount("pounds", weight=pounds(count))
    return choice(
        1, "ground", amount=amount, lean=None if lean is None else per_cent(lean), added=added
    )


def answer(*choices: Choice) -> Answer:
    """The half's loose trim: 8 lb of lean and 2 lb of fat, 80 % lean."""
    return plan(lot(*choices), catalogue())


def test_fat_is_added_until_the_grind_has_the_lean_asked() -> None:
    """80 % and fat of 10 % to 70 %: 60 parts to 10; 10 lb of trim make 11.67 lb, 1.67 added."""
    found = answer(ground(70, Added("pork_fat")))
    (draw,) = found.draws
    assert draw.weight_ng == 70 * NG_PER_LB // 6
    assert 8 * NG_PER_LB - 2 < draw.lean_ng <= 8 * NG_PER_LB
    assert 2 * NG_PER_LB - 2 < draw.fat_ng <= 2 * NG_PER_LB
    assert draw.added_ng == draw.weight_ng - draw.lean_ng - draw.fat_ng
    lean = draw.lean_ng + draw.added_ng * LEAN["pork_fat"]
    assert abs(lean - per_cent(70) * draw.weight_ng) < 2


def test_it_is_told_with_its_pounds_and_that_it_is_inspected() -> None:
    found = answer(ground(70, Added("pork_fat"), 7))
    assert found.verdict == "sure"
    (told,) = found.cautions
    assert (told.code, told.line, told.asked) == ("added_from_inspected_stock", 1, NG_PER_LB)


def test_nothing_is_added_where_the_meat_is_fat_enough() -> None:
    found = answer(ground(90, Added("pork_fat")))
    assert [one.added_ng for one in found.draws] == [0]
    assert found.cautions == ()
    assert found.draws[0].weight_ng == 80 * NG_PER_LB // 9


def test_a_stated_part_is_added_to_the_trim_as_it_comes() -> None:
    """A fifth of 10 lb is 2 lb of pork; the 8 lb beside it are 6.4 lean and 1.6 fat."""
    (draw,) = answer(ground(None, Added("pork_trim", Fraction(1, 5)), 10)).draws
    assert (draw.added_ng, draw.weight_ng) == (2 * NG_PER_LB, 10 * NG_PER_LB)
    assert (draw.lean_ng, draw.fat_ng) == (64 * NG_PER_LB // 10, 16 * NG_PER_LB // 10)


def test_a_stated_part_and_a_stated_lean_both_hold() -> None:
    """5 lb at 75 % with a fifth of fat of 10 %: 1 lb added, 3.65 lb of lean, 0.35 lb of fat."""
    (draw,) = answer(ground(75, Added("pork_fat", Fraction(1, 5)), 5)).draws
    assert draw.added_ng == NG_PER_LB
    assert (draw.lean_ng, draw.fat_ng) == (365 * NG_PER_LB // 100, 35 * NG_PER_LB // 100)
    # the trim separates to 95 %: a fifth of fat in it is 78 % at the leanest
    (told,) = answer(ground(85, Added("pork_fat", Fraction(1, 5)), 5)).conflicts
    assert (told.kind, told.asked, told.most) == ("leaner", per_cent(85), per_cent(78))


def test_added_fat_makes_the_trim_go_further() -> None:
    assert answer(ground(None, Added("pork_fat", Fraction(1, 10)), 11)).conflicts == ()
    plain = choice(1, "ground", amount=Amount("pounds", weight=pounds(11)), lean=per_cent(80))
    assert [one.kind for one in answer(plain).conflicts] == ["trim"]
