"""The owners of a lot as a row of chips, each with the state of its order."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
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
        self._said: dict[int, tuple[str, str]] = {}

    def show_orders(self, orders: "Sequence[Order]", shown: int, words: "Words") -> None:
        """Show these orders; the chip of `shown` is down."""
        if list(self._chips) != [order.id for order in orders]:
            self._make(orders)
        for order in orders:
            name = order.owner or self.tr("to be named")
            self._said[order.id] = (name, words.say(f"state.{order.state}"))
            self._chips[order.id].setChecked(order.id == shown)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Where there is no room for all, long names give way, the states stay."""
        for order_id, chip in self._chips.items():
            whole = self._words(*self._said[order_id])
            chip.setText(_no_letter(whole))
            chip.setAccessibleName(whole)
            chip.setToolTip("")
        room = self.width() - STEP * len(self._chips)
        left = sorted(self._chips, key=lambda one: self._chips[one].sizeHint().width())
        while left:
            order_id, fair = left.pop(0), room // (len(left) + 1)
            wide = self._chips[order_id].sizeHint().width()
            if wide > fair:
                self._shorten(order_id, wide - fair)
            room -= min(wide, fair)

    def _shorten(self, order_id: int, by: int) -> None:
        chip, (name, state) = self._chips[order_id], self._said[order_id]
        metrics = chip.fontMetrics()
        room = max(metrics.horizontalAdvance(name) - by, metrics.horizontalAdvance("MMM…"))
        short = metrics.elidedText(name, Qt.TextElideMode.ElideRight, room)
        chip.setText(_no_letter(self._words(short, state)))
        chip.setToolTip(self._words(name, state))

    def _words(self, name: str, state: str) -> str:
        return self.tr("{owner}: {state}").format(owner=name, state=state)

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
        self._said = {one.id: ("", "") for one in orders}
        for place, order in enumerate(orders):
            chip = button(self)
            chip.setCheckable(True)
            chip.clicked.connect(lambda _on=False, order_id=order.id: self.chosen.emit(order_id))
            self._row.insertWidget(place, chip)
            self._chips[order.id] = chip


def _no_letter(words: str) -> str:
    """So that the & of a name is shown, not taken for the mark of a letter to press."""
    return words.replace("&", "&&")
