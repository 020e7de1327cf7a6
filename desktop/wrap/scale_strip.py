"""Where a package is weighed: by the scale or typed, net or gross with tare, pieces, and Enter."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.fields import CountField, WeightField
from desktop.look.space import GROUP, ROW_BLOCK, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.wrap.table_scale import TableScale
from shared.scales.reading import on_division
from shared.shop.packages import MOST_EQUAL
from shared.units import Unread, Weight, net, weight_text

if TYPE_CHECKING:
    from desktop.bench import Bench


class ScaleStrip(QWidget):
    """The fields of one package. Enter in any of them weighs it in.

    What lies still on the scale stands in the weight's field until something is typed there.

    Signals:
        weighed: a package is weighed; carries net weight, tare or None, pieces, and how many
            packages of that weight there are.
        left: Esc; back to the lines.
        stepped: up or down in the weight; carries -1 or 1, to another line of the order.
    """

    weighed = Signal(object, object, int, int)
    left = Signal()
    stepped = Signal(int)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.scale = TableScale(bench, self)
        self._from_scale: Weight | None = None
        self.product = Words("group", parent=self)
        self.weight = WeightField(self, required=True)
        self.weight.set_size("scale")
        self.tare = WeightField(self)
        self.pieces = CountField(self, most=999)
        self.equal = CountField(self, least=1, most=MOST_EQUAL)
        self.add = button(self, main=True)
        self.weight.line.setMinimumHeight(ROW_BLOCK)
        self.add.setStyleSheet(f"min-height: {ROW_BLOCK - 6}px")  # wet hands
        self.complaint = Words("body", "complaint", self).wrapped()
        self.complaint.hide()
        across = row(gap=GROUP)
        across.addWidget(self.weight, 3, Qt.AlignmentFlag.AlignTop)
        across.addWidget(self.tare, 2, Qt.AlignmentFlag.AlignTop)
        across.addWidget(self.pieces, 1, Qt.AlignmentFlag.AlignTop)
        across.addWidget(self.equal, 1, Qt.AlignmentFlag.AlignTop)
        across.addWidget(self.add, 0, Qt.AlignmentFlag.AlignTop)  # a complaint moves it not
        down = column(self, gap=TOGETHER)
        down.addWidget(self.product)
        down.addLayout(across)
        down.addWidget(self.scale)
        down.addWidget(self.complaint)
        self.add.clicked.connect(self.weigh_in)
        self.tare.changed.connect(self._say_gross)
        self.scale.steady.connect(self.fill)
        for field in (self.weight, self.tare, self.pieces, self.equal):
            field.line.installEventFilter(self)

    def retranslate(self) -> None:
        """Every word of the strip."""
        self.tare.set_label(self.tr("&Tare"))
        self.pieces.set_label(self.tr("&Pieces"))
        self.equal.set_label(self.tr("Eq&ual packages"))
        self.equal.hint("1")
        self.add.setText(self.tr("&Add package"))
        self.scale.retranslate()
        self._say_gross()

    def show_product(self, words: str) -> None:
        """What the next package holds."""
        self.product.setText(words)

    def complain(self, sentence: str) -> None:
        """Say in place why it was not added; "" takes the sentence away."""
        self.complaint.setText(sentence)
        self.complaint.setVisible(bool(sentence))

    def clear(self) -> None:
        """Ready for the next package; the tare stays, as the tray does."""
        self.weight.set_value(None)
        self.pieces.set_value(None)
        self.equal.set_value(None)
        self.scale.use.take()
        self._from_scale = None

    def forget(self) -> None:
        """What was typed for another order; what lies on the scale stays, and so does the tare."""
        if self._from_scale is None or self.weight.value() != self._from_scale:
            self.weight.set_value(None)
        self.pieces.set_value(None)
        self.equal.set_value(None)

    def fill(self) -> None:
        """A load lies still on the scale: it stands in the field, unless something was typed."""
        load, shown, tare = self.scale.load(), self.weight.value(), self.tare.value()
        if load is None or (tare is not None and load <= tare):
            return  # nothing, or the empty tray
        if not (self.weight.is_empty() or shown == self._from_scale):
            return
        self._from_scale = load
        self.weight.set_value(load)
        if self.weight.line.hasFocus():
            self.weight.line.selectAll()

    def weigh_in(self) -> None:
        """Read the scale's fields; complain at the one that can't be taken."""
        self.complain("")
        for field in (self.weight, self.tare, self.pieces, self.equal):
            if field.problem():
                field.show_problem()
                field.focus()
                return
        typed, tare = self.weight.value(), self.tare.value()
        if typed is None:
            return
        weight: Weight | Unread = typed if tare is None else net(typed, tare)
        if isinstance(weight, Unread):
            self.tare.complain(self.tr("The tare is more than the gross weight."))
            self.tare.focus()
        elif weight.count <= 0:
            self.weight.complain(self.tr("A package weighs more than nothing."))
            self.weight.focus()
        elif self._believed(typed):
            self.weighed.emit(weight, tare, self.pieces.value() or 0, self.equal.value() or 1)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Enter weighs in, Esc goes back to the lines; up and down go from line to line."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.weigh_in()
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.left.emit()
                return True
            if watched is self.weight.line and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
                self.stepped.emit(1 if event.key() == Qt.Key.Key_Down else -1)
                return True
        return super().eventFilter(watched, event)

    def _believed(self, gross: Weight) -> bool:
        """A weight the scale can't show is asked about (NIST Handbook 44: steps of its division).

        1.03 lb on a scale of 0.02 lb is one.
        """
        scale = self.scale.scale()
        if scale is None or scale.division is None or on_division(gross, scale.division):
            return True
        question = self.tr(
            "{weight} can't stand on {scale}: it shows steps of {division}. Is the weight right?"
        ).format(weight=weight_text(gross), scale=scale.name, division=weight_text(scale.division))
        yes, no = self.tr("It is right"), self.tr("Weigh again")
        return self.bench.messages.ask(self.tr("The scale's divisions"), question, yes, no)

    def _say_gross(self) -> None:
        self.weight.set_label(
            self.tr("&Net weight") if self.tare.is_empty() else self.tr("&Gross weight")
        )
