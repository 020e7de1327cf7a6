"""The note of an order: that it is fetched fresh is agreed here and kept with the order."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.note_dialog import OrderNoteDialog
from tests.db.examples import lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, with_order


def test_fetched_fresh_is_agreed_with_the_note(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    desk = desk_of(with_order(qtbot, bench, lot))
    dialog = OrderNoteDialog(bench, desk)
    qtbot.addWidget(dialog)
    assert dialog.fetched.value() == "frozen"
    assert unnamed(dialog) == []
    dialog.note.set_value("bones for the dog")
    dialog.fetched.set_value("fresh")
    dialog.try_it()
    with bench.store.read() as work:
        assert work.freezing.agreed_fresh(desk.order.id)
        again = work.orders.get(desk.order.id)
    assert again is not None
    assert again.note == "bones for the dog"
    other = OrderNoteDialog(bench, desk)
    qtbot.addWidget(other)
    assert other.fetched.value() == "fresh"
