"""The whole planner on an invented animal: verdicts, the plan chosen, pins, purity."""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.carcass.carcass import Gone, Holding, Measured
from shared.carcass.catalogue import Catalogue, Finish
from shared.cutting.answer import Answer, PlanLine
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.owners_questions import put_together
from shared.cutting.plan import Planner, plan
from tests.shared.cutting.tiny_lot import catalogue, choice, inches, lot, pounds, shared


def answer(question: Question) -> Answer:
    return plan(question, catalogue())


def made(found: Answer) -> list[tuple[int, str, int, int]]:
    return [(one.line, one.way, one.side, one.count) for one in found.lines]


@pytest.mark.parametrize(
    ("count", "sides", "verdict"),
    [
        # 30 in give 37 chops, 28 1/2 in give 35, 31 1/2 in give 38.
        (35, 1, "sure"),
        (37, 1, "likely"),
        (38, 1, "tight"),
        (39, 1, "cant"),
        (70, 2, "sure"),
        (76, 2, "tight"),
        (77, 2, "cant"),
    ],
)
def test_chops_of_a_back_of_30_inches(count: int, sides: int, verdict: str) -> None:
    assert answer(lot(choice(1, "chops", "slices", count), sides=sides)).verdict == verdict


def test_a_measured_back_is_a_fact() -> None:
    lengths = {"blade": "7", "rib": "11", "loin": "7", "sirloin": "5"}
    measured = tuple(Measured(code, 1, inches(text)) for code, text in lengths.items())
    assert answer(lot(choice(1, "chops", "slices", 37), measured=measured)).verdict == "sure"
    assert answer(lot(choice(1, "chops", "slices", 38), measured=measured)).verdict == "cant"


def test_pieces_cross_the_borders_of_parts() -> None:
    # Closed boxes of 7, 11, 7 and 5 in would hold 8 + 13 + 8 + 6 = 35 chops.
    found = answer(lot(choice(1, "chops", "slices", 37)))
    assert found.verdict == "likely"
    assert [(one.code, one.line) for one in found.cautions] == [("likely", 1)]
    taken = {one.part: one.fraction for line in found.lines for one in line.taken}
    assert sum(taken[f"meat_{place}"] for place in ("blade", "rib", "loin", "sirloin")) < 4
    assert all(0 < part <= 1 for part in taken.values())


def test_one_whole_ham_and_steaks_come_one_from_each_side() -> None:
    steaks = choice(2, "ham_steaks", "slices", 5)
    half = answer(lot(choice(1, "whole_ham", "pieces", 1), steaks))
    assert half.verdict == "cant"
    assert [one.lines for one in half.conflicts] == [(1, 2)]
    hog = answer(lot(choice(1, "whole_ham", "pieces", 1), steaks, sides=2))
    assert hog.verdict == "sure"
    assert made(hog) == [(1, "plain", 1, 1), (2, "centre", 2, 5)]


def test_the_first_line_has_most_on_the_first_side() -> None:
    found = answer(lot(choice(1, "chops", "slices", 40), sides=2))
    assert made(found) == [(1, "back", 1, 35), (1, "back", 2, 5)]
    two = answer(
        lot(choice(1, "half_ham", "pieces", 3), choice(2, "ham_ends", "pieces", 1), sides=2)
    )
    assert [one[:3] for one in made(two)] == [
        (1, "butt_half", 1), (1, "shank_half", 1), (1, "butt_half", 2), (2, "shank", 2),
    ]  # fmt: skip


