"""A scale on a serial line: steady weights, moving ones, and a cable that is pulled."""

from collections.abc import Iterator
from time import perf_counter

import pytest
from pytestqt.qtbot import QtBot

from desktop.scale_reader import LINE_WAITS_S, Line, ScaleReader
from shared.scales.reading import Pattern, patterns
from shared.units import Weight
from tests.desktop.scale_on_a_terminal import PlayedScale


def pattern(code: str) -> Pattern:
    return next(one for one in patterns() if one.code == code)


@pytest.fixture
def scale() -> Iterator[PlayedScale]:
    made = PlayedScale()
    yield made
    made.lay(None)


@pytest.fixture
def reader(scale: PlayedScale, qapp: object) -> Iterator[ScaleReader]:
    made = ScaleReader(Line(scale.port), pattern("comma_header"))
    yield made
    made.close()


def test_a_steady_load_is_told_once(qtbot: QtBot, scale: PlayedScale, reader: ScaleReader) -> None:
    told: list[Weight] = []
    reader.steady.connect(told.append)
    reader.start()
    with qtbot.waitSignal(reader.steady):
        scale.lay("98.5")
    with qtbot.waitSignals([reader.read] * 5):
        pass
    assert told == [Weight(985, "lb", -1)]
    with qtbot.waitSignal(reader.read, check_params_cb=lambda one: one.weight.count == 0):
        scale.lay("0.0")
    with qtbot.waitSignal(reader.steady):
        scale.lay("97.0")
    assert told == [Weight(985, "lb", -1), Weight(970, "lb", -1)]


def test_a_swinging_side_is_not_taken(
    qtbot: QtBot, scale: PlayedScale, reader: ScaleReader
) -> None:
    told: list[Weight] = []
    reader.steady.connect(told.append)
    scale.write("US,GS,+{weight:>8}lb\r\n")
    reader.start()
    scale.lay("98.5")
    with qtbot.waitSignals([reader.read] * 6):
        pass
    assert told == []
    with qtbot.waitSignal(reader.steady):
        scale.write("ST,GS,+{weight:>8}lb\r\n")


def test_a_silent_scale_is_said_and_comes_back(
    qtbot: QtBot, scale: PlayedScale, reader: ScaleReader
) -> None:
    with qtbot.waitSignal(reader.lost) as lost:
        reader.start()
    assert lost.args == ["silent"]
    with qtbot.waitSignal(reader.back):
        scale.lay("98.5")


def test_lines_of_another_form_are_said(
    qtbot: QtBot, scale: PlayedScale, reader: ScaleReader
) -> None:
    scale.write("?? {weight}\r\n")
    with qtbot.waitSignal(reader.lost, check_params_cb=lambda why: why == "unread"):
        reader.start()
        scale.lay("98.5")


def test_a_cable_pulled_in_mid_read_is_said(qtbot: QtBot, qapp: object) -> None:
    scale = PlayedScale()
    reader = ScaleReader(Line(scale.port), pattern("comma_header"))
    scale.lay("98.5")
    with qtbot.waitSignal(reader.steady):
        reader.start()
    with qtbot.waitSignal(reader.lost, timeout=5000) as lost:
        scale.unplug()
    assert lost.args == ["no_port"] or lost.args == ["silent"]
    reader.close()


def test_a_port_that_is_not_there_is_said(qtbot: QtBot, qapp: object) -> None:
    reader = ScaleReader(Line("/dev/no-such-scale"), pattern("plain"))
    with qtbot.waitSignal(reader.lost) as lost:
        reader.start()
    assert lost.args == ["no_port"]
    reader.close()


def test_a_silent_scale_is_let_go_at_once(qtbot: QtBot, scale: PlayedScale, qapp: object) -> None:
    """Its line would be waited for half a second; leaving the place waits for none of it."""
    reader = ScaleReader(Line(scale.port), pattern("comma_header"))
    with qtbot.waitSignal(reader.lost):
        reader.start()
    begun = perf_counter()
    reader.close()
    assert perf_counter() - begun < LINE_WAITS_S / 2
