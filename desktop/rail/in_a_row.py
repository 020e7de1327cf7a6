"""Tag after tag in a row: a scanned or typed tag leads to the next weight of its animal."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, TextField
from desktop.look.space import GROUP, row
from desktop.rail.state_words import state_words
from desktop.rail.weight_places import STAGES, Stage, stage_words

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.bench import Bench
    from shared.shop.animals import Animal

PADDING = 26
ARROW = 56  # what a list of stages takes beside its words
GONE = ("cut", "condemned", "refused", "not_come")


class InARow(QWidget):
    """What is weighed, and the tag of whose turn it is.

    Twenty carcasses take the tag, Enter, the digits, Enter each, and no other key.

    Signals:
        stage_chosen: what is weighed from now on.
        found: an animal's id, for the tag that was typed or scanned.
    """

    stage_chosen = Signal(str)
    found = Signal(int)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.going = False  # the animal at hand was led to by its tag
        self.stage: ChoiceField[Stage] = ChoiceField(self)
        self.tag = TextField(self, most=60)
        self.set_widths()
        across = row(self, gap=GROUP)
        across.addWidget(self.stage)
        across.addWidget(self.tag)
        self.stage.changed.connect(self._staged)
        self.tag.line.returnPressed.connect(self._look)

    def set_widths(self) -> None:
        """As wide as the longest stage needs; a tag needs room for twelve digits at the most."""
        self.stage.box.setStyleSheet("")
        metrics = self.stage.line.fontMetrics()
        wide = max(metrics.horizontalAdvance(stage_words(one)) for one in STAGES) + ARROW
        self.stage.setFixedWidth(wide)
        self.tag.setFixedWidth(min(wide, metrics.horizontalAdvance("0" * 12) + PADDING))

    def fit(self, room: int) -> bool:
        """Across the room: the longest stage whole and a tag of four digits, in that width.

        False where that doesn't go in the letters there are: then the stage's are smaller.
        """
        longest = max((stage_words(one) for one in STAGES), key=len)
        self.stage.box.setStyleSheet("")
        self.stage.box.ensurePolished()
        font = QFont(self.stage.line.font())
        label = self.tag.label.sizeHint().width()
        tag = max(self.tag.line.fontMetrics().horizontalAdvance("0000") + PADDING, label)
        asked = font.pixelSize()
        while QFontMetrics(font).horizontalAdvance(longest) + ARROW + tag + GROUP > room:
            font.setPixelSize(font.pixelSize() - 1)
            if font.pixelSize() <= asked // 2:
                break
        fits = font.pixelSize() == asked
        if not fits:
            self.stage.box.setStyleSheet(f"font-size: {font.pixelSize()}px;")
        wide = QFontMetrics(font).horizontalAdvance(longest) + ARROW
        self.stage.setFixedWidth(min(wide, room - GROUP - tag))
        self.tag.setFixedWidth(min(room - GROUP - self.stage.width(), tag * 2))
        return fits

    def retranslate(self) -> None:
        """Every word again."""
        self.stage.set_label(self.tr("We&igh"))
        self.stage.set_choices([(one, stage_words(one)) for one in STAGES])
        if self.stage.value() is None:
            self.stage.set_value("all")
        self.tag.set_label(self.tr("Tag (F7)"))
        self.set_widths()

    def next_tag(self) -> None:
        """The animal is done: the next tag."""
        self.tag.set_text("")
        self.tag.focus()

    def _staged(self) -> None:
        stage = self.stage.value()
        if stage is not None:
            self.stage_chosen.emit(stage)

    def _look(self) -> None:
        tag = self.tag.text().strip()
        if not tag:
            return
        with self.bench.store.read() as work:
            known = work.animals.by_tag(tag)
        animals = [one for one in known if one.state not in GONE]
        if not animals:
            self.tag.complain(self._not_here(tag, known))
            self.tag.line.selectAll()
            return
        self.going = True
        self.found.emit(animals[0].id)

    def _not_here(self, tag: str, known: "Sequence[Animal]") -> str:
        """What became of the last animal of that tag, where there was one."""
        if not known:
            return self.tr("No animal here has tag {tag}.").format(tag=tag)
        state = state_words(known[0].state, known[0].regime, self.bench.words)
        return self.tr("Tag {tag} isn't here any more: {state}.").format(tag=tag, state=state)
