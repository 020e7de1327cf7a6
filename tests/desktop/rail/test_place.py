"""The rail by keyboard: check in, weigh, pass, hang; corrections and condemned parts."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFrame, QWidget
from pytestqt.qtbot import QtBot

from db.unit_of_work import Work
from desktop.bench import Bench, Target
from desktop.counter.weights_dialog import WeightsDialog
from desktop.preview import Preview
from desktop.rail.check_in import CheckInDialog
from desktop.rail.correction import CorrectionDialog
from desktop.rail.loss import LossDialog
from desktop.rail.place import RailPlace
from desktop.rail.seen import SIDES
from shared.cutting.order import Amount, Choice
from shared.shop.animals import Weighing
from shared.shop.lots import Lot
from tests.db import examples
from tests.desktop.audit import unnamed
from tests.desktop.block.hog import hanging
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into


def lot(bench: Bench) -> Lot:
    """A hog for today: side 1 Anna's, side 2 Bert's; each wants a whole ham."""
    with bench.store.work(bench.person, bench.station) as work:
        made = examples.lot_of_halves(work, day=date(2026, 3, 2))
        for share in (1, 2):
            order = examples.order_of(work, made, share)
            examples.line(work, order, Choice(0, 0, "whole_ham", Amount("pieces", 1)))
        work.commit()
    return made


@pytest.fixture
def rail(qtbot: QtBot, bench: Bench) -> RailPlace:
    lot(bench)
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    qtbot.waitExposed(place)
    place.activateWindow()
    place.first_focus().setFocus()
    return place


def press(key: Qt.Key = Qt.Key.Key_Return) -> None:
    QTest.keyClick(focused(), key)


def focused() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


def type_line(text: str) -> None:
    type_into(focused(), text)
    press()


def check_in(rail: RailPlace, tag: str = "114") -> None:
    press()
    dialog = rail.dialog
    assert isinstance(dialog, CheckInDialog)
    dialog.tag.set_text(tag)
    dialog.skin.set_value("skinned")
    dialog.try_it()


def weighings(bench: Bench) -> tuple[Weighing, ...]:
    with bench.store.read() as work:
        return work.weighings.of_animal(1)


def state(bench: Bench) -> str:
    with bench.store.read() as work:
        animal = work.animals.get(1)
    assert animal is not None
    return animal.state


def test_a_hog_is_weighed_passed_and_hung_by_keyboard(rail: RailPlace, bench: Bench) -> None:
    check_in(rail)
    type_line("300")
    type_line("109.5")
    type_line("108.5")
    assert [(one.kind, one.side, one.weight.text()) for one in weighings(bench)] == [
        ("live", 0, "300 lb"),
        ("hot", 1, "109.5 lb"),
        ("hot", 2, "108.5 lb"),
    ]
    assert state(bench) == "weighed"
    said = rail.panel.weights.dressing.text().replace("\u00a0", " ")
    assert said == "Dresses 72.7 %, outside the usual 63 % to 71 %. Taken as weighed."
    press(Qt.Key.Key_Space)
    assert state(bench) == "passed"
    press(Qt.Key.Key_Space)
    assert state(bench) == "hanging"
    assert rail.panel.hook.line.hasFocus(), "one Space more takes nothing back"
    press(Qt.Key.Key_Space)
    assert state(bench) == "hanging"


@pytest.mark.parametrize("sides", [("60", "60"), ("145", "145")])
def test_what_can_hardly_be_is_asked_and_may_be_weighed_again(
    rail: RailPlace, bench: Bench, messages: RecordedMessages, sides: tuple[str, str]
) -> None:
    check_in(rail)
    messages.answers = [False]
    type_line("300")
    type_line(sides[0])
    type_line(sides[1])
    assert len(messages.asked) == 1
    assert len(weighings(bench)) == 2
    assert rail.panel.weights.fields[SIDES[1]].complaint.text() == "Weigh it again."


def test_what_can_hardly_be_is_never_refused(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    check_in(rail)
    messages.answers = [True]
    for text in ("300", "145", "145"):
        type_line(text)
    assert [one.weight.text() for one in weighings(bench)][1:] == ["145 lb", "145 lb"]


def test_no_hairline_stands_below_another_where_there_are_no_weights_yet(
    rail: RailPlace,
) -> None:
    rules = [one for one in rail.panel.findChildren(QFrame) if one.property("line")]
    assert len([one for one in rules if one.isVisible()]) == 1, "booked: nothing to be weighed"
    check_in(rail)
    assert len([one for one in rules if one.isVisible()]) == 2


def test_after_the_question_space_takes_the_next_step(
    rail: RailPlace, bench: Bench, messages: RecordedMessages, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On a real screen the window has no keyboard yet when the question has just been answered."""
    plain = messages.ask

    def asked(title: str, text: str, yes: str, no: str) -> bool:
        focused().clearFocus()
        return plain(title, text, yes, no)

    monkeypatch.setattr(messages, "ask", asked)
    check_in(rail)
    messages.answers = [True]
    for text in ("300", "145", "145"):
        type_line(text)
    assert state(bench) == "weighed"
    press(Qt.Key.Key_Space)
    assert state(bench) == "passed"


