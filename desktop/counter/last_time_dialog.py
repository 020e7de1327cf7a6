"""As last time: an earlier order is chosen, and each line shows what becomes of it here."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.counter.last_time import Again, planned_again
from desktop.fields import FormDialog
from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.look.space import ROW_DENSE
from desktop.tables import Column, RowsModel, Table, TallTable
from printing.words import sentences
from printing.words.choice_words import choice_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words
    from shared.cutting.order import Choice
    from shared.shop.lists import OrderRow
    from shared.shop.orders import Order

EARLIER_ROWS = 4
LEAST_WINDOW, AGAIN_HEIGHT = 768, ROW_DENSE * 10 + 32  # ten lines and their headings


@dataclass(frozen=True, slots=True)
class Earlier:
    """An earlier order as the list shows it, and its lines."""

    row: "OrderRow"
    order: "Order"


class LastTimeDialog(FormDialog):
    """Earlier orders above, the lines of the chosen one below; `lines` once it was taken."""

    def __init__(
        self,
        bench: "Bench",
        desk: "OrderDesk",
        earlier: "list[Earlier]",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self.widen(1120)
        self._bench = bench
        self._desk = desk
        self.lines: tuple[Again, ...] | None = None
        self._planned_for: Earlier | None = None
        self._hurry = False
        self.earlier: Table[Earlier] = Table(
            RowsModel(self._earlier_columns()), self, height=ROW_DENSE, sortable=False
        )
        self.again: TallTable[Again] = TallTable(
            RowsModel(self._again_columns()), self, height=ROW_DENSE, sortable=False
        )
        shown = min(max(len(earlier), 1), EARLIER_ROWS)
        self.earlier.setFixedHeight(ROW_DENSE * shown + 36)
        over = self.parentWidget()
        room = 0 if over is None else max(over.window().height() - LEAST_WINDOW, 0)
        self.again.setMinimumHeight(AGAIN_HEIGHT + min(room, ROW_DENSE * 10))
        self.add_below(self.earlier)
        self.add_below(self.again)
        self.retranslate()
        self.earlier.moved.connect(self._plan)
        self.earlier.picked.connect(self.try_it)
        self.earlier.show_rows(earlier)
        self.earlier.setFocus()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("As last time"),
            self.tr("What is asked already stays; the earlier lines are planned beside it."),
            self.tr("&Put on the order"),
            self.tr("&Leave it"),
        )
        self.earlier.set_name(self.tr("Earlier orders"))
        self.again.set_name(self.tr("What becomes of each line here"))

    def attempt(self) -> str:
        chosen = self.earlier.chosen()
        if chosen is not self._planned_for or self.lines is None:
            self._hurry = True
            return self.lead.text()
        if not any(one.now for one in self.lines):
            if any(one.how == "there" for one in self.lines):
                return self.tr("Nothing more of that order can be had here.")
            return self.tr("Nothing of that order can be had here.")
        return ""

    def _plan(self, chosen: Earlier | None) -> None:
        self.lines = None
        self.refuse("")
        if chosen is None:
            return
        self.lead.setText(self.tr("Planning it on this carcass …"))
        desk = self._desk
        self._bench.work.run(
            planned_again,
            desk.question,
            desk.catalogue,
            desk.share,
            chosen.order.choices,
            then=lambda found: self._show(chosen, found),
            key="counter.last_time",
        )

    def _show(self, chosen: Earlier, found: tuple[Again, ...]) -> None:
        self._planned_for, self.lines = chosen, found
        self.again.show_rows(list(found))
        self.refuse("")
        self.retranslate()
        if self._hurry:
            self._hurry = False
            self.try_it()

    def _earlier_columns(self) -> list[Column[Earlier]]:
        words = self._bench.words
        return [
            Column(
                "day",
                lambda: self.tr("Killed"),
                lambda one: date_text(one.row.day, words.language),
                width=160,
            ),
            Column("order", lambda: self.tr("Order"), lambda one: str(one.row.number), width=80),
            Column(
                "lines",
                lambda: self.tr("Lines"),
                lambda one: str(one.row.lines),
                kind="figure",
                width=64,
            ),
            Column("cuts", lambda: self.tr("Cuts"), self._cuts, stretch=True, tip=self._cuts),
        ]

    def _cuts(self, one: Earlier) -> str:
        known, words = self._desk.catalogue, self._bench.words
        codes = dict.fromkeys(line.cut for line in one.order.choices if line.cut in known.cuts)
        return ", ".join(words.name(known.species, f"cut.{code}") for code in codes)

    def _again_columns(self) -> list[Column[Again]]:
        return [
            Column(
                "before",
                lambda: self.tr("Last time"),
                lambda one: words_of(one.before, self._desk, self._bench.words),
                kind="state",
                mark=lambda one: again_mark(one),
                width=500,
                tip=lambda one: words_of(one.before, self._desk, self._bench.words),
            ),
            Column(
                "now",
                lambda: self.tr("This time"),
                lambda one: again_words(one, self._desk, self._bench),
                stretch=True,
                tip=lambda one: again_words(one, self._desk, self._bench),
            ),
        ]


def earlier_orders(bench: "Bench", desk: "OrderDesk") -> "list[Earlier]":
    """The customer's other orders of this species, the newest first."""
    with bench.store.read() as work:
        return [Earlier(row, order) for row, order in work.orders.earlier(desk.order.id)]


def again_mark(one: Again) -> Mark:
    """Plain where it stays, hatched where it changes, crossed where it can't be had."""
    if one.how == "there":
        return Mark.SETTLED
    if one.now is None:
        return Mark.CONTESTED
    return Mark.SETTLED if one.how == "same" else Mark.TIGHT


def again_words(one: Again, desk: "OrderDesk", bench: "Bench") -> str:
    """What becomes of a line: "as it was", the line as it is now, or why it is left out."""
    translate = QCoreApplication.translate
    if one.how == "there":
        return translate("LastTime", "is on the order already")
    if one.now is not None:
        if one.how == "same":
            return translate("LastTime", "as it was")
        return translate("LastTime", "now {line}").format(line=words_of(one.now, desk, bench.words))
    if one.conflict is not None and one.question is not None:
        why = sentences.conflict(one.conflict, one.question, desk.catalogue, bench.words)
        return translate("LastTime", "left out: {why}").format(why=why)
    if one.how == "unknown_cut":
        return translate("LastTime", "left out: it isn't cut here any more")
    return translate("LastTime", "left out: nothing is left for it")


def words_of(choice: "Choice", desk: "OrderDesk", words: "Words") -> str:
    """A line in words, by its code where the cut is no longer known."""
    if choice.cut not in desk.catalogue.cuts:
        return choice.cut
    return choice_text(choice, desk.catalogue, words)
