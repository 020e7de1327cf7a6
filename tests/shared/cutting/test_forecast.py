"""Pounds and packages follow from the plan, its trimmings and the finishes."""

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from shared.carcass import anatomy
from shared.carcass.carcass import Carcass, SideWeights
from shared.carcass.grades import beef_yield_grade, grade_factor
from shared.carcass.spread import band, range_of
from shared.cutting.forecast import Range, finish_yield, forecast, kept, range_band
from shared.cutting.order import Choice, Question
from shared.cutting.own_figures import Made, own_figures
from shared.cutting.plan import plan
from shared.units import Weight
from tests.bench.crowded import question_of
from tests.bench.full_orders import full_order
from tests.shared.cutting.half_hog import PORK, planned


def test_bacon_is_the_belly_less_trimming_times_its_yield() -> None:
    question, answer = planned()
    found = forecast(question, answer, PORK).line(6)
    assert found is not None
    taken = sum(one.weight_ng for one in answer.lines if one.line == 6)
    choice = next(one for one in question.choices if one.line == 6)
    into = int(taken * kept(PORK.cuts["bacon"]))
    assert found.taken_ng == taken
    assert found.into_finish_ng == into
    assert found.finished.mid == int(into * finish_yield(choice, PORK))
    # 9 CFR 319.107: bacon may not weigh more than the fresh uncured belly.
    assert found.finished.mid < taken
    pound = 453_592_370_000
    assert found.packages.mid == -(-found.finished.mid // pound)
    assert found.packages.low <= found.packages.mid <= found.packages.high


def test_counted_slices_give_a_certain_number_of_packages() -> None:
    question, answer = planned()
    found = forecast(question, answer, PORK).line(3)
    assert found is not None
    assert found.pieces == 12
    assert (found.packages.low, found.packages.mid, found.packages.high) == (6, 6, 6)


def test_the_rest_gives_a_range_of_packages() -> None:
    question, answer = planned()
    found = forecast(question, answer, PORK).line(15)
    assert found is not None
    assert found.packages.mid == -(-found.pieces // 4)
    assert found.packages.low < found.packages.high


def test_an_owners_lines_add_up() -> None:
    question, answer = planned()
    found = forecast(question, answer, PORK)
    for share in (1, 2):
        lines = found.of_share(share)
        assert found.finished(share).mid == sum(one.finished.mid for one in lines)
        assert found.packages(share).high == sum(one.packages.high for one in lines)
        # independent lines add up as squares do, so the whole is surer than its lines
        over = sum((one.finished.high - one.finished.mid) ** 2 for one in lines)
        assert (found.finished(share).high - found.finished(share).mid) ** 2 <= over
        assert found.finished(share).high < sum(one.finished.high for one in lines)
        assert {one.line for one in lines} == {
            one.line
            for one in question.choices
            if one.share == share and PORK.cuts[one.cut].kind != "to_trim"
        }


def test_the_rest_of_nothing_goes_into_no_package() -> None:
    order = full_order("nothing", "quarters")
    order["choices"] = [
        {"line": 1, "share": 1, "cut": "ground_beef", "amount": "rest"},
        {"line": 2, "share": 1, "cut": "fresh_sausage", "amount": "rest"},
    ]
    beef, question = anatomy.catalogue("beef"), question_of(order)
    found = forecast(question, plan(question, beef), beef)
    ground, sausage = found.line(1), found.line(2)
    assert ground is not None
    assert sausage is not None
    assert ground.packages.low > 1
    assert sausage.finished == sausage.packages == Range(0, 0, 0)


def test_what_the_plan_makes_nothing_of_has_no_line() -> None:
    question, answer = planned()
    assert forecast(question, answer, PORK).line(9) is None
    assert forecast(question, answer, PORK).line(999) is None


def test_finishes_multiply() -> None:
    question, _ = planned()
    bacon = next(one for one in question.choices if one.line == 6)
    expected = Fraction(1)
    for code in bacon.finishes:
        expected *= PORK.finishes[code].yield_
    assert finish_yield(bacon, PORK) == expected < 1


def test_the_shops_own_figures_move_the_middle_and_narrow_the_range() -> None:
    question, answer = planned()
    made = [Made("bacon", 100, it, 800) for it in (110, 111, 112, 113, 114, 112, 111, 113)]
    own = own_figures(made)
    table = forecast(question, answer, PORK).line(6)
    ours = forecast(question, answer, PORK, own).line(6)
    assert table is not None
    assert ours is not None
    assert ours.finished.mid == int(
        ours.into_finish_ng * finish_yield(_choice(question, 6), PORK) * own["bacon"].factor
    )
    wide = Fraction(table.finished.high - table.finished.low, table.finished.mid)
    narrow = Fraction(ours.finished.high - ours.finished.low, ours.finished.mid)
    assert narrow < wide * Fraction(3, 4)


def test_the_range_narrows_when_the_rail_has_weighed() -> None:
    question, answer = planned()
    one = question.carcasses[0]
    guessed = Carcass("pork", booked=Weight(200, "lb"), skin=one.skin)
    wide = forecast(replace(question, carcasses=(guessed,)), answer, PORK).line(6)
    side = SideWeights(whole=Weight(100, "lb"))
    weighed = replace(guessed, chilled=(side, side))
    narrow = forecast(replace(question, carcasses=(weighed,)), answer, PORK).line(6)
    assert wide is not None
    assert narrow is not None
    assert wide.finished.mid == narrow.finished.mid
    assert wide.finished.low < narrow.finished.low
    assert narrow.finished.high < wide.finished.high


def test_ranges_come_of_the_tables_lying_apart() -> None:
    """27 % for a roast and 6 % for the weight: root of the sum of squares."""
    roast = PORK.cuts["butt_roast"]
    expected = (band("roast") ** 2 + Fraction("0.06") ** 2) ** Fraction(1, 2)
    assert abs(float(range_band(roast, Fraction("0.06"))) - float(expected)) < 0.0002
    assert range_of([Fraction(2, 5), Fraction(1, 5)]) == Fraction("0.4053")


def _choice(question: Question, line: int) -> Choice:
    return next(one for one in question.choices if one.line == line)


def test_a_grade_moves_the_meat_and_not_the_bones() -> None:
    """2.953 is 2.52 points of the carcass leaner than 3.5: 3.45 % more of each line of meat."""
    found = beef_yield_grade(Decimal("0.40"), Decimal("2.5"), Decimal(735), Decimal("12.0"))
    question, answer = planned()
    table = forecast(question, answer, PORK)
    moved = forecast(question, answer, PORK, graded=grade_factor(found))
    for one, two in zip(table.lines, moved.lines, strict=True):
        still = PORK.cuts[one.cut].kind in ("fat", "bones", "offal")
        assert one.by_table_ng == two.by_table_ng == one.finished.mid
        assert (
            two.finished.mid == one.finished.mid if still else two.finished.mid > one.finished.mid
        )
