"""A shop that has just begun is told at the counter what it lacks, until it has it."""

from dataclasses import replace

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.first_use import lack_words, lacking
from shared.shop.calendar import Plan
from shared.shop.details import ShopDetails
from tests.desktop.counter.opened_counter import listed, opened


def test_the_empty_counter_says_what_is_not_set_up_and_where(qtbot: QtBot, bench: Bench) -> None:
    assert lacking(bench.store) == ("shop", "rates", "days")
    place = opened(qtbot, bench)
    listed(qtbot, bench)
    empty = place.list._empty
    qtbot.waitUntil(lambda: "Office, Shop (F6, Alt+4)" in empty.sentence.text())
    with bench.store.work(bench.person, bench.station) as work:
        details = replace(work.shop.details(), name="Oak Hollow Meats")
        assert isinstance(work.shop.save(details), ShopDetails)
        work.calendar.save_plan(Plan({0: {"pork": 5}}))
        work.commit()
    assert lacking(bench.store) == ("rates",)
    place.list.refresh()
    qtbot.waitUntil(lambda: "Office, Shop" not in empty.sentence.text())
    assert "Office, Rates (F6, Alt+3)" in empty.sentence.text()


def test_a_shop_that_is_set_up_is_told_nothing() -> None:
    assert lack_words(()) == ""
