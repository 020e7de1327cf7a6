"""One line of a usual way of cutting a primal, as the shop does it."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.choice_words import kind_words
from desktop.fields import (
    ChoiceField,
    CountField,
    FormDialog,
    LengthField,
    TextField,
    WeightField,
)
from printing.words.other_names import cut_names
from shared.carcass.catalogue import UsualLine

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.carcass.catalogue import Catalogue

KINDS = ("rest", "all", "pieces")
MOST_WAYS = 5


class UsualDialog(FormDialog):
    """Asks for a line; `line` and `variant` are what was accepted."""

    line: UsualLine
    variant: int

    def __init__(
        self,
        bench: "Bench",
        catalogue: "Catalogue",
        line: UsualLine | None,
        variant: int,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(640)
        self._bench, self._catalogue, self._line = bench, catalogue, line
        self.primal: ChoiceField[str] = ChoiceField(self, required=True)
        self.way: ChoiceField[int] = ChoiceField(self, required=True)
        self.cut: ChoiceField[str] = ChoiceField(self, required=True)
        self.amount: ChoiceField[str] = ChoiceField(self, required=True)
        self.count = CountField(self)
        self.thickness = LengthField(self)
        self.piece = WeightField(self)
        self.pieces = CountField(self)
        self.package = WeightField(self)
        self.finishes = TextField(self)
        for field in (self.primal, self.way, self.cut, self.amount, self.count):
            self.grid.add(field)
        for field in (self.thickness, self.piece, self.pieces, self.package, self.finishes):
            self.grid.add(field)
        self.retranslate()
        self.primal.changed.connect(self._name_cuts)
        self.primal.committed.connect(self._name_cuts)
        self.way.set_value(variant)
        self.amount.set_value("rest")
        self._fill(line)

    def _fill(self, line: UsualLine | None) -> None:
        if line is None:
            return
        self.primal.set_value(line.primal)
        self._name_cuts()
        self.cut.set_value(line.cut)
        self.amount.set_value(line.amount if line.amount in KINDS else "rest")
        self.count.set_value(line.count or None)
        self.thickness.set_value(line.thickness)
        self.piece.set_value(line.piece_weight)
        self.pieces.set_value(line.package_pieces)
        self.package.set_value(line.package_weight)
        self.finishes.set_text(", ".join(self._finish(one) for one in line.finishes))

    def retranslate(self) -> None:
        species, words = self._catalogue.species, self._bench.words
        self.set_words(
            self.tr("A usual line"),
            self.tr(
                "Way 1 is what F9 does when nobody says otherwise. The other ways are as usual "
                "to the block: they aren't boxed on its sheet."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.primal.set_label(self.tr("&Primal"))
        self.primal.set_choices(
            [(one, words.name(species, f"primal.{one}")) for one in self._catalogue.primals]
        )
        self.way.set_label(self.tr("&Way"))
        self.way.set_choices(
            [
                (one, self.tr("1, unasked") if one == 1 else self.tr("{way}, too").format(way=one))
                for one in range(1, MOST_WAYS + 1)
            ]
        )
        self.cut.set_label(self.tr("&Cut"))
        self._name_cuts()
        self.amount.set_label(self.tr("&Amount"))
        self.amount.set_choices([(one, kind_words(one)) for one in KINDS])
        self.count.set_label(self.tr("&So many"))
        self.thickness.set_label(self.tr("&Thickness"))
        self.piece.set_label(self.tr("&Roast weight"))
        self.pieces.set_label(self.tr("To a package, p&ieces"))
        self.package.set_label(self.tr("Package wei&ght"))
        self.finishes.set_label(self.tr("&Finishes, by comma"))

    def _name_cuts(self) -> None:
        primal = self.primal.value()
        species, words = self._catalogue.species, self._bench.words
        codes = [
            code
            for code, cut in self._catalogue.cuts.items()
            if primal is None or cut.primal == primal
        ]
        self.cut.set_choices(
            [(code, words.name(species, f"cut.{code}")) for code in codes],
            others=lambda: cut_names(words, species, codes),
        )

    def _finish(self, code: str) -> str:
        return self._bench.words.name(self._catalogue.species, f"finish.{code}")

    def attempt(self) -> str:
        primal, code, way = self.primal.value(), self.cut.value(), self.way.value()
        kind = self.amount.value()
        if primal is None or code is None or way is None or kind is None:
            return self.tr("Choose primal, way, cut and amount.")
        cut = self._catalogue.cuts[code]
        if kind not in cut.amounts:
            return self.tr("This cut isn't asked for that way; choose another amount.")
        count = (self.count.value() or 0) if kind == "pieces" else 0
        if kind == "pieces" and not count:
            return self.tr("Say how many.")
        thickness = self.thickness.value()
        least = cut.least_thickness
        if thickness is not None and (least is None or thickness < least):
            return self.tr("This cut can't have that thickness.")
        known = {self._finish(one).casefold(): one for one in cut.finishes}
        typed = [one.strip() for one in self.finishes.text().split(",") if one.strip()]
        if any(one.casefold() not in known for one in typed):
            names = ", ".join(self._finish(one) for one in cut.finishes)
            return self.tr("Finishes of this cut: {names}.").format(names=names)
        self.variant = way
        self.line = UsualLine(
            primal,
            code,
            kind,
            count,
            thickness,
            self.piece.value(),
            self.pieces.value(),
            self.package.value(),
            tuple(known[one.casefold()] for one in typed),
        )
        return ""
