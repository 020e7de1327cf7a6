"""Packages weighed by a scale on the wrapping table: one key each, and the work goes on by hand."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.wrap.place import WrapPlace
from shared.shop.people import SignedOn
from shared.shop.scales import Scale
from shared.units import Weight
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.scale_on_a_terminal import PlayedScale
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table


@pytest.fixture
def scale(bench: Bench) -> Iterator[PlayedScale]:
    played = PlayedScale()
    with bench.store.work(bench.person, bench.station) as work:
        made = work.scales.save(
            Scale(
                name="Table scale",
                port=played.port,
                pattern="comma_header",
                division=Weight(2, "lb", -2),
            )
        )
        assert isinstance(made, Scale)
        work.commit()
    bench.settings.change(scales={"wrap": made.id})
    yield played
    played.unplug()


def at_the_table(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> WrapPlace:
    """The wrapping table with ground pork chosen and the keyboard in the weight."""
    order_on_the_table(store, signed)
    place = WrapPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    qtbot.waitExposed(place)
    place.activateWindow()
    place.refresh()
    qtbot.waitUntil(lambda: not bench.work.busy())
    for _ in range(2):
        QTest.keyClick(place.lines, Qt.Key.Key_Down)
    QTest.keyClick(place.lines, Qt.Key.Key_Return)
    return place


def laid(qtbot: QtBot, place: WrapPlace, scale: PlayedScale, load: str) -> None:
    """Lay a package on, and wait until it stands in the field."""
    scale.lay(load)
    qtbot.waitUntil(lambda: place.strip.weight.text().startswith(load))


def nets(bench: Bench) -> list[str]:
    with bench.store.read() as work:
        return [one.net.text() for one in work.packages.of_order(1)]


def enter(place: WrapPlace) -> None:
    QTest.keyClick(place.strip.weight.line, Qt.Key.Key_Return)


def test_a_package_takes_one_key_once_it_lies_still(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    for load in ("1.02", "0.98", "1.10"):
        laid(qtbot, place, scale, load)
        enter(place)
        assert place.strip.weight.is_empty()
        scale.lay("0.00")
        qtbot.waitUntil(lambda: place.strip.scale.says.text() == "0.00\u00a0lb")
    assert nets(bench) == ["1.02 lb", "0.98 lb", "1.10 lb"]


def test_the_tray_stays_taken_off(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    type_into(place.strip.tare.line, "0.04")
    for load in ("1.02", "2.02"):
        laid(qtbot, place, scale, load)
        enter(place)
        scale.lay("0.04")  # the tray stays there
        qtbot.waitUntil(lambda: place.strip.scale.says.text() == "0.04\u00a0lb")
        assert place.strip.weight.is_empty()
    assert nets(bench) == ["0.98 lb", "1.98 lb"]


def test_one_load_is_one_package(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    laid(qtbot, place, scale, "1.02")
    enter(place)
    qtbot.wait(60)  # it lies there still
    assert place.strip.weight.is_empty()
    enter(place)
    assert nets(bench) == ["1.02 lb"]


def test_what_was_typed_stays(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    type_into(place.strip.weight.line, "3.5")
    scale.lay("1.02")
    qtbot.waitUntil(lambda: place.strip.scale.load() is not None)
    enter(place)
    assert nets(bench) == ["3.5 lb"]


def test_a_weight_between_its_steps_is_questioned_not_refused(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    scale: PlayedScale,
    messages: RecordedMessages,
) -> None:
    # NIST Handbook 44: a scale of 0.02 lb can't show 1.03 lb
    place = at_the_table(qtbot, bench, store, signed)
    assert place.strip.scale.scale() is not None
    messages.answers = [False]
    type_into(place.strip.weight.line, "1.03")
    enter(place)
    assert len(messages.asked) == 1
    assert nets(bench) == []
    messages.answers = [True]
    enter(place)
    assert nets(bench) == ["1.03 lb"]


def test_pulled_out_it_says_so_and_the_work_goes_on_by_hand(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    laid(qtbot, place, scale, "1.02")
    scale.unplug()
    says = place.strip.scale.says
    qtbot.waitUntil(lambda: "Type the weights" in says.text(), timeout=5000)
    place.strip.weight.line.clear()
    type_into(place.strip.weight.line, "1.5")
    enter(place)
    assert nets(bench) == ["1.5 lb"]


def test_the_line_is_given_up_out_of_view_and_the_choice_remembered(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, scale: PlayedScale
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    assert unnamed(place) == []
    table = place.strip.scale
    place.hide()
    assert table.scale() is None
    place.show()
    assert table.scale() is not None
    table.which.set_value(0)
    table.which.changed.emit()
    assert table.scale() is None
    assert bench.settings.now.scales == {"wrap": 0}


def test_without_a_scale_only_the_way_to_set_one_up_is_there(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    place = at_the_table(qtbot, bench, store, signed)
    table = place.strip.scale
    assert not table.which.isVisible()
    assert table.set_up.isVisible()
    table.show_settings()
    assert table.dialog.isVisible()
    table.dialog.reject()
