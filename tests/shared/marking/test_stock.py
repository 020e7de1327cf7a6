"""Label stocks: their sizes in whole dots, and which may be used."""

import pytest

from shared.marking.problems import MarkingProblem
from shared.marking.stock import DPIS, STOCKS, stock_of
from shared.units import length_text


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


def test_only_what_papers_draw_on_is_offered() -> None:
    assert stock_of("4x3") == STOCKS["4x3"]
    assert stock_of("4x6") == MarkingProblem("not_yet", {"stock": "4x6"})
    assert stock_of("9x9") == MarkingProblem("unknown_stock", {"stock": "9x9"})


def test_the_smallest_stock_cant_mark_a_custom_package_alone() -> None:
    assert [code for code, stock in STOCKS.items() if not stock.custom_alone] == ["2.25x1.25"]
