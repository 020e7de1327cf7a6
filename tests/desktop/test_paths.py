"""Paths: one folder holds the whole shop."""

from dataclasses import fields
from pathlib import Path

from desktop.paths import Paths, bundled_fonts, paths_for, resources


def test_data_dir_moves_everything(tmp_path: Path) -> None:
    paths = paths_for(tmp_path / "shop")
    assert [field.name for field in fields(Paths)] == ["data"]
    for place in (paths.database, paths.settings, paths.logs, paths.copies, paths.journal):
        assert place.is_relative_to(tmp_path / "shop")
    paths.make()
    assert paths.logs.is_dir()
    assert paths.copies.is_dir()


def test_without_a_folder_it_is_the_users_own() -> None:
    assert paths_for().data.name == "Steelyard"


def test_the_programs_own_files_are_there() -> None:
    assert (resources() / "steelyard.svg").is_file()
    assert list(bundled_fonts().glob("Inter*.ttf"))
