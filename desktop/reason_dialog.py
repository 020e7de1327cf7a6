"""Asking why: one line, as a form, so that its buttons and keys are every form's."""

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField

MOST = 500


class ReasonDialog(FormDialog):
    """Asks for a reason, which may be left empty where it is `optional`; `reason` has it then."""

    def __init__(self, title: str, text: str, parent: QWidget | None, *, optional: bool) -> None:
        super().__init__(parent, columns=2)
        self._title, self._text = title, text
        self.reason = ""
        self.why = TextField(required=not optional, most=MOST)
        self.grid.add(self.why, 2)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(self._title, self._text, self.tr("&Keep"), self.tr("&Leave it"))
        self.why.set_label(self.tr("&Reason"))

    def attempt(self) -> str:
        self.reason = self.why.text().strip()
        return ""
