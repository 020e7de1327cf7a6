"""One owner's order: chips of the owners, the table by primal, the panel with the verdict."""

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.answer_panel import AnswerPanel
from desktop.counter.line_dialog import LineDialog, blank_choice, ways_of_cutting
from desktop.counter.order_desk import OrderDesk, Problem
from desktop.counter.order_dialogs import OrderDialogs
from desktop.counter.order_heading import heading_words
from desktop.counter.order_rows import OrderRowShown
from desktop.counter.order_stage import OrderStage
from desktop.counter.order_steps import OrderSteps
from desktop.counter.owner_chips import OwnerChips
from desktop.counter.price import cards_of, price
from desktop.counter.refusal_words import problem_words
from desktop.counter.side_marks import held_primals
from desktop.counter.ways_offered import first_to_see, next_to_do, offers, to_do
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from desktop.bench import Bench
    from desktop.counter.form_dialog import FilledFormDialog
    from desktop.counter.ways_offered import Offer
    from shared.billing.rates import RateCard
    from shared.cutting.answer import Answer, Remedy
    from shared.cutting.order import Choice

ROOM_FOR_MAP = 1300
ROOM_BESIDE_OWNERS = 1700


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
        self.dialogs = OrderDialogs(bench, self)
        self.back = button(self, quiet=True)
        self.heading = Words("group", parent=self)
        self.chips = OwnerChips(self)
        self.stage = OrderStage(bench, self)
        self.map, self.table, self.owners = self.stage.map, self.stage.table, self.stage.owners
        self.refusal = Words("body", "complaint", self).wrapped()
        self.refusal.hide()
        self.panel = AnswerPanel(self)
        self.steps = OrderSteps(self)
        self.main = self.steps.main
        self._cards: Mapping[int, RateCard] | None = None
        self._lay_out()
        self._connect()

    @property
    def dialog(self) -> LineDialog | None:
        """The dialog of a line that was opened last."""
        return self.dialogs.line

    def show_order(self, lot_id: int, order_id: int) -> None:
        """Open an order of a lot."""
        self.desk = OrderDesk(self.bench, lot_id, order_id)
        self.stage.turn(side_by_side=False)
        self._read_rates()
        self._begin()

    def _begin(self) -> None:
        """Stand on the first primal with something that can't stand or is still to be asked."""
        if self.desk is not None:
            self.table.unfolded = first_to_see(self.desk)
            self.show_again()
            self.table.go_to(self.table.unfolded)

    def show_again(self, line: int = 0) -> None:
        """Show the order as it now stands; the answer in this same turn."""
        desk = self.desk
        if desk is None:
            return
        self.stage.show_order(desk, line)
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
        self._fit_map()

    def changeEvent(self, event: QEvent) -> None:
        """Greater type takes the map's room, too."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.FontChange and hasattr(self, "stage"):
            self._fit_map()

    def _fit_map(self) -> None:
        needed = ROOM_BESIDE_OWNERS if self.stage.side_by_side() else ROOM_FOR_MAP
        self.map.set_room(self.width() * 100 >= needed * theme_of(self).percent)

    def restore_draft(self) -> None:
        """Open again what was half typed for this order when the program was killed."""
        if self.desk is not None:
            self.dialogs.restore(self.desk)

    def reload(self) -> None:
        """Read the records again."""
        if self.desk is not None:
            self.desk.load()
            self._read_rates()
            self.show_again()

    def retranslate(self) -> None:
        """Set every word again."""
        self.back.setText(self.tr("Orders  Esc"))
        self.steps.retranslate()
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

    def form_taken(self, dialog: "FilledFormDialog") -> None:
        """Put what a filled form says on the order, where it is planned like typed lines."""
        if self.desk is not None:
            found = self.desk.add(dialog.form.choices)
            if found is None and dialog.form.usual:
                self.desk.fill_usual(dialog.form.usual)
            if found is None:
                found = self.desk.add_note(dialog.form.note)
            self._done(found)
            if found is None:
                self.refuse(dialog.not_taken())

    def remove(self, line: int) -> None:
        """Take a line off."""
        if self.desk is not None:
            self._done(self.desk.remove(line))

    def edit(self, shown: OrderRowShown) -> None:
        """Enter: a way that is offered, the usual of what is open, or the line to be changed."""
        if self.desk is None:
            return
        if shown.offer is not None:
            self.take_offer(shown.offer)
        elif shown.line:
            choice = self.desk.choice(shown.line)
            if choice is not None:
                self._ask(choice, ways_of_cutting(self.desk.catalogue, shown.primal))
        elif not to_do(self.desk, shown.primal):
            self._walk_on(shown.primal)
        else:
            first = next(iter(offers(self.desk, shown.primal)), None)
            if first is None:
                self._walk_on(shown.primal)
            else:
                self.take_offer(first)

    def take_offer(self, offer: "Offer") -> None:
        """Cut the primal this way; when nothing of it is open go on to the next."""
        if self.desk is None:
            return
        primal = self.desk.catalogue.cuts[offer.choices[0].cut].primal
        if not offer.usual:
            found = self.desk.add(offer.choices)
        else:
            found = None if self.desk.fill_usual((primal,)) else self.desk.add(offer.choices)
        self._done(found)
        if found is None and not to_do(self.desk, primal):
            self._walk_on(primal)

    def _walk_on(self, primal: str) -> None:
        """To the next primal in cutting order that is still to be asked."""
        if self.desk is None:
            return
        onward = next_to_do(self.desk, primal)
        if onward:
            self.table.go_to(onward)
        else:
            self.table.show_ways(shown=not self.table.ways)
            self.said.emit(self.tr("Nothing is open any more. Ctrl+Enter settles the order."))

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
        if self.desk is not None:
            self.dialogs.ask_line(self.desk, choice, cuts, typed)

    def _dialog_done(self, problem: "Problem | None", line: int) -> None:
        self._done(problem, line)
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
        self.heading.setText(heading_words(desk, self.bench.words))
        found = None if self._cards is None else price(desk, self._cards)
        self.panel.figures.show_figures(desk, found, self.bench.words)

    def _read_rates(self) -> None:
        """The rates of the lot's owners, once for as long as the order is open."""
        if self.desk is not None:
            with self.bench.store.read() as work:
                self._cards = cards_of(self.desk.lot, work)

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
        # Released it can be again: what the rail finds changes the sheet, and no line of the order.
        self.steps.name_main(
            names.get(order.state, self.tr("Hand over  F8")),
            possible=order.state in ("open", "settled", "released", "ready"),
        )

    def _lay_out(self) -> None:
        main = column(gap=TOGETHER)
        main.setContentsMargins(EDGE, GROUP, GROUP, GROUP)
        top = row(gap=GROUP)
        top.addWidget(self.back)
        top.addWidget(self.heading, 1)
        main.addLayout(top)
        main.addWidget(self.chips)
        main.addWidget(self.stage, 1)
        main.addWidget(self.refusal)
        main.addWidget(self.steps)
        across = row(self, gap=0)
        across.addLayout(main, 1)
        across.addWidget(self.panel)

    def _connect(self) -> None:
        work = self.bench.work
        self.destroyed.connect(lambda: work.forget("counter.remedies"))
        self.back.clicked.connect(self.left)
        self.chips.chosen.connect(self._turn)
        self.stage.reading.connect(self.panel.read_out)
        self.table.picked.connect(self.edit)
        self.table.typed.connect(self.find_cut)
        self.table.removed.connect(self.remove)
        self.table.offered.connect(self.take_offer)
        self.dialogs.done.connect(self._dialog_done)
        self.dialogs.refused.connect(self.refuse)
        self.panel.taken.connect(self.take)
        self.steps.wanted.connect(self._step)
        self.steps.add_keys(self)
        for number in range(1, 6):
            self._key(f"Alt+{number}", partial(self._take_number, number))
        self._key("Esc", self._leave)
        self.stage.opened.connect(self._open_owner)
        self._key("Alt+Right", lambda: self.chips.step(1))
        self._key("Alt+Left", lambda: self.chips.step(-1))

    def _key(self, keys: str, does: "Callable[[], object]") -> None:
        shortcut = QShortcut(QKeySequence(keys), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(does)

    def _step(self, code: str) -> None:
        """What the order itself does is done here; the rest is the place's."""
        desk = self.desk
        if desk is None:
            return
        here: dict[str, Callable[[], None]] = {
            "usual": self.fill_usual,
            "last_time": lambda: self.dialogs.as_last_time(desk),
            "lead": lambda: self.dialogs.ask_lead(desk),
            "history": lambda: self.dialogs.show_history(desk),
            "owners": lambda: self.show_side_by_side(shown=not self.stage.side_by_side()),
            "undo": self.undo,
            "redo": self.redo,
        }
        does = here.get(code)
        if does is None:
            self.wanted.emit(code)
        else:
            does()

    def show_side_by_side(self, *, shown: bool) -> None:
        """The owners side by side, or the order of one of them."""
        if self.desk is not None and shown and len(self.desk.orders) < 2:
            self.refuse(self.tr("This animal has one owner."))
        else:
            self.stage.turn(side_by_side=shown)
            self._fit_map()

    def _leave(self) -> None:
        if self.stage.side_by_side():
            self.show_side_by_side(shown=False)
        else:
            self.left.emit()

    def _open_owner(self, order_id: int, primal: str) -> None:
        """An owner's own order, at the primal he was looked at for."""
        self._turn(order_id)
        self.show_side_by_side(shown=False)
        if self.desk is not None and primal in held_primals(self.desk):
            self.table.go_to(primal)

    def _turn(self, order_id: int) -> None:
        if self.desk is not None:
            self.desk.show(order_id)
            self.refuse("")
            self._begin()


def _remedies(desk: OrderDesk, answer: "Answer") -> "tuple[Answer, tuple[tuple[Remedy, ...], ...]]":
    """The ways out, on a worker; the answer comes back with them, to see that it still holds."""
    return answer, desk.ways_out(answer)
