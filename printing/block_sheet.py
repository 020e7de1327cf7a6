"""The block sheet: one lot, carcass by carcass and side by side, in the order it is broken.

What could hurt or be missed comes first; each side begins a page; grind, stew, sausage and bones
stand in a table at the end. Black on white: it is photocopied and gets wet.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from printing.barcode import bars, draw_bars, module_points
from printing.block_row import MAIN, Row, boxed, draw_rows
from printing.block_words import block_row, merged, owner_names, pool_row
from printing.letterhead import day_text, time_text
from printing.page import Foot, Paper
from printing.typefaces import width, wrap
from printing.words import Words
from printing.words.place_words import capital
from printing.words.sentences import caution
from shared.carcass.carcass import Carcass
from shared.carcass.catalogue import Catalogue
from shared.carcass.weights import side_weights
from shared.cutting.answer import Answer, Caution
from shared.cutting.breaking import BlockLine, block_lines, pool_lines
from shared.cutting.forecast import Forecast
from shared.cutting.order import Question
from shared.shop.details import ShopDetails
from shared.units import pounds_text, weight_text

CORNER = 24.0
OWNER = 20.0
BAR_DPI = 300  # desk printers draw at 300 or 600 dots to the inch
BAR_DOTS = 4
BAR_ROOM = 150.0
POOL_TITLE, POOL_ROW = 40.0, 42.0
WITH_ALLERGENS = ("seasoned", "marinated", "stuffed")


@dataclass(slots=True)
class _Sheet:
    """What every page of the sheet is drawn from, and which side it has come to."""

    question: Question
    answer: Answer
    catalogue: Catalogue
    lot: int
    number: int
    words: Words
    owners: Mapping[int, str]
    notes: Mapping[int, str]
    carcass: int = 0
    side: int = 1

    def head(self, paper: Paper) -> None:
        """Tag and owners at the outer corner; what the paper is, and the tag's bars, beside."""
        paper.y = max(_head_left(paper, self), _head_right(paper, self)) + 6
        paper.rule(1.2)
        paper.skip(4)

    @property
    def here(self) -> Carcass:
        """The carcass of this page."""
        return self.question.carcasses[self.carcass]

    def shares_here(self) -> list[int]:
        """Who owns some of this side."""
        return [
            share.number
            for share in self.question.shares
            if any((it.carcass, it.side) == (self.carcass, self.side) for it in share.holdings)
        ]


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
) -> bytes:
    """The block sheet as PDF, a page for each side, more where it doesn't fit.

    `owners` names shares otherwise than the question does; `note_by_share` holds what is said of
    a whole order. `made` is when it is printed.
    """
    del forecast  # the plan's own weights are what the block takes; packages are the wrap's
    named = owner_names({one.number: one.owner for one in question.shares}, owners or {})
    sheet = _Sheet(
        question, answer, catalogue, lot_number, sheet_number, words, named, note_by_share or {}
    )
    title = words.say("papers.block_sheet")
    paper = Paper(shop.paper, f"{title} {lot_number}", _foot(sheet, shop, made), made)
    lines = block_lines(question, answer, catalogue)
    for place in range(len(question.carcasses)):
        for side in (1, 2):
            sheet.carcass, sheet.side = place, side
            _start_side(paper, sheet)
            _draw_side(paper, sheet, [line for line in lines if line.carcass == place])
    _draw_pools(paper, sheet)
    return paper.pdf()


def _start_side(paper: Paper, sheet: _Sheet) -> None:
    if sheet.carcass == 0 and sheet.side == 1:
        paper.set_head(sheet.head)
    else:
        paper.new_page()
    for text in _cautions(sheet):
        boxed(paper, text, MAIN)


def _draw_side(paper: Paper, sheet: _Sheet, lines: Sequence[BlockLine]) -> None:
    own = merged((line for line in lines if line.side == sheet.side), sheet.catalogue)
    several = len({line.share for line in own}) > 1
    draw_rows(paper, _rows(sheet, own, several=several))
    shared = merged((line for line in lines if line.side == 0), sheet.catalogue)
    if shared and sheet.side == 1:
        _title(paper, sheet.words.say("papers.of_both"))
        draw_rows(paper, _rows(sheet, shared, several=True))
    if not own and not (shared and sheet.side == 1):
        paper.paragraph(0, sheet.words.say("papers.nothing"), MAIN, paper.room)
    elif any(line.differs for line in own):
        paper.need(16)
        paper.rule()
        paper.text(0, paper.y + 11, sheet.words.say("papers.boxed"), 9)
        paper.skip(16)


def _rows(sheet: _Sheet, lines: Sequence[BlockLine], *, several: bool) -> list[Row]:
    return [
        block_row(line, sheet.catalogue, sheet.words, sheet.owners[line.share] if several else "")
        for line in lines
    ]


