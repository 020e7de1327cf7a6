"""Asks which animal of a booking goes to which other day, and takes it there."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.day_room import DayRoom
from desktop.counter.one_animal import movable, owners_of, to_another_day
from desktop.fields import ChoiceField, DateField, FormDialog, TextField
from desktop.fields.dates import date_text
from shared.shop.calendar import Booking
from shared.shop.lots import Lot

if TYPE_CHECKING:
    from datetime import date

    from desktop.bench import Bench


class OneAnimalDialog(FormDialog):
    """`made` is the lot the animal is booked as then; `said` what became of it."""

    def __init__(self, bench: "Bench", lot: Lot, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self._bench, self._lot = bench, lot
        self.made: Lot | None = None
        self.which: ChoiceField[int] = ChoiceField(self, required=True)
        self.day = DateField(bench.today, self, required=True)
        self.overrule = TextField(self)
        self.room = DayRoom(bench, self, booked=True)
        self.grid.add(self.which, span=2)
        self.grid.add(self.day)
        self.grid.add(self.overrule, span=2)
        self.add_below(self.room)
        self.retranslate()
        self.which.set_value(movable(lot)[0].index)
        self.day.changed.connect(self._look)
        self.room.known.connect(self._look)
        self.room.later.clicked.connect(self._take_next)
        self._look()

    def retranslate(self) -> None:
        lot, language = self._lot, self._bench.words.language
        self.set_words(
            self.tr("One animal to another day"),
            self.tr(
                "Lot {number} stays on {day}; the animal becomes a lot of its own. An owner of it "
                "alone takes his order and his deposit along."
            ).format(number=lot.number, day=date_text(lot.day, language)),
            self.tr("&Move it"),
            self.tr("&Leave it"),
        )
        self.which.set_label(self.tr("&Animal"))
        self.which.set_choices([(one.index, self._named(one.index)) for one in movable(lot)])
        self.day.set_label(self.tr("&Day of the kill"))
        self.overrule.set_label(self.tr("Move it all the same, &because"))
        self.room.retranslate()

    def _named(self, index: int) -> str:
        """An animal by its place and its owners."""
        owners = [one.owner or self.tr("to be named") for one in owners_of(self._lot, index)]
        return self.tr("No. {number} of {all}, {owners}").format(
            number=index + 1, all=self._lot.head, owners=", ".join(dict.fromkeys(owners))
        )

    def attempt(self) -> str:
        self._look()
        if self.room.settle():
            self._look()
        day, index = self.day.value(), self.which.value()
        if day is None or index is None:
            return ""
        if day == self._lot.day:
            self.day.complain(self.tr("It is booked on that day already."))
            return ""
        if self.room.full and self.overrule.is_empty():
            self.overrule.complain(self.tr("The day is too full: another day, or say why."))
            return ""
        return self._move(index, day)

    def _move(self, index: int, day: "date") -> str:
        bench = self._bench
        with bench.store.work(bench.person, bench.station) as work:
            lot = work.lots.get(self._lot.id)
            if lot is None or self.room.ask_again(work, self._booking(day), 0):
                self._look()
                return self.tr("Another station has just taken the place.")
            made = to_another_day(
                work,
                lot,
                index,
                day,
                lambda number: self.tr("on {day}, lot {number}").format(
                    day=date_text(day, bench.words.language), number=number
                ),
                lambda old, new: (
                    self.tr("to order {number}").format(number=new),
                    self.tr("from order {number}").format(number=old),
                ),
            )
            if not isinstance(made, Lot):
                return self.tr("It was changed meanwhile: look at the booking again.")
            if self.room.full:
                work.calendar.overrule(made.id, self.room.full, self.overrule.text())
            work.commit()
        self.made = made
        return ""

    def _booking(self, day: "date") -> Booking:
        return Booking(day, self._lot.species, 1)

    def _look(self) -> None:
        """What the other day can still take."""
        day = self.day.value()
        self.room.look(None if day in (None, self._lot.day) else self._booking(day))
        self.overrule.setVisible(bool(self.room.full))
        self.overrule.setEnabled(bool(self.room.full))
        self.grid.close_up()

    def _take_next(self) -> None:
        self.day.set_value(self.room.next[0])
        self._look()
        self.day.focus()
