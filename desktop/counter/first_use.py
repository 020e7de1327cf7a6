"""What a shop that has just begun still lacks, told where the list of orders is empty."""

from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.store import Store

Lack = Literal["shop", "rates", "days"]


def lacking(store: "Store") -> tuple[Lack, ...]:
    """On a worker: the name for papers and labels, a rate card, the kill days."""
    with store.read() as work:
        there: tuple[tuple[Lack, object], ...] = (
            ("shop", work.shop.details().name.strip()),
            ("rates", work.rates.all()),
            ("days", work.calendar.plan().week),
        )
    return tuple(one for one, has in there if not has)


def lack_words(lacks: "Sequence[Lack]") -> str:
    """One line for each, with the way there; "" where nothing is lacking."""
    translate = QCoreApplication.translate
    said = {
        "shop": translate(
            "FirstUse", "Name and address, for papers and labels: Office, Shop (F6, Alt+4)."
        ),
        "rates": translate(
            "FirstUse", "A rate card, for prices and bills: Office, Rates (F6, Alt+3)."
        ),
        "days": translate(
            "FirstUse", "Kill days and what each takes, if you like: Rail, calendar (F3, Ctrl+K)."
        ),
    }
    if not lacks:
        return ""
    heading = translate("FirstUse", "Not set up yet; booking works without it:")
    return "\n".join([heading, *(f"\u2013 {said[one]}" for one in lacks)])
