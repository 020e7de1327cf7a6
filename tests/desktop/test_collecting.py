"""What is in a ring and no longer in use goes in the window's thread, whoever asks for memory."""

import gc
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.collecting import Collecting
from desktop.journal import Journal
from desktop.work import Workers


@pytest.fixture
def collected() -> Iterator[list[threading.Thread]]:
    """The thread of each search of Python's, as it begins."""
    on: list[threading.Thread] = []

    def note(phase: str, _what: dict[str, int]) -> None:
        if phase == "start":
            on.append(threading.current_thread())

    gc.callbacks.append(note)
    yield on
    gc.callbacks.remove(note)


def much() -> int:
    """Some ten times as many new objects as Python's own search waits for."""
    return len([[number] for number in range(10_000)])


def only_here(on: list[threading.Thread]) -> bool:
    return bool(on) and set(on) == {threading.main_thread()}


def test_a_worker_collects_nothing(
    qtbot: QtBot, collecting: Collecting, collected: list[threading.Thread]
) -> None:
    workers = Workers()
    for _ in range(5):
        with qtbot.waitSignal(workers.idle):
            workers.run(much, then=lambda _found: None)
    kept = [much(), [[number] for number in range(2_000)]]
    qtbot.waitUntil(lambda: only_here(collected))
    assert kept


def test_the_journals_thread_collects_nothing(
    qtbot: QtBot, collecting: Collecting, collected: list[threading.Thread], tmp_path: Path
) -> None:
    journal = Journal(tmp_path / "drafts.json")
    kept = [[number] for number in range(2_000)]
    for number in range(5):
        journal.note("line", {str(at): "x" * number for at in range(3_000)})
        journal.close()
    qtbot.waitUntil(lambda: only_here(collected))
    assert kept


def test_a_window_nobody_knows_is_left_to_qt(qtbot: QtBot) -> None:
    went: list[str] = []

    class Lost(QWidget):
        def __init__(self) -> None:
            super().__init__()
            self.itself = self

        def __del__(self) -> None:
            went.append("lost")

    mine = Collecting()
    Lost()
    kept = [[number] for number in range(20_000)]
    mine.look()
    assert went == []
    (lost,) = [one for one in QApplication.topLevelWidgets() if isinstance(one, Lost)]
    delete(lost)
    mine.end()
    assert kept


@pytest.mark.parametrize("before", [True, False])
def test_it_ends_with_the_window(before: bool) -> None:
    was_on = gc.isenabled()
    (gc.enable if before else gc.disable)()
    mine = Collecting()
    assert not gc.isenabled()
    mine.end()
    assert gc.isenabled() == before
    (gc.enable if was_on else gc.disable)()


def test_what_is_called_last_goes_in_the_windows_thread(qtbot: QtBot) -> None:
    """A dialog closed while its list is read: the call was all that still knew it."""
    went: list[threading.Thread] = []
    gate = threading.Event()

    class Dialog(QObject):
        def read(self) -> None:
            gate.wait(5)

        def __del__(self) -> None:
            went.append(threading.current_thread())

    workers = Workers()
    workers.run(Dialog().read, then=lambda _nothing: None)
    with qtbot.waitSignal(workers.idle):
        gate.set()
    qtbot.waitUntil(lambda: only_here(went))
