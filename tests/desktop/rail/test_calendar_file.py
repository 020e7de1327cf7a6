"""The calendar file, read by a reader written here from RFC 5545, 3.1 and 3.3.11."""

import re
from datetime import UTC, date, datetime

from desktop.rail.calendar_file import calendar_file
from printing.words import Words
from shared.shop.day_order import DayLot

MADE = datetime(2026, 3, 8, 16, 0, tzinfo=UTC)
LONG = "Señora Peñaranda; Núñez, and sons " * 4


def events(data: bytes) -> list[dict[str, str]]:
    """Unfold (CRLF and one white space), split at the first colon, take escapes back."""
    lines = data.decode().replace("\r\n ", "").replace("\r\n\t", "").split("\r\n")
    found: list[dict[str, str]] = []
    for line in lines:
        name, _, value = line.partition(":")
        if line == "BEGIN:VEVENT":
            found.append({})
        elif found and not line.startswith("END:"):
            plain = re.sub(r"\\([,;\\nN])", lambda m: "\n" if m[1] in "nN" else m[1], value)
            found[-1][name.partition(";")[0]] = plain
    return found


def test_what_is_written_is_read_back_whole() -> None:
    lots = [
        DayLot(
            1,
            71,
            date(2026, 12, 31),
            "pork",
            2,
            LONG.strip(),
            "(555) 010-0111",
            note="gate\nback",
            version=3,
        )
    ]
    data = calendar_file(lots, MADE, Words("en", strict=True))
    (event,) = events(data)
    assert event["SUMMARY"] == f"2 hogs, {LONG.strip()}"
    assert (event["DTSTART"], event["DTEND"]) == ("20261231", "20270101")
    assert event["DTSTAMP"] == "20260308T160000Z"
    assert event["DESCRIPTION"].endswith("(555) 010-0111\ngate\nback")
    assert (event["UID"], event["SEQUENCE"]) == ("lot-71@steelyard", "3")


def test_lines_are_at_most_75_octets_and_end_in_crlf() -> None:
    data = calendar_file(
        [DayLot(1, 71, date(2026, 3, 9), "deer", 1, LONG)], MADE, Words("es", strict=True)
    )
    assert data.endswith(b"END:VCALENDAR\r\n")
    assert b"\n" not in data.replace(b"\r\n", b"")
    assert max(len(line) for line in data.split(b"\r\n")) <= 75


def test_no_booking_is_still_a_calendar() -> None:
    data = calendar_file([], MADE, Words("en", strict=True))
    assert b"VERSION:2.0\r\n" in data
    assert b"PRODID:" in data
    assert events(data) == []
