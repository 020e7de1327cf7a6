"""The lines of one step, large, in a column that scrolls when it must."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QWidget

from desktop.block.line_row import LineRow
from desktop.block.line_words import large_words, small_words
from desktop.look.space import TOGETHER, column
from desktop.look.theme import theme_of
from desktop.panels.heading import Role, Words

if TYPE_CHECKING:
    from desktop.block.cutting import Cutting, Spot, Step
    from desktop.block.ticks import Ticks
    from printing.words import Words as Trade


class BoxedWords(Words):
    """What could hurt or be missed: in a thick box as on the sheet, not by its colour alone."""

    def __init__(self, role: Role, parent: QWidget | None = None) -> None:
        super().__init__("title", role, parent)
        self.setMargin(TOGETHER)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setPen(QPen(theme_of(self).color("ink"), 3))
        painter.drawRect(self.rect().adjusted(1, 1, -2, -2))


class StepView(QScrollArea):
    """Shows cautions and notes, or one step's lines.

    Signals:
        ticked: a line was ticked; carries its spot and whether it is made.
        all_ticked: Enter was pressed and no line is left to tick.
    """

    ticked = Signal(object, bool)
    all_ticked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: list[LineRow] = []
        self._said: list[str] = []
        self.pixels = 48
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def show_sentences(self, groups: "list[tuple[Role, list[str]]]") -> None:
        """Sentences in groups, the ones to mind in a box and their role's colour."""
        page = self._clean()
        for role, sentences in groups:
            for sentence in sentences:
                words = BoxedWords(role, page) if role else Words("title", role, page)
                words.wrapped()
                words.setStyleSheet(f"font-size: {self.pixels * 2 // 3}px")
                words.setText(sentence)
                only_as_high = words.sizePolicy()  # or lines wrapped narrower leave a blank screen
                only_as_high.setVerticalPolicy(QSizePolicy.Policy.Preferred)
                words.setSizePolicy(only_as_high)
                self._said.append(sentence)
                self._down.addWidget(words)
        self._down.addStretch(1)
        self.setWidget(page)

    def show_step(self, step: "Step", cutting: "Cutting", ticks: "Ticks", words: "Trade") -> None:
        """The lines of one primal of one side, or the table at the end."""
        page = self._clean()
        for spot, line in step.lines:
            made = LineRow(
                large_words(line, cutting.animal.species, words),
                small_words(line, cutting, words),
                line.note,
                differs=line.differs,
                pixels=self.pixels,
                parent=page,
            )
            made.tick.setChecked(ticks.is_made(cutting, spot))
            made.ticked.connect(lambda on, spot=spot: self._tick(spot, on))
            made.tick.entered.connect(self._go_on)
            self.rows.append(made)
            self._down.addWidget(made)
        self._down.addStretch(1)
        self.setWidget(page)

    def sentences(self) -> list[str]:
        """The sentences shown, top to bottom; none while a step's lines are shown."""
        return list(self._said)

    def more(self) -> bool:
        """Whether something stands below what is seen."""
        bar = self.verticalScrollBar()
        return bar.value() < bar.maximum()

    def read_on(self) -> None:
        """The next screenful, the last line seen still in it."""
        bar = self.verticalScrollBar()
        bar.setValue(bar.value() + bar.pageStep() * 4 // 5)

    def focus_first(self) -> bool:
        """Go to the first line not ticked; False when there is none."""
        for one in self.rows:
            if not one.tick.isChecked():
                one.tick.setFocus(Qt.FocusReason.OtherFocusReason)
                return True
        return False

    def _go_on(self) -> None:
        if not self.focus_first():
            self.all_ticked.emit()

    def _clean(self) -> QWidget:
        self.rows = []
        self._said = []
        page = QWidget()
        self._down = column(page, gap=TOGETHER)
        return page

    def _tick(self, spot: "Spot", on: bool) -> None:
        self.ticked.emit(spot, on)
