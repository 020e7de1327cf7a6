"""A time of day as people write it at the pen: 7:30, 730, 6:30 pm."""

import re
from datetime import datetime, time, timedelta

WRITTEN = re.compile(r"(\d{1,2})[:.]?(\d{2})?\s*([ap])?\.?m?\.?", re.IGNORECASE)


def read_clock(text: str, now: datetime) -> datetime | None:
    """The last such time up to `now`, on the shop's wall; None where it can't be read.

    At 8:00 on March 3, "7:30" is that morning and "6:30 pm" the evening before.
    """
    found = WRITTEN.fullmatch(text.strip())
    if found is None:
        return None
    hour, minute, half = int(found[1]), int(found[2] or 0), (found[3] or "").lower()
    if half:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if half == "p" else 0)
    if hour > 23 or minute > 59:
        return None
    here = now.astimezone()
    said = datetime.combine(here.date(), time(hour, minute), here.tzinfo)
    return said if said <= here else said - timedelta(days=1)


def clock_text(at: datetime) -> str:
    """Day and time on the shop's wall, as it is read again: "7:30"."""
    return f"{at.astimezone():%H:%M}"
