"""The note of an order for the block, and the day its cut sheet is wanted by."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.refusal_words import problem_words
from desktop.fields import DateField, FormDialog, NoteField

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk


class OrderNoteDialog(FormDialog):
    """Asks for the note and the day; the note is printed on the block sheet."""

    def __init__(self, bench: "Bench", desk: "OrderDesk", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.setMinimumWidth(480)
        self._desk = desk
        self._order = order = desk.order
        self.note = NoteField(lines=4)
        self.due = DateField(bench.today)
        self.grid.add(self.note)
        self.grid.add(self.due)
        self.retranslate()
        self.note.set_value(order.note or None)
        self.due.set_value(order.due)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Note of order {number}").format(number=self._order.number),
            "",
            self.tr("&Keep"),
            self.tr("Leave"),
        )
        self.note.set_label(self.tr("&Note for the block"))
        self.due.set_label(self.tr("Cut sheet wanted &by"))

    def attempt(self) -> str:
        found = self._desk.save_note(self.note.value() or "", self.due.value())
        return "" if found is None else problem_words(found)
