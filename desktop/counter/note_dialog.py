"""The note of an order for the block, the day its cut sheet is wanted by, and how it is fetched."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.refusal_words import problem_words
from desktop.fields import ChoiceField, DateField, FormDialog, NoteField

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk


class OrderNoteDialog(FormDialog):
    """Asks for the note and the day; the note is printed on the block sheet."""

    def __init__(self, bench: "Bench", desk: "OrderDesk", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.setMinimumWidth(480)
        self._bench = bench
        self._desk = desk
        self._order = order = desk.order
        self.note = NoteField(lines=4)
        self.due = DateField(bench.today)
        self.grid.add(self.note)
        self.grid.add(self.due)
        self.fetched: ChoiceField[str] = ChoiceField(self, required=True)
        self.grid.add(self.fetched)
        with bench.store.read() as work:
            self._fetched = "fresh" if work.freezing.agreed_fresh(order.id) else "frozen"
        self.retranslate()
        self.note.set_value(order.note or None)
        self.due.set_value(order.due)
        self.fetched.set_value(self._fetched)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Note of order {number}").format(number=self._order.number),
            "",
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.note.set_label(self.tr("&Note for the block"))
        self.due.set_label(self.tr("Cut sheet wanted &by"))
        self.fetched.set_label(self.tr("&Fetched"))
        self.fetched.set_choices(
            [("frozen", self.tr("frozen")), ("fresh", self.tr("fresh, as agreed"))]
        )

    def attempt(self) -> str:
        found = self._desk.save_note(self.note.value() or "", self.due.value())
        if found is not None:
            return problem_words(found)
        if self.fetched.value() not in (None, self._fetched):
            with self._bench.store.work(self._bench.person, self._bench.station) as work:
                work.freezing.agree(self._order.id, fresh=self.fetched.value() == "fresh")
                work.commit()
        return ""
