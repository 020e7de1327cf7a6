"""The block reports: a stretch measured, pounds lost, or a line cut otherwise; large fields."""

from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from desktop.block.cutting import Cutting, Step
from desktop.block.measuring import measurable
from desktop.block.reporting import reason_words, report, withdraw
from desktop.fields import (
    ChoiceField,
    CountField,
    Field,
    FormDialog,
    LengthField,
    TextField,
    WeightField,
)
from desktop.look.space import ROW_BLOCK
from desktop.look.type_scale import set_type
from shared.cutting.breaking import BlockLine
from shared.shop.findings import Finding, FindingKind
from shared.shop.problems import Refused
from shared.units import weight_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen

Line = tuple[int, int]  # line, side
Kind = FindingKind | Literal["withdraw"]


class ReportDialog(FormDialog):
    """Asks what happened; only the fields of its kind are shown.

    `found` is what was kept and `touched` the choices that fall or get less by it.
    """

    found: Finding
    touched: "tuple[Fallen, ...]" = ()

    def __init__(
        self, bench: "Bench", cutting: Cutting, step: Step | None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(900)
        self.bench, self.cutting = bench, cutting
        self.kind: ChoiceField[Kind] = ChoiceField(self, required=True)
        self.which: ChoiceField[int] = ChoiceField(self)
        self.line: ChoiceField[Line] = ChoiceField(self)
        self.stretch: ChoiceField[str] = ChoiceField(self)
        self.part: ChoiceField[str] = ChoiceField(self)
        self.side: ChoiceField[int] = ChoiceField(self)
        self.length = LengthField(self)
        self.count = CountField(self)
        self.weight = WeightField(self)
        self.ours: ChoiceField[bool] = ChoiceField(self)
        self.reason = TextField(self)
        self.grid.add(self.kind, span=2)
        for field in self._fields()[1:]:
            self.grid.add(field)
        self.retranslate()
        self._enlarge()
        self.kind.changed.connect(self._show_fields)
        self.kind.committed.connect(self._show_fields)
        self.kind.set_value("measured")
        self.ours.set_value(False)
        self.side.set_value(step.side or 1 if step else 1)
        if step is not None:
            here = next((one for _, one in step.lines if isinstance(one, BlockLine)), None)
            self.line.set_value((here.line, here.side) if here else None)
        self._show_fields()

    def _fields(self) -> "tuple[Field, ...]":
        return (
            self.kind,
            self.which,
            self.line,
            self.length,
            self.stretch,
            self.count,
            self.part,
            self.side,
            self.weight,
            self.ours,
            self.reason,
        )

    def _enlarge(self) -> None:
        """Targets of 64 pixels, words to be read at the block."""
        for part in (*self.findChildren(QLineEdit), *self.findChildren(QComboBox)):
            set_type(part, "group")
            part.setMinimumHeight(ROW_BLOCK)
        for field in self._fields():
            set_type(field.label, "group")
        for button in (self.main, self.leave):
            set_type(button, "group")
            button.setStyleSheet(f"min-height: {ROW_BLOCK - 6}px")

    def retranslate(self) -> None:
        _species, _words = self.cutting.animal.species, self.bench.words
        self.set_words(
            self.tr("Report of tag {tag}").format(tag=self.cutting.animal.tag),
            self.tr("What is left is planned again, and the counter is told."),
            self.tr("&Keep"),
            self.tr("Leave it (Esc)"),
        )
        self.kind.set_label(self.tr("&What"))
        self.kind.set_choices(
            [
                ("measured", self.tr("a length measured")),
                ("lost", self.tr("something lost or trimmed away")),
                ("cut_otherwise", self.tr("a line cut otherwise")),
                *([("withdraw", self.tr("take a report back"))] if self._standing() else []),
            ]
        )
        self.which.set_label(self.tr("Which &report"))
        self.which.set_choices([(one.id, self._told(one)) for one in self._standing()])
        self.line.set_label(self.tr("&Line"))
        self.line.set_choices(self._lines())
        self._name_places()
        self.side.set_label(self.tr("&Side"))
        self.side.set_choices(
            [(1, self.tr("side 1")), (2, self.tr("side 2")), (0, self.tr("one to the animal"))]
        )
        self.length.set_label(self.tr("Len&gth or thickness"))
        self.count.set_label(self.tr("&Came out, pieces"))
        self.weight.set_label(self.tr("Po&unds lost (empty: all of it)"))
        self.ours.set_label(self.tr("&Our own mistake"))
        self.ours.set_choices([(False, self.tr("no")), (True, self.tr("yes, credit it"))])
        self.reason.set_label(self.tr("Wh&y"))

    def _name_places(self) -> None:
        """What may be measured, and what may be lost."""
        species, words, catalogue = (
            self.cutting.animal.species,
            self.bench.words,
            self.cutting.catalogue,
        )
        self.stretch.set_label(self.tr("What was m&easured"))
        whole = self.tr("all of the {primal}")
        self.stretch.set_choices(
            [
                (code, whole.format(primal=words.name(species, code)) if places else name)
                for code, places, name in measurable(catalogue, words)
            ]
        )
        self.part.set_label(self.tr("&Part"))
        self.part.set_choices(
            [(code, words.name(species, f"part.{code}")) for code in catalogue.parts]
        )

    def _lines(self) -> list[tuple[Line, str]]:
        words, species = self.bench.words, self.cutting.animal.species
        found: dict[Line, str] = {}
        for step in self.cutting.steps:
            for spot, one in step.lines:
                if isinstance(one, BlockLine):
                    name = words.name(species, f"cut.{one.cut}", one.count or 1)
                    side = self.tr("side {side}").format(side=spot[1])
                    who = self.cutting.owner(one.share)
                    found.setdefault((one.line, spot[1]), f"{name}, {side}, {who}")
        return list(found.items())

    def _standing(self) -> list[Finding]:
        """Reports that may be taken back, the newest first: none with a credit."""
        found = [one for one in self.cutting.findings if not one.withdrawn and not one.credit]
        return found[::-1]

    def _told(self, one: Finding) -> str:
        """A report in a line: "whole ham, 9 lb lost: abscess"."""
        said = reason_words(one, self.cutting, self.bench.words)
        if one.kind != "lost":
            return said
        species = self.cutting.animal.species
        part = self.bench.words.name(species, f"part.{one.what}")
        pounds = f" {weight_text(one.weight)}" if one.weight is not None else ""
        return f"{part}{pounds}: {said}"

    def _show_fields(self) -> None:
        kind = self.kind.value()
        shown: dict[Field, bool] = {
            self.which: kind == "withdraw",
            self.line: kind == "cut_otherwise",
            self.stretch: kind == "measured",
            self.part: kind == "lost",
            self.side: kind in ("measured", "lost"),
            self.length: kind in ("measured", "cut_otherwise"),
            self.count: kind == "cut_otherwise",
            self.weight: kind == "lost",
            self.ours: kind in ("lost", "cut_otherwise"),
            self.reason: kind != "measured",
        }
        for field, on in shown.items():
            field.setVisible(on)
        self.grid.close_up()

    def attempt(self) -> str:
        if self.kind.value() == "withdraw":
            return self._take_back()
        found = self._read()
        if isinstance(found, str):
            return found
        kept = report(self.bench, self.cutting, found)
        if isinstance(kept, Refused):
            return self.tr("Say why.")
        self.found, self.touched = found, kept
        return ""

    def _take_back(self) -> str:
        which, reason = self.which.value(), self.reason.text().strip()
        found = next((one for one in self._standing() if one.id == which), None)
        if found is None:
            return self.tr("Say which report.")
        if not reason:
            return self.tr("Say why.")
        kept = withdraw(self.bench, self.cutting, found, reason)
        if isinstance(kept, Refused):
            return self.tr("It was taken back or credited meanwhile; look again.")
        self.found, self.touched = replace(found, withdrawn=reason), kept
        return ""

    def _read(self) -> Finding | str:
        """The report, or what is missing of it in a sentence."""
        kind, animal = self.kind.value(), self.cutting.animal.id
        length, side, reason = self.length.value(), self.side.value(), self.reason.text().strip()
        if kind == "measured":
            stretch = self.stretch.value()
            if stretch is None or not length or side not in (1, 2):
                return self.tr("Say what was measured, on which side, and its length.")
            return Finding(animal, "measured", side, stretch, length=length)
        if not reason:
            return self.tr("Say why.")
        ours = bool(self.ours.value())
        if kind == "lost":
            part = self.part.value()
            if part is None or side is None:
                return self.tr("Say which part, and on which side.")
            if (self.cutting.catalogue.parts[part].per == "side") != (side != 0):
                return self.tr("Say the side; of a part there is one of, say so.")
            weight = self.weight.value()
            return Finding(animal, "lost", side, part, weight=weight, ours=ours, reason=reason)
        line = self.line.value()
        if line is None:
            return self.tr("Say which line.")
        cut = next(one.cut for one in self.cutting.question.choices if one.line == line[0])
        count = self.count.value() or 0
        index = self.cutting.animal.index
        kept: FindingKind = "cut_otherwise"
        return Finding(
            animal, kept, line[1], cut, line[0], count, length, None, ours, reason, index=index
        )
