"""The shop menu: what is set is ticked, what is picked is set."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget
from pytestqt.qtbot import QtBot

from desktop.settings import SettingsFile
from desktop.shop_menu import ShopMenu


@pytest.fixture
def menu(qtbot: QtBot, tmp_path: Path) -> Iterator[ShopMenu]:
    window = QWidget()
    qtbot.addWidget(window)
    yield ShopMenu(SettingsFile(tmp_path / "settings.json"), window)
    window.close()


def entry(menu: ShopMenu, setting: str, value: object) -> QAction:
    return next(
        action
        for under in menu.findChildren(QMenu)
        for action in under.actions()
        if action.data() == (setting, value)
    )


def test_what_is_set_is_ticked(menu: ShopMenu) -> None:
    assert entry(menu, "theme", "light").isChecked()
    assert not entry(menu, "theme", "dark").isChecked()
    assert entry(menu, "percent", 100).isChecked()
    assert entry(menu, "language", "en").isChecked()


@pytest.mark.parametrize(
    ("setting", "value"), [("theme", "dark"), ("percent", 125), ("language", "es")]
)
def test_what_is_picked_is_set_and_ticked(menu: ShopMenu, setting: str, value: object) -> None:
    entry(menu, setting, value).trigger()
    assert getattr(menu.settings.now, setting) == value
    assert entry(menu, setting, value).isChecked()


def test_every_entry_has_words_and_no_letter_leads_to_two(menu: ShopMenu) -> None:
    words = [action.text() for action in menu.actions() if not action.isSeparator()]
    assert all(words)
    letters = [text[text.index("&") + 1].casefold() for text in words]
    assert len(set(letters)) == len(letters)
