"""The manual: a page for each place, in both languages, with links that lead somewhere."""

import re

import pytest
from pytestqt.qtbot import QtBot

from desktop.help_window import PAGES, HelpWindow, page_path
from desktop.language import LANGUAGES
from desktop.place_list import ENTRIES
from tests.desktop.audit import unnamed

WANTED = {entry.key for entry in ENTRIES} | {"contents", "keys", "about", "typing"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_page_is_there_and_every_link_leads_to_one(language: str) -> None:
    pages = {path.stem: path.read_text("utf-8") for path in (PAGES / language).glob("*.md")}
    assert set(pages) == WANTED
    for name, text in pages.items():
        links = re.findall(r"\]\(([^)]+)\)", text)
        assert links, f"{name} leads nowhere"
        assert {link.removesuffix(".md") for link in links} <= WANTED


def test_the_page_of_a_place_is_shown(qtbot: QtBot) -> None:
    window = HelpWindow("rail", "en")
    qtbot.addWidget(window)
    window.show()
    assert window.text.toPlainText().startswith("Rail")
    assert unnamed(window) == []


def test_a_page_nobody_wrote_leads_to_the_contents() -> None:
    assert page_path("gambrel", "es").stem == "contents"
