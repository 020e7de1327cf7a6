"""Rail, the place."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.look.space import column
from desktop.panels.empty import EmptyState
from desktop.places import Place

if TYPE_CHECKING:
    from desktop.bench import Bench


class RailPlace(Place):
    """Animals arrive here: tags, live and hot weights, inspection, and what hangs where."""

    key = "rail"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self._empty = EmptyState(self)
        column(self).addWidget(self._empty)
        self.retranslate()

    def title(self) -> str:
        return self.tr("Rail")

    def retranslate(self) -> None:
        self._empty.set_words(
            self.tr("Rail"),
            self.tr(
                "Animals arrive here: tags, live and hot weights, inspection, and what hangs where."
            ),
        )
