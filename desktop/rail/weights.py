"""The weights of one animal, typed or from the scale, one after another: Enter, the next."""

from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from desktop.fields import ChoiceField, WeightField
from desktop.look.space import GROUP, TOGETHER, column
from desktop.panels.heading import Words
from desktop.rail.doubts import believed
from desktop.rail.dressing import dressing_words, shrink_words
from desktop.rail.moving import weighed_on
from desktop.rail.scale_strip import ScaleStrip
from desktop.rail.seen import LIVE, WAYS, Place, SeenAnimal
from desktop.rail.weight_places import EVERY, Stage, due, label_words, shown, way_words
from shared.reading import Unread
from shared.shop.animals import Weighing
from shared.units import net

if TYPE_CHECKING:
    from collections.abc import Callable

    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen
    from shared.units import Weight

TAKEN = ("booked", "condemned", "refused", "cut", "not_come")
USUAL = "1,234 lb"
PADDING = 26


class _Fields(dict[Place, WeightField]):
    """A field for each weight, made when it is first asked for: few of the fifteen ever are."""

    def __init__(self, make: "Callable[[Place], WeightField]") -> None:
        super().__init__()
        self._make = make

    def __missing__(self, place: Place) -> WeightField:
        made = self._make(place)
        self[place] = made
        return made


