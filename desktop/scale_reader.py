"""Reading a scale on a serial line, off the window's thread; unplugged, it says so and comes back.

Where the port or the line is wrong the work goes on by hand: nothing here ever stops a place.
"""

import logging
from collections import deque
from collections.abc import Callable
from contextlib import contextmanager
from dataclasses import dataclass
from threading import Event, Lock, Thread
from time import monotonic
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject, Signal

from shared.scales.reading import (
    EQUAL_READINGS,
    Pattern,
    ScaleReading,
    UnreadLine,
    read_line,
    steady,
)

if TYPE_CHECKING:
    from collections.abc import Iterator

    from serial import SerialBase

    from shared.units import Weight, WeightUnit

log = logging.getLogger(__name__)
Parity = Literal["N", "E", "O"]
AGAIN_AFTER_S = 2.0
LINE_WAITS_S = 0.5
SAID_AGAIN_S = 0.1
CLOSES_S = 0.03  # the window waits no longer; the thread lets go of the port by itself
LONGEST_LINE = 200


@dataclass(frozen=True, slots=True)
class Line:
    """The settings of a serial line, as the scale's manual gives them."""

    port: str
    baud: int = 9600
    bits: int = 8
    parity: Parity = "N"
    stop_bits: int = 1


def open_port(line: Line) -> "SerialBase":
    """The line, opened. Raises OSError (pyserial's own is one)."""
    import serial  # read only where a scale is used

    return serial.serial_for_url(
        line.port,
        baudrate=line.baud,
        bytesize=line.bits,
        parity=line.parity,
        stopbits=line.stop_bits,
        timeout=LINE_WAITS_S,
    )


def ports() -> tuple[tuple[str, str], ...]:
    """Serial ports of this station, each with what the system calls it."""
    from serial.tools import list_ports

    return tuple((one.device, one.description or one.device) for one in list_ports.comports())


class ScaleReader(QObject):
    """Listens to one scale until it is closed.

    Signals:
        read: a ScaleReading, each that differs from the one before, the same one now and then.
        steady: a Weight one may take; said once for each load on the scale.
        heard: the line as it came, for the settings; as often as `read`.
        lost: the scale doesn't answer: "no_port" (not there, or held by another program), "silent"
            (nothing comes) or "unread" (lines come that the pattern doesn't fit).
        back: it answers again.
    """

    read = Signal(object)
    steady = Signal(object)
    heard = Signal(str)
    lost = Signal(str)
    back = Signal()

    def __init__(
        self,
        line: Line,
        pattern: Pattern,
        unit: "WeightUnit" = "lb",
        parent: QObject | None = None,
        opened: Callable[[Line], "SerialBase"] = open_port,
    ) -> None:
        super().__init__(parent)
        self._line = line
        self._pattern = pattern
        self._unit: WeightUnit = unit
        self._opened = opened
        self._stop = Event()
        self._fault = ""
        self._told: Weight | None = None
        self._port: SerialBase | None = None
        self._held = Lock()
        self._said, self._said_at = "", 0.0
        self._last: deque[ScaleReading] = deque(maxlen=EQUAL_READINGS)
        self._thread = Thread(target=self._listen, name="scale", daemon=True)

    def start(self) -> None:
        """Begin to listen."""
        self._thread.start()

    def close(self) -> None:
        """Stop listening and let go of the port, without waiting for a line that doesn't come."""
        self._stop.set()
        with self._held:
            cancel = getattr(self._port, "cancel_read", None)  # not every kind of line has it
            if cancel is not None:
                cancel()
        if self._thread.is_alive():
            self._thread.join(timeout=CLOSES_S)

    def _listen(self) -> None:
        while not self._stop.is_set():
            try:
                with self._opened(self._line) as port, self._open_to_all(port):
                    self._hear(port)
            except (OSError, ValueError) as fault:
                log.info("scale on %s: %s", self._line.port, fault)
                if self._stop.is_set():
                    return
                self._say_lost("no_port")
                self._stop.wait(AGAIN_AFTER_S)

    @contextmanager
    def _open_to_all(self, port: "SerialBase") -> "Iterator[None]":
        """While a port is open its reading may be cancelled; before it closes no longer."""
        self._port = port
        try:
            yield
        finally:
            with self._held:
                self._port = None

    def _hear(self, port: "SerialBase") -> None:
        unread = 0
        while not self._stop.is_set():
            if self._pattern.ask:
                port.write(self._pattern.ask.encode("ascii"))
            raw = port.read_until(b"\n", LONGEST_LINE)
            if self._stop.is_set():
                return
            if not raw.strip():
                self._say_lost("silent")
                continue
            text = raw.decode("latin-1").strip("\r\n")
            news = self._is_news(text)
            if news:
                self.heard.emit(text)
            found = read_line(text, self._pattern, self._unit)
            if isinstance(found, UnreadLine):
                unread += 1
                # The first line after opening may be half of one.
                if unread > 1:
                    self._say_lost("unread")
                continue
            unread = 0
            self._take(found, news)

    def _is_news(self, text: str) -> bool:
        """Whether a line is said: another one, or the same one again after a while.

        A scale says the same many times a second; a busy window must not fall behind it.
        """
        now = monotonic()
        if text == self._said and now - self._said_at < SAID_AGAIN_S:
            return False
        self._said, self._said_at = text, now
        return True

    def _take(self, found: ScaleReading, news: bool) -> None:
        if self._fault:
            self._fault = ""
            self.back.emit()
        self._last.append(found)
        if news:
            self.read.emit(found)
        weight = found.weight
        if weight is None or weight.count <= 0 or self._is_another(weight):
            self._told = None
        if weight is None or weight.count <= 0:
            return
        if not steady(tuple(self._last)):
            if found.status == "moving":
                self._told = None
        elif self._told is None:
            self._told = weight
            self.steady.emit(weight)

    def _is_another(self, weight: "Weight") -> bool:
        """Whether this can't be the load that was told: it differs by more than half of it.

        A tray of 0.04 lb stays on the scale between packages of 1 lb: it never comes to nothing.
        """
        if self._told is None:
            return False
        told = self._told.exact_nanograms
        return 2 * abs(weight.exact_nanograms - told) > told

    def _say_lost(self, why: str) -> None:
        self._last.clear()
        self._told = None
        if self._fault != why:
            self._fault = why
            self.lost.emit(why)
