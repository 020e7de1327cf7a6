"""A list opens as large as it needs, and larger over a large window."""

import pytest
from PySide6.QtWidgets import QDialog, QWidget
from pytestqt.qtbot import QtBot

from desktop.panels.over import open_over


@pytest.mark.parametrize(
    ("window", "opened"),
    [
        ((1366, 696), (1340, 660)),
        ((1024, 600), (1340, 660)),
        ((1600, 900), (1552, 852)),
        ((2560, 1400), (1720, 960)),
    ],
)
def test_it_takes_what_the_window_leaves(
    qtbot: QtBot, window: tuple[int, int], opened: tuple[int, int]
) -> None:
    over = QWidget()
    qtbot.addWidget(over)
    over.resize(*window)
    dialog = QDialog(over)
    open_over(dialog, 1340, 660)
    assert (dialog.width(), dialog.height()) == opened


def test_over_nothing_it_is_as_large_as_it_needs(qtbot: QtBot) -> None:
    dialog = QDialog()
    qtbot.addWidget(dialog)
    open_over(dialog, 1080, 640)
    assert (dialog.width(), dialog.height()) == (1080, 640)
