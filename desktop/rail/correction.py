"""A weight that was wrong: the right one and the reason; the first one stays on record."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField, WeightField
from desktop.rail.dressing import dressing_question
from desktop.rail.place_words import place_words
from desktop.rail.seen import SeenAnimal
from shared.shop.animals import Weighing
from shared.units import weight_text

if TYPE_CHECKING:
    from desktop.bench import Bench

LONGEST = 380  # pixels a weight of one side takes with its place


class CorrectionDialog(FormDialog):
    """Which weight, what it really is, and why; `made` is the weight that holds now."""

    def __init__(self, bench: "Bench", seen: SeenAnimal, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.bench = bench
        self.seen = seen
        self.made: Weighing | None = None
        self.which: ChoiceField[int] = ChoiceField(self, required=True)
        self.weight = WeightField(self, required=True)
        self.reason = TextField(self, required=True)
        for field in (self.which, self.weight, self.reason):
            self.grid.add(field)
        self.widen(LONGEST)
        self.retranslate()
        current = [one for one in seen.weighings if one.current]
        if current:
            self.which.set_value(current[-1].id)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Correct a weight"),
            self.tr("The first weight stays on record beside the right one."),
            self.tr("&Correct it"),
            self.tr("&Leave it"),
        )
        self.which.set_label(self.tr("&Which weight"))
        self.weight.set_label(self.tr("&Right weight"))
        self.reason.set_label(self.tr("Re&ason"))
        self.which.set_choices(
            [
                (
                    one.id,
                    f"{place_words((one.kind, one.side, one.quarter))}: {weight_text(one.weight)}",
                )
                for one in self.seen.weighings
                if one.current
            ]
        )

    def attempt(self) -> str:
        which, weight = self.which.value(), self.weight.value()
        old = next(one for one in self.seen.weighings if one.id == which)
        assert weight is not None
        found = self.seen.dressed({(old.kind, old.side, old.quarter): weight})
        if (
            found is not None
            and found.finding == "question"
            and not self.bench.messages.ask(
                self.tr("Dressing"),
                dressing_question(found),
                self.tr("It is right"),
                self.tr("Weigh again"),
            )
        ):
            self.weight.complain(self.tr("Weigh it again."))
            return ""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.weighings.correct(old.id, weight, self.reason.value() or "")
            if isinstance(made, Weighing):
                work.commit()
                self.made = made
                return ""
        if made.code == "not_positive":
            self.weight.complain(self.tr("A weight is more than nothing."))
            return ""
        return self.tr("Another station has corrected this weight. Leave this and look again.")
