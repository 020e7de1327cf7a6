"""The block's lines stand in the order the carcass is broken and say what isn't usual."""

from dataclasses import replace
from fractions import Fraction

from shared.cutting.breaking import block_lines, differs_from_usual, package_of, pool_lines
from shared.cutting.order import Added, Amount, Choice, Package
from shared.cutting.plan import plan
from shared.units import NG_PER_LB, Weight
from tests.shared.cutting.half_hog import PORK, planned


def test_every_plan_line_is_on_the_block_by_side_and_breaking_order() -> None:
    question, answer = planned()
    lines = block_lines(question, answer, PORK)
    assert {(one.line, one.side) for one in lines} == {(one.line, one.side) for one in answer.lines}
    assert sum(one.weight_ng for one in lines) == sum(one.weight_ng for one in answer.lines)
    places = [
        (one.side or 1, one.side == 0, PORK.primals.index(one.primal), PORK.cuts[one.cut].order)
        for one in lines
    ]
    assert places == sorted(places)


def test_steaks_say_their_thickness_and_roasts_do_not() -> None:
    question, answer = planned()
    by_cut = {one.cut: one for one in block_lines(question, answer, PORK)}
    assert by_cut["ham_steak"].thickness == 3 * 203_200 // 4
    assert by_cut["ham_steak"].count == 5
    assert by_cut["butt_roast"].thickness is None
    assert by_cut["butt_roast"].piece_weight == Weight(4, "lb")
    assert by_cut["assorted_chop"].from_rest
    assert by_cut["whole_picnic"].note == "leave the shank on"
    assert by_cut["whole_picnic"].differs


def test_what_is_left_open_for_grinding_is_one_line_a_side() -> None:
    question, answer = planned()
    told = [one for one in block_lines(question, answer, PORK) if one.cut == "grind_open"]
    assert sum(one.cut == "grind_open" for one in answer.lines) > len(told) == 2
    assert [(one.count, one.way, one.start) for one in told] == [(0, "", None)] * 2


def test_the_table_at_the_end_holds_every_draw() -> None:
    question, answer = planned()
    lines = pool_lines(question, answer, PORK)
    assert [one.line for one in lines] == [11, 12, 20]
    assert [one.weight_ng for one in lines] == [
        draw.weight_ng for line in (11, 12, 20) for draw in answer.draws if draw.line == line
    ]
    assert lines[0].package == Package(weight=Weight(1, "lb"))
    assert (lines[1].from_rest, lines[0].from_rest) == (True, False)
    assert all(one.lean_ng + one.fat_ng == one.weight_ng for one in lines)


def test_the_usual_line_itself_is_usual_and_any_change_is_not() -> None:
    for usual in PORK.usual:
        cut = PORK.cuts[usual.cut]
        choice = Choice(
            line=1,
            share=1,
            cut=usual.cut,
            amount=Amount("rest"),
            thickness=usual.thickness,
            piece_weight=usual.piece_weight,
            package=Package(usual.package_pieces, usual.package_weight),
            finishes=usual.finishes,
        )
        assert not differs_from_usual(choice, cut, PORK.usual), usual
        assert differs_from_usual(replace(choice, note="thin"), cut, PORK.usual)
        assert differs_from_usual(replace(choice, package=Package(97)), cut, PORK.usual)
        assert differs_from_usual(replace(choice, thickness=7 * 203_200), cut, PORK.usual)
        heavy = replace(choice, piece_weight=Weight(97, "lb"))
        assert differs_from_usual(heavy, cut, PORK.usual)
        seasoned = replace(choice, finishes=(*choice.finishes, "seasoned"))
        assert differs_from_usual(seasoned, cut, PORK.usual)
    unusual = PORK.cuts["coppa"]
    assert differs_from_usual(Choice(1, 1, "coppa", Amount("rest")), unusual, PORK.usual)


def test_a_package_not_asked_for_is_the_cuts_own() -> None:
    cut = PORK.cuts["ham_steak"]
    assert package_of(Choice(1, 1, "ham_steak", Amount("rest")), cut) == Package(
        cut.package_pieces, cut.package_weight
    )


def test_the_block_is_told_what_is_ground_in() -> None:
    """A pound in five of pork fat: 5 lb of ground are 4 lb of trim and 1 lb of stock."""
    question, _ = planned()
    added = Added("pork_fat", Fraction(1, 5))
    amount = Amount("pounds", weight=Weight(5, "lb"))
    ground = Choice(99, 1, "ground_pork", amount, seasoning="sage", added=added)
    question = replace(question, choices=(Choice(1, 1, "grind_picnic", Amount("all")), ground))
    (line,) = pool_lines(question, plan(question, PORK), PORK)
    assert (line.added, line.seasoning, line.lean) == ("pork_fat", "sage", None)
    assert 0 <= line.added_ng - NG_PER_LB < 2  # what rounding leaves over goes with it
    assert line.lean_ng + line.fat_ng + line.added_ng == 5 * NG_PER_LB
