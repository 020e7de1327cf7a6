"""The field for a day."""

from collections.abc import Callable
from datetime import date, timedelta

from PySide6.QtCore import QEvent, QLocale, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.fields.dates import date_text, read_date
from desktop.fields.line import LineField
from shared.reading import Unread

_STEPS = {
    Qt.Key.Key_Up: 1,
    Qt.Key.Key_Down: -1,
    Qt.Key.Key_PageUp: 7,
    Qt.Key.Key_PageDown: -7,
}


class DateField(LineField[date]):
    """Takes a day; up and down step by a day, page up and down by a week.

    `today` is asked each time, so that a window left open overnight knows the new day. `past` is
    for what has happened: "friday" is the last one.
    """

    def __init__(
        self,
        today: Callable[[], date],
        parent: QWidget | None = None,
        *,
        required: bool = False,
        past: bool = False,
    ) -> None:
        super().__init__(parent, required=required)
        self._today = today
        self._past = past

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            watched is self.line
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and Qt.Key(event.key()) in _STEPS
            and not self.line.isReadOnly()
            and (self.is_empty() or self.value() is not None)
        ):
            start = self.value()
            step = timedelta(days=_STEPS[Qt.Key(event.key())])
            self.line.setText(self._write(self._today() if start is None else start + step))
            self._changed()
            return True
        return super().eventFilter(watched, event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            day = self.value()  # read in either language
            if day is not None:
                self.line.setText(self._write(day))

    def _read(self, text: str) -> date | Unread:
        found = read_date(text, self._today(), past=self._past)
        return Unread("not_a_number", text) if found is None else found

    def _write(self, value: date) -> str:
        spanish = QLocale().language() is QLocale.Language.Spanish
        return date_text(value, "es" if spanish else "en")

    def _complaint(self, unread: Unread) -> str:
        if self._past:
            return self.tr(
                "Steelyard reads days like 12/3, Dec 3, friday, yesterday or -2; it can't read "
                "“{text}”."
            ).format(text=unread.text.strip())
        return self.tr(
            "Steelyard reads days like 12/3, Dec 3, friday, tomorrow or +7; it can't read “{text}”."
        ).format(text=unread.text.strip())
