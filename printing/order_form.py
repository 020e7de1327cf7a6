"""The blank order form of a species as a fillable PDF, to send, or to print and fill by hand.

Fields are named by stable codes: `cut.<cut>.<what>` for a line, `usual.<primal>` for a primal cut
as the house usually does, `form.<what>` for what isn't shown (version, species, catalogue, lot,
order). `printing/order_form_reading.py` reads them back.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from reportlab.lib.colors import Color, black, white

from printing.letterhead import Letterhead, day_text, open_paper, sender
from printing.page import Paper
from printing.typefaces import wrap
from printing.words import Words
from printing.words.place_words import capital
from shared.carcass.catalogue import Catalogue, Cut, UsualLine
from shared.shop.details import ShopDetails
from shared.units import length_text, weight_text

FORM_VERSION = "1"
ROW = 17.0
SMALL = 8.0
EDGE = Color(0.35, 0.35, 0.35)
# What a line asks, and how wide its field is; the name of the cut takes what is left.
FIELDS = (("amount", 62.0), ("thickness", 52.0), ("weight", 60.0), ("package", 62.0))
FINISH = 112.0
BLANK = " "  # a list of choices must begin with one of them


@dataclass(frozen=True, slots=True)
class FormFor:
    """Whose form it is: an order's, or nobody's yet (numbers 0, no owner)."""

    owner: str = ""
    lot_number: int = 0
    order_number: int = 0
    kill_day: date | None = None
    due: date | None = None


def order_form(
    known: Catalogue, whose: FormFor, *, shop: ShopDetails, made: datetime, words: Words
) -> bytes:
    """The blank form, primal by primal, the house's usual first in each."""
    paper = open_paper(shop.paper, _head(known, whose, shop, words), "", made, words)
    for name, value in _hidden(known, whose):
        _text(paper, f"form.{name}", value, (0, 0, 1, 1), value, hidden=True)
    for key in ("forms.how", "forms.how_much", "forms.open"):
        paper.paragraph(0, words.say(key), 9.5, paper.room)
    for primal in known.primals:
        cuts = _cuts_of(known, primal)
        if cuts:
            _primal(paper, known, primal, cuts, words)
    _note(paper, words)
    return paper.pdf()


def asked_for(known: Catalogue) -> tuple[Cut, ...]:
    """The cuts a customer may ask for; what only sends meat to the trim is the shop's."""
    return tuple(cut for primal in known.primals for cut in _cuts_of(known, primal))


def _cuts_of(known: Catalogue, primal: str) -> list[Cut]:
    usual = [one.cut for one in known.usual]
    cuts = [one for one in known.cuts.values() if one.primal == primal and one.kind != "to_trim"]
    return sorted(cuts, key=lambda cut: (cut.code not in usual, cut.order))


def _head(known: Catalogue, whose: FormFor, shop: ShopDetails, words: Words) -> Letterhead:
    animal = words.name(known.species, f"species.{known.species}")
    days = (("bills.kill_day", whose.kill_day), ("forms.due", whose.due))
    numbers = (("bills.order", whose.order_number), ("bills.lot", whose.lot_number))
    return Letterhead(
        sender=sender(shop),
        title=words.say("forms.title", animal=capital(animal)),
        corner=(whose.owner,) if whose.owner else (),
        party=() if whose.owner else (words.say("forms.name"), words.say("forms.phone")),
        facts=(
            *((words.say(key), str(number)) for key, number in numbers if number),
            *((words.say(key), day_text(day, words)) for key, day in days if day is not None),
        ),
    )


def _hidden(known: Catalogue, whose: FormFor) -> Sequence[tuple[str, str]]:
    return (
        ("version", FORM_VERSION),
        ("species", known.species),
        ("catalogue", str(known.version)),
        ("lot", str(whose.lot_number)),
        ("order", str(whose.order_number)),
    )


def _primal(paper: Paper, known: Catalogue, primal: str, cuts: Sequence[Cut], words: Words) -> None:
    usual = [one for one in known.usual if one.primal == primal and known.cuts[one.cut] in cuts]
    told = "; ".join(_usual_text(known, one, words) for one in usual)
    lines = wrap(words.say("forms.usual", what=told), "regular", 9, paper.room - 20)
    paper.need(34 + len(lines) * 12 + 2 * ROW)
    paper.skip(10)
    name = capital(words.name(known.species, f"primal.{primal}"))
    paper.text(0, paper.y + 12, name, 12, "bold")
    paper.skip(16)
    paper.rule(0.8)
    if usual:
        spoken = f"{name}: {words.say('forms.usual', what=told)}"
        _tick(paper, f"usual.{primal}", 2, spoken)
        for line in lines:
            paper.text(20, paper.y + 11, line, 9)
            paper.skip(12)
        paper.skip(3)
    _headings(paper, words)
    for cut in cuts:
        if paper.need(ROW):
            _headings(paper, words)
        _row(paper, known, cut, words)


