"""A combo box that paints its arrow in the theme's own colour."""

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QComboBox

from desktop.look.theme import theme_of

FROM_RIGHT = 16


class PickBox(QComboBox):
    """A QComboBox with a small open arrow at its right."""

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        role = "steel" if self.isEnabled() else "edge"
        painter.setPen(QPen(theme_of(self).color(role), 1.5))
        x, y = self.width() - FROM_RIGHT, self.height() / 2
        painter.drawPolyline(
            QPolygonF([QPointF(x - 4, y - 2), QPointF(x, y + 2), QPointF(x + 4, y - 2)])
        )
