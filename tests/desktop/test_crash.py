"""A fault of ours: caught on every thread, shown once, in the window's thread."""

import sys
import threading
from collections.abc import Iterator

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.crash import CrashCatcher, CrashReport
from tests.desktop.audit import unnamed


@pytest.fixture
def catcher(qtbot: QtBot) -> Iterator[CrashCatcher]:
    made = CrashCatcher()
    made.install()
    yield made
    made.remove()


def reports() -> list[CrashReport]:
    return [each for each in QApplication.topLevelWidgets() if isinstance(each, CrashReport)]


def close_all(qtbot: QtBot) -> None:
    for each in reports():
        each.accept()
    qtbot.waitUntil(lambda: not reports())


def raise_on_a_thread() -> None:
    def fail() -> None:
        raise ZeroDivisionError("on the rail")

    thread = threading.Thread(target=fail)
    thread.start()
    thread.join()


def test_a_fault_on_another_thread_is_reported_in_the_windows_thread(
    qtbot: QtBot, catcher: CrashCatcher, capsys: pytest.CaptureFixture[str]
) -> None:
    with qtbot.waitSignal(catcher.reported) as reported:
        raise_on_a_thread()
    assert reported.args is not None
    assert "ZeroDivisionError: on the rail" in reported.args[0]
    assert "ZeroDivisionError: on the rail" in capsys.readouterr().err
    assert len(reports()) == 1
    close_all(qtbot)


def test_a_program_that_no_shell_started_shows_its_report(
    qtbot: QtBot, catcher: CrashCatcher, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Python has no standard error there: writing to it failed, and the fault was never shown."""
    monkeypatch.setattr(sys, "stderr", None)
    with qtbot.waitSignal(catcher.reported):
        raise_on_a_thread()
    monkeypatch.undo()
    assert len(reports()) == 1
    close_all(qtbot)


def test_many_faults_show_one_report(qtbot: QtBot, catcher: CrashCatcher) -> None:
    with qtbot.waitSignal(catcher.reported):
        raise_on_a_thread()
        raise_on_a_thread()
        raise_on_a_thread()
    qtbot.wait(1)
    assert len(reports()) == 1
    close_all(qtbot)


def test_the_interrupt_key_of_a_shell_is_no_fault(catcher: CrashCatcher, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(catcher.reported, wait=20):
        sys.excepthook(KeyboardInterrupt, KeyboardInterrupt(), None)


def test_the_hooks_of_before_come_back() -> None:
    before = (sys.excepthook, threading.excepthook)
    catcher = CrashCatcher()
    catcher.install()
    assert sys.excepthook != before[0]
    catcher.remove()
    assert (sys.excepthook, threading.excepthook) == before


def test_the_report_says_the_records_are_safe_and_can_be_copied(qtbot: QtBot) -> None:
    report = CrashReport("Traceback: the whole of it")
    qtbot.addWidget(report)
    report.show()
    report.copy()
    assert QGuiApplication.clipboard().text() == "Traceback: the whole of it"
    assert unnamed(report) == []
