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
    """In words, the fullest first: places by animal, hooks, block minutes; and parts of 100."""
    translate = QCoreApplication.translate
    plan = filled.plan
    booked: dict[str, int] = defaultdict(int)
    for lot in lots:
        booked[lot.species] += lot.head
    there = places_on(plan, filled.others, day)
    other = filled.others.get(day)
    closed = other is not None and other.closed  # said of the day already
    found: list[tuple[int, str]] = []
    for kind in dict.fromkeys((*there, *booked)):
        if there.get(kind):
            name = words.name("", f"species.{kind}", 2)
            line = translate("CalendarDays", "{taken} of {there} {animals}").format(
                taken=booked[kind], there=there[kind], animals=name
            )
            found.append((_part(booked[kind], there[kind]), line))
        elif booked[kind]:
            name = words.name("", f"species.{kind}", booked[kind])
            line = f"{booked[kind]} {name}"
            if plan.week and not closed:  # "3 of 0 hogs": what there is fits the cell of a month
                line = translate("CalendarDays", "{taken} of {there} {animals}").format(
                    taken=booked[kind], there=0, animals=words.name("", f"species.{kind}", 2)
                )
            found.append((101 if plan.week else 0, line))
    hooks, minutes = hooks_on(filled, day), minutes_on(filled, day)
    if plan.hooks and hooks:
        line = translate("CalendarDays", "{taken} of {there} hooks")
        found.append((_part(hooks, plan.hooks), line.format(taken=hooks, there=plan.hooks)))
    if plan.block_minutes and minutes:
        line = translate("CalendarDays", "{taken}/{there} min block")
        line = line.format(taken=minutes, there=plan.block_minutes)
        found.append((_part(minutes, plan.block_minutes), line))
    found.sort(key=lambda one: -one[0])
    counted = [part for part, _ in found] if plan.week else []
    return [line for _, line in found], counted


def _part(taken: int, there: int) -> int:
    """In parts of 100, above 100 as soon as it is over: 181 of 180 is 101."""
    return -(-taken * 100 // there) if taken > there else taken * 100 // there
