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
OWNER = MAIN * 0.8

GROUP = 9.5
TICK = 18.0
GAP = 8.0
LEAD = 1.22
LONGEST_WHOLE = 260.0


@dataclass(frozen=True, slots=True)
class Row:
    """What one row says; `size` is a thickness, a weight, ribs or a lean, with its unit.

    `unit` and `group` may have a line for each language.
    `group` is told above the first row of a primal; `differs` draws the box. `second` and
    `second_details` are name and details in a second language, "" where there is one only.
    `several` owners are told under the name, one alone at the right.
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
    second: str = ""
    second_details: str = ""
    count_unit: str = ""
    several: bool = False


@dataclass(frozen=True, slots=True)
class Columns:
    """Where the columns of a sheet stand, in points from the left of the frame."""

    count: float
    size: float
    name: float
    right: float


@dataclass(frozen=True, slots=True)
class _Laid:
    """A row's texts in lines, and how high it stands."""

    names: list[str]
    whose: list[str]
    whose_size: float
    details: list[str]
    notes: list[str]
    right: list[str]
    right_size: float
    beside: bool
    high: float


def columns(rows: Sequence[Row], *, tight: bool = False) -> Columns:
    """Columns wide enough for the widest count and size of all the rows."""
    owner = OWNER if tight else MAIN
    count = max([30.0, *(_count_width(row) for row in rows)])
    size = max([20.0, *(_size_width(row) for row in rows)])
    first = TICK + GAP + 4
    owners = [
        width(word, "semibold", owner)
        for row in rows
        if not row.several
        for word in (row.owner, *row.owner.split())
    ]
    groups = [
        width(line, "semibold", GROUP)
        for row in rows
        if row.owner and not row.several
        for line in row.group.split("\n")
    ]
    right = min(MOST_RIGHT, max([0.0, *owners, *groups]) + 8)
    name = first + count + size + 2 * GAP + 8
    return Columns(first + count, first + count + GAP + 4, name, right)


def height(rows: Sequence[Row], room: float, *, tight: bool = False) -> float:
    """How high these rows stand in a frame of that width."""
    at = columns(rows, tight=tight)
    group, total = "", 0.0
    for row in rows:
        total += _laid(row, at, room, begins=row.group != group, tight=tight).high + 2
        group = row.group
    return total


def draw_rows(paper: Paper, rows: Sequence[Row], *, tight: bool = False) -> None:
    """All rows from the cursor down; a row never stands on two pages.

    `tight` puts what is told in small letters beside the name, where there is room for it.
    """
    at = columns(rows, tight=tight)
    group = ""
    for row in rows:
        _draw(paper, row, at, begins=row.group != group, tight=tight)
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


def _laid(row: Row, at: Columns, room: float, *, begins: bool, tight: bool) -> _Laid:
    """Only a name stands beside the heading of a primal; what is under it has the whole width."""
    face: Face = "bold" if row.differs else "regular"
    alone = bool(row.owner) and not row.several
    wide = room - at.name - GAP - (at.right if alone else 0)
    groups = row.group.split("\n") if begins and row.group else []
    heading = max((width(one, "semibold", GROUP) + GAP for one in groups), default=0.0)
    heading = 0.0 if alone else heading
    names = wrap(row.name, face, MAIN, wide - heading)
    under = heading if len(groups) > 1 and len(names) == 1 else 0.0
    names += wrap(row.second, face, MAIN, wide - under) if row.second else []
    whose_size = OWNER if tight else MAIN
    whose = wrap(row.owner, "semibold", whose_size, wide) if row.several else []
    details = [
        line
        for told in (row.details, row.second_details)
        if told
        for line in wrap(told, "regular", DETAIL, wide)
    ]
    left = wide - width(names[-1], face, MAIN) - 2 * GAP - (heading if len(names) == 1 else 0)
    beside = tight and len(details) == 1 and width(details[0], "regular", DETAIL) <= left
    notes = wrap(row.note, "bold", MAIN, room - at.name - GAP) if row.note else []
    right, right_size = _owner("" if row.several else row.owner, OWNER if tight else MAIN)
    kept = 0 if len(notes) * MAIN * LEAD > LONGEST_WHOLE else len(notes)
    texts = (len(names) + kept) * MAIN * LEAD + len(whose) * whose_size * LEAD
    texts += 0 if beside else len(details) * (DETAIL * LEAD + 1)
    beside_names = 14 * len(groups) + len(right) * right_size * LEAD
    pad = 8 if tight else 10
    high = max(BIG * 0.73 + pad, texts + pad - 4, beside_names + pad - 2)
    return _Laid(names, whose, whose_size, details, notes, right, right_size, beside, high)


