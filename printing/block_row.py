"""One row of the block sheet: tick box, count, size, what it is, whose, and its note in full.

Letters are sized by how high their capitals stand: count and size 8 mm, the main line 4 mm, so
that the sheet is read at arm's length and a metre away. What differs from the house's usual is
bold in a box.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from printing.page import HAIRLINE, Paper
from printing.typefaces import Face, fit, size_for_capitals, width, wrap

MM = 72 / 25.4
BIG = size_for_capitals(8.05 * MM, "bold")
MAIN = size_for_capitals(4.05 * MM, "bold")
UNIT = 12.0
DETAIL = 10.5
MOST_RIGHT = 126.0
LEAST_OWNER = 9.0

GROUP = 9.5
TICK = 18.0
GAP = 8.0
LEAD = 1.22
LONGEST_WHOLE = 260.0


@dataclass(frozen=True, slots=True)
class Row:
    """What one row says; `size` is a thickness, a weight, ribs or a lean, with its unit.

    `group` is told above the first row of a primal; `differs` draws the box.
    """

    count: str
    size: str
    unit: str
    name: str
    details: str
    owner: str
    note: str
    group: str
    differs: bool


@dataclass(frozen=True, slots=True)
class Columns:
    """Where the columns of a sheet stand, in points from the left of the frame."""

    count: float
    size: float
    name: float
    right: float


def columns(rows: Sequence[Row]) -> Columns:
    """Columns wide enough for the widest count and size of all the rows."""
    count = max([30.0, *(width(row.count, "bold", BIG) for row in rows)])
    size = max([20.0, *(_size_width(row) for row in rows)])
    first = TICK + GAP + 4
    owners = [width(row.owner, "semibold", MAIN * 0.8) for row in rows]
    groups = [width(row.group, "semibold", GROUP) for row in rows]
    right = min(MOST_RIGHT, max([0.0, *owners, *groups]) + 8)
    name = first + count + size + 2 * GAP + 8
    return Columns(first + count, first + count + GAP + 4, name, right)


def draw_rows(paper: Paper, rows: Sequence[Row]) -> None:
    """All rows from the cursor down; a row never stands on two pages."""
    at = columns(rows)
    group = ""
    for row in rows:
        _draw(paper, row, at, begins=row.group != group)
        group = row.group


def boxed(paper: Paper, text: str, size: float, face: Face = "bold", thick: float = 1.6) -> None:
    """A text in a box from the cursor down; one longer than the page goes on in a second box."""
    lines = wrap(text, face, size, paper.room - 16)
    while lines:
        if paper.left() < size * LEAD * min(len(lines), 3) + 10:
            paper.new_page()
        fits = max(1, int((paper.left() - 10) / (size * LEAD)))
        here, lines = lines[:fits], lines[fits:]
        high = len(here) * size * LEAD + 10
        paper.box(0, paper.y, paper.room, high, thick)
        for number, line in enumerate(here):
            paper.text(8, paper.y + 5 + size * (0.95 + LEAD * number), line, size, face)
        paper.skip(high + 3)


def _draw(paper: Paper, row: Row, at: Columns, *, begins: bool) -> None:
    face: Face = "bold" if row.differs else "regular"
    room = paper.room - at.name - at.right - GAP
    names = wrap(row.name, face, MAIN, room)
    details = wrap(row.details, "regular", DETAIL, room) if row.details else []
    notes = wrap(row.note, "bold", MAIN, paper.room - at.name - GAP) if row.note else []
    apart = len(notes) * MAIN * LEAD > LONGEST_WHOLE
    kept = [] if apart else notes
    texts = (len(names) + len(kept)) * MAIN * LEAD + len(details) * DETAIL * LEAD
    owner, owner_size = _owner(row.owner)
    right = (14 if begins else 0) + len(owner) * owner_size * LEAD
    high = max(BIG * 0.73 + 10, texts + 7, right + 6)
    if paper.need(high + 2):
        begins = True
    if begins:
        paper.rule(HAIRLINE)
    paper.skip(2)
    _marks(paper, row, at, high)
    paper.text(at.name, paper.y + MAIN, names[0], MAIN, face)
    y = paper.y + MAIN
    for line in names[1:]:
        y += MAIN * LEAD
        paper.text(at.name, y, line, MAIN, face)
    for line in details:
        y += DETAIL * LEAD + 1
        paper.text(at.name, y, line, DETAIL)
    for line in kept:
        y += MAIN * LEAD
        paper.text(at.name, y, line, MAIN, "bold")
    _right(paper, row, owner, owner_size, begins=begins)
    paper.skip(high)
    if apart:
        boxed(paper, row.note, MAIN)


def _marks(paper: Paper, row: Row, at: Columns, high: float) -> None:
    """The tick box, the count and the size."""
    if row.differs:
        paper.box(0, paper.y - 1, paper.room, high, 1.4)
    paper.box(5, paper.y + 5, TICK, TICK, 1.0)
    base = paper.y + 4 + BIG * 0.73
    paper.text(at.count, base, row.count, BIG, "bold", "right")
    if row.size:
        paper.text(at.size, base, row.size, BIG, "bold")
        paper.text(at.size + width(row.size, "bold", BIG) + 3, base, row.unit, UNIT, "semibold")


def _right(paper: Paper, row: Row, owner: Sequence[str], size: float, *, begins: bool) -> None:
    y = paper.y
    if begins:
        y += 11
        paper.text(paper.room - 5, y, row.group, GROUP, "semibold", "right")
        y += 3
    for line in owner:
        y += size * LEAD
        paper.text(paper.room - 5, y, line, size, "semibold", "right")


def _owner(name: str) -> tuple[list[str], float]:
    """An owner's name in lines, smaller where a word of it is wide, to 9 points at the least."""
    room = MOST_RIGHT - 6
    size = min(
        (fit(word, "semibold", MAIN * 0.8, room, LEAST_OWNER) for word in name.split()),
        default=MAIN * 0.8,
    )
    return (wrap(name, "semibold", size, room) if name else []), size


def _size_width(row: Row) -> float:
    if not row.size:
        return 0.0
    return width(row.size, "bold", BIG) + 3 + width(row.unit, "semibold", UNIT)
