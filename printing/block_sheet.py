"""The block sheet: one lot, carcass by carcass and side by side, in the order it is broken.

What could hurt or be missed comes first; each side begins a page; grind, stew, sausage and bones
stand in a table at the end. Black on white: it is photocopied and gets wet.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime

from printing.barcode import bars, draw_bars, module_points
from printing.block_cautions import cautions
from printing.block_dealt import with_dealt
from printing.block_lot import LotSheet
from printing.block_row import LEAD, MAIN, Row, boxed, draw_rows, height
from printing.block_words import block_row, merged, owner_names, pool_row, together
from printing.letterhead import day_text, time_text
from printing.page import Foot, Paper
from printing.typefaces import width, wrap
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
BAR_DPI = 300  # desk printers draw at 300 or 600 dots to the inch
BAR_DOTS = 4
BAR_ROOM = 150.0
POOL_TITLE = 40.0
FOOTNOTE = 16.0


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
    if paper.left() < POOL_TITLE + height(rows, paper.room):
        paper.new_page()
    _title(paper, sheet.say("papers.pools"))
    draw_rows(paper, rows)
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
    words = sheet.words

    def page_of(page: int, pages: int) -> str:
        return words.say("papers.page", page=page, pages=pages)

    day, time = day_text(made.astimezone().date(), words), time_text(made)
    lot = words.say("papers.lot", lot=sheet.lot) if sheet.lot else ""
    key = "papers.from_sheet" if sheet.number else "papers.not_released"
    printed = words.say("papers.printed", day=day, time=time)
    told = (shop.name, printed, lot, words.say(key, sheet=sheet.number))
    return Foot(page_of, " · ".join(one for one in told if one))


def _numbers(sheet: LotSheet) -> Iterator[str]:
    """The lot and the sheet, as far as they have numbers."""
    if sheet.lot:
        yield sheet.words.say("papers.lot", lot=sheet.lot)
    key = "papers.sheet" if sheet.number else "papers.not_released"
    yield sheet.words.say(key, sheet=sheet.number)


def _head(paper: Paper, sheet: LotSheet) -> None:
    """Tag and owners at the outer corner; what the paper is, and the tag's bars, beside."""
    paper.y = max(_head_left(paper, sheet), _head_right(paper, sheet)) + 6
    paper.rule(1.2)
    paper.skip(4)


def _head_left(paper: Paper, sheet: LotSheet) -> float:
    words, carcass = sheet.words, sheet.here
    species = capital(words.name(carcass.species, f"species.{carcass.species}"))
    regime = words.say(f"papers.regime_{carcass.regime}")
    facts = [words.say("papers.block_sheet"), *_numbers(sheet), regime]
    paper.text(0, 53, " · ".join(facts), 10.5)
    if not sheet.side:
        told = words.say("papers.lot", lot=sheet.lot) if sheet.lot else species
        paper.text(0, 20, told, CORNER, "bold")
        paper.text(0, 38, species, MAIN * 0.8, "semibold")
        return 58.0
    told = sheet.say("papers.side", side=sheet.side)
    paper.text(0, 20, told, CORNER, "bold")
    known = side_weights(carcass, sheet.catalogue)[sheet.side - 1]
    weight = words.say(f"papers.weight_{known.basis}", weight=pounds_text(known.hanging_ng))
    paper.text(0, 38, f"{species}, {weight}", MAIN * 0.8, "semibold")
    _bars(paper, carcass.tag, width(told, "bold", CORNER) + 26)
    return 58.0


def _bars(paper: Paper, tag: str, x: float) -> None:
    """The tag's barcode beside the side; a tag that Code 128 can't hold goes without."""
    if not tag or not tag.isascii():
        return
    symbol = bars("code128", tag)
    if symbol.wide * module_points(BAR_DOTS, BAR_DPI) <= BAR_ROOM:
        draw_bars(paper.canvas(), symbol, paper.corner(x, 24), BAR_DOTS, BAR_DPI, 24)


def _head_right(paper: Paper, sheet: LotSheet) -> float:
    y = 20.0
    tags = [it.tag or str(n) for n, it in enumerate(sheet.question.carcasses, start=1)]
    tag = tags[sheet.carcass] if sheet.side else ", ".join(tags)
    told = sheet.words.say("papers.tag", tag=tag)
    for number, line in enumerate(wrap(told, "bold", CORNER, paper.room * 0.45)):
        y += CORNER * 1.15 if number else 0
        paper.text(paper.room, y, line, CORNER, "bold", "right")
    for share in sheet.shares_here():
        for line in wrap(sheet.owners[share], "bold", OWNER, paper.room * 0.55):
            y += OWNER * 1.15
            paper.text(paper.room, y, line, OWNER, "bold", "right")
    return y + 4
