"""Choosing a customer in a shop that has more of them than a field offers at once."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter import customer_field, customer_names
from desktop.counter.book_dialog import BookDialog
from desktop.counter.booking_dialog import BookingDialog
from desktop.counter.customer_field import CustomerField
from desktop.work import slow_turns
from tests.bench.find import fill
from tests.db.examples import customer, lot_of_halves
from tests.desktop.counter.opened_counter import focused, listed, opened
from tests.desktop.recorded_messages import RecordedMessages

MANY = 20_000


def offered(qtbot: QtBot, bench: Bench) -> CustomerField:
    """A field on the screen that has the keyboard, with the shop's customers behind it."""
    field = CustomerField()
    qtbot.addWidget(field)
    field.show()
    field.activateWindow()
    qtbot.waitUntil(field.isActiveWindow)
    customer_field.offer_customers(bench, (field,))
    listed(qtbot, bench)
    field.line.setFocus()
    return field


def searched(qtbot: QtBot, bench: Bench) -> None:
    """Wait until what was typed has been looked for in the whole store."""
    qtbot.wait(customer_field.WAIT_MS + 20)
    listed(qtbot, bench)


def four_customers(bench: Bench) -> list[int]:
    with bench.store.work(bench.person, bench.station) as work:
        made = [
            customer(work, name, phone).id
            for name, phone in (
                ("Aaron Aas", "(555) 010-0777"),
                ("Bo Ternstrom", "(555) 010-0778"),
                ("Vera Ostergaard", "(555) 010-0779"),
                ("Zita Abendroth", ""),
            )
        ]
        work.commit()
    return made


