"""One line of an order: the cut, how much, how thick, how packed and finished."""

from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QWidget

from desktop.counter.choice_words import FRACTIONS, kind_words
from desktop.counter.ground_fields import GroundFields
from desktop.counter.usual_fill import usual_choice
from desktop.fields import ChoiceField, CountField, FormDialog, LengthField, TextField, WeightField
from desktop.look.space import GROUP, row
from printing.words.choice_words import fraction_text
from printing.words.other_names import cut_names
from shared.curing.asked import usual_finish
from shared.cutting.breaking import package_of
from shared.cutting.order import Amount, Choice, Package
from shared.shop.customers import name_key
from shared.units import Weight, length_text, read_weight

if TYPE_CHECKING:
    from collections.abc import Sequence

    from printing.words import Words
    from shared.carcass.catalogue import Catalogue, Cut
    from shared.cutting.answer import Answer
    from shared.cutting.order import AmountKind

_COUNTED = ("pieces", "slices", "up_to", "at_least")


def blank_choice(catalogue: "Catalogue", code: str, share: int) -> Choice:
    """A cut as it is first offered: as the house's usual has it, else as its figures say.

    Saddle chops are had by the slice only, so they are offered as one slice, not as "the rest".
    What may be had fresh and cured is offered as the usual has its primal: a belly as bacon is.
    """
    for usual in catalogue.usual:
        if usual.cut == code:
            return usual_choice(usual, share)
    cut = catalogue.cuts[code]
    kind: AmountKind = "rest"
    for one in ("all", "pieces", "slices", "rest"):
        if one == cut.default_amount:
            kind = one
    count = max(cut.pieces_default, 1) if kind in _COUNTED else 0
    amount, finishes = Amount(kind, count), usual_finish(catalogue, code)
    return Choice(0, share, code, amount, piece_weight=cut.piece_weight, finishes=finishes)


def ways_of_cutting(catalogue: "Catalogue", primal: str) -> tuple[str, ...]:
    """The cuts of a primal, the house's usual first; every cut for ""."""
    usual = [one.cut for one in catalogue.usual if primal in ("", one.primal)]
    others = [code for code, cut in catalogue.cuts.items() if primal in ("", cut.primal)]
    return tuple(dict.fromkeys([*usual, *others]))


