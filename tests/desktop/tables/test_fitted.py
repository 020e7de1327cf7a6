"""Words of a cell: one line where they fit, two where the row holds two, cut at the end only."""

from PySide6.QtCore import QRect
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QApplication

from desktop.tables.delegate import fitted, lines_of

NAME = "Whole ham, shank on, cured and smoked, sliced"


def test_a_long_name_takes_two_lines_where_there_is_room(qapp: QApplication) -> None:
    assert qapp is not None
    metrics = QFontMetrics(QFont())
    wide = metrics.horizontalAdvance(NAME)
    high, low = 2 * metrics.height(), 2 * metrics.height() - 1
    assert fitted(NAME, metrics, QRect(0, 0, wide, high)) == NAME
    two = fitted(NAME, metrics, QRect(0, 0, wide * 4 // 5, high))
    assert two.replace("\n", " ") == NAME
    assert two.count("\n") == 1
    one = fitted(NAME, metrics, QRect(0, 0, wide * 2 // 3, low))
    assert one.endswith("\u2026")
    assert "\n" not in one
    short = fitted(NAME, metrics, QRect(0, 0, wide // 3, high))
    assert short.count("\n") == 1
    assert short.endswith("\u2026")
    for line in (two + "\n" + short).split("\n"):
        assert metrics.horizontalAdvance(line) <= wide * 4 // 5


def test_a_third_line_is_taken_where_the_row_holds_three(qapp: QApplication) -> None:
    assert qapp is not None
    metrics = QFontMetrics(QFont())
    wide = metrics.horizontalAdvance("Whole ham, shank on,")
    three = fitted(NAME, metrics, QRect(0, 0, wide, 3 * metrics.height()))
    assert three.replace("\n", " ") == NAME
    assert three.count("\n") == 2


def test_every_line_is_indented_as_the_first(qapp: QApplication) -> None:
    assert qapp is not None
    metrics = QFontMetrics(QFont())
    wide = metrics.horizontalAdvance("\u2003Whole ham, shank on,")
    lines = lines_of("\u2003" + NAME, metrics, wide)
    assert len(lines) > 1
    assert all(one.startswith("\u2003") for one in lines)
