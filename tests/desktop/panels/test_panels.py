"""Panels: words in their role, states as pattern and word, an empty place that teaches."""

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from desktop.look.patterns import Mark
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.panels.side import WIDTH, SidePanel
from desktop.panels.state_word import StateWord
from tests.desktop.audit import spoken_name, unnamed


def test_words_take_the_colour_of_their_role(qtbot: QtBot) -> None:
    words = Words("body", "quiet")
    qtbot.addWidget(words)
    words.ensurePolished()
    roles = theme_of().roles
    assert words.palette().color(words.foregroundRole()).name().upper() == roles.steel
    words.set_role("contested")
    assert words.palette().color(words.foregroundRole()).name().upper() == roles.contested


def test_names_are_words_not_markup(qtbot: QtBot) -> None:
    words = Words()
    qtbot.addWidget(words)
    words.setText("<b>Jørgen & Łucja</b>")
    plain = QLabel("x")
    qtbot.addWidget(plain)
    assert words.sizeHint().width() > 5 * plain.sizeHint().width()


def test_a_state_is_said_in_words(qtbot: QtBot) -> None:
    state = StateWord()
    qtbot.addWidget(state)
    state.set_state(Mark.CONTESTED, "promised twice")
    assert state.words() == "promised twice"
    assert state.accessibleName() == "promised twice"
    state.resize(state.sizeHint())
    assert not state.grab().isNull()


def test_an_empty_place_says_what_it_is_for_and_how_to_begin(qtbot: QtBot) -> None:
    empty = EmptyState()
    qtbot.addWidget(empty)
    begin = button(main=True)
    begin.setText("&Book an animal")
    empty.add_action(begin)
    empty.set_words("No animals yet", "Book the first one and it shows here.")
    empty.resize(800, 400)
    empty.show()
    assert begin.isVisible()
    assert empty.accessibleDescription() == "Book the first one and it shows here."
    assert unnamed(empty) == []
    assert spoken_name(begin) == "Book an animal"


def test_the_side_panel_keeps_its_width_and_the_order_of_its_groups(qtbot: QtBot) -> None:
    panel = SidePanel()
    qtbot.addWidget(panel)
    first, second = panel.add_heading(), panel.add_heading()
    first.setText("Verdict")
    second.setText("Take home")
    panel.resize(900, 400)
    panel.show()
    assert panel.width() == WIDTH
    assert first.y() < second.y()


@pytest.mark.parametrize("kind", ["main", "quiet"])
def test_buttons_are_reached_by_tab(qtbot: QtBot, kind: str) -> None:
    made = button(main=kind == "main", quiet=kind == "quiet")
    qtbot.addWidget(made)
    made.setText("Weigh")
    assert made.property(kind) == "true"
    assert unnamed(made) == []


def test_a_side_panel_makes_room_for_its_buttons_up_to_a_third(qtbot: QtBot) -> None:
    panel = SidePanel(width=300)
    qtbot.addWidget(panel)
    words = button(panel)
    panel.add(words)
    words.setText("Short")
    panel.show()
    assert panel.width() == 300
    words.setText("Show what was issued to everybody (F9)")
    qtbot.waitUntil(lambda: 300 < panel.width() <= 400)
    assert words.width() >= words.sizeHint().width()
    words.setText("Show what was issued to everybody (F9) " * 3)
    qtbot.waitUntil(lambda: panel.width() == 400)
