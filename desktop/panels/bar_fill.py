"""How the bars of a chart are told apart: a colour and a pattern each, so that neither is alone."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen

from desktop.look.theme import Theme

FILLS: tuple[tuple[str, Qt.BrushStyle], ...] = (
    ("stamp", Qt.BrushStyle.SolidPattern),
    ("settled", Qt.BrushStyle.BDiagPattern),
    ("tight", Qt.BrushStyle.CrossPattern),
    ("steel", Qt.BrushStyle.HorPattern),
    ("contested", Qt.BrushStyle.FDiagPattern),
    ("ink", Qt.BrushStyle.Dense5Pattern),
    ("stamp", Qt.BrushStyle.VerPattern),
    ("settled", Qt.BrushStyle.DiagCrossPattern),
)


def paint_bar(painter: QPainter, rect: QRectF, kind: int, theme: Theme) -> None:
    """One bar, or the square of a legend, of the kind at that place among the series."""
    role, style = FILLS[kind % len(FILLS)]
    color = theme.color(role)
    painter.fillRect(rect, theme.color("card"))
    painter.fillRect(rect, QBrush(color, style))
    if rect.width() > 3 and rect.height() > 1:
        painter.setPen(QPen(color, 1.0))
        painter.drawRect(rect)
