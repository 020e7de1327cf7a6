"""A field of one typed line, read by a rule and shown again as it was understood."""

from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from desktop.fields.field import Field
from shared.reading import Unread

T = TypeVar("T")


class LineField(Field[T], Generic[T]):
    """One line of typing. Subclasses say how it is read, written and complained of."""

    def __init__(self, parent: QWidget | None = None, *, required: bool = False) -> None:
        super().__init__(parent, required=required)
        self.line = QLineEdit(self)
        self._place(self.line)
        self.line.textEdited.connect(self._changed)
        self.line.editingFinished.connect(self._finished)
        self.line.installEventFilter(self)

    def value(self) -> T | None:
        if self.is_empty():
            return None
        found = self._read(self.text())
        return None if isinstance(found, Unread) else found

    def set_value(self, value: T | None) -> None:
        self.set_text("" if value is None else self._write(value))

    def text(self) -> str:
        return self.line.text()

    def set_text(self, text: str) -> None:
        """Put typed text back as it was, readable or not; a shown complaint goes."""
        self._rule = ""
        self.line.setText(text)
        self._show("")

    def hint(self, words: str) -> None:
        """Quiet words shown while nothing is typed."""
        self.line.setPlaceholderText(words)

    def set_read_only(self, read_only: bool) -> None:
        """Show the value without letting it be typed over."""
        if read_only == self.line.isReadOnly():
            return
        self.line.setReadOnly(read_only)
        self.line.setFocusPolicy(
            Qt.FocusPolicy.ClickFocus if read_only else Qt.FocusPolicy.StrongFocus
        )
        self.line.style().unpolish(self.line)
        self.line.style().polish(self.line)

    def align_right(self) -> None:
        """Put figures at the right, as in a column."""
        self.line.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Coming by key into a field that holds something selects it, to be typed over."""
        if (
            watched is self.line
            and event.type() is QEvent.Type.FocusIn
            and isinstance(event, QFocusEvent)
            and event.reason() is not Qt.FocusReason.MouseFocusReason
            and event.reason() is not Qt.FocusReason.PopupFocusReason
        ):
            self.line.selectAll()
        return super().eventFilter(watched, event)

    def _finished(self) -> None:
        value = self.value()
        if value is not None and not self.line.isReadOnly():
            written = self._write(value)
            if written != self.text():
                self.line.setText(written)
        self._left()

    def _unread(self) -> str:
        found = self._read(self.text())
        return self._complaint(found) if isinstance(found, Unread) else ""

    def _read(self, text: str) -> T | Unread:
        """The value of a text, or why it can't be read."""
        raise NotImplementedError

    def _write(self, value: T) -> str:
        """The value as text that reads back the same."""
        raise NotImplementedError

    def _complaint(self, unread: Unread) -> str:
        """The sentence for a text that can't be read."""
        raise NotImplementedError
