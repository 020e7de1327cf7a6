"""Barcodes: encoded by zint, drawn as one path whose modules are whole dots of the printer.

Many small rectangles thicken when a PDF is rasterised at 203 dpi, and a scanner then fails; one
filled path of the same bars reads at every resolution.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

import zint
from reportlab.pdfgen.canvas import Canvas

Kind = Literal["code128", "gs1_128", "gs1_datamatrix", "datamatrix"]

_SYMBOLS = {
    "code128": zint.Symbology.CODE128,
    "gs1_128": zint.Symbology.GS1_128,
    "gs1_datamatrix": zint.Symbology.DATAMATRIX,
    "datamatrix": zint.Symbology.DATAMATRIX,
}
POINTS_PER_INCH = 72
QUIET_FLAT = 10  # modules left white beside the bars (ISO/IEC 15417)
QUIET_MATRIX = 2  # a Data Matrix needs one (ISO/IEC 16022)


@dataclass(frozen=True, slots=True)
class Bars:
    """An encoded symbol: rows of (start, length) runs of dark modules, and its size in modules."""

    rows: tuple[tuple[tuple[int, int], ...], ...]
    wide: int
    high: int

    @property
    def flat(self) -> bool:
        """Whether it is a line of bars (Code 128) rather than a matrix."""
        return self.high == 1


@lru_cache(maxsize=256)
def bars(kind: Kind, content: str) -> Bars:
    """The symbol for a content; GS1 contents are written with brackets: "[01]…[3202]…".

    Raises ValueError, naming what zint refused, for content the symbol can't hold.
    """
    symbol = zint.Symbol()
    symbol.symbology = _SYMBOLS[kind]
    if kind.startswith("gs1"):
        symbol.input_mode = zint.InputMode.GS1
    try:
        symbol.encode(content)
    except RuntimeError as refused:
        raise ValueError(f"{kind} can't hold {content!r}: {refused}") from refused
    modules = symbol.encoded_data
    high, wide = symbol.rows, symbol.width
    packed = range((wide + 7) // 8)
    rows = [_runs([modules[row, place] for place in packed], wide) for row in range(high)]
    if not kind.endswith("datamatrix"):
        return Bars((rows[0],), wide, 1)
    return Bars(tuple(rows), wide, high)


def module_points(dots: int, dpi: int) -> float:
    """Width in points of a module of so many printer dots: 3 dots at 203 dpi are 1.064 pt."""
    return dots * POINTS_PER_INCH / dpi


def dots_that_fit(symbol: Bars, room: float, dpi: int, most: int = 4) -> int:
    """The widest module, in whole dots, whose symbol with its quiet zones fits; 0 if none does."""
    quiet = 2 * (QUIET_FLAT if symbol.flat else QUIET_MATRIX)
    for dots in range(most, 0, -1):
        if (symbol.wide + quiet) * module_points(dots, dpi) <= room:
            return dots
    return 0


def draw_bars(
    canvas: Canvas,
    symbol: Bars,
    at: tuple[float, float],
    dots: int,
    dpi: int,
    height: float = 0.0,
    origin: tuple[float, float] = (0.0, 0.0),
) -> tuple[float, float]:
    """Draws a symbol as one filled path; its lower left corner lies at `at` or a dot beside it.

    `height` is that of flat bars; a matrix has square modules. `origin` is where on the page the
    canvas counts from, so that a label of a sheet lies on the page's dots too. Returns width and
    height in points, without the quiet zones, which the caller leaves white.
    """
    module = module_points(dots, dpi)
    dot = module_points(1, dpi)
    x, y = (round((place + off) / dot) * dot - off for place, off in zip(at, origin, strict=True))
    step = round(height / dot) * dot if symbol.flat else module
    path = canvas.beginPath()
    for number, row in enumerate(symbol.rows):
        bottom = y + (symbol.high - 1 - number) * step
        for start, length in row:
            path.rect(x + start * module, bottom, length * module, step)  # pyright: ignore[reportUnknownMemberType]
    canvas.setFillGray(0)
    canvas.drawPath(path, stroke=0, fill=1)  # pyright: ignore[reportUnknownMemberType]
    return symbol.wide * module, symbol.high * step


def _runs(bits: Sequence[int], wide: int) -> tuple[tuple[int, int], ...]:
    """Runs of dark modules; the lowest bit of a byte is its leftmost module."""
    runs: list[tuple[int, int]] = []
    start = -1
    for place in range(wide + 1):
        dark = place < wide and bits[place // 8] >> (place % 8) & 1
        if dark and start < 0:
            start = place
        elif not dark and start >= 0:
            runs.append((start, place - start))
            start = -1
    return tuple(runs)
