"""What a scanned code stands for at the hand-over of order 1042."""

from datetime import UTC, date, datetime

import pytest

from shared.marking.gs1 import FNC1, ElementString, package_elements
from shared.marking.serial import box_serial, package_serial
from shared.shop.hand_overs import Boxed
from shared.shop.packages import PackageMade
from shared.shop.scanned import Scanned, ScanRefused, scanned
from shared.units import Weight


def package(at: int, void: str = "") -> PackageMade:
    """Package number 100 + `at`."""
    return PackageMade(
        at, 100 + at, 1, 1, 1, 1, "ham", "Ham", "Owner", Weight(2, "lb"), None, 1, (), "",
        datetime(2026, 3, 2, tzinfo=UTC), "Test", "Bench", void,
    )  # fmt: skip


MADE = (package(1), package(2), package(3), package(4, void="torn"), package(5))
HERE = {1, 2, 5}
PLACES = {1: Boxed("3", "freezer 2"), 2: Boxed("a ", ""), 3: Boxed("3"), 5: Boxed("A")}


def read(text: str) -> Scanned | ScanRefused:
    return scanned(text, 1042, MADE, HERE, PLACES)


def test_a_box_is_what_is_still_here_of_it() -> None:
    assert read(box_serial(1042, "3")) == Scanned(frozenset({1}), "3")
    assert read(f" {box_serial(1042, 'A').lower()} ") == Scanned(frozenset({2, 5}), "A")


def test_a_package_is_itself() -> None:
    assert read(package_serial(1042, 102)) == Scanned(frozenset({2}))


def gs1(order: int, number: int, pounds: int = 2) -> str:
    found = package_elements(
        "98898765432106",
        Weight(pounds, "lb"),
        date(2026, 3, 2),
        lot="12",
        serial=f"{order}-{number}",
    )
    assert isinstance(found, ElementString)
    return found.raw


def test_the_gs1_label_of_a_package_is_the_package() -> None:
    for text in (f"]C1{gs1(1042, 102)}", gs1(1042, 102).replace(FNC1, "")):
        assert read(text) == Scanned(frozenset({2}))
    other = read(gs1(1042, 102, pounds=3))
    assert other == ScanRefused("other_weight", {"package": "102", "label": "3 lb", "kept": "2 lb"})


@pytest.mark.parametrize(
    ("text", "code"),
    [
        (gs1(1043, 102), "other_order"),
        (gs1(1042, 104), "package_void"),
        (gs1(1042, 102).replace("98898765432106", "98898765432107"), "check_character"),
        ("0614141123452", "not_ours"),
        ("1042-B3-A", "check_character"),
        (box_serial(1043, "3"), "other_order"),
        (package_serial(1043, 102), "other_order"),
        (box_serial(1042, "9"), "no_box"),
        (package_serial(1042, 103), "package_fetched"),
        (package_serial(1042, 104), "package_void"),
        (package_serial(1042, 999), "no_package"),
    ],
)
def test_what_gives_nothing_says_why(text: str, code: str) -> None:
    found = read(text)
    assert isinstance(found, ScanRefused)
    assert found.code == code


def test_a_box_of_which_nothing_is_left_was_fetched() -> None:
    found = scanned(box_serial(1042, "3"), 1042, MADE, {2}, PLACES)
    assert found == ScanRefused("box_fetched", {"box": "3"})
