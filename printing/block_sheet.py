"""The block sheet: one lot, carcass by carcass and side by side, in the order it is broken.

What could hurt or be missed comes first; each side begins a page; grind, stew, sausage and bones
stand in a table at the end. Black on white: it is photocopied and gets wet.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import NamedTuple

from printing.barcode import bars, draw_bars, module_points
from printing.block_cautions import cautions
from printing.block_dealt import with_dealt
from printing.block_lot import LotSheet
from printing.block_row import LEAD, MAIN, Row, boxed, draw_rows, height
from printing.block_words import block_row, merged, owner_names, pool_row, together
from printing.letterhead import day_text, time_text
from printing.page import Foot, Paper
from printing.typefaces import Face, width, wrap
from printing.words import Words
from printing.words.place_words import capital
from shared.carcass.catalogue import Catalogue
from shared.carcass.weights import side_weights
from shared.cutting.answer import Answer
from shared.cutting.breaking import BlockLine, block_lines, pool_lines
from shared.cutting.forecast import Forecast
from shared.cutting.order import Question
from shared.shop.details import ShopDetails
from shared.units import pounds_text

CORNER = 24.0
OWNER = 20.0
OWNER_MOST = 34.0
OWNER_AFAR = 28.0  # capitals of 7 mm
DEEPER = 15.0  # points a line of the head takes, about
WIDEST_OWNER = 270.0
LEAD_HEAD = 1.15
APART = 14.0
BARS_AFTER = 26.0
BAR_DPI = 300  # desk printers draw at 300 or 600 dots to the inch
BAR_DOTS = 4
BAR_ROOM = 150.0
POOL_TITLE = 40.0
FOOTNOTE = 16.0


class _Line(NamedTuple):
    """A line at the left of the head, on its foot."""

    text: str
    face: Face
    y: float
    size: float


def block_sheet(
    question: Question,
    answer: Answer,
    catalogue: Catalogue,
    forecast: Forecast,
    *,
    lot_number: int,
    sheet_number: int,
    shop: ShopDetails,
    made: datetime,
    words: Words,
    owners: Mapping[int, str] | None = None,
    note_by_share: Mapping[int, str] | None = None,
    also: Words | None = None,
    allergens: Mapping[str, tuple[str, ...]] | None = None,
) -> bytes:
    """The block sheet as PDF, a page for each side, more where it doesn't fit.

    `owners` names shares otherwise than the question does; `note_by_share` holds what is said of
    a whole order. `made` is when it is printed. With `also` everything is told in that language
    too; `allergens` are those of the shop's recipe for a finish.
    """
    named = owner_names({one.number: one.owner for one in question.shares}, owners or {})
    sheet = LotSheet(
        question, answer, catalogue, lot_number, sheet_number, words, named, note_by_share or {}
    )
    sheet.also, sheet.allergens = also, allergens or {}
    sheet.packages = {one.line: one.packages.mid for one in forecast.lines}
    title = sheet.say("papers.block_sheet")
    paper = Paper(shop.paper, title, _foot(sheet, shop, made), made)
    lines = block_lines(question, answer, catalogue)
    for place in range(len(question.carcasses)):
        for side in (1, 2):
            sheet.carcass, sheet.side = place, side
            _start_side(paper, sheet)
            _draw_side(paper, sheet, [line for line in lines if line.carcass == place])
    _draw_pools(paper, sheet)
    return paper.pdf()


def _start_side(paper: Paper, sheet: LotSheet) -> None:
    if sheet.carcass == 0 and sheet.side == 1:
        paper.set_head(lambda page: _head(page, sheet))
    else:
        paper.new_page()
    for text in cautions(sheet):
        boxed(paper, text, MAIN)


def _draw_side(paper: Paper, sheet: LotSheet, lines: Sequence[BlockLine]) -> None:
    """A side and, with side 1, what is of both: tightly set where that keeps it on one page."""
    placed = [_at_side(line, sheet.catalogue) for line in lines]
    own = merged((line for line in placed if line.side == sheet.side), sheet.catalogue)
    shared = merged((line for line in placed if line.side == 0), sheet.catalogue)
    rows = _rows(sheet, own, several=len({line.share for line in own}) > 1)
    beside = _rows(sheet, shared, several=True) if sheet.side == 1 else []
    more = height(beside, paper.room) + MAIN * 1.5 + 4 if beside else 0.0
    tight = height(rows, paper.room) + more + FOOTNOTE > paper.left()
    draw_rows(paper, rows, tight=tight)
    if beside:
        _title(paper, sheet.say("papers.of_both"), height(beside[:1], paper.room))
        draw_rows(paper, beside, tight=tight)
    if not rows and not beside:
        paper.paragraph(0, sheet.say("papers.nothing"), MAIN, paper.room)
    elif any(row.differs for row in (*rows, *beside)) and paper.left() >= FOOTNOTE:
        paper.rule()
        paper.text(0, paper.y + 11, sheet.say("papers.boxed"), 9)
        paper.skip(FOOTNOTE)


def _at_side(line: BlockLine, catalogue: Catalogue) -> BlockLine:
    """What goes to the grinder from the middle of the animal is told with side 1."""
    grind = line.side == 0 and catalogue.cuts[line.cut].kind == "to_trim"
    return replace(line, side=1) if grind else line


def _rows(sheet: LotSheet, lines: Sequence[BlockLine], *, several: bool) -> list[Row]:
    owners: Mapping[int, str] = sheet.owners if several else {}
    return [
        with_dealt(block_row(row, sheet.catalogue, sheet.words, owners, sheet.also), row, sheet)
        for row in together(lines, sheet.catalogue)
    ]


def _draw_pools(paper: Paper, sheet: LotSheet) -> None:
    lines = pool_lines(sheet.question, sheet.answer, sheet.catalogue)
    if not lines:
        return
    rows = [
        with_dealt(
            pool_row(line, sheet.catalogue, sheet.words, sheet.owners[line.share], sheet.also),
            [line],
            sheet,
        )
        for line in lines
    ]
    sheet.side = 0
    tight = paper.left() < POOL_TITLE + height(rows, paper.room)
    if paper.left() < POOL_TITLE + height(rows, paper.room, tight=tight):
        paper.new_page()
        tight = paper.left() < POOL_TITLE + height(rows, paper.room)
    _title(paper, sheet.say("papers.pools"))
    draw_rows(paper, rows, tight=tight)
    paper.rule()


def _title(paper: Paper, text: str, first: float = 60.0) -> None:
    """A title that stands with the first row under it."""
    paper.need(MAIN * 1.5 + first + 6)
    paper.rule(1.2)
    paper.skip(4)
    for line in wrap(text, "bold", MAIN, paper.room):
        paper.text(0, paper.y + MAIN, line, MAIN, "bold")
        paper.skip(MAIN * LEAD)
    paper.skip(4)


def _foot(sheet: LotSheet, shop: ShopDetails, made: datetime) -> Foot:
    def page_of(page: int, pages: int) -> str:
        return sheet.say("papers.page", page=page, pages=pages)

    time = time_text(made)
    day = made.astimezone().date()
    printed = [
        words.say("papers.printed", day=day_text(day, words), time=time)
        for words in sheet.languages
    ]
    lot = sheet.say("papers.lot", lot=sheet.lot) if sheet.lot else ""
    numbered = "papers.from_sheet" if sheet.also is None else "papers.sheet"  # the line is full
    key = numbered if sheet.number else "papers.not_released"
    told = (shop.name, *dict.fromkeys(printed), lot, sheet.say(key, sheet=sheet.number))
    return Foot(page_of, " · ".join(one for one in told if one))


def _numbers(sheet: LotSheet, words: Words) -> Iterator[str]:
    """The lot and the sheet, as far as they have numbers."""
    if sheet.lot:
        yield words.say("papers.lot", lot=sheet.lot)
    key = "papers.sheet" if sheet.number else "papers.not_released"
    yield words.say(key, sheet=sheet.number)


def _head(paper: Paper, sheet: LotSheet) -> None:
    """Tag and owners at the outer corner; what the paper is, and the tag's bars, beside."""
    right = _right_texts(paper, sheet, OWNER)
    title = _title_words(sheet, paper.room - width(right[0][0], "bold", CORNER) - APART)
    right, left = _largest(paper, sheet, title, right)
    paper.text(0, 20, title, CORNER, "bold")
    if sheet.side:
        _bars(paper, sheet.here.tag, width(title, "bold", CORNER) + BARS_AFTER)
    for line in left:
        paper.text(0, line.y, line.text, line.size, line.face)
    paper.y = max(left[-1].y + 5, _head_right(paper, right)) + 6
    paper.rule(1.2)
    paper.skip(4)