def _headings(paper: Paper, words: Words) -> None:
    x = paper.room - FINISH - sum(wide for _, wide in FIELDS)
    for what, wide in (*FIELDS, ("finish", FINISH)):
        paper.text(x + 3, paper.y + 8, words.say(f"forms.{what}"), SMALL, "semibold")
        x += wide
    paper.skip(11)


def _row(paper: Paper, known: Catalogue, cut: Cut, words: Words) -> None:
    name = capital(words.name(known.species, f"cut.{cut.code}", 2))
    _tick(paper, f"cut.{cut.code}.want", 2, name)
    x = paper.room - FINISH - sum(wide for _, wide in FIELDS)
    size = 9.0 if len(wrap(name, "regular", 9, x - 22)) == 1 else 7.5
    lines = wrap(name, "regular", size, x - 22)[:2]
    for at, line in enumerate(lines):
        paper.text(20, paper.y + (11.5 if len(lines) == 1 else 7.5 + 8 * at), line, size)
    for what, wide in FIELDS:
        if _asks(cut, what):
            told = f"{name}: {words.say(f'forms.{what}')}"
            _text(paper, f"cut.{cut.code}.{what}", "", (x + 2, 2, wide - 4, ROW - 4), told)
        x += wide
    if cut.finishes:
        _finish(paper, known, cut, x, words)
    paper.skip(ROW)
    paper.line(0, paper.y, paper.room, paper.y, 0.2)


def _asks(cut: Cut, what: str) -> bool:
    """Whether the question makes sense of this cut."""
    if what == "thickness":
        return cut.thickness is not None
    if what == "weight":
        return cut.piece_weight is not None
    return what == "amount" or cut.kind != "whole"


def _finish(paper: Paper, known: Catalogue, cut: Cut, x: float, words: Words) -> None:
    names = [words.name(known.species, f"finish.{one}") for one in cut.finishes]
    usual = next((one.finishes for one in known.usual if one.cut == cut.code), ())
    first = ", ".join(words.name(known.species, f"finish.{one}") for one in usual)
    told = [one for one in (first, *names) if one]
    left, bottom = _place(paper, x + 2, ROW - 2)
    _form(paper).choice(
        name=f"cut.{cut.code}.finish",
        tooltip=f"{words.name(known.species, f'cut.{cut.code}', 2)}: {words.say('forms.finish')}",
        options=list(dict.fromkeys([BLANK, *told])),
        value=BLANK,
        x=left,
        y=bottom,
        width=FINISH - 4,
        height=ROW - 4,
        fontSize=SMALL,
        fieldFlags="combo edit",
        **_drawn(),
    )


def _note(paper: Paper, words: Words) -> None:
    paper.need(76)
    paper.skip(12)
    paper.text(0, paper.y + 10, words.say("forms.note"), 10, "semibold")
    paper.skip(14)
    _text(paper, "form.note", "", (0, 0, paper.room, 44), words.say("forms.note"), lines=True)
    paper.skip(46)


def _usual_text(known: Catalogue, usual: UsualLine, words: Words) -> str:
    species = known.species
    parts = [words.name(species, f"cut.{usual.cut}", 2)]
    if usual.thickness is not None:
        parts.append(length_text(usual.thickness))
    if usual.piece_weight is not None:
        parts.append(weight_text(usual.piece_weight))
    parts += [words.name(species, f"finish.{one}") for one in usual.finishes]
    return ", ".join(parts)


def _form(paper: Paper) -> Any:  # noqa: ANN401  # ReportLab's form has no types
    return paper.canvas().acroForm


def _drawn() -> dict[str, Any]:
    return {
        "borderWidth": 0.5,
        "borderColor": EDGE,
        "fillColor": white,
        "textColor": black,
        "forceBorder": True,
        "fontName": "Helvetica",
    }


def _place(paper: Paper, x: float, down: float) -> tuple[float, float]:
    return paper.corner(x, paper.y + down)


def _tick(paper: Paper, name: str, x: float, spoken: str) -> None:
    left, bottom = _place(paper, x, 14)
    _form(paper).checkbox(
        name=name,
        tooltip=spoken,
        x=left,
        y=bottom,
        size=11,
        buttonStyle="check",
        borderWidth=0.8,
        borderColor=EDGE,
        fillColor=white,
        textColor=black,
        forceBorder=True,
    )


def _text(
    paper: Paper,
    name: str,
    value: str,
    at: tuple[float, float, float, float],
    spoken: str,
    *,
    hidden: bool = False,
    lines: bool = False,
) -> None:
    x, down, wide, high = at
    left, bottom = _place(paper, x, down + high)
    _form(paper).textfield(
        name=name,
        tooltip=spoken,
        value=value,
        x=left,
        y=bottom,
        width=wide,
        height=high,
        fontSize=SMALL + 1,
        maxlen=400 if lines else 60,
        fieldFlags="multiline" if lines else "",
        annotationFlags="hidden" if hidden else "print",
        **_drawn() | ({"borderWidth": 0, "forceBorder": False} if hidden else {}),
    )
