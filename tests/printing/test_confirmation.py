"""The confirmation tells what was asked, and calls every expected figure an estimate."""

from dataclasses import replace
from fractions import Fraction

import pytest

from printing.confirmation import Booking, confirmation
from printing.words import Words
from printing.words.share_words import share_text
from shared.billing.bill import Bill, make_bill
from shared.billing.lot import billed_lot
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting.forecast import Forecast, LineForecast, Range
from shared.cutting.order import Amount, Choice, Question
from shared.shop.details import ShopDetails
from shared.units import NG_PER_LB, Weight, whole_pounds_text
from tests.printing.orders import Planned, halves
from tests.printing.pages import (
    DAY,
    MADE,
    NAME,
    SHOP,
    SHOP_A4,
    SIZES,
    SPANISH,
    WORDS,
    amounts,
    pages,
    size,
    text,
)
from tests.shared.billing.lots import card, good

CARD = card(
    Charge("kill", "per_head", Fraction(6000)),
    Charge("cut_and_wrap", "per_lb_hot", Fraction(85)),
)


@pytest.fixture(scope="module")
def planned() -> Planned:
    return halves()


def quote(planned: Planned) -> Bill:
    lot = billed_lot(
        planned.question, planned.catalogue, {1: CARD, 2: CARD}, forecast=planned.forecast
    )
    assert not isinstance(lot, BillingProblem)
    return replace(good(make_bill(lot, 1)), estimate=True)


def paper_of(
    planned: Planned,
    estimate: Bill | None,
    shop: ShopDetails = SHOP,
    words: Words = WORDS,
) -> bytes:
    booking = Booking(1042, 9, "pork", ("114",), DAY, NAME, "side 1", "Call before noon", 5000)
    return confirmation(
        booking,
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        estimate=estimate,
        shop=shop,
        customer=(NAME,),
        made=MADE,
        words=words,
    )


def test_it_tells_the_order_and_what_is_expected(planned: Planned) -> None:
    said = text(paper_of(planned, None)).replace("\n", " ")
    assert "Order 1042 as booked" in said
    assert "6 slices" in said
    assert "nice & <thick>" in said
    assert "2 to a package" in said
    expected = planned.forecast.finished(1)
    low, high = whole_pounds_text(expected.low), whole_pounds_text(expected.high)
    assert f"from {low} to {high}".replace("\u00a0", " ").removeprefix("from ") in said
    assert "yours may give more or less" in said
    assert "A deposit of $50.00 is asked" in said
    assert "Call before noon" in said


def test_it_promises_a_beef_s_owner_what_the_counter_tells_him() -> None:
    """400 lb, 392 lb chilled, cut bone-in give 60 to 70 %; the forecast says more."""
    side = SideWeights(Weight.from_pounds("400"))
    steer = Carcass("beef", tag="115", hot=(side, side))
    shares = (Share(1, NAME, (Holding(0, 1),)), Share(2, "Bert Iversen", (Holding(0, 2),)))
    line = Choice(1, 1, "t_bone_steak", Amount("all"), thickness=203_200)
    question = Question((steer,), shares, (line,))
    pounds = Range(300 * NG_PER_LB, 320 * NG_PER_LB, 340 * NG_PER_LB)
    row = LineForecast(1, 1, line.cut, 1, pounds.mid, pounds.mid, pounds, Range(1, 1, 1))
    pdf = confirmation(
        Booking(1, 9, "beef", ("115",), DAY, NAME),
        question,
        catalogue("beef"),
        Forecast((row,)),
        1,
        estimate=None,
        shop=SHOP,
        customer=(NAME,),
        made=MADE,
        words=WORDS,
    )
    said = " ".join(text(pdf).split())
    assert "Expected to take home: 235 lb to 274 lb" in said


def test_another_owners_lines_are_not_on_it(planned: Planned) -> None:
    assert "Bert" not in text(paper_of(planned, quote(planned)))


def test_the_price_is_an_estimate_and_says_so(planned: Planned) -> None:
    estimate = quote(planned)
    pdf = paper_of(planned, estimate)
    said = text(pdf).replace("\n", " ")
    assert estimate.total_cents in amounts(pdf)
    for line in estimate.lines:
        assert line.amount_cents in amounts(pdf)
    assert "The price is an estimate" in said
    assert "Balance due" not in said


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_name_paper_and_bytes(planned: Planned, shop: ShopDetails) -> None:
    pdf = paper_of(planned, quote(planned), shop)
    assert size(pdf) == SIZES[shop.paper]
    assert len(pages(pdf)) == 1
    assert NAME in text(pdf).replace("\n", " ")
    assert pdf == paper_of(planned, quote(planned), shop)


