"""What the table foretells of each carcass adds up to the forecast of the lot."""

from dataclasses import replace

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting.forecast import forecast
from shared.cutting.foretold import foretold
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import plan
from shared.units import NG_PER_LB, Weight

KNOWN = catalogue("pork")


def _hog(tag: str, pounds: int) -> Carcass:
    side = SideWeights(Weight(pounds, "lb"))
    return Carcass("pork", tag, age="under_30", skin="skinned", hot=(side, side))


def _lot(*hogs: Carcass) -> Question:
    holdings = tuple(Holding(n, side) for n in range(len(hogs)) for side in (1, 2))
    choices = (
        Choice(1, 1, "bacon", Amount("all"), finishes=("cured_smoked", "sliced")),
        Choice(2, 1, "grind_open", Amount("rest")),
        Choice(3, 1, "ground_pork", Amount("rest")),
    )
    return Question(tuple(hogs), (Share(1, "Anna Berg", holdings),), choices)


def test_one_carcass_is_its_forecast_by_the_table() -> None:
    question = _lot(_hog("1", 90))
    answer = plan(question, KNOWN)
    lines = forecast(question, answer, KNOWN).lines
    found = foretold(question, answer, KNOWN, 0)
    assert {one.line: one.expected_ng for one in found} == {
        one.line: one.by_table_ng for one in lines
    }
    assert found[0].carcass_ng < 180 * NG_PER_LB  # what hung, less what it shrinks
    assert found[0].carcass_ng > 170 * NG_PER_LB


def test_two_carcasses_add_up_and_the_heavier_gives_more() -> None:
    question = _lot(_hog("1", 80), _hog("2", 100))
    answer = plan(question, KNOWN)
    whole = {one.line: one.by_table_ng for one in forecast(question, answer, KNOWN).lines}
    light, heavy = (foretold(question, answer, KNOWN, n) for n in (0, 1))
    for first, second in zip(light, heavy, strict=True):
        assert abs(first.expected_ng + second.expected_ng - whole[first.line]) <= 1
    assert light[0].cut == "bacon"
    assert light[0].expected_ng < heavy[0].expected_ng


def test_a_carcass_of_which_nothing_is_cut_foretells_nothing() -> None:
    question = _lot(_hog("1", 90))
    gone = replace(question, carcasses=(replace(question.carcasses[0], condemned=True),))
    assert foretold(gone, plan(gone, KNOWN), KNOWN, 0) == ()
