"""A scale on a pseudo-terminal to try the Rail without one: `python demo/scale.py`.

It says its port; type a weight and Enter to lay it on, 0 to take it off, q to pull the cable.
"""

import os
import sys
import tty
from threading import Event, Thread

EVERY_S = 0.2
STEADY_AFTER = 3


class Played:
    """Says its line five times a second: moving at first, then steady."""

    def __init__(self) -> None:
        self._own, self._other = os.openpty()
        for one in (self._own, self._other):
            tty.setraw(one)
        self.port = os.ttyname(self._other)
        self.weight = "0.0"
        self._since = 0
        self.stop = Event()
        self._thread = Thread(target=self._talk, daemon=True)
        self._thread.start()

    def lay(self, weight: str) -> None:
        """Lay a load on it."""
        self.weight, self._since = weight, 0

    def _talk(self) -> None:
        while not self.stop.wait(EVERY_S):
            self._since += 1
            status = "ST" if self._since > STEADY_AFTER else "US"
            line = f"{status},GS,+{self.weight:>8}lb\r\n"
            os.write(self._own, line.encode("ascii"))


def main() -> None:
    """Play until q or the end of input."""
    scale = Played()
    print(f"Port {scale.port}, 9600 8N1, pattern: letters and commas first.")
    for line in sys.stdin:
        said = line.strip()
        if said == "q":
            break
        if said.replace(".", "", 1).isdigit():
            scale.lay(said)
        else:
            print("A weight such as 98.5, 0, or q.")
    scale.stop.set()


if __name__ == "__main__":
    main()
