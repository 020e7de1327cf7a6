"""The foot of the panel: weight, packages, freezer and what the price is made of."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.work import slow_turns
from shared.billing.rates import Charge, RateCard
from shared.units import whole_pounds_text
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.desktop.counter.test_order_view import halves

CARD = RateCard(
    "plain",
    "Plain",
    date(2026, 1, 1),
    charges=(
        Charge("kill", "per_head", Fraction(5000)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(80)),
    ),
)


def test_an_order_without_lines_and_rates_says_so(qtbot: QtBot, bench: Bench) -> None:
    """The whole hog was guessed at 185 lb hot: 181 lb chilled, at the shrink of 2 %."""
    place = with_order(qtbot, bench, halves(bench))
    assert place.order.panel.figures.spoken() == [
        "Whole lot chilled, by guess at booking: 181\u00a0lb",
        "Take-home: nothing yet",
        "Packages: nothing yet",
        "Freezer, 25 to 40 lb a ft³: nothing yet",
        "Price so far: no rates for this yet",
    ]


def test_the_price_is_told_with_what_it_is_made_of(qtbot: QtBot, bench: Bench) -> None:
    """By hand: half of $50 a head, and 92.5 lb at 80 cents."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.rates.save(CARD)
        work.commit()
    place = with_order(qtbot, bench, lot)
    said = place.order.panel.figures.spoken()
    assert said[4] == "Price so far, by the rates: $99.00"
    assert [one.strip() for one in said[5:]] == ["Kill: $25.00", "Cut and wrap: $74.00"]
    desk_of(place).fill_usual()
    place.order.show_again()
    said = place.order.panel.figures.spoken()
    home = desk_of(place).forecast.finished(1)
    assert said[1].startswith("Take-home: ")
    assert home.low < home.high
    assert "–" in said[3]


def test_take_home_below_the_lines_says_why(qtbot: QtBot, bench: Bench) -> None:
    """The tables have the house's usual of half a beef at more than extension services tell."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, "beef")
        work.commit()
    place = with_order(qtbot, bench, lot)
    desk_of(place).fill_usual()
    place.order.show_again()
    lines, home = place.order.panel.figures.spoken()[1:3]
    pounds = whole_pounds_text(desk_of(place).dealt.finished(1).mid)
    assert lines == f"Lines by the tables: {pounds}"
    assert home.startswith("Take-home as plants see it: ")


@pytest.mark.parametrize(("percent", "there"), [(100, True), (125, False)])
def test_the_map_goes_where_the_type_takes_its_room(
    qtbot: QtBot, bench: Bench, qapp: QApplication, worn: Theme, percent: int, there: bool
) -> None:
    place = with_order(qtbot, bench, halves(bench))
    theme.apply(qapp, replace(worn, percent=percent))
    qapp.processEvents()
    assert place.order.map.isVisible() is there


@pytest.mark.timed
def test_no_step_of_a_beef_order_holds_the_window_up(qtbot: QtBot, bench: Bench) -> None:
    """The house's usual on a whole beef, taken back and done again, and turned side by side."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, "beef")
        work.rates.save(CARD)
        work.commit()
    place = with_order(qtbot, bench, lot)
    order = place.order
    order.fill_usual()
    order.undo()  # the first time also reads modules
    steps = (order.fill_usual, order.undo, order.redo, order.show_again, order.reload)
    with slow_turns() as slow:
        for step in steps:
            step()
            for _ in range(3):
                qtbot.wait(6)
    assert slow == []
