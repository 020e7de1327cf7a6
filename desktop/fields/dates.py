"""Reading a day as people say it on the phone: "12/3", "3 dec", "tomorrow", "+7", "friday"."""

import re
from datetime import date, datetime, timedelta

from shared.shop.customers import name_key

MONTHS = {
    "en": ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"),
    "es": ("ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"),
}
DAYS = {
    "en": ("mon", "tue", "wed", "thu", "fri", "sat", "sun"),
    "es": ("lun", "mar", "mie", "jue", "vie", "sab", "dom"),
}
_ACCENTED = {"mie": "mié", "sab": "sáb"}
_NAMED = {"today": 0, "hoy": 0, "tomorrow": 1, "manana": 1, "yesterday": -1, "ayer": -1}
_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})")
_SLASHED = re.compile(r"(\d{1,2})[/.-](\d{1,2})(?:[/.-](\d{2}|\d{4}))?")
_STEP = re.compile(r"([+-])\s?(\d{1,3})")
_WORDS = re.compile(
    r"(?:[a-z]{2,9}\.?,? )?"  # the weekday, which only repeats the day
    r"(?:(\d{1,2})(?: de)? ([a-z]{3,10})\.?|([a-z]{3,10})\.? (\d{1,2}))"
    r"(?:,?(?: de)? (\d{4}))?"
)
_WEEKDAY_ALONE = re.compile(r"[a-z]{3,9}\.?")
# A day said without a year lies at most this far back; else it is next year's.
BACK = timedelta(days=183)


def read_date(text: str, today: date, *, past: bool = False) -> date | None:
    """The day meant, seen from today; None when it isn't one.

    Month before day, as the trade's calendars have it: on 2026-11-25, "12/3" is 2026-12-03,
    "1/5" is 2027-01-05, "fri" is 2026-11-27, "+7" is 2026-12-02. With `past` it is one that was,
    today at the latest: "fri" is 2026-11-20, "12/3" is 2025-12-03.
    """
    plain = name_key(text)
    if plain in _NAMED:
        return today + timedelta(days=_NAMED[plain])
    step = _STEP.fullmatch(plain)
    if step:
        return today + timedelta(days=int(step[2]) * (1 if step[1] == "+" else -1))
    iso = _ISO.fullmatch(plain)
    if iso:
        return _day(int(iso[1]), int(iso[2]), int(iso[3]))
    slashed = _SLASHED.fullmatch(plain)
    if slashed:
        return _dated(int(slashed[1]), int(slashed[2]), slashed[3], today, past)
    if _WEEKDAY_ALONE.fullmatch(plain):
        return _weekday(plain, today, past)
    return _worded(plain, today, past)


def date_text(day: date, language: str = "en") -> str:
    """A day for people: "Fri Dec 4, 2026", in Spanish "vie 4 dic 2026". Both read back."""
    weekday, month = DAYS[language][day.weekday()], MONTHS[language][day.month - 1]
    if language == "es":
        return f"{_ACCENTED.get(weekday, weekday)} {day.day} {month} {day.year}"
    return f"{weekday.title()} {month.title()} {day.day}, {day.year}"


def weekdays(language: str = "en") -> tuple[str, ...]:
    """The days of the week as a heading says them, Monday first: "Wed", in Spanish "Mié"."""
    return tuple(_ACCENTED.get(one, one).title() for one in DAYS[language])


def day_text(day: date, language: str = "en") -> str:
    """A day without its year, for what lies near: "Fri Dec 4", in Spanish "vie 4 dic"."""
    return date_text(day, language).removesuffix(f" {day.year}").removesuffix(",")


def moment_text(at: datetime, language: str = "en") -> str:
    """A day and hour on the shop's wall: "Fri Dec 4, 2026, 14:05", "vie 4 dic 2026, 14:05"."""
    here = at.astimezone()
    return f"{date_text(here.date(), language)}, {here:%H:%M}"


def near_moment_text(at: datetime, language: str = "en") -> str:
    """As `moment_text` where there is little room and it is of late: "Dec 4, 14:05"."""
    here = at.astimezone()
    return f"{day_text(here.date(), language).partition(' ')[2]}, {here:%H:%M}"


def _worded(plain: str, today: date, past: bool) -> date | None:
    match = _WORDS.fullmatch(plain)
    if not match:
        return None
    month = _one_of(match[2] or match[3], MONTHS)
    if month is None:
        return None
    return _dated(month + 1, int(match[1] or match[4]), match[5], today, past)


def _one_of(word: str, names: dict[str, tuple[str, ...]]) -> int | None:
    short = word.rstrip(".")[:3]
    for in_language in names.values():
        if short in in_language:
            return in_language.index(short)
    return None


def _weekday(plain: str, today: date, past: bool) -> date | None:
    weekday = _one_of(plain, DAYS)
    if weekday is None:
        return None
    if past:
        return today - timedelta(days=(today.weekday() - weekday) % 7)
    return today + timedelta(days=(weekday - today.weekday() - 1) % 7 + 1)


def _dated(month: int, day: int, year: str | None, today: date, past: bool) -> date | None:
    if year:
        return _day(int(year) + (2000 if len(year) == 2 else 0), month, day)
    found = _day(today.year, month, day)
    if past:
        return _day(today.year - 1, month, day) if found is None or found > today else found
    if found is not None and today - found > BACK:
        return _day(today.year + 1, month, day)
    return found


def _day(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None
