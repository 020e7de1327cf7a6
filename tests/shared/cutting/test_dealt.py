"""Lines of a leader divided among the owners he leads, for figures and for what it costs."""

from fractions import Fraction

from shared.carcass.carcass import Holding, Share
from shared.cutting.dealt import as_own, dealt
from shared.cutting.forecast import Forecast, LineForecast, Range
from shared.cutting.order import Amount, Choice, Question, Settings


def half(number: int, leader: int | None = None) -> Share:
    return Share(number, f"owner {number}", (Holding(0, 1, "", Fraction(1, 2)),), leader)


LED = (half(1), half(2, leader=1))
FOURTEEN = LineForecast(3, 1, "rib_steak", 7, 14, 14, Range(14, 14, 21), Range(6, 7, 8), 14)


def test_seven_packages_of_fourteen_are_four_of_eight_and_three_of_six() -> None:
    one, two = dealt(Forecast((FOURTEEN,)), LED).lines
    assert (one.share, one.packages, one.finished) == (1, Range(3, 4, 4), Range(8, 8, 12))
    assert (two.share, two.packages, two.finished) == (2, Range(3, 3, 4), Range(6, 6, 9))
    assert one.taken_ng + two.taken_ng == FOURTEEN.taken_ng


def test_one_piece_goes_whole_to_the_lower_number() -> None:
    roast = LineForecast(3, 1, "rib_roast", 1, 9, 9, Range(9, 9, 9), Range(1, 1, 1), 9)
    one, two = dealt(Forecast((roast,)), LED).lines
    assert (one.finished.mid, two.finished.mid, two.packages.mid) == (9, 0, 0)


def test_without_packages_it_is_divided_by_what_each_holds() -> None:
    loose = LineForecast(3, 1, "trim", 0, 9, 9, Range(8, 10, 12), Range(0, 0, 0), 9)
    one, two = dealt(Forecast((loose,)), LED).lines
    assert (one.finished, two.finished) == (Range(4, 5, 6), Range(4, 5, 6))


def test_nobody_led_nothing_is_changed() -> None:
    alone = Forecast((FOURTEEN,))
    assert dealt(alone, (half(1), half(2))) == alone


def test_for_a_bill_the_led_share_has_the_lines_as_its_own() -> None:
    choice = Choice(3, 1, "rib_steak", Amount("all"))
    question = Question((), LED, (choice,), Settings())
    asked, found = as_own(question, dealt(Forecast((FOURTEEN,)), LED))
    assert [one.share for one in asked.choices] == [1, 2]
    assert len({one.line for one in asked.choices}) == 2
    for one in asked.choices:
        expected = found.line(one.line)
        assert expected is not None
        assert expected.share == one.share
