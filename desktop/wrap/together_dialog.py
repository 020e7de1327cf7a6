"""All counted packages of a line on the scale at once, for a charge by the finished pound."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, WeightField
from shared.units import Weight, net

if TYPE_CHECKING:
    from desktop.wrap.wrapping import WrapLine


class TogetherDialog(FormDialog):
    """Asks what they weigh in all. `keep` keeps it and says "" or why it can't be kept."""

    def __init__(
        self,
        line: "WrapLine",
        keep: Callable[["WrapLine", Weight, Weight | None], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._line, self._keep = line, keep
        self.weight = WeightField(self, required=True)
        self.tare = WeightField(self)
        self.grid.add(self.weight)
        self.grid.add(self.tare)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Weigh what was counted"),
            self.tr(
                "{product}: all {count} counted packages on the scale at once. Charges by the "
                "finished pound are billed by it; no package gets a label or a weight of its own."
            ).format(product=self._line.product, count=self._line.counted),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.weight.set_label(self.tr("&Weight of all, or gross with tare"))
        self.tare.set_label(self.tr("&Tare"))

    def attempt(self) -> str:
        weight, tare = self.weight.value(), self.tare.value()
        if weight is None:
            return self.tr("Say what they weigh.")
        after = weight if tare is None else net(weight, tare)
        if not isinstance(after, Weight):
            return self.tr("The tare is more than the gross weight.")
        return self._keep(self._line, after, tare)
