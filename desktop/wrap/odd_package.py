"""A package that stands on no line of the order: what it is, what it weighs, and why."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField, WeightField
from printing.words.other_names import cut_names
from shared.carcass.anatomy import catalogue
from shared.units import Weight, net

if TYPE_CHECKING:
    from printing.words import Words


class OddPackage(FormDialog):
    """Asks for an odd package of a cut of this kind of animal.

    `keep` adds it and says "" or why it can't be added.
    """

    def __init__(
        self,
        words: "Words",
        species: str,
        keep: Callable[[str, Weight, Weight | None, int, str], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._keep = keep
        self.cut: ChoiceField[str] = ChoiceField(self, required=True)
        named = {
            code: words.name(species, f"cut.{code}")
            for code, cut in catalogue(species).cuts.items()
            if cut.kind != "to_trim"
        }
        codes = sorted(named, key=lambda code: named[code])
        self.cut.set_choices(
            [(code, named[code]) for code in codes],
            others=lambda: cut_names(words, species, codes),
        )
        self.weight = WeightField(self, required=True)
        self.tare = WeightField(self)
        self.pieces = CountField(self, most=999)
        self.reason = TextField(self, required=True)
        self.grid.add(self.cut, span=2)
        self.grid.add(self.weight)
        self.grid.add(self.tare)
        self.grid.add(self.pieces)
        self.grid.add(self.reason, span=2)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Odd package"),
            self.tr("A package that is on no line of the order. Say why it is there."),
            self.tr("&Add package"),
            self.tr("&Leave it"),
        )
        self.cut.set_label(self.tr("&Product"))
        self.weight.set_label(self.tr("&Net weight, or gross with tare"))
        self.tare.set_label(self.tr("&Tare"))
        self.pieces.set_label(self.tr("P&ieces"))
        self.reason.set_label(self.tr("&Reason"))

    def attempt(self) -> str:
        cut, weight, tare = self.cut.value(), self.weight.value(), self.tare.value()
        if cut is None or weight is None:
            return self.tr("Say the product and its weight.")
        after = weight if tare is None else net(weight, tare)
        if not isinstance(after, Weight):
            return self.tr("The tare is more than the gross weight.")
        return self._keep(cut, after, tare, self.pieces.value() or 0, self.reason.value() or "")
