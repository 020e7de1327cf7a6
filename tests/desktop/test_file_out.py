"""A file is written whole or not at all, and what the world says is a sentence with a way out."""

import errno
from pathlib import Path

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot
from shiboken6 import delete

from desktop.bench import Bench
from desktop.file_out import why_not_written, write_out


def written(qtbot: QtBot, bench: Bench, path: Path, content: str | bytes) -> str:
    """What is said of it; "" when it is there."""
    said: list[str] = []
    with qtbot.waitSignal(bench.work.idle):
        write_out(bench, path, lambda: content, said.append, bench.work)
    return said[0]


@pytest.mark.parametrize(
    ("content", "there"), [("1 ¼\r\n", "1 ¼\r\n".encode()), (b"%PDF", b"%PDF")]
)
def test_what_was_made_is_in_the_file_byte_for_byte(
    qtbot: QtBot, bench: Bench, tmp_path: Path, content: str | bytes, there: bytes
) -> None:
    path = tmp_path / "list.csv"
    path.write_bytes(b"an older one")
    assert written(qtbot, bench, path, content) == ""
    assert path.read_bytes() == there
    assert sorted(tmp_path.glob("list*")) == [path]


def test_a_disk_that_fills_up_in_the_middle_leaves_what_was_there(
    qtbot: QtBot, bench: Bench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "list.csv"
    path.write_bytes(b"an older one")

    def full(self: Path, content: bytes) -> int:
        with self.open("wb") as file:
            file.write(content[:2])
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", full)
    said = written(qtbot, bench, path, "a longer one")
    assert said == f"{path} was not written: the disk is full. Make room, or choose another."
    assert path.read_bytes() == b"an older one"
    assert sorted(tmp_path.glob("list*")) == [path]


def test_a_folder_or_none_where_a_file_should_be_is_said(
    qtbot: QtBot, bench: Bench, tmp_path: Path
) -> None:
    assert "is a folder" in written(qtbot, bench, tmp_path, "")
    nowhere = tmp_path / "gone" / "list.csv"
    assert written(qtbot, bench, nowhere, "") == (
        f"There is no folder {tmp_path / 'gone'}. Choose one that is there."
    )


def test_each_fault_of_the_world_has_its_own_words() -> None:
    numbers = (errno.ENOSPC, errno.EACCES, errno.ENOENT, errno.EISDIR, errno.EIO)
    said = {why_not_written(Path("list.csv"), OSError(one, "told")) for one in numbers}
    assert len(said) == len(numbers)
    assert "list.csv can't be written (told)." in said


def test_who_asked_may_be_gone_by_then(qtbot: QtBot, bench: Bench, tmp_path: Path) -> None:
    owner = QObject()
    path = tmp_path / "list.csv"
    with qtbot.waitSignal(bench.work.idle):
        write_out(bench, path, lambda: "whole", lambda _why: pytest.fail("told to nobody"), owner)
        delete(owner)
    assert path.read_text("utf-8") == "whole"
