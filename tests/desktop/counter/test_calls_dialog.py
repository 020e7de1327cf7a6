"""Ringing owners: the list, a call logged by keyboard, the order opened from it."""

from dataclasses import replace
from datetime import timedelta

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.calls_dialog import CallsDialog
from shared.cutting.order import Amount, Choice
from shared.shop.calendar import Plan
from shared.shop.calls import PlaceFree, ToRing
from tests.db.examples import customer, line, lot_of_halves, order_of
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import opened, pressed

CTRL = Qt.KeyboardModifier.ControlModifier


def test_a_call_is_logged_and_its_order_opened_by_keyboard(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, day=bench.today() - timedelta(days=2))
        work.commit()
    place = opened(qtbot, bench)
    pressed(Qt.Key.Key_R, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, CallsDialog)
    assert unnamed(dialog) == []
    rows = dialog.table.rows.rows()
    assert [one.order.owner for one in rows if isinstance(one, ToRing)] == [
        "Anna Berg",
        "Bert Iversen",
    ]
    dialog.table.choose(1)
    dialog.note.set_text("back on Friday")
    dialog.try_it()
    assert dialog.isVisible()
    chosen = dialog.table.chosen()
    assert isinstance(chosen, ToRing)
    assert chosen.order.owner == "Bert Iversen"
    assert chosen.last is not None
    assert (chosen.last.outcome, chosen.last.note) == ("message", "back on Friday")
    dialog.table.picked.emit(chosen)
    assert not dialog.isVisible()
    assert place.order.desk is not None
    assert place.order.desk.order.id == lot.shares[1].order_id


def test_an_empty_list_says_who_comes_to_stand_in_it(qtbot: QtBot, bench: Bench) -> None:
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    assert dialog.table.rows.rowCount() == 0
    assert dialog.lost.text().startswith("Nobody is to be rung.")
    assert dialog.lost.property("role") == "quiet"
    assert not dialog.main.isEnabled()


def test_owners_who_must_agree_are_told_though_nothing_is_due_yet(
    qtbot: QtBot, bench: Bench
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, day=bench.today() + timedelta(days=30))
        for share in (1, 2):
            line(work, order_of(work, lot, share), Choice(0, share, "tongue", Amount("pieces", 1)))
        work.commit()
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    assert dialog.table.rows.rowCount() == 0
    qtbot.waitUntil(lambda: dialog.table.rows.rowCount() == 2)
    first = dialog.table.chosen()
    assert isinstance(first, ToRing)
    assert first.about == ("agree",)
    assert "tongue" in dialog.lost.text()


def test_who_waits_is_rung_when_a_place_is_free_and_then_booked(qtbot: QtBot, bench: Bench) -> None:
    day = bench.today() + timedelta(days=3)
    with bench.store.work(bench.person, bench.station) as work:
        work.calendar.save_plan(Plan(week={day.weekday(): {"pork": 2}}))
        work.waiting.add(customer(work, "Cora Lind").id, "pork", 2, day, "his own trailer")
        work.commit()
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    dialog.open()
    (row,) = dialog.table.rows.rows()
    assert isinstance(row, PlaceFree)
    assert row.day == day
    told = [dialog.table.rows.index(0, at).data() for at in range(5)]
    assert told[1:] == ["Cora Lind", "(555) 010-0123", "a place is free: hog, 2", "his own trailer"]
    with qtbot.waitSignal(dialog.book) as asked:
        dialog.table.picked.emit(row)
    assert asked.args == [row.waiting]
    again = CallsDialog(bench)
    qtbot.addWidget(again)
    again.outcome.set_value("spoke")
    again.try_it()
    assert again.table.rows.rowCount() == 0


def test_rung_often_enough_the_list_says_what_the_house_does(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, day=bench.today() - timedelta(days=9))
        work.calls.save_rules(replace(work.calls.rules(), most_calls=2, without_answer="usual"))
        for _ in range(2):
            work.calls.log(order_of(work, lot, 1).id, "no_answer")
        work.commit()
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    told = [dialog.table.rows.index(at, 3).data() for at in range(2)]
    assert told == ["no cut sheet, rung 2 times: the house's usual", "no cut sheet"]