class LineDialog(FormDialog):
    """Asks for one line; `result_choice` holds it once it was taken."""

    def __init__(
        self,
        catalogue: "Catalogue",
        words: "Words",
        choice: Choice,
        cuts: "Sequence[str]",
        parent: QWidget | None = None,
        typed: str = "",
        answer: "Answer | None" = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self._answer = answer
        self._catalogue = catalogue
        self._words = words
        self._choice = choice
        self._shown = ""
        self.result_choice: Choice | None = None
        self._build()
        self.retranslate()
        self.cut.set_choices(
            [(code, self._name(code)) for code in cuts],
            also=[[self._words.name(catalogue.species, f"cut.{code}", 2)] for code in cuts],
            others=lambda: cut_names(words, catalogue.species, cuts),
        )
        self.show_choice(choice)
        if typed:
            self.cut.begin_with(typed)

    def _build(self) -> None:
        self.cut = ChoiceField[str](required=True)
        self.kind = ChoiceField[str](required=True)
        self.count = CountField(required=True, least=1, most=999)
        self.pounds = WeightField(required=True)
        self.fraction = ChoiceField[Fraction](required=True)
        self.fraction.set_choices([(one, fraction_text(one)) for one in FRACTIONS])
        self.thickness = LengthField()
        self.piece_weight = WeightField()
        self.ribs = CountField(least=1, most=14)
        self.lean = CountField(least=1, most=100)
        self.package_pieces = CountField(least=1, most=99)
        self.package_weight = WeightField()
        self.way = ChoiceField[str]()
        self.note = TextField(most=200)
        self.grid.add(self.cut, 3)
        for field in (self.kind, self.count, self.pounds, self.fraction, self.thickness):
            self.grid.add(field)
        for field in (self.piece_weight, self.ribs, self.lean, self.way):
            self.grid.add(field)
        for field in (self.package_pieces, self.package_weight):
            self.grid.add(field)
        self.ground = GroundFields(self.grid)
        self.seasoning, self.stock = self.ground.seasoning, self.ground.stock
        self.part = self.ground.part
        self.grid.add(self.note, 3)
        self.finishes: dict[str, QCheckBox] = {}
        self._boxes = QWidget(self)
        self._box_row = row(self._boxes, gap=GROUP)
        self.grid.add_widget(self._boxes)
        self.cut.changed.connect(self._cut_changed)
        self.kind.changed.connect(self._kind_changed)
        self.kind.line.editingFinished.connect(self._amount_typed)
        self.package_pieces.changed.connect(lambda: self.package_weight.show_problem())

    def retranslate(self) -> None:
        change = self._choice.line != 0
        self.set_words(
            self.tr("Change the line") if change else self.tr("Add to the order"),
            "",
            self.tr("&Keep") if change else self.tr("Put on the &order"),
            self.tr("&Leave it"),
        )
        self.cut.set_label(self.tr("&Cut"))
        self.kind.set_label(self.tr("&How much"))
        self.count.set_label(self.tr("How man&y"))
        self.pounds.set_label(self.tr("Pou&nds"))
        self.fraction.set_label(self.tr("&Fraction of each side"))
        self.thickness.set_label(self.tr("&Thickness"))
        self.piece_weight.set_label(self.tr("&Weight of a piece"))
        self.ribs.set_label(self.tr("&Ribs"))
        self.lean.set_label(self.tr("L&ean, per cent"))
        self.way.set_label(self.tr("Cut fro&m"))
        self.package_pieces.set_label(self.tr("&Pieces to a package"))
        self.package_weight.set_label(self.tr("or poun&ds to a package"))
        self.note.set_label(self.tr("Note for the &block"))
        self.ground.retranslate()

    def show_choice(self, choice: Choice) -> None:
        """Show a line in the fields."""
        self._shown = choice.cut
        self.cut.set_value(choice.cut)
        cut = self._catalogue.cuts[choice.cut]
        self.kind.set_choices([(kind, kind_words(kind)) for kind in cut.amounts])
        self.kind.set_value(choice.amount.kind)
        self.count.set_value(choice.amount.count or cut.pieces_default)
        self.pounds.set_value(choice.amount.weight)
        self.fraction.set_value(choice.amount.fraction or FRACTIONS[0])
        self.thickness.set_value(choice.thickness or cut.thickness)
        self.piece_weight.set_value(choice.piece_weight)
        self.ribs.set_value(choice.ribs)
        lean = choice.lean or cut.lean_percent
        self.lean.set_value(None if lean is None else int(lean * 100))
        package = package_of(choice, cut)
        self.package_pieces.set_value(package.pieces)
        self.package_weight.set_value(package.weight)
        species = self._catalogue.species
        self.way.set_choices(
            [("", self.tr("wherever it fits"))]
            + [(one.code, self._words.name(species, f"way.{one.code}")) for one in cut.ways]
            if len(cut.ways) > 1
            else []
        )
        self.way.set_value(choice.way)
        self.note.set_value(choice.note)
        self.ground.show(choice)
        self.ground.say_gives(choice, cut, self._answer, self._catalogue)
        self._show_finishes(cut, choice.finishes)
        self._fit(cut)

    def try_it(self) -> None:
        """As any form; Ctrl+Enter doesn't leave the field in which the amount was just typed."""
        self.take_lists()  # another cut has other amounts
        self._amount_typed()
        super().try_it()

    def attempt(self) -> str:
        code, kind = self.cut.value(), self.kind.value()
        if code is None or kind is None:
            return ""
        cut = self._catalogue.cuts[code]
        if self._too_thin(cut) or self._packed_twice():
            return ""
        lean = self.lean.value() if self.lean.isEnabled() else None
        percent = None if lean is None else Fraction(lean, 100)
        thickness = self.thickness.value() if self.thickness.isEnabled() else None
        taken = replace(
            self._choice,
            cut=code,
            amount=self._amount(kind),
            way=(self.way.value() or "") if self.way.isEnabled() else "",
            thickness=None if thickness == cut.thickness else thickness,
            piece_weight=self.piece_weight.value() if self.piece_weight.isEnabled() else None,
            ribs=self.ribs.value() if self.ribs.isEnabled() else None,
            lean=None if percent == cut.lean_percent else percent,
            package=Package(self.package_pieces.value(), self.package_weight.value()),
            finishes=tuple(one for one, box in self.finishes.items() if box.isChecked()),
            note=self.note.value() or "",
            pinned=(),
        )
        self.result_choice = self.ground.taken(taken)
        return ""

    def _amount(self, kind: str) -> Amount:
        for one in _COUNTED:
            if kind == one:
                return Amount(one, self.count.value() or 1)  # pyright: ignore[reportArgumentType]
        if kind == "pounds":
            return Amount("pounds", weight=self.pounds.value())
        if kind == "fraction":
            return Amount("fraction", fraction=self.fraction.value())
        return Amount("all" if kind == "all" else "rest")

    def _too_thin(self, cut: "Cut") -> bool:
        thickness, least = self.thickness.value(), cut.least_thickness
        if not self.thickness.isEnabled() or thickness is None or least is None:
            return False
        if thickness >= least:
            return False
        self.thickness.complain(
            self.tr("The saw holds {least} and thicker here.").format(least=length_text(least))
        )
        return True

    def _packed_twice(self) -> bool:
        if self.package_pieces.is_empty() or self.package_weight.is_empty():
            return False
        self.package_weight.complain(self.tr("Pack by pieces or by pounds: empty one of the two."))
        return True

    def _cut_changed(self) -> None:
        code = self.cut.value()
        if code is None or code == self._shown:
            return
        typed, at = self.cut.text(), self.cut.line.cursorPosition()
        new = blank_choice(self._catalogue, code, self._choice.share)
        self.show_choice(replace(new, line=self._choice.line, note=self.note.value() or ""))
        asked = name_key(self.cut.picked_by).split()
        for box in self.finishes.values():  # who says corned beef doesn't want the brisket fresh
            if name_key(box.text()) in asked:
                box.setChecked(True)
        self.cut.set_text(typed)
        self.cut.line.setCursorPosition(at)

    def _amount_typed(self) -> None:
        """A number for "how much" says what it counts: "25 lb" pounds, "8" slices or pieces.

        A fraction alone stays to be chosen: half of each side, or half a pound.
        """
        typed, kinds = self.kind.text().strip(), self.kind.values
        if self.kind.value() is not None or not typed[:1].isdigit():
            return
        counted = next((one for one in _COUNTED if one in kinds), None)
        weight = None if "/" in typed and "lb" not in typed else read_weight(typed, "lb")
        if typed.isdecimal() and counted is not None:
            self.kind.set_value(counted)
            self.count.set_value(int(typed))
        elif "pounds" in kinds and isinstance(weight, Weight):
            self.kind.set_value("pounds")
            self.pounds.set_value(weight)
        self._kind_changed()

    def _kind_changed(self) -> None:
        code = self.cut.value()
        if code is not None:
            self._fit(self._catalogue.cuts[code])

    def _fit(self, cut: "Cut") -> None:
        """Show the fields that mean something for this cut and amount."""
        kind = self.kind.value()
        pieced = any(way.run is not None and way.run.size == "piece" for way in cut.ways)
        packed = cut.kind != "to_trim"
        shown = (
            (self.count, kind in _COUNTED),
            (self.pounds, kind == "pounds"),
            (self.fraction, kind == "fraction"),
            (self.thickness, cut.thickness is not None),
            (self.piece_weight, pieced and cut.kind == "roast"),
            (self.ribs, pieced and self._ribbed(cut)),
            (self.lean, cut.lean_percent is not None),
            (self.way, len(cut.ways) > 1),
            (self.package_pieces, packed),
            (self.package_weight, packed),
        )
        for field, wanted in shown:
            field.setVisible(wanted)
            field.setEnabled(wanted)
        self.ground.fit(cut)
        self._boxes.setVisible(bool(self.finishes))
        self.grid.close_up()

    def _ribbed(self, cut: "Cut") -> bool:
        for way in cut.ways:
            if way.run is not None:
                run = self._catalogue.runs[way.run.run]
                first, last = run.place(way.run.first), run.place(way.run.last)
                if any(one.ribs for one in run.stretches[first : last + 1]):
                    return True
        return False

    def _show_finishes(self, cut: "Cut", chosen: "Sequence[str]") -> None:
        for box in self.finishes.values():
            self._box_row.removeWidget(box)
            box.hide()
            box.deleteLater()
        self.finishes = {}
        for code in cut.finishes:
            box = QCheckBox(self._words.name(self._catalogue.species, f"finish.{code}"))
            box.setChecked(code in chosen)
            box.toggled.connect(lambda _on: self.note.changed.emit())
            self._box_row.insertWidget(len(self.finishes), box)
            self.finishes[code] = box
        if self._box_row.count() == len(self.finishes):
            self._box_row.addStretch(1)

    def _name(self, code: str) -> str:
        return self._words.name(self._catalogue.species, f"cut.{code}")
