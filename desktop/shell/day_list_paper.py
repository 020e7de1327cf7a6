"""The list of a kill day from the shop's records."""

from datetime import date
from typing import TYPE_CHECKING

from desktop.shell.context import now

if TYPE_CHECKING:
    from db.store import Store
    from printing.words import Words


def day_list_paper(store: "Store", day: date, words: "Words") -> bytes:
    """The bookings of a day in their turn, as PDF."""
    from printing.day_list import day_list

    with store.read() as work:
        shop, lots = work.shop.details(), work.calendar.lots(day, day)
        other = work.calendar.filled(day, day, count_lines=False).others.get(day)
    note = "" if other is None else other.note
    return day_list(day, lots, shop=shop, note=note, made=now(), words=words)
