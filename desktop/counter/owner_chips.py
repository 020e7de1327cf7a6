"""The owners of a lot as a row of chips, each with the state of its order."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from desktop.look.space import STEP, row
from desktop.panels.buttons import button

if TYPE_CHECKING:
    from collections.abc import Sequence

    from printing.words import Words
    from shared.shop.orders import Order


class OwnerChips(QWidget):
    """One chip for each owner.

    Signals:
        chosen: another owner; carries the id of the order.
    """

    chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._row = row(self, gap=STEP)
        self._row.addStretch(1)
        self._chips: dict[int, QPushButton] = {}

    def show_orders(self, orders: "Sequence[Order]", shown: int, words: "Words") -> None:
        """Show these orders; the chip of `shown` is down."""
        if list(self._chips) != [order.id for order in orders]:
            self._make(orders)
        for order in orders:
            chip = self._chips[order.id]
            name = order.owner or self.tr("to be named")
            state = words.say(f"state.{order.state}")
            chip.setText(self.tr("{owner}: {state}").format(owner=name, state=state))
            chip.setChecked(order.id == shown)

    def step(self, by: int) -> None:
        """Go to the owner so many further along."""
        ids = list(self._chips)
        at = next((place for place, one in enumerate(ids) if self._chips[one].isChecked()), 0)
        if ids:
            self.chosen.emit(ids[(at + by) % len(ids)])

    def _make(self, orders: "Sequence[Order]") -> None:
        for chip in self._chips.values():
            self._row.removeWidget(chip)
            chip.deleteLater()
        self._chips = {}
        for place, order in enumerate(orders):
            chip = button(self)
            chip.setCheckable(True)
            chip.clicked.connect(lambda _on=False, order_id=order.id: self.chosen.emit(order_id))
            self._row.insertWidget(place, chip)
            self._chips[order.id] = chip
