"""Moving a booking to another day: asked where it is written, with a reason when it is full."""

from dataclasses import replace
from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import date_text
from desktop.panels.full_words import full_words
from shared.shop.calendar import LOOK_AHEAD, Booking, Full, next_days, why_full
from shared.shop.lots import Lot
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench


def move_booking(bench: "Bench", lot_id: int, day: date) -> str:
    """Move it and say so; a full day asks for a reason, without one it stays where it is."""
    translate = QCoreApplication.translate
    full, next_day = _try(bench, lot_id, day, "")
    reason = ""
    if full:
        why = " ".join(full_words(one, bench.words.language) for one in full)
        if next_day is not None:
            why += " " + translate("CalendarMove", "The next day that can take it: {day}.").format(
                day=date_text(next_day, bench.words.language)
            )
        asked = bench.messages.ask_reason(
            translate("CalendarMove", "Move it all the same?"),
            why + " " + translate("CalendarMove", "Say why it is moved there all the same."),
        )
        if not asked:
            return translate("CalendarMove", "Not moved.")
        reason = asked
        _try(bench, lot_id, day, reason)
    with bench.store.read() as work:
        lot = work.lots.get(lot_id)
    if lot is None or lot.day != day:
        return translate("CalendarMove", "Not moved: after the kill a day is fixed.")
    return translate("CalendarMove", "Lot {number} is on {day} now.").format(
        number=lot.number, day=date_text(day, bench.words.language)
    )


def _try(
    bench: "Bench", lot_id: int, day: date, reason: str
) -> tuple[tuple[Full, ...], date | None]:
    """What speaks against it, within the unit that writes; nothing when it was written."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = work.lots.get(lot_id)
        if lot is None or lot.day == day:
            return (), None
        filled = work.calendar.filled(day, day + timedelta(LOOK_AHEAD + 60), without=lot_id)
        found = work.lots.save_details(replace(lot, day=day))
        if not isinstance(found, Lot):
            return (), None
        asked = Booking(day, lot.species, lot.head, work.calendar.needed_by(lot_id))
        full = why_full(filled, asked)
        if full and not reason:
            return full, next(iter(next_days(filled, asked, 1)), None)
        if full and isinstance(work.calendar.overrule(lot_id, full, reason), Refused):
            return full, None
        work.commit()
    return (), None
