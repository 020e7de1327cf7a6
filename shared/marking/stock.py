"""Label stocks: sizes, and what each may be used for. Lengths are in 1/203,200 in."""

from dataclasses import dataclass
from typing import Final, Literal

from shared.marking.problems import MarkingProblem
from shared.units import LENGTH_UNITS_PER_INCH

DPIS: Final = (203, 300)
"""Resolutions of the label printers, dots to the inch."""


@dataclass(frozen=True, slots=True)
class Stock:
    """One kind of label.

    `custom_alone`: it holds everything a custom-exempt package must say; where not, it may only
    stand beside a mark that is on the bag already. `available`: papers draw on it today.
    """

    code: str
    width: int
    height: int
    media: Literal["roll", "sheet"] = "roll"
    custom_alone: bool = True
    available: bool = False

    def dots(self, dpi: int) -> tuple[int, int]:
        """Width and height in whole dots that fit: 4 × 3 in at 203 dpi is 812 × 609."""
        return (
            self.width * dpi // LENGTH_UNITS_PER_INCH,
            self.height * dpi // LENGTH_UNITS_PER_INCH,
        )


def _inches(code: str, width: str, height: str, *, alone: bool = True, now: bool = False) -> Stock:
    """A stock from quarters of an inch written as "2 1/4"."""
    return Stock(code, _quarters(width), _quarters(height), custom_alone=alone, available=now)


def _quarters(text: str) -> int:
    whole, _, part = text.partition(" ")
    quarters = int(part[0]) * 4 // int(part[2]) if part else 0
    return (int(whole) * 4 + quarters) * LENGTH_UNITS_PER_INCH // 4


STOCKS: Final[dict[str, Stock]] = {
    stock.code: stock
    for stock in (
        _inches("4x3", "4", "3", now=True),
        _inches("4x6", "4", "6"),
        _inches("4x2", "4", "2"),
        _inches("2.25x1.25", "2 1/4", "1 1/4", alone=False),
    )
}


def stock_of(code: str) -> Stock | MarkingProblem:
    """The stock of that code; "unknown_stock", or "not_yet" for one papers can't draw on yet."""
    found = STOCKS.get(code)
    if found is None:
        return MarkingProblem("unknown_stock", {"stock": code})
    return found if found.available else MarkingProblem("not_yet", {"stock": code})
