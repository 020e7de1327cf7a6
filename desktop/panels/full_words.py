"""Why a kill day can't take a booking, in a sentence."""

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import date_text
from shared.shop.calendar import Full


def full_words(full: Full, language: str) -> str:
    """Says: Tue, Mar 10 is too full: 12 of 12 places taken, 1 needed."""
    translate = QCoreApplication.translate
    words = {
        "closed": translate("DayRoom", "{day} is closed."),
        "no_kill_day": translate("DayRoom", "{day} has no places for this animal."),
        "places": translate(
            "DayRoom", "{day} is too full: {taken} of {there} places taken, {needed} needed."
        ),
        "hooks": translate(
            "DayRoom", "Cooler too full on {day}: {taken} of {there} hooks taken, {needed} needed."
        ),
        "block": translate(
            "DayRoom", "Block too full on {day}: {taken} of {there} minutes taken, {needed} needed."
        ),
    }
    return words[full.code].format(
        day=date_text(full.day, language), taken=full.taken, there=full.there, needed=full.needed
    )
