"""What the counter promises stays within what extension services tell."""

from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.cutting.forecast import Forecast, LineForecast, Range
from shared.cutting.promise import STYLES, promised
from shared.units import NG_PER_LB

BEEF = catalogue("beef")


def line(number: int, cut: str, low: int, mid: int, high: int) -> LineForecast:
    weights = Range(low * NG_PER_LB, mid * NG_PER_LB, high * NG_PER_LB)
    return LineForecast(number, 1, cut, 1, weights.mid, weights.mid, weights, Range(1, 1, 1))


def test_half_bone_in_of_400_lb() -> None:
    """57.5 to 67.5 % of 400 lb."""
    found = Forecast(
        (line(1, "t_bone_steak", 140, 145, 150), line(2, "ground_beef", 140, 145, 150))
    )
    told = promised(found, 1, 400 * NG_PER_LB, BEEF)
    assert (told.low, told.mid, told.high) == tuple(n * NG_PER_LB for n in (230, 250, 270))


@pytest.mark.parametrize(
    ("cut", "low", "high"), [("t_bone_steak", 60, 70), ("ribeye_steak", 55, 65)]
)
def test_one_style_has_its_own_range(cut: str, low: int, high: int) -> None:
    """Beef 60 to 70 % bone-in, 55 to 65 % boneless."""
    found = Forecast((line(1, cut, 300, 320, 340),))
    told = promised(found, 1, 400 * NG_PER_LB, BEEF)
    assert Fraction(told.low, 4 * NG_PER_LB) == low
    assert Fraction(told.high, 4 * NG_PER_LB) == high


def test_an_order_of_little_is_told_as_forecast() -> None:
    found = Forecast((line(1, "t_bone_steak", 9, 10, 11),))
    assert promised(found, 1, 400 * NG_PER_LB, BEEF) == found.finished(1)


def test_a_species_without_sources_is_told_as_forecast() -> None:
    pork = catalogue("pork")
    found = Forecast((line(1, "bacon", 90, 95, 99),))
    assert promised(found, 1, 100 * NG_PER_LB, pork) == found.finished(1)
    assert promised(Forecast(()), 1, 0, BEEF) == Range(0, 0, 0)
    assert all(one.source and one.low < one.high for two in STYLES.values() for one in two)
