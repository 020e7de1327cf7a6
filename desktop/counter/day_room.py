"""What the chosen kill day can still take, the next that can, and the waiting list."""

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.fields.dates import date_text
from desktop.look.space import TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.full_words import full_words
from desktop.panels.heading import Words
from shared.shop.calendar import (
    LOOK_AHEAD,
    Booking,
    Filled,
    Full,
    hang_days,
    left_on,
    next_days,
    why_full,
)

if TYPE_CHECKING:
    from datetime import date

    from db.store import Store
    from db.unit_of_work import Work
    from desktop.bench import Bench

COUNTING = "counter.room"
FURTHER = LOOK_AHEAD + 60


class DayRoom(QWidget):
    """A sentence about the day, and two ways out of a full one.

    Places and hooks are known at once; what the orders' lines take at the block, where the shop
    enters minutes by class of cut, is counted on a worker.

    Signals:
        known: the block's minutes were counted: look again.
    """

    known = Signal()

    def __init__(
        self,
        bench: "Bench",
        parent: QWidget | None = None,
        *,
        without: int = 0,
        booked: bool = False,
    ) -> None:
        """`without` is a lot that is booked already and may move: it takes no place itself.

        What is `booked` already isn't put on the waiting list; neither is such a lot.
        """
        super().__init__(parent)
        self._bench = bench
        self._without = without
        self._booked = booked or bool(without)
        self._read: tuple[date, Filled] | None = None
        self._asked: Booking | None = None
        self.full: tuple[Full, ...] = ()
        self.next: tuple[date, ...] = ()
        self.said = Words("body", parent=self).wrapped()
        self.later = button(self)
        self.wait = button(self)
        within = column(self, gap=TOGETHER)
        within.addWidget(self.said)
        ways = row(gap=TOGETHER)
        ways.addWidget(self.later)
        ways.addWidget(self.wait)
        ways.addStretch(1)
        within.addLayout(ways)
        self.look(None)

    def look(self, asked: Booking | None) -> None:
        """Say what the day of a booking has left; None while it is half typed."""
        self._asked = asked
        self.full, self.next = (), ()
        filled = None if asked is None else self._filled(asked.day)
        if asked is not None and filled is not None:
            self.full = why_full(filled, asked)
            self.next = next_days(filled, asked) if self.full else ()
        self.setVisible(filled is not None and bool(filled.plan.week))
        self.retranslate()

    def turn_to_next(self) -> None:
        """Say what the first of `next` has left, of what was read already."""
        if self._asked is None or not self.next:
            return
        self._asked = replace(self._asked, day=self.next[0])
        self.full, self.next = (), ()
        self.retranslate()

    def ask_again(self, work: "Work", asked: Booking, lot_id: int) -> bool:
        """Whether the day is fuller than was said, asked where the booking is written.

        Two stations take the last place at once: the second one is told, and keeps what it typed.
        """
        end = asked.day + timedelta(hang_days(work.calendar.plan(), asked.species))
        filled = work.calendar.filled(asked.day, end, without=lot_id)
        if len(why_full(filled, asked)) <= len(self.full):
            return False
        with_next = work.calendar.filled(asked.day, asked.day + timedelta(FURTHER), without=lot_id)
        self._read = (asked.day, with_next)
        self.look(asked)
        return True

    def settle(self) -> bool:
        """Count now what is still being counted, for who confirms; whether there was any."""
        if self._read is None or self._read[1].counted:
            return False
        self._bench.work.forget(COUNTING)
        day = self._read[0]
        self._read = (day, room_from(self._bench.store, day, self._without))
        return True

    def retranslate(self) -> None:
        """Set every word again."""
        self.later.setText(self.tr("Take the ne&xt day"))
        self.wait.setText(self.tr("Put on the wa&iting list"))
        self.later.setVisible(bool(self.next))
        self.wait.setVisible(bool(self.full) and not self._booked)
        self.said.setText(self._sentence())

    def _filled(self, day: "date") -> Filled:
        if self._read is None or self._read[0] != day:
            with self._bench.store.read() as work:
                end = day + timedelta(FURTHER)
                found = work.calendar.filled(day, end, without=self._without, count_lines=False)
            self._read = (day, found)
            self._bench.work.forget(COUNTING)
            if not found.counted:
                self._bench.work.run(
                    room_from,
                    *(self._bench.store, day, self._without),
                    then=lambda filled: self._counted(day, filled),
                    key=COUNTING,
                    owner=self,
                )
        return self._read[1]

    def _counted(self, day: "date", filled: Filled) -> None:
        self._read = (day, filled)
        self.known.emit()

    def _sentence(self) -> str:
        asked = self._asked
        if asked is None or self._read is None:
            return ""
        if not self.full:
            left = left_on(self._read[1], asked.species, asked.day)
            return self.tr("{day} can still take {left} {animals}.").format(
                day=self._day(asked.day),
                left=left,
                animals=self._bench.words.name("", f"species.{asked.species}", left),
            )
        said = [full_words(one, self._bench.words.language) for one in self.full]
        if self.next:
            days = "; ".join(self._day(day) for day in self.next)
            said.append(self.tr("Next that can take it: {days}.").format(days=days))
        return " ".join(said)

    def _day(self, day: "date") -> str:
        return date_text(day, self._bench.words.language)


def room_from(store: "Store", day: "date", without: int) -> Filled:
    """What stands from a day on, the lines of its orders counted; run it on a worker."""
    with store.read() as work:
        return work.calendar.filled(day, day + timedelta(FURTHER), without=without)
