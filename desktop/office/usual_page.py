"""The shop's own usual lines, how it cuts split sides, and what the block's sheet speaks."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.counter.choice_words import cut_words, finish_words, kind_words
from desktop.fields import ChoiceField
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.usual_dialog import UsualDialog
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from printing.words.place_words import capital
from shared.carcass.anatomy import catalogue
from shared.carcass.anatomy import species as all_species
from shared.shop.problems import StaleEdit
from shared.shop.usual import UsualWay, as_choice, usual_of

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.carcass.catalogue import UsualLine
    from shared.shop.findings import SheetWords


@dataclass(frozen=True, slots=True)
class Row:
    """One usual line as the page shows it; `own` says that the shop wrote the primal itself."""

    line: "UsualLine"
    variant: int
    own: bool


class UsualPage(QWidget):
    """Lines by primal; Enter changes one, Ctrl+N adds one, Del takes one off.

    Signals:
        said: a sentence for the status line.
        changed: something was kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self._ways: tuple[UsualWay, ...] = ()
        self._build()
        self.lines.picked.connect(self.edit)
        self.new.clicked.connect(self.begin)
        self.drop.clicked.connect(self.take_off)
        self.back.clicked.connect(self.as_the_table)
        self.species.committed.connect(self.refresh)
        self.alike.committed.connect(self._keep_rules)
        self.speaks.committed.connect(self._keep_rules)
        for keys, slot in (("Ctrl+N", self.begin), ("Del", self.take_off)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)
        self.retranslate()
        self.species.set_value("beef")

    def _build(self) -> None:
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.alike: ChoiceField[bool] = ChoiceField(self, required=True)
        self.speaks: ChoiceField[SheetWords] = ChoiceField(self, required=True)
        self.lead = Words("body", "quiet", self).wrapped()
        self.new, self.drop, self.back = button(self, main=True), button(self), button(self)
        top = row(gap=GROUP)
        for field in (self.species, self.alike, self.speaks):
            top.addWidget(field, 1)
        feet = row(gap=TOGETHER)
        for part in (self.new, self.drop, self.back):
            feet.addWidget(part)
        feet.addStretch(1)
        self.lines: Table[Row] = Table(RowsModel(self._columns()), self, sortable=False)
        down = column(self, gap=TOGETHER, edge=GROUP)
        down.addLayout(top)
        down.addWidget(self.lead)
        down.addWidget(self.lines, 1)
        down.addLayout(feet)

    def retranslate(self) -> None:
        """Every word of the page."""
        words = self.bench.words
        self.species.set_label(self.tr("&Animal"))
        self.species.set_choices(
            [(one, words.name(one, f"species.{one}")) for one in all_species()]
        )
        self.alike.set_label(self.tr("&Owners of one side"))
        self.alike.set_choices(
            [
                (True, self.tr("have it cut one way")),
                (False, self.tr("each as they like, as far as it goes")),
            ]
        )
        self.speaks.set_label(self.tr("&Block sheet in"))
        self.speaks.set_choices(
            [
                ("window", self.tr("the window's language")),
                ("en", self.tr("English")),
                ("es", self.tr("Spanish")),
                ("both", self.tr("English and Spanish")),
            ]
        )
        self.lead.setText(
            self.tr(
                "F9 cuts what is open by way 1. What is asked as in any of these ways isn't boxed "
                "on the block's sheet."
            )
        )
        self.new.setText(self.tr("&New line… (Ctrl+N)"))
        self.drop.setText(self.tr("&Take it off (Del)"))
        self.back.setText(self.tr("As the ta&ble has it"))
        self.lines.set_name(self.tr("Usual lines"))

    def refresh(self) -> None:
        """Read lines and rules again."""
        species = self.species.value() or "beef"
        with self.bench.store.read() as work:
            self._ways = work.usual.ways(species)
            self._rules, self._block = work.usual.rules(), work.block.rules()
        self.alike.set_value(self._rules.cut_alike)
        self.speaks.set_value(self._block.sheet_words)
        own = {one.primal for one in self._ways}
        self.lines.show_rows(
            [
                Row(line, way.variant, way.primal in own)
                for way in usual_of(species, self._ways)
                for line in way.lines
            ]
        )

    def begin(self) -> None:
        """A new line."""
        chosen = self.lines.chosen()
        self._open(None, chosen.variant if chosen else 1)

    def edit(self, chosen: Row) -> None:
        """Change a line."""
        self._open(chosen.line, chosen.variant)

    def take_off(self) -> None:
        """The chosen line is no longer usual."""
        chosen = self.lines.chosen()
        if chosen is not None:
            self._write(chosen.line.primal, chosen, None)

    def as_the_table(self) -> None:
        """The chosen primal is cut as the species' table has it again."""
        chosen = self.lines.chosen()
        if chosen is not None and chosen.own:
            self._save(chosen.line.primal, {})

    def _open(self, line: "UsualLine | None", variant: int) -> None:
        known = catalogue(self.species.value() or "beef")
        self.dialog = dialog = UsualDialog(self.bench, known, line, variant, self)
        old = Row(line, variant, own=True) if line is not None else None
        dialog.accepted.connect(
            lambda: self._write(dialog.line.primal, old, Row(dialog.line, dialog.variant, own=True))
        )
        dialog.open()

    def _write(self, primal: str, old: Row | None, new: Row | None) -> None:
        """Put a line in the place of another; a primal of the table becomes the shop's own."""
        species = self.species.value() or "beef"
        if old is not None and old.line.primal != primal:
            self._save(old.line.primal, self._without(species, old.line.primal, old))
            old = None
        ways = self._without(species, primal, old, new)
        self._save(primal, ways)

    def _without(
        self, species: str, primal: str, old: Row | None, new: Row | None = None
    ) -> "dict[int, list[UsualLine]]":
        ways: dict[int, list[UsualLine]] = {}
        placed = False
        for way in usual_of(species, self._ways):
            if way.primal != primal:
                continue
            for line in way.lines:
                if old is None or (line, way.variant) != (old.line, old.variant):
                    ways.setdefault(way.variant, []).append(line)
                elif new is not None and new.variant == way.variant:
                    ways.setdefault(way.variant, []).append(new.line)
                    placed = True
        if new is not None and not placed:
            ways.setdefault(new.variant, []).append(new.line)
        return ways

    def _save(self, primal: str, ways: "dict[int, list[UsualLine]]") -> None:
        species = self.species.value() or "beef"
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.usual.save(species, primal, [ways[one] for one in sorted(ways)])
            work.commit()
        self.said.emit(self.tr("The usual is kept."))
        self.changed.emit()
        self.refresh()

    def _keep_rules(self) -> None:
        alike, speaks = self.alike.value(), self.speaks.value()
        if alike is None or speaks is None:
            return
        usual, block = replace(self._rules, cut_alike=alike), self._block
        block = replace(block, sheet_words=speaks)
        if (usual, block) == (self._rules, self._block):
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            kept = (work.usual.save_rules(usual), work.block.save_rules(block))
            if not any(isinstance(one, StaleEdit) for one in kept):
                work.commit()
        self.changed.emit()
        self.refresh()

    def _columns(self) -> list[Column[Row]]:
        return [
            Column("primal", lambda: self.tr("Primal"), self._primal, width=180),
            Column("way", lambda: self.tr("Way"), lambda one: str(one.variant), width=84),
            Column("cut", lambda: self.tr("Cut"), self._cut, stretch=True),
            Column("amount", lambda: self.tr("Amount"), self._amount, width=110),
            Column("finish", lambda: self.tr("Finish and package"), self._finish, width=240),
            Column("whose", lambda: self.tr("Whose"), self._whose, width=120),
        ]

    def _primal(self, one: Row) -> str:
        species = self.species.value() or "beef"
        return capital(self.bench.words.name(species, f"primal.{one.line.primal}"))

    def _cut(self, one: Row) -> str:
        known = catalogue(self.species.value() or "beef")
        return capital(cut_words(as_choice(one.line), known, self.bench.words))

    def _amount(self, one: Row) -> str:
        return str(one.line.count) if one.line.count else kind_words(one.line.amount)

    def _finish(self, one: Row) -> str:
        known = catalogue(self.species.value() or "beef")
        return finish_words(as_choice(one.line), known, self.bench.words)

    def _whose(self, one: Row) -> str:
        return self.tr("the shop's own") if one.own else self.tr("the table's")
