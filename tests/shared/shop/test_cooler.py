"""Days hanging, shrink, and temperatures against the shop's own limits."""

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.shop.cooler import (
    Hanging,
    RoomLimits,
    Temperature,
    days_hanging,
    due_on,
    due_state,
    expected_chilled,
    judged,
    read_temperature,
)
from shared.units import NG_PER_LB

SIDE = Hanging(1, 1, 7, "114", "beef", "hanging", "rail 2", "Anna", date(2026, 3, 9), None, None)
HOUSE = (10, 21)


# 40 °F is 4.4 °C and 0 °C is 32 °F (NIST SP 811: t/°F = 9/5 t/°C + 32).
@pytest.mark.parametrize(
    ("celsius", "fahrenheit"),
    [(0, 320), (1000, 2120), (-400, -400), (50, 410), (-178, Fraction(-4, 10))],
)
def test_celsius_in_fahrenheit(celsius: int, fahrenheit: Fraction) -> None:
    assert Temperature(celsius, "C").tenths_f == fahrenheit


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("38", Temperature(380, "F")),
        (" 38.5 f", Temperature(385, "F")),
        ("3,5 C", Temperature(35, "C")),
        ("-10", Temperature(-100, "F")),
        ("\u221210°C", Temperature(-100, "C")),
        ("cold", None),
        ("38.55", None),
        ("", None),
        ("300", None),
    ],
)
def test_what_is_typed_is_read(text: str, read: Temperature | None) -> None:
    assert read_temperature(text, "F") == read


def test_what_is_told_reads_back() -> None:
    for tenths in (-105, 0, 385):
        told = Temperature(tenths, "C")
        assert read_temperature(told.text().replace("\u00a0", " "), "F") == told


def test_limits_are_the_shop_s_own_and_count_as_within() -> None:
    limits = RoomLimits("cooler", Temperature(280, "F"), Temperature(400, "F"))
    found = [judged(Temperature(one, "F"), limits) for one in (279, 280, 400, 401)]
    assert found == ["below", "within", "within", "above"]
    assert judged(Temperature(40, "C"), limits) == "within"
    assert judged(Temperature(380, "F"), None) == "no_limits"
    assert judged(Temperature(380, "F"), RoomLimits("x", None, None)) == "no_limits"


@pytest.mark.parametrize(
    ("wish", "after", "state"),
    [
        (None, 9, "hangs"),
        (None, 10, "due"),
        (None, 21, "due"),
        (None, 22, "overdue"),
        (14, 13, "hangs"),
        (14, 16, "due"),
        (14, 17, "overdue"),
        (0, 0, "due"),
    ],
)
def test_due_by_wish_or_house(wish: int | None, after: int, state: str) -> None:
    one = replace(SIDE, wish=wish)
    today = SIDE.hung_on + timedelta(days=after)
    assert due_state(one, HOUSE, today) == state
    assert days_hanging(one, today) == after


def test_the_day_it_is_due() -> None:
    assert due_on(SIDE, HOUSE) == date(2026, 3, 19)
    assert due_on(replace(SIDE, wish=14), HOUSE) == date(2026, 3, 23)


def test_shrink_lies_within_what_is_published() -> None:
    """Beef 2 to 5 %, 1 to 2 % in 48 h; goat 3 to 10 %, mean 5; lamb 1.4 to 7.4, mean 3.8.

    Univ. of Tennessee PB1822 and goat sheet (Loveday); Purdue (Lemenager); Univ. of Maryland
    WMREC 2019.
    """
    assert expected_chilled(750 * NG_PER_LB, Fraction(2, 100)) == 735 * NG_PER_LB
    for species, least, most in (("beef", 1, 5), ("goat", 3, 10), ("lamb", 1, 8)):
        shrink = catalogue(species).ranges.shrink * 100
        assert least <= shrink <= most, species
