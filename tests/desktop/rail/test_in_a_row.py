"""Tag after tag: digits, Enter, the next tag, and nothing else; the played scale does the rest."""

from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.place import RailPlace
from desktop.rail.seen import LIVE, SIDES
from shared.shop.animals import Weighing
from shared.shop.scales import Scale
from shared.units import Weight
from tests.db import examples
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.scale_on_a_terminal import PlayedScale
from tests.desktop.typing_in import type_into

DAY = date(2026, 3, 2)
HEAD = 20


def shown(qtbot: QtBot, bench: Bench) -> RailPlace:
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    qtbot.waitExposed(place)
    place.activateWindow()
    place.first_focus().setFocus()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
    return place


@pytest.fixture
def hogs(bench: Bench) -> None:
    """Twenty hogs here, tagged 201 to 220."""
    with bench.store.work(bench.person, bench.station) as work:
        for n in range(HEAD):
            lot = examples.lot_of_one(work, f"Owner {n}", DAY)
            examples.arrived(work, lot, str(201 + n))
        work.commit()


@pytest.fixture
def scale(bench: Bench) -> Iterator[PlayedScale]:
    played = PlayedScale()
    with bench.store.work(bench.person, bench.station) as work:
        made = work.scales.save(
            Scale(
                name="Rail scale",
                port=played.port,
                pattern="comma_header",
                division=Weight(5, "lb", -1),
                hook=Weight(35, "lb", -1),
            )
        )
        assert isinstance(made, Scale)
        work.commit()
    yield played
    played.unplug()


def focused() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


def say(text: str) -> int:
    """Type and press Enter; how many keys that were."""
    type_into(focused(), text)
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    return len(text) + 1


def weighings(bench: Bench, animal_id: int) -> tuple[Weighing, ...]:
    with bench.store.read() as work:
        return work.weighings.of_animal(animal_id)


@pytest.mark.usefixtures("hogs")
def test_twenty_carcasses_take_the_digits_enter_and_the_next_tag(
    qtbot: QtBot, bench: Bench
) -> None:
    place = shown(qtbot, bench)
    place.in_a_row.stage.set_value("rail")
    place.in_a_row.stage.changed.emit()
    QTest.keyClick(place, Qt.Key.Key_F7)
    keys = 0
    for n in range(HEAD):
        keys += say(str(201 + n))
        keys += say("98.5")
        keys += say("97")
    assert keys == HEAD * (len("201") + len("98.5") + len("97") + 3)
    with bench.store.read() as work:
        rows = work.animals.list(states=("weighed",))
    assert len(rows) == HEAD
    assert {row.hot_ng for row in rows} == {Weight(1955, "lb", -1).nanograms}
    assert place.in_a_row.tag.line.hasFocus()


@pytest.mark.usefixtures("hogs")
def test_a_steady_load_is_kept_by_enter_less_its_hook(
    qtbot: QtBot, bench: Bench, scale: PlayedScale
) -> None:
    place = shown(qtbot, bench)
    place.in_a_row.stage.set_value("rail")
    place.in_a_row.stage.changed.emit()
    QTest.keyClick(place, Qt.Key.Key_F7)
    say("203")
    weights = place.panel.weights
    for side, load in ((1, "112.0"), (2, "111.5")):
        field = weights.fields["hot", side, ""]
        scale.lay(load)
        qtbot.waitUntil(lambda field=field, load=load: field.text().startswith(load))
        QTest.keyClick(focused(), Qt.Key.Key_Return)
        scale.lay("0.0")
        qtbot.waitUntil(lambda: weights.strip.says.text() == "0.0\u00a0lb")
    first, second = weighings(bench, 3)
    assert (first.weight.text(), second.weight.text()) == ("108.5 lb", "108.0 lb")
    assert (first.source, first.scale, first.tare) == ("scale", "Rail scale", Weight(35, "lb", -1))
    assert first.division == Weight(5, "lb", -1)
    assert place.in_a_row.tag.line.hasFocus()


