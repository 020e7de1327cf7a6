"""Pounds and packages follow from the plan, its trimmings and the finishes."""

from fractions import Fraction

from shared.cutting.forecast import finish_yield, forecast, kept
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
        assert {one.line for one in lines} == {
            one.line
            for one in question.choices
            if one.share == share and PORK.cuts[one.cut].kind != "to_trim"
        }


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
