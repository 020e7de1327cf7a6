"""The scale on the wrapping table: which it is, and what it says now."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField
from desktop.look.space import GROUP, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.scale_use import ScaleUse

if TYPE_CHECKING:
    from PySide6.QtGui import QHideEvent, QShowEvent

    from desktop.bench import Bench
    from shared.shop.scales import Scale
    from shared.units import Weight

BY_HAND = 0
LEFT = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
PLACE = "wrap"


class TableScale(QWidget):
    """One scale of this station, remembered by the station; by hand until one is chosen.

    The line is held only while the table is in view: the rail may use the same scale.

    Signals:
        steady: a load may be taken; carries its gross Weight.
    """

    steady = Signal(object)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.scales: tuple[Scale, ...] = ()
        self.use = ScaleUse(self)
        self.which: ChoiceField[int] = ChoiceField(self)
        self.says = Words("body", "quiet", self).wrapped()
        self.set_up = button(self)
        across = row(self, gap=GROUP)
        across.addWidget(self.which, 2)
        across.addWidget(self.says, 3, Qt.AlignmentFlag.AlignVCenter)
        across.addWidget(self.set_up, 0, LEFT)
        self.which.changed.connect(self._choose)
        self.set_up.clicked.connect(self.show_settings)
        self.use.said.connect(self.says.setText)
        self.use.steady.connect(self.steady)
        self.destroyed.connect(self.use.close)

    def retranslate(self) -> None:
        """Every word again."""
        self.which.set_label(self.tr("Scal&e"))
        self.set_up.setText(self.tr("Scale&s…"))
        self._offer()

    def scale(self) -> "Scale | None":
        """The scale in use, None by hand."""
        return self.use.scale

    def read(self) -> None:
        """Read this station's scales again, and use the one chosen here before."""
        with self.bench.store.read() as work:
            self.scales = work.scales.of_station(self.bench.station.id)
        self._offer()
        self.which.set_value(self._remembered())
        self._listen()

    def show_settings(self) -> None:
        """Set the scales of this station up; its line is given up while it is tried."""
        from desktop.scales_dialog import ScalesDialog

        self.use.use(None)
        self.dialog = ScalesDialog(self.bench, self.window())  # this may be locked meanwhile
        self.dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.dialog.finished.connect(self.read)
        self.dialog.open()

    def showEvent(self, event: "QShowEvent") -> None:
        super().showEvent(event)
        if not event.spontaneous():
            self.read()

    def hideEvent(self, event: "QHideEvent") -> None:
        super().hideEvent(event)
        if not event.spontaneous():
            self.use.use(None)

    def load(self) -> "Weight | None":
        """The load on the scale that no package took yet."""
        return self.use.load()

    def _remembered(self) -> int:
        known = self.bench.settings.now.scales.get(PLACE, BY_HAND)
        return known if any(one.id == known for one in self.scales) else BY_HAND

    def _offer(self) -> None:
        none = (BY_HAND, self.tr("none, by hand"))
        self.which.set_choices([none, *((one.id, one.name) for one in self.scales)])
        self.which.setVisible(bool(self.scales))

    def _choose(self) -> None:
        which = self.which.value()
        if which is not None and which != self._remembered():
            kept = {**self.bench.settings.now.scales, PLACE: which}
            self.bench.settings.change(scales=kept)
        self._listen()

    def _listen(self) -> None:
        which = self.which.value()
        scale = next((one for one in self.scales if one.id == which), None)
        if scale != self.use.scale:
            self.use.use(scale)
        self.says.setVisible(scale is not None)
