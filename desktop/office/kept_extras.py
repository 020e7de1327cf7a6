"""What is also on orders' next bills, kept at the station until it is billed or taken back."""

import json
import logging
from fractions import Fraction

from desktop.journal import Journal
from desktop.office.extras_dialog import Extras
from shared.billing.lot import Asked, Credit

log = logging.getLogger(__name__)
DRAFT = "office.extras"


class KeptExtras(dict[int, Extras]):
    """Extras by order; every change is noted in the station's journal and found again on opening.

    Setting an order's extras to none at all takes them out.
    """

    def __init__(self, journal: Journal) -> None:
        super().__init__()
        self._journal = journal
        for order, text in (journal.found(DRAFT) or {}).items():
            try:
                super().__setitem__(int(order), _extras_of(text))
            except (ValueError, KeyError, TypeError):
                log.exception("extras of order %s not read: %s", order, text)

    def __setitem__(self, order: int, extras: Extras) -> None:
        if extras == Extras():
            self.drop(order)
            return
        super().__setitem__(order, extras)
        self._note()

    def drop(self, order: int) -> None:
        """They stand on a bill now, or are no longer wanted."""
        if super().pop(order, None) is not None:
            self._note()

    def _note(self) -> None:
        if self:
            self._journal.note(DRAFT, {str(order): _text(one) for order, one in self.items()})
        else:
            self._journal.forget(DRAFT)


def _text(extras: Extras) -> str:
    return json.dumps(
        {
            "asked": [[one.code, str(one.quantity)] for one in extras.asked],
            "credits": [[one.reason, one.cents] for one in extras.credits],
        }
    )


def _extras_of(text: str) -> Extras:
    kept = json.loads(text)
    return Extras(
        tuple(Asked(str(code), Fraction(much)) for code, much in kept["asked"]),
        tuple(Credit(str(reason), int(cents)) for reason, cents in kept["credits"]),
    )
