"""The self-test passes on a whole installation and fails on a broken one."""

import pytest

from desktop.commands import main
from shared.carcass import anatomy


def test_a_whole_installation_works(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["self-test", "--no-window"]) == 0
    said = capsys.readouterr()
    assert said.out.splitlines()[-1] == "Everything works."
    assert said.err == ""


def test_a_room_that_is_broken_is_named_and_the_others_are_still_tried(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def broken() -> tuple[str, ...]:
        raise FileNotFoundError("pork.toml")

    monkeypatch.setattr(anatomy, "species", broken)
    assert main(["self-test", "--no-window"]) == 1
    said = capsys.readouterr()
    assert "species: FileNotFoundError: pork.toml" in said.err
    assert "records" in said.out
    assert "Everything works." not in said.out
