"""A state as pattern and word, never as colour alone."""

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.look.patterns import Mark, paint_mark, square_beside
from desktop.look.space import STEP
from desktop.look.theme import theme_of


class StateWord(QWidget):
    """A square in the state's pattern, as high as its word needs, with the word beside it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._mark = Mark.PLAIN
        self._words = ""
        self._pixels = 0
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_state(self, mark: Mark, words: str) -> None:
        """Show a state: its pattern and its word."""
        self._mark, self._words = mark, words
        self.setAccessibleName(words)
        self.updateGeometry()
        self.update()

    def set_pixels(self, pixels: int) -> None:
        """Letters of that height instead of the usual; 0 is the usual again."""
        self._pixels = pixels
        self.updateGeometry()

    def words(self) -> str:
        """The word shown."""
        return self._words

    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self._font())
        side = square_beside(metrics.height())
        return QSize(side + _gap(side) + metrics.horizontalAdvance(self._words), metrics.height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme = theme_of(self)
        painter = QPainter(self)
        painter.setFont(self._font())
        side = square_beside(painter.fontMetrics().height())
        top = (self.height() - side) / 2
        paint_mark(painter, QRectF(0, top, side, side), self._mark, theme)
        painter.setPen(theme.color(self._mark.value))
        words = self.rect().adjusted(side + _gap(side), 0, 0, 0)
        painter.drawText(words, Qt.AlignmentFlag.AlignVCenter, self._words)

    def _font(self) -> QFont:
        font = theme_of(self).font("body")
        if self._pixels:
            font.setPixelSize(self._pixels)
        return font


def _gap(side: int) -> int:
    return max(2 * STEP, side // 3)
