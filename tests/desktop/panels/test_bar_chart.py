"""A chart is read by keys and by a screen reader; every kind of bar has a pattern of its own."""

from fractions import Fraction

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.look.theme import Theme
from desktop.panels.bar_chart import BarChart
from desktop.panels.bar_fill import FILLS, paint_bar
from shared.shop.charts import Chart, Series

WEEKS = Chart(
    "Pounds by week",
    ("Nov 16", "Nov 23"),
    (
        Series("beef", (Fraction(2000), Fraction(3200))),
        Series("pork", (None, Fraction(840))),
    ),
    stacked=True,
)


def opened(qtbot: QtBot) -> BarChart:
    chart = BarChart()
    qtbot.addWidget(chart)
    chart.resize(600, 240)
    chart.show_chart(WEEKS, lambda value: f"{int(value):,} lb")
    chart.show()
    return chart


def test_arrows_go_along_the_bars_and_say_what_stands_there(qtbot: QtBot) -> None:
    chart = opened(qtbot)
    assert chart.accessibleName() == "Pounds by week"
    assert chart.accessibleDescription() == "Nov 23: beef 3,200 lb, pork 840 lb"
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert chart.accessibleDescription() == "Nov 16: beef 2,000 lb"
    QTest.keyClick(chart, Qt.Key.Key_Right)
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert chart.accessibleDescription() == "Nov 23: beef 3,200 lb, pork 840 lb"


def test_the_bar_under_the_pointer_is_found(qtbot: QtBot) -> None:
    chart = opened(qtbot)
    assert chart.label_at(1) == -1
    assert chart.label_at(200) == 0
    assert chart.label_at(560) == 1


def test_every_kind_of_bar_differs_in_grey_alone(qtbot: QtBot, worn: Theme) -> None:
    seen: set[bytes] = set()
    for kind in range(len(FILLS)):
        image = QImage(24, 24, QImage.Format.Format_RGB32)
        painter = QPainter(image)
        paint_bar(painter, QRectF(0, 0, 23, 23), kind, worn)
        painter.end()
        grey = image.convertToFormat(QImage.Format.Format_Mono)
        seen.add(bytes(grey.constBits()))
    assert len(seen) == len(FILLS)


def test_an_empty_chart_and_many_labels_are_drawn(qtbot: QtBot) -> None:
    chart = opened(qtbot)
    chart.show_chart(Chart("Nothing", (), ()), str)
    assert not chart.grab().isNull()
    many = tuple(f"Producer with a long name {at}" for at in range(400))
    chart.show_chart(Chart("Many", many, (Series("", (Fraction(7),) * 400),)), str)
    before = chart.grab().toImage()
    chart.show_chart(Chart("Few", many[:2], (Series("", (Fraction(7),) * 2),)), str)
    assert chart.grab().toImage() != before
