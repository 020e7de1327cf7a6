"""Days of storage that are charged for, counted from the day an order is ready."""

from collections.abc import Collection
from datetime import date, timedelta


def days_stored(
    ready: date,
    fetched: date,
    *,
    working_days: bool = False,
    closed_weekdays: Collection[int] = (5, 6),
    closed: Collection[date] = (),
) -> int:
    """The days from the one after `ready` to `fetched`; a card's steps say how many are free.

    Ready on Friday 6 March and fetched on Monday 16 March are 10 days; of working days, six: then
    "$5 a day after 5 business days" is $5. Weekdays count from Monday 0. Nothing when fetched on
    the day it was ready, or before.
    """
    days = (ready + timedelta(days=past) for past in range(1, (fetched - ready).days + 1))
    if not working_days:
        return max(0, (fetched - ready).days)
    return sum(day.weekday() not in closed_weekdays and day not in closed for day in days)
