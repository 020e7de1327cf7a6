"""The one side panel of a place: a hairline at its left, groups below one another."""

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLayout, QWidget

from desktop.look.space import GROUP, TOGETHER, column
from desktop.look.theme import theme_of
from desktop.panels.heading import Words

WIDTH = 416


class SidePanel(QWidget):
    """A column of groups, `width` wide, divided from the main thing by a hairline.

    Where large type or long words need more, it grows by at most a third: 368 to 490.

    Signals:
        widened: it has another width now; carries it.
    """

    widened = Signal(int)

    def __init__(self, parent: QWidget | None = None, width: int = WIDTH) -> None:
        super().__init__(parent)
        self.setFixedWidth(width)
        self._width, self._held = width, False
        self._column = column(self, gap=TOGETHER)
        self._column.setContentsMargins(GROUP, GROUP, GROUP, GROUP)
        self._column.addStretch(1)

    def add(self, what: QWidget | QLayout, stretch: int = 0, gap: int = 0) -> None:
        """The next thing down the panel, `gap` more than 8 below the last.

        What is to `stretch` takes all the room that is over; without, it stays empty at the foot.
        """
        at = self._column.count() - 1
        if stretch:
            self._column.setStretch(at, 0)
        if gap:
            self._column.insertSpacing(at, gap)
            at += 1
        if isinstance(what, QWidget):
            self._column.insertWidget(at, what, stretch)
        else:
            self._column.insertLayout(at, what, stretch)

    def add_heading(self) -> Words:
        """A group's heading, 16 below the group before; give it words in `retranslate`."""
        heading = Words("group", parent=self)
        self.add(heading, gap=0 if self._column.count() == 1 else TOGETHER)
        return heading

    def hold_width(self, pixels: int) -> None:
        """Exactly so wide from now on, whatever comes to stand in it; 0 is the usual again."""
        self._held = bool(pixels)
        self.setFixedWidth(pixels or self._width)

    def event(self, event: QEvent) -> bool:
        """Widen when what stands in it has changed its size; buttons are never clipped."""
        done = super().event(event)
        sized = event.type() in (QEvent.Type.LayoutRequest, QEvent.Type.Polish)
        if sized and not self._held:
            needed = self._column.minimumSize().width()
            wide = max(self._width, min(needed, self._width * 4 // 3))
            if wide != self.maximumWidth():
                self.setFixedWidth(wide)
                self.widened.emit(wide)
        return done

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setPen(QPen(theme_of(self).color("line"), 1))
        painter.drawLine(0, 0, 0, self.height())
