"""Liver and tail are shared by the package; tongue and hanger are the owners' to settle.

The rule is common practice (no source); the fractions are worked by hand.
"""

from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share
from shared.cutting.answer import Answer
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import Planner, plan
from shared.cutting.singles import rooms_of
from shared.units import Weight

BEEF = catalogue("beef")
ALL = Amount("all")
HALF, FORE, HIND = Holding(0, 1), Holding(0, 2, "fore"), Holding(0, 2, "hind")


def question(*choices: Choice) -> Question:
    """A half and two quarters of one beef, owned by shares 1, 2 and 3."""
    held = (HALF, FORE, HIND)
    shares = tuple(Share(n, f"Owner {n}", (one,)) for n, one in enumerate(held, start=1))
    return Question((Carcass("beef", age="under_30"),), shares, choices)


def liver(line: int, share: int, amount: Amount = ALL, cut: str = "liver") -> Choice:
    return Choice(line, share, cut, amount)


def pounds(count: int) -> Amount:
    return Amount("pounds", weight=Weight(count, "lb"))


def taken(found: Answer) -> dict[int, Fraction]:
    return {one.line: one.taken[0].fraction for one in found.lines}


def test_a_liver_is_shared_by_what_each_owner_has_of_the_animal() -> None:
    found = plan(question(liver(1, 1), liver(2, 2), liver(3, 3)), BEEF)
    assert found.verdict == "sure"
    assert taken(found) == {1: Fraction(1, 2), 2: Fraction(1, 4), 3: Fraction(1, 4)}
    assert [one.count for one in found.lines] == [6, 3, 3]
    assert not any(one.part == "liver" for one in found.open_parts)


def test_who_alone_wants_it_has_all_of_it() -> None:
    assert taken(plan(question(liver(1, 2)), BEEF)) == {1: Fraction(1)}
    pair = plan(question(liver(1, 1), liver(2, 3)), BEEF)
    assert taken(pair) == {1: Fraction(2, 3), 2: Fraction(1, 3)}


def test_one_tail_each_is_a_part_of_the_tail_and_two_are_refused() -> None:
    one = Amount("pieces", count=1)
    found = plan(question(liver(1, 1, one, "oxtail"), liver(2, 2, one, "oxtail")), BEEF)
    assert taken(found) == {1: Fraction(2, 3), 2: Fraction(1, 3)}
    greedy = liver(1, 1, Amount("pieces", count=2), "oxtail")
    told = plan(question(greedy, liver(2, 2, one, "oxtail")), BEEF)
    assert [(each.kind, each.lines) for each in told.conflicts] == [("single", (1,))]


def test_packages_of_a_liver_are_counted_off_ones_own_part() -> None:
    """A liver of 12 packages weighs 13 lb or so on this beef: a half of it is 6 packages."""
    others = (liver(2, 2), liver(3, 3))
    found = plan(question(liver(1, 1, pounds(6)), *others), BEEF)
    assert (found.verdict, found.lines[0].count, taken(found)[1]) == ("sure", 6, Fraction(1, 2))
    told = plan(question(liver(1, 1, pounds(8)), *others), BEEF)
    assert [(each.kind, each.lines) for each in told.conflicts] == [("single", (1,))]
    rest = plan(question(liver(1, 1, pounds(6)), liver(2, 2, Amount("rest"))), BEEF)
    assert taken(rest)[2] == Fraction(1, 3)


def test_a_hanger_wanted_twice_is_still_asked_about() -> None:
    one = Amount("pieces", count=1)
    both = [liver(n, n, one, "hanging_tender") for n in (1, 2)]
    found = plan(question(*both), BEEF)
    assert (found.verdict, [it.kind for it in found.questions]) == ("asks", ["single_wanted_twice"])


def test_a_planner_that_remembers_shares_anew_when_another_owner_asks() -> None:
    planner = Planner(BEEF)
    assert taken(planner.answer(question(liver(1, 1)))) == {1: Fraction(1)}
    both = question(liver(1, 1), liver(2, 2))
    assert planner.answer(both) == plan(both, BEEF)
    assert planner.verdict(both) == "sure"
    assert planner.answer(question(liver(1, 1))) == plan(question(liver(1, 1)), BEEF)


def test_rooms_are_told_only_where_several_want_it() -> None:
    planner = Planner(BEEF)
    shop = planner.shop_of(question())
    choices = [liver(1, 1), liver(2, 3), liver(3, 2, cut="hanging_tender")]
    assert rooms_of(choices, shop.by_carcass, planner.ways) == {
        (1, 0, "liver"): Fraction(2, 3),
        (3, 0, "liver"): Fraction(1, 3),
    }
