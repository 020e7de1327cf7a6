"""Label stocks: their sizes in whole dots, and which may be used."""

import pytest

from shared.marking.stock import DPIS, STOCKS
from shared.units import LENGTH_UNITS_PER_INCH, length_text


@pytest.mark.parametrize(
    ("code", "size", "dots"),
    [
        ("4x3", ("4\u00a0in", "3\u00a0in"), [(812, 609), (1_200, 900)]),
        ("4x6", ("4\u00a0in", "6\u00a0in"), [(812, 1_218), (1_200, 1_800)]),
        ("4x2", ("4\u00a0in", "2\u00a0in"), [(812, 406), (1_200, 600)]),
        ("2.25x1.25", ("2¼\u00a0in", "1¼\u00a0in"), [(456, 253), (675, 375)]),
    ],
)
def test_sizes_by_name(code: str, size: tuple[str, str], dots: list[tuple[int, int]]) -> None:
    stock = STOCKS[code]
    assert (length_text(stock.width), length_text(stock.height)) == size
    assert [stock.dots(dpi) for dpi in DPIS] == dots


def test_a_sheet_of_ten_lies_within_a_letter_page() -> None:
    """8 1/2 by 11 in; the gap between the columns is as wide as the edge beside them."""
    sheet = STOCKS["sheet4x2"]
    left, top = sheet.corner
    inch = LENGTH_UNITS_PER_INCH
    assert sheet.across * (sheet.width + left) + left <= 17 * inch // 2
    assert sheet.down * sheet.height + 2 * top <= 11 * inch
    assert [one.code for one in STOCKS.values() if one.small] == ["2.25x1.25"]
