"""The code on a package's label as scanned or typed: our own serial, or a GS1 element string.

A label of inspected goods carries GTIN, net weight, packed-on day, lot and serial, (01)(3202)
(13)(10)(21); the serial is the order's and the package's number. Sources: GS1 General
Specifications (FNC1, symbology identifiers) as the trade reference, section 7, has them.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from shared.marking.gs1 import ElementString, parse, parse_human
from shared.marking.problems import MarkingProblem
from shared.marking.serial import PackageSerial, read_serial
from shared.units import Weight

_BEGINS = re.compile(r"\(01\)|(?:\][A-Za-z]\d)?\x1d?01\d{14}.")
_SERIAL = re.compile(r"([1-9][0-9]{0,8})-([1-9][0-9]{0,8})")


@dataclass(frozen=True, slots=True)
class PackageCode:
    """Order and label number a code names, and the net weight where the code carries one."""

    order: int
    package: int
    net: Weight | None = None


def read_package(text: str) -> tuple[PackageCode, ...] | MarkingProblem:
    """The package a code names; several it may name where a scanner left out the FNC1.

    "1042-7-7" is package 7 of order 1042, and so is "(01)98898765432106(3202)001234(13)260302
    (10)12(21)1042-7", with or without brackets, "]C1" and FNC1. Without the FNC1 behind the lot
    "1012211042-7" is lot 12 and order 1042, or lot 12211042 of none: what may be meant is given
    longest order first, and the caller knows which of them there is. "not_ours" for any other
    code, "check_character" for a serial misread, what `parse` finds of an element string.
    """
    own = read_serial(text)
    if isinstance(own, PackageSerial):
        return (PackageCode(own.order, own.package),)
    bare = text.strip(" \t\r\n")
    if own.code == "check_character" or not _may_be_gs1(bare):
        return own
    found = parse_human(bare) if bare.startswith("(") else parse(bare)
    if isinstance(found, MarkingProblem):
        again = _without_lot(bare) if found.code in ("length", "unknown_ai") else ()
        return again or found
    return tuple(_codes(found)) or MarkingProblem("not_ours", {"text": text})


def _may_be_gs1(text: str) -> bool:
    """Whether it begins as an element string of ours does, with a GTIN."""
    return _BEGINS.match(text) is not None


def _codes(found: ElementString) -> Iterator[PackageCode]:
    serial = found.value("21")
    if serial:
        match = _SERIAL.fullmatch(serial)
        if match:
            yield PackageCode(int(match[1]), int(match[2]), found.net_weight)
        return
    yield from _run_together(found.value("10"), found.net_weight)


def _run_together(value: str, net: Weight | None) -> Iterator[PackageCode]:
    """What a lot's value holds where the FNC1 behind it is lost: lot, "21", serial."""
    for at in range(1, len(value)):
        match = _SERIAL.fullmatch(value[at + 2 :]) if value.startswith("21", at) else None
        if match:
            yield PackageCode(int(match[1]), int(match[2]), net)


def _without_lot(text: str) -> tuple[PackageCode, ...]:
    """Lot and serial run together are longer than a lot may be: read what stands before it."""
    for match in re.finditer("10", text):
        before = parse(text[: match.start()])
        if isinstance(before, ElementString) and before.value("01") and before.value("13"):
            return tuple(_run_together(text[match.end() :], before.net_weight))
    return ()
