"""Starting: everything wired in order, and records that can't be opened end in a sentence."""

import sqlite3
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.backup import list_copies
from db.problems import StoreUnavailable
from desktop import app
from desktop.app import Program
from desktop.look.theme import theme_of
from desktop.paths import Paths
from desktop.people import PersonDialog
from desktop.records import open_records
from desktop.settings import SettingsFile
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into


@pytest.fixture
def program(
    qapp: QApplication, qtbot: QtBot, paths: Paths, messages: RecordedMessages
) -> Iterator[Program]:
    started = app.start(qapp, paths, messages, open_records)
    assert started is not None
    qtbot.addWidget(started.window)
    yield started
    started.window.close()
    started.close()


def test_a_new_folder_becomes_a_shop_and_the_window_opens(
    program: Program, paths: Paths, messages: RecordedMessages
) -> None:
    assert program.window.isVisible()
    assert paths.database.exists()
    assert program.bench.person.name == "Front counter"
    assert messages.told == []


def test_the_icon_opens_the_folder_it_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What was said behind `steelyard-window` was ignored, and another shop's records opened."""
    opened: list[Path | None] = []

    def run(data_dir: Path | None = None) -> int:
        opened.append(data_dir)
        return 0

    monkeypatch.setattr(app, "run", run)
    assert app.main(["--data-dir", str(tmp_path)]) == 0
    assert app.main([]) == 0
    assert opened == [tmp_path, None]


def test_light_and_dark_and_size_change_at_once(program: Program) -> None:
    program.bench.settings.change(theme="dark", percent=125)
    assert theme_of().roles.name == "dark"
    assert program.window.font().pointSizeF() == pytest.approx(11.25 * 1.25)
    program.bench.settings.change(theme="light", percent=100)
    assert theme_of().roles.name == "light"


def test_who_is_working_is_asked_kept_and_shown(qtbot: QtBot, program: Program) -> None:
    program.ask_person()
    dialog = program.window.findChild(PersonDialog)
    assert dialog is not None
    assert unnamed(dialog) == []
    dialog.name.line.selectAll()
    type_into(dialog.name.line, "Maren Ødegård")
    dialog.try_it()
    assert program.window.person.text() == "Maren Ødegård"
    assert program.bench.settings.now.person == "Maren Ødegård"
    with program.bench.store.read() as work:
        names = [person.name for person in work.people.persons()]
    assert names == ["Front counter", "Maren Ødegård"]


def test_a_copy_is_made_off_the_windows_thread_and_told(
    qtbot: QtBot, program: Program, paths: Paths
) -> None:
    with qtbot.waitSignal(program.bench.work.idle):
        program.copy_records()
    made = [copy for copy in list_copies(paths.copies) if copy.kind == "by_hand"]
    assert len(made) == 1
    assert program.window.status.text() == f"Copied to {made[0].path}."


def test_the_window_opens_in_the_place_it_was_left_in(
    qapp: QApplication, qtbot: QtBot, paths: Paths, messages: RecordedMessages
) -> None:
    SettingsFile(paths.settings).change(place="block", window="zz")
    started = app.start(qapp, paths, messages, open_records)
    assert started is not None
    qtbot.addWidget(started.window)
    assert started.window.place().key == "block"
    started.window.close()
    started.close()


@pytest.mark.parametrize(
    ("spoil", "said"),
    [
        (lambda path: path.write_bytes(b"a letter to the inspector"), "holds no records"),
        (lambda path: path.write_bytes(b"SQLite format 3\x00" + b"\x00" * 2000), ""),
    ],
)
def test_records_that_can_not_be_opened_end_in_a_sentence_with_a_way_out(
    qapp: QApplication,
    paths: Paths,
    messages: RecordedMessages,
    spoil: Callable[[Path], int],
    said: str,
) -> None:
    spoil(paths.database)
    before = paths.database.read_bytes()
    assert app.start(qapp, paths, messages, open_records) is None
    assert len(messages.told) == 1
    assert said in messages.told[0]
    assert str(paths.database) in messages.told[0]
    assert paths.database.read_bytes() == before


def test_records_of_a_newer_program_are_refused(
    qapp: QApplication, paths: Paths, messages: RecordedMessages
) -> None:
    open_records(paths).close()
    connection = sqlite3.connect(paths.database)
    connection.execute("UPDATE alembic_version SET version_num = '9999_from_the_future'")
    connection.commit()
    connection.close()
    assert app.start(qapp, paths, messages, open_records) is None
    assert "made by a newer Steelyard" in messages.told[0]


def test_every_code_of_the_store_has_its_sentence_in_both_languages() -> None:
    from typing import get_args

    from db.problems import StoreCode
    from desktop.records import refusal_text
    from printing.words import LANGUAGES, Words

    paths = Paths(Path("shop"))
    sentences = {
        refusal_text(StoreUnavailable(code), Words(language, strict=True), paths)
        for code in get_args(StoreCode)
        for language in LANGUAGES
    }
    assert len(sentences) == 2 * len(get_args(StoreCode))


def test_the_self_test_goes_through_every_place_and_closes(
    qapp: QApplication, tmp_path: Path
) -> None:
    assert app.try_out(tmp_path / "shop") == 0


def test_the_self_tests_patience_ends_with_it(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its clock, left running, would end whatever loop runs when the time is up."""
    monkeypatch.setattr(app, "TRY_OUT_MS", 4_000)
    assert app.try_out(tmp_path / "shop") == 0
    done: list[bool] = []
    QTimer.singleShot(4_200, lambda: done.append(True))  # it was begun before this
    qtbot.waitUntil(lambda: bool(done), timeout=8_000)


def test_a_fault_in_a_place_fails_the_self_test(
    qapp: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from desktop.wrap.place import WrapPlace

    def fail(_self: WrapPlace) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr(WrapPlace, "refresh", fail)
    monkeypatch.setattr(app, "TRY_OUT_MS", 200)
    assert app.try_out(tmp_path / "shop") == 3
    for report in QApplication.topLevelWidgets():
        report.close()
