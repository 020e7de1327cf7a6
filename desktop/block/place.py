"""Block, the place: which carcass, then its steps, for the one who holds the knife."""

import logging
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QStackedWidget, QWidget

from db.problems import StoreUnavailable
from desktop.block.carcasses import Waiting, carcass_columns, waiting
from desktop.block.cutting import Cutting, Spot, read_cutting
from desktop.block.cutting_view import CuttingView
from desktop.block.finishing import acknowledge, finish, read_changes, start, tick
from desktop.block.held import held_text
from desktop.block.ticks import Ticks, spots_of, unmade
from desktop.look.space import EDGE, GROUP, ROW_BLOCK, TOGETHER, column
from desktop.look.type_scale import set_type
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.places import Place
from desktop.tables import RowsModel, Table

if TYPE_CHECKING:
    from desktop.bench import Bench, Target
    from desktop.block.report_dialog import ReportDialog
    from desktop.preview import Preview

log = logging.getLogger(__name__)
LOOK_EVERY = 3000  # milliseconds


class BlockPlace(Place):
    """The carcass in cutting order, for the one who holds the knife."""

    key = "block"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self.preview: Preview | None = None
        self._mark: tuple[object, ...] = ()
        self.dialog: ReportDialog
        self._watch = QTimer(self)
        self._watch.setInterval(LOOK_EVERY)
        self._watch.timeout.connect(self.look_again)
        self._watch.start()
        self._build()
        self._connect()
        self.retranslate()
        self.refresh()

    def _build(self) -> None:
        self.list = QWidget(self)
        self.heading = Words("title", parent=self.list)
        self.lead = Words("body", "quiet", self.list)
        self.table: Table[Waiting] = Table(
            RowsModel(carcass_columns(self.bench)), self.list, height=ROW_BLOCK
        )
        set_type(self.table, "title")
        self.table.spare(("days",))  # in large type the owners' names need the room
        self.empty = EmptyState(self.list)
        self.view = CuttingView(self.bench, self)
        down = column(self.list, gap=TOGETHER)
        down.setContentsMargins(EDGE, GROUP, EDGE, GROUP)
        for part in (self.heading, self.lead):
            down.addWidget(part)
        down.addWidget(self.table, 1)
        down.addWidget(self.empty, 1)
        self.stack = QStackedWidget(self)
        self.stack.addWidget(self.list)
        self.stack.addWidget(self.view)
        column(self).addWidget(self.stack)

    def _connect(self) -> None:
        self.table.picked.connect(lambda one: self.show_carcass(one.animal.id))
        self.view.left.connect(self.show_list)
        self.view.acknowledged.connect(self._acknowledge)
        self.view.started.connect(self._start)
        self.view.finished.connect(self._finish)
        self.view.ticked.connect(self._tick)
        self.view.sheet_wanted.connect(self.show_sheet)
        self.view.changes_read.connect(self._read_changes)
        self.view.report_wanted.connect(self.report)

    def title(self) -> str:
        return self.tr("Block")

    def first_focus(self) -> QWidget:
        if self.stack.currentWidget() is self.list:
            return self.table if self.table.rows.rowCount() else self
        ticks = [one.tick for one in self.view.view.rows if not one.tick.isChecked()]
        return ticks[0] if ticks else self.view.main_button()

    def retranslate(self) -> None:
        self.heading.setText(self.tr("Block"))
        self.lead.setText(self.tr("Enter opens a carcass. A new sheet is read before the knife."))
        self.table.set_name(self.tr("Carcasses to cut"))
        self.empty.set_words(
            self.tr("Nothing to cut"),
            self.tr(
                "Carcasses stand here once they hang (Rail, F3) and their sheet is released "
                "(Counter, F2)."
            ),
        )
        self.view.retranslate()

    def refresh(self) -> None:
        """Read the list again, and the open carcass."""
        chosen = self.table.chosen()
        rows = waiting(self.bench)
        keep = next((one for one in rows if chosen and one.animal.id == chosen.animal.id), None)
        self.table.show_rows(rows, keep=keep)
        self.table.setVisible(bool(rows))
        self.lead.setVisible(bool(rows))
        self.empty.setVisible(not rows)
        if self.stack.currentWidget() is self.view and self.view.cutting is not None:
            self.show_carcass(self.view.cutting.animal.id, self.view.at)

    def open(self, what: "Target") -> None:
        """Show a carcass."""
        if what.kind == "animal":
            self.show_carcass(what.id)

    def show_list(self) -> None:
        """Back to the carcasses."""
        self.stack.setCurrentWidget(self.list)
        self.refresh()
        self.first_focus().setFocus()

    def show_carcass(self, animal_id: int, at: int = 0) -> None:
        """Open a carcass; one already on the block goes on at its first open line."""
        cutting = read_cutting(self.bench, animal_id)
        if cutting is None or not cutting.orders or cutting.animal.state == "cut":
            self.show_list()
            return
        self.stack.setCurrentWidget(self.view)
        self._mark = self._mark_of(cutting)
        self.view.show_cutting(cutting, Ticks(set(cutting.ticked)), at)

    def show_sheet(self) -> None:
        """The sheet on paper, as it was released."""
        cutting = self.view.cutting
        if cutting is None or cutting.sheet is None:
            return
        with self.bench.store.read() as work:
            paper = work.papers.get(cutting.sheet.paper_id)
        if paper is None:
            return
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        title = self.tr("Block sheet {number}, lot {lot}").format(
            number=cutting.sheet.number, lot=cutting.lot.number
        )
        self.preview = show_paper(self.bench, paper.pdf, title, parent=self)

    def _acknowledge(self) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        acknowledge(self.bench, cutting)
        self.changed.emit()
        self.show_carcass(cutting.animal.id)

    def _start(self) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        held = held_text(self.bench, cutting.animal.id)
        if held:
            self.bench.messages.tell(self.tr("Held"), held)
            return
        if not start(self.bench, cutting):
            self._stale()
            return
        self.changed.emit()
        self.show_carcass(cutting.animal.id, 1)

    def _tick(self, spot: Spot, made: bool) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        if tick(self.bench, cutting, self.view.ticks, spot, made=made):
            self.changed.emit()
            again = read_cutting(self.bench, cutting.animal.id)
            if again is not None:
                self.view.read_again(again)
                self._mark = self._mark_of(again)

    def report(self) -> None:
        """What the block has to say of the carcass: measured, lost, cut otherwise."""
        cutting = self.view.cutting
        if cutting is None or cutting.animal.state != "on_block":
            return
        from desktop.block.report_dialog import ReportDialog

        self.dialog = ReportDialog(self.bench, cutting, self.view.step(), self)
        self.dialog.accepted.connect(self._reported)
        self.dialog.open()

    def _reported(self) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        found, touched = self.dialog.found, self.dialog.touched
        if found.kind == "cut_otherwise" and not found.withdrawn:
            spots = spots_of(cutting, found.line)
            for spot in sorted(one for one in spots if one[1] == found.side):
                tick(self.bench, cutting, self.view.ticks, spot, made=True)
        self.changed.emit()
        self.show_carcass(cutting.animal.id, self.view.at)
        if touched:
            owners = ", ".join(dict.fromkeys(one.owner for one in touched))
            said = self.tr("Kept and planned again. The counter rings: {owners}.")
            self.said.emit(said.format(owners=owners))
        else:
            self.said.emit(self.tr("Kept and planned again. Nothing else changes."))

    def _read_changes(self) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        read_changes(self.bench, cutting)
        self.show_carcass(cutting.animal.id, self.view.at)

    def look_again(self) -> None:
        """Whether the counter or another station has changed what is being cut; show it then."""
        cutting = self.view.cutting
        if cutting is None or self.stack.currentWidget() is not self.view or not self.isVisible():
            return
        try:
            mark = self._mark_of(cutting)
        except StoreUnavailable as refusal:  # nobody asked for anything: looked for again later
            log.warning("not looked at: %s", refusal.code)
            return
        if mark != self._mark:
            self.show_carcass(cutting.animal.id, self.view.at)

    def _mark_of(self, cutting: Cutting) -> tuple[object, ...]:
        with self.bench.store.read() as work:
            orders = work.orders.of_lot(cutting.lot.id)
            sheets = len(work.orders.sheets(cutting.lot.id))
        return (sheets, *((one.id, one.last_change) for one in orders))

    def _finish(self) -> None:
        cutting = self.view.cutting
        assert cutting is not None
        left = unmade(cutting, self.view.ticks)
        if left and not self.bench.messages.ask(
            self.tr("Not ticked"),
            self.tr("Lines not ticked as made: {count}. Is the carcass cut all the same?").format(
                count=left
            ),
            self.tr("It is cut"),
            self.tr("Leave it"),
        ):
            return
        done = finish(self.bench, cutting)
        if done is None:
            self._stale()
            return
        tag = cutting.animal.tag
        said = self.tr("Tag {tag} is cut.").format(tag=tag)
        if done:
            owners = ", ".join(one.owner for one in done)
            said += " " + self.tr("To be wrapped: {owners}.").format(owners=owners)
        self.said.emit(said)
        self.changed.emit()
        self.show_list()

    def _stale(self) -> None:
        self.bench.messages.tell(
            self.tr("Not changed"),
            self.tr("Another station has changed this carcass. It is read again now."),
        )
        self.show_list()
