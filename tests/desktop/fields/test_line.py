"""Typed fields: what they read, what they say, and that nothing typed is lost."""

from collections.abc import Callable
from datetime import date
from fractions import Fraction
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.fields import (
    CountField,
    DateField,
    LengthField,
    MoneyField,
    PhoneField,
    RateField,
    TextField,
    WeightField,
)
from desktop.fields.line import LineField
from shared.units import Weight
from tests.desktop.audit import spoken_name
from tests.desktop.typing_in import type_into

Make = Callable[[], LineField[Any]]
TODAY = date(2026, 11, 25)


def date_field() -> DateField:
    return DateField(lambda: TODAY)


@pytest.mark.parametrize(
    ("make", "typed", "value", "shown"),
    [
        (WeightField, "3 1/2 lb", Weight(35, "lb", -1), "3.5 lb"),
        (WeightField, "98.50", Weight(9850, "lb", -2), "98.50 lb"),
        (WeightField, "12.34 kg", Weight(1234, "kg", -2), "12.34 kg"),
        (LengthField, "1¼ in", 254_000, "1¼ in"),
        (LengthField, "2 cm", 160_000, "2 cm"),
        (MoneyField, "$1,250.00", 125_000, "$1,250.00"),
        (MoneyField, "12.5", 1_250, "$12.50"),
        (RateField, "71.5¢", Fraction(143, 2), "$0.715"),
        (CountField, " 12 ", 12, "12"),
        (PhoneField, "(555) 010-0123", "555-010-0123", "555-010-0123"),
        (TextField, " Jørgen & Łucja <O'Neil> ", "Jørgen & Łucja <O'Neil>", None),
        (date_field, "12/3", date(2026, 12, 3), "Thu Dec 3, 2026"),
    ],
)
def test_a_field_reads_what_the_shop_writes(
    qtbot: QtBot, make: Make, typed: str, value: object, shown: str | None
) -> None:
    field = make()
    qtbot.addWidget(field)
    type_into(field.line, typed)
    assert field.value() == value
    with qtbot.waitSignal(field.committed, timeout=500):
        QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.problem() == ""
    assert field.value() == value
    if shown is not None:
        assert field.text().replace("\u00a0", " ") == shown


@pytest.mark.parametrize(
    ("make", "typed", "said"),
    [
        (WeightField, "abc", "Steelyard reads weights like 3 1/2 lb, 98.5 lb, 12.34 kg; "
         "it can't read “abc”."),
        (WeightField, "3 stone", "Steelyard weighs in lb, oz, kg and g; it can't read “3 stone”."),
        (WeightField, "1/3 lb", "Write “1/3 lb” in decimals, like 0.33 lb."),
        (WeightField, "-4 lb", "A weight can't be below nothing."),
        (LengthField, "thick", "Steelyard reads lengths like 1¼ in, 3/4 in, 2 cm; "
         "it can't read “thick”."),
        (LengthField, "1/3 in", "“1/3 in” falls between what a saw can be set to."),
        (MoneyField, "1.005", "Money goes to the cent; “1.005” goes further."),
        (MoneyField, "-5", "An amount can't be below nothing."),
        (CountField, "2.5", "A whole number goes here, not “2.5”."),
        (CountField, "10000", "A whole number from 0 to 9999 goes here."),
        (PhoneField, "123", "A phone number has 7 to 20 digits; “123” has 3."),
        (PhoneField, "call Ann", "Steelyard reads phone numbers like 555-010-0123, "
         "not “call Ann”."),
        (date_field, "32/1", "Steelyard reads days like 12/3, Dec 3, friday, tomorrow or +7; "
         "it can't read “32/1”."),
    ],
)  # fmt: skip
def test_a_field_says_in_place_what_it_can_not_take_and_keeps_it(
    qtbot: QtBot, make: Make, typed: str, said: str
) -> None:
    field = make()
    qtbot.addWidget(field)
    field.show()
    type_into(field.line, typed)
    assert not field.complaint.isVisibleTo(field), "no complaint in the middle of a word"
    with qtbot.assertNotEmitted(field.committed):
        QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.complaint.text().replace("\u00a0", " ") == said
    assert field.complaint.isVisibleTo(field)
    assert field.text() == typed
    assert field.value() is None
    assert field.line.accessibleDescription() == said


def test_a_complaint_goes_as_soon_as_it_is_mended(qtbot: QtBot) -> None:
    field = WeightField()
    qtbot.addWidget(field)
    type_into(field.line, "98.5 l")
    QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.complaint.text() != ""
    type_into(field.line, "b")
    assert field.complaint.text() == ""
    assert field.value() == Weight(985, "lb", -1)


def test_a_required_field_asks_only_when_the_form_is_tried(qtbot: QtBot) -> None:
    field = TextField(required=True)
    qtbot.addWidget(field)
    QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.complaint.text() == ""
    assert field.show_problem() == "Fill this in."
    assert TextField().problem() == ""


def test_a_rules_complaint_stands_until_something_else_is_typed(qtbot: QtBot) -> None:
    field = WeightField()
    qtbot.addWidget(field)
    field.set_value(Weight(290, "lb"))
    field.complain("A hog of 290 lb is unusual; weigh it again or go on.")
    assert field.problem().startswith("A hog of 290 lb")
    assert field.value() == Weight(290, "lb")
    field.line.selectAll()
    type_into(field.line, "209")
    assert field.problem() == ""
    assert field.value() == Weight(209, "lb")


def test_a_bare_number_is_refused_where_the_unit_must_be_said(qtbot: QtBot) -> None:
    field = WeightField(unit=None)
    qtbot.addWidget(field)
    field.set_text("98.5")
    assert field.problem() == "Say the unit: “98.5” may be lb or kg."


def test_the_label_names_the_field_and_its_key_leads_there(qtbot: QtBot) -> None:
    field = WeightField()
    qtbot.addWidget(field)
    field.set_label("Hot weight, &left")
    assert spoken_name(field.line) == "Hot weight, left"
    assert field.label.buddy() is field.line


def test_a_length_between_two_64ths_keeps_every_digit(qtbot: QtBot) -> None:
    field = LengthField()
    qtbot.addWidget(field)
    field.set_text("19 mm")
    QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.value() == 152_000
    assert field.text() == "19 mm"
    field.set_value(152_001)
    assert field.value() == 152_001


def test_counts_step_with_the_arrow_keys_and_stop_at_the_ends(qtbot: QtBot) -> None:
    field = CountField(least=1, most=3)
    qtbot.addWidget(field)
    for expected in (1, 2, 3, 3):
        QTest.keyClick(field.line, Qt.Key.Key_Up)
        assert field.value() == expected
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    assert field.value() == 2


def test_days_step_by_a_day_and_by_a_week(qtbot: QtBot) -> None:
    field = date_field()
    qtbot.addWidget(field)
    QTest.keyClick(field.line, Qt.Key.Key_Up)
    assert field.value() == TODAY
    QTest.keyClick(field.line, Qt.Key.Key_PageUp)
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    assert field.value() == date(2026, 12, 1)


def test_coming_by_key_selects_what_is_there(qtbot: QtBot) -> None:
    first, second = TextField(), TextField()
    for field in (first, second):
        qtbot.addWidget(field)
    second.set_value("Ann Hill")
    line = second.line
    second.show()
    second.activateWindow()
    qtbot.waitUntil(second.isActiveWindow)
    line.setFocus(Qt.FocusReason.TabFocusReason)
    assert line.selectedText() == "Ann Hill"
