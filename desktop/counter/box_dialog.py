"""Where a product's packages lie, and since when in a freezer."""

from datetime import timedelta
from typing import TYPE_CHECKING, Literal

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField
from desktop.fields.dates import moment_text
from shared.shop.freezing import MOST_HOURS

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtCore import QEvent

    from desktop.bench import Bench
    from desktop.counter.leaving import Leaving

InIt = Literal["as_told", "frozen", "freezer", "none"]
Whose = Literal["this", "all"]


class BoxDialog(FormDialog):
    """In which box a product's packages lie, where it stands, and since when it freezes.

    What was wrapped by count lies in no box: only of its freezing is asked. `hours` are the
    shop's until a package is frozen.
    """

    def __init__(
        self,
        bench: "Bench",
        leaving: "Leaving",
        hours: int,
        here: "Sequence[Leaving]",
        parent: QWidget | None = None,
    ) -> None:
        """`here` is all that is here, of which the same can be said in one stroke."""
        super().__init__(parent, columns=2)
        self._bench = bench
        self._leaving = leaving
        self._until_frozen = hours
        self._here = here
        self.box_name = TextField(self, most=20)
        self.place = TextField(self, most=40)
        self.in_it: ChoiceField[InIt] = ChoiceField(self, required=True)
        self.hours = CountField(self, most=MOST_HOURS)
        self.whose: ChoiceField[Whose] = ChoiceField(self, required=True)
        boxed = bool(leaving.packages)
        for field in (self.box_name, self.place, self.in_it, self.hours):
            self.grid.add(field)
        self.grid.add(self.whose, 2)
        self.whose.setVisible(len(here) > 1)
        for field in (self.box_name, self.place):
            field.setVisible(boxed)
            field.setEnabled(boxed)
        self.grid.close_up()
        self.in_it.changed.connect(self._only_in_it)
        self.retranslate()
        self.in_it.set_value("as_told" if boxed else "frozen")
        self.whose.set_value("this")
        self._only_in_it()

    def retranslate(self) -> None:
        product = self._leaving.product
        self.set_words(product, self._said(), self.tr("&Keep"), self.tr("&Leave it"))
        self.box_name.set_label(self.tr("&Box"))
        self.place.set_label(self.tr("&Freezer or locker"))
        self.in_it.set_label(self.tr("F&reezing"))
        said: list[tuple[InIt, str]] = [
            ("as_told", self.tr("as it was")),
            ("frozen", self.tr("frozen through")),
            ("freezer", self.tr("in a freezer")),
            ("none", self.tr("in no freezer")),
        ]
        self.in_it.set_choices(said if self._leaving.packages else said[1:])
        self.hours.set_label(self.tr("&Hours in it already"))
        self.whose.set_label(self.tr("Freezing is said &of"))
        this, all_of_it = self.tr("this product"), self.tr("all that is here")
        self.whose.set_choices([("this", this), ("all", all_of_it)])

    def showEvent(self, event: "QEvent") -> None:
        super().showEvent(event)
        if not self._leaving.packages:
            self.in_it.focus()

    def _said(self) -> str:
        """What was said of it last, by whom and when."""
        said = self._leaving.said
        if said is None or said.at is None:
            return ""
        text = self.tr("{person} said on {day}: in no freezer.")
        if said.since is not None:
            text = self.tr("{person} said on {day}: in a freezer since {since}.")
        language = self._bench.words.language
        since = "" if said.since is None else moment_text(said.since, language)
        return text.format(person=said.person, day=moment_text(said.at, language), since=since)

    def _only_in_it(self) -> None:
        self.hours.set_read_only(self.in_it.value() != "freezer")

    def attempt(self) -> str:
        boxed = [one.id for one in self._leaving.packages]
        said = self._here if self.whose.value() == "all" else (self._leaving,)
        in_it, hours = self.in_it.value(), self.hours.value() or 0
        if in_it == "frozen":
            hours = self._until_frozen
        box, place = (self.box_name.value() or "").strip(), self.place.value() or ""
        if boxed and not box and (place or in_it == "as_told"):
            self.box_name.complain(self.tr("Say in which box it lies."))
            return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if boxed and box:
                work.hand_overs.put(boxed, box, place)
            if in_it != "as_told":
                since = None if in_it == "none" else self._bench.now() - timedelta(hours=hours)
                work.freezing.put([each.id for one in said for each in one.packages], since)
                work.freezing.put_counts([each.id for one in said for each in one.counted], since)
            work.commit()
        return ""
