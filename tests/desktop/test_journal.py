"""Drafts are on the disk soon after the key, whole, and a damaged file is set aside."""

import json
import subprocess
import sys
import threading
from pathlib import Path
from time import monotonic

import pytest

from desktop.journal import Journal, own_journal

WITHIN_S = 0.3


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "station-1.json"


def on_disk(path: Path) -> dict[str, dict[str, str]]:
    found: dict[str, dict[str, str]] = json.loads(path.read_text(encoding="utf-8"))
    return found


def test_a_draft_is_written_within_300_ms_by_another_thread(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    journal = Journal(path)
    written = threading.Event()
    at: list[tuple[float, str]] = []
    write = journal._write  # pyright: ignore[reportPrivateUsage]

    def watched(text: str) -> None:
        write(text)
        at.append((monotonic(), threading.current_thread().name))
        written.set()

    monkeypatch.setattr(journal, "_write", watched)
    begun = monotonic()
    journal.note("line:7", {"note": "mild, Jørgen"})
    assert written.wait(5)
    when, thread = at[0]
    assert thread == "journal"
    assert when - begun < WITHIN_S * 2, "twice the bound: the machine may be busy"
    assert on_disk(path) == {"line:7": {"note": "mild, Jørgen"}}
    journal.close()


def test_what_was_typed_is_found_by_the_next_start(path: Path) -> None:
    journal = Journal(path)
    journal.note("line:7", {"note": "m"})
    journal.note("note:8", {"note": "hocks"})
    journal.note("line:7", {"note": "mild"})
    journal.close()
    again = Journal(path)
    assert again.found("line:7") == {"note": "mild"}
    assert again.names() == ("note:8", "line:7")
    again.forget("line:7")
    again.close()
    assert Journal(path).names() == ("note:8",)


def test_a_closed_journal_can_be_written_again(path: Path) -> None:
    journal = Journal(path)
    journal.note("a", {"x": "1"})
    journal.close()
    journal.note("b", {"x": "2"})
    journal.close()
    assert Journal(path).names() == ("a", "b")


def test_a_damaged_file_is_set_aside_and_nothing_fails(path: Path) -> None:
    path.write_text('{"line:7": {"note": "mi', encoding="utf-8")
    journal = Journal(path)
    assert journal.names() == ()
    assert path.with_suffix(".damaged").read_text(encoding="utf-8").startswith('{"line:7"')
    journal.note("a", {"x": "1"})
    journal.close()
    assert on_disk(path) == {"a": {"x": "1"}}


def test_a_disk_that_says_no_stops_nobody(tmp_path: Path) -> None:
    journal = Journal(tmp_path / "gone" / "station-1.json")
    journal.note("a", {"x": "1"})
    journal.close()
    assert journal.found("a") == {"x": "1"}


def test_a_second_window_of_a_station_has_its_own_drafts(tmp_path: Path) -> None:
    """Else it opened on the form half typed in the first, and both could keep it."""
    first = own_journal(tmp_path, 1)
    first.note("line:7", {"note": "mild"})
    second = own_journal(tmp_path, 1)
    assert second.names() == ()
    second.note("line:8", {"note": "hot"})
    assert own_journal(tmp_path, 2).names() == (), "another station is another matter"
    second.close()
    first.close()
    again = own_journal(tmp_path, 1)
    assert again.names() == ("line:7",)
    beside = own_journal(tmp_path, 1)
    assert beside.names() == ("line:8",)
    beside.close()
    again.close()


def test_what_a_killed_window_held_is_found_by_the_next(tmp_path: Path) -> None:
    held = subprocess.run(
        [
            sys.executable,
            "-c",
            "import os, sys; from pathlib import Path; from desktop.journal import own_journal;"
            "journal = own_journal(Path(sys.argv[1]), 1); journal.note('line:7', {'note': 'mild'});"
            'journal._write(\'{"line:7": {"note": "mild"}}\'); os._exit(9)',
            str(tmp_path),
        ],
        cwd=Path(__file__).parents[2],
        check=False,
    )
    assert held.returncode == 9
    assert (tmp_path / "station-1.lock").exists()
    found = own_journal(tmp_path, 1)
    assert found.found("line:7") == {"note": "mild"}
    found.close()


def test_a_folder_that_can_not_be_written_has_a_journal_all_the_same(tmp_path: Path) -> None:
    journal = own_journal(tmp_path / "gone", 1)
    journal.note("line:7", {"note": "mild"})
    assert journal.found("line:7") == {"note": "mild"}
    journal.close()
