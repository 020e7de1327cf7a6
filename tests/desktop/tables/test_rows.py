"""The table model: what it shows, how it sorts, and Qt's own model tester over it."""

from dataclasses import dataclass

import pytest
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt
from pytestqt.modeltest import ModelTester

from desktop.look.patterns import Mark
from desktop.tables import Column, Figure, RowsModel, figure
from desktop.tables.rows import FIGURE, MARK, ROW, TAIL


@dataclass(frozen=True, slots=True)
class Side:
    tag: str
    pounds: int | None
    text: str
    state: str


SIDES = [
    Side("114", 985, "98.5 lb", "settled"),
    Side("92", 1000, "100 lb", "open"),
    Side("115", None, "not weighed", "open"),
    Side("7", 9025, "902.50 lb", "settled"),
]


def columns() -> list[Column[Side]]:
    return [
        Column("tag", lambda: "Tag", lambda row: row.tag, sort=lambda row: int(row.tag)),
        Column(
            "weight",
            lambda: "Hot weight",
            lambda row: figure(row.text) if row.pounds is not None else row.text,
            kind="figure",
            sort=lambda row: row.pounds,
        ),
        Column(
            "state",
            lambda: "State",
            lambda row: row.state,
            kind="state",
            mark=lambda row: Mark.SETTLED if row.state == "settled" else Mark.OPEN,
        ),
    ]


@pytest.fixture
def model() -> RowsModel[Side]:
    made = RowsModel(columns())
    made.show(SIDES)
    return made


def tags(model: RowsModel[Side]) -> list[str]:
    return [row.tag for row in model.rows()]


def test_qts_own_tester_finds_no_fault(qtmodeltester: ModelTester, model: RowsModel[Side]) -> None:
    qtmodeltester.check(model)
    model.sort(1, Qt.SortOrder.DescendingOrder)
    qtmodeltester.check(model)
    model.show([])
    qtmodeltester.check(model)


def test_under_a_row_there_is_nothing(model: RowsModel[Side]) -> None:
    assert model.rowCount() == 4
    assert model.rowCount(model.index(0, 0)) == 0
    assert model.columnCount(model.index(0, 0)) == 0
    assert model.data(QModelIndex()) is None


def test_figures_keep_number_and_unit_apart_and_leave_room_for_the_longest_decimals(
    model: RowsModel[Side],
) -> None:
    cell = model.index(0, 1)
    assert model.data(cell) == "98.5 lb"
    assert model.data(cell, FIGURE) == Figure("98.5", "lb")
    assert model.data(cell, TAIL) == ".50"
    assert model.data(model.index(2, 1), FIGURE) is None
    assert model.data(model.index(0, 2), MARK) is Mark.SETTLED
    assert model.data(cell, ROW) is SIDES[0]


def test_sorting_is_by_value_and_what_is_unknown_comes_last_both_ways(
    model: RowsModel[Side],
) -> None:
    model.sort(0)
    assert tags(model) == ["7", "92", "114", "115"]
    model.sort(1)
    assert tags(model) == ["114", "92", "7", "115"]
    model.sort(1, Qt.SortOrder.DescendingOrder)
    assert tags(model) == ["7", "92", "114", "115"]


def test_a_chosen_row_is_followed_through_sorting(model: RowsModel[Side]) -> None:
    held = QPersistentModelIndex(model.index(0, 0))
    model.sort(0)
    assert model.row(held.row()).tag == "114"


def test_new_rows_are_sorted_as_the_old_ones_were(model: RowsModel[Side]) -> None:
    model.sort(0, Qt.SortOrder.DescendingOrder)
    model.show(SIDES[:2])
    assert tags(model) == ["114", "92"]


def test_headings_say_the_columns(model: RowsModel[Side]) -> None:
    across = Qt.Orientation.Horizontal
    assert [model.headerData(at, across) for at in range(3)] == ["Tag", "Hot weight", "State"]