def test_in_spanish(planned: Planned) -> None:
    said = text(paper_of(planned, quote(planned), words=SPANISH)).replace("\n", " ")
    assert "El precio es un estimado" in said


@pytest.mark.parametrize("words", [WORDS, SPANISH], ids=["en", "es"])
@pytest.mark.parametrize("without", ["usual", "hang", "ring"])
def test_what_is_open_has_a_day_and_it_says_what_happens_without_an_answer(
    planned: Planned, words: Words, without: str
) -> None:
    booking = Booking(1042, 9, "pork", (), DAY, NAME, due=DAY, without_answer=without)

    def said_of(one: Booking) -> str:
        pdf = confirmation(
            one,
            planned.question,
            planned.catalogue,
            planned.forecast,
            1,
            estimate=None,
            shop=SHOP,
            customer=(NAME,),
            made=MADE,
            words=words,
        )
        return " ".join(text(pdf).split())

    due = words.say("forms.confirm_due", day="").split(".")[0].strip()
    said = said_of(replace(booking, open_primals=("loin", "ham")))
    names = ", ".join(words.name("pork", f"primal.{one}") for one in ("loin", "ham"))
    assert words.say("forms.confirm_open", names=names) in said
    assert words.say(f"forms.without_{without}") in said
    assert due in said
    settled = said_of(booking)
    assert words.say(f"forms.without_{without}") not in settled
    assert due not in settled


def test_the_price_is_told_as_the_counter_tells_it_from_light_to_heavy(planned: Planned) -> None:
    bill = quote(planned)
    booking = Booking(1042, 9, "pork", (), DAY, NAME, note="Ring at noon")
    pdf = confirmation(
        replace(booking, price=(21_642, 24_539)),
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        estimate=bill,
        shop=SHOP,
        customer=(NAME,),
        made=MADE,
        words=WORDS,
    )
    said = " ".join(text(pdf).split())
    assert "$216.42 to $245.39" in said
    assert "Your note: Ring at noon" in said
    pounds = next(one.quantity for one in bill.lines if one.unit == "lb")
    assert pounds is not None
    assert f"about {round(pounds)} lb" in said


def test_where_no_cut_is_asked_it_says_so_and_promises_no_pounds(planned: Planned) -> None:
    booking = Booking(1042, 9, "pork", (), DAY, NAME, open_primals=("loin",))
    pdf = confirmation(
        booking,
        replace(planned.question, choices=()),
        planned.catalogue,
        Forecast(()),
        1,
        estimate=None,
        shop=SHOP,
        customer=(NAME,),
        made=MADE,
        words=WORDS,
    )
    said = " ".join(text(pdf).split())
    assert "No cuts are asked for yet." in said
    assert "take home" not in said


@pytest.mark.parametrize("words", [WORDS, SPANISH], ids=["en", "es"])
def test_a_share_is_said_in_the_paper_s_language(words: Words) -> None:
    whole = (Holding(0, 1), Holding(0, 2))
    assert share_text(whole, words) == words.say("bills.holding_whole")
    assert share_text((), words) == ""
    quarters = [Holding(0, 2, quarter="fore"), Holding(0, 2, quarter="hind")]
    assert share_text(quarters[:1], words) == words.say("bills.holding_fore", side=2)
    assert share_text(quarters[1:], words) == words.say("bills.holding_hind", side=2)
    halves = (Holding(0, 1), Holding(1, 1))
    half = words.say("bills.holding_half", side=1)
    assert share_text(halves, words) == words.say("bills.holding_of_animals", share=half, count=2)
    split = (Holding(0, 1, fraction=Fraction(1, 2)),)
    assert share_text(split, words) == words.say("bills.holding_split", side=1)


def test_a_ham_of_which_neither_fresh_nor_cured_is_said_is_asked_about(planned: Planned) -> None:
    ham = Choice(77, 1, "whole_ham", Amount("all"))
    question = replace(planned.question, choices=(*planned.question.choices, ham))
    open_ = " ".join(text(paper_of(replace(planned, question=question), None)).split())
    assert "fresh or cured: not said" in open_
    assert "Please say whether fresh or cured: whole ham, shank on." in open_
    cured = replace(ham, finishes=("cured_smoked",))
    question = replace(planned.question, choices=(*planned.question.choices, cured))
    said = " ".join(text(paper_of(replace(planned, question=question), None)).split())
    assert "not said" not in said
    assert "fresh or cured" not in said
