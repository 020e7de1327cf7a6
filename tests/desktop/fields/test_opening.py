"""A dialog that is given the keyboard later than it is shown, as X11 does."""

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.fields import FormDialog, TextField, opening


def below(qtbot: QtBot) -> QWidget:
    """A window with the keyboard."""
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    return window


def form(window: QWidget) -> FormDialog:
    dialog = FormDialog(window)
    field = TextField()
    field.set_label("Tag")
    dialog.grid.add(field)
    return dialog


def test_it_has_the_keyboard_once_it_is_open(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    """Between the two a key comes to the window below, where Qt drops it: "kabob" was "kbob"."""
    monkeypatch.setattr(opening, "GIVEN_LATER", (QApplication.platformName(),))
    window = below(qtbot)
    dialog = form(window)
    dialog.open()
    assert dialog.isActiveWindow(), window
    assert dialog.focusWidget() is QApplication.focusWidget() is not None


def test_a_dialog_that_goes_while_it_opens_keeps_nobody_waiting(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(opening, "GIVEN_LATER", (QApplication.platformName(),))
    monkeypatch.setattr(opening, "AT_MOST_MS", 60_000)
    window = below(qtbot)
    dialog = form(window)
    monkeypatch.setattr(dialog, "isActiveWindow", lambda: False)
    QTimer.singleShot(0, dialog, dialog.drop)
    dialog.open()
    assert not dialog.isVisible()


def test_below_a_window_that_has_not_the_keyboard_nobody_waits(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(opening, "GIVEN_LATER", (QApplication.platformName(),))
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    called: list[int] = []
    QTimer.singleShot(0, window, lambda: called.append(1))
    dialog = form(window)
    dialog.open()
    assert called == [], "another turn of the loop was made"
    dialog.drop()
