"""The cooler: what hangs there and until when, and the temperatures that were read of it."""

import re
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from fractions import Fraction
from typing import Literal

DegreeUnit = Literal["F", "C"]
TemperatureVerdict = Literal["within", "above", "below", "no_limits"]
Due = Literal["hangs", "due", "overdue"]
_TYPED = re.compile(r"([+\u2212-]?)(\d{1,3})(?:[.,](\d))?\s*(?:°|º)?\s*([fFcC]?)")
MOST_TENTHS = 2000
# How long after its day a carcass is called overdue (common practice, no source).
GRACE_DAYS = 2


@dataclass(frozen=True, slots=True)
class Temperature:
    """A temperature in tenths of a degree, as read: 38.5 °F is 385 tenths F."""

    tenths: int
    unit: DegreeUnit

    @property
    def tenths_f(self) -> Fraction:
        """In tenths of a degree Fahrenheit, exactly: 3.0 °C is 374 (37.4 °F)."""
        if self.unit == "F":
            return Fraction(self.tenths)
        return Fraction(self.tenths) * 9 / 5 + 320

    def text(self) -> str:
        """As it is told: "38.5 °F"; below nothing with its sign."""
        whole, part = divmod(abs(self.tenths), 10)
        sign = "\u2212" if self.tenths < 0 else ""
        return f"{sign}{whole}.{part}\u00a0°{self.unit}"


def read_temperature(text: str, unit: DegreeUnit) -> Temperature | None:
    """What was typed; `unit` holds where none is. None where it is no temperature.

    "38" is 38.0 °F in a shop that reads Fahrenheit, "3,5 c" is 3.5 °C, "-10" ten below nothing.
    """
    found = _TYPED.fullmatch(text.strip())
    if found is None:
        return None
    tenths = int(found[2]) * 10 + int(found[3] or "0")
    if tenths > MOST_TENTHS:
        return None
    said: DegreeUnit = unit
    if found[4]:
        said = "C" if found[4] in "cC" else "F"
    return Temperature(-tenths if found[1] in ("-", "\u2212") else tenths, said)


@dataclass(frozen=True, slots=True)
class RoomLimits:
    """The shop's own limits of a room; None is no limit on that side."""

    room: str
    low: Temperature | None
    high: Temperature | None


def judged(reading: Temperature, limits: RoomLimits | None) -> TemperatureVerdict:
    """Whether a reading lies within the shop's own limits; the limits themselves are within.

    41.0 °F in a room kept at 28 to 40 °F is above; 4.0 °C (39.2 °F) is within.
    """
    if limits is None or (limits.low is None and limits.high is None):
        return "no_limits"
    if limits.high is not None and reading.tenths_f > limits.high.tenths_f:
        return "above"
    if limits.low is not None and reading.tenths_f < limits.low.tenths_f:
        return "below"
    return "within"


@dataclass(frozen=True, slots=True)
class CoolerReading:
    """A reading as kept; never overwritten: a correction names the one it `corrects`."""

    id: int
    room: str
    read_at: datetime
    temperature: Temperature
    note: str
    person: str
    corrects: int | None = None
    reason: str = ""
    current: bool = True


@dataclass(frozen=True, slots=True)
class Hanging:
    """A carcass in the cooler. `wish` is the longest its owners want it to hang, None: as usual.

    `hot_ng` is its current hot weight, sides and quarters together; None while not all is weighed.
    """

    animal_id: int
    lot_id: int
    lot_number: int
    tag: str
    species: str
    state: str
    place: str
    owners: str
    hung_on: date
    wish: int | None
    hot_ng: int | None


def days_hanging(one: Hanging, today: date) -> int:
    """Days since it was hung; the day itself is 0."""
    return (today - one.hung_on).days


def due_on(one: Hanging, house: tuple[int, int]) -> date:
    """The day it is to be cut: by the owners' wish, else the house's least days.

    Hung on March 9 with a house that hangs beef 10 to 21 days: due March 19; with a wish of 14,
    March 23.
    """
    days = one.wish if one.wish is not None else house[0]
    return one.hung_on + timedelta(days=days)


def due_state(one: Hanging, house: tuple[int, int], today: date) -> Due:
    """Whether it still hangs, is due, or is past its day.

    Overdue: more than two days past the wish or, without one, past the house's most days.
    """
    due = due_on(one, house)
    if today < due:
        return "hangs"
    last = due + timedelta(days=GRACE_DAYS)
    if one.wish is None:
        last = one.hung_on + timedelta(days=max(house))
    return "overdue" if today > last else "due"


def expected_chilled(hot_ng: int, shrink: Fraction) -> int:
    """The weight after the cooler's usual shrink, rounded down: 750 lb at 2 % is 735 lb."""
    return int(hot_ng * (1 - shrink))
