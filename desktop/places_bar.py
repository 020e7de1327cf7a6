"""The bar of places: a beam with five marks, and the sliding weight under the one you are in."""

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFontMetrics,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QShortcut,
)
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QWidget

from desktop.look.space import GROUP, STEP, TOGETHER, row
from desktop.look.theme import theme_of
from desktop.place_list import ENTRIES, Entry

HEIGHT = 48
BEAM = 38


class PlaceButton(QAbstractButton):
    """One place's word with its function key beside it."""

    def __init__(self, entry: Entry, parent: QWidget) -> None:
        super().__init__(parent)
        self.entry = entry
        self.setCheckable(True)
        self.setAutoExclusive(True)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.retranslate()

    def retranslate(self) -> None:
        """The place's word in the window's language."""
        self.setText(self.entry.title())
        self.setAccessibleName(self.entry.title())
        self.setAccessibleDescription(self.entry.shortcut)
        self.setToolTip(f"{self.entry.title()} ({self.entry.shortcut})")
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        theme = theme_of(self)
        word = QFontMetrics(theme.font("group")).horizontalAdvance(self.text())
        key = QFontMetrics(theme.font("small")).horizontalAdvance(self.entry.shortcut)
        return QSize(GROUP + word + TOGETHER + key + GROUP, HEIGHT)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def weight_at(self) -> int:
        """Where along the button the sliding weight hangs: below the middle of its word."""
        word = QFontMetrics(theme_of(self).font("group")).horizontalAdvance(self.text())
        return GROUP + word // 2

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme = theme_of(self)
        painter = QPainter(self)
        above = QRect(0, 0, self.width(), BEAM)
        if self.underMouse() and not self.isChecked():
            painter.fillRect(above, theme.color("hover"))
        font = theme.font("group")
        painter.setFont(font)
        painter.setPen(theme.color("ink" if self.isChecked() else "steel"))
        word = QFontMetrics(font).horizontalAdvance(self.text())
        left = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(above.adjusted(GROUP, 0, 0, 0), left, self.text())
        painter.setFont(theme.font("small"))
        painter.setPen(theme.color("steel"))
        painter.drawText(
            above.adjusted(GROUP + word + TOGETHER, 1, 0, 0), left, self.entry.shortcut
        )
        if self.hasFocus():
            painter.setPen(QPen(theme.color("stamp"), 2))
            painter.drawRect(above.adjusted(3, 3, -3, -3))


class PlacesBar(QWidget):
    """Five buttons on a beam.

    Signals:
        wanted: the key of the place asked for, by click or by key.
    """

    wanted = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setFixedHeight(HEIGHT)
        self._group = QButtonGroup(self)
        self.buttons: dict[str, PlaceButton] = {}
        layout = row(self, gap=STEP)
        for number, entry in enumerate(ENTRIES, start=1):
            button = PlaceButton(entry, self)
            self._group.addButton(button)
            button.clicked.connect(self._clicked)
            layout.addWidget(button)
            self.buttons[entry.key] = button
            for keys in (entry.shortcut, f"Ctrl+{number}"):
                shortcut = QShortcut(QKeySequence(keys), self)
                shortcut.setContext(Qt.ShortcutContext.WindowShortcut)
                shortcut.activated.connect(button.click)

    def mark(self, key: str) -> None:
        """Hang the weight under a place."""
        self.buttons[key].setChecked(True)
        self._repaint_bar()

    def weight_x(self, other: QWidget) -> int | None:
        """Where the weight hangs, in another widget's coordinates."""
        button = self._group.checkedButton()
        if not isinstance(button, PlaceButton):
            return None
        return button.mapTo(other, QRect(button.weight_at(), 0, 1, 1).topLeft()).x()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            for button in self.buttons.values():
                button.retranslate()

    def _clicked(self) -> None:
        button = self.sender()
        if isinstance(button, PlaceButton):
            self.wanted.emit(button.entry.key)
        self._repaint_bar()

    def _repaint_bar(self) -> None:
        parent = self.parentWidget()
        if parent is not None:
            parent.update()


def paint_beam(painter: QPainter, width: int, weight_x: int | None) -> None:
    """The beam across the whole bar, its marks, and the weight hanging from it."""
    theme = theme_of()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(theme.color("line"), 1))
    beam = BEAM + 0.5
    painter.drawLine(QPointF(0, beam), QPointF(width, beam))
    if weight_x is None:
        return
    x = float(weight_x)
    painter.setPen(QPen(theme.color("stamp"), 2))
    painter.drawLine(QPointF(x - 18, beam), QPointF(x + 18, beam))
    painter.setBrush(theme.color("stamp"))
    painter.setPen(Qt.PenStyle.NoPen)
    hook = QRectF(x - 1, beam, 2, 3)
    painter.drawRect(hook)
    painter.drawPolygon(
        QPolygonF(
            [
                QPointF(x - 4, beam + 2),
                QPointF(x + 4, beam + 2),
                QPointF(x + 6, beam + 9),
                QPointF(x - 6, beam + 9),
            ]
        )
    )
