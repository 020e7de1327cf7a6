"""The intake of a deer in one dialog: what is missing is said, a batch needs it in writing."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.deer import DeerDialog
from desktop.rail.holding import hold_or_let_go
from desktop.rail.known_words import held_words, known_words
from desktop.rail.seen import SIDES, WHOLE, see
from shared.shop.arrival import standing
from tests.db import examples
from tests.desktop.audit import unnamed
from tests.desktop.rail.test_in_a_row import shown
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into


@pytest.fixture
def intake(qtbot: QtBot, bench: Bench) -> DeerDialog:
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, "deer", date(2026, 3, 2))
        (animal,) = work.animals.of_lot(lot.id)
        work.commit()
    made = DeerDialog(bench, animal)
    qtbot.addWidget(made)
    made.show()
    return made


def filled(intake: DeerDialog) -> None:
    intake.tag.set_text("D7")
    intake.license.set_text("H-20417")
    intake.game_tag.set_text("T-9")
    intake.killed_on.set_value(date(2026, 3, 1))
    intake.county.set_text("Alder")
    intake.antlers.set_value("keep")


def test_what_the_state_asks_and_is_missing_is_said_and_not_refused(intake: DeerDialog) -> None:
    assert unnamed(intake) == []
    assert intake.hunter.text() == "Anna Berg"
    said = intake.missing.text()
    assert said == "Still to ask: license, game tag, day of kill, county."
    intake.tag.set_text("D7")
    assert intake.attempt() == ""


def test_a_batch_needs_a_name_in_writing(intake: DeerDialog, bench: Bench) -> None:
    filled(intake)
    intake.meat.set_value("batch")
    intake.try_it()
    assert intake.signed_by.complaint.text()
    intake.signed_by.set_text("Anna Berg")
    intake.try_it()
    with bench.store.read() as work:
        kept = work.arrivals.deer(1)
    assert kept is not None
    assert (kept.meat, kept.signed_by, kept.county) == ("batch", "Anna Berg", "Alder")


def test_one_that_waits_for_its_test_is_held_and_let_go(
    intake: DeerDialog, bench: Bench, messages: RecordedMessages
) -> None:
    filled(intake)
    intake.meat.set_value("apart")
    intake.test.set_text("sample 77")
    intake.try_it()
    seen = see(bench, 1)
    assert seen is not None
    assert held_words(seen) == ("Held until its test result: sample 77. Not to the block.",)
    known = known_words(seen, bench.now(), "en")
    assert "license H-20417, game tag T-9" in known
    assert known.endswith("Alder, meat kept apart, keep the antlers")
    messages.answers = [None]
    assert not hold_or_let_go(bench, seen)
    messages.answers = ["not detected"]
    assert hold_or_let_go(bench, seen)
    seen = see(bench, 1)
    assert seen is not None
    assert standing(seen.holds) == ()
    messages.answers = ["owner waits for the taxidermist"]
    assert hold_or_let_go(bench, seen)


def test_what_came_dead_is_not_asked_for_its_live_weight(qtbot: QtBot, bench: Bench) -> None:
    """The keyboard went to "Live" after the hot weight, and Space took no step."""
    with bench.store.work(bench.person, bench.station) as work:
        examples.arrived(work, examples.lot_of_one(work, species="deer"), "D7")
        work.commit()
    place = shown(qtbot, bench)
    place.table.choose(0)
    place.table.setFocus()
    QTest.keyClick(place.table, Qt.Key.Key_Return)
    weights = place.panel.weights
    assert QApplication.focusWidget() is weights.fields[WHOLE[0]].line
    type_into(weights.fields[WHOLE[0]].line, "92")
    QTest.keyClick(weights.fields[WHOLE[0]].line, Qt.Key.Key_Return)
    focused = QApplication.focusWidget()
    assert isinstance(focused, QPushButton)
    QTest.keyClick(focused, Qt.Key.Key_Space)
    seen = see(bench, 1)
    assert seen is not None
    assert seen.animal.state == "passed"


def test_a_hog_weighed_hot_is_no_longer_asked_for_its_live_weight(
    qtbot: QtBot, bench: Bench
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        animal = examples.arrived(work, examples.lot_of_one(work), "114")
        examples.weighed(work, animal, "95", 1)
        work.commit()
    place = shown(qtbot, bench)
    place.table.choose(0)
    assert place.panel.weights.focus_next()
    assert QApplication.focusWidget() is place.panel.weights.fields[SIDES[1]].line
