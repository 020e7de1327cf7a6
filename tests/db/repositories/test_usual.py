"""The shop's usual in the store: ways by primal, and how split sides are cut."""

from dataclasses import replace

from db.unit_of_work import Work
from shared.carcass.catalogue import UsualLine
from shared.shop.problems import StaleEdit
from shared.shop.usual import UsualRules
from shared.units import LENGTH_UNITS_PER_INCH, Weight

INCH = LENGTH_UNITS_PER_INCH
CHOP = UsualLine("loin", "centre_chop", "rest", 0, INCH, None, 2, None, ("fresh",))
ROAST = UsualLine("loin", "loin_roast", "pieces", 2, None, Weight(35, "lb", -1), 1)


def test_ways_come_back_as_they_were_written(work: Work) -> None:
    work.usual.save("pork", "loin", [[CHOP, ROAST], [], [replace(CHOP, thickness=INCH * 2)]])
    first, second = work.usual.ways("pork")
    assert (first.variant, first.lines) == (1, (CHOP, ROAST))
    assert (second.variant, second.lines) == (2, (replace(CHOP, thickness=INCH * 2),))
    assert work.usual.ways("beef") == ()
    work.usual.save("pork", "loin", [])
    assert work.usual.ways("pork") == ()


def test_split_sides_are_cut_alike_until_the_shop_says_otherwise(work: Work) -> None:
    rules = work.usual.rules()
    assert rules.cut_alike
    assert work.shop.planner_settings("pork").cut_alike
    assert isinstance(work.usual.save_rules(replace(rules, cut_alike=False)), UsualRules)
    assert not work.shop.planner_settings("pork").cut_alike
    assert isinstance(work.usual.save_rules(rules), StaleEdit)
