"""Roasts and short ribs of a stated side against a sample plant sheet (weak), by pounds.

The sheet is for a 400-lb half of beef; one more or less where it says eight or fewer.
"""

from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from tests.shared.carcass.cut_out import CutOut, show
from tests.shared.carcass.cut_out import Line as Row

BEEF = catalogue("beef")


@pytest.mark.parametrize(
    ("cuts", "each", "published"),
    [
        ((("chuck_roll", ""),), "3", 6),
        ((("rump_roast", ""),), "3", 2),
    ],
)
def test_pieces_of_a_400_lb_half(
    cuts: tuple[tuple[str, str], ...], each: str, published: int
) -> None:
    side = CutOut(BEEF, Fraction(800))
    pounds = sum((side.take(cut, way=way) for cut, way in cuts), Fraction(0)) / 2
    found = round(pounds / Fraction(each))
    show(f"{cuts[0][0]} of {each} lb", [Row("pieces", Fraction(published), Fraction(found))])
    assert abs(found - published) <= 1


def test_short_ribs_of_a_400_lb_half_lie_between_two_readings() -> None:
    """Six of 1.5 lb, 9 lb; the sheet doesn't say from where: without the plate 6, with it 13."""
    side = CutOut(BEEF, Fraction(800))
    near, plate = (
        sum((side.take("short_ribs", way=way) for way in ways), Fraction(0)) / 2
        for ways in (("rib", "cross_rib"), ("plate",))
    )
    assert near < 9 < near + plate
