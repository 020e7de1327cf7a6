"""The customer's own form at the counter: read, shown, and planned like typed lines."""

from io import BytesIO
from pathlib import Path

from pypdf import PdfWriter
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.form_dialog import FilledFormDialog
from desktop.counter.place import CounterPlace
from printing.order_form import FormFor, order_form
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.shop.details import ShopDetails
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, pressed, with_order
from tests.desktop.recorded_messages import RecordedMessages

CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


def counter(qtbot: QtBot, bench: Bench) -> CounterPlace:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    return with_order(qtbot, bench, lot)


def form(bench: Bench, path: Path, order: int, fields: dict[str, str]) -> Path:
    pdf = order_form(
        catalogue("pork"),
        FormFor("Anna Berg", 1, order),
        shop=ShopDetails(),
        made=bench.now(),
        words=Words("en"),
    )
    writer = PdfWriter(clone_from=BytesIO(pdf))
    writer.update_page_form_field_values(None, fields, auto_regenerate=False)
    with path.open("wb") as file:
        writer.write(file)
    return path


def test_a_filled_form_is_shown_then_planned_and_one_undo_takes_its_lines_back(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    place = counter(qtbot, bench)
    fields = {
        "cut.centre_chop.amount": "200",
        "cut.ham_steak.amount": "some",
        "cut.whole_butt.want": "/Yes",
        "usual.belly": "/Yes",
    }
    messages.answers = [form(bench, tmp_path / "f.pdf", desk_of(place).order.number, fields)]
    place.order.table.setFocus()
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    dialog = place.dialog
    assert isinstance(dialog, FilledFormDialog)
    assert desk_of(place).order.choices == ()
    assert dialog.lines.count() == 3
    assert [dialog.missed.item(at).text() for at in range(dialog.missed.count())] == [
        "Ham steaks, how much: “some” wasn't understood. The line is left out."
    ]
    dialog.try_it()
    assert {"centre_chop", "whole_butt", "bacon"} <= {
        one.cut for one in desk_of(place).order.choices
    }
    assert desk_of(place).answer.verdict == "cant"
    place.order.undo()
    place.order.undo()
    assert desk_of(place).order.choices == ()


def test_the_owner_s_note_goes_to_the_order_and_what_was_not_understood_stays_said(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    place = counter(qtbot, bench)
    fields = {"cut.ham_steak.amount": "some", "form.note": "Call after five", "usual.ham": "/Yes"}
    messages.answers = [form(bench, tmp_path / "f.pdf", desk_of(place).order.number, fields)]
    place.order.table.setFocus()
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    dialog = place.dialog
    assert isinstance(dialog, FilledFormDialog)
    assert "Call after five" in dialog.note.text()
    dialog.try_it()
    assert desk_of(place).order.note == "Call after five"
    assert place.order.refusal.text().startswith("Ham steaks, how much: “some”")
    place.order.undo()
    assert desk_of(place).order.note == ""
    assert desk_of(place).add_note("Call after five") is None
    assert desk_of(place).add_note("No MSG") is None
    assert desk_of(place).add_note("No MSG") is None
    assert desk_of(place).order.note == "Call after five\nNo MSG"


def test_an_empty_form_says_so_and_gives_nothing(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    place = counter(qtbot, bench)
    messages.answers = [form(bench, tmp_path / "f.pdf", desk_of(place).order.number, {})]
    place.order.table.setFocus()
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    dialog = place.dialog
    assert isinstance(dialog, FilledFormDialog)
    assert dialog.lead.text().startswith("Nothing is ticked or written on it.")
    assert dialog.lines.isHidden()
    assert not dialog.main.isEnabled()


def test_another_order_s_form_is_refused_in_a_sentence(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    place = counter(qtbot, bench)
    messages.answers = [form(bench, tmp_path / "f.pdf", 99, {})]
    place.order.table.setFocus()
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    assert place.order.refusal.text() == "This form is for order 99."
    messages.answers = [Path(tmp_path / "gone.pdf")]
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    assert place.order.refusal.text() == "This file is not a PDF that can be read."


def test_what_a_form_says_stands_over_the_least_window(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    place = counter(qtbot, bench)
    fields = {"cut.ham_steak.amount": "some", "form.note": "Call after five", "usual.ham": "/Yes"}
    messages.answers = [form(bench, tmp_path / "f.pdf", desk_of(place).order.number, fields)]
    place.order.table.setFocus()
    pressed(Qt.Key.Key_O, CTRL | SHIFT)
    dialog = place.dialog
    assert isinstance(dialog, FilledFormDialog)
    assert dialog.missed.isVisible()
    assert dialog.note.isVisible()
    assert dialog.lines.geometry().bottom() < dialog.unread.y()
    assert dialog.missed.geometry().bottom() < dialog.note.y()
    assert dialog.height() <= 660  # 696 less a title: both lists and the note came to 712
