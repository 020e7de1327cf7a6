"""A scale played on a pseudo-terminal: what is laid on it is said on its line."""

import os
import tty
from contextlib import suppress
from threading import Event, Thread


class PlayedScale:
    """Says its line every few milliseconds, in the form the test gives; unplugged it is gone."""

    def __init__(self, form: str = "ST,GS,+{weight:>8}lb\r\n", every_s: float = 0.01) -> None:
        self._own, self._other = os.openpty()
        tty.setraw(self._own)
        tty.setraw(self._other)
        os.set_blocking(self._own, False)
        self.port = os.ttyname(self._other)
        self._form = form
        self._every = every_s
        self._weight: str | None = None
        self._stop = Event()
        self._thread = Thread(target=self._talk, daemon=True)
        self._thread.start()

    def lay(self, weight: str | None) -> None:
        """Lay a load on it; None: it falls silent."""
        self._weight = weight

    def write(self, form: str) -> None:
        """Change what it writes."""
        self._form = form

    def unplug(self) -> None:
        """Pull the cable; once is enough."""
        if self._stop.is_set():
            return
        self._stop.set()
        self._thread.join(timeout=2)
        for one in (self._own, self._other):
            os.close(one)

    def _talk(self) -> None:
        while not self._stop.wait(self._every):
            if self._weight is not None:
                line = self._form.format(weight=self._weight).encode("ascii")
                with suppress(BlockingIOError):  # nobody listens: the line is lost, as on a wire
                    os.write(self._own, line)
