"""Block minutes: how many a day has, and what a side and a line of each class of cut take."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import CountField, FormDialog
from desktop.panels.heading import Words
from desktop.rail.week_dialog import KINDS
from printing.words.place_words import capital
from shared.shop.block_minutes import CLASSES, CutClass
from shared.shop.calendar import Plan

if TYPE_CHECKING:
    from desktop.bench import Bench

MOST_MINUTES = 600
WHOLE_DAY = 24 * 60 * 20  # twenty at the block around the clock


class MinutesDialog(FormDialog):
    """A row for each animal: its side, then each class of cut; empty is not counted."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2 + len(CLASSES))
        self.setMinimumWidth(980)
        self._bench = bench
        with bench.store.read() as work:
            self._before = work.calendar.plan()
        self.a_day = CountField(most=WHOLE_DAY)
        self.a_side = {kind: CountField(most=MOST_MINUTES) for kind in KINDS}
        self.a_cut: dict[tuple[str, CutClass], CountField] = {
            (kind, of): CountField(most=MOST_MINUTES) for kind in KINDS for of in CLASSES
        }
        self.heads = [Words("small", "quiet", self) for _ in range(2 + len(CLASSES))]
        self.animals = {kind: Words("body", parent=self) for kind in KINDS}
        self.grid.add(self.a_day, 2)
        self.grid.end_row()
        for heading in self.heads:
            self.grid.add_widget(heading, 1)
        for kind in KINDS:
            self.grid.add_widget(self.animals[kind], 1)
            self.grid.add(self.a_side[kind])
            for of in CLASSES:
                self.grid.add(self.a_cut[kind, of])
        self.retranslate()
        self._fill()

    def _fill(self) -> None:
        plan = self._before
        self.a_day.set_value(plan.block_minutes)
        for kind, field in self.a_side.items():
            field.set_value(plan.minutes_a_side.get(kind))
        for (kind, of), field in self.a_cut.items():
            field.set_value(plan.minutes_a_cut.get(kind, {}).get(of))

    def retranslate(self) -> None:
        words = self._bench.words
        self.set_words(
            self.tr("Block minutes"),
            self.tr(
                "Minutes that breaking a side takes, and that each line of an order takes on each "
                "side. Who hasn't answered counts as the house's usual. Empty: not counted."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.a_day.set_label(self.tr("&Block minutes a day"))
        classes: dict[CutClass, str] = {
            "roasts": self.tr("Roasts"),
            "steaks": self.tr("Steaks, chops"),
            "ground": self.tr("Ground, stew"),
            "finishes": self.tr("Finishes"),
        }
        side = self.tr("A side")
        for heading, text in zip(self.heads[1:], (side, *classes.values()), strict=True):
            heading.setText(text)
        for kind, animal in self.animals.items():
            name = words.name("", f"species.{kind}")
            animal.setText(capital(name))
            self.a_side[kind].set_name(f"{side}, {name}")
            for of, text in classes.items():
                self.a_cut[kind, of].set_name(f"{text}, {name}")

    def attempt(self) -> str:
        plan = self._plan()
        if plan != self._before:
            with self._bench.store.work(self._bench.person, self._bench.station) as work:
                work.calendar.save_plan(plan)
                work.commit()
        return ""

    def _plan(self) -> Plan:
        """What is entered; animals without a row here stay as they were."""
        before = self._before
        side = {kind: n for kind, n in before.minutes_a_side.items() if kind not in KINDS}
        side |= {kind: n for kind, field in self.a_side.items() if (n := field.value())}
        cut = {kind: one for kind, one in before.minutes_a_cut.items() if kind not in KINDS}
        for kind in KINDS:
            given = {of: n for of in CLASSES if (n := self.a_cut[kind, of].value())}
            if given:
                cut[kind] = given
        day = self.a_day.value() or None
        return replace(before, block_minutes=day, minutes_a_side=side, minutes_a_cut=cut)
