"""Numbers as people type them, and the unit words behind them."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.reading import MOST_CHARACTERS, Unread, places_of, read_number, read_quantities


@pytest.mark.parametrize(
    ("text", "value", "places"),
    [
        ("1,250.50", "1250.5", 2),
        ("1,250", "1250", 0),
        ("12,50", "12.5", 2),
        ("0,454", "0.454", 3),
        ("1250,125", "1250.125", 3),
        ("3 1/4", "3.25", 2),
        ("3¼", "3.25", 2),
        ("⅓", "1/3", -1),
        ("3\u2009⁄\u20094", "0.75", 2),
        ("007", "7", 0),
    ],
)
def test_numbers_are_read_with_the_decimals_written(text: str, value: str, places: int) -> None:
    found = read_number(text)
    assert not isinstance(found, Unread)
    assert (found.value, found.places) == (Fraction(value), places)


def test_each_number_has_the_word_behind_it() -> None:
    found = read_quantities("1 LB. 4½ oz")
    assert not isinstance(found, Unread)
    assert [(one.value, one.word) for one in found] == [(1, "lb"), (Fraction(9, 2), "oz")]


def test_a_bare_number_takes_no_word() -> None:
    assert read_number("3 lb") == Unread("unknown_unit", "3 lb", ("3",))


def test_a_text_too_long_to_be_a_number_is_not_looked_at() -> None:
    assert read_number("1" * MOST_CHARACTERS) != read_number("1" * (MOST_CHARACTERS + 1))
    assert read_number("1" * 61) == Unread("not_a_number", "1" * 61)


@pytest.mark.parametrize("text", ["٣", "３", "³", "Ⅳ", "1e5", "0x1f", "1_000", "1 / / 2", "nan"])
def test_only_plain_figures_are_figures(text: str) -> None:
    assert isinstance(read_number(text), Unread)


@given(st.integers(0, 10**12), st.integers(0, 6))
def test_every_decimal_reads_back(count: int, places: int) -> None:
    whole, part = divmod(count, 10**places)
    text = f"{whole:,}.{part:0{places}d}" if places else f"{whole:,}"
    found = read_number(text)
    assert not isinstance(found, Unread)
    assert (found.value, found.places) == (Fraction(count, 10**places), places)


@given(
    st.integers(0, 999),
    st.integers(1, 500).flatmap(lambda below: st.tuples(st.integers(0, below - 1), st.just(below))),
)
def test_every_mixed_number_reads_back(whole: int, part: tuple[int, int]) -> None:
    above, below = part
    for joint in (" ", "-", "\u00a0"):
        found = read_number(f"{whole}{joint}{above}/{below}")
        assert not isinstance(found, Unread)
        assert found.value == whole + Fraction(above, below)


@given(st.fractions(max_denominator=5_000))
def test_places_are_the_fewest_that_write_the_value(value: Fraction) -> None:
    places = places_of(value)
    if places >= 0:
        assert (value * 10**places).denominator == 1
        assert places == 0 or (value * 10 ** (places - 1)).denominator != 1
    else:
        assert (value * 10**40).denominator != 1
