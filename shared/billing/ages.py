"""How old what is owed is: payments go to the oldest charges first."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

LIMITS = (30, 60, 90)
"""Last day of the first three ages; the fourth is longer."""


@dataclass(frozen=True, slots=True)
class Aged:
    """Cents owed, since when, and by age; nothing owed has no day."""

    cents: int
    since: date | None
    ages: tuple[int, int, int, int]


def aged(moves: Iterable[tuple[date, int]], today: date) -> Aged:
    """What is left of charges (above nothing) after payments (below), by age on a day.

    $100 on 1 March and $50 on 10 April with $60 paid: on 15 April $40 is 45 days old and $50 is
    5; owed since 1 March.
    """
    charges = sorted(moves)
    owed = sum(cents for _, cents in charges)
    left, since = max(0, owed), None
    ages = [0, 0, 0, 0]
    for day, cents in reversed(charges):
        part = min(max(0, cents), left)
        if part:
            left -= part
            since = day
            ages[sum((today - day).days > limit for limit in LIMITS)] += part
    return Aged(owed, since, (ages[0], ages[1], ages[2], ages[3]))
