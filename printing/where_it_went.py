"""Where did the rest go: one page from the live animal to the packages, owner by owner.

Every column adds up as printed: hundredths of a pound are dealt out so that no cent of meat is
missing from the sum.
"""

from collections.abc import Mapping, Sequence
from datetime import datetime
from fractions import Fraction
from math import floor

from printing.letterhead import Letterhead, notes, number_text, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.place_words import capital
from printing.written import NO_BREAK
from shared.cutting.from_live import Journey
from shared.shop.details import ShopDetails
from shared.units import NG_PER_LB

OWNERS_ABREAST = 4
NAMES, WIDEST = 190.0, 150.0
NOTHING = "—"
NONE_TAKEN: Mapping[int, int] = {}


def where_it_went(
    journeys: Sequence[Journey],
    *,
    species: str,
    lot_number: int,
    tags: Sequence[str],
    shop: ShopDetails,
    made: datetime,
    words: Words,
    taken_off: Mapping[int, int] = NONE_TAKEN,
) -> bytes:
    """The page as PDF; lot number 0 is an order file's, without one.

    `taken_off` are the nanograms that went between the hot and the chilled weight, by share.
    """
    head = _head(species, lot_number, tags, journeys, shop, words)
    sheet = open_paper(shop.paper, head, "", made, words)
    for first in range(0, len(journeys), OWNERS_ABREAST):
        _owners(sheet, journeys[first : first + OWNERS_ABREAST], taken_off, words)
        sheet.skip(14)
    notes(sheet, tuple(_notes(journeys, words)))
    return sheet.pdf()


def hundredths(total_ng: int, parts_ng: Sequence[int]) -> tuple[int, tuple[int, ...]]:
    """A total and its parts in hundredths of a pound, the parts adding up to the total.

    The odd hundredths go to the parts with the largest remainders. Worked number: 1 lb in three
    equal parts is 100: 34, 33 and 33.
    """
    whole = floor(Fraction(total_ng * 100, NG_PER_LB) + Fraction(1, 2))
    exact = [Fraction(part * 100, NG_PER_LB) for part in parts_ng]
    down = [one.numerator // one.denominator for one in exact]
    by_rest = sorted(range(len(exact)), key=lambda n: (down[n] - exact[n], n))
    odd = whole - sum(down)
    for place in by_rest[:odd]:
        down[place] += 1
    return whole, tuple(down)


def _head(
    species: str,
    lot_number: int,
    tags: Sequence[str],
    journeys: Sequence[Journey],
    shop: ShopDetails,
    words: Words,
) -> Letterhead:
    told = capital(words.name(species, f"species.{species}"))
    lot = (words.say("papers.lot", lot=lot_number),) if lot_number else ()
    shown = ", ".join(tag for tag in tags if tag)
    basis = {one.basis for one in journeys}
    worst = [it for it in ("reference", "booked", "live", "hot", "chilled") if it in basis]
    facts = [(words.say("went.basis"), words.say(f"went.basis_{it}")) for it in worst[:1]]
    if shown:
        facts.append((words.say("went.tags"), shown))
    return Letterhead(
        sender=sender(shop),
        title=words.say("went.title"),
        corner=(told, *lot),
        party=(words.say("went.intro"),),
        facts=tuple(facts),
    )


def _owners(
    sheet: Paper, journeys: Sequence[Journey], taken_off: Mapping[int, int], words: Words
) -> None:
    each = min(WIDEST, (sheet.room - NAMES) / len(journeys))
    wide = sheet.room - each * len(journeys)
    columns = [
        Column("", wide),
        *(Column("", each, "right") for _ in journeys),
    ]
    owners = (words.say("went.column_owner"), *(one.owner or NOTHING for one in journeys))
    table(sheet, columns, [owners, *_rows(journeys, taken_off, words)])


def _rows(
    journeys: Sequence[Journey], taken_off: Mapping[int, int], words: Words
) -> list[tuple[str, ...]]:
    codes = [code for code, _ in journeys[0].rows]
    codes += [code for one in journeys for code, _ in one.rows if code not in codes]
    shown = [_column(one, taken_off.get(one.share, 0)) for one in journeys]
    rows = [
        ("live", "killed", "hot", "taken_off", "cooled", "chilled"),
        tuple(code for code in codes if code != "packages"),
        ("packages",),
    ]
    found: list[tuple[str, ...]] = []
    for group in rows:
        for code in dict.fromkeys(group):
            cells = [column.get(code) for column in shown]
            if any(cells) or code in ("hot", "chilled", "packages"):
                found.append((words.say(f"went.row_{code}"), *(_pounds(it) for it in cells)))
    take = [
        number_text(Fraction(c["packages"] or 0, c["chilled"] or 1) * 100, 1, 1) + " %"
        for c in shown
    ]
    found.append((words.say("went.row_take_home"), *take))
    if any(one.besides_ng for one in journeys):
        besides = (_pounds(_whole(one.besides_ng)) for one in journeys)
        found.append((words.say("went.row_besides"), *besides))
    return found


def _column(one: Journey, taken_off: int) -> dict[str, int | None]:
    """One owner's figures in hundredths of a pound, losses as what is taken away."""
    chilled, parts = hundredths(one.chilled_ng, [weight for _, weight in one.rows])
    hot = _whole(one.hot_ng)
    live = None if one.live_ng is None else _whole(one.live_ng)
    off = _whole(taken_off)
    column: dict[str, int | None] = {
        "live": live,
        "killed": None if live is None else hot - live,
        "hot": hot,
        "taken_off": -off,
        "cooled": chilled - hot + off,
        "chilled": chilled,
    }
    for (code, _), part in zip(one.rows, parts, strict=True):
        column[code] = part if code == "packages" else -part
    return column


def _whole(nanograms: int) -> int:
    return int(Fraction(nanograms * 100, NG_PER_LB) + Fraction(1, 2))


def _pounds(found: int | None) -> str:
    if found is None:
        return NOTHING
    sign = "−" if found < 0 else ""
    return f"{sign}{abs(found) // 100:,}.{abs(found) % 100:02d}{NO_BREAK}lb"


def _notes(journeys: Sequence[Journey], words: Words) -> list[str]:
    told = [words.say("went.note_adds_up"), words.say("went.note_aging")]
    if any(one.estimated for one in journeys):
        told.insert(0, words.say("went.note_estimate"))
    if any(dict(one.rows).get("between_owners") for one in journeys):
        told.append(words.say("went.note_between"))
    return told
