"""A roll of labels or tags being drawn: one page each, measured in points from the top left.

What is the same on many labels is drawn once and used again, so that a thousand are quick.
"""

from collections.abc import Callable, Sequence
from io import BytesIO

from reportlab.lib.pagesizes import letter
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from printing.barcode import Bars, draw_bars
from printing.typefaces import Face, fit, font, save, size_for_capitals, width, wrap
from shared.marking.stock import Stock
from shared.units import LENGTH_UNITS_PER_INCH

EDGE = 7.0
MARK_CAPITALS = 27.3  # points; 3/8 in is 27 (9 CFR 316.16 and 317.16)
MARK_FACE: Face = "condensed"
MARK_HEIGHT = MARK_CAPITALS + 4.0
LEAST_SCALE = 0.45  # 148 points of 315: on 2 1/4 in stock


class Roll:
    """Labels of one stock; texts have their baseline `y` points below the top edge."""

    def __init__(self, stock: Stock, title: str, artwork: bytes = b"") -> None:
        """An empty roll; `artwork` is the plant's own legend as PNG, where it is placed."""
        self.wide = stock.width * 72 / LENGTH_UNITS_PER_INCH
        self.high = stock.height * 72 / LENGTH_UNITS_PER_INCH
        self._stock = stock
        self._place = 0
        self._out = BytesIO()
        size = letter if stock.media == "sheet" else (self.wide, self.high)
        self._canvas = Canvas(self._out, pagesize=size, invariant=1, pageCompression=1)
        self._canvas.setTitle(title)
        self._canvas.setProducer("Steelyard")
        self._forms: set[str] = set()
        self._artwork = ImageReader(BytesIO(artwork)) if artwork else None
        self._page_high = size[1]
        self._origin = (0.0, 0.0)
        self._begin()

    def _begin(self) -> None:
        """On a sheet the next label's place is where it is drawn from."""
        stock = self._stock
        if stock.media != "sheet":
            return
        at, down = self._place % stock.across, self._place // stock.across
        left, top = (one * 72 / LENGTH_UNITS_PER_INCH for one in stock.corner)
        self._canvas.saveState()
        self._origin = (
            left + at * (self.wide + left),
            self._page_high - top - (down + 1) * self.high,
        )
        self._canvas.translate(*self._origin)

    @property
    def room(self) -> float:
        """Width between the edges."""
        return self.wide - 2 * EDGE

    def text(self, x: float, y: float, text: str, size: float, face: Face = "regular") -> None:
        """A line of text from x on."""
        self._canvas.setFont(font(face), size)
        self._canvas.drawString(x, self.high - y, text)

    def text_to(self, x: float, y: float, text: str, size: float, face: Face = "regular") -> None:
        """A line of text that ends at x."""
        self.text(x - width(text, face, size), y, text, size, face)

    def lines(self, y: float, lines: Sequence[str], size: float, face: Face) -> float:
        """Lines of text below y, from the left edge; returns where they end."""
        for line in lines:
            y += size * 1.15
            self.text(EDGE, y - size * 0.15, line, size, face)
        return y

    def rule(self, y: float) -> None:
        """A line across."""
        self._canvas.setLineWidth(0.8)
        self._canvas.line(EDGE, self.high - y, self.wide - EDGE, self.high - y)

    def frame(self, x: float, y: float, wide: float, high: float, thick: float) -> None:
        """A box whose top left corner is at x, y."""
        self._canvas.setLineWidth(thick)
        self._canvas.rect(x, self.high - y - high, wide, high, stroke=1, fill=0)

    def stroke(self, x: float, y: float, to_x: float, to_y: float) -> None:
        """A line from one point to another."""
        self._canvas.setLineWidth(1.1)
        self._canvas.line(x, self.high - y, to_x, self.high - to_y)

    def legend(self, x: float, y: float, side: float) -> None:
        """The plant's artwork in a square whose top left corner is at x, y; nothing without one."""
        if self._artwork is None:
            return
        self._canvas.drawImage(  # pyright: ignore[reportUnknownMemberType]
            self._artwork,
            x,
            self.high - y - side,
            side,
            side,
            preserveAspectRatio=True,
            anchor="c",
        )

    def bars(self, x: float, y: float, symbol: Bars, dots: int, dpi: int, height: float) -> None:
        """A symbol whose lower left corner is at x, y."""
        at = (x, self.high - y)
        draw_bars(self._canvas, symbol, at, dots, dpi, height, self._origin)

    def once(self, name: str, draw: Callable[[], None]) -> None:
        """What many labels share: drawn the first time, then used again by its name."""
        if name not in self._forms:
            self._forms.add(name)
            self._canvas.beginForm(name, 0, 0, self.wide, self.high)  # pyright: ignore[reportUnknownMemberType]
            draw()
            self._canvas.endForm()  # pyright: ignore[reportUnknownMemberType]
        self._canvas.doForm(name)  # pyright: ignore[reportUnknownMemberType]

    def mark(self, text: str) -> None:
        """NOT FOR SALE on one line across the top, capitals of over 3/8 in.

        The condensed letters are drawn narrower still where the stock asks it, never lower:
        to 0.87 of their width on 4 in, to 0.47 on 2 1/4 in. Raises ValueError below LEAST_SCALE.
        """
        size = size_for_capitals(MARK_CAPITALS, MARK_FACE)
        natural = width(text, MARK_FACE, size)
        scale = min(1.0, self.room / natural)
        if scale < LEAST_SCALE:
            raise ValueError(f"{text!r} is too wide for this stock")
        canvas = self._canvas
        canvas.saveState()
        canvas.translate((self.wide - natural * scale) / 2, self.high - EDGE - MARK_CAPITALS)
        canvas.scale(scale, 1)
        canvas.setFont(font(MARK_FACE), size)
        canvas.drawString(0, 0, text)
        canvas.restoreState()

    def end_label(self) -> None:
        """This label is whole; the next begins, on a new page where this one is full."""
        stock = self._stock
        if stock.media == "sheet":
            self._canvas.restoreState()
            self._place = (self._place + 1) % (stock.across * stock.down)
        if self._place == 0:
            self._canvas.showPage()
        self._begin()

    def pdf(self) -> bytes:
        """All labels as PDF."""
        if self._stock.media == "sheet":
            self._canvas.restoreState()
        save(self._canvas)
        return self._out.getvalue()


def fitted(
    text: str, face: Face, sizes: tuple[float, float], room: float, most_lines: int
) -> tuple[list[str], float] | None:
    """Lines and size of a text: shrunk to the least size first, then wrapped; None if too long."""
    size, least = sizes
    if width(text, face, least) <= room:
        return [text], fit(text, face, size, room, least)
    lines = wrap(text, face, least, room)
    return (lines, least) if len(lines) <= most_lines else None
