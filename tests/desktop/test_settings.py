"""Settings: kept, checked, and never in the way of starting."""

from pathlib import Path

import pytest

from desktop.settings import Settings, SettingsFile


def test_what_is_changed_is_there_again(tmp_path: Path) -> None:
    path = tmp_path / "shop" / "settings.json"
    first = SettingsFile(path)
    heard: list[Settings] = []
    first.on_change(heard.append)
    first.change(theme="dark", percent=125, printers={"label": "Zebra ł"})
    assert SettingsFile(path).now == heard[0] == first.now
    assert first.now.printers == {"label": "Zebra ł"}


def test_without_a_file_the_usual_holds(tmp_path: Path) -> None:
    assert SettingsFile(tmp_path / "settings.json").now == Settings()


@pytest.mark.parametrize(
    "content", ["{", "[]", '{"percent": "big"}', '{"printers": []}', "\x00", "[" * 9000]
)
def test_a_damaged_file_is_set_aside_and_the_usual_holds(tmp_path: Path, content: str) -> None:
    path = tmp_path / "settings.json"
    path.write_text(content)
    assert SettingsFile(path).now == Settings()
    assert not path.exists()
    assert (tmp_path / "settings.json.damaged").read_text() == content


def test_a_value_out_of_range_is_brought_back_into_it(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    path.write_text('{"percent": 900, "theme": "pink", "language": "xx", "unknown": 1}')
    assert SettingsFile(path).now == Settings(percent=175)


def test_what_is_within_a_value_is_looked_at_too(tmp_path: Path) -> None:
    """Letters of 100,000 mm filled the rail with nothing, and no key made them smaller at once."""
    path = tmp_path / "settings.json"
    path.write_text(
        '{"printers": {"paper": 5, "label": "Zebra"}, "scales": {"rail": "x", "wrap": 2},'
        ' "block_letters": -4, "rail_letters": 100000}'
    )
    assert SettingsFile(path).now == Settings(
        printers={"label": "Zebra"}, scales={"wrap": 2}, block_letters=5, rail_letters=16
    )


def test_a_folder_that_can_not_be_written_loses_only_the_setting(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("not a folder")
    settings = SettingsFile(blocked / "settings.json")
    settings.change(theme="dark")
    assert settings.now.theme == "dark"
