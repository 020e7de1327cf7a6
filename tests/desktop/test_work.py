"""Work on other threads: delivered in the window's thread, the newest of a kind only."""

import threading
from time import thread_time

import pytest
from PySide6.QtCore import QObject, QTimer
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.work import Workers, slow_turns


@pytest.fixture
def workers(qtbot: QtBot) -> Workers:
    return Workers()


def test_the_result_comes_in_the_windows_thread(qtbot: QtBot, workers: Workers) -> None:
    ran: list[threading.Thread] = []
    got: list[tuple[int, threading.Thread]] = []

    def double(number: int) -> int:
        ran.append(threading.current_thread())
        return number * 2

    workers.run(double, 21, then=lambda found: got.append((found, threading.current_thread())))
    qtbot.waitUntil(lambda: bool(got))
    assert got == [(42, threading.main_thread())]
    assert ran[0] is not threading.main_thread()
    assert not workers.busy()


def test_of_one_key_only_the_newest_is_handed_over(qtbot: QtBot, workers: Workers) -> None:
    gate = threading.Event()
    got: list[str] = []

    def first() -> str:
        gate.wait(5)
        return "first"

    workers.run(first, then=got.append, key="plan")
    workers.run(lambda: "second", then=got.append, key="plan")
    qtbot.waitUntil(lambda: got == ["second"])
    with qtbot.waitSignal(workers.idle):
        gate.set()
    assert got == ["second"]


def test_what_is_forgotten_is_not_handed_over(qtbot: QtBot, workers: Workers) -> None:
    got: list[str] = []
    with qtbot.waitSignal(workers.idle):
        workers.run(lambda: "late", then=got.append, key="plan")
        workers.forget("plan")
    assert got == []


def test_a_fault_goes_to_who_asked_for_it(qtbot: QtBot, workers: Workers) -> None:
    faults: list[Exception] = []

    def refuse() -> int:
        raise OSError("no disk")

    handed: list[int] = []
    workers.run(refuse, then=handed.append, failed=faults.append)
    qtbot.waitUntil(lambda: bool(faults))
    assert str(faults[0]) == "no disk"
    assert handed == []


def test_a_fault_nobody_asked_for_is_raised_in_the_windows_thread(
    qtbot: QtBot, workers: Workers
) -> None:
    def refuse() -> int:
        raise KeyError("ours")

    with qtbot.capture_exceptions() as caught, qtbot.waitSignal(workers.idle):
        workers.run(refuse, then=lambda _found: None)
    assert [kind for kind, _fault, _trace in caught] == [KeyError]


class Page(QObject):
    """It asks in a method, and takes the answer in a function made there."""

    def ask(self, workers: Workers, gate: threading.Event, said: list[str]) -> None:
        def told(found: str) -> None:
            said.append(f"{self.objectName()}{found}")

        workers.run(lambda: str(gate.wait(5)), then=told)
        workers.run(lambda: str(gate.wait(5)), then=lambda found: told(found))


def test_what_comes_for_a_function_of_a_page_that_is_gone_is_dropped(
    qtbot: QtBot, workers: Workers
) -> None:
    """A box's label was printed after its dialog was closed: told as a fault of ours."""
    said: list[str] = []
    gone, there = Page(), Page()
    gate = threading.Event()
    gone.ask(workers, gate, said)
    there.ask(workers, gate, said)
    delete(gone)
    with qtbot.captureExceptions() as faults, qtbot.waitSignal(workers.idle):
        gate.set()
    assert faults == []
    assert said == ["True", "True"]


def keep_busy(milliseconds: int) -> None:
    end = thread_time() + milliseconds / 1000
    while thread_time() < end:
        pass


@pytest.mark.parametrize(("busy", "slow"), [(90, 1), (1, 0)])
def test_a_turn_that_keeps_the_window_waiting_is_noticed(
    qtbot: QtBot, busy: int, slow: int
) -> None:
    done: list[bool] = []

    def turn() -> None:
        keep_busy(busy)
        done.append(True)

    with slow_turns(limit_ms=50) as found:
        QTimer.singleShot(0, turn)
        qtbot.waitUntil(lambda: bool(done))
        qtbot.wait(1)
    assert len(found) == slow
    assert all(milliseconds >= 50 for milliseconds in found)


def test_what_comes_for_a_page_that_is_gone_is_dropped(qtbot: QtBot, workers: Workers) -> None:
    said: list[str] = []
    page, other = QObject(), QObject()
    go = threading.Event()

    def slow() -> str:
        go.wait(5)
        return "late"

    workers.run(slow, then=said.append, owner=page)
    workers.run(slow, then=said.append, owner=other)
    workers.run(slow, then=page.setObjectName)
    delete(page)
    go.set()
    qtbot.waitUntil(lambda: not workers.busy())
    assert said == ["late"]
