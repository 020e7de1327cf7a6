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
    assert field.show_problem() == "“ham” may be Ham steaks or Whole ham; type a little more."
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


def test_an_arrow_never_steps_to_a_choice_that_has_nothing_of_what_is_typed(
    field: ChoiceField[str],
) -> None:
    """It took the first one, whatever stood there: an aitch bone for a short loin."""
    field.show()
    type_into(field.line, "brisket")
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    assert (field.value(), field.text()) == (None, "brisket")
    field.set_text("")
    type_into(field.line, "ham")
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    completer = field.line.completer()
    assert completer is not None
    popup = completer.popup()
    assert popup is not None
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert field.value() == "ham_steak"
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    assert field.value() == "hock", "from a choice the arrows step as before"


def test_the_key_that_leads_to_the_field_selects_it_though_it_is_there(
    qtbot: QtBot, field: ChoiceField[str]
) -> None:
    field.show()
    field.activateWindow()
    qtbot.waitUntil(field.isActiveWindow)
    field.set_value("whole_ham")
    field.focus()
    QTest.keyClick(field.line, Qt.Key.Key_End)
    field.focus()
    type_into(field.line, "hoc")
    assert field.value() == "hock", field.text()


def test_down_in_an_emptied_field_takes_the_first(field: ChoiceField[str]) -> None:
    field.set_value("hock")
    field.line.selectAll()
    QTest.keyClick(field.line, Qt.Key.Key_Backspace)
    QTest.keyClick(field.line, Qt.Key.Key_Down)
    assert field.value() == "whole_ham"


def test_what_is_none_of_them_is_said_and_kept(field: ChoiceField[str]) -> None:
    field.set_text("brisket")
    said = "“brisket” is not among the choices here: Whole ham or Ham steaks or Hocks, smoked."
    assert field.show_problem() == said
    field.set_choices([(str(one), f"ham {one}") for one in range(9)])
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


def offered_below(field: ChoiceField[str]) -> list[str]:
    """What the list below the line has."""
    completer = field.line.completer()
    assert completer is not None
    model = completer.completionModel()
    return [model.index(at, 0).data() for at in range(model.rowCount())]


def test_what_is_typed_in_the_other_number_is_offered_and_taken(field: ChoiceField[str]) -> None:
    field.set_choices(
        [("whole_ham", "whole ham"), ("foot", "foot"), ("tail", "tail")],
        also=[["whole hams"], ["feet"], ["tails"]],
    )
    type_into(field.line, "fee")
    assert offered_below(field) == ["foot"]
    type_into(field.line, "t")
    assert field.value() == "foot"
    QTest.keyClick(field.line, Qt.Key.Key_Return)
    assert field.text() == "foot"
    assert field.problem() == ""


def test_letters_without_accents_find_words_that_have_them(field: ChoiceField[str]) -> None:
    field.set_choices([("heart", "corazón"), ("tail", "cola")])
    type_into(field.line, "coraz")
    assert offered_below(field) == ["corazón"]
    assert field.value() == "heart"


def test_what_is_written_nearly_so_is_offered_but_not_taken(field: ChoiceField[str]) -> None:
    type_into(field.line, "steeks")
    assert offered_below(field) == ["Ham steaks"]
    assert field.value() is None
    assert field.show_problem() == "“steeks” may be Ham steaks; type a little more."


def test_the_list_is_of_the_new_words_when_they_changed(field: ChoiceField[str]) -> None:
    type_into(field.line, "hoc")
    assert offered_below(field) == ["Hocks, smoked"]
    field.set_text("")
    field.set_choices([("hock", "Codillos"), ("whole_ham", "Pierna entera")])
    type_into(field.line, "codi")
    assert offered_below(field) == ["Codillos"]


def test_a_thing_is_taken_from_the_list_by_down_and_enter(
    qtbot: QtBot, field: ChoiceField[str]
) -> None:
    field.resize(300, 60)
    field.show()
    field.activateWindow()
    qtbot.waitUntil(field.isActiveWindow)
    field.line.setFocus()
    type_into(field.line, "ham")
    completer = field.line.completer()
    assert completer is not None
    popup = completer.popup()
    assert popup is not None
    assert popup.isVisible()
    assert offered_below(field) == ["Ham steaks", "Whole ham"]
    QTest.keyClick(popup, Qt.Key.Key_Down)
    assert field.text() == "Ham steaks", "the first of the list is the first below the line"
    QTest.keyClick(popup, Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert field.value() == "whole_ham"
