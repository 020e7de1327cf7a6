"""A paper of any number of pages: frame, running head, footer, and a cursor that keeps rows whole.

Coordinates are points from the top left corner of the frame; a row that doesn't fit starts a new
page, so no line is ever cut by one. Output is the same bytes for the same input.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from io import BytesIO
from typing import Literal

from reportlab.lib.pagesizes import A4, letter
from reportlab.pdfgen.canvas import Canvas

from printing.typefaces import Face, cap_height, cut_short, fit, font, save, width, wrap

PaperName = Literal["letter", "a4"]
Align = Literal["left", "right", "centre"]
SIZES: dict[PaperName, tuple[float, float]] = {"letter": letter, "a4": A4}
MARGIN = 36.0
FOOTER = 22.0
LEAST_FOOT = 6.5
HAIRLINE = 0.4
LIGHT = 0.94  # a tint of 6 %: it survives the photocopier


@dataclass(frozen=True, slots=True)
class Foot:
    """What the footer says: the words for page n of m, and what the paper was printed from."""

    page_of: Callable[[int, int], str]
    source: str


class Paper:
    """Pages being drawn. `y` is how far down the frame the next row starts."""

    def __init__(self, name: PaperName, title: str, foot: Foot, made: datetime) -> None:
        """An empty paper; nothing is drawn before the first row."""
        self.wide, self.high = SIZES[name]
        self._out = BytesIO()
        self._canvas = Canvas(self._out, pagesize=SIZES[name], invariant=1)
        self._canvas.setTitle(title)
        self._canvas.setProducer("Steelyard")
        self._canvas.setSubject(made.isoformat(timespec="minutes"))
        self._foot = foot
        self._drawn: list[dict[str, object]] = []
        self._head: Callable[[Paper], None] | None = None
        self.page = 1
        self.y = 0.0

    @property
    def room(self) -> float:
        """Width of the frame in points."""
        return self.wide - 2 * MARGIN

    @property
    def depth(self) -> float:
        """Height of the frame above the footer."""
        return self.high - 2 * MARGIN - FOOTER

    def set_head(self, draw: Callable[["Paper"], None]) -> None:
        """What every following page begins with; drawn now on this one."""
        self._head = draw
        draw(self)

    def left(self) -> float:
        """How much of this page is left."""
        return self.depth - self.y

    def need(self, height: float) -> bool:
        """Starts a new page unless so much is left; says whether it did."""
        if height <= self.left() or self.y == 0:
            return False
        self.new_page()
        return True

    def new_page(self) -> None:
        """Ends this page; the next begins with the running head."""
        self._keep_page()
        self.page += 1
        self.y = 0.0
        if self._head is not None:
            self._head(self)

    def skip(self, height: float) -> None:
        """White space between rows."""
        self.y += height

    def text(
        self,
        x: float,
        y: float,
        text: str,
        size: float,
        face: Face = "regular",
        align: Align = "left",
    ) -> None:
        """One line of text with its baseline `y` below the frame's top."""
        if align == "right":
            x -= width(text, face, size)
        elif align == "centre":
            x -= width(text, face, size) / 2
        self._canvas.setFont(font(face), size)
        self._canvas.drawString(MARGIN + x, self.high - MARGIN - y, text)

    def paragraph(
        self, x: float, text: str, size: float, room: float, face: Face = "regular"
    ) -> int:
        """Wrapped text from the cursor down, moving it; returns the number of lines."""
        lines = wrap(text, face, size, room)
        for line in lines:
            self.need(size * 1.3)
            self.text(x, self.y + size, line, size, face)
            self.y += size * 1.3
        return len(lines)

    def line(self, x: float, y: float, to_x: float, to_y: float, thick: float = HAIRLINE) -> None:
        """A straight line."""
        self._canvas.setLineWidth(thick)
        top = self.high - MARGIN
        self._canvas.line(MARGIN + x, top - y, MARGIN + to_x, top - to_y)

    def rule(self, thick: float = HAIRLINE) -> None:
        """A line across the frame at the cursor."""
        self.line(0, self.y, self.room, self.y, thick)

    def box(
        self,
        x: float,
        y: float,
        wide: float,
        high: float,
        thick: float = 0.8,
        *,
        tint: bool = False,
    ) -> None:
        """A box whose top left corner is at x, y; with a light ground where `tint` is asked."""
        self._canvas.setLineWidth(thick)
        self._canvas.setFillGray(LIGHT if tint else 1)
        bottom = self.high - MARGIN - y - high
        self._canvas.rect(MARGIN + x, bottom, wide, high, stroke=int(thick > 0), fill=int(tint))
        self._canvas.setFillGray(0)

    def canvas(self) -> Canvas:
        """The canvas itself, for what draws its own path (barcodes, artwork)."""
        return self._canvas

    def corner(self, x: float, y: float) -> tuple[float, float]:
        """Frame coordinates as the canvas's own, from the bottom left of the page."""
        return MARGIN + x, self.high - MARGIN - y

    def pdf(self) -> bytes:
        """Ends the paper: every page gets its footer, and the bytes are returned."""
        self._keep_page()
        total = len(self._drawn)
        for number, state in enumerate(self._drawn, start=1):
            self._canvas.__dict__.update(state)
            self._draw_foot(number, total)
            self._canvas.showPage()
        save(self._canvas)
        return self._out.getvalue()

    def _keep_page(self) -> None:
        self._drawn.append(dict(self._canvas.__dict__))
        self._canvas._startPage()  # noqa: SLF001  # pyright: ignore

    def _draw_foot(self, number: int, total: int) -> None:
        canvas = self._canvas
        canvas.setLineWidth(HAIRLINE)
        y = MARGIN + 10
        canvas.line(MARGIN, y, self.wide - MARGIN, y)
        text = self._foot.page_of(number, total)
        room = self.room - width(text, "regular", 8) - 12
        size = fit(self._foot.source, "regular", 8, room, LEAST_FOOT)
        canvas.setFont(font("regular"), size)
        canvas.drawString(MARGIN, y - 10, cut_short(self._foot.source, "regular", size, room))
        canvas.setFont(font("regular"), 8)
        canvas.drawString(self.wide - MARGIN - width(text, "regular", 8), y - 10, text)


