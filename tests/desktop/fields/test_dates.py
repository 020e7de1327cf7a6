"""Days as people say them, checked against the calendar of Python's own library."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop.fields.dates import date_text, day_text, read_date, weekdays

TODAY = date(2026, 11, 25)  # a Wednesday


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("12/3", date(2026, 12, 3)),
        ("1/5", date(2027, 1, 5)),
        ("11/20", date(2026, 11, 20)),
        ("6/1/27", date(2027, 6, 1)),
        ("12-3-2026", date(2026, 12, 3)),
        ("2026-12-03", date(2026, 12, 3)),
        ("Dec 3", date(2026, 12, 3)),
        ("3 dec", date(2026, 12, 3)),
        ("December 3, 2026", date(2026, 12, 3)),
        ("3 de diciembre de 2026", date(2026, 12, 3)),
        ("today", TODAY),
        ("mañana", date(2026, 11, 26)),
        ("fri", date(2026, 11, 27)),
        ("wednesday", date(2026, 12, 2)),
        ("miércoles", date(2026, 12, 2)),
        ("+7", date(2026, 12, 2)),
        ("-1", date(2026, 11, 24)),
    ],
)
def test_a_day_is_read_as_people_say_it(typed: str, day: date) -> None:
    assert read_date(typed, TODAY) == day


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("fri", date(2026, 11, 20)),
        ("wednesday", TODAY),
        ("12/3", date(2025, 12, 3)),
        ("Nov 20", date(2026, 11, 20)),
        ("1/5", date(2026, 1, 5)),
        ("+1", date(2026, 11, 26)),
        ("12/3/26", date(2026, 12, 3)),
        ("2/29", None),
    ],
)
def test_a_day_that_was_is_the_last_such_day(typed: str, day: date | None) -> None:
    """What is said outright is read as it stands: whether it may be is the field's to say."""
    assert read_date(typed, TODAY, past=True) == day


@pytest.mark.parametrize("typed", ["", "13/1", "2/30", "soon", "12", "Smarch 3", "2026-13-01"])
def test_what_is_no_day_is_not_guessed_at(typed: str) -> None:
    assert read_date(typed, TODAY) is None


@given(st.dates(date(2000, 1, 1), date(2099, 12, 31)), st.sampled_from(["en", "es"]))
def test_a_day_as_shown_reads_back(day: date, language: str) -> None:
    assert read_date(date_text(day, language), TODAY) == day


@given(st.dates(date(2000, 1, 1), date(2099, 12, 31)))
def test_the_weekday_shown_is_the_calendars(day: date) -> None:
    assert date_text(day).startswith(day.strftime("%a %b "))


@pytest.mark.parametrize(("language", "said"), [("en", "Fri Dec 4"), ("es", "vie 4 dic")])
def test_a_near_day_is_told_whole_without_its_year(language: str, said: str) -> None:
    assert day_text(date(2026, 12, 4), language) == said


def test_headings_have_their_accents() -> None:
    assert weekdays("es") == ("Lun", "Mar", "Mié", "Jue", "Vie", "Sáb", "Dom")
    assert weekdays()[2] == "Wed"
