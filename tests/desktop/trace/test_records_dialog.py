"""Writing the kept records out from the window."""

from datetime import date

import pytest
from PySide6.QtCore import QThread
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.bench import Bench
from desktop.trace.records_dialog import RecordsDialog
from shared.shop.records import TABLES


def test_the_tables_are_written_and_it_is_said_where(qtbot: QtBot, bench: Bench) -> None:
    dialog = RecordsDialog(bench)
    qtbot.addWidget(dialog)
    dialog.try_it()
    assert dialog.running
    qtbot.waitUntil(lambda: dialog.written is not None)
    assert dialog.written is not None
    assert {one.stem for one in dialog.written.iterdir()} == {one.name for one in TABLES}
    assert str(dialog.written) in dialog.progress.text()


def test_days_the_wrong_way_round_are_said_at_the_field(qtbot: QtBot, bench: Bench) -> None:
    dialog = RecordsDialog(bench)
    qtbot.addWidget(dialog)
    dialog.first.set_value(date(2027, 1, 1))
    dialog.try_it()
    assert not dialog.running
    assert dialog.written is None


def test_stop_says_that_the_tables_are_not_whole(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    dialog = RecordsDialog(bench)
    qtbot.addWidget(dialog)

    def slow(*given: object) -> int:
        told = given[-1]
        assert callable(told)
        while told(1):
            QThread.msleep(1)
        return 1

    monkeypatch.setattr("desktop.shell.records.write_records", slow)
    dialog.try_it()
    assert dialog.leave.text() == "&Stop"
    dialog.reject()
    qtbot.waitUntil(lambda: not dialog.running)
    assert dialog.written is None
    assert "not whole" in dialog.progress.text()


def test_who_asked_may_be_gone_before_all_is_written(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The worker told the dialog itself how far it was: with the dialog gone, the program ended."""
    dialog = RecordsDialog(bench)
    asked: list[bool] = []

    def slow(*given: object) -> int:
        told = given[-1]
        assert callable(told)
        while told(len(asked)):
            asked.append(True)
            QThread.msleep(1)
        return 1

    monkeypatch.setattr("desktop.shell.records.write_records", slow)
    dialog.try_it()
    qtbot.waitUntil(lambda: len(asked) > 2 and "records" in dialog.progress.text())
    delete(dialog)
    qtbot.waitUntil(lambda: not bench.work.busy())
