"""Lengths of an answer as a counter and a block read them: in sixteenths, and still true.

A saw is set to an eighth of an inch, a kerf is a sixteenth: nobody reads 51/64. What is asked is
rounded up and what is there rounded down, so that a refusal that is told still is one.
"""

from collections.abc import Sequence
from fractions import Fraction

from shared.units import LENGTH_UNITS_PER_INCH, length_text

_SIXTEENTH = LENGTH_UNITS_PER_INCH // 16
_EIGHTH = LENGTH_UNITS_PER_INCH // 8


def up(length: Fraction) -> Fraction:
    """To the next 1/16 in: what is needed. 4 51/64 in is 4 13/16 in."""
    return Fraction(-(-length // _SIXTEENTH) * _SIXTEENTH)


def down(length: Fraction) -> Fraction:
    """To the 1/16 in below: what is there. 4 51/64 in is 4¾ in; less than 1/16 in stays."""
    return Fraction(length // _SIXTEENTH * _SIXTEENTH) or length


def needs(amounts: Sequence[Fraction], there: Fraction) -> list[Fraction]:
    """What each line needs beside the others, so that no sum of them exceeds what all need.

    None is shown as more than is `there` where it isn't. Worked number: two lines of 2 1/32 in
    are 4 1/16 in together: 2 1/16 in and 2 in.
    """
    shown: list[Fraction] = []
    so_far = Fraction(0)
    for amount in amounts:
        before, so_far = up(so_far), so_far + amount
        here = up(so_far) - before or amount
        shown.append(min(here, down(there)) if amount <= there else here)
    return shown


def text(length: Fraction) -> str:
    """A length of an answer, rounded before: "4 13/16 in"."""
    return length_text(int(length))


def nearest_eighth(length: int) -> str:
    """A length to the nearest eighth of an inch, as near as a block is marked: 5 55/64 is 5⅞."""
    return length_text((length + _EIGHTH // 2) // _EIGHTH * _EIGHTH)
