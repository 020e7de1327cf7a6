"""The shop's own package serial for Code 128: order, package and a check character.

The check character is ISO/IEC 7064 MOD 37-2, a digit, a capital or "*": it finds every single
wrong character and every swap of two neighbors.
"""

import re
from dataclasses import dataclass
from typing import Final

from shared.marking.problems import MarkingProblem

_ALPHABET: Final = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*"
_SERIAL = re.compile(r"([1-9][0-9]{0,8})-([1-9][0-9]{0,8})-([0-9A-Z*])")

_BOX_NAME = re.compile(r"[0-9A-Z]{1,8}")
_BOX = re.compile(r"([1-9][0-9]{0,8})-B([0-9A-Z]{1,8})-([0-9A-Z*])")


@dataclass(frozen=True, slots=True)
class PackageSerial:
    """A package's order number and its own label number."""

    order: int
    package: int


def package_serial(order: int, package: int) -> str:
    """What the barcode carries: order 1042, package 7 is "1042-7-7".

    Raises ValueError for a number that isn't above nothing or has more than nine digits.
    """
    text = f"{order}-{package}-"
    serial = text + check_character(_counted(order, package))
    if not _SERIAL.fullmatch(serial):
        raise ValueError(f"no serial for order {order}, package {package}")
    return serial


def read_serial(text: str) -> PackageSerial | MarkingProblem:
    """A scanned or typed serial; "not_ours" for another code, "check_character" for a slip."""
    match = _SERIAL.fullmatch(text.strip().upper())
    if match is None:
        return MarkingProblem("not_ours", {"text": text})
    order, package = int(match[1]), int(match[2])
    if check_character(_counted(order, package)) != match[3]:
        return MarkingProblem("check_character", {"text": text})
    return PackageSerial(order, package)


@dataclass(frozen=True, slots=True)
class BoxSerial:
    """A box's order number and its own name, such as "3"."""

    order: int
    box: str


def box_serial(order: int, box: str) -> str:
    """What a box's barcode carries: order 1042, box 3 is "1042-B3-T".

    Raises ValueError for an order that has no number, and a name of other than 1 to 8 ASCII
    letters and digits: such a box has no code.
    """
    name = box.strip().upper()
    if not 0 < order < 10**9 or not _BOX_NAME.fullmatch(name):
        raise ValueError(f"no serial for order {order}, box {box!r}")
    return f"{order}-B{name}-{check_character(f'{order}B{name}')}"


def read_box(text: str) -> BoxSerial | MarkingProblem:
    """A scanned or typed box; "not_ours" for another code, "check_character" for a slip."""
    match = _BOX.fullmatch(text.strip().upper())
    if match is None:
        return MarkingProblem("not_ours", {"text": text})
    if check_character(f"{match[1]}B{match[2]}") != match[3]:
        return MarkingProblem("check_character", {"text": text})
    return BoxSerial(int(match[1]), match[2])


def check_character(text: str) -> str:
    """ISO/IEC 7064 MOD 37-2 over digits and capitals: "G123498654321" gives "H"."""
    left = 0
    for one in text:
        left = (left + _ALPHABET.index(one)) * 2 % 37
    return _ALPHABET[(1 - left) % 37]


def _counted(order: int, package: int) -> str:
    """The X keeps 104-27 and 1042-7 apart."""
    return f"{max(order, 0)}X{max(package, 0)}"
