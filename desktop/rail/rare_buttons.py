"""Buttons for what is done now and then, two abreast where their words fit, else one by one."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QPushButton, QSizePolicy, QWidget

from desktop.look.space import TOGETHER
from desktop.panels.buttons import button


class RareButtons(QWidget):
    """Quiet buttons in the order of Tab."""

    def __init__(self, count: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.buttons: tuple[QPushButton, ...] = tuple(
            button(self, quiet=True) for _ in range(count)
        )
        for one in self.buttons:
            one.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(TOGETHER)
        self.lay()

    def lay(self) -> None:
        """Again, after their words or which are shown has changed."""
        shown = [one for one in self.buttons if not one.isHidden()]
        wide = [one.sizeHint().width() for one in shown]
        both = max(wide[::2], default=0) + max(wide[1::2], default=0)
        abreast = 2 if both + TOGETHER <= self.width() else 1
        for one in self.buttons:
            self._grid.removeWidget(one)
        for at, one in enumerate(shown):
            left = Qt.AlignmentFlag.AlignLeft
            self._grid.addWidget(one, at // abreast, at % abreast, left)
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(1, abreast - 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.lay()