def test_ways_that_cross_each_other_make_room() -> None:
    # The rib roast lies at the rib's tail end, so the back ribs before it are cut short.
    roast = choice(1, "rib_roast", "pieces", 1, ribs=3)
    assert answer(lot(roast, choice(2, "back_ribs"))).verdict == "cant"
    rest = answer(lot(roast, choice(2, "back_ribs", "rest"), choice(3, "chops", "rest")))
    assert rest.verdict == "sure"
    ribs = next(one for one in rest.lines if one.cut == "back_ribs")
    assert ribs.taken[0].fraction == 1 - Fraction(inches("11") * 3 // 7, inches("11"))


def test_pins_are_taken_as_given() -> None:
    ham = choice(1, "whole_ham", "pieces", 1)
    steaks = choice(2, "ham_steaks", "slices", 5)
    pinned = replace(ham, pinned=((0, 2, 1),))
    assert made(answer(lot(pinned, steaks, sides=2)))[0] == (1, "plain", 2, 1)
    both = answer(lot(pinned, replace(steaks, pinned=((0, 2, 5),)), sides=2))
    assert [(one.kind, one.lines) for one in both.conflicts] == [("pinned", (1, 2))]
    assert answer(lot(replace(ham, pinned=((0, 1, 2),)))).conflicts[0].kind == "pinned"


def test_up_to_comes_last_and_never_worsens() -> None:
    steaks = choice(2, "ham_steaks", "up_to", 4)
    found = answer(lot(steaks, choice(1, "half_ham", "pieces", 1)))
    assert (2, "centre", 1, 2) in made(found)
    none = answer(lot(steaks, choice(1, "whole_ham", "pieces", 1)))
    assert none.verdict == "sure"
    assert [one.code for one in none.cautions if one.line == 2] == ["up_to_none"]


def test_at_least_takes_the_rest_too() -> None:
    found = answer(lot(choice(1, "ham_steaks", "at_least", 2)))
    assert [(one.start, one.count) for one in found.lines] == [
        (inches("4"), 2),
        (inches("4") + 2 * inches("13/16"), 3),
    ]


def test_all_leaves_out_a_side_that_lost_it() -> None:
    gone = (Gone("brisket", 1, None, "bruise"),)
    found = answer(lot(choice(1, "brisket"), sides=2, gone=gone))
    assert made(found) == [(1, "plain", 2, 1)]
    assert [(one.code, one.where and one.where.side) for one in found.cautions] == [
        ("lost_part", 1)
    ]
    nothing = answer(lot(choice(1, "brisket"), gone=gone))
    assert [one.kind for one in nothing.conflicts] == ["gone"]


def test_both_sides_at_once_and_sides_still_joined() -> None:
    assert made(answer(lot(choice(1, "crown", "pieces", 1), sides=2))) == [(1, "racks", 0, 1)]
    assert answer(lot(choice(1, "crown", "pieces", 1))).conflicts[0].kind == "not_owned"
    saddle = choice(1, "saddle", "slices", 4)
    joined = answer(lot(saddle, sides=2))
    assert [one.code for one in joined.cautions] == ["dont_split"]
    assert joined.verdict == "sure"
    assert answer(lot(saddle, sides=2, split=True)).conflicts[0].kind == "joined"


def test_pounds_of_sliced_goods_become_whole_slices() -> None:
    # Meat and bone of the back weigh 38 lb on 30 in; a 3/4-in chop 0.95 lb; 5 lb are 5.26.
    pounds_of = choice(1, "chops", amount=Amount("pounds", weight=pounds(5)))
    assert made(answer(lot(pounds_of)))[0][3] == 5


def test_a_half_of_the_animal_comes_out_in_whole_sides() -> None:
    half = Amount("fraction", fraction=Fraction(1, 2), of="animal")
    assert made(answer(lot(choice(1, "tenderloin", amount=half), sides=2))) == [(1, "plain", 1, 1)]
    third = Amount("fraction", fraction=Fraction(1, 3), of="animal")
    assert answer(lot(choice(1, "chops", amount=third), sides=2)).conflicts[0].kind == "not_whole"


def test_a_half_of_each_side_may_lie_anywhere() -> None:
    half = choice(1, "whole_ham", amount=Amount("fraction", fraction=Fraction(1, 2)))
    found = answer(lot(half, choice(2, "ham_ends", "pieces", 1)))
    assert found.verdict == "sure"
    assert answer(lot(half, choice(2, "ham_ends", "pieces", 2))).verdict == "cant"


def test_what_comes_one_to_an_animal_is_for_its_owners_to_settle() -> None:
    tongues = (choice(1, "tongue", "pieces", 1), choice(2, "tongue", "pieces", 1, share=2))
    sides = ((Holding(0, 1),), (Holding(0, 2),))
    found = answer(shared(*tongues, holdings=sides))
    assert found.verdict == "asks"
    assert [(one.kind, one.lines, one.shares) for one in found.questions] == [
        ("single_wanted_twice", (1, 2), (1, 2))
    ]
    half_side = (Holding(0, 2, "", Fraction(1, 2)),)
    third = shared(
        *tongues,
        choice(3, "tongue", "pieces", 1, share=3),
        holdings=(sides[0], half_side, half_side),
    )
    asked = answer(third).questions
    assert len(asked) == 2
    assert [(one.lines, one.shares) for one in put_together(asked)] == [((1, 2, 3), (1, 2, 3))]
    alone = answer(lot(choice(1, "tongue", "pieces", 2), sides=2))
    assert [one.kind for one in alone.conflicts] == ["single"]


def test_a_split_side_keeps_accounts() -> None:
    halves = ((Holding(0, 1, "", Fraction(1, 2)),), (Holding(0, 1, "", Fraction(1, 2)),))
    chops = [choice(n, "chops", "slices", 18, share=n) for n in (1, 2)]
    assert answer(shared(*chops, holdings=halves)).verdict == "likely"
    greedy = [choice(1, "chops", "slices", 20), choice(2, "chops", "slices", 10, share=2)]
    assert [one.lines for one in answer(shared(*greedy, holdings=halves)).conflicts] == [(1,)]
    everything = [choice(n, "chops", share=n) for n in (1, 2)]
    found = answer(shared(*everything, holdings=halves))
    assert [one.end - one.start for one in found.lines if one.end and one.start is not None] == [
        inches("15"), inches("15"),
    ]  # fmt: skip
    whole = answer(shared(choice(1, "brisket", "pieces", 1), holdings=halves))
    assert whole.verdict == "asks"
    assert [one.kind for one in whole.questions] == ["undivided_piece"]


def test_quarters_of_other_owners_are_out_of_reach() -> None:
    other = shared(choice(1, "brisket", "pieces", 1), holdings=((Holding(0, 1),), (Holding(0, 2),)))
    assert answer(other).verdict == "sure"
    both = shared(choice(1, "brisket", "pieces", 2), holdings=((Holding(0, 1),), (Holding(0, 2),)))
    assert answer(both).conflicts[0].lines == (1,)


def _lines_of(found: Answer, line: int) -> list[PlanLine]:
    return [one for one in found.lines if one.line == line]


def test_a_choice_in_one_group_never_moves_another() -> None:
    base = (choice(1, "chops", "slices", 20), choice(2, "whole_ham", "pieces", 1))
    alone = answer(lot(*base, sides=2))
    more = answer(lot(*base, choice(3, "ham_steaks", "slices", 5), sides=2))
    tight = answer(lot(*base, choice(3, "ham_steaks", "slices", 6), sides=2))
    assert _lines_of(alone, 1) == _lines_of(more, 1) == _lines_of(tight, 1)
    assert dict(tight.group_verdicts) == {1: "sure", 2: "tight", 3: "tight"}


def test_a_planner_answers_as_a_plan_from_scratch() -> None:
    planner = Planner(catalogue())
    orders: list[tuple[Choice, ...]] = [
        (choice(1, "chops", "slices", 20), choice(2, "whole_ham"), choice(3, "ground", "rest")),
        (choice(1, "chops", "slices", 21), choice(2, "whole_ham"), choice(3, "ground", "rest")),
        (choice(1, "chops", "slices", 21), choice(2, "grind_ham"), choice(3, "ground", "rest")),
        (choice(1, "chops", "slices", 90), choice(2, "grind_ham"), choice(4, "chops", "rest")),
        (choice(1, "chops", "slices", 21), choice(4, "chops", "rest")),
        (choice(1, "chops", "slices", 20), choice(4, "chops", "rest")),
        (choice(1, "chops", amount=Amount("fraction", fraction=Fraction(2, 7))),),
    ]
    for order in [*orders, *reversed(orders)]:
        question = lot(*order, sides=2)
        assert planner.answer(question) == answer(question)
    moved = lot(*orders[0], sides=2, gone=(Gone("brisket", 1, None, "bruise"),))
    assert planner.answer(moved) == answer(moved)


def test_the_parts_of_a_side_are_given_once() -> None:
    found = answer(
        lot(
            choice(1, "t_bones", "slices", 3), choice(2, "chops", "slices", 12),
            choice(3, "tenderloin", "rest"), choice(4, "back_ribs", "rest"),
            choice(5, "boneless_chops", "rest"), choice(6, "brisket_half", "pieces", 1),
            sides=2,
        )
    )  # fmt: skip
    total: dict[tuple[int, str], Fraction] = {}
    for one in found.lines:
        for part in one.taken:
            key = (one.side, part.part)
            total[key] = total.get(key, Fraction(0)) + part.fraction
    for one in found.open_parts:
        key = (one.side, one.part)
        total[key] = total.get(key, Fraction(0)) + one.fraction
    assert all(amount <= 1 for amount in total.values())
    assert total[1, "brisket"] == 1
    assert found.verdict == "sure"


def with_finishes() -> Catalogue:
    """The invented species with slices that are opened, and slices with a pocket."""
    opened = Finish("butterflied", Fraction(1), opened=2, boneless=True)
    pocket = Finish("stuffed", Fraction(1), least_thickness=inches("5/4"))
    return replace(catalogue(), finishes={"butterflied": opened, "stuffed": pocket})


def test_a_butterflied_chop_takes_twice_its_thickness() -> None:
    """30 in of boneless back: 20 chops of 3/4 in that open to it, cut 1 1/2 in by the knife."""
    thick = {"thickness": inches("3/4"), "finishes": ("butterflied",)}
    found = plan(lot(choice(1, "boneless_chops", "slices", 20, **thick)), with_finishes())
    assert (found.verdict, found.lines[0].size) == ("likely", inches("3/2"))
    told = plan(lot(choice(1, "boneless_chops", "slices", 22, **thick)), with_finishes())
    assert [one.kind for one in told.conflicts] == ["length"]


def test_a_stuffed_chop_needs_room_for_its_pocket() -> None:
    thick = {"thickness": inches("1"), "finishes": ("stuffed",)}
    (told,) = plan(lot(choice(1, "chops", "slices", 2, **thick)), with_finishes()).conflicts
    assert (told.kind, told.asked, told.most) == ("thickness", inches("1"), inches("5/4"))
    thick["thickness"] = inches("5/4")
    assert plan(lot(choice(1, "chops", "slices", 2, **thick)), with_finishes()).verdict == "sure"
