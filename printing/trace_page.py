"""The trace of a lot on paper: who owns what, and everything that happened, first to last."""

from collections.abc import Sequence
from datetime import datetime

from printing.letterhead import Letterhead, day_text, notes, open_paper, sender, time_text
from printing.page import Column, table
from printing.words import Words
from printing.words.place_words import capital
from printing.words.trace_words import about, animal_name, told_with_reason
from shared.shop.details import ShopDetails
from shared.shop.trace import Trace, TraceEvent, events, kept_until

DAY, HOUR, ABOUT, WHO = 114, 32, 120, 84  # points


def trace_page(
    trace: Trace,
    *,
    animal_id: int | None = None,
    shop: ShopDetails,
    made: datetime,
    words: Words,
) -> bytes:
    """The paper as PDF; with an animal, what concerns it and the lot as a whole."""
    told = events(trace, animal_id)
    sheet = open_paper(shop.paper, _head(trace, animal_id, shop, words), "", made, words)
    columns = (
        Column(words.say("trace.when"), DAY),
        Column("", HOUR),
        Column(words.say("trace.about"), ABOUT),
        Column(words.say("trace.what"), sheet.room - DAY - HOUR - ABOUT - WHO),
        Column(words.say("trace.who"), WHO),
    )
    table(sheet, columns, _rows(told, trace, words), 8.5)
    last = max((one.at for one in told), default=made)
    notes(sheet, (words.say("trace.keep", day=day_text(kept_until(last.date()), words)),))
    return sheet.pdf()


def _head(trace: Trace, animal_id: int | None, shop: ShopDetails, words: Words) -> Letterhead:
    lot = trace.lot
    animals = [one for one in lot.animals if animal_id is None or one.id == animal_id]
    owners = [share.owner or words.say("trace.nobody") for share in lot.shares]
    return Letterhead(
        sender=sender(shop),
        title=words.say("trace.title", lot=lot.number),
        corner=tuple(animal_name(one, words) for one in animals[:3]),
        party=(lot.producer, *(one for one in owners if one != lot.producer)),
        facts=(
            (words.say("trace.kill_day"), day_text(lot.day, words)),
            (
                capital(words.name(lot.species, f"species.{lot.species}", lot.head)),
                words.say(f"papers.regime_{lot.regime}"),
            ),
        ),
    )


def _rows(told: Sequence[TraceEvent], trace: Trace, words: Words) -> list[tuple[str, ...]]:
    return [
        (
            day_text(one.at.astimezone().date(), words),
            time_text(one.at),
            about(one, trace, words),
            told_with_reason(one, trace, words),
            one.person if not one.station else f"{one.person}, {one.station}",
        )
        for one in told
    ]
