"""Codes of package labels as scanners send them; biip, an independent reader, agrees."""

from datetime import date

import biip
import pytest
from biip.gs1_messages import GS1Message
from hypothesis import given
from hypothesis import strategies as st

from shared.marking.gs1 import FNC1, ElementString, package_elements
from shared.marking.package_code import PackageCode, read_package
from shared.marking.problems import MarkingProblem
from shared.marking.serial import package_serial
from shared.units import Weight

GTIN = "98898765432106"
NET = Weight(1234, "lb", -2)
DAY = date(2026, 3, 2)


def label(lot: str = "12", serial: str = "1042-7") -> ElementString:
    found = package_elements(GTIN, NET, DAY, lot=lot, serial=serial)
    assert isinstance(found, ElementString)
    return found


def test_every_way_a_scanner_sends_it_is_the_package() -> None:
    there = label()
    assert FNC1 in there.raw
    for text in (
        there.raw,
        f"{FNC1}{there.raw}",
        f"]C1{there.raw}",
        f"]d2{there.raw}\r\n",
        f"]d2{FNC1}{there.raw}",
        there.human,
        f" {there.human} ",
    ):
        assert read_package(text) == (PackageCode(1042, 7, NET),), text


def test_without_the_fnc1_what_may_be_meant_is_given() -> None:
    found = read_package(label().raw.replace(FNC1, ""))
    assert found == (PackageCode(1042, 7, NET),)
    found = read_package(label("21", "2142-7").raw.replace(FNC1, ""))
    assert isinstance(found, tuple)
    assert PackageCode(2142, 7, NET) in found
    long = read_package(label("123456", "123456789-123456789").raw.replace(FNC1, ""))
    assert long == (PackageCode(123456789, 123456789, NET),)


def test_our_own_serial_is_read_as_before() -> None:
    assert read_package(package_serial(1042, 7).lower()) == (PackageCode(1042, 7),)
    assert read_package("1042-7-3") == MarkingProblem("check_character", {"text": "1042-7-3"})


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("0614141123452", "not_ours"),
        ("", "not_ours"),
        (label(serial="X-9").raw, "not_ours"),
        (label(serial="").raw, "not_ours"),
        (label().raw.replace(GTIN, "98898765432107"), "check_digit"),
        (label().raw.replace("260302", "261302"), "date"),
        ("(01)98898765432106(21)", "length"),
    ],
)
def test_other_codes_are_none(text: str, code: str) -> None:
    found = read_package(text)
    assert isinstance(found, MarkingProblem)
    assert found.code == code


@given(st.integers(1, 999_999), st.integers(1, 999_999_999), st.integers(1, 99_999_999))
def test_biip_reads_the_same_package(lot: int, order: int, package: int) -> None:
    raw = label(str(lot), f"{order}-{package}").raw
    theirs = biip.parse(f"]C1{raw}").gs1_message
    assert isinstance(theirs, GS1Message)
    (serial,) = (one for one in theirs.element_strings if one.ai.ai == "21")
    found = read_package(f"]C1{raw}")
    assert isinstance(found, tuple)
    (ours,) = found
    assert f"{ours.order}-{ours.package}" == serial.value
    without = read_package(raw.replace(FNC1, ""))
    assert isinstance(without, tuple)
    assert ours in without
