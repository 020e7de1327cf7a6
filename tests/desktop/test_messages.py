"""The door for messages: words as they are, the careful answer on Enter and Esc."""

import logging
from collections.abc import Callable

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QInputDialog, QMessageBox
from pytestqt.qtbot import QtBot

from desktop.messages import SilentMessages, WindowMessages


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

    def type_a_reason() -> None:
        asked = QApplication.activeModalWidget()
        if not isinstance(asked, QInputDialog):
            QTimer.singleShot(1, type_a_reason)
            return
        told.append([asked.okButtonText(), asked.cancelButtonText()])
        asked.setTextValue(" He rang and gave it up ")
        asked.accept()

    QTimer.singleShot(1, type_a_reason)
    assert WindowMessages().ask_reason("Cancel", "Why?") == "He rang and gave it up"
    assert told[1] == ["Keep", "Leave it"]


def test_where_nobody_sits_the_careful_answer_is_given(caplog: pytest.LogCaptureFixture) -> None:
    with caplog.at_level(logging.WARNING):
        silent = SilentMessages()
        assert silent.ask("Tag", "Take it off?", "Take it off", "Leave it") is False
        assert silent.ask_reason("Tag", "Why?") is None
        silent.tell("Records", "The disk is full.")
    assert "The disk is full." in caplog.text