def test_any_part_finds_who_is_not_among_the_first_names(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Only Aaron is among the first names; Vera is found by a middle part and taken by keys."""
    monkeypatch.setattr(customer_field, "MOST", 1)
    vera = four_customers(bench)[2]
    field = offered(qtbot, bench)
    assert len(field.values) == 1
    QTest.keyClicks(field.line, "terg ver")
    assert field.hits() == ()
    searched(qtbot, bench)
    assert field.hits() == ("Vera Ostergaard  (555) 010-0779",)
    popup = QApplication.activePopupWidget()
    assert popup is not None
    QTest.keyClick(popup, Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert field.text() == "Vera Ostergaard  (555) 010-0779"
    assert field.value() == vera
    field.line.selectAll()
    QTest.keyClicks(field.line, "010-0778")
    searched(qtbot, bench)
    assert field.value() is None
    assert field.hits() == ("Bo Ternstrom  (555) 010-0778",)


def test_down_waits_for_what_was_typed_and_near_names_come_last(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(customer_field, "MOST", 1)
    zita = four_customers(bench)[3]
    field = offered(qtbot, bench)
    QTest.keyClicks(field.line, "abendorth")  # two letters swapped; no worker has read it yet
    QTest.keyClick(focused(), Qt.Key.Key_Down)
    assert field.hits() == ("Zita Abendroth, written nearly so",)
    popup = QApplication.activePopupWidget()
    assert popup is not None
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert field.text() == "Zita Abendroth"
    assert field.value() == zita


def test_what_a_worker_found_for_other_letters_is_not_shown(qtbot: QtBot, bench: Bench) -> None:
    four_customers(bench)
    field = offered(qtbot, bench)
    QTest.keyClicks(field.line, "ver")
    assert field.hits() == ("Vera Ostergaard  (555) 010-0779",), "the first names need no worker"
    qtbot.wait(customer_field.WAIT_MS + 1)
    QTest.keyClicks(field.line, "qq")
    searched(qtbot, bench)
    assert field.hits() == ()
    field.line.clear()
    QTest.keyClicks(field.line, "bo")
    assert field.hits() == ("Bo Ternstrom  (555) 010-0778",)


def test_names_that_come_late_leave_what_is_being_typed(qtbot: QtBot, bench: Bench) -> None:
    four_customers(bench)
    field = CustomerField()
    qtbot.addWidget(field)
    customer_field.offer_customers(bench, (field,))
    QTest.keyClicks(field.line, "Olaf Nyberg")
    field.line.setCursorPosition(4)
    listed(qtbot, bench)
    assert (field.text(), field.line.cursorPosition()) == ("Olaf Nyberg", 4)
    assert len(field.values) == 4
    assert field.value() is None


def test_owners_beyond_those_offered_stay_on_a_changed_booking(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Only Aaron is offered by his place in the alphabet; Anna and Bert have the animal."""
    monkeypatch.setattr(customer_field, "MOST", 1)
    with bench.store.work(bench.person, bench.station) as work:
        customer(work, "Aaron Aas", "(555) 010-0777")
        lot = lot_of_halves(work)
        work.commit()
    dialog = BookingDialog(bench, lot.id)
    qtbot.addWidget(dialog)
    assert [field.text()[:4] for field in dialog.owners[:2]] == ["Anna", "Bert"]
    dialog.note.set_text("gate code 4")
    dialog.try_it()
    with bench.store.read() as work:
        now = work.lots.get(lot.id)
    assert now is not None
    assert now.note == "gate code 4"
    assert [one.customer_id for one in now.shares] == [one.customer_id for one in lot.shares]


def test_one_known_already_can_be_chosen_after_the_question(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(customer_field, "MOST", 1)
    with bench.store.work(bench.person, bench.station) as work:
        customer(work, "Aaron Aas", "(555) 010-0777")
        anna = customer(work, "Anna Berg", "(555) 010-0123")
        work.commit()
    field = offered(qtbot, bench)
    assert anna.id not in field.values
    with bench.store.read() as work:
        field.set_text("anna berg 555 010 0123")
        messages.answers = [False]
        assert not field.known(work, messages)
    assert field.text() == "anna berg 555 010 0123"
    field.set_text("Anna Berg  (555) 010-0123")
    assert field.value() == anna.id


@pytest.mark.timed
def test_booking_opens_at_once_however_many_customers_there_are(qtbot: QtBot, bench: Bench) -> None:
    """Thirteen fields offer the same two thousand names: they are read and put once."""
    fill(bench.store, MANY)
    place = opened(qtbot, bench)
    place.book()  # the first time also reads modules
    assert place.dialog is not None
    place.dialog.drop()
    listed(qtbot, bench)
    with slow_turns() as slow:
        place.book()
        listed(qtbot, bench)
        dialog = place.dialog
        assert isinstance(dialog, BookDialog)
        for letter in "baden":
            QTest.keyClicks(dialog.producer.line, letter)
            qtbot.wait(10)
        qtbot.wait(customer_field.WAIT_MS)
        listed(qtbot, bench)
    assert len(dialog.producer.values) == customer_field.MOST
    assert len(dialog.producer.hits()) == customer_names.MOST_HITS
    assert slow == []


def test_a_new_name_written_nearly_like_a_known_one_is_asked_about(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        customer(work, "Anna Johnson")
        work.commit()
    field = CustomerField()
    qtbot.addWidget(field)
    field.set_text("Anna Jonson 555 010 0888")
    messages.answers = [False, True]
    with bench.store.read() as work:
        assert not field.known(work, messages)
        assert field.known(work, messages), "another Anna may be added after all"
    assert messages.asked[0].endswith("is known already, written nearly the same.")


def test_down_after_going_back_chooses_who_is_known_and_nobody_else(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    """Stepping on from what was typed led to the first name of the shop."""
    vera = four_customers(bench)[2]
    field = offered(qtbot, bench)
    field.set_text("Vera Ostergaard")
    messages.answers = [False]
    with bench.store.read() as work:
        assert not field.known(work, messages)
    qtbot.waitUntil(lambda: QApplication.activePopupWidget() is not None)
    popup = QApplication.activePopupWidget()
    assert popup is not None, "who goes back to choose is shown whom"
    popup.hide()
    QTest.keyClick(focused(), Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert field.value() == vera
    field.set_text("Olaf Nyberg")
    QTest.keyClick(focused(), Qt.Key.Key_Down)
    assert field.text() == "Olaf Nyberg"


def test_a_producer_newly_written_is_offered_as_an_owner(qtbot: QtBot, bench: Bench) -> None:
    """He was found nowhere, and who typed a part of his name booked a second customer."""
    place = opened(qtbot, bench)
    place.book()
    dialog = place.dialog
    assert isinstance(dialog, BookDialog)
    qtbot.waitUntil(dialog.isActiveWindow)
    listed(qtbot, bench)
    dialog.species.set_value("lamb")
    dialog.shares.set_value("halves")
    dialog.shares.changed.emit()
    dialog.producer.focus()
    QTest.keyClicks(focused(), "Marit Ferrebee 555 010 0144")
    first, second = dialog.owners[:2]
    first.line.setFocus()
    QTest.keyClicks(first.line, "ferr")
    assert first.hits() == ("Marit Ferrebee 555 010 0144",)
    below = QApplication.activePopupWidget()
    assert isinstance(below, QAbstractItemView)
    assert below.viewport().width() >= below.sizeHintForColumn(0), "the phone was cut off"
    searched(qtbot, bench)
    assert first.hits() == ("Marit Ferrebee 555 010 0144",)
    QTest.keyClick(first.line, Qt.Key.Key_Down)
    popup = QApplication.activePopupWidget()
    assert popup is not None
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert first.text() == "Marit Ferrebee 555 010 0144"
    second.line.setFocus()
    QTest.keyClicks(second.line, "marit ferrebee")
    dialog.try_it()
    assert dialog.lot is not None
    assert {one.customer_id for one in dialog.lot.shares} == {dialog.lot.producer_id}
    with bench.store.read() as work:
        assert len(work.customers.names(10)) == 1
