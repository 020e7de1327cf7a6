"""Rail, the place: animals arrive, are weighed and passed, and hang."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Qt, QTimer
from PySide6.QtGui import QHideEvent, QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import QDialog, QScrollArea, QStackedWidget, QWidget

from desktop.bench import Target
from desktop.fields import ChoiceField
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.rail.actions import RailActions
from desktop.rail.animal_columns import animal_columns
from desktop.rail.animal_panel import AnimalPanel
from desktop.rail.far import SPARED, FarMode
from desktop.rail.in_a_row import InARow
from desktop.rail.loss import LossDialog
from desktop.rail.meant import meant, meant_words
from desktop.rail.missing import was_killed
from desktop.rail.moving import moved_on
from desktop.rail.seen import see
from desktop.rail.state_words import IN_HAND, reason_words
from desktop.rail.telling_words import gone_words, lost_words
from desktop.tables import RowsModel, Table
from shared.shop.animals import Animal
from shared.shop.lists import AnimalRow
from shared.shop.states import AnimalState, Move

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen


class RailPlace(RailActions):
    """Animals arrive here: tags, live and hot weights, inspection, and what hangs where."""

    key = "rail"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self.dialog: QDialog | None = None
        self._fresh = True
        self._build()
        self._connect()
        self.retranslate()
        self.refresh()

    def _build(self) -> None:
        self.heading = Words("title", parent=self)
        self.which: ChoiceField[str] = ChoiceField(self)
        self.in_a_row = InARow(self.bench, self)
        large = theme_of(self).percent > 125
        self.which.setFixedWidth(self.in_a_row.stage.width() + (0 if large else 40))
        self.shown_by_tag = 0
        # Each is born where it stands: what is moved elsewhere is dressed by the style twice.
        self.stack = QStackedWidget(self)
        self.around = around = QScrollArea(self)
        self.table: Table[AnimalRow] = Table(RowsModel(animal_columns(self.bench)), self.stack)
        self.table.spare(SPARED)
        self.empty = EmptyState(self.stack)
        self.panel = AnimalPanel(self.bench, around.viewport())
        self.stack.addWidget(self.table)
        self.stack.addWidget(self.empty)
        top = row(gap=GROUP)
        top.addWidget(self.heading, 1, Qt.AlignmentFlag.AlignBottom)
        top.addWidget(self.in_a_row, alignment=Qt.AlignmentFlag.AlignTop)
        top.addWidget(self.which, alignment=Qt.AlignmentFlag.AlignTop)
        self.near = button(self, quiet=True)
        self.near.hide()
        top.addWidget(self.near, alignment=Qt.AlignmentFlag.AlignBottom)
        self._top = top
        left = column(gap=TOGETHER)
        left.setContentsMargins(EDGE, GROUP, GROUP, GROUP)
        left.addLayout(top)
        left.addWidget(self.stack, 1)
        self._left = left
        across = row(self, gap=0)
        across.addLayout(left, 1)
        around.setWidgetResizable(True)
        around.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        around.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.hold_around(self.panel.width())
        around.setWidget(self.panel)
        across.addWidget(around)
        self.far = FarMode(self)

    def _connect(self) -> None:
        self.table.moved.connect(self._moved)
        self.table.picked.connect(self._picked)
        self.which.changed.connect(self.refresh)
        self.panel.check_in_wanted.connect(self.check_in)
        self.panel.correction_wanted.connect(self.correct)
        self.panel.loss_wanted.connect(self.lose)
        self.panel.tags_wanted.connect(self.print_tags)
        self.panel.move_wanted.connect(self.move_on)
        self.panel.dressing_wanted.connect(self.dress)
        self.panel.hold_wanted.connect(self.hold)
        self.panel.scales_wanted.connect(self.set_scales)
        self.panel.report_wanted.connect(self.print_report)
        self.panel.calendar_wanted.connect(self.plan_week)
        self.panel.cooler_wanted.connect(self.show_cooler)
        self.panel.day_weights_wanted.connect(self.tell_weights)
        self.panel.more_wanted.connect(self.book_more)
        self.panel.measures_wanted.connect(self.grade)
        self.panel.hook_said.connect(self._hook)
        self.panel.widened.connect(self.hold_around)
        self.panel.weights.kept.connect(self._weighed)
        self.panel.weights.done.connect(self._animal_done)
        self.in_a_row.stage_chosen.connect(self.panel.weights.set_stage)
        self.in_a_row.found.connect(self._tagged)
        self._take_keys()

    def _take_keys(self) -> None:
        for keys, do in (
            ("F7", self.in_a_row.tag.focus),
            ("F8", self.correct),
            ("F9", self.lose),
            ("Ctrl+D", self.dress),
            ("Ctrl+E", self.set_scales),
            ("Ctrl+H", self.hold),
            ("Ctrl+P", self.print_tags),
            ("Ctrl+K", self.plan_week),
            ("Ctrl+N", self.book_more),
            ("Ctrl+L", self.show_cooler),
            ("Ctrl+W", self.tell_weights),
            ("Ctrl+G", self.grade),
            ("Ctrl+M", self.missed),
            ("Escape", self._escape),
        ):
            made = QShortcut(QKeySequence(keys), self)
            made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            made.activated.connect(do)

    def title(self) -> str:
        return self.tr("Rail")

    def first_focus(self) -> QWidget:
        return self.table if self.table.rows.rowCount() else self.which

    def retranslate(self) -> None:
        self.heading.setText(self.tr("Rail"))
        self.which.set_label(self.tr("&Show"))
        self.which.set_choices(
            [
                ("in_hand", self.tr("all not yet cut")),
                ("today", self.tr("due today")),
                ("done", self.tr("cut or gone")),
            ]
        )
        if self.which.value() is None:
            self.which.set_value("in_hand")
        self.near.setText(self.tr("Usual (Esc)"))
        self.in_a_row.retranslate()
        self.table.set_name(self.tr("Animals"))
        self.empty.set_words(
            self.tr("No animals here"),
            self.tr("Animals booked at the counter (F2) stand here on their day."),
        )
        self.panel.retranslate()

    def refresh(self) -> None:
        """Read the list again; the chosen animal stays chosen."""
        chosen = self.table.chosen()
        rows = self._rows()
        keep = next((one for one in rows if chosen and one.id == chosen.id), None)
        with QSignalBlocker(self.table):  # the animal is read once, below
            self.table.show_rows(rows, keep=keep)
        self.stack.setCurrentWidget(self.table if rows else self.empty)
        self.panel.weights.strip.read()
        if self.shown_by_tag:
            self.panel.show_animal(see(self.bench, self.shown_by_tag))
        else:
            self._moved(self.table.chosen())

    def open(self, what: "Target") -> None:
        """Show an animal, wherever it stands."""
        with self.bench.store.read() as work:
            animal = work.animals.get(what.id)
        if animal is None:
            return
        self.shown_by_tag = 0
        self.which.set_value("done" if animal.state in ENDED else "in_hand")
        self.refresh()
        self._show_animal(animal.id)

    def take_up(self, what: "Target") -> None:
        """Show the animal an order is most likely about, and say of how many it is."""
        if what.kind != "order":
            return
        seen = self.panel.seen
        found = meant(self.bench, what.id, seen.animal.id if seen else 0)
        if found:
            self.open(Target(self.key, "animal", found[0].id))
        if len(found) > 1:
            self.said.emit(meant_words(found, self.bench.words))

    def hold_around(self, panel: int) -> None:
        """What the panel stands in is as wide as it, and the bar beside it in large type."""
        self.around.setFixedWidth(panel + 12)

    def put_near(self, *, below: bool) -> None:
        """The way back out of large letters: beside the tag, or below where it is too narrow."""
        side = Qt.AlignmentFlag.AlignRight if below else Qt.AlignmentFlag.AlignBottom
        for layout in (self._top, self._left):
            layout.removeWidget(self.near)
        (self._left if below else self._top).addWidget(self.near, alignment=side)

    def show_cooler(self) -> None:
        """What hangs and until when, and the temperatures of its rooms."""
        from desktop.rail.cooler_dialog import CoolerDialog

        dialog = CoolerDialog(self.bench, self)
        dialog.go.connect(self.open)
        dialog.changed.connect(self._written)
        self._open(dialog)

    def grade(self) -> None:
        """Keep the measures of the chosen carcass."""
        from desktop.rail.grades_dialog import GradesDialog
        from shared.carcass.gradings import ASKED

        seen = self.panel.seen
        if seen is not None and seen.animal.species in ASKED:
            self._open(GradesDialog(self.bench, seen, self))

    def move_on(self, move: Move) -> None:
        """Move the chosen animal to another state, with a reason where one is needed."""
        seen = self.panel.seen
        if seen is None:
            return
        if move.end == "not_come":
            self.missed()
            return
        reason = ""
        if move.needs_reason:
            said = self.bench.messages.ask_reason(self.tr("Reason"), reason_words(move))
            if said is None:
                return
            reason = said
        end: AnimalState = next(state for state in (*IN_HAND, *ENDED) if state == move.end)
        killed = end == "condemned" and was_killed(self.bench, seen)
        made = moved_on(self.bench, seen, end, reason, killed=killed)
        if made is None:
            self._stale()
        elif end in ENDED:
            said = gone_words(self.bench, seen, made.lost)
            self.bench.messages.tell(self.tr("Tell the owners"), said)
        self._written()
        if self.in_a_row.going and end in ("hanging", *ENDED):
            self.in_a_row.next_tag()
        elif self.panel.seen is not None:
            self.panel.focus_move()
        if made is not None and made.by_age:
            self._say_age()

    def _escape(self) -> None:
        if not self.far.leave():
            self.table.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not event.spontaneous():
            self.panel.weights.strip.go_on()
        if self._fresh:
            self._fresh = False
            QTimer.singleShot(0, self, self.go_on_typing)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        if not event.spontaneous():
            self.panel.weights.strip.pause()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.far.on:
            self.far.dress()

    def _moved(self, row: AnimalRow | None) -> None:
        if self.table.hasFocus():
            self.shown_by_tag, self.in_a_row.going = 0, False
        if self.shown_by_tag:
            return
        self.panel.show_animal(see(self.bench, row.id) if row else None)

    def _picked(self, row: AnimalRow) -> None:
        if row.state == "booked":
            self.check_in()
        elif not self.panel.weights.focus_next():
            self.panel.focus_move()

    def _tagged(self, animal_id: int) -> None:
        """A tag was typed or scanned: its animal, in the list or not, and its next weight."""
        self._show_animal(animal_id)
        seen = self.panel.seen
        if seen is None:
            return
        if seen.animal.state == "booked":
            self.check_in()
        elif not self.panel.weights.focus_next() and not self.panel.focus_forward():
            self.in_a_row.tag.complain(self.tr("Everything due is done."))
            self.in_a_row.tag.line.selectAll()

    def _show_animal(self, animal_id: int) -> None:
        """Choose it in the list; one the list doesn't reach is shown beside it all the same."""
        at = [n for n, one in enumerate(self.table.rows.rows()) if one.id == animal_id]
        self.shown_by_tag = 0
        if at:
            self.table.choose(at[0])
        self.panel.show_animal(see(self.bench, animal_id))
        self.shown_by_tag = 0 if at else animal_id

    def _animal_done(self) -> None:
        if self.in_a_row.going:
            self.in_a_row.next_tag()
        else:
            self.panel.focus_move()

    def _checked_in(self) -> None:
        self._written()
        if not self.panel.weights.focus_next():
            self.table.setFocus()

    def _weighed(self, fell: "tuple[Fallen, ...]") -> None:
        self._written()
        if fell:
            self._say_age()

    def _say_age(self) -> None:
        """On the line below, so that the next carcass isn't held up."""
        self.said.emit(
            self.tr(
                "Age not known: cut as 30 months and over. Owners stand on the counter's list to "
                "ring."
            )
        )

    def _written(self) -> None:
        """Read it again; the keyboard stays here though the button that had it is made anew."""
        had = self.window().focusWidget()
        self.refresh()
        if had is not None and self.panel.isAncestorOf(had) and not had.isVisibleTo(self.panel):
            self.panel.focus_move()
        self.changed.emit()

    def _lost(self) -> None:
        seen, dialog = self.panel.seen, self.dialog
        assert seen is not None
        assert isinstance(dialog, LossDialog)
        touched = dialog.touched
        self._written()
        if not touched:
            self.said.emit(self.tr("Recorded. Every choice still stands."))
            return
        said = lost_words(self.bench, seen, touched)
        self.bench.messages.tell(self.tr("Tell the owners"), said)

    def _hook(self, where: str) -> None:
        seen = self.panel.seen
        assert seen is not None
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.animals.change(replace(seen.animal, place=where))
            if isinstance(made, Animal):
                work.commit()
        if not isinstance(made, Animal):
            self._stale()
        self._written()

    def _stale(self) -> None:
        self.bench.messages.tell(
            self.tr("Not changed"),
            self.tr("Another station has changed this animal. Look again and repeat it."),
        )

    def _rows(self) -> list[AnimalRow]:
        which = self.which.value() or "in_hand"
        today = self.bench.today()
        with self.bench.store.read() as work:
            if which == "done":
                return list(work.animals.list(states=ENDED, descending=True))
            if which == "today":
                return list(work.animals.list(states=IN_HAND, start=today, end=today))
            return list(work.animals.list(states=IN_HAND))


ENDED: tuple[AnimalState, ...] = ("cut", "condemned", "refused", "not_come")
