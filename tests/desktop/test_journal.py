"""Drafts are on the disk soon after the key, whole, and a damaged file is set aside."""

import json
import threading
from pathlib import Path
from time import monotonic

import pytest

from desktop.journal import Journal

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
