"""How far a cut's pounds may lie from the forecast: as far as honest published tables lie apart.

The pairs of lines are in spread.toml, each with its two tables. The range is not a tuned number:
it is 1.2816 (the normal point that leaves 1 in 10 on either side) times the root mean square of
the differences of a kind's pairs, each over the mean of its two figures.
"""

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from importlib import resources
from math import isqrt

ONE_IN_TEN = Fraction("1.2816")
_FINE = 10_000


@dataclass(frozen=True, slots=True)
class Pair:
    """One line in two tables, as fractions of the carcass. `kind` is a cut's kind, or "waste"."""

    species: str
    kind: str
    name: str
    tables: tuple[str, str]
    first: Fraction
    second: Fraction

    @property
    def apart(self) -> Fraction:
        """How far the two lie apart, over their mean; 4 and 6 of a hundred: 2/5."""
        return 2 * (self.first - self.second) / (self.first + self.second)


@cache
def pairs() -> tuple[Pair, ...]:
    """Every line that two tables hold."""
    text = resources.files("shared.carcass").joinpath("spread.toml").read_text(encoding="utf-8")
    return tuple(
        Pair(
            one["species"],
            one["kind"],
            one["name"],
            (one["tables"][0], one["tables"][1]),
            _fraction(one["first"]),
            _fraction(one["second"]),
        )
        for one in tomllib.loads(text)["line"]
    )


@cache
def band(kind: str, without: str = "") -> Fraction:
    """The range of a kind of cut, either way, as a fraction of the expected pounds.

    Lines of all species together, since no species has enough of a kind for itself; a kind
    nobody prints twice (offal, fat) has the range of all lines. `without` leaves a table out, to
    try the range on a table it wasn't made from.
    Worked number: pairs 2/5 and 1/5 apart have a root mean square of 0.3162, a range of 0.4053.
    """
    known = [one for one in pairs() if without not in one.tables]
    mine = [one.apart for one in known if one.kind == kind]
    return min(range_of(mine or [one.apart for one in known]), Fraction(9, 10))


def range_of(apart: Iterable[Fraction]) -> Fraction:
    """1.2816 times the root mean square, rounded up to a ten-thousandth.

    Worked number: 2/5 and 1/5 give 1.2816 × √0.1 = 0.4053.
    """
    squares = [one * one for one in apart]
    mean = sum(squares, Fraction(0)) / len(squares)
    want = mean * ONE_IN_TEN**2 * _FINE**2
    root = isqrt(int(want))
    return Fraction(root if root * root == want else root + 1, _FINE)


def _fraction(text: str) -> Fraction:
    if text.endswith("%"):
        return Fraction(text[:-1].strip()) / 100
    above, _, below = text.partition("/")
    return Fraction(above) / Fraction(below or 1)