@pytest.mark.usefixtures("hogs")
def test_a_load_is_taken_once(qtbot: QtBot, bench: Bench, scale: PlayedScale) -> None:
    place = shown(qtbot, bench)
    place.in_a_row.stage.set_value("rail")
    place.in_a_row.stage.changed.emit()
    QTest.keyClick(place, Qt.Key.Key_F7)
    scale.lay("112.0")
    qtbot.waitUntil(lambda: place.panel.weights.strip.use.load() is not None)
    say("203")
    assert place.panel.weights.fields["hot", 1, ""].text() == "112.0\u00a0lb"
    QTest.keyClick(focused(), Qt.Key.Key_Return)
    assert place.panel.weights.fields["hot", 2, ""].text() == ""


@pytest.mark.usefixtures("hogs")
def test_a_reading_between_the_divisions_is_questioned_not_refused(
    qtbot: QtBot, bench: Bench, scale: PlayedScale, messages: RecordedMessages
) -> None:
    # NIST Handbook 44: a scale of 0.5 lb can't show 98.3 lb
    place = shown(qtbot, bench)
    place.in_a_row.stage.set_value("rail")
    place.in_a_row.stage.changed.emit()
    QTest.keyClick(place, Qt.Key.Key_F7)
    say("201")
    messages.answers = [False]
    say("98.3")
    assert len(messages.asked) == 1
    assert weighings(bench, 1) == ()
    messages.answers = [True]
    say("98.3")
    (kept,) = weighings(bench, 1)
    assert (kept.weight.text(), kept.source) == ("94.8 lb", "typed")


@pytest.mark.usefixtures("hogs")
def test_a_scale_pulled_out_in_mid_read_says_so_and_the_work_goes_on_by_hand(
    qtbot: QtBot, bench: Bench, scale: PlayedScale
) -> None:
    place = shown(qtbot, bench)
    QTest.keyClick(place, Qt.Key.Key_F7)
    say("202")
    scale.lay("300.0")
    weights = place.panel.weights
    qtbot.waitUntil(lambda: weights.strip.use.load() is not None)
    scale.unplug()
    qtbot.waitUntil(lambda: "Type the weights" in weights.strip.says.text(), timeout=5000)
    weights.fields["live", 0, ""].line.clear()
    say("301")
    (kept,) = weighings(bench, 2)
    assert (kept.kind, kept.weight.text(), kept.source) == ("live", "301 lb", "typed")


@pytest.mark.usefixtures("hogs")
def test_chilled_sides_are_weighed_in_a_row_too(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        animal = work.animals.get(4)
        assert animal is not None
        examples.weighed(work, animal, "109", 1)
        examples.weighed(work, animal, "109", 2)
        work.commit()
    place = shown(qtbot, bench)
    place.in_a_row.stage.set_value("cooler")
    place.in_a_row.stage.changed.emit()
    QTest.keyClick(place, Qt.Key.Key_F7)
    say("204")
    say("106.8")
    say("106.8")
    assert [(one.kind, one.side) for one in weighings(bench, 4)][2:] == [
        ("chilled", 1),
        ("chilled", 2),
    ]
    said = place.panel.weights.dressing.text().replace("\u00a0", " ")
    assert said.startswith("Lost 2 % in the cooler.")


@pytest.mark.usefixtures("hogs")
def test_a_tag_that_isnt_here_is_said_at_the_tag(qtbot: QtBot, bench: Bench) -> None:
    place = shown(qtbot, bench)
    QTest.keyClick(place, Qt.Key.Key_F7)
    say("999")
    assert place.in_a_row.tag.complaint.text() == "No animal here has tag 999."


@pytest.mark.usefixtures("hogs")
def test_tab_comes_by_the_weights_and_the_scale_before_the_buttons(
    qtbot: QtBot, bench: Bench, scale: PlayedScale
) -> None:
    place = shown(qtbot, bench)
    weights = place.panel.weights
    weights.way.box.setFocus()
    strip = weights.strip.stops()
    live, first, second = (weights.fields[one].line for one in (LIVE, *SIDES))
    for expected in (live, first, second, *strip):
        QTest.keyClick(focused(), Qt.Key.Key_Tab)
        assert expected in (focused(), focused().parentWidget()), expected.accessibleName()
    assert strip[0].accessibleName() == "Scale"
