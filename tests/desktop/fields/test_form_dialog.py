"""A dialog of fields keeps what was typed when it is refused."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.fields import FormDialog, TextField, WeightField, form_dialog
from desktop.look.palette import THEMES
from desktop.look.space import EDGE
from desktop.look.theme import Theme
from shared.units import Weight
from tests.desktop.audit import tab_order, unnamed
from tests.desktop.typing_in import type_into


class WeighDialog(FormDialog):
    """A dialog as places make them: two fields, and a rule that refuses one tag."""

    def __init__(self) -> None:
        super().__init__()
        self.tag = TextField(required=True)
        self.weight = WeightField(required=True)
        self.grid.add(self.tag)
        self.grid.add(self.weight)
        self.done_with: list[tuple[str | None, Weight | None]] = []
        self.set_words("Weigh", "One side at a time.", "&Weigh", "&Leave")
        self.tag.set_label("&Tag")
        self.weight.set_label("&Hot weight")

    def attempt(self) -> str:
        if self.tag.value() == "114":
            return "Tag 114 is already on the rail."
        self.done_with.append((self.tag.value(), self.weight.value()))
        return ""


def opened(qtbot: QtBot) -> WeighDialog:
    dialog = WeighDialog()
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    return dialog


def test_a_refused_dialog_stays_with_all_that_was_typed(qtbot: QtBot) -> None:
    dialog = opened(qtbot)
    dialog.tag.set_text("114")
    dialog.weight.set_text("abc")
    dialog.try_it()
    assert dialog.isVisible()
    assert QApplication.focusWidget() is dialog.weight.line
    assert (dialog.tag.text(), dialog.weight.text()) == ("114", "abc")
    dialog.weight.set_text("98.5")
    dialog.try_it()
    assert dialog.isVisible()
    assert dialog.refusal.text() == "Tag 114 is already on the rail."
    assert (dialog.tag.text(), dialog.weight.text()) == ("114", "98.5")
    assert dialog.done_with == []
    dialog.tag.set_text("115")
    dialog.try_it()
    assert not dialog.isVisible()
    assert dialog.done_with == [("115", Weight(985, "lb", -1))]


def test_a_field_that_is_not_shown_stops_nobody(qtbot: QtBot) -> None:
    """What was typed in it before another choice hid it: Keep did nothing, and said nothing."""
    dialog = opened(qtbot)
    type_into(dialog.tag.line, "115")
    dialog.weight.set_text("abc")
    dialog.try_it()
    assert dialog.isVisible()
    assert dialog.weight.complaint.isVisible()
    dialog.weight.hide()
    dialog.try_it()
    assert not dialog.isVisible()
    assert dialog.done_with == [("115", None)]


def test_the_keyboard_does_not_stay_in_a_field_that_is_not_shown(qtbot: QtBot) -> None:
    dialog = opened(qtbot)
    dialog.weight.hide()
    dialog.weight.line.setFocus()
    assert QApplication.focusWidget() is dialog.weight.line
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.main)


def test_enter_does_the_main_action_and_escape_leaves(qtbot: QtBot) -> None:
    dialog = opened(qtbot)
    type_into(dialog.tag.line, "115")
    type_into(dialog.weight.line, "98.5")
    QTest.keyClick(dialog.weight.line, Qt.Key.Key_Return)
    assert dialog.done_with == [("115", Weight(985, "lb", -1))]
    dialog = opened(qtbot)
    type_into(dialog.weight.line, "98.5")
    type_into(dialog.tag.line, "115")
    QTest.keyClick(dialog.tag.line, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert dialog.done_with == [("115", Weight(985, "lb", -1))]
    dialog = opened(qtbot)
    QTest.keyClick(dialog.tag.line, Qt.Key.Key_Escape)
    assert not dialog.isVisible()


def test_escape_asks_before_it_drops_what_was_typed(qtbot: QtBot) -> None:
    dialog = opened(qtbot)
    type_into(dialog.tag.line, "115")
    QTest.keyClick(dialog.tag.line, Qt.Key.Key_Escape)
    assert dialog.isVisible()
    assert "not kept" in dialog.refusal.text()
    type_into(dialog.weight.line, "98.5")
    dialog.close()  # the window's cross; more was typed since it was asked
    assert dialog.isVisible()
    QTest.keyClick(dialog.tag.line, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    assert dialog.done_with == []


def test_what_a_form_was_opened_with_is_not_asked_about(qtbot: QtBot) -> None:
    dialog = WeighDialog()
    qtbot.addWidget(dialog)
    type_into(dialog.tag.line, "115")
    dialog.open()
    dialog.reject()
    assert not dialog.isVisible()
    dialog = opened(qtbot)
    type_into(dialog.tag.line, "115")
    dialog.leave.click()  # the button says what it does
    assert not dialog.isVisible()
    dialog = opened(qtbot)
    dialog.begun = True  # rates taken into a list, with nothing in a field
    dialog.reject()
    assert dialog.isVisible()
    dialog.reject()
    assert not dialog.isVisible()


def test_tab_goes_through_the_fields_and_then_the_buttons(qtbot: QtBot) -> None:
    dialog = opened(qtbot)
    assert QApplication.focusWidget() is dialog.tag.line
    assert tab_order(dialog) == [
        dialog.tag.line,
        dialog.weight.line,
        dialog.main,
        dialog.leave,
    ]
    assert unnamed(dialog) == []


def test_in_large_type_it_is_wider_but_never_than_the_window_below(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(1366, 720)
    dialog = FormDialog(window)
    dialog.widen(980)
    assert dialog.minimumWidth() == 980
    monkeypatch.setattr(form_dialog, "theme_of", lambda _widget: Theme(THEMES["light"], 125, ""))
    dialog.widen(980)
    assert dialog.minimumWidth() == 1225
    dialog.widen(1220)
    assert dialog.minimumWidth() == 1366 - 2 * EDGE


def test_a_dialog_stays_in_use_when_what_it_was_opened_from_is_locked(qtbot: QtBot) -> None:
    """Qt locks it with its parent: Esc, the buttons and the cross did nothing, over everything."""
    below = QWidget()
    qtbot.addWidget(below)
    below.show()
    dialog = FormDialog(below)
    dialog.open()
    below.setEnabled(False)
    assert dialog.isEnabled()
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    own = FormDialog(below)
    own.setEnabled(False)
    assert not own.isEnabled()
