"""The rail tag: one for each side, readable from the scale, with the tag's barcode.

A custom-exempt carcass carries NOT FOR SALE in letters of at least 3/8 in (9 CFR 316.16).
"""

from collections.abc import Sequence
from datetime import date

from printing.barcode import bars, dots_that_fit, module_points
from printing.letterhead import day_text
from printing.stock_canvas import EDGE, MARK_HEIGHT, Roll, fitted
from printing.typefaces import fit, width
from printing.words import Words
from printing.words.place_words import capital
from shared.carcass import thirty_months
from shared.carcass.carcass import Carcass
from shared.marking.stock import STOCKS
from shared.shop.details import ShopDetails

TAG = 54.0
LEAST_TAG = 24.0
SIDE = 22.0
OWNERS = ((15.0, 11.0, 1), (11.0, 10.0, 3), (9.0, 8.0, 4))
BAR_HEIGHT = 30.0
QUIET = 10  # modules left free beside Code 128 (ISO/IEC 15417)
FACT = 10.0


def carcass_tag(
    carcass: Carcass,
    *,
    lot_number: int,
    owners: Sequence[str],
    killed_on: date | None = None,
    shop: ShopDetails,
    words: Words,
    dpi: int = 203,
) -> bytes:
    """Tags as PDF on 4×3 in stock: one for each side, or one where the carcass stays whole.

    Raises ValueError for a carcass without a tag, or owners too many for one tag.
    """
    if not carcass.tag.strip():
        raise ValueError("a carcass without a tag number has no rail tag")
    roll = Roll(STOCKS["4x3"], f"Tag {carcass.tag}")
    for side in (0,) if carcass.split is False else (1, 2):
        _draw(roll, carcass, side, words, owners, shop)
        _foot(roll, carcass, lot_number, killed_on, words, dpi)
        roll.end_label()
    return roll.pdf()


def _draw(
    roll: Roll,
    carcass: Carcass,
    side: int,
    words: Words,
    owners: Sequence[str],
    shop: ShopDetails,
) -> None:
    y = EDGE
    if carcass.regime == "custom":
        mark = words.say("label.not_for_sale")
        roll.once("mark", lambda: roll.mark(mark))
        y += MARK_HEIGHT
    species = capital(words.name(carcass.species, f"species.{carcass.species}"))
    told = _side_words(words, side, carcass.tag, roll.room)
    right = max(width(told, "bold", SIDE), width(species, "semibold", 14))
    size = fit(carcass.tag, "bold", TAG, roll.room - right - 12, LEAST_TAG)
    if width(carcass.tag, "bold", size) > roll.room - right - 12:
        raise ValueError(f"the tag number {carcass.tag!r} is too long for a rail tag")
    roll.text(EDGE, y + 44, carcass.tag, size, "bold")
    roll.text_to(roll.wide - EDGE, y + 20, told, SIDE, "bold")
    roll.text_to(roll.wide - EDGE, y + 40, species, 14, "semibold")
    y += 52
    named = words.say("label.owner", owner=", ".join(owners)) if owners else shop.name
    steps = (fitted(named, "semibold", (size, least), roll.room, n) for size, least, n in OWNERS)
    found = next((one for one in steps if one is not None), None)
    if found is None:
        raise ValueError("the owners' names are too long for one rail tag")
    roll.lines(y, found[0], found[1], "semibold")


def _side_words(words: Words, side: int, tag: str, room: float) -> str:
    """Which side, in the short words where a long tag number leaves no room for the usual ones."""
    if not side:
        return words.say("label.whole")
    told = words.say("papers.side", side=side)
    beside = width(tag, "bold", LEAST_TAG) + 12 + width(told, "bold", SIDE)
    return told if beside <= room else words.say("label.side", side=side)


def _foot(
    roll: Roll, carcass: Carcass, lot: int, killed_on: date | None, words: Words, dpi: int
) -> None:
    base = roll.high - EDGE
    facts = [words.say("papers.lot", lot=lot), words.say(f"papers.regime_{carcass.regime}")]
    if killed_on is not None:
        facts.append(words.say("label.killed_on", day=day_text(killed_on, words)))
    if thirty_months.holds_for(carcass.species) and carcass.age == "30_and_over":
        facts.insert(0, words.say("label.over_30"))
    symbol = bars("code128", carcass.tag) if carcass.tag.isascii() else None
    dots = dots_that_fit(symbol, roll.room / 2, dpi) if symbol else 0
    room = roll.room
    if symbol and dots:
        module = module_points(dots, dpi)
        left = roll.wide - EDGE - 6 - symbol.wide * module
        roll.bars(left, base, symbol, dots, dpi, BAR_HEIGHT)
        room = left - QUIET * module - EDGE
    lines = [one for fact in facts for one in _beside(fact, room)]
    roll.lines(base - len(lines) * FACT * 1.15, lines, FACT, "semibold")


def _beside(fact: str, room: float) -> Sequence[str]:
    """The fact in the lines it takes beside the bars: a long date ran into them once."""
    found = fitted(fact, "semibold", (FACT, FACT), room, 2)
    return found[0] if found else (fact,)
