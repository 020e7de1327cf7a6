"""Block, the place."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.look.space import column
from desktop.panels.empty import EmptyState
from desktop.places import Place

if TYPE_CHECKING:
    from desktop.bench import Bench


class BlockPlace(Place):
    """The carcass in cutting order, for the one who holds the knife."""

    key = "block"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self._empty = EmptyState(self)
        column(self).addWidget(self._empty)
        self.retranslate()

    def title(self) -> str:
        return self.tr("Block")

    def retranslate(self) -> None:
        self._empty.set_words(
            self.tr("Block"),
            self.tr("The carcass in cutting order, for the one who holds the knife."),
        )
