"""The block's large buttons: Enter presses them as Space does, as it ticks a line."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.block.large_button import LargeButton


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space])
def test_each_of_these_presses_it_once(qtbot: QtBot, key: Qt.Key) -> None:
    made = LargeButton()
    qtbot.addWidget(made)
    pressed: list[bool] = []
    made.clicked.connect(lambda: pressed.append(made.isEnabled()))
    made.show()
    QTest.keyClick(made, key)
    assert pressed == [True]
