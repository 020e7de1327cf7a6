"""The scale in use at a place: what it weighs now, and the load that may be taken."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from desktop.scale_reader import Line, ScaleReader
from shared.scales.reading import ScaleReading
from shared.shop.scales import Scale, pattern_of_scale
from shared.units import weight_text

if TYPE_CHECKING:
    from shared.units import Weight


class ScaleUse(QObject):
    """Listens to one scale of this station, or to none.

    Signals:
        steady: a load may be taken; carries its gross Weight.
        said: what the scale says now, in words.
        heard: its line as it came.
    """

    steady = Signal(object)
    said = Signal(str)
    heard = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.scale: Scale | None = None
        self._reader: ScaleReader | None = None
        self._load: Weight | None = None

    def use(self, scale: Scale | None) -> None:
        """Listen to this one from now on; None: to none."""
        self.close()
        self.scale = scale
        self.said.emit("")
        pattern = pattern_of_scale(scale) if scale is not None else None
        if scale is None or pattern is None or not scale.port:
            return
        line = Line(scale.port, scale.baud, scale.bits, scale.parity, scale.stop_bits)
        reader = ScaleReader(line, pattern, scale.unit, self)
        reader.steady.connect(self._steady)
        reader.read.connect(self._read)
        reader.lost.connect(self._lost)
        reader.heard.connect(self.heard)
        self._reader = reader
        reader.start()

    def close(self) -> None:
        """Stop listening."""
        if self._reader is not None:
            self._reader.close()
            self._reader.deleteLater()
        self._reader = None
        self._load = None

    def load(self) -> "Weight | None":
        """The load on the scale that nobody took yet."""
        return self._load

    def take(self) -> None:
        """The load is kept: the next one is another carcass."""
        self._load = None

    def _steady(self, weight: "Weight") -> None:
        self._load = weight
        self.steady.emit(weight)

    def _read(self, reading: ScaleReading) -> None:
        weight = reading.weight
        if weight is None:
            self._load = None
            self.said.emit(self.tr("The scale is outside its range."))
            return
        if weight.count <= 0 or reading.status == "moving":
            self._load = None
        words = self.tr("{weight}, moving") if reading.status == "moving" else "{weight}"
        self.said.emit(words.format(weight=weight_text(weight)))

    def _lost(self, why: str) -> None:
        self._load = None
        port = self.scale.port if self.scale is not None else ""
        words = {
            "no_port": self.tr("No scale on {port}. Type the weights; it is used once it is back."),
            "silent": self.tr("The scale on {port} says nothing. Type the weights meanwhile."),
            "unread": self.tr("What comes on {port} can't be read. Look at the scale's settings."),
        }
        self.said.emit(words[why].format(port=port))
