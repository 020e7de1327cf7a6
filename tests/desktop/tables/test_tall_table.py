"""Rows as high as their words take: at once, and again when a column has another width."""

from dataclasses import dataclass

from pytestqt.qtbot import QtBot

from desktop.tables import Column, RowsModel, TallTable

LONG = "the rest as bone-in picnic roast, 4 lb each, fresh, 1 to a package"


@dataclass(frozen=True, slots=True)
class Said:
    text: str


def made(qtbot: QtBot, wide: int) -> TallTable[Said]:
    columns: list[Column[Said]] = [
        Column("text", lambda: "Said", lambda one: one.text, stretch=True)
    ]
    table = TallTable(RowsModel(columns), sortable=False)
    qtbot.addWidget(table)
    table.show_rows([Said("short"), Said(LONG), Said(LONG * 9)])
    table.resize(wide, 400)
    table.show()
    return table


def test_a_long_sentence_has_the_lines_it_takes_three_at_the_most(qtbot: QtBot) -> None:
    table = made(qtbot, 360)
    usual, one_line = table.verticalHeader().defaultSectionSize(), table.fontMetrics().height()
    lines = [0, 1, 2]
    qtbot.waitUntil(
        lambda: [table.rowHeight(at) for at in range(3)] == [usual + n * one_line for n in lines]
    )


def test_what_was_filled_while_narrow_is_low_again_where_it_has_room(qtbot: QtBot) -> None:
    """The hand-over's rows stood three lines high round one line of words."""
    table = made(qtbot, 120)
    usual = table.verticalHeader().defaultSectionSize()
    assert table.rowHeight(1) > usual
    table.resize(1200, 400)
    qtbot.waitUntil(lambda: table.rowHeight(1) == usual)
    table.resize(360, 400)
    qtbot.waitUntil(lambda: table.rowHeight(1) > usual)
