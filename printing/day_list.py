"""The list of a kill day: the bookings in their turn, to hang up and tick off."""

from collections.abc import Iterable, Sequence
from datetime import date, datetime

from printing.letterhead import NO_BREAK, Letterhead, day_text, notes, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.place_words import capital
from shared.shop.day_order import DayLot, in_turn
from shared.shop.details import ShopDetails


def day_list(
    day: date,
    lots: Sequence[DayLot],
    *,
    shop: ShopDetails,
    note: str,
    made: datetime,
    words: Words,
) -> bytes:
    """The list as PDF; `note` is what is said of the date, such as a holiday."""
    head = sum(one.head for one in lots)
    paper = open_paper(shop.paper, _head(day, lots, note, shop, words), "", made, words)
    if not lots:
        paper.text(0, paper.y + 14, words.say("calendar.nothing"), 12)
        return paper.pdf()
    _bookings(paper, in_turn(lots), words)
    paper.skip(10)
    paper.need(20)
    paper.text(0, paper.y + 12, words.say("calendar.total", head), 12, "semibold")
    paper.skip(24)
    notes(paper, tuple(_notes(lots, words)))
    return paper.pdf()


def _head(
    day: date, lots: Sequence[DayLot], note: str, shop: ShopDetails, words: Words
) -> Letterhead:
    booked: dict[str, int] = {}
    for lot in lots:
        booked[lot.species] = booked.get(lot.species, 0) + lot.head
    facts = [
        (capital(words.name("", f"species.{kind}", count)), str(count))
        for kind, count in booked.items()
    ]
    if note:
        facts.append((words.say("calendar.note"), note))
    return Letterhead(
        sender=sender(shop),
        title=words.say("calendar.day_title"),
        corner=(words.say(f"calendar.on_{day.isoweekday()}", day=day_text(day, words)),),
        facts=tuple(facts),
    )


def _bookings(paper: Paper, lots: Iterable[DayLot], words: Words) -> None:
    room = paper.room
    columns = (
        Column(words.say("calendar.turn"), 34, "right"),
        Column(words.say("calendar.lot"), 40, "centre"),
        Column(words.say("calendar.animals"), 84, face="semibold"),
        Column(words.say("calendar.kind"), 92),
        Column(words.say("calendar.producer"), (room - 282) * 0.5),
        Column(words.say("calendar.mind"), (room - 282) * 0.5),
        Column("", 32, "right"),
    )
    rows = [
        (
            str(place),
            str(lot.number),
            f"{lot.head} {words.name('', f'species.{lot.species}', lot.head)}",
            words.say(f"regime.{lot.regime}"),
            "\n".join(one for one in (lot.producer, lot.phone.replace(" ", NO_BREAK)) if one),
            "; ".join(_mind(lot, words)),
            "____",
        )
        for place, lot in enumerate(lots, start=1)
    ]
    table(paper, columns, rows, 11.0)


def _mind(lot: DayLot, words: Words) -> Iterable[str]:
    """What is to be minded of a booking: age of cattle, allergens, what is kept, the note."""
    if lot.over:
        yield words.say("calendar.over")
    elif lot.unknown_age and lot.species == "beef":
        yield words.say("calendar.age_unknown")
    if lot.allergens:
        yield words.say("calendar.allergens")
    if lot.keeps:
        yield words.say("calendar.keeps", what=lot.keeps)
    if lot.note:
        yield lot.note


def _notes(lots: Iterable[DayLot], words: Words) -> Iterable[str]:
    yield words.say("calendar.turn_note")
    if any(one.species == "beef" for one in lots):
        yield words.say("calendar.age_note")