class Weights(QWidget):
    """Live, hot and chilled weights with what they say; a kept weight is corrected elsewhere.

    Signals:
        kept: a weight was recorded; with the choices that the age brings down by it.
        done: Enter was pressed and every weight that is due is there.
    """

    kept = Signal(object)
    done = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.seen: SeenAnimal | None = None
        self.stage: Stage = "all"
        self._asking = False
        self._far = False
        self._from_scale: dict[Place, Weight] = {}
        self.way: ChoiceField[str] = ChoiceField(self)
        self.fields = _Fields(self._made)
        self.strip = ScaleStrip(bench, self)
        self.dressing = Words("body", "quiet", self).wrapped()
        self._grid = QGridLayout()
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(GROUP)
        self._grid.setVerticalSpacing(TOGETHER)
        down = column(self, gap=TOGETHER)
        for part in (self._grid, self.strip, self.dressing):
            down.addWidget(part) if isinstance(part, QWidget) else down.addLayout(part)
        self.way.changed.connect(self._show_fields)
        self.strip.steady.connect(self._fill)

    def retranslate(self) -> None:
        """Every word again."""
        self.way.set_label(self.tr("&Weighed by"))
        self.way.set_choices([(way, way_words(way)) for way in ("sides", "whole", "quarters")])
        for place, field in self.fields.items():
            field.set_label(label_words(place))
        self.strip.retranslate()
        self._show_dressing()

    def set_stage(self, stage: Stage) -> None:
        """What is weighed now: at the pen, the rail, the cooler, or all as it comes."""
        self.stage = stage
        self._show_fields()
        self._show_dressing()

    def set_far(self, *, on: bool) -> None:
        """Read across the room: the weights and what the scale says, nothing to be set."""
        self._far = on
        self.strip.set_far(on=on)
        self._show_fields()

    def show_animal(self, seen: SeenAnimal | None) -> None:
        """Show an animal's weights; what was typed for the same one stays."""
        same = self.seen is not None and seen is not None and self.seen.animal.id == seen.animal.id
        self.seen = seen
        if not same:
            self._from_scale = {}
        for place, field in self.fields.items():
            self._show_in(field, place, same=same)
        if seen is not None and (not same or seen.hot_ng() is not None):
            self.way.set_value(seen.way())
        begun = seen is not None and any(
            one.current and one.kind == "hot" for one in seen.weighings
        )
        self.way.set_read_only(seen is None or begun)
        self._show_fields()
        self._show_dressing()

    def focus_next(self) -> bool:
        """Go to the first weight that is still to be taken; False when there is none.

        The live weight isn't once the animal is dead: a deer came so, and of any other the hot
        weight says it.
        """
        if self.seen is None:
            return False
        dead = self.seen.animal.species == "deer" or any(
            one.current and one.kind == "hot" for one in self.seen.weighings
        )
        for place in due(self.stage, self.way.value() or "sides"):
            if dead and place == LIVE:
                continue
            if self.seen.weighing(place) is None and not self.fields[place].line.isReadOnly():
                self.fields[place].focus()
                self._fill()
                return True
        return False

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._show_fields()

    def _made(self, place: Place) -> WeightField:
        field = WeightField(self)
        field.set_size("scale")
        field.align_right()
        field.committed.connect(lambda: self._keep(place))
        field.set_label(label_words(place))
        self._show_in(field, place, same=False)
        return field

    def _show_in(self, field: WeightField, place: Place, *, same: bool) -> None:
        known = self.seen.weighing(place) if self.seen else None
        if known is not None or not same:
            field.set_value(known.weight if known else None)
        open_ = self.seen is not None and self.seen.animal.state not in TAKEN
        field.set_read_only(known is not None or not open_)

    def _show_fields(self) -> None:
        """Two beside each other, or one below the other where the type is large."""
        places = shown(self.stage, self.way.value() or "sides")
        metrics = self.fields[EVERY[0]].line.fontMetrics()
        texts = (USUAL, *(self.fields[place].text() for place in places))
        widest = max(metrics.horizontalAdvance(text) for text in texts)
        abreast = 2 if widest + PADDING <= (self.width() - GROUP) // 2 else 1
        laid: list[QWidget] = [self.fields[place] for place in places]
        if not self._far:
            laid.insert(1 if self.stage != "cooler" else 0, self.way)
        for one in (self.way, *self.fields.values()):
            self._grid.removeWidget(one)
            one.setVisible(one in laid)
        odd = self.stage == "cooler" and abreast == 2 and not self._far
        for at, one in enumerate(laid):
            spot = at if not odd or at == 0 else at + 1
            top = Qt.AlignmentFlag.AlignTop
            self._grid.addWidget(one, spot // abreast, spot % abreast, top)
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(1, abreast - 1)
        self._order_tabs()

    def _order_tabs(self) -> None:
        """Fields made late would come last under Tab, behind every button of the panel."""
        made = [self.fields[place].line for place in EVERY if place in self.fields]
        order = [self.way.box, *made, *self.strip.stops()]
        for before, after in pairwise(order):
            self.setTabOrder(before, after)

    def _show_dressing(self) -> None:
        seen = self.seen
        found = seen.dressed() if seen else None
        self.dressing.set_role("quiet" if found is None or found.finding == "usual" else "tight")
        if seen is not None and self.stage == "cooler":
            self.dressing.set_role("quiet")
            shrink = seen.catalogue.ranges.shrink
            taken = seen.taken_between()
            self.dressing.setText(shrink_words(seen.hot_ng(), seen.chilled_ng(), shrink, taken))
        elif found is not None:
            self.dressing.setText(dressing_words(found))
        elif seen is not None and seen.hot_ng() is not None:
            self.dressing.setText(self.tr("Without a live weight there is no dressing figure."))
        else:
            self.dressing.setText("")

    def _fill(self) -> None:
        """A load stands on the scale: it goes into the field that has the keyboard."""
        load = self.strip.use.load()
        for place, field in self.fields.items():
            if load is not None and field.line.hasFocus() and not field.line.isReadOnly():
                field.set_value(load)
                field.line.selectAll()
                self._from_scale[place] = load

    def _keep(self, place: Place) -> None:
        """A weight was typed or taken: ask if it can hardly be, keep it, and go on."""
        field, seen = self.fields[place], self.seen
        gross = field.value()
        if self._asking or seen is None or gross is None or seen.weighing(place) is not None:
            return
        if field.line.isReadOnly():
            return
        entered = field.line.hasFocus()  # before a question, which takes the keyboard for a while
        tare = self.strip.tare_of(place[0])
        weight = gross if tare is None else net(gross, tare)
        if isinstance(weight, Unread) or weight.count <= 0:
            field.complain(
                self.tr("A weight is more than nothing.")
                if tare is None
                else self.tr("Less than what it hangs on weighs.")
            )
            return
        if not self._sure(seen, place, gross, weight):
            field.complain(self.tr("Weigh it again."))
            field.focus()
            field.line.selectAll()
            return
        if self._record(seen, place, (gross, weight, tare)) and entered and not self.focus_next():
            self.done.emit()

    def _record(
        self, seen: SeenAnimal, place: Place, weights: "tuple[Weight, Weight, Weight | None]"
    ) -> bool:
        """Write it; False where another station was first."""
        gross, weight, tare = weights
        field, scale = self.fields[place], self.strip.use.scale
        kind, side, quarter = place
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.weighings.record(
                seen.animal.id,
                kind,
                weight,
                side=side,
                quarter=quarter,
                tare=tare,
                division=scale.division if scale else None,
                scale=scale.name if scale else "",
                source="scale" if self._from_scale.get(place) == gross else "typed",
            )
            fell: tuple[Fallen, ...] = ()
            if isinstance(made, Weighing):
                fell = weighed_on(work, seen.animal.id, self.bench.today())
                work.commit()
        if not isinstance(made, Weighing):
            field.complain(self.tr("Another station has weighed this one. Open it again."))
            return False
        if self._from_scale.pop(place, None) is not None:
            self.strip.use.take()
        self.kept.emit(fell)
        return True

    def _sure(self, seen: SeenAnimal, place: Place, gross: "Weight", weight: "Weight") -> bool:
        self._asking = True
        try:
            scale, typed = self.strip.use.scale, self._from_scale.get(place) != gross
            return believed(self.bench, seen, place, (gross, weight), scale, typed=typed)
        finally:
            self._asking = False


__all__ = ["EVERY", "WAYS", "Weights"]
