"""What may be asked of the chosen animal at the rail, each in its dialog, and its papers."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog

from desktop.bench import Target
from desktop.drafts import keep_draft, restore
from desktop.places import Place
from desktop.rail.animal_panel import AnimalPanel
from desktop.rail.calendar_dialog import CalendarDialog
from desktop.rail.check_in import CheckInDialog
from desktop.rail.correction import CorrectionDialog
from desktop.rail.deer import DeerDialog
from desktop.rail.dressing_dialog import DressingDialog
from desktop.rail.holding import hold_or_let_go
from desktop.rail.loss import LossDialog
from desktop.rail.missing import miss
from desktop.rail.tags import report_pdf, tag_pdf
from desktop.rail.telling_words import lost_words
from desktop.scales_dialog import ScalesDialog
from shared.shop.states import NOT_HERE

if TYPE_CHECKING:
    from desktop.preview import Kind
    from desktop.rail.fallen import Fallen
    from desktop.rail.seen import SeenAnimal
    from shared.shop.lots import Lot

CHECK_IN = (
    "check_in "  # what a half-typed check-in is called in the journal; an animal's id follows
)


class RailActions(Place):
    """The rail's dialogs; the place itself says what follows them."""

    panel: AnimalPanel
    dialog: QDialog | None

    def _written(self) -> None:
        raise NotImplementedError

    def _checked_in(self) -> None:
        raise NotImplementedError

    def _lost(self) -> None:
        raise NotImplementedError

    def plan_week(self) -> None:
        """The kill calendar; the kill days are asked for from there."""
        dialog = CalendarDialog(self.bench, self)
        self.dialog = dialog
        dialog.changed.connect(self.refresh)
        dialog.changed.connect(self.changed)
        dialog.go.connect(self.go)
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def book_more(self) -> None:
        """The producer of the chosen animal brings one more than he booked: a lot of its own."""
        from desktop.counter.book_dialog import BookDialog

        seen = self.panel.seen
        if seen is None:
            return
        with self.bench.store.read() as work:
            lot = work.lots.get(seen.animal.lot_id)
        if lot is not None:
            dialog = BookDialog(self.bench, self)
            dialog.as_well_as(lot)
            dialog.accepted.connect(lambda: self._came_too(dialog.lot))
            self._open(dialog)

    def _came_too(self, lot: "Lot | None") -> None:
        self._written()
        if lot is not None:
            self.open(Target(self.key, "animal", lot.animals[0].id))
            self.said.emit(
                self.tr("Booked as lot {number}: Enter checks it in.").format(number=lot.number)
            )

    def tell_weights(self) -> None:
        """What the day's shares weigh, to tell their owners, as at the Counter."""
        from desktop.counter.weights_dialog import WeightsDialog

        self.dialog = WeightsDialog(self.bench, self)
        self.dialog.open()

    def check_in(self) -> None:
        """Tag the chosen animal, or correct its tag, sex and age."""
        seen = self.panel.seen
        if seen is not None and seen.animal.state != "not_come":
            kind = DeerDialog if seen.animal.species == "deer" else CheckInDialog
            dialog = kind(self.bench, seen.animal, self)
            dialog.accepted.connect(self._checked_in)
            dialog.accepted.connect(lambda: self._tell_age(dialog.touched, seen))
            name, journal = f"{CHECK_IN}{seen.animal.id}", self.bench.journal
            typed = journal.found(name)
            if typed is not None:
                restore(dialog, typed)
            keep_draft(journal, name, dialog)
            self._open(dialog)

    def _tell_age(self, touched: "tuple[Fallen, ...]", seen: "SeenAnimal") -> None:
        if touched:
            said = lost_words(self.bench, seen, touched)
            self.bench.messages.tell(self.tr("Tell the owners"), said)

    def go_on_typing(self) -> None:
        """After a kill: the animal that was being checked in, with what was typed of it."""
        for name in reversed(self.bench.journal.names()):
            if not name.startswith(CHECK_IN):
                continue
            animal_id = int(name.removeprefix(CHECK_IN))
            self.open(Target(self.key, "animal", animal_id))
            seen = self.panel.seen
            if seen is not None and seen.animal.id == animal_id:
                self.check_in()
                return

    def correct(self) -> None:
        """Correct one of its weights."""
        seen = self.panel.seen
        if seen is not None and any(one.current for one in seen.weighings):
            dialog = CorrectionDialog(self.bench, seen, self)
            dialog.accepted.connect(lambda: self._corrected(dialog))
            self._open(dialog)

    def _corrected(self, dialog: CorrectionDialog) -> None:
        """Bills made from the first weight are told: they stay until the Office credits them."""
        self._written()
        made = dialog.made
        if made is None or made.kind == "live":
            return
        lot_id = dialog.seen.animal.lot_id
        with self.bench.store.read() as work:
            standing = work.bills.standing_bills(lot_id)
            bills = [one.number for one in work.bills.of_lot(lot_id) if one.id in standing]
        if bills:
            self.bench.messages.tell(
                self.tr("Already billed"),
                self.tr(
                    "Made from the weight before: bill {numbers}. The bills stand until the Office "
                    "(F6) credits them and issues them again."
                ).format(numbers=", ".join(str(one) for one in sorted(bills))),
            )

    def dress(self) -> None:
        """Say how the chosen carcass was dressed."""
        seen = self.panel.seen
        if seen is not None and seen.animal.state not in NOT_HERE:
            dialog = DressingDialog(self.bench, seen, self)
            dialog.accepted.connect(self._written)
            self._open(dialog)

    def set_scales(self) -> None:
        """The settings of this station's scales, with the line live."""
        self.panel.weights.strip.let_go()
        dialog = ScalesDialog(self.bench, self)
        dialog.finished.connect(lambda _how: self.panel.weights.strip.read())
        self._open(dialog)

    def hold(self) -> None:
        """Hold the chosen animal for a result, or let it go with what came of it."""
        seen = self.panel.seen
        if seen is None or seen.animal.state in NOT_HERE:
            return
        if hold_or_let_go(self.bench, seen):
            self._written()

    def missed(self) -> None:
        """The chosen animal was booked and wasn't brought."""
        seen = self.panel.seen
        if seen is not None and seen.animal.state == "booked" and miss(self.bench, seen):
            self._written()

    def lose(self) -> None:
        """Record a part that is gone."""
        seen = self.panel.seen
        if seen is not None and seen.animal.state not in NOT_HERE:
            dialog = LossDialog(self.bench, seen, self)
            dialog.accepted.connect(self._lost)
            self._open(dialog)

    def print_tags(self) -> None:
        """The tags of its sides, to look at and print."""
        seen = self.panel.seen
        if seen is None or not seen.animal.tag:
            return
        pdf = tag_pdf(self.bench, seen)
        if pdf is None:
            self.bench.messages.tell(
                self.tr("No tag"), self.tr("The owners' names don't fit on one tag.")
            )
            return
        self._show_paper(pdf, self.tr("Tag {tag}").format(tag=seen.animal.tag), "label")

    def print_report(self) -> None:
        """The producer's report of its lot, to look at and print."""
        seen = self.panel.seen
        if seen is not None:
            self.bench.work.run(report_pdf, self.bench, seen, then=self._show_report, key="report")

    def _show_report(self, pdf: bytes | None) -> None:
        if pdf is not None:
            self._show_paper(pdf, self.tr("Producer's report"), "paper")

    def _show_paper(self, pdf: bytes, title: str, kind: "Kind") -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.dialog = show_paper(self.bench, pdf, title, kind, self)

    def _open(self, dialog: QDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.dialog = dialog
        dialog.open()
