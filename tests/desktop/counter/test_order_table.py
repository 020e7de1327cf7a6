"""The order's table at 1366 pixels: what a line says stands whole, by as many lines as it takes."""

from typing import Any

import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.order_rows import OrderRowShown
from desktop.counter.order_table import OrderTable
from desktop.counter.place import CounterPlace
from desktop.look.space import TOGETHER
from desktop.tables import Table
from desktop.tables.delegate import fitted
from desktop.tables.large_letters import mark_room
from printing.words import Words
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.desktop.typing_in import type_into

CUT, AMOUNT, FINISH = 0, 1, 2


def shown_whole(table: Table[Any], at: int, column: int, text: str) -> bool:
    """Whether the delegate paints every word of a cell."""
    metrics = table.fontMetrics()
    wide = table.columnWidth(column) - 2 * TOGETHER
    if table.rows.columns[column].kind == "state":
        wide -= mark_room(metrics.height())
    painted = fitted(text, metrics, QRect(0, 0, wide, table.rowHeight(at)))
    return " ".join(painted.split()) == " ".join(text.split())


def usual_order(qtbot: QtBot, bench: Bench, species: str, language: str) -> CounterPlace:
    bench.words = Words(language, strict=True)
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, species)
        work.commit()
    place = with_order(qtbot, bench, lot)
    place.order.fill_usual()
    return place


def cut_off(table: OrderTable, rows: "list[tuple[int, OrderRowShown]]") -> list[str]:
    QApplication.processEvents()  # a bar that comes with more rows takes its room
    return [
        text
        for at, row in rows
        for column, text in ((CUT, row.cut), (AMOUNT, row.amount), (FINISH, row.finish))
        if not shown_whole(table, at, column, text)
    ]


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("species", ["beef", "pork", "lamb", "goat", "veal"])
def test_the_usual_lines_stand_whole(
    qtbot: QtBot, bench: Bench, species: str, language: str
) -> None:
    place = usual_order(qtbot, bench, species, language)
    table = place.order.table
    seen = 0
    for primal in desk_of(place).catalogue.primals:
        table.go_to(primal)
        lines = [(at, row) for at, row in enumerate(table.rows.rows()) if row.line]
        seen += len(lines)
        assert cut_off(table, lines) == []
    assert seen == len(desk_of(place).order.choices) > 5


def test_the_ways_by_number_stand_whole_but_for_the_usual_of_many(
    qtbot: QtBot, bench: Bench
) -> None:
    place = usual_order(qtbot, bench, "beef", "en")
    table = place.order.table
    for primal in desk_of(place).catalogue.primals:
        table.go_to(primal)
        table.show_ways(shown=True)
        ways = [
            (at, row)
            for at, row in enumerate(table.rows.rows())
            if row.offer is not None and len(row.offer.choices) == 1
        ]
        assert cut_off(table, ways) == []
        assert all(
            table.rowHeight(at) == table.verticalHeader().defaultSectionSize()
            for at, row in enumerate(table.rows.rows())
            if not row.line and row.offer is None and row.primal == table.unfolded
        )


def test_folded_primals_stand_whole_where_all_are_in_view_even_so(
    qtbot: QtBot, bench: Bench
) -> None:
    place = usual_order(qtbot, bench, "lamb", "en")
    table = place.order.table
    usual = table.verticalHeader().defaultSectionSize()

    def folded() -> list[tuple[int, OrderRowShown]]:
        return [
            (at, row)
            for at, row in enumerate(table.rows.rows())
            if not row.line and row.primal != table.unfolded
        ]

    place.resize(1366, 900)
    table.go_to("leg")
    assert cut_off(table, folded()) == []
    assert any(table.rowHeight(at) > usual for at, _ in folded())
    place.resize(1366, 480)
    qtbot.waitUntil(lambda: all(table.rowHeight(at) == usual for at, _ in folded()))


def test_letters_that_came_together_are_all_in_the_dialog(qtbot: QtBot, bench: Bench) -> None:
    """The first opened it, and the window below was blocked for those that were waiting."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, "beef")
        work.commit()
    place = with_order(qtbot, bench, lot)
    place.order.table.setFocus()
    type_into(place.order.table, "hamburger 8")
    qtbot.waitUntil(lambda: place.order.dialogs.line is not None)
    dialog = place.order.dialogs.line
    assert dialog is not None
    assert dialog.cut.text() == "hamburger 8"
    dialog.drop()
    type_into(place.order.table, "hamburger")
    qtbot.waitUntil(lambda: place.order.dialogs.line is not dialog)
    dialog = place.order.dialogs.line
    assert dialog is not None
    assert dialog.cut.value() == "ground_beef"
    assert dialog.lean.isVisibleTo(dialog), "the fields were those of the cut offered first"
