"""Owners of one side: what must be cut alike, what may differ, and whose the odd slice is.

"A half cut by one order, packages divided evenly, both quarter buyers must agree": Purdue
Extension's and farms' pages on quarters. The figures are worked by hand.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.carcass.carcass import Holding
from shared.cutting.answer import Answer
from shared.cutting.capacity import in_turn
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import Planner, plan
from tests.shared.cutting.tiny_lot import catalogue, choice, inches, pounds, shared

HALF = (Holding(0, 1, "", Fraction(1, 2)),)


def split(*choices: Choice, owners: int = 2) -> Question:
    held = (Holding(0, 1, "", Fraction(1, owners)),)
    return shared(*choices, holdings=(held,) * owners)


def asked(found: Answer) -> list[tuple[tuple[int, ...], tuple[int, ...], str]]:
    return [
        (one.lines, one.shares, one.where.part)
        for one in found.questions
        if one.kind == "cut_alike"
    ]


def answer(question: Question) -> Answer:
    found = plan(question, catalogue())
    assert Planner(catalogue()).verdict(question) == found.verdict
    return found


def test_chops_of_two_thicknesses_on_one_side_are_asked_about() -> None:
    mine = choice(1, "chops", "slices", 6, thickness=inches("3/4"))
    theirs = choice(2, "chops", "slices", 6, share=2, thickness=inches("1"))
    found = answer(split(mine, theirs))
    assert found.verdict == "asks"
    assert asked(found) == [((1, 2), (1, 2), "meat_blade")]
    assert answer(split(mine, replace(theirs, thickness=inches("3/4")))).verdict == "sure"
    assert answer(split(mine, replace(theirs, thickness=None))).verdict == "sure"


def test_the_house_may_let_them_differ_where_length_allows() -> None:
    mine = choice(1, "chops", "slices", 6, thickness=inches("3/4"))
    theirs = choice(2, "chops", "slices", 6, share=2, thickness=inches("1"))
    question = split(mine, theirs)
    loose = replace(question, settings=replace(question.settings, cut_alike=False))
    assert answer(loose).verdict == "sure"


def test_packing_finish_and_grinding_may_differ() -> None:
    mine = choice(1, "chops", "slices", 6, package=Package(pieces=2), finishes=("seasoned",))
    theirs = choice(2, "chops", "slices", 4, share=2, package=Package(weight=pounds(1)))
    assert asked(answer(split(mine, theirs))) == []


def test_another_cut_of_the_same_meat_is_named_with_every_line_it_meets() -> None:
    roast = choice(1, "rib_roast", "pieces", 1, ribs=2)
    mine = choice(2, "chops", "slices", 4)
    theirs = choice(3, "chops", "slices", 4, share=2)
    assert asked(answer(split(roast, mine, theirs))) == [((1, 3), (1, 2), "meat_rib")]
    also = choice(4, "rib_roast", "pieces", 1, share=2, ribs=2)
    assert asked(answer(split(roast, mine, theirs, also))) == []


def test_what_only_one_of_them_has_asked_for_is_no_question() -> None:
    assert answer(split(choice(1, "chops", "slices", 4))).questions == ()


def test_owners_of_a_side_each_are_asked_nothing() -> None:
    mine = choice(1, "chops", "slices", 6, thickness=inches("3/4"))
    theirs = choice(2, "chops", "slices", 6, share=2, thickness=inches("1"))
    sides = ((Holding(0, 1),), (Holding(0, 2),))
    assert answer(shared(mine, theirs, holdings=sides)).verdict == "sure"


def test_the_odd_slice_is_the_lower_share_numbers() -> None:
    """30 in give 37 chops of 3/4 in with 1/16 in kerf; the sure 28 1/2 in give 35, 18 and 17."""
    for one, other, verdict in ((18, 17, "sure"), (19, 18, "likely"), (18, 18, "likely")):
        chops = choice(1, "chops", "slices", one), choice(2, "chops", "slices", other, share=2)
        assert answer(split(*chops)).verdict == verdict, (one, other)
    upside_down = choice(1, "chops", "slices", 18), choice(2, "chops", "slices", 20, share=2)
    assert [it.lines for it in answer(split(*upside_down)).conflicts] == [(2,)]


@pytest.mark.parametrize(
    ("count", "owners", "each"),
    [(15, 2, (8, 7)), (14, 2, (7, 7)), (17, 3, (6, 6, 5)), (2, 3, (1, 1, 0)), (0, 2, (0, 0))],
)
def test_pieces_are_dealt_in_turn(count: int, owners: int, each: tuple[int, ...]) -> None:
    turn = in_turn([Fraction(1, owners)] * owners)
    assert tuple(turn.dealt(count, place) for place in range(owners)) == each


def test_half_of_a_side_alone_gets_no_odd_slice() -> None:
    """Of the other half nobody is told; half of 37 chops is 18."""
    question = shared(choice(1, "chops", "slices", 19), holdings=(HALF,))
    assert answer(question).verdict == "tight"
    assert question.choices[0].amount == Amount("slices", count=19)
