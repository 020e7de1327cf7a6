"""As last time by two keys: the earlier order is planned, taken whole, and taken back at once."""

from datetime import date

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.last_time_dialog import LastTimeDialog, again_words
from shared.cutting.order import Amount, Choice
from shared.shop.holdings import half, whole
from shared.shop.lots import Lot, LotShare, NewLot
from tests.db.examples import KILL_DAY, booked, customer, line, order_of
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, focused, pressed, with_order
from tests.desktop.counter.test_order_view import halves

CTRL = Qt.KeyboardModifier.ControlModifier
EARLIER = (
    Choice(0, 1, "whole_ham", Amount("pieces", 2)),
    Choice(0, 1, "bacon", Amount("all"), finishes=("cured_smoked", "sliced")),
)


def half_after_whole(bench: Bench) -> Lot:
    """Last year the whole hog, this year half of one."""
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = customer(work), customer(work, "Bert Iversen")
        whole_one = (LotShare(1, anna.id, holdings=whole(0)),)
        last = booked(work, NewLot("pork", 1, date(2025, 3, 10), anna.id, whole_one))
        for choice in EARLIER:
            line(work, order_of(work, last), choice)
        shares = (
            LotShare(1, bert.id, holdings=half(0, 1)),
            LotShare(2, anna.id, holdings=half(0, 2)),
        )
        lot = booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares))
        work.commit()
    return lot


def test_two_keys_bring_the_last_order_and_one_takes_it_back(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, half_after_whole(bench), share=2)
    pressed(Qt.Key.Key_L, CTRL)
    dialog = place.order.dialogs.shown
    assert isinstance(dialog, LastTimeDialog)
    qtbot.waitUntil(dialog.isActiveWindow)
    assert unnamed(dialog) == []
    assert focused() is dialog.earlier
    pressed(Qt.Key.Key_Return)  # it waits for the plan where that isn't there yet
    qtbot.waitUntil(lambda: bool(desk_of(place).order.choices))
    desk = desk_of(place)
    asked = [(one.cut, one.amount) for one in desk.order.choices]
    assert asked == [("whole_ham", Amount("pieces", 1)), ("bacon", Amount("all"))]
    assert desk.answer.conflicts == ()
    place.order.table.go_to("ham")
    (ham,) = [row for row in place.order.table.rows.rows() if row.line]
    assert ham.finish.startswith("last time 2 pieces")
    assert desk.undo() is None
    assert desk.order.choices == ()


def test_what_changes_is_said_before_it_is_taken(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, half_after_whole(bench), share=2)
    place.order.dialogs.as_last_time(desk_of(place))
    dialog = place.order.dialogs.shown
    assert isinstance(dialog, LastTimeDialog)
    qtbot.waitUntil(lambda: dialog.lines is not None)
    assert dialog.lines is not None
    said = [again_words(one, desk_of(place), bench) for one in dialog.lines]
    assert said[0].startswith("now ")
    assert "whole ham" in said[0]
    assert said[1] == "as it was"
    dialog.reject()
    assert desk_of(place).order.choices == ()


def test_who_orders_for_the_first_time_is_told_so(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    pressed(Qt.Key.Key_L, CTRL)
    assert place.order.dialogs.shown is None
    assert "no earlier order" in place.order.refusal.text()