def test_a_correction_keeps_the_first_weight(rail: RailPlace, bench: Bench) -> None:
    check_in(rail)
    for text in ("300", "102", "130"):
        type_line(text)
    QTest.keyClick(rail, Qt.Key.Key_F8)
    dialog = rail.dialog
    assert isinstance(dialog, CorrectionDialog)
    dialog.weight.set_text("103")
    dialog.try_it()
    assert dialog.reason.complaint.text()
    dialog.reason.set_text("read the other side's beam")
    dialog.try_it()
    first, second = weighings(bench)[2:]
    assert (first.weight.text(), first.current) == ("130 lb", False)
    assert (second.weight.text(), second.corrects, second.current) == ("103 lb", first.id, True)
    assert rail.panel.weights.fields[SIDES[1]].text() == "103\u00a0lb"


def test_a_condemned_ham_names_its_owner(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    check_in(rail)
    QTest.keyClick(rail, Qt.Key.Key_F9)
    dialog = rail.dialog
    assert isinstance(dialog, LossDialog)
    dialog.part.set_value("part.ham_centre")
    dialog.side.set_value(2)
    dialog.reason.set_text("abscess")
    dialog.try_it()
    assert messages.told == [
        "No longer stands for Bert Iversen: whole ham, shank on.\n"
        "They stand on the counter's list to ring, with what would work."
    ]
    with bench.store.read() as work:
        assert [one.gone.part for one in work.animals.losses(1)] == ["ham_centre"]


def test_a_part_of_a_side_needs_its_side(rail: RailPlace) -> None:
    check_in(rail)
    rail.lose()
    dialog = rail.dialog
    assert isinstance(dialog, LossDialog)
    dialog.part.set_value("part.ham_centre")
    dialog.side.set_value(0)
    dialog.reason.set_text("abscess")
    dialog.try_it()
    assert dialog.side.complaint.text() == "Say which side."


def test_a_tag_in_the_house_is_refused(rail: RailPlace, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        second = examples.lot_of_one(work, "Cara Dunn", day=date(2026, 3, 2))
        examples.arrived(work, second, "114")
        work.commit()
    rail.refresh()
    rail.table.choose(0)
    press()
    dialog = rail.dialog
    assert isinstance(dialog, CheckInDialog)
    dialog.tag.set_text("114")
    dialog.try_it()
    assert dialog.tag.complaint.text().startswith("Tag 114 is on an animal of lot")


def test_refusing_asks_why_and_tells_the_owners(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    check_in(rail)
    refuse = next(made for move, made in rail.panel.moves if move.end == "refused")
    messages.answers = ["down and can't walk"]
    refuse.click()
    assert state(bench) == "refused"
    assert "Anna Berg, Bert Iversen" in messages.told[0]
    assert "No longer stands for Bert Iversen: whole ham, shank on." in messages.told[0]
    rail.open(Target("rail", "animal", 1))
    assert rail.panel.seen is not None
    assert rail.panel.seen.animal.held_for == "down and can't walk"


def test_whole_and_quarters_have_their_own_fields(rail: RailPlace) -> None:
    check_in(rail)
    weights = rail.panel.weights
    weights.way.set_value("quarters")
    weights.way.changed.emit()
    shown = [place for place, field in weights.fields.items() if field.isVisible()]
    assert len(shown) == 5


def test_a_loss_after_release_asks_for_a_new_sheet(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    hanging(bench)
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.lose()
    dialog = place.dialog
    assert isinstance(dialog, LossDialog)
    dialog.part.set_value("part.ham_centre")
    dialog.side.set_value(1)
    dialog.reason.set_text("bruise")
    dialog.try_it()
    assert messages.told == [
        "No longer stands for Anna Berg: whole ham, shank on.\n"
        "They stand on the counter's list to ring, with what would work.\n"
        "The counter (F2) must release a new block sheet."
    ]


def test_its_tags_are_shown_to_print(rail: RailPlace) -> None:
    check_in(rail)
    QTest.keyClick(rail, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    preview = rail.dialog
    assert isinstance(preview, Preview)
    assert len(preview.pages) == 2


def test_everything_has_a_name(rail: RailPlace, work: Work) -> None:
    assert unnamed(rail) == []


def test_the_weights_of_the_day_are_told_from_the_rail_too(
    qtbot: QtBot, bench: Bench, rail: RailPlace
) -> None:
    QTest.keyClick(rail.table, Qt.Key.Key_W, Qt.KeyboardModifier.ControlModifier)
    dialog = rail.dialog
    assert isinstance(dialog, WeightsDialog)
    assert dialog.says.text() == "Reading"
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert dialog.day.value() == bench.today()
    dialog.reject()
    rail.panel.day_weights.click()
    assert rail.dialog is not dialog
