"""Checking an animal in: tag, sex or class, age of cattle, skin of hogs."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.panels.heading import Words
from shared.carcass import thirty_months
from shared.carcass.carcass import Age, Skin
from shared.shop.animals import Animal
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench

SEXES: dict[str, tuple[str, ...]] = {
    "pork": ("barrow", "gilt", "sow", "boar"),
    "beef": ("steer", "heifer", "cow", "bull", "dairy", "grass_fed"),
    "lamb": ("wether", "ewe", "ram"),
    "goat": ("wether", "doe", "buck"),
    "deer": ("buck", "doe"),
    "veal": ("bull", "heifer", "steer"),
    "bison": ("bull", "heifer", "cow", "steer"),
}
AGES: tuple[Age, ...] = ("under_30", "30_and_over", "unknown")
SKINS: tuple[Skin, ...] = ("scalded", "skinned", "unknown")


def sex_words(sex: str) -> str:
    """The shop's word for a sex or class."""
    texts = {
        "barrow": QCoreApplication.translate("Sexes", "barrow"),
        "gilt": QCoreApplication.translate("Sexes", "gilt"),
        "sow": QCoreApplication.translate("Sexes", "sow"),
        "boar": QCoreApplication.translate("Sexes", "boar"),
        "steer": QCoreApplication.translate("Sexes", "steer"),
        "heifer": QCoreApplication.translate("Sexes", "heifer"),
        "cow": QCoreApplication.translate("Sexes", "cow"),
        "bull": QCoreApplication.translate("Sexes", "bull"),
        "dairy": QCoreApplication.translate("Sexes", "dairy steer or heifer"),
        "grass_fed": QCoreApplication.translate("Sexes", "grass-fed steer or heifer"),
        "wether": QCoreApplication.translate("Sexes", "wether"),
        "ewe": QCoreApplication.translate("Sexes", "ewe"),
        "ram": QCoreApplication.translate("Sexes", "ram"),
        "doe": QCoreApplication.translate("Sexes", "doe"),
        "buck": QCoreApplication.translate("Sexes", "buck"),
    }
    return texts.get(sex, sex)


class CheckInDialog(FormDialog):
    """Tags an animal that has come; of one already here it corrects what was said."""

    def __init__(self, bench: "Bench", animal: Animal, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.animal = animal
        self.tag = TextField(self, required=True, most=40)
        self.sex: ChoiceField[str] = ChoiceField(self)
        self.age: ChoiceField[Age] = ChoiceField(self)
        self.skin: ChoiceField[Skin] = ChoiceField(self)
        self.caution = Words("body", "tight", self).wrapped()
        self.grid.add(self.tag)
        if SEXES.get(animal.species):
            self.grid.add(self.sex)
        cattle, hog = thirty_months.holds_for(animal.species), animal.species == "pork"
        if cattle:
            self.grid.add(self.age)
            self.add_below(self.caution)
        if hog:
            self.grid.add(self.skin)
        for field, shown in ((self.sex, animal.species in SEXES), (self.age, cattle)):
            field.setVisible(shown)
        self.skin.setVisible(hog)
        self.caution.setVisible(cattle)
        self.retranslate()
        self.tag.set_text(animal.tag)
        self.sex.set_value(animal.sex or None)
        self.age.set_value(animal.age)
        self.skin.set_value(animal.skin)

    def retranslate(self) -> None:
        words = self.bench.words
        name = words.name(self.animal.species, f"species.{self.animal.species}")
        booked = self.animal.state == "booked"
        self.set_words(
            self.tr("Check in a {animal}").format(animal=name)
            if booked
            else self.tr("What is known of tag {tag}").format(tag=self.animal.tag),
            "",
            self.tr("Check &in") if booked else self.tr("&Keep it"),
            self.tr("&Leave it"),
        )
        self.tag.set_label(self.tr("&Tag"))
        self.sex.set_label(self.tr("&Sex or class"))
        self.age.set_label(self.tr("&Age"))
        self.skin.set_label(self.tr("S&kin"))
        self.sex.set_choices([(one, sex_words(one)) for one in SEXES.get(self.animal.species, ())])
        self.age.set_choices([(one, words.name("", f"age.{one}")) for one in AGES])
        self.skin.set_choices([(one, words.name("", f"skin.{one}")) for one in SKINS])
        self.caution.setText(
            self.tr(
                "Age is read from the teeth and the papers; the inspector decides. Not known is "
                "cut as 30 months and over: no backbone goes to the owner."
            )
        )

    def attempt(self) -> str:
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = self._write(work)
            if isinstance(found, Animal):
                work.commit()
                return ""
        if isinstance(found, Refused) and found.code == "tag_taken":
            self.tag.complain(
                self.tr("Tag {tag} is on an animal of lot {lot} that is still here.").format(
                    tag=found.data.get("tag", ""), lot=found.data.get("lot", "")
                )
            )
            return ""
        if isinstance(found, Refused):
            self.tag.complain(self.tr("Fill this in."))
            return ""
        return self.tr("Another station has changed this animal. Leave this and open it again.")

    def _write(self, work: "Work") -> "Animal | object":
        animal = self.animal
        tag = self.tag.value() or ""
        sex = self.sex.value() or ""
        age = self.age.value() or "unknown"
        skin = self.skin.value() or "unknown"
        if animal.state == "booked":
            return work.animals.arrive(
                animal.id, tag=tag, sex=sex, age=age, skin=skin, version=animal.version
            )
        return work.animals.change(replace(animal, tag=tag, sex=sex, age=age, skin=skin))
