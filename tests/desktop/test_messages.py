"""The door for messages: words as they are, the careful answer on Enter and Esc."""

import logging
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QMessageBox, QPushButton
from pytestqt.qtbot import QtBot

from desktop.crash import CrashReport
from desktop.messages import SilentMessages, WindowMessages
from desktop.reason_dialog import ReasonDialog
from tests.desktop.typing_in import type_into


def while_asked(act: Callable[[QMessageBox], object]) -> list[QMessageBox]:
    """Once a box is up, do something with it; the boxes that came up."""
    seen: list[QMessageBox] = []

    def look() -> None:
        box = QApplication.activeModalWidget()
        if isinstance(box, QMessageBox):
            seen.append(box)
            act(box)
        else:
            QTimer.singleShot(1, look)

    QTimer.singleShot(1, look)
    return seen


def while_reason_asked(act: Callable[[ReasonDialog], object]) -> None:
    """Once a reason is asked, do something with the dialog."""

    def look() -> None:
        asked = QApplication.activeModalWidget()
        if isinstance(asked, ReasonDialog):
            act(asked)
        else:
            QTimer.singleShot(1, look)

    QTimer.singleShot(1, look)


@pytest.mark.parametrize(("press", "answer"), [(0, True), (1, False)])
def test_a_question_is_answered_by_its_verbs(qtbot: QtBot, press: int, answer: bool) -> None:
    def click(box: QMessageBox) -> None:
        verbs = {"Take it off": 0, "Leave it": 1}
        button = next(b for b in box.buttons() if verbs[b.text()] == press)
        assert box.defaultButton().text() == "Leave it"
        button.click()

    while_asked(click)
    found = WindowMessages().ask("Tag", "Take tag <114> off the rail?", "Take it off", "Leave it")
    assert found is answer


def test_escape_leaves_things_as_they_are(qtbot: QtBot) -> None:
    while_asked(lambda box: box.reject())
    assert WindowMessages().ask("Tag", "Take it off?", "Take it off", "Leave it") is False


def test_names_are_shown_as_written_not_as_markup(qtbot: QtBot) -> None:
    texts: list[str] = []

    def read(box: QMessageBox) -> None:
        assert box.textFormat().name == "PlainText"
        texts.append(box.text())
        box.accept()

    while_asked(read)
    WindowMessages().tell("Bill", "The bill of <b>Jørgen & Łucja</b> is issued.")
    assert texts == ["The bill of <b>Jørgen & Łucja</b> is issued."]


def test_a_reason_is_kept_or_left_and_what_is_told_is_closed(qtbot: QtBot) -> None:
    told: list[list[str]] = []

    def close(box: QMessageBox) -> None:
        told.append([one.text() for one in box.buttons()])
        box.reject()

    while_asked(close)
    WindowMessages().tell("Bill", "The bill is issued.")
    assert told == [["Close"]]

    def type_a_reason(asked: ReasonDialog) -> None:
        told.append([asked.main.text(), asked.leave.text()])
        type_into(asked.focusWidget() or asked, " He rang and gave it up ")
        QTest.keyClick(asked.why.line, Qt.Key.Key_Return)

    while_reason_asked(type_a_reason)
    assert WindowMessages().ask_reason("Cancel", "Why?") == "He rang and gave it up"
    assert told[1] == ["&Keep", "&Leave it"]


def test_no_button_has_a_picture(qtbot: QtBot) -> None:
    """Keep and leave had a tick and a cross where a reason was asked, and nowhere else."""
    pictures: list[bool] = []

    def look(asked: QDialog) -> None:
        buttons = asked.findChildren(QPushButton)
        assert len(buttons) >= 1
        pictures.extend(not one.icon().isNull() for one in buttons)
        asked.reject()

    while_reason_asked(look)
    assert WindowMessages().ask_reason("Cancel", "Why?") is None
    while_asked(look)
    WindowMessages().ask("Tag", "Take it off?", "Take it off", "Leave it")
    while_asked(look)
    WindowMessages().tell("Bill", "The bill is issued.", "Number 4")
    report = CrashReport("Traceback")
    qtbot.addWidget(report)
    look(report)
    assert pictures == [False] * len(pictures)


def test_a_reason_that_must_be_given_is_asked_for_where_it_is_missing(qtbot: QtBot) -> None:
    """Kept empty the question was gone, and nothing was done, and nothing said."""
    said: list[str] = []

    def keep_it_empty(asked: ReasonDialog) -> None:
        QTest.keyClick(asked.why.line, Qt.Key.Key_Return)
        said.append(asked.why.complaint.text())
        assert asked.isVisible()
        asked.drop()

    while_reason_asked(keep_it_empty)
    assert WindowMessages().ask_reason("Cancel", "Why?") is None
    assert said == ["Fill this in."]
    while_reason_asked(lambda asked: QTest.keyClick(asked.why.line, Qt.Key.Key_Return))
    assert WindowMessages().ask_reason("Note", "Anything to say?", optional=True) == ""


def test_where_nobody_sits_the_careful_answer_is_given(caplog: pytest.LogCaptureFixture) -> None:
    with caplog.at_level(logging.WARNING):
        silent = SilentMessages()
        assert silent.ask("Tag", "Take it off?", "Take it off", "Leave it") is False
        assert silent.ask_reason("Tag", "Why?") is None
        silent.tell("Records", "The disk is full.")
    assert "The disk is full." in caplog.text
