"""One line on the screen: a tick of 64 pixels, count and thickness large, the rest below."""

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from desktop.look.space import GROUP, ROW_BLOCK, STEP, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.look.type_scale import set_type
from desktop.panels.heading import Words


class Tick(QPushButton):
    """The tick; Space or Enter sets it and takes it back, Enter goes on to the next.

    Signals:
        entered: Enter was pressed, after the tick has changed.
    """

    entered = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setCheckable(True)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        set_type(self, "scale")
        self.toggled.connect(self._show)

    def sizeHint(self) -> QSize:
        return QSize(ROW_BLOCK, ROW_BLOCK)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers():
            self.click()
            self.entered.emit()
        else:
            super().keyPressEvent(event)

    def _show(self, on: bool) -> None:
        self.setText("✓" if on else "")


class LineRow(QWidget):
    """A line; one that differs from the usual stands bold in a box.

    Signals:
        ticked: the tick was set or taken back by the person.
    """

    ticked = Signal(bool)

    def __init__(
        self,
        large: str,
        small: str,
        note: str,
        *,
        differs: bool,
        pixels: int = 48,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.differs = differs
        self.tick = Tick(self)
        self.tick.setAccessibleName(large)
        self.tick.setAccessibleDescription(" ".join(part for part in (small, note) if part))
        self.tick.clicked.connect(self.ticked)
        self.large = Words("block", parent=self).wrapped()
        weight = 700 if differs else 400  # bold is for what differs
        self.large.setStyleSheet(f"font-size: {pixels}px; font-weight: {weight}")
        self.large.setText(large)
        self.small = Words("title", "quiet", self).wrapped()
        self.small.setText(small)
        self.note = Words("title", parent=self).wrapped()
        self.note.setText(note)
        self.note.setVisible(bool(note))
        self.note.setStyleSheet(f"font-size: {pixels * 2 // 3}px; font-weight: 700")
        across = row(self, gap=GROUP, edge=TOGETHER)
        across.addWidget(self.tick, alignment=Qt.AlignmentFlag.AlignTop)
        words = column(gap=STEP)
        for part in (self.large, self.small, self.note):
            words.addWidget(part)
        across.addLayout(words, 1)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        theme = theme_of(self)
        painter = QPainter(self)
        if self.differs:
            painter.setPen(QPen(theme.color("ink"), 2))
            painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
        else:
            painter.setPen(QPen(theme.color("line"), 1))
            painter.drawLine(0, self.height() - 1, self.width(), self.height() - 1)
