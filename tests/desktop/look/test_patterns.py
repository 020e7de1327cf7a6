"""States differ by pattern, not by colour alone: also when every colour is the same."""

from dataclasses import replace

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from desktop.look.palette import LIGHT
from desktop.look.patterns import Mark, paint_mark
from desktop.look.theme import Theme

GREY = replace(LIGHT, settled="#000000", steel="#000000", tight="#000000", contested="#000000")
STATES = (Mark.SETTLED, Mark.OPEN, Mark.TIGHT, Mark.CONTESTED)


def drawn(mark: Mark, side: int = 12) -> QImage:
    image = QImage(side, side, QImage.Format.Format_RGB32)
    image.fill("white")
    painter = QPainter(image)
    paint_mark(painter, QRectF(0, 0, side, side), mark, Theme(GREY))
    painter.end()
    return image


def ink(image: QImage) -> int:
    return sum(
        255 - image.pixelColor(x, y).lightness()
        for x in range(image.width())
        for y in range(image.height())
    )


def test_every_state_is_drawn_otherwise_in_black_alone(qapp: QApplication) -> None:
    pictures = [drawn(mark) for mark in STATES]
    for at, one in enumerate(pictures):
        for other in pictures[at + 1 :]:
            assert one != other


def test_the_worse_the_state_the_more_lines_it_has(qapp: QApplication) -> None:
    opened, tight, contested = (ink(drawn(mark, 40)) for mark in STATES[1:])
    assert opened < tight < contested


def test_a_hatch_stays_inside_its_shape(qapp: QApplication) -> None:
    image = QImage(40, 40, QImage.Format.Format_RGB32)
    image.fill("white")
    painter = QPainter(image)
    paint_mark(painter, QRectF(10, 10, 20, 20), Mark.CONTESTED, Theme(GREY))
    painter.end()
    outside = [
        (x, y)
        for x in range(40)
        for y in range(40)
        if not (9 <= x <= 30 and 9 <= y <= 30) and image.pixelColor(x, y).name() != "#ffffff"
    ]
    assert outside == []