def _largest(
    paper: Paper, sheet: LotSheet, title: str, right: Sequence[tuple[str, float]]
) -> tuple[Sequence[tuple[str, float]], Sequence[_Line]]:
    """The owners as large as there is room, and what then stands beside them.

    For letters that are read from afar the head may be a line deeper for each line it has.
    """
    left = _left_lines(paper, sheet, title, right)
    bottom = left[-1].y
    for most, deepest in ((OWNER_MOST, bottom), (OWNER_AFAR, bottom + DEEPER * len(left))):
        size = most
        while size > OWNER:
            larger = _right_texts(paper, sheet, size)
            beside = _left_lines(paper, sheet, title, larger)
            if beside[-1].y <= deepest and _fits(larger, beside, paper.room):
                if size >= OWNER_AFAR or most == OWNER_AFAR:
                    return larger, beside
                break
            size -= 1
    return right, left


def _left_lines(
    paper: Paper, sheet: LotSheet, title: str, right: Sequence[tuple[str, float]]
) -> list[_Line]:
    """In each language what hangs there and what the paper is, beside the tag and owners."""
    wide = max(width(text, "bold", size) for text, size in right)
    room, y = max(paper.room - wide - APART, paper.room * 0.4), 20.0
    lines = list[_Line]()
    for words in sheet.languages:
        for line in wrap(_hanging_words(sheet, words, title), "semibold", MAIN * 0.8, room):
            y += 17 if y > 20 else 18
            lines.append(_Line(line, "semibold", y, MAIN * 0.8))
    for words in sheet.languages:
        regime = words.say(f"papers.regime_{sheet.here.regime}")
        facts = [words.say("papers.block_sheet"), *_numbers(sheet, words), regime]
        for line in wrap(" · ".join(facts), "regular", 10.5, room):
            y += 13 if y > 56 or len(sheet.languages) > 1 else 15
            lines.append(_Line(line, "regular", y, 10.5))
    return lines


