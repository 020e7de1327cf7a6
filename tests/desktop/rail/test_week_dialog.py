"""The shop's week typed in: kept as entered, read back, and a date closed and opened again."""

from dataclasses import replace
from datetime import date

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.week_dialog import WEEKDAYS, WeekDialog
from shared.shop.calendar import OtherDay, Plan
from tests.desktop.audit import unnamed

MINUTES = Plan(
    block_minutes=480, minutes_a_side={"beef": 90}, minutes_a_cut={"beef": {"steaks": 6}}
)
HOLIDAY = date(2026, 12, 25)


def opened(qtbot: QtBot, bench: Bench) -> WeekDialog:
    dialog = WeekDialog(bench)
    qtbot.addWidget(dialog)
    dialog.show()
    return dialog


def test_a_week_is_kept_and_shown_again(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(MINUTES)
        work.commit()
    dialog = opened(qtbot, bench)
    assert unnamed(dialog) == []
    dialog.places[0].set_value(12)
    dialog.places[WEEKDAYS + 1].set_value(4)
    dialog.hooks.set_value(60)
    dialog.try_it()
    kept = replace(MINUTES, week={0: {"pork": 12}, 1: {"beef": 4}}, hooks=60)
    with bench.store.read() as work:
        assert work.calendar.plan() == kept
    again = opened(qtbot, bench)
    assert [again.places[0].value(), again.places[1].value(), again.hooks.value()] == [12, None, 60]


def test_a_holiday_is_closed_and_opened_again(qtbot: QtBot, bench: Bench) -> None:
    for how, others in (
        ("closed", {HOLIDAY: OtherDay(HOLIDAY, True, "Christmas")}),
        ("as_weekday", {}),
    ):
        dialog = opened(qtbot, bench)
        dialog.other.set_value(HOLIDAY)
        dialog.how.set_value(how)
        dialog.note.set_value("Christmas")
        dialog.try_it()
        with bench.store.read() as work:
            assert work.calendar.filled(HOLIDAY, HOLIDAY).others == others
            assert work.calendar.plan() == Plan()
