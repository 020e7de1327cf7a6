"""The field for one of several."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.fields import ChoiceField
from tests.desktop.audit import spoken_name
from tests.desktop.typing_in import type_into

CUTS = [("whole_ham", "Whole ham"), ("ham_steak", "Ham steaks"), ("hock", "Hocks, smoked")]


@pytest.fixture
def field(qtbot: QtBot) -> ChoiceField[str]:
    made: ChoiceField[str] = ChoiceField()
    qtbot.addWidget(made)
    made.set_label("&Cut")
    made.set_choices(CUTS)
    return made


def test_nothing_is_chosen_at_first(field: ChoiceField[str]) -> None:
    assert field.value() is None
    assert field.is_empty()


def test_any_part_of_the_words_finds_the_one(field: ChoiceField[str]) -> None:
    type_into(field.line, "steak")
    assert field.value() == "ham_steak"
    QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.text() == "Ham steaks"
    assert field.problem() == ""


def test_what_may_be_two_is_asked_and_kept(field: ChoiceField[str]) -> None:
    field.set_text("ham")
    assert field.value() is None
    assert field.show_problem() == "“ham” may be Whole ham or Ham steaks; type a little more."
    assert field.text() == "ham"


def test_a_number_means_what_begins_with_it(field: ChoiceField[str]) -> None:
    """The order's number is typed, though the tag of all of them holds it too."""
    orders = [(str(one), f"{one} · Owner · beef 41") for one in (1, 3, 4, 14)]
    field.set_choices(orders)
    for number in ("1", "3", "4", "14"):
        type_into(field.line, number)
        assert field.value() == number
        field.set_text("")
    type_into(field.line, "41")
    assert field.value() is None


def test_what_is_none_of_them_is_said_and_kept(field: ChoiceField[str]) -> None:
    field.set_text("brisket")
    assert field.show_problem() == "“brisket” is not among the choices here."
    assert field.text() == "brisket"


def test_up_and_down_step_through_the_choices(qtbot: QtBot, field: ChoiceField[str]) -> None:
    with qtbot.waitSignal(field.changed):
        QTest.keyClick(field.box, Qt.Key.Key_Down)
    assert field.value() == "whole_ham"
    QTest.keyClick(field.box, Qt.Key.Key_Down)
    assert field.value() == "ham_steak"


def test_new_words_keep_what_was_chosen(field: ChoiceField[str]) -> None:
    field.set_value("hock")
    field.set_choices([("hock", "Codillos"), ("whole_ham", "Pierna entera")])
    assert field.value() == "hock"
    assert field.text() == "Codillos"
    field.set_choices([("whole_ham", "Pierna entera")])
    assert field.value() is None


def test_a_screen_reader_hears_the_label_not_the_value(field: ChoiceField[str]) -> None:
    field.set_value("hock")
    assert spoken_name(field.box) == "Cut"
    assert spoken_name(field.line) == "Cut"
