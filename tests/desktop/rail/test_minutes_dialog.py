"""Minutes by class of cut typed in: kept as entered, and counted in the calendar's days."""

from datetime import timedelta

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.calendar_dialog import CalendarDialog
from desktop.rail.minutes_dialog import MinutesDialog
from desktop.work import slow_turns
from shared.cutting.order import Amount, Choice
from shared.shop.calendar import Plan
from tests.db import examples
from tests.desktop.audit import unnamed

WEEK = Plan({0: {"pork": 12}}, hooks=40, hang={"pork": 3}, minutes_a_side={"veal": 50})


def opened(qtbot: QtBot, bench: Bench) -> MinutesDialog:
    dialog = MinutesDialog(bench)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def keep(bench: Bench, plan: Plan) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(plan)
        work.commit()


def test_minutes_are_kept_and_what_has_no_row_here_stays(qtbot: QtBot, bench: Bench) -> None:
    keep(bench, WEEK)
    dialog = opened(qtbot, bench)
    assert unnamed(dialog) == []
    dialog.a_day.set_value(480)
    dialog.a_side["pork"].set_value(20)
    dialog.a_cut["pork", "steaks"].set_value(4)
    dialog.try_it()
    with bench.store.read() as work:
        kept = work.calendar.plan()
    assert (kept.week, kept.hooks, kept.hang, kept.block_minutes) == (
        WEEK.week,
        40,
        {"pork": 3},
        480,
    )
    assert kept.minutes_a_side == {"veal": 50, "pork": 20}
    assert kept.minutes_a_cut == {"pork": {"steaks": 4}}
    again = opened(qtbot, bench)
    assert again.a_cut["pork", "steaks"].value() == 4
    again.a_cut["pork", "steaks"].set_value(None)
    again.try_it()
    with bench.store.read() as work:
        assert work.calendar.plan().minutes_a_cut == {}


@pytest.mark.timed
def test_the_calendar_opens_and_counts_the_lines_off_the_window(qtbot: QtBot, bench: Bench) -> None:
    """A hog of one owner, two lines of chops at 4 minutes, 20 a side: 2 * (20 + 2 * 4) = 56."""
    week = {day: {"pork": 9} for day in range(7)}
    minutes = {"pork": {"steaks": 4}}
    plan = Plan(week, None, 480, {"pork": 1}, {"pork": 20}, minutes)
    keep(bench, plan)
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_one(work, "Anna Berg", bench.today() - timedelta(1))
        for cut in ("centre_chop", "sirloin_chop"):
            order = examples.order_of(work, lot)
            examples.line(work, order, Choice(0, 1, cut, Amount("rest")))
        work.commit()
    with slow_turns() as slow:
        qtbot.wait(10)
        dialog = CalendarDialog(bench)
        qtbot.addWidget(dialog)
        assert "min block" not in dialog.full.text()  # not yet counted: nothing wrong is told
        qtbot.waitUntil(lambda: "56/480 min block" in dialog.full.text())
    assert slow == []
