"""Where packages are wrapped by count: how many there are, and Enter. No weight, no label."""

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.fields import CountField
from desktop.look.space import GROUP, ROW_BLOCK, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from shared.shop.counted import MOST_COUNTED


class CountStrip(QWidget):
    """One field; Enter in it counts the packages of the chosen line.

    Signals:
        counted: carries how many packages there are.
        left: Esc; back to the lines.
        stepped: up or down; carries -1 or 1, to another line of the order.
    """

    counted = Signal(int)
    left = Signal()
    stepped = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.product = Words("group", parent=self)
        self.packages = CountField(self, required=True, least=1, most=MOST_COUNTED)
        self.packages.set_size("scale")
        self.packages.line.setMinimumHeight(ROW_BLOCK)
        self.add = button(self, main=True)
        self.add.setStyleSheet(f"min-height: {ROW_BLOCK - 6}px")  # wet hands
        self.caution = Words("small", "quiet", self).wrapped()
        self.complaint = Words("body", "complaint", self).wrapped()
        self.complaint.hide()
        across = row(gap=GROUP)
        across.addWidget(self.packages, 1, Qt.AlignmentFlag.AlignTop)
        across.addWidget(self.add, 0, Qt.AlignmentFlag.AlignVCenter)
        down = column(self, gap=TOGETHER)
        down.addWidget(self.product)
        down.addLayout(across)
        down.addWidget(self.caution)
        down.addWidget(self.complaint)
        self.add.clicked.connect(self.count_in)
        self.packages.line.installEventFilter(self)
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the strip."""
        self.packages.set_label(self.tr("&Packages by count"))
        self.add.setText(self.tr("&Add packages"))
        self.caution.setText(
            self.tr("By count: no weight, no label. The paper itself says NOT FOR SALE.")
        )

    def show_product(self, words: str) -> None:
        """What the packages hold."""
        self.product.setText(words)

    def complain(self, sentence: str) -> None:
        """Say in place why they were not added; "" takes the sentence away."""
        self.complaint.setText(sentence)
        self.complaint.setVisible(bool(sentence))

    def count_in(self) -> None:
        """Read the count; complain at the field when it can't be taken."""
        self.complain("")
        found = self.packages.value()
        if self.packages.problem() or found is None:
            self.packages.show_problem()
            self.packages.focus()
            return
        self.counted.emit(found)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Enter counts in, Esc goes back to the lines; up and down go from line to line."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.count_in()
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.left.emit()
                return True
            if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
                self.stepped.emit(1 if event.key() == Qt.Key.Key_Down else -1)
                return True
        return super().eventFilter(watched, event)
