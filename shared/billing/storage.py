"""Days of storage that are charged for, counted from the day an order is ready."""

from collections.abc import Collection
from datetime import date, timedelta
from typing import Final, Literal

StorageDays = Literal["every_day", "weekdays", "six_days"]
"""Every day counts, or Monday to Friday, or to Saturday, less the days the shop is closed."""

_NOT_COUNTED: Final[dict[StorageDays, frozenset[int]]] = {
    "every_day": frozenset(),
    "weekdays": frozenset((5, 6)),
    "six_days": frozenset((6,)),
}


def counts(day: date, which: StorageDays, closed: Collection[date] = ()) -> bool:
    """Whether storage is counted for a day; where every day counts, closed ones do too."""
    if which == "every_day":
        return True
    return day.weekday() not in _NOT_COUNTED[which] and day not in closed


def days_stored(
    ready: date,
    fetched: date,
    which: StorageDays = "every_day",
    closed: Collection[date] = (),
) -> int:
    """The days from the one after `ready` to `fetched`; a card's steps say how many are free.

    Ready on Friday 6 March and fetched on Monday 16 March are 10 days; of working days, six: then
    "$5 a day after 5 business days" is $5. Nothing when fetched on the day it was ready, or
    before.
    """
    days = (ready + timedelta(days=past) for past in range(1, (fetched - ready).days + 1))
    return sum(counts(day, which, closed) for day in days)


def nth_day(
    ready: date, number: int, which: StorageDays = "every_day", closed: Collection[date] = ()
) -> date:
    """The day that is counted as the `number`th, from 1.

    Ready on Friday 6 March, the sixth working day is Monday 16 March.
    """
    day = ready
    while number > 0:
        day += timedelta(days=1)
        number -= counts(day, which, closed)
    return day
