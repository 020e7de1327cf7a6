"""A fault in what Qt calls of ours reaches the net for our own faults, and the program goes on."""

import subprocess
import sys

import pytest
from PySide6.QtCore import QAbstractListModel, QModelIndex
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.overrides import NEEDED


class Closed:
    """Mixed into a widget: closing it fails in C code, where no exception is made yet."""

    def closeEvent(self, _event: QCloseEvent) -> None:
        int("x")


class Mixed(Closed, QWidget):
    """Its override comes from what it is mixed from."""


class Gone(QWidget):
    def closeEvent(self, _event: QCloseEvent) -> None:
        label = QLabel()
        delete(label)
        label.text()


class Counted(QAbstractListModel):
    def rowCount(self, parent: object = None) -> int:
        return int("many")


@pytest.mark.parametrize(
    ("kind", "fault", "said"),
    [(Mixed, ValueError, "invalid literal"), (Gone, RuntimeError, "already deleted")],
)
def test_a_fault_while_closing_is_said(
    qtbot: QtBot, kind: type[QWidget], fault: type[Exception], said: str
) -> None:
    widget = kind()
    widget.show()
    with pytest.raises(fault, match=said):
        widget.close()
    delete(widget)


def test_a_fault_in_a_model_is_said(qtbot: QtBot) -> None:
    with pytest.raises(ValueError, match="many"):
        QAbstractListModel.match(Counted(), QModelIndex(), 0, "x")


@pytest.mark.skipif(not NEEDED, reason="Python makes an exception of it by itself")
def test_the_program_arms_every_class_of_the_window() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "tests.desktop.armed_process"],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    count, *bare = done.stdout.split()
    assert int(count) > 100
    assert bare == []