def _draw_pools(paper: Paper, sheet: _Sheet) -> None:
    lines = pool_lines(sheet.question, sheet.answer, sheet.catalogue)
    if not lines:
        return
    rows = [
        pool_row(line, sheet.catalogue, sheet.words, sheet.owners[line.share]) for line in lines
    ]
    sheet.side = 0
    if paper.left() < POOL_TITLE + POOL_ROW * len(rows):
        paper.new_page()
    _title(paper, sheet.words.say("papers.pools"))
    draw_rows(paper, rows)
    paper.rule()


def _title(paper: Paper, text: str) -> None:
    paper.need(90)
    paper.rule(1.2)
    paper.skip(4)
    paper.text(0, paper.y + MAIN, text, MAIN, "bold")
    paper.skip(MAIN * 1.5)


def _foot(sheet: _Sheet, shop: ShopDetails, made: datetime) -> Foot:
    words = sheet.words

    def page_of(page: int, pages: int) -> str:
        return words.say("papers.page", page=page, pages=pages)

    day, time = day_text(made.date(), words), time_text(made)
    told = words.say("papers.printed", day=day, time=time, lot=sheet.lot, sheet=sheet.number)
    return Foot(page_of, f"{shop.name} · {told}" if shop.name else told)


def _head_left(paper: Paper, sheet: _Sheet) -> float:
    words, carcass = sheet.words, sheet.here
    species = capital(words.name(carcass.species, f"species.{carcass.species}"))
    regime = words.say(f"papers.regime_{carcass.regime}")
    facts = words.say("papers.facts", lot=sheet.lot, sheet=sheet.number)
    paper.text(0, 53, f"{facts}, {regime}", 10.5)
    if not sheet.side:
        paper.text(0, 20, words.say("papers.lot", lot=sheet.lot), CORNER, "bold")
        paper.text(0, 38, species, MAIN * 0.8, "semibold")
        return 58.0
    told = words.say("papers.side", side=sheet.side)
    paper.text(0, 20, told, CORNER, "bold")
    known = side_weights(carcass, sheet.catalogue)[sheet.side - 1]
    weight = words.say(f"papers.weight_{known.basis}", weight=pounds_text(known.nanograms))
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


def _head_right(paper: Paper, sheet: _Sheet) -> float:
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


def _cautions(sheet: _Sheet) -> Iterator[str]:
    """What could hurt or be missed on this side, the gravest first."""
    words, carcass = sheet.words, sheet.here
    if carcass.species in ("beef", "bison") and carcass.age != "under_30":
        yield words.say(f"papers.age_{carcass.age}")
    for gone in carcass.gone:
        if gone.side in (0, sheet.side):
            part = words.name(carcass.species, f"part.{gone.part}")
            key = "papers.gone" if gone.weight is None else "papers.gone_some"
            weight = "" if gone.weight is None else weight_text(gone.weight)
            yield capital(words.say(key, part=part, weight=weight, reason=gone.reason))
    yield from _allergens(sheet)
    for one in sheet.answer.cautions:
        if _told_here(one, sheet):
            yield caution(one, sheet.question, sheet.catalogue, words)
    for share in sheet.shares_here():
        note = sheet.notes.get(share, "").strip()
        if note:
            yield f"{sheet.owners[share]}: {note}"


def _allergens(sheet: _Sheet) -> Iterator[str]:
    for choice in sheet.question.choices:
        told = [one for one in choice.finishes if one in WITH_ALLERGENS]
        if told and choice.share in sheet.shares_here():
            species = sheet.catalogue.species
            what = f"{_cut_words(sheet, choice.cut)}, {_finish_words(sheet, species, told)}"
            owner = sheet.owners[choice.share]
            yield capital(sheet.words.say("papers.allergens", what=what, owner=owner))


def _cut_words(sheet: _Sheet, cut: str) -> str:
    """The cut's name for several of it."""
    return sheet.words.name(sheet.catalogue.species, f"cut.{cut}", 2)


def _finish_words(sheet: _Sheet, species: str, finishes: Sequence[str]) -> str:
    """The finishes' names."""
    return ", ".join(sheet.words.name(species, f"finish.{one}") for one in finishes)


def _told_here(one: Caution, sheet: _Sheet) -> bool:
    """A caution of a place is told on its side; of a line, where its owner has meat.

    Trimmed parts and the age are told from the carcass itself.
    """
    if one.code in ("trimmed", "age_unknown"):
        return False
    cut = next((it.cut for it in sheet.question.choices if it.line == one.line), "")
    if one.code == "lost_part" and cut and sheet.catalogue.cuts[cut].kind == "to_trim":
        return False
    if one.where is not None:
        sides = (0, sheet.side)
        return one.where.carcass == sheet.carcass and one.where.side in sides
    share = next((it.share for it in sheet.question.choices if it.line == one.line), 0)
    return sheet.side == 1 and (share == 0 or share in sheet.shares_here())
