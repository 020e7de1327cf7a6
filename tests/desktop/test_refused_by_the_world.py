"""The world says no while one works: a sentence with a way out, never a report of a fault."""

import errno
import sqlite3
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop import app
from desktop.app import Program
from desktop.crash import CrashCatcher, CrashReport
from desktop.paths import Paths
from desktop.records import open_records
from tests.desktop.recorded_messages import RecordedMessages


@pytest.fixture
def program(
    qapp: QApplication, qtbot: QtBot, paths: Paths, messages: RecordedMessages
) -> Iterator[Program]:
    """As it runs: what nobody caught is caught."""
    started = app.start(qapp, paths, messages, open_records)
    assert started is not None
    qtbot.addWidget(started.window)
    qtbot.waitUntil(lambda: not started.bench.work.busy())
    catcher = CrashCatcher()
    started.listen_to(catcher)
    catcher.install()
    yield started
    catcher.remove()
    started.window.close()
    started.close()


def reports() -> list[CrashReport]:
    return [each for each in QApplication.topLevelWidgets() if isinstance(each, CrashReport)]


def press(call: Callable[[], object]) -> None:
    """As a button does: from Qt, where nobody is behind the call to catch anything."""
    QTimer.singleShot(0, call)


def test_records_spoiled_under_the_running_program_are_told_with_the_way_out(
    qtbot: QtBot, program: Program, paths: Paths, messages: RecordedMessages
) -> None:
    program.window.enter("rail")
    for part in paths.data.glob("steelyard.db*"):
        part.write_bytes(b"a letter to the inspector " * 4000)
    press(program.window.refresh_all)
    press(program.window.place().refresh)
    QTest.keyClick(program.window, Qt.Key.Key_F4)
    qtbot.waitUntil(lambda: bool(messages.told))
    qtbot.waitUntil(lambda: not program.bench.work.busy())
    assert reports() == []
    assert len(messages.told) == 1, "the same is said once; behind it, on the line below"
    assert messages.told[0].startswith("That could not be done. The ")
    assert str(paths.database) in messages.told[0]
    assert program.window.isVisible()
    assert program.window.place().key == "rail", "the block couldn't be read"
    assert program.window.bar.places.buttons["rail"].isChecked(), "one is still where one was"


@pytest.mark.parametrize(
    ("number", "said"),
    [(errno.ENOSPC, "is full. Make room and try again"), (errno.EIO, "does not answer")],
)
def test_a_full_or_failing_disk_is_no_fault_of_the_program(
    qtbot: QtBot, program: Program, messages: RecordedMessages, number: int, said: str
) -> None:
    def fail() -> None:
        raise OSError(number, "told by the system", "/shop/steelyard.db")

    press(fail)
    qtbot.waitUntil(lambda: bool(messages.told))
    assert said in messages.told[0]
    assert reports() == []


def test_what_a_worker_met_is_told_too(
    qtbot: QtBot, program: Program, messages: RecordedMessages
) -> None:
    def fail() -> None:
        raise OSError(errno.ENOSPC, "no room")

    program.bench.work.run(fail, then=lambda _none: None)
    qtbot.waitUntil(lambda: bool(messages.told))
    assert "is full" in messages.told[0]


def test_a_fault_of_ours_is_still_reported(
    qtbot: QtBot, program: Program, messages: RecordedMessages
) -> None:
    def fail() -> None:
        raise FileNotFoundError(errno.ENOENT, "a picture of ours that isn't there")

    press(fail)
    qtbot.waitUntil(lambda: len(reports()) == 1)
    assert messages.told == []
    reports()[0].accept()
    qtbot.waitUntil(lambda: not reports())


def test_records_in_use_when_one_signs_on_are_told_not_died_of(
    qapp: QApplication, paths: Paths, messages: RecordedMessages, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Opened, but another program writes for longer than one waits: it ended without a word."""
    monkeypatch.setattr("db.engine.BUSY_MILLISECONDS", 50)
    open_records(paths).close()
    other = sqlite3.connect(paths.database, isolation_level=None)

    def opened(at: Paths) -> Store:
        store = open_records(at)
        other.execute("BEGIN IMMEDIATE")
        return store

    assert app.start(qapp, paths, messages, opened) is None
    other.close()
    assert len(messages.told) == 1
    assert "in use by another program" in messages.told[0]
