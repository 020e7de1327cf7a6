"""The orders by day: what is booked, how far each is, found as one types."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QStackedWidget, QWidget

from desktop.counter.first_use import lack_words, lacking
from desktop.fields import TextField
from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.tables import Column, Figure, RowsModel, Table
from shared.money import money_text
from shared.shop.lists import OrderRow

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from db.store import Store
    from desktop.bench import Bench
    from desktop.counter.first_use import Lack

_MARKS = {"open": Mark.OPEN, "settled": Mark.SETTLED, "ready": Mark.SETTLED}


@dataclass(frozen=True, slots=True)
class _Asked:
    """What is looked for: text of any part, and whether closed orders too."""

    text: str
    closed: bool


def _by_day(row: OrderRow) -> "date":
    return row.day


class OrderList(QWidget):
    """A find field over the table of orders; where there is nothing yet, how it begins.

    Signals:
        picked: an order was opened; carries its OrderRow.
        book: a booking is wanted.
    """

    picked = Signal(object)
    book = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bench = bench
        self.search = TextField(self)
        self.closed = button(self)
        self.closed.setCheckable(True)
        self.ring_button = button(self)
        self.weights_button = button(self)
        self.book_button = button(self, main=True)
        self.table: Table[OrderRow] = Table(RowsModel(self._columns()), self)
        self.table.spare(("lines",))  # in large type the owners' names need the room
        self.none = Words("body", "quiet", self)
        self.none.hide()
        self._newest = 0
        self._shown: _Asked | None = None
        self._open_when_there = False
        self._lacks: tuple[Lack, ...] = ()
        self._empty = EmptyState(self)
        self.begin = button(self._empty, main=True)
        self._empty.add_action(self.begin)
        self.ended = button(self._empty)
        self._empty.add_action(self.ended)
        self.ended.hide()
        self.ended.clicked.connect(lambda: self.closed.setChecked(True))
        self._pages = QStackedWidget(self)
        self._lay_out()
        self.search.changed.connect(self.refresh)
        self.search.line.installEventFilter(self)
        self.search.line.returnPressed.connect(self._open_chosen)
        self.closed.toggled.connect(self.refresh)
        self.table.picked.connect(self.picked)
        self.book_button.clicked.connect(self.book)
        self.begin.clicked.connect(self.book)

    def refresh(self) -> None:
        """Read the orders again on a worker; what is shown stays until they are there."""
        self._newest += 1
        self._open_when_there = False
        number, asked = self._newest, self._asked()
        self._bench.work.run(
            lambda: self._read(asked, number),
            then=lambda rows: self._show(asked, rows),
            key="counter.orders",
            owner=self,
        )

    def _asked(self) -> _Asked:
        return _Asked(self.search.text().strip(), self.closed.isChecked())

    def _read(self, asked: _Asked, number: int) -> "Sequence[OrderRow]":
        """On a worker's thread; given up once something newer is looked for."""
        with self._bench.store.read(lambda: self._newest != number) as work:
            closed = None if asked.closed else False
            return work.orders.list(text=asked.text, closed=closed, sort="day")

    def _show(self, asked: _Asked, rows: "Sequence[OrderRow]") -> None:
        self._shown = asked
        self.table.show_rows(list(rows), keep=self.table.chosen())
        self.none.setText(self._none_of(asked))
        self.none.setVisible(not rows)
        nothing = not rows and not asked.text and not asked.closed
        if nothing:
            self._bench.work.run(
                lacking,
                self._bench.store,
                then=self._tell_lacking,
                key="counter.lacking",
                owner=self,
            )
            self._bench.work.run(
                any_closed,
                self._bench.store,
                then=self.ended.setVisible,
                key="counter.closed",
                owner=self,
            )
        if nothing != bool(self._pages.currentIndex()):
            focus = QApplication.focusWidget()
            here = focus is not None and self._pages.isAncestorOf(focus)
            self._pages.setCurrentIndex(1 if nothing else 0)
            if here:
                self.first_focus().setFocus()
        # Whoever went on to something else meanwhile wants that.
        if self._open_when_there and self.isVisible() and not QApplication.activeModalWidget():
            self._open_chosen()

    def _tell_lacking(self, lacks: "tuple[Lack, ...]") -> None:
        self._lacks = lacks
        self._teach()

    def _teach(self) -> None:
        """What the empty list is for, and what the shop still lacks."""
        self._empty.set_words(
            self.tr("No order is open"),
            "\n\n".join(
                one
                for one in (
                    self.tr(
                        "Book the animal with its day and its owners. Each owner gets an order; "
                        "take it by phone, and see line by line what fits."
                    ),
                    lack_words(self._lacks),
                )
                if one
            ),
        )

    def _none_of(self, asked: _Asked) -> str:
        if asked.closed:
            return self.tr("No order has “{text}”.").format(text=asked.text)
        said = self.tr("No open order has “{text}”. It may be among the closed ones.")
        return said.format(text=asked.text)

    def retranslate(self) -> None:
        """Set every word again."""
        self.search.set_label(self.tr("&Find an owner, tag or number"))
        self.closed.setText(self.tr("C&losed orders too"))
        self.ended.setText(self.tr("C&losed orders too"))
        self.ring_button.setText(self.tr("&To ring  Ctrl+R"))
        self.weights_button.setText(self.tr("&Weights of the day  Ctrl+W"))
        self.book_button.setText(self.tr("&Book animals  Ctrl+N"))
        self.table.set_name(self.tr("Orders by day"))
        self._teach()
        self.begin.setText(self.tr("Book animals  Ctrl+N"))

    def first_focus(self) -> QWidget:
        """The find field; the button that begins where there is nothing yet."""
        return self.begin if self._pages.currentIndex() else self.search.line

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Up and down in the find field go along the list."""
        if (
            watched is self.search.line
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down)
        ):
            by = 1 if event.key() == Qt.Key.Key_Down else -1
            self.table.choose(max(self.table.currentIndex().row() + by, 0))
            return True
        return super().eventFilter(watched, event)

    def _open_chosen(self) -> None:
        """Open the chosen order, of what was typed: where that is still looked for, in a moment."""
        self._open_when_there = self._shown != self._asked()
        chosen = None if self._open_when_there else self.table.chosen()
        if chosen is not None:
            self.picked.emit(chosen)

    def _lay_out(self) -> None:
        listing = QWidget(self)
        layout = column(listing, gap=GROUP)
        layout.setContentsMargins(EDGE, GROUP, EDGE, GROUP)
        top = row(gap=TOGETHER)
        top.addWidget(self.search, 1)
        bottom = Qt.AlignmentFlag.AlignBottom
        top.addWidget(self.closed, 0, bottom)
        top.addWidget(self.ring_button, 0, bottom)
        top.addWidget(self.weights_button, 0, bottom)
        top.addWidget(self.book_button, 0, bottom)
        layout.addLayout(top)
        layout.addWidget(self.none)
        layout.addWidget(self.table, 1)
        self._pages.addWidget(listing)
        self._pages.addWidget(self._empty)
        column(self).addWidget(self._pages)

    def _columns(self) -> list[Column[OrderRow]]:
        return [
            Column("day", lambda: self.tr("Day"), self._day, "date", _by_day, width=160),
            Column(
                "owner",
                lambda: self.tr("Owner"),
                self._owner,
                width=190,
                stretch=True,
                tip=self._owner,
            ),
            Column("animal", lambda: self.tr("Animal"), self._animal, width=110),
            Column("tags", lambda: self.tr("Tag"), lambda row: row.tags, width=90),
            Column(
                "number",
                lambda: self.tr("Order"),
                lambda row: Figure(str(row.number)),
                "figure",
                lambda row: row.number,
                width=80,
            ),
            Column(
                "state",
                lambda: self.tr("State"),
                self._state,
                "state",
                mark=lambda row: _MARKS.get(row.state, Mark.PLAIN),
                width=190,
            ),
            Column("phone", lambda: self.tr("Phone"), lambda row: row.phone, width=140),
            *self._figures(),
        ]

    def _figures(self) -> list[Column[OrderRow]]:
        return [
            Column(
                "lines",
                lambda: self.tr("Lines"),
                lambda row: Figure(str(row.lines)),
                "figure",
                lambda row: row.lines,
                width=70,
            ),
            Column(
                "due",
                lambda: self.tr("Due"),
                lambda row: Figure(money_text(row.due_cents) if row.billed_cents else ""),
                "figure",
                lambda row: row.due_cents,
                width=110,
            ),
        ]

    def _day(self, row: OrderRow) -> str:
        return date_text(row.day, self._bench.words.language)

    def _owner(self, row: OrderRow) -> str:
        return row.owner or self.tr("to be named ({producer})").format(producer=row.producer)

    def _animal(self, row: OrderRow) -> str:
        return self._bench.words.name(row.species, f"species.{row.species}")

    def _state(self, row: OrderRow) -> str:
        if row.closed:
            return self.tr("closed")
        return self._bench.words.say(f"state.{row.state}")


def any_closed(store: "Store") -> bool:
    """Whether there is a closed order to look at; for a worker."""
    with store.read() as work:
        return bool(work.orders.list(closed=True, limit=1))
