"""Money: published amounts to the cent, splits that add up, and what people type."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.money import (
    amount_of,
    money_text,
    rate_text,
    read_money,
    read_rate,
    round_half_up,
    split_cents,
)
from shared.reading import Unread

CENTS = st.integers(-10_000_000, 10_000_000)
WEIGHTS = st.lists(
    st.one_of(st.integers(0, 10_000), st.fractions(0, 5_000, max_denominator=1_000)),
    min_size=1,
    max_size=8,
).filter(any)

# Michigan State Univ. Extension, grain-fed freezer beef pricing worksheet, 1 April 2024;
# boxhfarm.ca price sheet 2021 (687.5 lb hanging at $4.65); soggybottom.org, cbarc.store,
# lafountainsbeef.com quarters and halves, recomputed where the page had truncated.
PUBLISHED = [
    ("300", "819", 245_700),
    ("70", "819", 57_330),
    ("465", "687.5", 319_688),
    ("150", "325", 48_750),
    ("345", "187.5", 64_688),
    ("55", "145.5", 8_003),
]


@pytest.mark.parametrize(("rate", "pounds", "cents"), PUBLISHED)
def test_published_amounts_come_out_to_the_cent(rate: str, pounds: str, cents: int) -> None:
    assert amount_of(Fraction(rate), Fraction(pounds)) == cents


def test_half_a_cent_goes_up_as_published() -> None:
    """The cut-and-wrap of a quarter beef printed as $96.28 is 0.55 × 145.5 + 65 ÷ 4 = 96.275."""
    assert round_half_up(55 * Fraction("145.5") + Fraction(6_500, 4)) == 9_628


def test_two_halves_of_the_published_beef_add_to_it() -> None:
    assert split_cents(319_688, (1, 1)) == (159_844, 159_844)


@pytest.mark.parametrize(
    ("exact", "rounded"),
    [("0", 0), ("0.49", 0), ("0.5", 1), ("1.5", 2), ("2.5", 3), ("-0.5", -1), ("-2.49", -2)],
)
def test_halves_round_away_from_nothing(exact: str, rounded: int) -> None:
    assert round_half_up(Fraction(exact)) == rounded


@given(st.fractions(-10_000, 10_000, max_denominator=1_000))
def test_rounding_is_never_off_by_more_than_half_and_mirrors(exact: Fraction) -> None:
    assert abs(round_half_up(exact) - exact) <= Fraction(1, 2)
    assert round_half_up(-exact) == -round_half_up(exact)


def test_leftover_cents_go_to_the_largest_remainders_then_to_the_first() -> None:
    assert split_cents(100, (1, 1, 1)) == (34, 33, 33)
    assert split_cents(101, (1, 1, 1)) == (34, 34, 33)
    assert split_cents(10, (1, 2)) == (3, 7)
    assert split_cents(100, (0, 3)) == (0, 100)
    assert split_cents(-100, (1, 1, 1)) == (-34, -33, -33)
    # 5 cents over 6 : 3 : 1 are exactly 3, 1.5, 0.5: a tie, and the lower index gets the cent.
    assert split_cents(5, (6, 3, 1)) == (3, 2, 0)


@given(CENTS, WEIGHTS)
def test_a_split_adds_up_and_each_part_is_within_a_cent(
    total: int, weights: list[Fraction | int]
) -> None:
    parts = split_cents(total, weights)
    whole = sum(weights, Fraction(0))
    assert sum(parts) == total
    for part, weight in zip(parts, weights, strict=True):
        assert abs(part - Fraction(total) * weight / whole) < 1
    assert split_cents(-total, weights) == tuple(-part for part in parts)


@given(st.integers(0, 10_000_000), WEIGHTS)
def test_who_weighs_more_never_pays_less(total: int, weights: list[Fraction | int]) -> None:
    paid = sorted(zip(weights, split_cents(total, weights), strict=True))
    assert [part for _, part in paid] == sorted(part for _, part in paid)


@pytest.mark.parametrize("weights", [(), (0, 0), (2, -1)])
def test_a_split_over_nothing_is_a_bug(weights: tuple[int, ...]) -> None:
    with pytest.raises(ValueError, match="weights"):
        split_cents(100, weights)


@pytest.mark.parametrize(
    ("text", "cents"),
    [
        ("$1,250.00", 125_000),
        ("1250", 125_000),
        ("12.5", 1_250),
        (" $ .07 ", 7),
        ("0", 0),
        ("5.", 500),
        ("12.340", 1_234),
        ("9,999,999.99", 999_999_999),
    ],
)
def test_money_is_read(text: str, cents: int) -> None:
    assert read_money(text) == cents


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "empty"),
        (" ", "empty"),
        ("$", "empty"),
        ("-5", "negative"),
        ("−$5.00", "negative"),
        ("$-5", "negative"),
        ("--5", "not_a_number"),
        ("12.345", "sub_cent"),
        ("10000000", "too_large"),
        ("12,5", "not_a_number"),
        ("12 1/2", "not_a_number"),
        ("½", "not_a_number"),
        ("1.2.3", "not_a_number"),
        ("1,25", "not_a_number"),
        ("five", "not_a_number"),
        ("5 lb", "unknown_unit"),
        ("5 6", "not_a_number"),
        ("9" * 5_000, "not_a_number"),
    ],
)
def test_what_is_no_money_is_refused_with_a_reason(text: str, code: str) -> None:
    found = read_money(text)
    assert isinstance(found, Unread)
    assert (found.code, found.text) == (code, text)


@pytest.mark.parametrize(
    ("text", "rate"),
    [("$0.715", "71.5"), ("0.70", "70"), ("71.5¢", "71.5"), ("4", "400"), ("0.000001", "0.0001")],
)
def test_rates_may_hold_fractions_of_a_cent(text: str, rate: str) -> None:
    assert read_rate(text) == Fraction(rate)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("0.0000001", "not_exact"),
        ("-1", "negative"),
        ("", "empty"),
        ("a", "not_a_number"),
        ("$5¢", "unknown_unit"),
        ("10000000", "too_large"),
    ],
)
def test_what_is_no_rate_is_refused_with_a_reason(text: str, code: str) -> None:
    found = read_rate(text)
    assert isinstance(found, Unread)
    assert (found.code, found.text) == (code, text)


@pytest.mark.parametrize(
    ("cents", "text"),
    [(125_000, "$1,250.00"), (-500, "−$5.00"), (7, "$0.07"), (0, "$0.00"), (-1, "−$0.01")],
)
def test_money_is_shown(cents: int, text: str) -> None:
    assert money_text(cents) == text


@given(st.integers(0, 999_999_999))
def test_money_shown_reads_back(cents: int) -> None:
    assert read_money(money_text(cents)) == cents


@pytest.mark.parametrize(
    ("rate", "text"),
    [("71.5", "$0.715"), ("70", "$0.70"), ("123450", "$1,234.50"), ("-0.5", "−$0.005")],
)
def test_rates_are_shown_with_all_their_decimals(rate: str, text: str) -> None:
    assert rate_text(Fraction(rate)) == text


@given(st.integers(0, 10**9).map(lambda n: Fraction(n, 10_000)))
def test_a_rate_shown_reads_back(rate: Fraction) -> None:
    assert read_rate(rate_text(rate)) == rate


def test_a_rate_without_a_last_decimal_cannot_be_shown() -> None:
    with pytest.raises(ValueError, match="last decimal"):
        rate_text(Fraction(100, 3))


@given(st.text(max_size=70))
def test_no_text_makes_the_readers_fail(text: str) -> None:
    money, rate = read_money(text), read_rate(text)
    assert isinstance(money, Unread) or 0 <= money < 1_000_000_000
    assert isinstance(rate, Unread) or rate >= 0
