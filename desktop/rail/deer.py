"""The intake of a deer: hunter, license, game tag, kill, what is kept, apart or batch, the hold."""

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields import ChoiceField, DateField, TextField
from desktop.panels.heading import Words
from desktop.rail.check_in import CheckInDialog
from shared.shop.arrival import DeerIntake, Keep, Meat, deer_missing, standing

if TYPE_CHECKING:
    from db.unit_of_work import Work

KEEPS: tuple[Keep, ...] = ("keep", "leave")
MEATS: tuple[Meat, ...] = ("apart", "batch")


class DeerDialog(CheckInDialog):
    """Two minutes at the door; what the state asks for and is missing is said, never refused.

    Only a batch without a name in writing is: other people's meat is in it.
    """

    def lay_more(self) -> None:
        self.hunter = TextField(self)
        self.license = TextField(self, most=60)
        self.game_tag = TextField(self, most=60)
        self.killed_on = DateField(self.bench.today, self)
        self.county = TextField(self, most=60)
        self.cape: ChoiceField[Keep] = ChoiceField(self)
        self.head: ChoiceField[Keep] = ChoiceField(self)
        self.antlers: ChoiceField[Keep] = ChoiceField(self)
        self.meat: ChoiceField[Meat] = ChoiceField(self)
        self.signed_by = TextField(self, most=80)
        self.test = TextField(self, most=80)
        self.missing = Words("body", "tight", self).wrapped()
        self.rules = Words("body", "quiet", self).wrapped()
        for field in (*self._texts(), *self._keeps(), self.meat, self.signed_by, self.test):
            self.grid.add(field)
            field.changed.connect(self._look)
        for field in self.facts.fields():
            field.hide()
        self.caution.hide()
        self.add_below(self.missing)
        self.add_below(self.rules)

    def show_more(self, work: "Work") -> None:
        known = work.arrivals.deer(self.animal.id)
        held = standing(work.arrivals.holds(self.animal.id))
        lot = work.lots.get(self.animal.lot_id)
        deer = known or DeerIntake(hunter=lot.producer if lot else "")
        self.hunter.set_text(deer.hunter)
        self.license.set_text(deer.license)
        self.game_tag.set_text(deer.game_tag)
        self.killed_on.set_value(deer.killed_on)
        self.county.set_text(deer.county)
        for field, kept in zip(self._keeps(), (deer.cape, deer.head, deer.antlers), strict=True):
            field.set_value(kept or None)
        self.meat.set_value(deer.meat or None)
        self.signed_by.set_text(deer.signed_by)
        self.test.set_text(held[0].reason if held else "")
        self.caution.hide()
        self._look()

    def retranslate(self) -> None:
        super().retranslate()
        self.caution.hide()
        self.hunter.set_label(self.tr("&Hunter"))
        self.license.set_label(self.tr("Hunting li&cense"))
        self.game_tag.set_label(self.tr("&Game tag number"))
        self.killed_on.set_label(self.tr("Killed &on"))
        self.county.set_label(self.tr("Co&unty of kill"))
        self.cape.set_label(self.tr("Ca&pe"))
        self.head.set_label(self.tr("Hea&d"))
        self.antlers.set_label(self.tr("A&ntlers"))
        self.meat.set_label(self.tr("&Meat"))
        self.signed_by.set_label(self.tr("Batch agreed in &writing by"))
        self.test.set_label(self.tr("Held for a test (sample num&ber)"))
        keep, leave = self.tr("owner keeps it"), self.tr("plant discards it")
        for field in self._keeps():
            field.set_choices([(KEEPS[0], keep), (KEEPS[1], leave)])
        self.meat.set_choices(
            [(MEATS[0], self.tr("keep mine apart")), (MEATS[1], self.tr("batch with others"))]
        )
        self.rules.setText(
            self.tr(
                "Your state says what must be shown, what of a deer from a wasting-disease area "
                "may be brought in, and how long tags and records are kept: ask its wildlife "
                "agency. Deer are cut apart from other animals, last or on another day."
            )
        )

    def refused(self) -> bool:
        if "signed_by" not in deer_missing(self._intake()):
            return False
        self.signed_by.complain(self.tr("A batch needs the owner's word in writing: whose?"))
        return True

    def write_more(self, work: "Work") -> None:
        work.arrivals.write_deer(self.animal.id, self._intake())
        test = self.test.value() or ""
        held = standing(work.arrivals.holds(self.animal.id))
        if test and not any(one.kind == "disease_test" for one in held):
            work.arrivals.hold(self.animal.id, "disease_test", test)

    def _intake(self) -> DeerIntake:
        return DeerIntake(
            self.hunter.value() or "",
            self.license.value() or "",
            self.game_tag.value() or "",
            self._day(),
            self.county.value() or "",
            self.cape.value() or "",
            self.head.value() or "",
            self.antlers.value() or "",
            self.meat.value() or "",
            self.signed_by.value() or "",
        )

    def _day(self) -> date | None:
        return self.killed_on.value()

    def _look(self) -> None:
        words = missing_words()
        missing = [words[one] for one in deer_missing(self._intake()) if one != "signed_by"]
        text = self.tr("Still to ask: {what}.").format(what=", ".join(missing))
        self.missing.setText(text if missing else "")
        self.missing.setVisible(bool(missing))

    def _texts(self) -> "tuple[TextField | DateField, ...]":
        return (self.hunter, self.license, self.game_tag, self.killed_on, self.county)

    def _keeps(self) -> tuple[ChoiceField[Keep], ...]:
        return (self.cape, self.head, self.antlers)


def missing_words() -> dict[str, str]:
    """The words for what a state asks of a deer."""
    return {
        "hunter": QCoreApplication.translate("Deer", "hunter"),
        "license": QCoreApplication.translate("Deer", "license"),
        "game_tag": QCoreApplication.translate("Deer", "game tag"),
        "killed_on": QCoreApplication.translate("Deer", "day of kill"),
        "county": QCoreApplication.translate("Deer", "county"),
        "signed_by": QCoreApplication.translate("Deer", "batch agreed in writing"),
    }
