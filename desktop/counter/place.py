"""Counter, the place."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.look.space import column
from desktop.panels.empty import EmptyState
from desktop.places import Place

if TYPE_CHECKING:
    from desktop.bench import Bench


class CounterPlace(Place):
    """Book an animal, take the cut order by phone, hand over the boxes, take the money."""

    key = "counter"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self._empty = EmptyState(self)
        column(self).addWidget(self._empty)
        self.retranslate()

    def title(self) -> str:
        return self.tr("Counter")

    def retranslate(self) -> None:
        self._empty.set_words(
            self.tr("Counter"),
            self.tr(
                "Book an animal, take the cut order by phone, hand over the boxes, take the money."
            ),
        )
