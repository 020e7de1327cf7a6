"""A carcass held for a result isn't started at the block, and the block is told why."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.held import held_text
from desktop.block.place import BlockPlace
from tests.desktop.block.hog import hanging
from tests.desktop.recorded_messages import RecordedMessages


def test_a_held_carcass_is_not_started(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    hanging(bench)
    assert held_text(bench, 1) == ""
    with bench.store.work(bench.person, bench.station) as work:
        work.arrivals.hold(1, "other", "owner waits for a result")
        work.commit()
    place = BlockPlace(bench)
    qtbot.addWidget(place)
    place.show_carcass(1)
    place._start()  # as its button does
    assert messages.told == ["Held: owner waits for a result. Not to the block."]
    with bench.store.read() as work:
        animal = work.animals.get(1)
    assert animal is not None
    assert animal.state == "hanging"
