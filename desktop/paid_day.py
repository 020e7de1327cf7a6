"""The day money came, where it is typed later: never to come, never in a closed period."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QWidget

from desktop.fields import DateField
from desktop.fields.dates import date_text

if TYPE_CHECKING:
    from desktop.bench import Bench

LONG_AGO = 31
"""Money that came more than so many days ago is asked about: it may be a slip of the key."""


@dataclass(frozen=True, slots=True)
class OpenDays:
    """Today, the last day that is closed, and the day the drawer was counted last."""

    today: Callable[[], date]
    closed: date | None = None
    counted: date | None = None


def open_days(bench: "Bench") -> OpenDays:
    """The days money may be dated, as the books stand."""
    with bench.store.read() as work:
        return OpenDays(bench.today, work.periods.closed_through(), work.ledger.last_counted())


class PaidDay(DateField):
    """Today, where nothing else is said; "friday" is the last one."""

    def __init__(self, days: OpenDays, parent: QWidget | None = None) -> None:
        super().__init__(days.today, parent, required=True, past=True)
        self._days = days
        self.set_value(days.today())

    def retranslate(self) -> None:
        """Its label."""
        self.set_label(self.tr("Da&y"))

    def said(self) -> date | None:
        """The day, where it is another than today: today's is the store's to say."""
        day = self.value()
        return None if day == self._days.today() else day

    def doubt(self, *, cash: bool) -> str:
        """What is asked about before it is kept; "" for nothing."""
        day, today, counted = self.value(), self._days.today(), self._days.counted
        if day is None or day >= today:
            return ""
        if cash and counted is not None and counted >= day:
            said = self.tr(
                "The drawer was counted on {day}: if this cash was in it, the next count "
                "comes out short by as much."
            )
            return said.format(day=_said(counted))
        if (today - day).days > LONG_AGO:
            said = self.tr("{day} is {count} days ago.")
            return said.format(day=_said(day), count=(today - day).days)
        return ""

    def _unread(self) -> str:
        wrong = super()._unread()
        day, closed = self.value(), self._days.closed
        if wrong or day is None:
            return wrong
        if day > self._days.today():
            return self.tr("{day} is still to come; money is dated the day it came.").format(
                day=_said(day)
            )
        if closed is not None and day <= closed:
            said = self.tr("The books are closed through {day}; date it later.")
            return said.format(day=_said(closed))
        return ""


def _said(day: date) -> str:
    spanish = QLocale().language() is QLocale.Language.Spanish
    return date_text(day, "es" if spanish else "en")
