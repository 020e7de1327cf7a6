"""The dialogs over an open order: a line, an earlier order, and who changed what."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from desktop.counter.history_dialog import HistoryDialog
from desktop.counter.last_time_dialog import LastTimeDialog, earlier_orders
from desktop.counter.lead_dialog import LeadDialog
from desktop.counter.line_dialog import LineDialog, blank_choice, ways_of_cutting
from desktop.counter.note_dialog import OrderNoteDialog
from desktop.counter.refusal_words import problem_words
from desktop.drafts import keep_draft, restore
from shared.shop.leading import divides_with
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk, Problem
    from desktop.fields import FormDialog
    from shared.cutting.order import Choice

LINE, NOTE = "line", "note"


class OrderDialogs(QObject):
    """Opens one dialog at a time and writes what it was taken with.

    Signals:
        done: something was written or refused; carries the problem or None, and the line or 0.
        refused: a sentence why nothing was opened.
    """

    done = Signal(object, int)
    refused = Signal(str)

    def __init__(self, bench: "Bench", over: QWidget) -> None:
        super().__init__(over)
        self._bench = bench
        self._over = over
        self.shown: FormDialog | None = None
        self.line: LineDialog | None = None

    def ask_line(
        self, desk: "OrderDesk", choice: "Choice", cuts: "Sequence[str]", typed: str = ""
    ) -> None:
        """Ask for one line; a line with number 0 is a new one."""
        if self._is_led(desk):
            return
        words = self._bench.words
        dialog = LineDialog(
            desk.catalogue, words, choice, cuts, self._over, typed, answer=desk.answer
        )
        self.line = dialog
        dialog.accepted.connect(lambda: self._line_taken(desk, dialog))
        number = {"number": str(choice.line)}
        draft = _draft(desk, LINE)
        keep_draft(self._bench.journal, draft, dialog, number, begun=bool(typed))
        self._open(dialog)

    def ask_note(self, desk: "OrderDesk") -> OrderNoteDialog:
        """Ask for the order's note and the day its cut sheet is wanted."""
        dialog = OrderNoteDialog(self._bench, desk, self._over)
        dialog.accepted.connect(lambda: self.done.emit(None, 0))
        keep_draft(self._bench.journal, _draft(desk, NOTE), dialog)
        self._open(dialog)
        return dialog

    def restore(self, desk: "OrderDesk") -> bool:
        """Open again what was half typed for this order when the program was killed."""
        journal = self._bench.journal
        line, note = journal.found(_draft(desk, LINE)), journal.found(_draft(desk, NOTE))
        if line is not None:
            cuts = ways_of_cutting(desk.catalogue, "")
            choice = desk.choice(int(line.get("number") or 0))
            self.ask_line(desk, choice or blank_choice(desk.catalogue, cuts[0], desk.share), cuts)
        elif note is not None:
            self.ask_note(desk)
        texts = line or note
        if texts is None or self.shown is None:
            return False
        restore(self.shown, texts)
        self.shown.lead.setText(
            self.tr("The program ended while this was being typed. It is all here again.")
        )
        self.shown.lead.show()
        return True

    def as_last_time(self, desk: "OrderDesk") -> None:
        """Bring an earlier order of this customer, planned again on this carcass."""
        if self._is_led(desk):
            return
        earlier = earlier_orders(self._bench, desk)
        if not earlier:
            self.refused.emit(
                self.tr("This owner has no earlier order of this kind of animal here.")
            )
            return
        dialog = LastTimeDialog(self._bench, desk, earlier, self._over)
        dialog.accepted.connect(lambda: self.done.emit(desk.take_again(dialog.lines or ()), 0))
        self._open(dialog)

    def ask_lead(self, desk: "OrderDesk") -> None:
        """Ask as which other owner says the order is cut."""
        if not divides_with(desk.lot.shares, desk.share):
            self.refused.emit(self.tr("No other owner divides exactly the same side or quarter."))
            return
        dialog = LeadDialog(desk, self._over)
        dialog.accepted.connect(lambda: self.done.emit(None, 0))
        self._open(dialog)

    def _is_led(self, desk: "OrderDesk") -> bool:
        """Whether it has no lines of its own to be asked; says so."""
        if desk.leader is not None:
            self.refused.emit(problem_words(Refused("led")))
        return desk.leader is not None

    def show_history(self, desk: "OrderDesk") -> None:
        """Who changed what of this order."""
        self._open(HistoryDialog(self._bench, desk, self._over))

    @staticmethod
    def waiting(bench: "Bench") -> int:
        """The order that was being typed in when the program was killed; 0 for none."""
        for name in reversed(bench.journal.names()):
            kind, _, order_id = name.partition(":")
            if kind in (LINE, NOTE) and order_id.isdigit():
                return int(order_id)
        return 0

    def _open(self, dialog: "FormDialog") -> None:
        self.shown = dialog
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _line_taken(self, desk: "OrderDesk", dialog: LineDialog) -> None:
        choice = dialog.result_choice
        if choice is None:
            return
        if choice.line:
            self.done.emit(desk.change(choice), choice.line)
            return
        before = {one.line for one in desk.question.choices}
        found: Problem | None = desk.add([choice])
        new = {one.line for one in desk.question.choices} - before
        self.done.emit(found, max(new, default=0))


def _draft(desk: "OrderDesk", kind: str) -> str:
    return f"{kind}:{desk.order.id}"
