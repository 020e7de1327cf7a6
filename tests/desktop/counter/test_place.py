"""The whole way at the counter, by keyboard: booking, the cut order, the money, the hand-over."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.counter.book_dialog import BookDialog
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.name_dialog import NameDialog
from desktop.counter.payment_dialog import PaymentDialog
from desktop.counter.place import CounterPlace
from desktop.main_window import MainWindow
from desktop.work import slow_turns
from shared.cutting.order import Amount, Choice
from shared.shop.holdings import half
from shared.shop.lots import LotShare, NewLot
from shared.shop.orders import Order
from shared.units import Weight
from tests.db.examples import booked, customer, lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import (
    desk_of,
    focused,
    listed,
    opened,
    pressed,
    typed,
    with_order,
)
from tests.desktop.recorded_messages import RecordedMessages

CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
NONE = Qt.KeyboardModifier.NoModifier


def test_a_hog_with_two_halves_is_booked_by_keyboard(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    pressed(Qt.Key.Key_N, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, BookDialog)
    qtbot.waitUntil(dialog.isActiveWindow)
    typed("hog")
    typed("1")
    typed("12/3/2026")
    typed("custom")
    typed("Anna Berg 555 010 0123")
    typed("185")
    typed("scalded")
    typed("two halves")
    typed("")
    typed("50")
    typed("Anna Berg 555 010 0123")
    typed("Bert Iversen 555 010 0456", Qt.Key.Key_Return)
    assert not dialog.isVisible(), dialog.grid.problems()
    desk = desk_of(place)
    assert desk.lot.species == "pork"
    assert desk.lot.day == date(2026, 12, 3)
    assert desk.lot.producer == "Anna Berg"
    assert [share.owner for share in desk.lot.shares] == ["Anna Berg", "Bert Iversen"]
    assert [share.deposit_asked for share in desk.lot.shares] == [5000, 5000]
    assert desk.lot.booked == Weight(185, "lb")
    with bench.store.read() as work:
        assert len(work.customers.find("")) == 2


def test_a_name_that_is_known_is_asked_about(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot_of_halves(work)
        work.commit()
    place = opened(qtbot, bench)
    place.book()
    dialog = place.dialog
    assert isinstance(dialog, BookDialog)
    dialog.producer.set_text("Anna Berg 555 010 9999")
    messages.answers = [False]
    dialog.try_it()
    assert dialog.isVisible()
    assert "Anna Berg" in dialog.producer.problem()
    with bench.store.read() as work:
        assert len(work.customers.find("Anna")) == 1


def test_an_empty_counter_teaches_how_it_begins(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    assert focused() is place.list.begin
    assert unnamed(place) == []


def test_typing_finds_an_order_and_enter_opens_it(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot_of_halves(work)
        work.commit()
    place = opened(qtbot, bench)
    assert place.list.table.rows.rowCount() == 2
    typed("bert", Qt.Key.Key_Return)  # Enter before the list is there opens what was typed
    listed(qtbot, bench)
    assert desk_of(place).order.owner == "Bert Iversen"
    assert focused() is place.order.table
    assert unnamed(place) == []
    pressed(Qt.Key.Key_Escape)
    assert place.list.isVisible()


def counter_of_a_window(qtbot: QtBot, bench: Bench) -> tuple[MainWindow, CounterPlace]:
    """The counter in the window, whose status line has what it says."""
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.enter("counter")
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    place = window.place()
    assert isinstance(place, CounterPlace)
    return window, place


def test_what_is_said_of_an_orders_lines_goes_with_its_owner(qtbot: QtBot, bench: Bench) -> None:
    """Ctrl+Z takes back lines of the order at hand: the next owner's has none of them."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    window, place = counter_of_a_window(qtbot, bench)
    first, second = (one.order_id or 0 for one in lot.shares)

    def filled() -> None:
        place.show_order(lot.id, first)
        for line in [one.line for one in desk_of(place).order.choices]:
            place.order.remove(line)
        pressed(Qt.Key.Key_F9)
        assert window.status.text().endswith("lines as usual. Ctrl+Z takes them back.")

    filled()
    pressed(Qt.Key.Key_Right, ALT)
    assert desk_of(place).order.id == second
    assert window.status.text() == ""
    filled()
    place.show_order(lot.id, second)
    assert window.status.text() == ""
    for key, modifier in ((Qt.Key.Key_Z, CTRL), (Qt.Key.Key_Escape, NONE)):
        filled()
        pressed(key, modifier)
        assert window.status.text() == ""
    filled()
    window.say("Copied.")
    pressed(Qt.Key.Key_Right, ALT)
    assert window.status.text() == "Copied.", "what was said since stays"


