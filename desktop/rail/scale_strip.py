"""The strip below the weights: which scale, what is taken off, and what the scale says now."""

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.panels.heading import Words
from desktop.scale_use import ScaleUse
from shared.units import weight_text

if TYPE_CHECKING:
    from PySide6.QtGui import QCloseEvent

    from desktop.bench import Bench
    from shared.shop.scales import Scale
    from shared.units import Weight

BY_HAND = 0
PLACE = "rail"


class ScaleStrip(QWidget):
    """Hidden where the station has no scale.

    Signals:
        steady: a load may be taken.
    """

    steady = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.scales: tuple[Scale, ...] = ()
        self.use = ScaleUse(self)
        self._far = False
        self.says = Words("body", "quiet", self).wrapped()
        self.says.setAlignment(Qt.AlignmentFlag.AlignRight)
        down = column(self, gap=TOGETHER)
        self._across = row(gap=GROUP)
        down.addLayout(self._across)
        down.addWidget(self.says)
        self.use.said.connect(self.says.setText)
        self.use.steady.connect(lambda _weight: self.steady.emit())
        self.destroyed.connect(self.use.close)

    @cached_property
    def which(self) -> ChoiceField[int]:
        """The scale in use; made once there is one: most stations have none."""
        made: ChoiceField[int] = ChoiceField(self)
        made.set_label(self.tr("Scal&e"))
        made.changed.connect(self._choose)
        self._across.insertWidget(0, made, 1)
        return made

    @cached_property
    def tare(self) -> ChoiceField[str]:
        """What is taken off."""
        made: ChoiceField[str] = ChoiceField(self)
        made.set_label(self.tr("Take o&ff"))
        self._across.addWidget(made, 1)
        return made

    def retranslate(self) -> None:
        """Every word again."""
        if self._made():
            self.which.set_label(self.tr("Scal&e"))
            self.tare.set_label(self.tr("Take o&ff"))
        self._offer()

    def read(self) -> None:
        """Read this station's scales again; the one in use stays, else the first is used."""
        with self.bench.store.read() as work:
            scales = work.scales.of_station(self.bench.station.id)
        if scales == self.scales:
            return
        self.scales = scales
        self._offer()
        known = self.bench.settings.now.scales.get(PLACE)
        there = known == BY_HAND or any(one.id == known for one in scales)
        self.which.set_value(known if there else scales[0].id if scales else BY_HAND)
        self._use()

    def set_far(self, *, on: bool) -> None:
        """Only what the scale says, in large letters."""
        self._far = on
        self.says.setProperty("far", "true" if on else "false")
        if self._made():
            self.which.setVisible(not on)
        self._offer()

    def let_go(self) -> None:
        """Give the line up, so that its settings can be tried; `read` takes it again."""
        self.use.use(None)
        self.scales = ()

    def stops(self) -> tuple[QWidget, ...]:
        """What Tab comes by, in order."""
        return (self.which.box, self.tare.box) if self._made() else ()

    def tare_of(self, kind: str) -> "Weight | None":
        """What is taken off a weight of that kind; nothing off a live one."""
        scale = self.use.scale
        if scale is None or kind == "live":
            return None
        return {"hook": scale.hook, "gambrel": scale.gambrel}.get(self.tare.value() or "")

    def pause(self) -> None:
        """Give the line up while nobody is at the rail: the wrapping table may use the scale."""
        self.use.use(None)

    def go_on(self) -> None:
        """Take the line again."""
        self._use()

    def closeEvent(self, event: "QCloseEvent") -> None:
        self.use.close()
        super().closeEvent(event)

    def _made(self) -> bool:
        return "which" in self.__dict__

    def _offer(self, *, fresh: bool = False) -> None:
        self.setVisible(bool(self.scales))
        if not self.scales and not self._made():
            return
        none = (BY_HAND, self.tr("none, by hand"))
        self.which.set_choices([none, *((one.id, one.name) for one in self.scales)])
        scale = self.use.scale
        offered = [("", self.tr("nothing"))]
        if scale is not None and scale.hook is not None:
            offered.append(
                ("hook", self.tr("hook, {weight}").format(weight=weight_text(scale.hook)))
            )
        if scale is not None and scale.gambrel is not None:
            words = self.tr("gambrel, {weight}").format(weight=weight_text(scale.gambrel))
            offered.append(("gambrel", words))
        before = None if fresh else self.tare.value()
        self.tare.set_choices(offered)
        self.tare.set_value(
            before if before in dict(offered) else offered[min(1, len(offered) - 1)][0]
        )
        self.tare.setVisible(len(offered) > 1 and not self._far)

    def _choose(self) -> None:
        which = self.which.value()
        if which is not None and self.scales:
            kept = {**self.bench.settings.now.scales, PLACE: which}
            self.bench.settings.change(scales=kept)
        self._use()

    def _use(self) -> None:
        which = self.which.value() if self._made() else None
        if which is None:
            return
        scale = next((one for one in self.scales if one.id == which), None)
        if scale != self.use.scale or scale is None:
            self.use.use(scale)
            self.says.setVisible(scale is not None)
            self._offer(fresh=True)