def _title_words(sheet: LotSheet, room: float) -> str:
    """Which side, as far as the tag's bars beside it leave its number alone.

    In every language; else in the first, the others before their own weight; else in short.
    """
    if not sheet.side:
        return sheet.say("papers.lot", lot=sheet.lot) if sheet.lot else _species(sheet, sheet.words)
    names = [one.say("papers.side", side="").strip() for one in sheet.languages[:-1]]
    last = sheet.languages[-1].say("papers.side", side=sheet.side)
    first = sheet.words.say("papers.side", side=sheet.side)
    beside = BARS_AFTER + _bars_wide(sheet.here.tag)
    for told in (" · ".join([*names, last]), first):
        if width(told, "bold", CORNER) + beside <= room:
            return told
    return sheet.words.say("label.side", side=sheet.side)


def _species(sheet: LotSheet, words: Words) -> str:
    return capital(words.name(sheet.here.species, f"species.{sheet.here.species}"))


def _hanging_words(sheet: LotSheet, words: Words, title: str) -> str:
    """The species, on a side's page what the side weighs, and the side if the title hasn't it."""
    if not sheet.side:
        return _species(sheet, words)
    known = side_weights(sheet.here, sheet.catalogue)[sheet.side - 1]
    weight = words.say(f"papers.weight_{known.basis}", weight=pounds_text(known.hanging_ng))
    side = words.say("papers.side", side="").strip()
    told = [] if side in title else [words.say("papers.side", side=sheet.side)]
    animal = words.name(sheet.here.species, f"species.{sheet.here.species}")
    return capital(", ".join([*told, animal, weight]))


def _bars_wide(tag: str) -> float:
    """What the tag's barcode takes; 0 where Code 128 can't hold it, or it were too wide."""
    if not tag or not tag.isascii():
        return 0
    wide = bars("code128", tag).wide * module_points(BAR_DOTS, BAR_DPI)
    return wide if wide <= BAR_ROOM else 0


def _bars(paper: Paper, tag: str, x: float) -> None:
    """The tag's barcode beside the side; a tag that Code 128 can't hold goes without."""
    if _bars_wide(tag):
        symbol = bars("code128", tag)
        draw_bars(paper.canvas(), symbol, paper.corner(x, 24), BAR_DOTS, BAR_DPI, 24)


def _right_texts(paper: Paper, sheet: LotSheet, owner: float) -> list[tuple[str, float]]:
    """The tag and the owners in lines, each with its size; owners as large as there is room."""
    tags = [it.tag or str(n) for n, it in enumerate(sheet.question.carcasses, start=1)]
    tag = tags[sheet.carcass] if sheet.side else ", ".join(tags)
    words = [one.say("papers.tag", tag="").strip() for one in sheet.languages[:-1]]
    told = " · ".join([*words, sheet.languages[-1].say("papers.tag", tag=tag)])
    found = [(line, CORNER) for line in wrap(told, "bold", CORNER, paper.room * 0.45)]
    for share in sheet.shares_here():
        name = sheet.owners[share]
        found += [(line, owner) for line in wrap(name, "bold", owner, paper.room * 0.55)]
    return found


def _fits(texts: Sequence[tuple[str, float]], left: Sequence[_Line], room: float) -> bool:
    """Whether they end where the left side does, and none reaches a line of it.

    A weight ran into the owner's name, which had grown after it was set.
    """
    y = 20.0
    for text, size in texts[1:]:
        y += size * LEAD_HEAD
        beside = [one for one in left if one.y > y - size and one.y - one.size < y + size / 4]
        reach = max((width(one.text, one.face, one.size) for one in beside), default=0)
        wide = width(text, "bold", size)
        if wide > WIDEST_OWNER or wide + APART > room - reach:
            return False
    return y + 4 <= left[-1].y + 5


def _head_right(paper: Paper, texts: Sequence[tuple[str, float]]) -> float:
    y = 20.0
    for number, (line, size) in enumerate(texts):
        y += size * LEAD_HEAD if number else 0
        paper.text(paper.room, y, line, size, "bold", "right")
    return y + 4