def _draw(paper: Paper, row: Row, at: Columns, *, begins: bool, tight: bool) -> None:
    laid = _laid(row, at, paper.room, begins=begins, tight=tight)
    if paper.need(laid.high + 2) and not begins:
        begins = True
        laid = _laid(row, at, paper.room, begins=True, tight=tight)
    if begins:
        paper.rule(HAIRLINE)
    paper.skip(2)
    _marks(paper, row, at, laid.high)
    apart = len(laid.notes) * MAIN * LEAD > LONGEST_WHOLE
    _texts(paper, row, at, laid, apart=apart)
    _right(paper, row, laid.right, laid.right_size, begins=begins)
    paper.skip(laid.high)
    if apart:
        boxed(paper, row.note, MAIN)


def _texts(paper: Paper, row: Row, at: Columns, laid: _Laid, *, apart: bool) -> None:
    """Name, whose it is, the small letters and the note, one under the other."""
    face: Face = "bold" if row.differs else "regular"
    y = paper.y + MAIN
    for number, line in enumerate(laid.names):
        y += MAIN * LEAD if number else 0
        paper.text(at.name, y, line, MAIN, face)
    if laid.beside:
        x = at.name + width(laid.names[-1], face, MAIN) + GAP
        paper.text(x, y, laid.details[0], DETAIL)
    for line in laid.whose:
        y += laid.whose_size * LEAD
        paper.text(at.name, y, line, laid.whose_size, "semibold")
    for line in [] if laid.beside else laid.details:
        y += DETAIL * LEAD + 1
        paper.text(at.name, y, line, DETAIL)
    for line in [] if apart else laid.notes:
        y += MAIN * LEAD
        paper.text(at.name, y, line, MAIN, "bold")


def _marks(paper: Paper, row: Row, at: Columns, high: float) -> None:
    """The tick box, the count and the size."""
    if row.differs:
        paper.box(0, paper.y - 1, paper.room, high, 1.4)
    paper.box(5, paper.y + 5, TICK, TICK, 1.0)
    base = paper.y + min(4.0, (high - BIG * 0.73) / 2 - 1) + BIG * 0.73
    right = at.count - (_count_width(row) - width(row.count, "bold", BIG))
    paper.text(right, base, row.count, BIG, "bold", "right")
    if row.count_unit:
        paper.text(right + 3, base, row.count_unit, UNIT, "semibold")
    if row.size:
        paper.text(at.size, base, row.size, BIG, "bold")
        x = at.size + width(row.size, "bold", BIG) + 3
        units = row.unit.split("\n")
        for number, unit in enumerate(reversed(units)):
            paper.text(x, base - number * UNIT, unit, UNIT, "semibold")


def _right(paper: Paper, row: Row, owner: Sequence[str], size: float, *, begins: bool) -> None:
    y = paper.y
    if begins:
        for line in row.group.split("\n"):
            y += 11
            paper.text(paper.room - 5, y, line, GROUP, "semibold", "right")
            y += 3
    for line in owner:
        y += size * LEAD
        paper.text(paper.room - 5, y, line, size, "semibold", "right")


def _owner(name: str, most: float) -> tuple[list[str], float]:
    """Owners in lines, smaller where a word is wide; a double name breaks at its hyphen."""
    room = MOST_RIGHT - 6
    size = min(
        (
            fit(word, "semibold", most, room, LEAST_OWNER)
            for word in name.replace("-", "- ").split()
        ),
        default=most,
    )
    lines = [
        line.replace("- ", "-")
        for one in name.split("\n")
        if one
        for line in wrap(one.replace("-", "- "), "semibold", size, room)
    ]
    return lines, size


def _count_width(row: Row) -> float:
    unit = 3 + width(row.count_unit, "semibold", UNIT) if row.count_unit else 0.0
    return width(row.count, "bold", BIG) + unit


def _size_width(row: Row) -> float:
    if not row.size:
        return 0.0
    units = [width(unit, "semibold", UNIT) for unit in row.unit.split("\n")]
    return width(row.size, "bold", BIG) + 3 + max(units)
