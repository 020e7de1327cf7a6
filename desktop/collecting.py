"""What is no longer in use is collected in the window's thread, and in no other.

Python looks for it on whichever thread happens to ask for memory. A dialog and what points back at
it go in such a search, and Qt doesn't bear a widget that goes on another thread: the program ends
without a word. So Python's own search is put off for as long as a window is there, and a timer
does the same work by the same counts.
"""

import gc

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

BEAT_MS = 100


def collect(age: int = 2) -> None:
    """Collect what is no longer in use, up to a generation; but no window.

    A window nobody knows any more is left to Qt: collected, its parts would lose what they hold
    one after the other while Qt still calls them.
    """
    windows = QApplication.topLevelWidgets()  # known here as long as it takes
    gc.collect(age)
    windows.clear()


class Collecting(QObject):
    """Collects in the thread that made it, from now until `end`.

    The counts are Python's own thresholds (700 new objects, then each older generation after ten
    rounds of the one before it).
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._was_on = gc.isenabled()
        gc.disable()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.look)
        self._timer.start(BEAT_MS)

    def look(self) -> None:
        """Collect the oldest generation that is due; nothing when none is."""
        counts, limits = gc.get_count(), gc.get_threshold()
        due = [age for age in range(len(counts)) if counts[age] > limits[age]]
        if due:
            collect(due[-1])

    def end(self) -> None:
        """The window is gone: Python collects by itself again, if it did before."""
        self._timer.stop()
        if self._was_on:
            gc.enable()
