"""The slip that goes with a pick-up: packages counted off, where they lay, and a line to sign.

Carcasses and quarters that leave unwrapped must be marked themselves (9 CFR 316.16); the slip says
so where an order is custom-exempt.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from printing.letterhead import Letterhead, day_text, notes, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from shared.carcass.carcass import Regime
from shared.shop.details import ShopDetails
from shared.units import pounds_text


@dataclass(frozen=True, slots=True)
class PickedUp:
    """One product that leaves: packages, their nanograms, boxes and places; fresh: not frozen.

    `by_count` of the packages were counted: the nanograms are of the others.
    """

    product: str
    packages: int
    nanograms: int
    where: str = ""
    fresh: bool = False
    by_count: int = 0


def pick_up(
    rows: Sequence[PickedUp],
    *,
    order_number: int,
    owner: str,
    fetched_by: str,
    waits: Sequence[str],
    regime: Regime,
    shop: ShopDetails,
    made: datetime,
    words: Words,
    agreed_fresh: bool = False,
) -> bytes:
    """The slip as PDF; `waits` says in words what comes later (in cure, in smoke).

    Fresh meat is told to be kept at 40 °F or below (USDA FSIS, "Danger Zone": bacteria grow from
    40 to 140 °F).
    """
    head = Letterhead(
        sender=sender(shop),
        title=words.say("boxes.pick_up", number=order_number),
        corner=(owner,),
        party=(owner,),
        facts=(
            (words.say("boxes.day"), day_text(made.astimezone().date(), words)),
            (words.say("boxes.fetched_by"), fetched_by or owner),
        ),
    )
    sheet = open_paper(shop.paper, head, "", made, words)
    _count_off(sheet, rows, words)
    sheet.need(80)
    sheet.skip(44)
    sheet.line(0, sheet.y, 260, sheet.y, 0.8)
    sheet.text(0, sheet.y + 12, words.say("boxes.signed"), 9)
    sheet.skip(24)
    said = [words.say("boxes.waits", what=one) for one in waits]
    soft = ", ".join(one.product for one in rows if one.fresh)
    if soft:
        key = "boxes.fresh_agreed" if agreed_fresh else "boxes.not_frozen"
        said += [words.say(key, what=soft), words.say("boxes.keep_cold")]
    if regime == "custom":
        said.append(words.say("boxes.custom"))
    notes(sheet, tuple(said))
    return sheet.pdf()


def _count_off(sheet: Paper, rows: Sequence[PickedUp], words: Words) -> None:
    columns = (
        Column(words.say("boxes.product"), sheet.room - 90 - 100 - 140),
        Column(words.say("boxes.where"), 140),
        Column(words.say("boxes.packages"), 90, "right"),
        Column(words.say("boxes.pounds"), 100, "right"),
    )
    told = [(one.product, one.where, str(one.packages), _net(one, words)) for one in rows]
    count = sum(one.packages for one in rows)
    by_count = sum(one.by_count for one in rows)
    whole = PickedUp("", count, sum(one.nanograms for one in rows), by_count=by_count)
    told.append((words.say("boxes.all"), "", str(count), _net(whole, words)))
    table(sheet, columns, told, 11)


def _net(one: PickedUp, words: Words) -> str:
    """Its pounds; of what was counted, in place of them or below them, how many aren't weighed."""
    if not one.by_count:
        return pounds_text(one.nanograms, 2)
    if one.by_count == one.packages:
        return words.say("bills.by_count")
    also = words.say("bills.more_by_count", number=one.by_count)
    return f"{pounds_text(one.nanograms, 2)}\n{also}"
