"""The side panel of an order: the verdict, what is wrong, what would work, what it will give."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from desktop.counter.last_time_dialog import words_of
from desktop.counter.order_figures import OrderFigures
from desktop.counter.release import owner_names
from desktop.look.patterns import Mark
from desktop.look.space import STEP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Role, Words, line
from desktop.panels.side import SidePanel
from desktop.panels.state_word import StateWord
from printing.words import sentences
from shared.cutting.owners_questions import put_together

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words as TradeWords
    from shared.cutting.answer import Caution, Conflict, Remedy

MOST_OPEN = 6
MOST_ALIKE = 2
_MARKS = {"tight": Mark.TIGHT, "asks": Mark.TIGHT, "cant": Mark.CONTESTED}


class AnswerPanel(SidePanel):
    """What the planner says of the order.

    Signals:
        taken: a remedy was chosen; carries it.
    """

    taken = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.verdict = StateWord(self)
        self.add(self.verdict)
        self._matters = QWidget()
        self._list = column(self._matters, gap=TOGETHER)
        self._list.setContentsMargins(0, 0, STEP, 0)  # beside the bar that scrolls it
        self._list.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(self._matters)
        self.add(scroll, stretch=1000)
        self.reading = Words("body", "quiet", self).wrapped()
        self.add(self.reading)
        self.add(line(self))
        self.figures = OrderFigures(self)
        self.add(self.figures)
        self.remedies: tuple[Remedy, ...] = ()

    def show_answer(self, desk: "OrderDesk", words: "TradeWords") -> None:
        """Show what holds now; remedies come a moment later by `offer`."""
        verdict = desk.answer.verdict
        self.verdict.set_state(
            _MARKS.get(verdict, Mark.SETTLED), sentences.verdict_text(verdict, words)
        )
        self.remedies = ()
        self._clear()
        given = (desk.question, desk.catalogue, words)
        for conflict in in_turn(desk):
            self._say(
                self._whose(conflict, desk) + sentences.conflict(conflict, *given), "contested"
            )
        for asked in put_together(desk.answer.questions):
            self._say(sentences.owners_question(asked, *given), "tight")
        self._say_tight(desk, words)
        self._say_open(desk, words)
        self._say_left_out(desk, words)
        self._say_cautions(desk, words)

    def read_out(self, text: str) -> None:
        """The chosen row in full, as it is read to the owner."""
        self.reading.setText(text)
        self.reading.setVisible(bool(text))

    def _whose(self, conflict: "Conflict", desk: "OrderDesk") -> str:
        """Whose lines can't stand, where none of them is the shown owner's."""
        if is_of(conflict, desk):
            return ""
        shares = {one.share for one in desk.question.choices if one.line in conflict.lines}
        return self.tr("{owners}:").format(owners=owner_names(desk, shares)) + " "

    def _say_tight(self, desk: "OrderDesk", words: "TradeWords") -> None:
        """Where it only fits if the carcass runs long, before what concerns less."""
        mine = {one.line for one in desk.order.choices}
        for one in desk.answer.cautions:
            if one.code == "tight" and one.line in mine:
                self._say(sentences.caution(one, desk.question, desk.catalogue, words), "tight")

    def offer(
        self,
        found: "Sequence[Sequence[Remedy]]",
        desk: "OrderDesk",
        words: "TradeWords",
    ) -> None:
        """Show the ways out of the owner's first conflict that has any: Alt and its number.

        What another owner asked is changed on his own order, not here.
        """
        ways = dict(zip(desk.answer.conflicts, found, strict=True))
        mine = [one for one in in_turn(desk) if is_of(one, desk)]
        where = next((at for at, one in enumerate(mine) if ways[one]), None)
        if where is None:
            return
        first, at = ways[mine[where]], where + 1  # below its conflict, not below all of them
        spoken: dict[str, Remedy] = {}
        for one in first:  # of a line that stands there twice either may go; it is said once
            said = sentences.remedy(one, desk.question, desk.catalogue, words)
            spoken.setdefault(said, one)
        self.remedies = tuple(spoken.values())
        self._say(self.tr("What would work, by Alt and its number:"), "quiet", at)
        for number, (said, remedy) in enumerate(spoken.items(), start=1):
            self._offer_one(number, remedy, said, at + number)

    def spoken(self) -> list[str]:
        """Every sentence shown, first to last."""
        return [words.text() for words in self._matters.findChildren(Words) if words.text()]

    def _offer_one(self, number: int, remedy: "Remedy", said: str, at: int) -> None:
        holder = QWidget(self._matters)
        across = row(holder, gap=TOGETHER)
        take = button(holder)
        take.setText(str(number))
        take.setAccessibleName(said)
        take.setToolTip(self.tr("Alt+{number}").format(number=number))
        take.setFixedWidth(40)
        take.clicked.connect(lambda: self.taken.emit(remedy))
        words = Words("body", parent=holder).wrapped()
        words.setText(said)
        across.addWidget(take, 0, Qt.AlignmentFlag.AlignTop)
        across.addWidget(words, 1)
        self._list.insertWidget(at, holder)

    def _say_cautions(self, desk: "OrderDesk", words: "TradeWords") -> None:
        """What concerns the shown owner; the same thing of many lines is said once."""
        mine = {0, *(one.line for one in desk.order.choices)}
        told: dict[str, list[Caution]] = {}
        for caution in desk.answer.cautions:
            if caution.line in mine and caution.code != "tight":
                told.setdefault(caution.code, []).append(caution)
        for alike in told.values():
            shown = alike if len(alike) <= MOST_ALIKE else alike[:1]
            for one in shown:
                said = sentences.caution(one, desk.question, desk.catalogue, words)
                self._say(said, "quiet")
            self._say_more(len(alike) - len(shown))

    def _say_left_out(self, desk: "OrderDesk", words: "TradeWords") -> None:
        """What was asked last time and isn't had here; of many lines the first, and how many."""
        left = desk.left_out.get(desk.order.id, ())
        shown = left if len(left) <= MOST_ALIKE else left[:1]
        for one in shown:
            said = words_of(one.before, desk, words)
            self._say(self.tr("Last time also {line}: not here.").format(line=said), "quiet")
        self._say_more(len(left) - len(shown))

    def _say_more(self, count: int) -> None:
        if count:
            self._say(self.tr("The same of {count} more lines.").format(count=count), "quiet")

    def _say_open(self, desk: "OrderDesk", words: "TradeWords") -> None:
        """The primals that hold something nobody has settled."""
        parts = desk.catalogue.parts
        still = {parts[one.part].primal for one in desk.open_parts()}
        primals = [one for one in desk.catalogue.primals if one in still]
        if not primals:
            return
        if not desk.order.choices:
            self._say(self._how_to_begin(), "")
            return
        names = [words.name(desk.catalogue.species, f"primal.{one}") for one in primals]
        more = len(names) - MOST_OPEN
        shown = ", ".join(names[:MOST_OPEN])
        if more > 0:
            shown = self.tr("{names} and {count} more").format(names=shown, count=more)
        self._say(self.tr("Still open: {names}. F9 cuts them as usual.").format(names=shown), "")

    def _how_to_begin(self) -> str:
        return self.tr(
            "Nothing is asked yet. Enter cuts a primal as the house usually does and goes on to "
            "the next, 1 to 9 take another way, letters find a cut by its name. F9 cuts all of "
            "it as usual, Ctrl+L as last time."
        )

    def _say(self, text: str, role: "Role", at: int | None = None) -> None:
        words = Words("body", role, self._matters).wrapped()
        words.setText(text)
        self._list.insertWidget(self._list.count() - 1 if at is None else at, words)

    def _clear(self) -> None:
        while self._list.count() > 1:
            item = self._list.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()  # or a layout that still waits to show it makes a window of it
                widget.setParent(None)
                widget.deleteLater()


def is_of(conflict: "Conflict", desk: "OrderDesk") -> bool:
    """Whether a line of the shown owner is in a conflict."""
    return any(one.line in conflict.lines for one in desk.order.choices)


def in_turn(desk: "OrderDesk") -> "list[Conflict]":
    """The lot's conflicts, those of the shown owner first."""
    return sorted(desk.answer.conflicts, key=lambda one: not is_of(one, desk))
