"""A form's half-typed input goes to the journal by itself and comes back as it was."""

from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.bench import Bench
from desktop.counter.book_dialog import BookDialog
from desktop.counter.line_dialog import LineDialog
from desktop.counter.place import BOOKING
from desktop.drafts import keep_draft, texts_of
from desktop.fields import FormDialog, TextField
from tests.desktop.counter.opened_counter import desk_of, opened, with_order
from tests.desktop.counter.test_order_view import halves
from tests.desktop.typing_in import type_into


def test_what_is_typed_is_noted_and_forgotten_when_it_is_left(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    place.order.find_cut("b")
    dialog = place.order.dialog
    assert dialog is not None
    name = f"line:{desk_of(place).order.id}"
    assert (bench.journal.found(name) or {})["cut"] == "b", "the key that opened it, too"
    type_into(dialog.note.editor, "mild")
    assert (bench.journal.found(name) or {})["note"] == "mild"
    dialog.drop()
    assert bench.journal.names() == ()


def test_every_field_and_tick_comes_back(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    place.order.find_cut("b")
    first = place.order.dialog
    assert first is not None
    first.cut.set_value("bacon")
    first.show_choice(first._choice)  # pyright: ignore[reportPrivateUsage]
    first.cut.set_text("bacon")
    first.cut.changed.emit()
    first.package_weight.set_text("2 l")
    first.package_weight.changed.emit()
    for box in first.finishes.values():
        box.setChecked(not box.isChecked())
    typed = texts_of(first)
    kept = bench.journal.found(f"line:{desk_of(place).order.id}")
    assert kept is not None
    assert kept == {**typed, "number": "0"}
    first.done(1)  # as if the program were gone: the draft is put back below
    bench.journal.note(f"line:{desk_of(place).order.id}", kept)
    place.show_order(desk_of(place).lot.id, desk_of(place).order.id)
    again = place.order.dialogs.shown
    assert isinstance(again, LineDialog)
    assert again is not first
    assert texts_of(again) == typed
    assert again.lead.isVisibleTo(again)
    again.drop()


def test_a_draft_of_a_line_changes_that_line(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk_of(place).fill_usual()
    line = desk_of(place).order.choices[3]
    name = f"line:{desk_of(place).order.id}"
    bench.journal.note(name, {"number": str(line.line), "note": "thin fat"})
    place.show_order(desk_of(place).lot.id, desk_of(place).order.id)
    dialog = place.order.dialog
    assert dialog is not None
    dialog.try_it()
    changed = desk_of(place).choice(line.line)
    assert changed is not None
    assert (changed.cut, changed.note) == (line.cut, "thin fat")
    assert bench.journal.names() == ()


def test_a_half_typed_booking_is_there_again(qtbot: QtBot, bench: Bench) -> None:
    first = opened(qtbot, bench)
    first.book()
    dialog = first.dialog
    assert isinstance(dialog, BookDialog)
    type_into(dialog.producer.editor, "Jørgen 555 010 0123")
    dialog.shares.set_value("halves")
    dialog.shares.changed.emit()
    dialog.owners[1].set_text("Bert")
    dialog.owners[1].changed.emit()
    kept = bench.journal.found(BOOKING)
    assert kept is not None
    dialog.drop()
    assert bench.journal.found(BOOKING) is None
    bench.journal.note(BOOKING, kept)
    again = opened(qtbot, bench).dialog
    assert isinstance(again, BookDialog)
    assert texts_of(again) == kept
    assert again.producer.text() == "Jørgen 555 010 0123"
    assert again.shares.value() == "halves"
    assert again.owners[1].isVisibleTo(again)
    again.drop()


class TwoFields(FormDialog):
    """One field that goes with the dialog, and one that outlives it."""

    def __init__(self) -> None:
        super().__init__()
        self.inside = TextField(self)
        self.outside = TextField()


def test_a_field_left_while_its_dialog_goes_notes_nothing(qtbot: QtBot, bench: Bench) -> None:
    """Of the fields that were gone by then the text was asked: a fault as the dialog closed."""
    dialog = TwoFields()
    outside = dialog.outside
    qtbot.addWidget(outside)
    keep_draft(bench.journal, "two", dialog)
    outside.changed.emit()
    assert bench.journal.names() == ("two",)
    bench.journal.forget("two")
    delete(dialog)
    with qtbot.captureExceptions() as faults:
        outside.changed.emit()
    assert faults == []
    assert bench.journal.names() == ()
