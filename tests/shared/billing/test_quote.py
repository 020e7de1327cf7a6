"""A quote before the kill: the same rules, a range, marked as an estimate."""

from fractions import Fraction

from shared.billing.lot import Asked
from shared.billing.problems import BillingProblem
from shared.billing.quote import Quote, make_quote
from shared.billing.rates import AppliesTo, Charge
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass
from shared.cutting.forecast import Forecast, forecast
from shared.cutting.order import Amount, Choice, Question, Share
from shared.cutting.plan import plan
from tests.shared.billing.lots import WHOLE, card, pounds

PORK = catalogue("pork")
HAM = Choice(1, 1, "whole_ham", Amount("pieces", 2), finishes=("smoked",))


def hog(**known: object) -> tuple[Question, Forecast]:
    carcass = Carcass("pork", **known)  # type: ignore[arg-type]
    question = Question((carcass,), (Share(1, "Anna", WHOLE),), (HAM,))
    return question, forecast(question, plan(question, PORK), PORK)


def quoted(*charges: Charge, asked: tuple[Asked, ...] = (), **known: object) -> Quote:
    question, expected = hog(**known)
    found = make_quote(question, PORK, {1: card(*charges)}, expected, 1, asked=asked)
    assert isinstance(found, Quote), found
    return found


KILL = Charge("kill", "per_head", Fraction(6_000))
WRAP = Charge("cut_and_wrap", "per_lb_hot", Fraction(85))


def test_the_worked_number() -> None:
    found = quoted(KILL, WRAP, booked=pounds("180"))
    assert (found.low_cents, found.bill.total_cents, found.high_cents) == (19_770, 21_300, 22_830)
    assert found.bill.estimate
    assert [(one.line.code, one.low_cents, one.high_cents) for one in found.lines] == [
        ("kill", 6_000, 6_000),
        ("cut_and_wrap", 13_770, 16_830),
    ]


def test_what_the_scale_has_said_has_no_range() -> None:
    found = quoted(KILL, WRAP, hot_whole=pounds("180"))
    assert (found.low_cents, found.high_cents) == (21_300, 21_300)
    assert found.bill.estimate


def test_goods_to_be_made_are_quoted_from_the_forecast() -> None:
    smoke = Charge(
        "smoke", "per_lb_finished", Fraction(100), applies_to=AppliesTo(finishes=("smoked",))
    )
    question, expected = hog(hot_whole=pounds("180"))
    line = expected.line(1)
    assert line is not None
    found = quoted(smoke, hot_whole=pounds("180"))
    assert found.low_cents < found.bill.total_cents < found.high_cents
    assert found.bill.lines[0].quantity == Fraction(line.finished.mid, 453_592_370_000)
    assert question.choices == (HAM,)


def test_what_is_asked_for_is_in_it_and_a_missing_card_is_said() -> None:
    delivery = Charge("delivery", "flat", Fraction(2_500), asked=True)
    found = quoted(KILL, delivery, asked=(Asked("delivery"),), booked=pounds("180"))
    assert found.bill.total_cents == 8_500
    question, expected = hog(booked=pounds("180"))
    lacking = make_quote(question, PORK, {}, expected, 1)
    assert isinstance(lacking, BillingProblem)
    assert lacking.code == "no_card"
