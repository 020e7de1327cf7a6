"""Where a product lies and since when it freezes: the one can be said without the other."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.hand_over_dialog import HandOverDialog
from shared.shop.orders import Order
from tests.desktop.counter import test_hand_over_dialog

order = test_hand_over_dialog.order


def test_freezing_is_said_without_a_box_and_a_place_is_of_a_box(
    qtbot: QtBot, bench: Bench, order: Order
) -> None:
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    dialog.table.choose(0)
    dialog.put_in_box()
    boxing = dialog.boxing
    boxing.try_it()
    assert boxing.box_name.problem() == "Say in which box it lies."
    boxing.in_it.set_value("frozen")
    boxing.place.set_text("locker 7")
    boxing.try_it()
    assert boxing.box_name.problem() == "Say in which box it lies.", "a place is a box's"
    boxing.place.set_text("")
    boxing.box_name.complain("")
    boxing.whose.set_value("all")
    boxing.try_it()
    assert dialog.soft == []
    with bench.store.read() as work:
        assert work.hand_overs.places(order.id) == {}
        assert len(work.freezing.of_order(order.id)) == 3


def test_the_column_of_boxes_is_there_once_something_is_in_one(
    qtbot: QtBot, bench: Bench, order: Order
) -> None:
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    assert dialog.table.isColumnHidden(1), "nothing lies in a box: its room is the products'"
    dialog.table.choose(0)
    dialog.put_in_box()
    dialog.boxing.box_name.set_text("A3")
    dialog.boxing.place.set_text("freezer 1")
    dialog.boxing.try_it()
    assert not dialog.table.isColumnHidden(1)
    assert dialog.leaving[0].where == "A3, freezer 1"
