"""Work off the window's thread, its result handed back in the window's thread by a signal."""

import gc
import logging
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, suppress
from dataclasses import dataclass, replace
from functools import partial
from time import thread_time
from types import FunctionType
from typing import TYPE_CHECKING, Any, TypeVar

from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot
from shiboken6 import isValid

from desktop.collecting import collect

if TYPE_CHECKING:
    from collections.abc import Iterator

log = logging.getLogger(__name__)
R = TypeVar("R")
LIMIT_MS = 50
BEAT_MS = 5


@dataclass(frozen=True, slots=True)
class _Waiting:
    """What is called with a result still to come, and whose it is."""

    key: str
    call: Callable[[], object]
    then: Callable[[Any], object]
    failed: Callable[..., object] | None
    owner: QObject | None


class Workers(QObject):
    """Runs functions on worker threads.

    Qt doesn't bear a widget that goes on a worker's thread. So what is called, what it is called
    with and what came of it are kept here until they are handed over, and dropped in the window's
    thread; what is in a ring is left to `desktop.collecting`.

    Signals:
        idle: nothing is running any more.
    """

    idle = Signal()
    _finished = Signal(int)

    def __init__(self, parent: QObject | None = None, threads: int = 2) -> None:
        super().__init__(parent)
        self._threads = threads
        self._pool = self._new_pool()
        self._next = 0
        self._newest: dict[str, int] = {}
        self._waiting: dict[int, _Waiting] = {}
        self._came: dict[int, tuple[object, Exception | None]] = {}
        self._finished.connect(self._hand_over, Qt.ConnectionType.QueuedConnection)

    def run(
        self,
        function: Callable[..., R],
        *args: object,
        then: Callable[[R], object],
        failed: Callable[[Exception], object] | None = None,
        key: str = "",
        owner: QObject | None = None,
    ) -> None:
        """Call `function(*args)` on a worker, then `then(result)` in the window's thread.

        Of runs with the same `key` only the newest result is handed over. What the function
        raises goes to `failed`; without one it is raised here, as any fault of ours. What comes
        for an `owner` that is gone by then is dropped: a page may be closed while its list is
        still being read. Where `then` is a method of a QObject, or a function made within one,
        that is the owner.
        """
        self._next += 1
        if key:
            self._newest[key] = self._next
        whose = owner or _maker(then)
        call = partial(function, *args)
        self._waiting[self._next] = _Waiting(key, call, then, failed, whose)
        self._pool.submit(self._answer, self._next)

    def busy(self) -> bool:
        """Whether a result is still to come."""
        return bool(self._waiting)

    def forget(self, key: str) -> None:
        """Drop the result still to come under this key."""
        self._newest.pop(key, None)
        for number, one in list(self._waiting.items()):
            if one.key == key:
                self._waiting[number] = replace(one, then=_nothing, failed=_nothing, owner=None)

    def finish(self) -> None:
        """Wait for what runs and drop the results; at closing."""
        self._pool.shutdown()
        self._pool = self._new_pool()  # threads come with the first call
        self._waiting.clear()
        self._came.clear()

    def _new_pool(self) -> ThreadPoolExecutor:
        return ThreadPoolExecutor(self._threads, thread_name_prefix="worker")

    def _answer(self, number: int) -> None:
        """On the worker's thread: make the call, and cross to the window's with its number."""
        self._came[number] = self._outcome(number)
        self._finished.emit(number)

    def _outcome(self, number: int) -> tuple[object, Exception | None]:
        try:
            return self._waiting[number].call(), None
        except Exception as raised:  # handed over, and raised again in the window's thread
            return None, raised

    @Slot(int)
    def _hand_over(self, number: int) -> None:
        waiting = self._waiting.pop(number, None)
        result, fault = self._came.pop(number, (None, None))
        try:
            if waiting is None:
                return
            if waiting.key and self._newest.get(waiting.key, number) != number:
                return
            if waiting.owner is not None and not isValid(waiting.owner):
                log.info("dropped what came for a widget that is gone: %r", fault or "a result")
            elif fault is None:
                waiting.then(result)
            elif waiting.failed is not None:
                waiting.failed(fault)
            else:
                raise fault
        finally:
            if not self._waiting:
                self.idle.emit()


def _maker(then: Callable[..., object], deep: int = 2) -> QObject | None:
    """The QObject a method is of, or whose `self` a function made in a method speaks of."""
    whose = getattr(then, "__self__", None)
    if isinstance(then, FunctionType) and deep:
        held = dict(_held(then))
        within = (_maker(one, deep - 1) for one in held.values() if isinstance(one, FunctionType))
        whose = held.get("self") or next((one for one in within if one is not None), None)
    return whose if isinstance(whose, QObject) else None


def _held(function: FunctionType) -> "Iterator[tuple[str, object]]":
    """What a function made in another one uses of it, by name."""
    for name, cell in zip(function.__code__.co_freevars, function.__closure__ or (), strict=True):
        with suppress(ValueError):  # nothing is in it yet
            yield name, cell.cell_contents


def _nothing(_result: object) -> None:
    return None


@contextmanager
def slow_turns(limit_ms: int = LIMIT_MS) -> "Iterator[list[int]]":
    """Milliseconds of each stretch in which the window's thread was too busy to answer a key.

    Read from the thread's own clock at every beat of a timer, so that waiting doesn't count and a
    busy machine doesn't either. What is there already is kept out of the collector's sight, as the
    program does once it is open. `with slow_turns() as slow: …; assert slow == []`.
    """
    collect()
    gc.freeze()
    slow: list[int] = []
    last = thread_time()

    def beat() -> None:
        nonlocal last
        now = thread_time()
        took = round((now - last) * 1000)
        last = now
        if took > limit_ms:
            slow.append(took)

    timer = QTimer()
    timer.timeout.connect(beat)
    timer.start(BEAT_MS)
    try:
        yield slow
    finally:
        timer.stop()
        beat()
        gc.unfreeze()
