"""How the carcass was dressed when it was weighed: head, feet, leaf fat, kidneys in or out."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog
from desktop.rail.seen import SeenAnimal
from shared.carcass.dressing import FIELDS, PARTS, Dressing

if TYPE_CHECKING:
    from desktop.bench import Bench


class DressingDialog(FormDialog):
    """Only what its species has; empty is the usual way, for which the cuts' shares are stated."""

    def __init__(self, bench: "Bench", seen: SeenAnimal, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.seen = seen
        self.fields: dict[str, ChoiceField[str]] = {}
        for name in said_of(seen):
            self.fields[name] = ChoiceField(self)
            self.grid.add(self.fields[name])
        self.retranslate()
        told = seen.dressing.said()
        for name, field in self.fields.items():
            field.set_value(told.get(name, ""))

    def retranslate(self) -> None:
        self.set_words(
            self.tr("How it was dressed"),
            self.tr("As it hung on the scale. The plan and the forecast are made for it."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        labels = {
            "head": self.tr("&Head"),
            "feet": self.tr("&Feet"),
            "leaf": self.tr("Leaf or kidney f&at"),
            "kidneys": self.tr("K&idneys"),
        }
        words = {
            "": self.tr("as usual"),
            "on": self.tr("on"),
            "off": self.tr("off"),
            "in": self.tr("in"),
            "out": self.tr("out"),
        }
        for name, field in self.fields.items():
            field.set_label(labels[name])
            field.set_choices([(one, words[one]) for one in ("", *FIELDS[name])])

    def attempt(self) -> str:
        said = {name: field.value() or "" for name, field in self.fields.items()}
        dressing = Dressing(**said)  # pyright: ignore[reportArgumentType]  # from FIELDS alone
        if dressing != self.seen.dressing:
            with self.bench.store.work(self.bench.person, self.bench.station) as work:
                work.arrivals.dress(self.seen.animal.id, dressing)
                work.commit()
        return ""


def said_of(seen: SeenAnimal) -> tuple[str, ...]:
    """What may be said of its species: a lamb has a head, feet, kidney fat and kidneys."""
    parts = set(seen.catalogue.parts)
    return tuple(name for name in FIELDS if PARTS[name] & parts)
