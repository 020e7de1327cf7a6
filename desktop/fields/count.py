"""The field for a whole number: pieces, packages, head."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.fields.line import LineField
from shared.reading import Unread, read_number


class CountField(LineField[int]):
    """Takes a whole number from `least` to `most`; up and down step by one."""

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        required: bool = False,
        least: int = 0,
        most: int = 9999,
    ) -> None:
        super().__init__(parent, required=required)
        self.least = least
        self.most = most

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            watched is self.line
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down)
            and not self.line.isReadOnly()
        ):
            self._step(1 if event.key() == Qt.Key.Key_Up else -1)
            return True
        return super().eventFilter(watched, event)

    def _step(self, by: int) -> None:
        value = self.value()
        if value is None and not self.is_empty():
            return
        start = self.least - by if value is None else value
        self.line.setText(str(min(max(start + by, self.least), self.most)))
        self._changed()

    def _read(self, text: str) -> int | Unread:
        found = read_number(text)
        if isinstance(found, Unread):
            return found
        if found.value.denominator != 1:
            return Unread("not_exact", text)
        if not self.least <= found.value <= self.most:
            return Unread("too_large", text)
        return int(found.value)

    def _write(self, value: int) -> str:
        return str(value)

    def _complaint(self, unread: Unread) -> str:
        match unread.code:
            case "too_large" | "negative":
                words = self.tr("A whole number from {least} to {most} goes here.")
            case "not_exact":
                words = self.tr("A whole number goes here, not “{text}”.")
            case _:
                words = self.tr("Steelyard reads whole numbers like 12; it can't read “{text}”.")
        return words.format(text=unread.text.strip(), least=self.least, most=self.most)
