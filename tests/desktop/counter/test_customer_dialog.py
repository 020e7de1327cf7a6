"""What is kept of a customer is changed from his order, and stands on his next papers."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.customer_dialog import CustomerDialog, customer_of
from desktop.counter.place import CounterPlace
from shared.shop.customers import Customer
from tests.db.examples import customer, lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, pressed, with_order

CTRL = Qt.KeyboardModifier.ControlModifier


def with_dialog(qtbot: QtBot, bench: Bench) -> tuple[CounterPlace, CustomerDialog]:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    place.order.table.setFocus()
    pressed(Qt.Key.Key_D, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, CustomerDialog)
    return place, dialog


def test_address_mail_and_language_are_kept_and_the_order_shows_the_new_name(
    qtbot: QtBot, bench: Bench
) -> None:
    place, dialog = with_dialog(qtbot, bench)
    assert unnamed(dialog) == []
    dialog.name.set_text("Ana Berg")
    dialog.email.set_text("ana@example.com")
    dialog.language.set_value("es")
    dialog.address.set_value("12 Mill Lane\nOakfield")
    dialog.try_it()
    assert not dialog.isVisible()
    kept = customer_of(bench, desk_of(place).order.customer_id)
    assert kept is not None
    assert (kept.name, kept.email, kept.language) == ("Ana Berg", "ana@example.com", "es")
    assert kept.address == "12 Mill Lane\nOakfield"
    assert kept.phone == "(555) 010-0123"
    assert desk_of(place).order.owner == "Ana Berg"


def test_a_name_is_needed_and_what_another_changed_is_not_written_over(
    qtbot: QtBot, bench: Bench
) -> None:
    place, dialog = with_dialog(qtbot, bench)
    dialog.name.set_text("")
    dialog.try_it()
    assert dialog.isVisible()
    kept = customer_of(bench, desk_of(place).order.customer_id)
    assert kept is not None
    with bench.store.work(bench.person, bench.station) as work:
        assert isinstance(work.customers.save(kept), Customer)
        work.commit()
    dialog.name.set_text("Ana Berg")
    dialog.try_it()
    assert dialog.isVisible()
    assert "has changed this meanwhile" in dialog.refusal.text()


def test_a_joined_entry_leads_to_the_one_that_stays(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        first, second = customer(work, "Ana Bergh"), customer(work, "Anna Berg")
        assert isinstance(work.customers.join(first.id, second.id), Customer)
        work.commit()
    kept = customer_of(bench, first.id)
    assert kept is not None
    assert kept.id == second.id
    assert customer_of(bench, None) is None
