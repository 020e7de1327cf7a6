"""The program's mark, the steelyard itself, drawn in the theme's stamp colour."""

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from desktop.look.palette import LIGHT
from desktop.look.theme import theme_of
from desktop.paths import resources

SIZES = (16, 24, 32, 48, 64, 128, 256)


def mark_icon() -> QIcon:
    """The mark at every size a desktop asks for; ask again when the theme changes."""
    drawing = (resources() / "steelyard.svg").read_text("utf-8")
    drawing = drawing.replace(LIGHT.stamp, theme_of().roles.stamp)
    renderer = QSvgRenderer(QByteArray(drawing.encode()))
    icon = QIcon()
    for size in SIZES:
        pixmap = QPixmap(size, size)
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        renderer.render(painter, QRectF(0, 0, size, size))
        painter.end()
        icon.addPixmap(pixmap)
    return icon
