"""Choosing a customer in a shop that has more of them than a field offers at once."""

import pytest
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter import customer_field
from desktop.counter.book_dialog import BookDialog
from desktop.counter.booking_dialog import BookingDialog
from desktop.counter.customer_field import CustomerField
from desktop.work import slow_turns
from tests.bench.find import fill
from tests.db.examples import customer, lot_of_halves
from tests.desktop.counter.opened_counter import opened
from tests.desktop.recorded_messages import RecordedMessages

MANY = 20_000


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
    field = CustomerField()
    qtbot.addWidget(field)
    with bench.store.read() as work:
        customer_field.offer_customers(work, (field,))
        assert anna.id not in field.values
        field.set_text("anna berg 555 010 0123")
        messages.answers = [False]
        assert not field.known(work, messages)
    assert anna.id in field.values
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
    place.dialog.reject()
    qtbot.wait(20)
    with slow_turns() as slow:
        place.book()
        qtbot.wait(20)
        dialog = place.dialog
        assert isinstance(dialog, BookDialog)
        for letter in "baden":
            QTest.keyClicks(dialog.producer.line, letter)
            qtbot.wait(10)
    assert len(dialog.producer.values) == customer_field.MOST
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
