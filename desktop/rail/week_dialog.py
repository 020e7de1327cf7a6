"""The shop's week of kill days: places by animal, and hooks; and one other date."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, DateField, FormDialog, TextField
from desktop.fields.dates import weekdays
from desktop.panels.heading import Words
from printing.words.place_words import capital
from shared.shop.calendar import OtherDay, Plan

if TYPE_CHECKING:
    from desktop.bench import Bench

KINDS = ("pork", "beef", "lamb", "goat", "deer")
WEEKDAYS = 7


class WeekDialog(FormDialog):
    """A column for each weekday, a row for each animal; empty is none that day."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1 + WEEKDAYS)
        self.setMinimumWidth(980)
        self._bench = bench
        with bench.store.read() as work:
            self._before = work.calendar.plan()
        self._build()
        self.retranslate()
        self._fill()

    def _build(self) -> None:
        self.places = [CountField(most=500) for _ in range(WEEKDAYS * len(KINDS))]
        self.hooks = CountField()
        self.other = DateField(self._bench.today)
        self.how: ChoiceField[str] = ChoiceField()
        self.note = TextField()
        self.days = [Words("small", "quiet", self) for _ in range(1 + WEEKDAYS)]  # first: no day
        self.animals = [Words("body", parent=self) for _ in KINDS]
        for heading in self.days:
            self.grid.add_widget(heading, 1)
        for place, field in enumerate(self.places):
            if place % WEEKDAYS == 0:
                self.grid.add_widget(self.animals[place // WEEKDAYS], 1)
            self.grid.add(field)
        self.grid.add(self.hooks, 2)
        self.exception = Words("body", "quiet", self)
        self.grid.add_widget(self.exception)
        self.grid.add(self.other, 2)
        self.grid.add(self.how, 3)
        self.grid.add(self.note, 3)

    def _fill(self) -> None:
        plan = self._before
        for place, field in enumerate(self.places):
            kind, day = divmod(place, WEEKDAYS)
            field.set_value(plan.week.get(day, {}).get(KINDS[kind]))
        self.hooks.set_value(plan.hooks)
        self.how.set_value("closed")

    def retranslate(self) -> None:
        words = self._bench.words
        self.set_words(
            self.tr("Kill days"),
            self.tr(
                "Head that a weekday takes. All empty: no calendar, each day takes what comes."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        names = [words.name("", f"species.{kind}", 2) for kind in KINDS]
        days = weekdays(words.language)
        for heading, day in zip(self.days[1:], days, strict=True):
            heading.setText(day)
        for animal, name in zip(self.animals, names, strict=True):
            animal.setText(capital(name))
        for place, field in enumerate(self.places):
            kind, day = divmod(place, WEEKDAYS)
            field.set_name(f"{days[day]}, {names[kind]}")
        self.hooks.set_label(self.tr("&Cooler hooks"))
        self.exception.setText(self.tr("One date that isn't as its weekday; empty for none"))
        self.other.set_label(self.tr("&Date"))
        self.how.set_label(self.tr("Is &now"))
        self.how.set_choices(
            [("closed", self.tr("closed")), ("as_weekday", self.tr("as its weekday again"))]
        )
        self.note.set_label(self.tr("&Why, e.g. the holiday"))

    def attempt(self) -> str:
        plan, day = self._plan(), self.other.value()
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if plan != self._before:
                work.calendar.save_plan(plan)
            if day is not None and self.how.value() == "closed":
                work.calendar.set_other(OtherDay(day, True, self.note.value() or ""))
            elif day is not None:
                work.calendar.as_weekday(day)
            work.commit()
        return ""

    def _plan(self) -> Plan:
        """What is entered; what has no field here stays as it was."""
        week: dict[int, dict[str, int]] = {}
        for place, field in enumerate(self.places):
            kind, day = divmod(place, WEEKDAYS)
            count = field.value()
            if count:
                week.setdefault(day, {})[KINDS[kind]] = count
        return replace(self._before, week=week, hooks=self.hooks.value() or None)
