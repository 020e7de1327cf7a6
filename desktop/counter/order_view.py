"""One owner's order: chips of the owners, the table by primal, the panel with the verdict."""

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.answer_panel import AnswerPanel
from desktop.counter.carcass_map import CarcassMap
from desktop.counter.line_dialog import LineDialog, blank_choice, ways_of_cutting
from desktop.counter.order_desk import OrderDesk, Problem
from desktop.counter.order_rows import OrderRowShown
from desktop.counter.order_table import OrderTable
from desktop.counter.owner_chips import OwnerChips
from desktop.counter.price import estimate
from desktop.counter.refusal_words import problem_words
from desktop.counter.share_words import share_words
from desktop.fields.dates import date_text
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from shared.carcass.weights import side_weights
from shared.money import money_text
from shared.units import whole_pounds_text

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from desktop.bench import Bench
    from shared.cutting.answer import Answer, Remedy
    from shared.cutting.order import Choice

ROOM_FOR_MAP = 1300


class OrderView(QWidget):
    """Takes the cut order by keyboard.

    Signals:
        left: back to the list.
        changed: the records were changed.
        said: a sentence for the status line.
        wanted: a step further, as words: "main", "hand_over", "payment", "name", "note",
            "take_back", "confirmation".
    """

    left = Signal()
    changed = Signal()
    said = Signal(str)
    wanted = Signal(str)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.desk: OrderDesk | None = None
        self.dialog: LineDialog | None = None
        self.back = button(self, quiet=True)
        self.heading = Words("group", parent=self)
        self.chips = OwnerChips(self)
        self.map = CarcassMap(self)
        self.table = OrderTable(self)
        self.refusal = Words("body", "complaint", self).wrapped()
        self.refusal.hide()
        self.panel = AnswerPanel(self)
        self.usual = button(self)
        self.payment = button(self)
        self.confirm = button(self)
        self.name = button(self)
        self.note = button(self)
        self.main = button(self, main=True)
        self._lay_out()
        self._connect()

    def show_order(self, lot_id: int, order_id: int) -> None:
        """Open an order of a lot."""
        self.desk = OrderDesk(self.bench, lot_id, order_id)
        self.table.unfolded = ""
        self.show_again()

    def show_again(self, line: int = 0) -> None:
        """Show the order as it now stands; the answer in this same turn."""
        desk = self.desk
        if desk is None:
            return
        self.table.show_order(desk, self.bench.words, line)
        self._show_map()
        self.chips.show_orders(desk.orders, desk.order.id, self.bench.words)
        self.panel.show_answer(desk, self.bench.words)
        self._show_figures(desk)
        self._name_steps()
        self.bench.work.forget("counter.remedies")
        if desk.answer.conflicts:
            self.bench.work.run(
                _remedies,
                desk,
                desk.answer,
                then=self._offer,
                key="counter.remedies",
            )

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The map goes where there is no room for it beside the table."""
        super().resizeEvent(event)
        self.map.set_room(self.width() >= ROOM_FOR_MAP)

    def reload(self) -> None:
        """Read the records again."""
        if self.desk is not None:
            self.desk.load()
            self.show_again()

    def retranslate(self) -> None:
        """Set every word again."""
        self.back.setText(self.tr("Orders  Esc"))
        self.usual.setText(self.tr("House's usual  F9"))
        self.payment.setText(self.tr("Payment  F7"))
        self.confirm.setText(self.tr("Confirm  Ctrl+P"))
        self.note.setText(self.tr("Note  F12"))
        self.name.setText(self.tr("Owner  F11"))
        self.main.setText(self.tr("Settle  Ctrl+Enter"))
        self.table.set_name(self.tr("The order by primal"))
        self.show_again()

    def refuse(self, sentence: str) -> None:
        """Say below the table why something wasn't done; "" takes it away."""
        self.refusal.setText(sentence)
        self.refusal.setVisible(bool(sentence))

    def fill_usual(self) -> None:
        """Cut what is open as the house usually does."""
        if self.desk is None:
            return
        count = self.desk.fill_usual()
        self._done(None)
        if count:
            self.said.emit(
                self.tr("{count} lines as usual. Ctrl+Z takes them back.").format(count=count)
            )
        else:
            self.said.emit(self.tr("Nothing is open that the usual would fill."))

    def undo(self) -> None:
        """Take back my last change here."""
        if self.desk is not None:
            self._done(self.desk.undo())

    def redo(self) -> None:
        """Do again what was taken back."""
        if self.desk is not None:
            self._done(self.desk.redo())

    def take(self, remedy: "Remedy") -> None:
        """Do what a remedy says."""
        if self.desk is not None:
            self._done(self.desk.take(remedy))

    def _take_number(self, number: int) -> None:
        if number <= len(self.panel.remedies):
            self.take(self.panel.remedies[number - 1])

    def remove(self, line: int) -> None:
        """Take a line off."""
        if self.desk is not None:
            self._done(self.desk.remove(line))

    def edit(self, shown: OrderRowShown) -> None:
        """Enter: on a primal its ways of being cut, on a line the line."""
        if self.desk is None:
            return
        choice = self.desk.choice(shown.line) if shown.line else None
        cuts = ways_of_cutting(self.desk.catalogue, shown.primal)
        if choice is None:
            choice = blank_choice(self.desk.catalogue, cuts[0], self.desk.share)
        self._ask(choice, cuts)

    def find_cut(self, typed: str) -> None:
        """Letters on the table: a cut of any primal by part of its name."""
        if self.desk is None:
            return
        row = self.table.chosen()
        here = ways_of_cutting(self.desk.catalogue, self.table.unfolded) if row else ()
        everything = ways_of_cutting(self.desk.catalogue, "")
        cuts = tuple(dict.fromkeys([*here, *everything]))
        self._ask(blank_choice(self.desk.catalogue, cuts[0], self.desk.share), cuts, typed)

    def _ask(self, choice: "Choice", cuts: "Sequence[str]", typed: str = "") -> None:
        if self.desk is None:
            return
        self.dialog = LineDialog(self.desk.catalogue, self.bench.words, choice, cuts, self, typed)
        self.dialog.accepted.connect(self._answered)
        self.dialog.finished.connect(self.dialog.deleteLater)
        self.dialog.open()

    def _answered(self) -> None:
        if self.desk is None or self.dialog is None:
            return
        choice = self.dialog.result_choice
        if choice is None:
            return
        if choice.line:
            self._done(self.desk.change(choice), choice.line)
        else:
            before = {one.line for one in self.desk.question.choices}
            found = self.desk.add([choice])
            new = {one.line for one in self.desk.question.choices} - before
            self._done(found, max(new, default=0))
        self.table.setFocus()

    def _show_map(self) -> None:
        """The map says what the table says: the primals' states, and which is unfolded."""
        if self.desk is None:
            return
        heads = [one for one in self.table.rows.rows() if not one.line]
        marks = {one.primal: one.mark for one in heads}
        names = {one.primal: one.cut for one in heads}
        self.map.show_primals(self.desk.catalogue.species, marks, names, self.table.unfolded)

    def _go_to(self, primal: str) -> None:
        self.table.go_to(primal)
        self.table.setFocus()

    def _done(self, problem: "Problem | None", line: int = 0) -> None:
        self.refuse("" if problem is None else problem_words(problem))
        self.show_again(line)
        if problem is None:
            self.changed.emit()

    def _offer(self, found: "tuple[Answer, tuple[tuple[Remedy, ...], ...]]") -> None:
        answer, remedies = found
        if self.desk is not None and self.desk.answer is answer:
            self.panel.offer(remedies, self.desk, self.bench.words)

    def _show_figures(self, desk: OrderDesk) -> None:
        lot = desk.lot
        tags = ", ".join(one.tag for one in lot.animals if one.tag)
        species = self.bench.words.name(lot.species, f"species.{lot.species}", lot.head)
        parts = [
            self.tr("Order {number}").format(number=desk.order.number),
            f"{lot.head} {species}",
            date_text(lot.day, self.bench.words.language),
            share_words(next(one.holdings for one in lot.shares if one.number == desk.share)),
        ]
        if desk.order.changed_since_sheet:
            parts.append(self.tr("changed since sheet {n}").format(n=desk.order.sheet))
        if tags:
            parts.append(self.tr("tag {tags}").format(tags=tags))
        self.heading.setText(", ".join(parts))
        total, basis = 0, ""
        for carcass in desk.question.carcasses:
            sides = side_weights(carcass, desk.catalogue)
            total += sum(side.nanograms for side in sides)
            basis = sides[0].basis
        self.panel.show_hanging(
            self.tr("Hanging {weight}, the whole lot, by {basis}").format(
                weight=whole_pounds_text(total), basis=self.bench.words.say(f"basis.{basis}")
            )
        )
        with self.bench.store.read() as work:
            bill = estimate(desk, work)
        self.panel.show_price(
            self.tr("No rates for this yet")
            if bill is None
            else self.tr("About {amount} by the rates").format(amount=money_text(bill.total_cents))
        )

    def _name_steps(self) -> None:
        if self.desk is None:
            return
        order = self.desk.order
        names = {
            "open": self.tr("Settle  Ctrl+Enter"),
            "settled": self.tr("Release to the block  Ctrl+Enter"),
            "released": self.tr("Release a new sheet  Ctrl+Enter"),
            "handed_over": self.tr("Handed over"),
            "cut": self.tr("At Wrap"),
        }
        self.main.setText(names.get(order.state, self.tr("Hand over  F8")))
        again = order.state == "released" and order.changed_since_sheet
        self.main.setEnabled(order.state in ("open", "settled", "ready") or again)

    def _lay_out(self) -> None:
        main = column(gap=TOGETHER)
        main.setContentsMargins(EDGE, GROUP, GROUP, GROUP)
        top = row(gap=GROUP)
        top.addWidget(self.back)
        top.addWidget(self.heading, 1)
        main.addLayout(top)
        main.addWidget(self.chips)
        middle = row(gap=GROUP)
        middle.addWidget(self.map)
        middle.addWidget(self.table, 1)
        main.addLayout(middle, 1)
        main.addWidget(self.refusal)
        feet = row(gap=TOGETHER)
        for each in (self.main, self.usual, self.payment, self.confirm, self.name, self.note):
            feet.addWidget(each)
        feet.addStretch(1)
        main.addLayout(feet)
        across = row(self, gap=0)
        across.addLayout(main, 1)
        across.addWidget(self.panel)

    def _connect(self) -> None:
        work = self.bench.work
        self.destroyed.connect(lambda: work.forget("counter.remedies"))
        self.back.clicked.connect(self.left)
        self.chips.chosen.connect(self._turn)
        self.table.moved.connect(self._show_map)
        self.map.picked.connect(self._go_to)
        self.table.picked.connect(self.edit)
        self.table.typed.connect(self.find_cut)
        self.table.removed.connect(self.remove)
        self.panel.taken.connect(self.take)
        self.usual.clicked.connect(self.fill_usual)
        self.main.clicked.connect(lambda: self.wanted.emit("main"))
        self.payment.clicked.connect(lambda: self.wanted.emit("payment"))
        self.confirm.clicked.connect(lambda: self.wanted.emit("confirmation"))
        self.note.clicked.connect(lambda: self.wanted.emit("note"))
        self.name.clicked.connect(lambda: self.wanted.emit("name"))
        self._key("F9", self.fill_usual)
        self._key("F7", lambda: self.wanted.emit("payment"))
        self._key("F8", lambda: self.wanted.emit("hand_over"))
        self._key("F12", lambda: self.wanted.emit("note"))
        self._key("F11", lambda: self.wanted.emit("name"))
        self._key("Ctrl+Backspace", lambda: self.wanted.emit("take_back"))
        self._key("Ctrl+P", lambda: self.wanted.emit("confirmation"))
        self._key("Ctrl+Return", lambda: self.wanted.emit("main"))
        self._key("Ctrl+Z", self.undo)
        self._key("Ctrl+Shift+Z", self.redo)
        for number in range(1, 6):
            self._key(f"Alt+{number}", partial(self._take_number, number))
        self._key("Esc", self.left.emit)
        self._key("Alt+Right", lambda: self.chips.step(1))
        self._key("Alt+Left", lambda: self.chips.step(-1))

    def _key(self, keys: str, does: "Callable[[], object]") -> None:
        shortcut = QShortcut(QKeySequence(keys), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(does)

    def _turn(self, order_id: int) -> None:
        if self.desk is not None:
            self.desk.show(order_id)
            self.refuse("")
            self.show_again()


def _remedies(desk: OrderDesk, answer: "Answer") -> "tuple[Answer, tuple[tuple[Remedy, ...], ...]]":
    """The ways out, on a worker; the answer comes back with them, to see that it still holds."""
    from shared.cutting.remedy import remedies

    return answer, remedies(desk.question, answer, desk.catalogue)
