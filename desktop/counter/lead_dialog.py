"""Asks as which other owner of the same side says an order is cut."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.refusal_words import problem_words
from desktop.counter.release import owner_names
from desktop.fields import ChoiceField, FormDialog
from shared.shop.leading import divides_with

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk

ON_ITS_OWN = 0


class LeadDialog(FormDialog):
    """On its own, or as one of those says who divide the same side or quarter."""

    def __init__(self, desk: "OrderDesk", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.setMinimumWidth(480)
        self._desk = desk
        self.says: ChoiceField[int] = ChoiceField(self, required=True)
        self.grid.add(self.says)
        self.retranslate()
        self.says.set_value(desk.leader or ON_ITS_OWN)

    def retranslate(self) -> None:
        desk = self._desk
        self.set_words(
            self.tr("How order {number} is cut").format(number=desk.order.number),
            self._what_becomes(),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.says.set_label(self.tr("&Cut"))
        choices = [(ON_ITS_OWN, self.tr("on its own"))]
        choices += [
            (one, self.tr("as {owner} says").format(owner=owner_names(desk, (one,))))
            for one in divides_with(desk.lot.shares, desk.share)
        ]
        self.says.set_choices(choices)

    def _what_becomes(self) -> str:
        """What is dealt, what becomes of its lines, and what the block needs."""
        order = self._desk.order
        said = [self.tr("Cut as another says, its packages are dealt in turn from that order.")]
        if order.choices:
            lines = self.tr("Its own lines come off ({count}); “Who changed what” keeps them.")
            said.append(lines.format(count=len(order.choices)))
        if order.state == "released":
            said.append(self.tr("The block needs a new sheet then."))
        elif order.choices:
            said.append(self.tr("Ctrl+Z takes it back."))
        return " ".join(said)

    def attempt(self) -> str:
        found = self._desk.lead(self.says.value() or None)
        return "" if found is None else problem_words(found)
