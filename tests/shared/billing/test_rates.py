"""Rate cards: which one holds, and what is wrong with one."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.billing.cards import card_from_text, card_text
from shared.billing.problems import BillingProblem
from shared.billing.rates import (
    AppliesTo,
    Charge,
    LateTerms,
    RateCard,
    Step,
    card_for,
    check_card,
)
from tests.shared.billing.lots import card

GOOD = Charge("kill", "per_head", Fraction(6_500))


def test_published_rates_make_cards_without_fault() -> None:
    """Rate practice published by plants and Michigan State Univ. Extension (July 2013)."""
    published = card(
        Charge("kill", "per_head", Fraction(5_022)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction("46")),
        Charge("disposal", "per_head", Fraction(1_200), falls_to="producer"),
        Charge("patties", "per_lb_finished", Fraction(35), applies_to=AppliesTo(cuts=("patties",))),
        Charge("smoke", "per_head", Fraction(5_000), applies_to=AppliesTo(finishes=("smoked",))),
        Charge("offal", "per_head", Fraction(799), applies_to=AppliesTo(kinds=("offal",))),
        Charge(
            "storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),), asked=True
        ),
        Charge("delivery", "flat", Fraction(2_500), asked=True),
        Charge("slaughter_small", "per_lb_hot", Fraction(97), minimum=4_659),
        Charge("shrunk", "per_lb_hot_less_shrink", Fraction(60), shrink=Fraction(3, 100)),
    )
    assert check_card(published) == ()


@pytest.mark.parametrize(
    ("charge", "code"),
    [
        (replace(GOOD, code=""), "bad_code"),
        (replace(GOOD, code="kill:1"), "bad_code"),
        (replace(GOOD, rate=Fraction(-1)), "rate_negative"),
        (replace(GOOD, rate=Fraction(10_000_000)), "rate_absurd"),
        (replace(GOOD, basis="per_lb_hot", rate=Fraction(100_000)), "rate_absurd"),
        (replace(GOOD, rate=Fraction(10**9, 3)), "rate_absurd"),
        (replace(GOOD, steps=(Step(Fraction(5), Fraction(-1)),)), "rate_negative"),
        (replace(GOOD, minimum=-1), "minimum_negative"),
        (replace(GOOD, per_share_minimum=True), "minimum_per_share"),
        (replace(GOOD, tax_rate=Fraction(-1, 100)), "tax_negative"),
        (replace(GOOD, tax_rate=Fraction(6)), "tax_absurd"),
        (replace(GOOD, steps=(Step(Fraction(0), Fraction(1)),)), "steps_not_rising"),
        (replace(GOOD, steps=(Step(Fraction(9), Fraction(1)),) * 2), "steps_not_rising"),
        (replace(GOOD, basis="per_lb_hot_less_shrink"), "shrink_missing"),
        (replace(GOOD, shrink=Fraction(3, 100)), "shrink_missing"),
        (
            replace(GOOD, basis="per_lb_hot_less_shrink", shrink=Fraction(3, 10)),
            "shrink_absurd",
        ),
        (
            replace(GOOD, applies_to=AppliesTo(hot_from=Fraction(9), hot_below=Fraction(9))),
            "weights_crossed",
        ),
    ],
)
def test_a_fault_is_named_with_its_charge(charge: Charge, code: str) -> None:
    found = check_card(card(charge))
    assert [one.code for one in found] == [code]
    assert found[0].data["charge"] == charge.code


def test_a_card_needs_a_code_and_each_charge_one_of_its_own() -> None:
    assert [one.code for one in check_card(card(GOOD, GOOD, code=" "))] == [
        "code_missing",
        "same_code",
    ]


def test_the_card_that_holds_is_the_most_particular_then_the_latest() -> None:
    plain = RateCard("2023", "All", date(2023, 1, 1), id=1)
    newer = RateCard("2024", "All", date(2024, 1, 1), id=2)
    corrected = replace(newer, id=3)
    pork = RateCard("pork", "Pork", date(2023, 1, 1), species=("pork",), id=4)
    inspected = replace(plain, regime="inspected", id=5)
    friends = replace(plain, group="friends", id=6)
    cards = (friends, newer, corrected, plain, pork, inspected)
    day = date(2024, 4, 1)
    assert card_for(cards, day, species="beef", regime="custom") == corrected
    assert card_for(cards, date(2023, 12, 31), species="beef") == plain
    assert card_for(cards, day, species="pork", regime="custom") == pork
    assert card_for(cards, day, species="pork", regime="inspected") == inspected
    assert card_for(cards, day, species="pork", group="friends") == friends
    assert card_for(cards, date(2022, 12, 31), species="pork") is None


@given(
    st.builds(
        Charge,
        code=st.text(min_size=1),
        basis=st.sampled_from(["per_head", "per_lb_in", "flat"]),
        rate=st.fractions(0, 1_000),
        name=st.text(),
        minimum=st.integers(0, 10_000),
        falls_to=st.sampled_from(["owner", "producer"]),
        applies_to=st.builds(
            AppliesTo, cuts=st.just(("chop",)), hot_from=st.none() | st.fractions()
        ),
        steps=st.just((Step(Fraction(5), Fraction(1, 3)),)) | st.just(()),
        credit=st.booleans(),
    )
)
def test_a_card_comes_back_from_its_text(charge: Charge) -> None:
    kept = replace(card(charge), species=("pork", "beef"), regime="custom", id=7)
    assert card_from_text(card_text(kept)) == kept


@pytest.mark.parametrize(
    ("was", "now", "at"),
    [
        ('"rate":"6500"', '"rate":"a lot"', "value/charges/0/rate"),
        ('"rate":"6500"', '"rate":6500', "value/charges/0/rate"),
        ('"basis":"per_head"', '"basis":"per_tail"', "value/charges/0/basis"),
        ('"minimum":0', '"minimum":true', "value/charges/0/minimum"),
        ('"holds_from":"2024-04-01"', '"holds_from":"2024-02-30"', "value/holds_from"),
        ('"credit":false', '"credit":0', "value/charges/0/credit"),
        ('"hot_below":null', '"hot_below":5', "value/charges/0/applies_to/hot_below"),
        ('"steps":[]', '"steps":{}', "value/charges/0/steps"),
        ('"steps":[]', '"steps":[5]', "value/charges/0/steps/0"),
        ('"name":"Rates",', "", "value"),
        ('"applies_to":{', '"applies_to":[{', ""),
        ('"rate_card":2', '"rate_card":"1"', "rate_card"),
        ('"rate_card":2', '"bill":1', ""),
    ],
)
def test_a_damaged_text_is_refused_with_its_place(was: str, now: str, at: str) -> None:
    text = card_text(card(GOOD))
    assert was in text
    assert card_from_text(text.replace(was, now, 1)) == BillingProblem("damaged", {"at": at})


def test_a_text_from_before_there_was_interest_is_a_card_without() -> None:
    kept = card(GOOD)
    text = card_text(kept).replace('"rate_card":2', '"rate_card":1').replace('"late":null,', "")
    assert '"late"' not in text
    assert card_from_text(text) == kept
    assert card_from_text(text.replace('"rate_card":1', '"rate_card":2')) == BillingProblem(
        "damaged", {"at": "value"}
    )
    late = replace(kept, late=LateTerms(30, Fraction(12, 100)))
    assert card_from_text(card_text(late)) == late
    absurd = replace(kept, late=LateTerms(30, Fraction(3, 4)))
    assert [one.code for one in check_card(absurd)] == ["rate_absurd"]


def test_a_text_of_a_later_program_is_refused() -> None:
    text = card_text(card(GOOD)).replace('"rate_card":2', '"rate_card":9')
    assert card_from_text(text) == BillingProblem("too_new", {"found": "9", "known": "2"})
