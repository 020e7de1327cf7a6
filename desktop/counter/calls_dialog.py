"""Who is to be rung: whose order isn't settled and is due, and what came of each call."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.news_words import news_words
from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.fields.dates import date_text
from desktop.look.space import ROW_DESK
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from shared.shop.calls import Outcome, ToRing

if TYPE_CHECKING:
    from desktop.bench import Bench


class CallsDialog(FormDialog):
    """Up and down along the owners; choose what came of the call; Ctrl+Enter logs it.

    Signals:
        picked: an owner's order is to be opened; carries its OrderRow.
    """

    picked = Signal(object)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(1180)
        self._bench = bench
        self.outcome: ChoiceField[Outcome] = ChoiceField(self, required=True)
        self.note = TextField(self)
        self.grid.add(self.outcome)
        self.grid.add(self.note)
        self.table: Table[ToRing] = Table(RowsModel(self._columns()), self, height=ROW_DESK)
        self.table.setMinimumHeight(ROW_DESK * 10)
        self.add_below(self.table)
        self.lost = Words("body", "contested", self).wrapped()
        self.lost.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.add_below(self.lost)
        self.table.picked.connect(self._open)
        self.table.moved.connect(self._tell_lost)
        down = QShortcut(QKeySequence("Ctrl+Down"), self)
        down.activated.connect(lambda: self.table.setFocus(Qt.FocusReason.ShortcutFocusReason))
        self.retranslate()
        self.read()

    def read(self) -> None:
        """Read the list again, the same owner kept."""
        with self._bench.store.read() as work:
            rows = list(work.calls.to_ring(self._bench.today()))
        before = self.table.chosen()
        at = next((n for n, one in enumerate(rows) if before and _same(one, before)), 0)
        self.table.show_rows(rows)
        if rows:
            self.table.choose(at)
        self.main.setEnabled(bool(rows))
        self._tell_lost(self.table.chosen())

    def retranslate(self) -> None:
        self.set_words(
            self.tr("To ring"),
            self.tr(
                "First what was lost, then orders not settled that are due, the most pressing "
                "first. Enter on a line opens the order; Ctrl+Enter logs the call."
            ),
            self.tr("&Log the call"),
            self.tr("Leave"),
        )
        self.outcome.set_label(self.tr("&Rang"))
        self.outcome.set_choices([(one, self._outcome(one)) for one in OUTCOMES])
        self.outcome.set_value("message")
        self.note.set_label(self.tr("&Note"))
        self.table.set_name(self.tr("Owners to ring"))

    def attempt(self) -> str:
        """Log the call and stay: the next owner is a key away."""
        chosen, outcome = self.table.chosen(), self.outcome.value()
        if chosen is None or outcome is None:
            return self.tr("Choose the owner that was rung.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            work.calls.log(chosen.order.id, outcome, self.note.text())
            work.commit()
        return ""

    def try_it(self) -> None:
        self.refuse("")
        if not self.grid.show_problems():
            return
        said = self.attempt()
        if said:
            self.refuse(said)
            return
        self.note.set_text("")
        self.read()

    def _tell_lost(self, row: ToRing | None) -> None:
        """Below the list: what the chosen owner loses, and what would work."""
        news = row.news if row is not None else ()
        self.lost.setText("\n".join(news_words(one, self._bench.words) for one in news))
        self.lost.setVisible(bool(news))

    def _open(self, row: ToRing) -> None:
        self.accept()
        self.picked.emit(row.order)

    def _outcome(self, outcome: Outcome) -> str:
        return {
            "no_answer": self.tr("no answer"),
            "message": self.tr("message left"),
            "spoke": self.tr("spoke"),
        }[outcome]

    def _about(self, row: ToRing) -> str:
        words = {
            "no_cut_sheet": self.tr("no cut sheet"),
            "not_settled": self.tr("cut sheet not settled"),
            "inspection": self.tr("the inspector stopped the animal"),
            "loss": self.tr("something was lost"),
        }
        return ", ".join(words[one] for one in row.about)

    def _last(self, row: ToRing) -> str:
        if row.last is None:
            return ""
        at = row.last.at.astimezone()
        day = date_text(at.date(), self._bench.words.language)
        told = f"{day}, {at:%H:%M}: {self._outcome(row.last.outcome)}"
        return f"{told} ({row.last.note})" if row.last.note else told

    def _columns(self) -> list[Column[ToRing]]:
        language = self._bench.words.language
        return [
            Column(
                "due",
                lambda: self.tr("Due"),
                lambda row: date_text(row.due, language),
                "date",
                lambda row: row.due,
                width=160,
            ),
            Column("owner", lambda: self.tr("Owner"), lambda row: row.order.owner, width=210),
            Column("phone", lambda: self.tr("Phone"), lambda row: row.order.phone, width=150),
            Column("about", lambda: self.tr("What about"), self._about, width=310),
            Column("last", lambda: self.tr("Last call"), self._last, stretch=True),
        ]


OUTCOMES: tuple[Outcome, ...] = ("message", "no_answer", "spoke")


def _same(one: ToRing, other: ToRing) -> bool:
    return one.order.id == other.order.id
