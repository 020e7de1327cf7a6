"""Measures for grading a carcass, and the working figures they give; never a USDA grade."""

from decimal import Decimal
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.panels.heading import Words
from shared.carcass.gradings import ASKED, MUSCLING, read_measure, working_figures
from shared.units import NG_PER_LB

if TYPE_CHECKING:
    from collections.abc import Mapping

    from desktop.bench import Bench
    from desktop.rail.seen import SeenAnimal


class GradesDialog(FormDialog):
    """What was measured at the ribbed side; the figures stand beneath as one types."""

    def __init__(self, bench: "Bench", seen: "SeenAnimal", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._seen = seen
        self.species = seen.animal.species
        self.measures = {name: TextField(self, most=10) for name in ASKED.get(self.species, ())}
        self.muscling: ChoiceField[str] = ChoiceField(self)
        for field in self.measures.values():
            self.grid.add(field)
            field.changed.connect(self._tell)
        self.muscling.setVisible(self.species == "pork")
        if self.species == "pork":
            self.grid.add(self.muscling)
            self.muscling.changed.connect(self._tell)
        self.figures = Words("group", parent=self).wrapped()
        self.add_below(self.figures)
        self.retranslate()
        with bench.store.read() as work:
            known = work.cooler.measures([seen.animal.id]).get(seen.animal.id, {})
        for name, field in self.measures.items():
            field.set_value(known.get(name, ""))
        self.muscling.set_value(known.get("muscling"))
        self._tell()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Measures of tag {tag}").format(tag=self._seen.animal.tag),
            self.tr(
                "Taken with the carcass ribbed. What comes of it is calculated, not a USDA grade; "
                "it never goes on a label."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        names = {
            "fat": self.tr("&Fat over the 12th rib, in"),
            "ribeye": self.tr("&Ribeye, sq in"),
            "kph": self.tr("&Kidney, pelvic and heart fat, %"),
            "body_wall": self.tr("&Body wall, in"),
            "last_rib_fat": self.tr("&Last-rib backfat, in"),
            "tenth_rib_fat": self.tr("&Tenth-rib fat, in"),
        }
        for name, field in self.measures.items():
            field.set_label(names[name])
        self.muscling.set_label(self.tr("&Muscling"))
        texts = {
            "thin": self.tr("thin"),
            "average": self.tr("average"),
            "thick": self.tr("thick"),
        }
        self.muscling.set_choices([(one, texts[one]) for one in MUSCLING])
        self._tell()

    def attempt(self) -> str:
        for name, field in self.measures.items():
            if field.text().strip() and read_measure(name, field.text()) is None:
                field.complain(self.tr("A measure like 0.40; fat in inches."))
                return self.tr("Change that measure.")
        found = self._read()
        if not found:
            return self.tr("Nothing is measured yet.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.cooler.measure(self._seen.animal.id, found)
            work.commit()
        return ""

    def _read(self) -> "Mapping[str, str]":
        found: dict[str, str] = {}
        for name, field in self.measures.items():
            read = read_measure(name, field.text())
            if read is not None:
                found[name] = str(read)
        said = self.muscling.value()
        if said is not None:
            found["muscling"] = said
        return found

    def _tell(self) -> None:
        hot = self._seen.hot_ng()
        pounds = None if hot is None else Decimal(hot) / NG_PER_LB
        found = working_figures(self.species, self._read(), pounds)
        said: list[str] = []
        if found.grade is not None:
            text = self.tr("Grade {grade} ({figure}), calculated, not a USDA grade.")
            figure = f"{found.grade.figure:.2f}"
            said.append(text.format(grade=found.grade.grade, figure=figure))
        if found.cuts is not None:
            text = self.tr("Closely trimmed cuts {percent} %, equation from memory.")
            said.append(text.format(percent=f"{found.cuts.figure:.2f}"))
        if found.lean is not None:
            said.append(self.tr("Fat-free lean {percent} %.").format(percent=found.lean))
        if not said and hot is None:
            said.append(self.tr("Weigh the hot carcass first."))
        self.figures.setText(" ".join(said))
