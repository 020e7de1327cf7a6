"""What a column of a table shows of a row, and how it is set and sorted."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, Literal, TypeVar

from desktop.look.patterns import Mark

Row = TypeVar("Row")
Kind = Literal["text", "figure", "state", "date"]


@dataclass(frozen=True, slots=True)
class Figure:
    """A number and its unit, e.g. Figure("98.5", "lb"): set on the decimal, the unit in steel."""

    number: str
    unit: str = ""

    def __str__(self) -> str:
        return f"{self.number} {self.unit}".strip()


@dataclass(frozen=True, slots=True)
class Column(Generic[Row]):
    """One column.

    `title` is asked again when the language changes. `show` gives the text (or a Figure) of a
    row; `sort` what it is sorted by, else the text. `mark` gives a state's pattern; PLAIN keeps
    its room so that words stand in a line, None doesn't. `width` is
    in pixels at factor 100; `stretch` takes what is left. `tip` is said of a cell on hovering.
    `places` are the most a figure has behind its point, where that is known.
    """

    key: str
    title: Callable[[], str]
    show: Callable[[Row], str | Figure]
    kind: Kind = "text"
    sort: Callable[[Row], Any] | None = None
    mark: Callable[[Row], Mark | None] | None = None
    width: int = 120
    stretch: bool = False
    tip: Callable[[Row], str] | None = None
    places: int | None = None


def figure(text: str) -> Figure:
    """A shown weight or length split before its unit: "1,250.5 lb" is 1,250.5 and lb."""
    number, _, unit = text.replace("\u00a0", " ").rpartition(" ")
    return Figure(number, unit) if number else Figure(unit)
