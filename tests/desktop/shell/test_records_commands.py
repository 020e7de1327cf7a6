"""Copying, putting back and checking the records from a shell."""

import sqlite3
from pathlib import Path

import pytest

from db import migrate
from db.engine import file_engine
from desktop.commands import main
from desktop.paths import Paths
from desktop.records import open_records


@pytest.fixture
def paths(tmp_path: Path) -> Paths:
    """A shop whose records know one person."""
    made = Paths(tmp_path / "shop")
    made.make()
    store = open_records(made)
    store.sign_on("Ann", "Counter")
    store.close()
    return made


def people(paths: Paths) -> list[str]:
    store = open_records(paths)
    with store.read() as work:
        found = [person.name for person in work.people.persons()]
    store.close()
    return found


def run(paths: Paths, *arguments: str) -> int:
    return main([*arguments, "--data-dir", str(paths.data)])


def test_a_copy_put_back_brings_the_records_back_and_keeps_the_newer_ones(
    paths: Paths, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    copy = tmp_path / "copy.db"
    assert run(paths, "backup", "-o", str(copy)) == 0
    store = open_records(paths)
    store.sign_on("Later", "Counter")
    store.close()
    assert people(paths) == ["Ann", "Later"]
    assert run(paths, "restore", str(copy)) == 0
    assert people(paths) == ["Ann"]
    said = capsys.readouterr().out
    kept = Path(said.splitlines()[-1].removeprefix("What was there before is kept as ")[:-1])
    with sqlite3.connect(kept) as connection:
        names = {row[0] for row in connection.execute("SELECT name FROM persons")}
    connection.close()
    assert names == {"Ann", "Later"}


def test_a_copy_without_a_name_goes_to_the_folder_of_copies(
    paths: Paths, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(paths, "backup") == 0
    assert run(paths, "restore") == 0
    assert "by_hand" in capsys.readouterr().out


def test_sound_records_are_said_to_be_sound(
    paths: Paths, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(paths, "check-store") == 0
    assert capsys.readouterr().out == f"{paths.database} is sound.\n"


def test_records_of_an_older_version_are_said_to_be_sound_as_that(
    paths: Paths, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    copy = tmp_path / "older.db"
    engine = file_engine(copy, foreign_keys=False)
    migrate.upgrade(engine, migrate.REVISIONS[-2])
    engine.dispose()
    assert run(paths, "check-store", str(copy)) == 0
    said = capsys.readouterr().out
    assert str(copy) in said
    assert "older version, and sound as that" in said
    assert "brought up to date" in said
    connection = sqlite3.connect(copy)
    with connection:
        connection.execute("CREATE TABLE stray (of INTEGER REFERENCES persons (id))")
        connection.execute("INSERT INTO stray VALUES (99)")
    connection.close()
    assert run(paths, "check-store", str(copy)) == 1
    found = capsys.readouterr()
    assert "sound" not in found.out
    assert "older version" in found.err
    assert "stray" in found.err


def test_spoiled_records_are_found(paths: Paths, capsys: pytest.CaptureFixture[str]) -> None:
    size = paths.database.stat().st_size
    with paths.database.open("r+b") as file:
        file.seek(size // 2)
        file.write(b"\xff" * (size // 4))
    assert run(paths, "check-store") == 1
    assert str(paths.database) in capsys.readouterr().err


def test_a_spoiled_copy_is_not_put_back(
    paths: Paths, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    copy = tmp_path / "copy.db"
    copy.write_bytes(b"a letter to the inspector")
    before = paths.database.read_bytes()
    assert run(paths, "restore", str(copy)) == 1
    assert "holds no records of Steelyard" in capsys.readouterr().err
    assert paths.database.read_bytes() == before
    assert run(paths, "restore", str(tmp_path / "gone.db")) == 1
    assert "There is no copy at" in capsys.readouterr().err


@pytest.mark.parametrize("command", ["backup", "check-store"])
def test_where_there_are_no_records_nothing_is_made(
    tmp_path: Path, command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    paths = Paths(tmp_path / "nowhere")
    assert run(paths, command) == 1
    assert capsys.readouterr().err.strip()
    assert not paths.database.exists()


def test_the_sentences_come_in_spanish(paths: Paths, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(paths, "check-store", "--language", "es") == 0
    assert capsys.readouterr().out == f"{paths.database} está bien.\n"
