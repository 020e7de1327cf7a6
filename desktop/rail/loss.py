"""A part that is gone: which, on which side, how much, by whom and why; and whom it touches."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField, WeightField
from desktop.rail.seen import SeenAnimal
from desktop.rail.telling import Lost, Planned, planned, tell
from shared.carcass.carcass import Gone
from shared.shop.animals import Loss
from shared.shop.arrival import LossHow

if TYPE_CHECKING:
    from collections.abc import Sequence

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen


class LossDialog(FormDialog):
    """Records a loss; `touched` says afterwards which choices no longer stand."""

    def __init__(self, bench: "Bench", seen: SeenAnimal, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.seen = seen
        self.touched: tuple[Fallen, ...] = ()
        self._ahead: Planned | None = None
        self.part: ChoiceField[str] = ChoiceField(self, required=True)
        self.side: ChoiceField[int] = ChoiceField(self, required=True)
        self.weight = WeightField(self)
        self.before: ChoiceField[bool] = ChoiceField(self, required=True)
        self.how: ChoiceField[LossHow] = ChoiceField(self, required=True)
        self.reason = TextField(self, required=True)
        self.grid.add(self.part)
        self.grid.add(self.side)
        self.grid.add(self.weight)
        self.grid.add(self.before)
        self.grid.add(self.how)
        self.grid.add(self.reason)
        self.part.changed.connect(self._side_of_part)
        self.part.committed.connect(self._side_of_part)
        self.retranslate()
        self.before.set_value(False)
        self.how.set_value(self.hows()[0])
        self._plan_ahead()

    def _plan_ahead(self) -> None:
        """Plan the lot as it stands while the part is being typed."""
        self.bench.work.run(
            planned,
            self.bench.store,
            self.seen.animal.lot_id,
            self.seen.catalogue,
            then=self._planned_ahead,
            key="rail.loss",
            owner=self,
        )

    def _planned_ahead(self, found: Planned) -> None:
        self._ahead = found

    def hows(self) -> tuple[LossHow, ...]:
        """Who may take a part: where there is no inspector nothing is condemned."""
        if self.seen.animal.regime == "inspected":
            return ("condemned", "trimmed", "discarded")
        return ("trimmed", "discarded")

    def retranslate(self) -> None:
        self.set_words(
            self.tr("A part is gone"),
            self.tr("Trimmed off, condemned or discarded. The owners' plans are made again."),
            self.tr("&Record it"),
            self.tr("&Leave it"),
        )
        self.part.set_label(self.tr("&Part"))
        self.side.set_label(self.tr("&Side"))
        self.weight.set_label(self.tr("Po&unds (empty: all of it)"))
        self.before.set_label(self.tr("Taken &off"))
        self.how.set_label(self.tr("&How"))
        hows: dict[LossHow, str] = {
            "condemned": self.tr("condemned by the inspector"),
            "trimmed": self.tr("trimmed by the plant"),
            "discarded": self.tr("discarded by the plant"),
        }
        self.how.set_choices([(one, hows[one]) for one in self.hows()])
        self.reason.set_label(self.tr("Re&ason"))
        self.part.set_choices(self._offered())
        self.side.set_choices(
            [
                (1, self.tr("Side 1")),
                (2, self.tr("Side 2")),
                (0, self.tr("The animal")),
            ]
        )
        self.before.set_choices(
            [
                (False, self.tr("after the hot weight")),
                (True, self.tr("before the hot weight")),
            ]
        )

    def _offered(self) -> list[tuple[str, str]]:
        """Every part, and every primal whole."""
        species, words = self.seen.animal.species, self.bench.words
        parts = [
            (f"part.{code}", words.name(species, f"part.{code}"))
            for code in self.seen.catalogue.parts
        ]
        whole = self.tr("all of the {primal}")
        parts += [
            (f"primal.{code}", whole.format(primal=words.name(species, f"primal.{code}")))
            for code in self.seen.catalogue.primals
            if self._parts_of(f"primal.{code}")
        ]
        return sorted(parts, key=lambda one: one[1])

    def attempt(self) -> str:
        key, side, weight = self.part.value() or "", self.side.value(), self.weight.value()
        assert side is not None
        parts, per_side = self._parts_of(key), self._per_side(key)
        if per_side != (side != 0):
            self.side.complain(
                self.tr("Say which side.") if per_side else self.tr("There is one to an animal.")
            )
            return ""
        if weight is not None and len(parts) > 1:
            self.weight.complain(self.tr("Pounds are said of one part; name it."))
            return ""
        reason, before = self.reason.value() or "", bool(self.before.value())
        gone = [Gone(part, side, weight, reason, before) for part in parts]
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            if self._record(work, gone, Lost(reason, key, parts)):
                work.commit()
            else:
                self.reason.complain(self.tr("Say why."))
        return ""

    def _record(self, work: "Work", gone: "Sequence[Gone]", lost: Lost) -> bool:
        """Keep each part, who took it, and what the owners must hear."""
        seen, how = self.seen, self.how.value()
        question = work.lots.question(seen.animal.lot_id)
        for one in gone:
            made = work.animals.record_loss(seen.animal.id, one)
            if not isinstance(made, Loss):
                return False
            if how is not None:
                work.arrivals.found_by(made.id, how)
        self.touched = tell(work, seen, question, "part_gone", lost, self._ahead)
        return True

    def _parts_of(self, key: str) -> tuple[str, ...]:
        """The part named, or the parts of a side in the primal named."""
        kind, _, code = key.partition(".")
        if kind == "part":
            return (code,)
        parts = self.seen.catalogue.parts.values()
        return tuple(one.code for one in parts if one.primal == code and one.per == "side")

    def _per_side(self, key: str) -> bool:
        return all(self.seen.catalogue.parts[one].per == "side" for one in self._parts_of(key))

    def _side_of_part(self) -> None:
        key = self.part.value()
        if key is not None and not self._per_side(key):
            self.side.set_value(0)
        elif key is not None and self.side.value() == 0:
            self.side.set_value(None)
