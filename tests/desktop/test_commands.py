"""The command line: help for every command, no window library for any, and the exit statuses."""

import subprocess
import sys
from pathlib import Path

import pytest

from desktop.commands import main, parser

NAMES = [
    name
    for action in parser()._subparsers._group_actions  # pyright: ignore[reportOptionalMemberAccess]
    for name in action.choices  # pyright: ignore[reportOptionalIterable]
]


def test_the_commands_are_those_agreed() -> None:
    assert {"plan", "print", "bill", "backup", "restore", "check-store", "self-test"} <= set(NAMES)


@pytest.mark.parametrize("name", ["", *NAMES])
def test_every_command_has_help(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as left:
        main([name, "--help"] if name else ["--help"])
    assert left.value.code == 0
    said = capsys.readouterr().out
    assert "--data-dir FOLDER" in said
    assert said.startswith(f"usage: steelyard {name}".strip())


@pytest.mark.parametrize("arguments", [["carve"], ["plan"], ["--language", "xx"], ["backup", "-x"]])
def test_a_wrong_command_ends_with_status_2(
    arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as left:
        main(arguments)
    assert left.value.code == 2
    assert "usage: steelyard" in capsys.readouterr().err


def test_reading_the_command_line_reads_neither_window_nor_store_nor_paper() -> None:
    code = (
        "import sys; from desktop.commands import main, parser; parser();"
        "heavy = {'PySide6', 'sqlalchemy', 'alembic', 'reportlab', 'pint'} & set(sys.modules);"
        "sys.exit(f'read: {heavy}' if heavy else 0)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")


def test_without_a_command_the_window_opens(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    from desktop import app

    opened: list[object] = []
    monkeypatch.setattr(app, "run", lambda data_dir: opened.append(data_dir) or 0)
    assert main(["--data-dir", str(tmp_path)]) == 0
    assert opened == [tmp_path]