def test_an_order_is_settled_released_and_handed_over(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    pressed(Qt.Key.Key_Return, CTRL)
    assert "open" in place.order.refusal.text()
    assert desk_of(place).order.state == "open"
    said, unsaid = list[str](), list[str]()
    place.said.connect(said.append)
    place.unsaid.connect(unsaid.append)
    pressed(Qt.Key.Key_F9)
    pressed(Qt.Key.Key_Return, CTRL)
    assert desk_of(place).order.state == "settled"
    assert unsaid == said, "that Ctrl+Z takes the lines back no longer holds"
    pressed(Qt.Key.Key_Return, CTRL)
    qtbot.waitUntil(lambda: desk_of(place).order.state == "released", timeout=10_000)
    assert (desk_of(place).order.sheet, place.order.steps.main.isEnabled()) == (1, True)
    assert said[-2:] == ["Making the sheet for the block…", "Sheet 1 is at the block."]
    _close_what_covers(place)
    order = desk_of(place).order
    with bench.store.work(bench.person, bench.station) as work:
        for state in ("cut", "ready"):
            now = work.orders.get(order.id)
            assert now is not None
            assert isinstance(work.orders.move(order.id, state, version=now.version), Order)
        work.commit()
    place.refresh()
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)
    place.order.table.setFocus()
    pressed(Qt.Key.Key_F8)
    dialog = place.dialog
    assert isinstance(dialog, HandOverDialog)
    dialog.try_it()
    assert dialog.isVisible(), "it left unpaid without a reason"
    dialog.reason.set_text("bill follows by mail")
    dialog.try_it()
    assert desk_of(place).order.state == "handed_over"


def test_a_deposit_is_taken_as_it_was_asked(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    pressed(Qt.Key.Key_F7)
    dialog = place.dialog
    assert isinstance(dialog, PaymentDialog)
    assert dialog.amount.value() == 5000
    dialog.try_it()
    with bench.store.read() as work:
        (made,) = work.payments.of_order(desk_of(place).order.id)
    assert (made.kind, made.means, made.cents) == ("deposit", "cash", 5000)


def test_the_search_leads_to_an_order(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = opened(qtbot, bench)
    place.open(Target("counter", "order", lot.shares[1].order_id, lot_id=lot.id))
    assert desk_of(place).order.owner == "Bert Iversen"


def _close_what_covers(place: object) -> None:
    for window in QApplication.topLevelWidgets():
        if window is not place and window.isVisible():
            window.close()
    popup = QApplication.activeModalWidget()
    if popup is not None:
        popup.close()


def test_a_share_to_be_named_gets_its_owner(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        anna = customer(work)
        shares = (
            LotShare(1, anna.id, holdings=half(0, 1)),
            LotShare(2, None, holdings=half(0, 2)),
        )
        lot = booked(work, NewLot("pork", 1, bench.today(), anna.id, shares))
        work.commit()
    place = with_order(qtbot, bench, lot, share=2)
    pressed(Qt.Key.Key_F11)
    dialog = place.dialog
    assert isinstance(dialog, NameDialog)
    dialog.owner.set_text("Bert Iversen 555 010 0456")
    dialog.try_it()
    assert desk_of(place).order.owner == "Bert Iversen"


def test_a_settled_order_goes_back_with_a_reason(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    pressed(Qt.Key.Key_F9)
    pressed(Qt.Key.Key_Return, CTRL)
    messages.answers = ["she wants to think again"]
    pressed(Qt.Key.Key_Backspace, CTRL)
    assert desk_of(place).order.state == "open"


@pytest.mark.timed
def test_no_key_holds_up_the_window(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, species="beef")
        work.commit()
    place = with_order(qtbot, bench, lot)
    qtbot.wait(20)
    with slow_turns() as slow:
        for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Up):
            pressed(key)
            qtbot.wait(10)
        desk_of(place).add([Choice(0, 1, "t_bone_steak", Amount("slices", 4))])
        place.order.show_again()
        qtbot.wait(10)
    assert slow == []


def test_no_sheet_comes_over_another_place(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    pressed(Qt.Key.Key_F9)
    pressed(Qt.Key.Key_Return, CTRL)
    pressed(Qt.Key.Key_Return, CTRL)
    place.hide()
    qtbot.waitUntil(lambda: desk_of(place).order.state == "released", timeout=10_000)
    QApplication.processEvents()
    assert QApplication.activeModalWidget() is None
    assert place.findChildren(QDialog) == []
