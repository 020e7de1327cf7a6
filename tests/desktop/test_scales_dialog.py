"""Setting a scale up: its line is seen as it comes, and a pattern that can't be read is said."""

from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.scales_dialog import ScalesDialog
from shared.shop.scales import OWN
from shared.units import Weight
from tests.desktop.audit import unnamed
from tests.desktop.scale_on_a_terminal import PlayedScale


@pytest.fixture
def scale() -> Iterator[PlayedScale]:
    played = PlayedScale()
    yield played
    played.unplug()


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench) -> Iterator[ScalesDialog]:
    made = ScalesDialog(bench)
    qtbot.addWidget(made)
    made.show()
    yield made
    made.use.close()


def test_its_line_is_live_and_it_is_kept_for_the_station(
    qtbot: QtBot, bench: Bench, dialog: ScalesDialog, scale: PlayedScale
) -> None:
    assert unnamed(dialog) == []
    dialog.name.set_text("Rail")
    dialog.port.set_text(scale.port)
    dialog.pattern.set_value("comma_header")
    dialog.division.set_text("0.5 lb")
    dialog.hook.set_text("3.5 lb")
    scale.lay("98.5")
    dialog.listen()
    qtbot.waitUntil(lambda: dialog.weight.text() == "98.5\u00a0lb")
    assert dialog.came.text().startswith("ST,GS,+")
    dialog.try_it()
    with bench.store.read() as work:
        (kept,) = work.scales.of_station(bench.station.id)
    assert (kept.name, kept.port, kept.pattern) == ("Rail", scale.port, "comma_header")
    assert (kept.division, kept.hook) == (Weight(5, "lb", -1), Weight(35, "lb", -1))


def test_an_own_pattern_without_a_number_is_said_at_the_field(
    bench: Bench, dialog: ScalesDialog
) -> None:
    dialog.name.set_text("Rail")
    dialog.port.set_text("/dev/none")
    dialog.pattern.set_value(OWN)
    dialog.own.set_text("W.*")
    dialog.listen()
    assert dialog.own.complaint.text()
    dialog.own.set_text("W.*")
    assert dialog.attempt() == ""
    assert dialog.own.complaint.text()
    with bench.store.read() as work:
        assert work.scales.of_station(bench.station.id) == ()
