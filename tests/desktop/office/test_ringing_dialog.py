"""The rules of ringing and freezing: read, checked at the field, kept with who and when."""

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.office.ringing_dialog import RingingDialog
from tests.desktop.audit import unnamed


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench) -> RingingDialog:
    made = RingingDialog(bench)
    qtbot.addWidget(made)
    made.open()
    return made


def test_what_is_set_is_kept_and_says_who_set_it(
    qtbot: QtBot, bench: Bench, dialog: RingingDialog
) -> None:
    assert dialog.kept.text().startswith("As the shop began")
    assert dialog.calls.line.isReadOnly(), "who rings on needs no number of calls"
    dialog.due.set_text("2")
    dialog.counted.set_value("block")
    dialog.without.set_value("usual")
    dialog.without.changed.emit()
    dialog.calls.set_text("4")
    dialog.hours.set_text("36")
    dialog.frozen.set_value("place")
    dialog.try_it()
    with bench.store.read() as work:
        calls, freezer = work.calls.rules(), work.freezing.rules()
    assert (calls.due_days, calls.counted_from, calls.without_answer) == (2, "block", "usual")
    assert calls.most_calls == 4
    assert (freezer.hours, freezer.counted_from) == (36, "place")
    again = RingingDialog(bench)
    qtbot.addWidget(again)
    assert again.kept.text().startswith(f"Set last by {bench.person.name}, ")


def test_too_many_days_are_complained_about_at_the_field(
    bench: Bench, dialog: RingingDialog
) -> None:
    dialog.remind.set_text("61")
    dialog.try_it()
    assert dialog.isVisible()
    assert dialog.remind.complaint.text()
    with bench.store.read() as work:
        assert work.calls.rules().remind_days == 3


def test_another_station_s_change_is_not_written_over(bench: Bench, dialog: RingingDialog) -> None:
    other = RingingDialog(bench)
    other.due.set_text("5")
    other.try_it()
    dialog.due.set_text("6")
    dialog.try_it()
    assert "has changed this meanwhile" in dialog.refusal.text()
    other.deleteLater()


def test_all_that_takes_the_keyboard_has_a_name(dialog: RingingDialog) -> None:
    assert unnamed(dialog) == []
