"""The weights of one animal, typed one after another: digits, Enter, the next."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from desktop.fields import ChoiceField, WeightField
from desktop.look.space import GROUP, TOGETHER, column
from desktop.panels.heading import Words
from desktop.rail.dressing import dressing_question, dressing_words
from desktop.rail.seen import LIVE, WAYS, Place, SeenAnimal
from shared.shop.animals import Weighing

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.units import Weight

TAKEN = ("booked", "condemned", "refused", "cut")
EVERY: tuple[Place, ...] = (LIVE, *(place for places in WAYS.values() for place in places))


class Weights(QWidget):
    """Live and hot weights with the dressing percentage; a kept weight is corrected elsewhere.

    Signals:
        kept: a weight was recorded.
        done: Enter was pressed and every weight is there.
    """

    kept = Signal()
    done = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.seen: SeenAnimal | None = None
        self._asking = False
        self.way: ChoiceField[str] = ChoiceField(self)
        self.fields: dict[Place, WeightField] = {place: WeightField(self) for place in EVERY}
        self.dressing = Words("body", "quiet", self).wrapped()
        self._lay_out()
        for place, field in self.fields.items():
            field.set_size("scale")
            field.align_right()
            field.committed.connect(lambda place=place: self._keep(place))
        self.way.changed.connect(self._show_fields)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(GROUP)
        grid.setVerticalSpacing(TOGETHER)
        grid.addWidget(self.fields[LIVE], 0, 0)
        grid.addWidget(self.way, 0, 1)
        for places in WAYS.values():
            for at, place in enumerate(places):
                grid.addWidget(self.fields[place], 1 + at // 2, at % 2)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        down = column(self, gap=TOGETHER)
        down.addLayout(grid)
        down.addWidget(self.dressing)

    def retranslate(self) -> None:
        """Every word again."""
        self.way.set_label(self.tr("Hot &weight by"))
        self.way.set_choices(
            [
                ("sides", self.tr("sides")),
                ("whole", self.tr("whole carcass")),
                ("quarters", self.tr("quarters")),
            ]
        )
        labels = {
            LIVE: self.tr("&Live"),
            ("hot", 0, ""): self.tr("H&ot, whole"),
            ("hot", 1, ""): self.tr("Hot, side &1"),
            ("hot", 2, ""): self.tr("Hot, side &2"),
            ("hot", 1, "fore"): self.tr("Side 1, fore"),
            ("hot", 1, "hind"): self.tr("Side 1, hind"),
            ("hot", 2, "fore"): self.tr("Side 2, fore"),
            ("hot", 2, "hind"): self.tr("Side 2, hind"),
        }
        for place, words in labels.items():
            self.fields[place].set_label(words)
        self._show_dressing()

    def show_animal(self, seen: SeenAnimal | None) -> None:
        """Show an animal's weights; what was typed for the same one stays."""
        same = self.seen is not None and seen is not None and self.seen.animal.id == seen.animal.id
        self.seen = seen
        for place, field in self.fields.items():
            known = seen.weighing(place) if seen else None
            if known is not None or not same:
                field.set_value(known.weight if known else None)
            open_ = seen is not None and seen.animal.state not in TAKEN
            field.set_read_only(known is not None or not open_)
        if seen is not None and (not same or seen.hot_ng() is not None):
            self.way.set_value(seen.way())
        begun = seen is not None and any(
            one.current and one.kind == "hot" for one in seen.weighings
        )
        self.way.set_read_only(seen is None or begun)
        self._show_fields()
        self._show_dressing()

    def focus_next(self) -> bool:
        """Go to the first weight that is still to be taken; False when there is none."""
        if self.seen is None:
            return False
        for place in (LIVE, *self._places()):
            if self.seen.weighing(place) is None and not self.fields[place].line.isReadOnly():
                self.fields[place].focus()
                return True
        return False

    def _places(self) -> tuple[Place, ...]:
        return WAYS[self.way.value() or "sides"]

    def _show_fields(self) -> None:
        shown = {LIVE, *self._places()}
        for place, field in self.fields.items():
            field.setVisible(place in shown)

    def _show_dressing(self) -> None:
        found = self.seen.dressed() if self.seen else None
        self.dressing.set_role("quiet" if found is None or found.finding == "usual" else "tight")
        if found is not None:
            self.dressing.setText(dressing_words(found))
        elif self.seen is not None and self.seen.hot_ng() is not None:
            self.dressing.setText(self.tr("Without a live weight there is no dressing figure."))
        else:
            self.dressing.setText("")

    def _keep(self, place: Place) -> None:
        """A weight was typed: ask if it can hardly be, keep it, and go on."""
        field, seen = self.fields[place], self.seen
        weight = field.value()
        if self._asking or seen is None or weight is None or seen.weighing(place) is not None:
            return
        if field.line.isReadOnly():
            return
        if weight.count <= 0:
            field.complain(self.tr("A weight is more than nothing."))
            return
        if not self._sure(seen, place, weight):
            field.complain(self.tr("Weigh it again."))
            field.focus()
            return
        entered = field.line.hasFocus()
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.weighings.record(
                seen.animal.id, place[0], weight, side=place[1], quarter=place[2]
            )
            if isinstance(made, Weighing):
                work.commit()
        if not isinstance(made, Weighing):
            field.complain(self.tr("Another station has weighed this one. Open it again."))
            return
        self.kept.emit()
        if entered and not self.focus_next():
            self.done.emit()

    def _sure(self, seen: SeenAnimal, place: Place, weight: "Weight") -> bool:
        found = seen.dressed({place: weight})
        if found is None or found.finding != "question":
            return True
        self._asking = True
        try:
            return self.bench.messages.ask(
                self.tr("Dressing"),
                dressing_question(found),
                self.tr("It is right"),
                self.tr("Weigh again"),
            )
        finally:
            self._asking = False
