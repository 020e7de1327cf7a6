"""What is in a ring and no longer in use goes in the window's thread, whoever asks for memory."""

import gc
import threading
from pathlib import Path

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from desktop.collecting import Collecting
from desktop.journal import Journal
from desktop.work import Workers


class Ring:
    """Points at itself, and says on which thread it goes."""

    def __init__(self, went: list[threading.Thread]) -> None:
        self.itself = self
        self.went = went

    def __del__(self) -> None:
        self.went.append(threading.current_thread())


def much(_number: int = 0) -> int:
    """Some ten times as many new objects as Python's own search waits for."""
    return len([[number] for number in range(10_000)])


def only_here(went: list[threading.Thread]) -> bool:
    return bool(went) and set(went) == {threading.main_thread()}


def test_a_worker_collects_nothing(qtbot: QtBot, collecting: Collecting) -> None:
    went: list[threading.Thread] = []
    workers = Workers()
    for _ in range(20):
        Ring(went)
        with qtbot.waitSignal(workers.idle):
            workers.run(much, then=lambda _found: None)
    qtbot.waitUntil(lambda: only_here(went))


def test_the_journals_thread_collects_nothing(
    qtbot: QtBot, collecting: Collecting, tmp_path: Path
) -> None:
    went: list[threading.Thread] = []
    journal = Journal(tmp_path / "drafts.json")
    for number in range(5):
        Ring(went)
        journal.note("line", {str(at): "x" * number for at in range(3_000)})
    journal.close()
    qtbot.waitUntil(lambda: only_here(went))


def test_it_ends_with_the_window() -> None:
    was_on = gc.isenabled()
    mine = Collecting()
    assert not gc.isenabled()
    mine.end()
    assert gc.isenabled()
    if not was_on:
        gc.disable()


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
