"""One date that isn't as its weekday: closed, or with other places."""

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField
from desktop.fields.dates import date_text
from desktop.rail.week_dialog import KINDS
from shared.shop.calendar import OtherDay, places_on

if TYPE_CHECKING:
    from desktop.bench import Bench


class OtherDayDialog(FormDialog):
    """As its weekday, closed, or with the places written here."""

    def __init__(self, bench: "Bench", day: date, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self._bench = bench
        self._day = day
        self.how = ChoiceField[str](required=True)
        self.note = TextField()
        self.places = {kind: CountField(most=500) for kind in KINDS}
        self.grid.add(self.how)
        self.grid.add(self.note, 2)
        for field in self.places.values():
            self.grid.add(field)
        self.retranslate()
        with bench.store.read() as work:
            filled = work.calendar.filled(day, day, count_lines=False)
        other = filled.others.get(day)
        for kind, count in places_on(filled.plan, filled.others, day).items():
            if kind in self.places:
                self.places[kind].set_value(count)
        self.how.set_value("weekday" if other is None else "closed" if other.closed else "other")
        self.note.set_value("" if other is None else other.note)
        self.how.changed.connect(self._fit)
        self._fit()

    def retranslate(self) -> None:
        words = self._bench.words
        self.set_words(
            date_text(self._day, words.language),
            self.tr("What is booked stays booked: move it in the calendar."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.how.set_label(self.tr("&Is"))
        self.how.set_choices(
            [
                ("weekday", self.tr("as its weekday")),
                ("closed", self.tr("closed")),
                ("other", self.tr("open with other places")),
            ]
        )
        self.note.set_label(self.tr("&Why, e.g. the holiday"))
        for kind, field in self.places.items():
            name = words.name("", f"species.{kind}", 2)
            field.set_label(self.tr("Places, {animals}").format(animals=name))

    def attempt(self) -> str:
        how = self.how.value()
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if how == "weekday":
                work.calendar.as_weekday(self._day)
            else:
                places = {kind: field.value() or 0 for kind, field in self.places.items()}
                kept = {kind: count for kind, count in places.items() if count and how == "other"}
                note = self.note.value() or ""
                work.calendar.set_other(OtherDay(self._day, how == "closed", note, kept))
            work.commit()
        return ""

    def _fit(self) -> None:
        for field in self.places.values():
            field.setVisible(self.how.value() == "other")
            field.setEnabled(self.how.value() == "other")
        self.grid.close_up()
