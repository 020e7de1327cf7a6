"""A button for wet hands: 64 pixels high at the least."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from desktop.look.space import ROW_BLOCK
from desktop.look.type_scale import Size, set_type


class LargeButton(QPushButton):
    """A large button without words yet; Enter presses it as Space does, as it ticks a line.

    The style sheet's own least height is below ours.
    """

    def __init__(
        self, parent: QWidget | None = None, *, size: Size = "title", main: bool = False
    ) -> None:
        super().__init__(parent)
        self.setProperty("main", "true" if main else "false")
        self.setAutoDefault(False)
        set_type(self, size)
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        return QSize(hint.width(), max(hint.height(), ROW_BLOCK))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers():
            if not event.isAutoRepeat():
                self.click()
        else:
            super().keyPressEvent(event)
