"""Work off the window's thread, its result handed back in the window's thread by a signal."""

import gc
import logging
from collections.abc import Callable
from contextlib import contextmanager
from dataclasses import dataclass
from time import thread_time
from typing import TYPE_CHECKING, Any, TypeVar

from PySide6.QtCore import (
    QObject,
    QRunnable,
    Qt,
    QThreadPool,
    QTimer,
    Signal,
    Slot,
)
from shiboken6 import isValid

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
    then: Callable[[Any], object]
    failed: Callable[..., object] | None
    owner: QObject | None


class _Job(QRunnable):
    """One call on a worker thread."""

    def __init__(self, workers: "Workers", number: int, call: Callable[[], object]) -> None:
        super().__init__()
        self._workers = workers
        self._number = number
        self._call = call

    def run(self) -> None:
        try:
            result, fault = self._call(), None
        except Exception as raised:  # handed over, and raised again in the window's thread
            result, fault = None, raised
        self._workers.deliver(self._number, result, fault)


class Workers(QObject):
    """Runs functions on worker threads.

    Python collects what is no longer in use on whichever thread asks for memory, and Qt doesn't
    bear a widget that goes on a worker's. So nothing is collected while a worker runs.

    Signals:
        idle: nothing is running any more.
    """

    idle = Signal()
    _finished = Signal(int, object, object)

    def __init__(self, parent: QObject | None = None, threads: int = 2) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(threads)
        self._next = 0
        self._newest: dict[str, int] = {}
        self._waiting: dict[int, _Waiting] = {}
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
        still being read. Where `then` is a method of a QObject, that is the owner.
        """
        self._next += 1
        if key:
            self._newest[key] = self._next
        whose = owner or getattr(then, "__self__", None)
        whose = whose if isinstance(whose, QObject) else None
        self._waiting[self._next] = _Waiting(key, then, failed, whose)
        gc.disable()
        self._pool.start(_Job(self, self._next, lambda: function(*args)))

    def busy(self) -> bool:
        """Whether a result is still to come."""
        return bool(self._waiting)

    def forget(self, key: str) -> None:
        """Drop the result still to come under this key."""
        self._newest.pop(key, None)
        for number, one in list(self._waiting.items()):
            if one.key == key:
                self._waiting[number] = _Waiting(key, _nothing, _nothing, None)

    def finish(self) -> None:
        """Wait for what runs and drop the results; at closing."""
        self._waiting.clear()
        self._pool.waitForDone()
        gc.enable()

    def deliver(self, number: int, result: object, fault: Exception | None) -> None:
        """Called on the worker's thread: cross to the window's."""
        self._finished.emit(number, result, fault)

    @Slot(int, object, object)
    def _hand_over(self, number: int, result: object, fault: Exception | None) -> None:
        waiting = self._waiting.pop(number, None)
        if not self._waiting:
            gc.enable()
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


def _nothing(_result: object) -> None:
    return None


@contextmanager
def slow_turns(limit_ms: int = LIMIT_MS) -> "Iterator[list[int]]":
    """Milliseconds of each stretch in which the window's thread was too busy to answer a key.

    Read from the thread's own clock at every beat of a timer, so that waiting doesn't count and a
    busy machine doesn't either. What is there already is kept out of the collector's sight, as the
    program does once it is open. `with slow_turns() as slow: …; assert slow == []`.
    """
    gc.collect()
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