@dataclass(frozen=True, slots=True)
class Column:
    """One column of a table on paper: its heading, its width in points and how it is set."""

    heading: str
    wide: float
    align: Align = "left"
    face: Face = "regular"


def table(
    paper: Paper,
    columns: Sequence[Column],
    rows: Sequence[Sequence[str]],
    size: float = 10.0,
    sums: Sequence[str] = (),
) -> None:
    """A plain table from the cursor down; headings come again on each page, rows stay whole.

    `sums` is a last row below a rule, in bold.
    """
    _headings(paper, columns, size)
    for row in rows:
        _row(paper, columns, row, size)
        paper.line(0, paper.y, paper.room, paper.y, 0.2)
    if sums:
        paper.rule(0.8)
        _row(paper, [replace(one, face="semibold") for one in columns], sums, size)


def _row(paper: Paper, columns: Sequence[Column], row: Sequence[str], size: float) -> None:
    cells = [
        wrap(text, column.face, size, column.wide - 6)
        for text, column in zip(row, columns, strict=True)
    ]
    high = max(len(cell) for cell in cells) * size * 1.3 + 3
    if paper.need(high):
        _headings(paper, columns, size)
    x = 0.0
    for cell, column in zip(cells, columns, strict=True):
        for number, line in enumerate(cell):
            y = paper.y + size + number * size * 1.3 + 1
            paper.text(_set_at(x, column), y, line, size, column.face, column.align)
        x += column.wide
    paper.y += high


def _headings(paper: Paper, columns: Sequence[Column], size: float) -> None:
    paper.need(size * 4)
    x = 0.0
    for column in columns:
        y = paper.y + size * 0.85 + 1
        paper.text(_set_at(x, column), y, column.heading, size * 0.85, "semibold", column.align)
        x += column.wide
    paper.y += size * 1.4
    paper.rule(0.8)


def _set_at(x: float, column: Column) -> float:
    if column.align == "right":
        return x + column.wide - 3
    return x + column.wide / 2 if column.align == "centre" else x


def capitals(size: float, face: Face) -> float:
    """Height of the capitals of a text in points; 16 pt of the bold stand 11.6 pt, 4.1 mm."""
    return size * cap_height(face)
