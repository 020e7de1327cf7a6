"""The kill days as a calendar file by RFC 5545, an all-day event for each booking."""

from collections.abc import Iterable
from datetime import datetime, timedelta

from printing.words import Words
from shared.shop.day_order import DayLot


def calendar_file(lots: Iterable[DayLot], made: datetime, words: Words) -> bytes:
    """Bytes of the file; a lot keeps its UID, so that a later file moves its event."""
    from icalendar import Calendar, Event

    calendar = Calendar()
    calendar.add("prodid", "-//Steelyard//Kill days//EN")
    calendar.add("version", "2.0")
    for lot in lots:
        event = Event()
        event.add("uid", f"lot-{lot.number}@steelyard")
        event.add("dtstamp", made)
        event.add("dtstart", lot.day)
        event.add("dtend", lot.day + timedelta(1))
        event.add("sequence", lot.version)
        animals = words.name("", f"species.{lot.species}", lot.head)
        event.add("summary", f"{lot.head} {animals}, {lot.producer}")
        about = (words.say(f"regime.{lot.regime}"), lot.phone, lot.keeps, lot.note)
        event.add("description", "\n".join(one for one in about if one))
        calendar.add_component(event)
    return calendar.to_ical()
