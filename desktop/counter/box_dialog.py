"""Where a product's packages lie, and since when in a freezer."""

from datetime import timedelta
from typing import TYPE_CHECKING, Literal

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField
from shared.shop.freezing import MOST_HOURS

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.counter.leaving import Leaving

InIt = Literal["as_told", "freezer", "none"]


class BoxDialog(FormDialog):
    """In which box a product's packages lie, where it stands, and since when it freezes."""

    def __init__(self, bench: "Bench", leaving: "Leaving", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self._bench = bench
        self._leaving = leaving
        self.box_name = TextField(self, required=True, most=20)
        self.place = TextField(self, most=40)
        self.in_it: ChoiceField[InIt] = ChoiceField(self, required=True)
        self.hours = CountField(self, most=MOST_HOURS)
        for field in (self.box_name, self.place, self.in_it, self.hours):
            self.grid.add(field)
        self.in_it.changed.connect(self._only_in_it)
        self.retranslate()
        self.in_it.set_value("as_told")
        self._only_in_it()

    def retranslate(self) -> None:
        self.set_words(self._leaving.product, "", self.tr("&Keep"), self.tr("&Leave it"))
        self.box_name.set_label(self.tr("&Box"))
        self.place.set_label(self.tr("&Freezer or locker"))
        self.in_it.set_label(self.tr("F&reezing"))
        self.in_it.set_choices(
            [
                ("as_told", self.tr("as it was")),
                ("freezer", self.tr("in a freezer")),
                ("none", self.tr("in no freezer")),
            ]
        )
        self.hours.set_label(self.tr("&Hours in it already"))

    def _only_in_it(self) -> None:
        self.hours.set_read_only(self.in_it.value() != "freezer")

    def attempt(self) -> str:
        ids = [one.id for one in self._leaving.packages]
        in_it, hours = self.in_it.value(), self.hours.value() or 0
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            work.hand_overs.put(ids, self.box_name.value() or "", self.place.value() or "")
            if in_it != "as_told":
                since = self._bench.now() - timedelta(hours=hours) if in_it == "freezer" else None
                work.freezing.put(ids, since)
            work.commit()
        return ""
