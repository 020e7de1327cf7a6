"""Checking an animal in: tag, sex, age of cattle, skin of hogs, and what is seen and said."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.rail.age_told import tell_age
from desktop.rail.arrival_fields import ArrivalFields
from shared.carcass import thirty_months
from shared.carcass.carcass import Age, Skin
from shared.shop.animals import Animal
from shared.shop.arrival import Arrival
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen

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
    """Tags an animal that has come; of one already here it corrects what was said.

    `touched` says afterwards which choices no longer stand by the age said.
    """

    def __init__(self, bench: "Bench", animal: Animal, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.bench = bench
        self.animal = animal
        self.touched: tuple[Fallen, ...] = ()
        self.tag = TextField(self, required=True, most=40)
        self.sex: ChoiceField[str] = ChoiceField(self)
        self.age: ChoiceField[Age] = ChoiceField(self)
        self.skin: ChoiceField[Skin] = ChoiceField(self)
        self.facts = ArrivalFields(animal, self, bench.now())
        self.stated = list(self.facts.fields())  # for the journal, by their places
        self.caution = self.facts.caution
        self.grid.add(self.tag)
        cattle, hog = thirty_months.holds_for(animal.species), animal.species == "pork"
        asked = ((self.sex, animal.species in SEXES), (self.age, cattle), (self.skin, hog))
        for field, shown in asked:
            field.setVisible(shown)
            if shown:
                self.grid.add(field)
        self.lay_more()
        self.retranslate()
        self._show()

    def lay_more(self) -> None:
        """The fields after tag, sex and age."""
        self.facts.lay(self.grid)
        self.add_below(self.caution)

    def _show(self) -> None:
        animal = self.animal
        self.tag.set_text(animal.tag)
        self.sex.set_value(animal.sex or None)
        self.age.set_value(animal.age)
        self.skin.set_value(animal.skin)
        with self.bench.store.read() as work:
            self.show_more(work)

    def show_more(self, work: "Work") -> None:
        """What the store knows of the other fields."""
        self.facts.show(work.arrivals.of(self.animal.id))

    def retranslate(self) -> None:
        words = self.bench.words
        name = words.name(self.animal.species, f"species.{self.animal.species}")
        booked = self.animal.state == "booked"
        self.set_words(
            self.tr("Check in a {animal}").format(animal=name)
            if booked
            else self.tr("What is known of tag {tag}").format(tag=self.animal.tag),
            self.tr("Ctrl+Enter at any time; what isn't known stays empty."),
            self.tr("Check &in") if booked else self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.tag.set_label(self.tr("&Tag"))
        self.sex.set_label(self.tr("&Sex or class"))
        self.age.set_label(self.tr("&Age"))
        self.skin.set_label(self.tr("Ski&n"))
        self.sex.set_choices([(one, sex_words(one)) for one in SEXES.get(self.animal.species, ())])
        self.age.set_choices([(one, words.name("", f"age.{one}")) for one in AGES])
        self.skin.set_choices([(one, words.name("", f"skin.{one}")) for one in SKINS])
        self.facts.retranslate()

    def attempt(self) -> str:
        if self.refused():
            return ""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = self._write(work)
            if isinstance(found, Animal):
                self.write_more(work)
                work.commit()
                return ""
        if isinstance(found, Refused) and found.code == "tag_taken":
            if self.animal.tag and self._swapped(int(found.data["animal"])):
                return ""
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

    def _swapped(self, other_id: int) -> bool:
        """The tag is on another animal here: the two may carry each other's."""
        words, messages = self.tag.value() or "", self.bench.messages
        reason = messages.ask_reason(
            self.tr("Swap the tags"),
            self.tr(
                "Tag {tag} is on another animal here. If the two carry each other's tag, say why, "
                "and they are swapped. Weights and losses stay with the animal they were kept for: "
                "correct those taken by the wrong tag (F8)."
            ).format(tag=words),
        )
        if not reason:
            return False
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            if work.animals.swap_tags(self.animal.id, other_id, reason) is not None:
                return False
            swapped = work.animals.get(self.animal.id)
            assert swapped is not None
            self.animal = swapped
            found = self._write(work)
            if not isinstance(found, Animal):
                return False
            self.write_more(work)
            work.commit()
        return True

    def refused(self) -> bool:
        """Whether another field can't be taken; said at it."""
        return self.facts.refused()

    def write_more(self, work: "Work") -> None:
        """Keep the other fields, where they say something new."""
        said, kept = self.facts.value(), work.arrivals.of(self.animal.id)
        before = Arrival() if kept is None else replace(kept, at=None, person="", station="")
        if said != before:
            work.arrivals.write(self.animal.id, said)

    def _write(self, work: "Work") -> "Animal | object":
        animal = self.animal
        tag = self.tag.value() or ""
        sex = self.sex.value() or ""
        age = self.age.value() or "unknown"
        skin = self.skin.value() or "unknown"
        before = work.lots.question(animal.lot_id, at_block=False) if age != animal.age else None
        if animal.state == "booked":
            found = work.animals.arrive(
                animal.id, tag=tag, sex=sex, age=age, skin=skin, version=animal.version
            )
        else:
            found = work.animals.change(replace(animal, tag=tag, sex=sex, age=age, skin=skin))
        if before is not None and isinstance(found, Animal):
            self.touched = tell_age(work, found, before)
        return found
