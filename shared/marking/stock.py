"""Label stocks: sizes, and what each may be used for. Lengths are in 1/203,200 in."""

from dataclasses import dataclass
from typing import Final, Literal

from shared.units import LENGTH_UNITS_PER_INCH

DPIS: Final = (203, 300)
"""Resolutions of the label printers, dots to the inch."""


@dataclass(frozen=True, slots=True)
class Stock:
    """One kind of label.

    `small`: it holds no more than the mark, name, owner, net weight and a code: enough for plain
    custom-exempt goods, for nothing cured or seasoned, and for no inspected package. `across`:
    so many labels stand side by side on a sheet, `down` below one another, from `corner` on.
    """

    code: str
    width: int
    height: int
    media: Literal["roll", "sheet"] = "roll"
    small: bool = False
    across: int = 1
    down: int = 1
    corner: tuple[int, int] = (0, 0)

    def dots(self, dpi: int) -> tuple[int, int]:
        """Width and height in whole dots that fit: 4 × 3 in at 203 dpi is 812 × 609."""
        return (
            self.width * dpi // LENGTH_UNITS_PER_INCH,
            self.height * dpi // LENGTH_UNITS_PER_INCH,
        )


def _inches(code: str, width: str, height: str, *, small: bool = False) -> Stock:
    """A stock from quarters of an inch written as "2 1/4"."""
    return Stock(code, _quarters(width), _quarters(height), small=small)


def _quarters(text: str) -> int:
    whole, _, part = text.partition(" ")
    quarters = int(part[0]) * 4 // int(part[2]) if part else 0
    return (int(whole) * 4 + quarters) * LENGTH_UNITS_PER_INCH // 4


# Ten labels of 4 by 2 in on a letter sheet: half an inch above, 5/32 in at the side
# (common practice, no source).
SHEET_CORNER = (5 * LENGTH_UNITS_PER_INCH // 32, LENGTH_UNITS_PER_INCH // 2)
STOCKS: Final[dict[str, Stock]] = {
    stock.code: stock
    for stock in (
        _inches("4x3", "4", "3"),
        _inches("4x6", "4", "6"),
        _inches("4x2", "4", "2"),
        _inches("2.25x1.25", "2 1/4", "1 1/4", small=True),
        Stock(
            "sheet4x2",
            _quarters("4"),
            _quarters("2"),
            media="sheet",
            across=2,
            down=5,
            corner=SHEET_CORNER,
        ),
    )
}
