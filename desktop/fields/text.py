"""The fields for words: one line, or a note of several."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QPlainTextEdit, QWidget

from desktop.fields.field import Field
from desktop.fields.line import LineField
from shared.reading import Unread


class TextField(LineField[str]):
    """Takes words, at most `most` letters; spaces at the ends are left out of the value."""

    def __init__(
        self, parent: QWidget | None = None, *, required: bool = False, most: int = 200
    ) -> None:
        super().__init__(parent, required=required)
        self.most = most

    def _read(self, text: str) -> str | Unread:
        words = text.strip()
        return Unread("too_large", text) if len(words) > self.most else words

    def _write(self, value: str) -> str:
        return value

    def _complaint(self, unread: Unread) -> str:
        return self.tr("{most} letters fit here; these are {found}.").format(
            most=self.most, found=len(unread.text.strip())
        )


class NoteField(Field[str]):
    """Takes words on several lines; Tab leaves it, as everywhere."""

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        required: bool = False,
        lines: int = 3,
        most: int = 2000,
    ) -> None:
        super().__init__(parent, required=required)
        self.most = most
        self.note = QPlainTextEdit(self)
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(lines * self.note.fontMetrics().lineSpacing() + 20)
        self._place(self.note)
        self.note.textChanged.connect(self._changed)
        self.note.installEventFilter(self)

    def value(self) -> str | None:
        words = self.text().strip()
        return words if words and len(words) <= self.most else None

    def set_value(self, value: str | None) -> None:
        self.note.setPlainText(value or "")
        self._show("")

    def text(self) -> str:
        return self.note.toPlainText()

    def set_read_only(self, read_only: bool) -> None:
        """Show the note without letting it be typed over."""
        self.note.setReadOnly(read_only)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self.note and event.type() is QEvent.Type.FocusOut and self.note.isVisible():
            self._left()
        return super().eventFilter(watched, event)

    def focus(self) -> None:
        self.note.setFocus(Qt.FocusReason.OtherFocusReason)

    def _unread(self) -> str:
        found = len(self.text().strip())
        if found <= self.most:
            return ""
        return self.tr("{most} letters fit here; these are {found}.").format(
            most=self.most, found=found
        )
