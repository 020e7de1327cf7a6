"""The page of all keys says what the window has: none too many, none left out, in both tongues."""

import re
from pathlib import Path

import pytest
from PySide6.QtGui import QAction, QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.main_window import MainWindow

HELP = Path(__file__).parents[2] / "desktop" / "help"
PLACES = ("counter", "rail", "block", "wrap", "office")
SECTIONS = ("anywhere", *PLACES)
SPANISH = {"Mayús": "Shift", "Supr": "Del", "Intro": "Enter", "Retroceso": "Backspace"}
SPANISH |= {"Izquierda": "Left", "Derecha": "Right", "Arriba": "Up", "Abajo": "Down"}
ASKED = re.compile(r"^(Ctrl|Alt|Shift)\+\S+$|^F\d+$")
UNSAID = {"Esc", "Del", "PgDown", "PgUp", "Ctrl+=", "Ctrl++", "Ctrl+-"}  # said by their names
OF_DIALOGS = {"F2", "F4", "F6", "Ctrl+P"}  # the rate card's, a charge's, the account's: Office


def keys_said(language: str) -> list[set[str]]:
    """The keys with a modifier and the function keys of each section, as Qt names them."""
    found: list[set[str]] = []
    text = (HELP / language / "keys.md").read_text(encoding="utf-8")
    for section in text.split("\n## ")[1:]:
        mine: set[str] = set()
        for line in section.splitlines():
            cells = [one.strip() for one in line.strip("|").split("|")]
            if line.startswith("|") and len(cells) > 1:
                mine |= _keys_of(cells[-2])
        found.append(mine)
    return found[: len(SECTIONS)]


def _keys_of(cell: str) -> set[str]:
    for theirs, ours in SPANISH.items():
        cell = cell.replace(theirs, ours)
    found: set[str] = set()
    for part in re.split(r", (?:or |o )?| or | o ", cell):
        span = re.match(r"^(F|Ctrl\+|Alt\+)(\d+) (?:to|a) .*?(\d+)$", part.strip())
        if span:
            numbers = range(int(span[2]), int(span[3]) + 1)
            found |= {f"{span[1]}{number}" for number in numbers}
        elif ASKED.match(part.strip()):
            found.add(part.strip())
    return {_named(one) for one in found}


def _named(key: str) -> str:
    return QKeySequence(key.replace("Enter", "Return")).toString()


def keys_of(widget: QWidget) -> set[str]:
    """Every shortcut in a widget and all that is in it."""
    keys = [one for each in widget.findChildren(QShortcut) for one in QShortcut.keys(each)]
    keys += [one for each in widget.findChildren(QAction) for one in each.shortcuts()]
    return {one.toString() for one in keys}


@pytest.fixture
def window(qtbot: QtBot, bench: Bench) -> MainWindow:
    made = MainWindow(bench)
    qtbot.addWidget(made)
    made.enter("counter")
    made.show()
    return made


@pytest.mark.parametrize("place", PLACES)
def test_a_places_keys_are_those_on_the_page(window: MainWindow, place: str) -> None:
    said = keys_said("en")[SECTIONS.index(place)]
    window.enter(place)
    there = keys_of(window.place())
    tabs = {f"Alt+{number}" for number in range(1, 10)} if place == "office" else set[str]()
    assert said - there - tabs - OF_DIALOGS == set()
    assert there - said - UNSAID == set()


@pytest.mark.parametrize("place", PLACES)
def test_no_key_of_a_place_is_one_that_leads_to_a_place(window: MainWindow, place: str) -> None:
    """Two shortcuts on one key do nothing at all: F4 and F6 of the bills were dead so."""
    window.enter(place)
    leads = keys_of(window.bar.places)
    assert {"F2", "F6", "Ctrl+1"} <= leads
    assert keys_of(window.place()) & leads == set()


def test_the_windows_own_keys_are_those_on_the_page(window: MainWindow) -> None:
    said = keys_said("en")[0]
    assert {"Ctrl+F", "Ctrl+T", "F1", "F10", "Ctrl+1", "F2"} <= said
    assert said - keys_of(window) == set()


def test_both_tongues_list_the_same_keys() -> None:
    english, spanish = keys_said("en"), keys_said("es")
    assert [len(one) for one in english] == [len(one) for one in spanish]
    assert english == spanish
    assert sum(map(len, english)) > 50
