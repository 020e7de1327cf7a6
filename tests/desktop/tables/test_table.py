"""A table on the screen: choosing, picking, copying, and where the decimals stand."""

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QGuiApplication, QImage, QPainter
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.look.theme import theme_of
from desktop.tables import Figure, RowsModel, Table
from desktop.tables.delegate import paint_figure
from tests.desktop.tables.test_rows import SIDES, Side, columns


@pytest.fixture
def table(qtbot: QtBot) -> Table[Side]:
    made = Table(RowsModel(columns()))
    made.set_name("Sides")
    qtbot.addWidget(made)
    made.resize(600, 240)
    made.show_rows(SIDES)
    made.show()
    return made


def test_the_first_row_is_chosen_when_rows_come(table: Table[Side]) -> None:
    assert table.chosen() == SIDES[0]


def test_enter_picks_the_row(qtbot: QtBot, table: Table[Side]) -> None:
    QTest.keyClick(table, Qt.Key.Key_Down)
    with qtbot.waitSignal(table.picked) as picked:
        QTest.keyClick(table, Qt.Key.Key_Return)
    assert picked.args == [SIDES[1]]


def test_moving_tells_the_row(qtbot: QtBot, table: Table[Side]) -> None:
    with qtbot.waitSignal(table.moved) as moved:
        QTest.keyClick(table, Qt.Key.Key_Down)
    assert moved.args == [SIDES[1]]


def test_new_rows_keep_the_chosen_one_or_its_place(table: Table[Side]) -> None:
    table.choose(2)
    table.show_rows(SIDES[1:], keep=SIDES[2])
    assert table.chosen() == SIDES[2]
    table.choose(2)
    table.show_rows(SIDES[:2])
    assert table.chosen() == SIDES[1]
    table.show_rows([])
    assert table.chosen() is None


def test_copy_puts_headings_and_the_chosen_row_on_the_board(table: Table[Side]) -> None:
    table.choose(1)
    QTest.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text() == "Tag\tHot weight\tState\n92\t100 lb\topen\n"


def test_copy_takes_every_row_when_none_is_chosen(table: Table[Side]) -> None:
    table.clearSelection()
    lines = table.as_text().splitlines()
    assert len(lines) == 5
    assert lines[4] == "7\t902.50 lb\tsettled"


def test_a_heading_sorts(qtbot: QtBot, table: Table[Side]) -> None:
    head = table.horizontalHeader()
    spot = QPoint(head.sectionViewportPosition(0) + 10, 8)
    qtbot.mouseClick(head.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert [row.tag for row in table.rows.rows()] == ["7", "92", "114", "115"]


def points_of(figure: Figure) -> list[int]:
    """The columns of pixels that hold ink between the whole number and what follows."""
    theme = theme_of()
    image = QImage(200, 32, QImage.Format.Format_RGB32)
    image.fill(theme.color("card"))
    painter = QPainter(image)
    painter.setFont(theme.font("body"))
    paint_figure(painter, QRect(0, 0, 190, 32), figure, ".50", theme)
    painter.end()
    ground = theme.color("card").rgb()
    return [x for x in range(200) if any(image.pixel(x, y) != ground for y in range(32))]


def test_figures_stand_on_the_decimal_however_many_decimals_they_have() -> None:
    long, short, whole = (points_of(Figure(n, "lb")) for n in ("198.55", "198.5", "198"))
    # The same whole number begins and ends at the same pixel in all three.
    assert long[0] == short[0] == whole[0]
    assert set(whole) - {x for x in whole if x > long[-1] - 20} <= set(long)
    # The unit ends at the same pixel as well.
    assert long[-1] == short[-1] == whole[-1]
