"""Long work with its progress told and a button to stop it; what is done by then stays done."""

import threading
from collections.abc import Callable, Iterable, Iterator
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QProgressBar, QWidget

from desktop.look.space import TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words

if TYPE_CHECKING:
    from desktop.bench import Bench

LOOK_MS = 50
T = TypeVar("T")
R = TypeVar("R")


class Steps:
    """Counts the steps of one run on a worker: `done` of `every`, which any thread may read.

    It tells nobody by itself: who shows it looks now and then, and may be gone before it ends.
    """

    def __init__(self) -> None:
        self._stop = threading.Event()
        self.done = 0
        self.every = 0

    def stop(self) -> None:
        """No further step is begun."""
        self._stop.set()

    @property
    def stopped(self) -> bool:
        """Whether it was stopped."""
        return self._stop.is_set()

    def over(self, things: Iterable[T]) -> Iterator[T]:
        """The things one after the other, each counted when it is done, until it is stopped."""
        every = list(things)
        self.done, self.every = 0, len(every)
        for thing in every:
            if self.stopped:
                return
            yield thing
            self.done += 1


class ProgressStrip(QWidget):
    """A bar, how far it is, and a button that stops; hidden while nothing runs."""

    def __init__(self, bench: "Bench", parent: QWidget) -> None:
        super().__init__(parent)
        self.bench = bench
        self._steps: Steps | None = None
        across = row(self, gap=TOGETHER)
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.where = Words("body", "quiet", self)
        self.cancel = button(self)
        across.addWidget(self.bar, 1)
        across.addWidget(self.where)
        across.addWidget(self.cancel)
        self.cancel.clicked.connect(self.stop)
        self._look = QTimer(self)
        self._look.timeout.connect(self._tell)
        self.retranslate()
        self.hide()

    def retranslate(self) -> None:
        """Every word of the strip."""
        self.cancel.setText(self.tr("Sto&p"))
        self.bar.setAccessibleName(self.tr("How far it is"))

    @property
    def running(self) -> bool:
        """Whether something runs."""
        return self._steps is not None

    def run(self, call: Callable[[Steps], R], then: Callable[[R], object]) -> None:
        """Call it on a worker with its steps; one run at a time, the result in the window."""
        if self._steps is not None:
            return
        steps = Steps()
        self._steps = steps
        self._look.start(LOOK_MS)
        self.cancel.setEnabled(True)
        self.where.setText("")
        self.bar.setRange(0, 0)
        self.show()

        def done(found: R) -> None:
            self._over()
            then(found)

        def failed(fault: Exception) -> None:
            self._over()
            raise fault

        self.destroyed.connect(steps.stop)
        self.bench.work.run(call, steps, then=done, failed=failed, owner=self)

    def stop(self) -> None:
        """Stop what runs after the step it is in."""
        if self._steps is not None:
            self._steps.stop()
            self.cancel.setEnabled(False)

    def _tell(self) -> None:
        steps = self._steps
        if steps is not None and steps.every:
            self.bar.setRange(0, steps.every)
            self.bar.setValue(steps.done)
            self.where.setText(self.tr("{done} of {all}").format(done=steps.done, all=steps.every))

    def _over(self) -> None:
        self._look.stop()
        self._steps = None
        self.hide()
