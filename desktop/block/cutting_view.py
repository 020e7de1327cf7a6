"""One carcass on the block's screen: a step at a time, large, with two large buttons."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

from desktop.block.cutting import Cutting, Step
from desktop.block.large_button import LargeButton
from desktop.block.letters import LEAST_LETTERS, MOST_LETTERS, letter_pixels
from desktop.block.minding import cautions, notes
from desktop.block.step_view import StepView
from desktop.block.ticks import Ticks
from desktop.block.told import told_words
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.heading import Words, line

if TYPE_CHECKING:
    from desktop.bench import Bench


class CuttingView(QWidget):
    """Step 0 is what to mind; then the primals of each side in cutting order; then the table.

    Signals:
        ticked: carries a spot and whether it is made.
        acknowledged, started, finished: the main button's work at the first and last step.
        left: back to the list.
        sheet_wanted: the sheet on paper.
        changes_read: the counter's changes were read.
        report_wanted: the block has something to report.
    """

    ticked = Signal(object, bool)
    acknowledged = Signal()
    started = Signal()
    finished = Signal()
    left = Signal()
    sheet_wanted = Signal()
    changes_read = Signal()
    report_wanted = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.cutting: Cutting | None = None
        self.ticks = Ticks()
        self.at = 0
        self._build()
        self._connect()

    def _build(self) -> None:
        self.heading = Words("block", parent=self)
        self.about = Words("group", "quiet", self).wrapped()
        self.view = StepView(self)
        self.back = LargeButton(self)
        self.main = LargeButton(self, main=True)
        self.report = LargeButton(self, size="group")
        self.paper = LargeButton(self, size="group")
        self.leave = LargeButton(self, size="group")
        foot = row(gap=GROUP)
        foot.addWidget(self.back, 1)
        foot.addWidget(self.main, 2)
        foot.addWidget(self.report)
        foot.addWidget(self.paper)
        foot.addWidget(self.leave)
        down = column(self, gap=TOGETHER, edge=EDGE)
        down.setContentsMargins(EDGE, TOGETHER, EDGE, GROUP)
        for part in (self.heading, self.about, line(self)):
            down.addWidget(part)
        down.addWidget(self.view, 1)
        down.addLayout(foot)

    def _connect(self) -> None:
        self.back.clicked.connect(lambda: self.go(self.at - 1))
        self.main.clicked.connect(self.go_on)
        self.paper.clicked.connect(self.sheet_wanted)
        self.report.clicked.connect(self.report_wanted)
        self.leave.clicked.connect(self.left)
        self.view.ticked.connect(self.ticked)
        bar = self.view.verticalScrollBar()
        bar.valueChanged.connect(self._scrolled)
        bar.rangeChanged.connect(self._scrolled)
        self.view.all_ticked.connect(lambda: self.main.setFocus(Qt.FocusReason.OtherFocusReason))
        keys = {
            "PgDown": self.go_on,
            "PgUp": lambda: self.go(self.at - 1),
            "Ctrl+Return": self.go_on,
            "Ctrl+P": self.sheet_wanted.emit,
            "Ctrl+R": self.report_wanted.emit,
            "Ctrl++": lambda: self.letters(1),
            "Ctrl+=": lambda: self.letters(1),
            "Ctrl+-": lambda: self.letters(-1),
            "Escape": self.left.emit,
        }
        for key, do in keys.items():
            made = QShortcut(QKeySequence(key), self)
            made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            made.activated.connect(do)

    def show_cutting(self, cutting: Cutting, ticks: Ticks, at: int = 0) -> None:
        """Show a carcass at a step."""
        self.cutting, self.ticks, self.at = cutting, ticks, at
        self.go(at)

    def read_again(self, cutting: Cutting) -> None:
        """The same carcass after a tick: what is shown stays, with the focus where it is."""
        self.cutting = cutting

    def retranslate(self) -> None:
        """Every word again."""
        self.back.setText(self.tr("&Back"))
        self.report.setText(self.tr("Report (Ctrl+R)"))
        self.paper.setText(self.tr("Sheet (Ctrl+P)"))
        self.leave.setText(self.tr("List (Esc)"))
        self.main.setText(self.tr("&Start cutting"))
        if self.cutting is not None:
            self.go(self.at)

    def unread(self) -> bool:
        """Whether a sheet waits to be read by the block."""
        cutting = self.cutting
        return cutting is not None and any(
            one.acknowledged < one.sheet for one in cutting.orders if one.state == "released"
        )

    def letters(self, by: int) -> None:
        """Larger or smaller letters; the station keeps it."""
        now = self.bench.settings.now.block_letters + by
        self.bench.settings.change(block_letters=min(max(now, LEAST_LETTERS), MOST_LETTERS))
        self.go(self.at)

    def go(self, at: int) -> None:
        """Show a step, as far as it may be gone to."""
        cutting = self.cutting
        if cutting is None:
            return
        locked = self.unread() or cutting.animal.state != "on_block"
        last = 0 if locked else len(cutting.steps)
        self.at = min(max(at, 0), last)
        self.view.pixels = letter_pixels(self, self.bench.settings.now.block_letters)
        self.heading.setStyleSheet(f"font-size: {self.view.pixels * 2 // 3}px")
        words = self.bench.words
        if cutting.told and not self.unread():
            told = [it for one in cutting.told for it in told_words(one, cutting.catalogue, words)]
            self.view.show_sentences([("contested", told)])
        elif self.at == 0:
            self.view.show_sentences(
                [("contested", cautions(cutting, words)), ("", notes(cutting))]
            )
        else:
            step = cutting.steps[self.at - 1]
            self.view.show_step(step, cutting, self.ticks, words)
        self._say(cutting)
        self.back.setEnabled(self.at > 0)
        self.report.setEnabled(cutting.animal.state == "on_block")
        if self._may_take_the_keyboard() and not self.view.focus_first():
            self.main.setFocus(Qt.FocusReason.OtherFocusReason)

    def _may_take_the_keyboard(self) -> bool:
        """Not from another place, nor from who types in the bar: the next space would tick a line.

        Qt gives the keyboard to what isn't shown too.
        """
        here = QApplication.focusWidget()
        if here is None or not here.isVisible() or here.window() is not self.window():
            return self.isVisible()
        return self.isVisible() and self.isAncestorOf(here)

    def go_on(self) -> None:
        """The main button: read, start, the next step, finish."""
        cutting = self.cutting
        if cutting is None:
            return
        if (self.unread() or cutting.told) and self.view.more():
            self.view.read_on()
        elif self.unread():
            self.acknowledged.emit()
        elif cutting.told:
            self.changes_read.emit()
        elif cutting.animal.state == "hanging":
            self.started.emit()
        elif self.at < len(cutting.steps):
            self.go(self.at + 1)
        else:
            self.finished.emit()

    def step(self) -> Step | None:
        """The step that is shown; None before the knife."""
        if self.cutting is None or not 0 < self.at <= len(self.cutting.steps):
            return None
        return self.cutting.steps[self.at - 1]

    def main_button(self) -> QPushButton:
        """The button that goes on."""
        return self.main

    def _scrolled(self) -> None:
        if self.cutting is not None:
            self._say(self.cutting)

    def _say(self, cutting: Cutting) -> None:
        animal = cutting.animal
        tag = self.tr("Tag {tag}").format(tag=animal.tag)
        self.heading.setText(f"{tag}: {self._step_words(cutting, self.at)}")
        owners = ", ".join(dict.fromkeys(one.owner for one in cutting.orders))
        number = cutting.sheet.number if cutting.sheet else 0
        self.about.setText(
            self.tr("{owners} · sheet {number} · step {at} of {all}").format(
                owners=owners, number=number, at=self.at + 1, all=len(cutting.steps) + 1
            )
        )
        told = bool(cutting.told) and not self.unread()
        if told:
            changed = self.tr("changed at the counter")  # in an f-string lupdate wouldn't find it
            self.heading.setText(f"{tag}: {changed}")
        if (self.unread() or told) and self.view.more():
            self.main.setText(self.tr("&Read on"))
        elif self.unread():
            self.main.setText(self.tr("I have &read sheet {number}").format(number=number))
        elif told:
            self.main.setText(self.tr("I have &read the changes"))
        elif animal.state == "hanging":
            self.main.setText(self.tr("&Start cutting"))
        elif self.at < len(cutting.steps):
            after = self._step_words(cutting, self.at + 1)
            self.main.setText(self.tr("&Next: {step}").format(step=after))
        else:
            self.main.setText(self.tr("&Finish: the carcass is cut"))

    def _step_words(self, cutting: Cutting, at: int) -> str:
        if at == 0:
            return self.tr("before the knife")
        step = cutting.steps[at - 1]
        if not step.primal:
            return self.tr("ground and bones")
        name = self.bench.words.name(cutting.animal.species, f"primal.{step.primal}")
        return self.tr("side {side}, {primal}").format(side=step.side, primal=name)
