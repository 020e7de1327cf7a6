"""The fields of an arrival beside tag and sex: condition, age, pen, statements, cautions."""

from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields import ChoiceField, FieldGrid, TextField
from desktop.panels.heading import Words
from desktop.rail.arrival_words import age_by_words, caution_words, condition_words
from desktop.rail.clock_text import clock_text, read_clock
from shared.carcass import thirty_months
from shared.shop.arrival import CONDITIONS, AgeBy, Arrival, Condition, arrival_cautions

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from shared.shop.animals import Animal

Asked = ChoiceField[Condition] | ChoiceField[AgeBy] | ChoiceField[bool] | TextField
AGE_BY: tuple[AgeBy, ...] = ("teeth", "papers", "said")


class ArrivalFields:
    """Laid into a dialog's grid; empty ones are not said."""

    def __init__(self, animal: "Animal", parent: "QWidget", now: datetime) -> None:
        self.animal = animal
        self.now = now
        self.condition: ChoiceField[Condition] = ChoiceField(parent)
        self.age_by: ChoiceField[AgeBy] = ChoiceField(parent)
        self.age_said = TextField(parent)
        self.penned = TextField(parent, most=12)
        self.healthy: ChoiceField[bool] = ChoiceField(parent)
        self.withdrawn: ChoiceField[bool] = ChoiceField(parent)
        self.drugs = TextField(parent)
        self.statement_of = TextField(parent)
        self.note = TextField(parent)
        self.caution = Words("body", "tight", parent).wrapped()
        self._kept: datetime | None = None
        for field in self.fields():
            field.changed.connect(self.look)

    def fields(
        self,
    ) -> tuple[ChoiceField[Condition] | ChoiceField[AgeBy] | ChoiceField[bool] | TextField, ...]:
        """Every field, in the order of Tab."""
        return (
            self.condition,
            self.age_by,
            self.age_said,
            self.penned,
            self.healthy,
            self.withdrawn,
            self.statement_of,
            self.drugs,
            self.note,
        )

    def lay(self, grid: FieldGrid) -> None:
        """Put the fields in a grid; age only where cattle's rule holds."""
        cattle = thirty_months.holds_for(self.animal.species)
        for field in self.fields():
            aged = field in (self.age_by, self.age_said)
            if cattle or not aged:
                grid.add(field)
            else:
                field.hide()

    def show(self, arrival: Arrival | None) -> None:
        """What is known already."""
        known = arrival or Arrival()
        self._kept = known.penned_at
        self.condition.set_value(known.condition or None)
        self.age_by.set_value(known.age_by or None)
        self.age_said.set_text(known.age_said)
        self.penned.set_text(clock_text(known.penned_at) if known.penned_at else "")
        self.healthy.set_value(known.healthy)
        self.withdrawn.set_value(known.withdrawn_drugs)
        self.drugs.set_text(known.drugs)
        self.statement_of.set_text(known.statement_of)
        self.note.set_text(known.note)
        self.look()

    def value(self) -> Arrival:
        """The facts as they stand in the fields."""
        return Arrival(
            self.condition.value() or "",
            self.note.value() or "",
            self.age_by.value() or "",
            self.age_said.value() or "",
            self._penned_at(),
            self.healthy.value(),
            self.withdrawn.value(),
            self.drugs.value() or "",
            self.statement_of.value() or "",
        )

    def refused(self) -> bool:
        """Whether the pen's time can't be read; said at the field."""
        if self.penned.is_empty() or self._penned_at() is not None:
            return False
        self.penned.complain(
            QCoreApplication.translate("Arrivals", "Write the time like 7:30 or 6:30 pm.")
        )
        return True

    def look(self) -> None:
        """Say what must be said beside these facts."""
        animal = self.animal
        found = arrival_cautions(animal.species, animal.regime, self.value(), self.now)
        grave = [one for one in found if one not in ("not_stated", "age_not_shown")]
        self.caution.set_role("contested" if grave else "tight")
        self.caution.setText("\n".join(caution_words(one) for one in found))
        self.caution.setVisible(bool(found))

    def retranslate(self) -> None:
        """Every word again."""
        translate = QCoreApplication.translate
        self.condition.set_label(translate("Arrivals", "&Condition"))
        self.condition.set_choices([(one, condition_words(one)) for one in CONDITIONS])
        self.age_by.set_label(translate("Arrivals", "Age known &by"))
        self.age_by.set_choices([(one, age_by_words(one)) for one in AGE_BY])
        self.age_said.set_label(translate("Arrivals", "Wh&o said the age"))
        self.penned.set_label(translate("Arrivals", "In the &pen since (time)"))
        self.healthy.set_label(translate("Arrivals", "Said to be &healthy"))
        self.withdrawn.set_label(translate("Arrivals", "&Withdrawal times over"))
        self.statement_of.set_label(translate("Arrivals", "Stated b&y"))
        self.drugs.set_label(translate("Arrivals", "&Medicines given"))
        self.note.set_label(translate("Arrivals", "&Note"))
        yes, no = translate("Arrivals", "yes"), translate("Arrivals", "no")
        for field in (self.healthy, self.withdrawn):
            field.set_choices([(True, yes), (False, no)])
        self.look()

    def _penned_at(self) -> datetime | None:
        text = self.penned.text().strip()
        if self._kept is not None and text == clock_text(self._kept):
            return self._kept
        return read_clock(text, self.now) if text else None
