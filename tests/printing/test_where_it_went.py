"""Where did the rest go: columns that add up as printed, in both languages, for long names."""

import re
from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from printing.where_it_went import hundredths, where_it_went
from printing.words import Words
from shared.cutting.forecast import forecast
from shared.cutting.from_live import Journey, journeys
from shared.cutting.where_it_went import accounts
from shared.shop.details import ShopDetails
from shared.units import NG_PER_LB, Weight
from tests.printing.pages import MADE, NAME, SHOP, SHOP_A4, SPANISH, WORDS, text
from tests.shared.cutting.half_hog import PORK, planned

NONE_MADE: Mapping[int, int] = {}
MINUS = "−"


def ways(made: Mapping[int, int] = NONE_MADE) -> tuple[Journey, ...]:
    question, answer = planned()
    carcass = replace(question.carcasses[0], live=Weight(275, "lb"))
    first, second = question.shares
    shares = (replace(first, owner=NAME), replace(second, owner="Ada Brandt"))
    question = replace(question, carcasses=(carcass,), shares=shares)
    found = accounts(question, answer, forecast(question, answer, PORK), PORK)
    return journeys(question, found, PORK, made)


def page(found: tuple[Journey, ...], words: Words = WORDS) -> str:
    pdf = where_it_went(
        found, species="pork", lot_number=12, tags=("114",), shop=SHOP, made=MADE, words=words
    )
    return text(pdf)


@given(st.lists(st.integers(-(10**12), 10**14), min_size=1, max_size=12))
def test_printed_hundredths_add_up(parts: list[int]) -> None:
    whole, shown = hundredths(sum(parts), parts)
    assert sum(shown) == whole
    assert all(
        abs(one - Decimal(part) * 100 / NG_PER_LB) <= 1
        for one, part in zip(shown, parts, strict=True)
    )


def test_a_pound_in_three_is_34_33_33() -> None:
    third = NG_PER_LB // 3
    assert hundredths(NG_PER_LB, (third + 1, third, third)) == (100, (34, 33, 33))


def test_each_column_of_the_page_adds_up() -> None:
    """Live to hot, hot to chilled, chilled to packages, read off the paper."""
    shown = re.findall(rf"({MINUS}?\d+\.\d\d) lb", page(ways()))
    figures = [Decimal(one.replace(MINUS, "-")) for one in shown]
    for column in (figures[0::2], figures[1::2]):
        live, killed, hot, cooled, chilled, *rest = column
        assert live + killed == hot
        assert hot + cooled == chilled
        assert chilled + sum(rest[:-1]) == rest[-1]


def test_what_was_trimmed_off_before_it_was_chilled_has_its_row() -> None:
    """2.50 lb of the first owner: hot, less that and what dried off, is chilled."""
    found = ways()
    pdf = where_it_went(
        found,
        species="pork",
        lot_number=12,
        tags=("114",),
        shop=SHOP,
        made=MADE,
        words=WORDS,
        taken_off={1: NG_PER_LB * 5 // 2},
    )
    shown = [
        Decimal(one.replace(MINUS, "-"))
        for one in re.findall(rf"({MINUS}?\d+\.\d\d) lb", text(pdf))
    ]
    _, _, hot, taken, dried, chilled = shown[0:12:2]
    assert taken == Decimal("-2.50")
    assert hot + taken + dried == chilled
    assert shown[7] == 0
    assert "Trimmed off before the chilled weight" in text(pdf)
    assert "Trimmed off before" not in page(found)


def test_every_row_has_words_in_both_languages() -> None:
    found = ways({1: 60 * NG_PER_LB})
    for words in (WORDS, SPANISH):
        told = page(found, words)
        assert "went." not in told
        assert "60.00 lb" in told
    assert "Adónde se fue el resto" in page(found, SPANISH)
    assert "Other than planned" in page(found)


def test_an_estimate_says_so_and_what_is_made_does_not() -> None:
    assert "An estimate" in page(ways())
    made = ways({1: 60 * NG_PER_LB, 2: 61 * NG_PER_LB})
    assert "An estimate" not in page(made)
    assert not any(one.estimated for one in made)


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4])
def test_one_page_for_two_owners(shop: ShopDetails) -> None:
    pdf = where_it_went(
        ways(),
        species="pork",
        lot_number=0,
        tags=(),
        shop=shop,
        made=MADE,
        words=WORDS,
    )
    assert "Page 1 of 1" in text(pdf)
