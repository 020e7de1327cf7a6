"""One line of a scale as a weight: steady or not, gross or net, and whether it can be so."""

import re
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from importlib.resources import files
from typing import Literal, cast

from shared.units import Weight, WeightUnit

Status = Literal["steady", "moving", "over", "under"]
Kind = Literal["", "gross", "net", "tare"]
UNITS: tuple[WeightUnit, ...] = ("lb", "oz", "kg", "g")
# How many equal readings in a row are called steady where the scale doesn't say so itself
# (common practice, no source).
EQUAL_READINGS = 3


@dataclass(frozen=True, slots=True)
class Pattern:
    """How one scale writes its line. `ask` is sent for a reading, "" where it sends by itself."""

    code: str
    line: re.Pattern[str]
    status: Mapping[str, Status] = field(default_factory=dict[str, Status])
    kinds: Mapping[str, Kind] = field(default_factory=dict[str, Kind])
    ask: str = ""


@dataclass(frozen=True, slots=True)
class ScaleReading:
    """What a line says. `status` None: the scale doesn't say whether it is steady.

    Over and under its range there is no weight.
    """

    weight: Weight | None
    status: Status | None
    kind: Kind = ""


@dataclass(frozen=True, slots=True)
class UnreadLine:
    """A line the pattern doesn't fit."""

    text: str


@cache
def patterns() -> tuple[Pattern, ...]:
    """The patterns that come with the program."""
    text = files("shared.scales").joinpath("patterns.toml").read_text(encoding="utf-8")
    return tuple(pattern_of(one) for one in tomllib.loads(text)["pattern"])


def pattern_of(data: Mapping[str, object]) -> Pattern:
    """A pattern from its data. Raises ValueError where the expression can't be read."""
    try:
        line = re.compile(str(data["line"]))
    except re.error as fault:
        raise ValueError(f"{data.get('code')}: {fault}") from fault
    if "number" not in line.groupindex:
        raise ValueError(f"{data.get('code')}: the pattern names no number")
    return Pattern(
        str(data["code"]),
        line,
        cast("Mapping[str, Status]", data.get("status", {})),
        cast("Mapping[str, Kind]", data.get("kinds", {})),
        str(data.get("ask", "")),
    )


def read_line(text: str, pattern: Pattern, unit: WeightUnit = "lb") -> ScaleReading | UnreadLine:
    """One line as a reading; `unit` holds where the line names none.

    "ST,GS,+00098.50lb" by "comma_header" is 98.50 lb gross, steady; "US,GS,+00097.0lb" is moving;
    "OL,GS" is over its range and has no weight. The digits stay as the scale writes them: 98.50.
    """
    found = pattern.line.fullmatch(text.strip("\r\n"))
    if found is None:
        return UnreadLine(text)
    groups = found.groupdict()
    status = pattern.status.get(groups.get("status") or "")
    kind: Kind = pattern.kinds.get(groups.get("kind") or "", "")
    if status in ("over", "under"):
        return ScaleReading(None, status, kind)
    if not groups["number"]:
        return UnreadLine(text)
    said = (groups.get("unit") or unit).lower()
    weight = _weight(groups["number"], groups.get("sign") == "-", said)
    return UnreadLine(text) if weight is None else ScaleReading(weight, status, kind)


def _weight(number: str, minus: bool, unit: str) -> Weight | None:
    if unit not in UNITS:
        return None
    found: WeightUnit = UNITS[UNITS.index(unit)]
    whole, _, part = number.partition(".")
    count = int(f"{whole}{part}" or "0")
    return Weight(-count if minus else count, found, -len(part))


def steady(readings: Sequence[ScaleReading]) -> bool:
    """Whether the last reading may be taken: the scale says so, or it has stood still.

    Where the scale doesn't say, the last three must be the same weight above nothing.
    """
    if not readings or readings[-1].weight is None:
        return False
    last = readings[-1]
    if last.status is not None:
        return last.status == "steady"
    few = readings[-EQUAL_READINGS:]
    return len(few) == EQUAL_READINGS and all(one.weight == last.weight for one in few)


def on_division(weight: Weight, division: Weight) -> bool:
    """Whether a reading is a whole number of the scale's divisions.

    NIST Handbook 44: a scale indicates in steps of its division, so 98.3 lb can't come from one of
    0.5 lb; 98.5 lb can. Such a reading is questioned, never refused.
    """
    return (weight.exact_nanograms / division.exact_nanograms).denominator == 1
