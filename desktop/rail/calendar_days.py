"""What the calendar's grid says of each day: bookings, places, hooks, block minutes, closed."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, timedelta

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.rail.calendar_grid import WEEK, DayCell
from printing.words import Words
from shared.shop.calendar import Filled, hooks_on, minutes_on, places_on
from shared.shop.day_order import DayLot


def span_of(day: date, *, month: bool) -> tuple[date, date]:
    """Whole weeks from Monday on: of a day's month, or its week.

    March 9, 2026, a Monday: the month's are February 23 to April 5.
    """
    first = day.replace(day=1) if month else day
    start = first - timedelta(first.weekday())
    if not month:
        return start, start + timedelta(WEEK - 1)
    last = (first + timedelta(31)).replace(day=1) - timedelta(1)
    return start, last + timedelta(WEEK - 1 - last.weekday())


def cells_of(
    span: tuple[date, date], filled: Filled, lots: Sequence[DayLot], words: Words, chosen: date
) -> list[DayCell]:
    """A cell for each day; the days of other months are quiet."""
    by_day: dict[date, list[DayLot]] = defaultdict(list)
    for lot in lots:
        by_day[lot.day].append(lot)
    days = [span[0] + timedelta(n) for n in range((span[1] - span[0]).days + 1)]
    month = len(days) > WEEK
    return [
        _cell(day, filled, by_day[day], words, quiet=month and day.month != chosen.month)
        for day in days
    ]


def _cell(
    day: date, filled: Filled, lots: Sequence[DayLot], words: Words, *, quiet: bool
) -> DayCell:
    lines, parts = _fullness(day, filled, lots, words)
    other = filled.others.get(day)
    closed = other is not None and other.closed
    part = max(parts, default=None)
    mark = Mark.SETTLED
    if part is not None and part >= 100:
        mark = Mark.TIGHT if part == 100 else Mark.CONTESTED
    if closed:
        said = QCoreApplication.translate("CalendarDays", "Closed")
        lines = [f"{said}: {other.note}" if other and other.note else said, *lines]
    elif other is not None:
        lines = [*lines, other.note or QCoreApplication.translate("CalendarDays", "other places")]
    date_said = date_text(day, words.language)
    return DayCell(
        day, str(day.day), tuple(lines), part, mark, ". ".join((date_said, *lines)), quiet
    )


def _fullness(
    day: date, filled: Filled, lots: Sequence[DayLot], words: Words
) -> tuple[list[str], list[int]]:
    """In words: places by animal, hooks, block minutes; and each in parts of 100."""
    said = QCoreApplication.translate
    plan = filled.plan
    booked: dict[str, int] = defaultdict(int)
    for lot in lots:
        booked[lot.species] += lot.head
    there = places_on(plan, filled.others, day)
    lines: list[str] = []
    parts: list[int] = []
    for kind in dict.fromkeys((*there, *booked)):
        name = words.name("", f"species.{kind}", 2)
        if there.get(kind):
            lines.append(
                said("CalendarDays", "{taken} of {there} {animals}").format(
                    taken=booked[kind], there=there[kind], animals=name
                )
            )
            parts.append(booked[kind] * 100 // there[kind])
        elif booked[kind]:
            lines.append(f"{booked[kind]} {words.name('', f'species.{kind}', booked[kind])}")
            if plan.week:
                parts.append(101)
    hooks, minutes = hooks_on(filled, day), minutes_on(filled, day)
    if plan.hooks and hooks:
        hook_words = said("CalendarDays", "{taken} of {there} hooks")
        lines.append(hook_words.format(taken=hooks, there=plan.hooks))
        parts.append(hooks * 100 // plan.hooks)
    if plan.block_minutes and minutes:
        minute_words = said("CalendarDays", "{taken} of {there} min at the block")
        lines.append(minute_words.format(taken=minutes, there=plan.block_minutes))
        parts.append(minutes * 100 // plan.block_minutes)
    return lines, parts
