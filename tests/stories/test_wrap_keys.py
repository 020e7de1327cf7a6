"""A half hog wrapped by keyboard with a scale on its line: the keys of each package are counted."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.main_window import MainWindow
from desktop.work import slow_turns
from desktop.wrap.place import WrapPlace
from shared.cutting.order import Amount, Choice, Package
from shared.shop.people import SignedOn
from shared.shop.scales import Scale
from shared.units import LENGTH_UNITS_PER_INCH
from tests.desktop.scale_on_a_terminal import PlayedScale
from tests.desktop.wrap.orders import GROUND, HAM, order_on_the_table
from tests.stories.keyboard import Keyboard

Key = Qt.Key
MOST_KEYS_A_PACKAGE = 3
CHOPS = Choice(
    0,
    0,
    "centre_chop",
    Amount("all"),
    thickness=LENGTH_UNITS_PER_INCH,
    package=Package(pieces=2),
)
HALF_HOG = (HAM, CHOPS, Choice(0, 0, "spareribs", Amount("all")), GROUND)


@pytest.fixture
def scale(bench: Bench) -> Iterator[PlayedScale]:
    played = PlayedScale()
    with bench.store.work(bench.person, bench.station) as work:
        made = work.scales.save(Scale(name="Table", port=played.port, pattern="comma_header"))
        assert isinstance(made, Scale)
        work.commit()
    bench.settings.change(scales={"wrap": made.id})
    yield played
    played.unplug()


class Wrapper:
    """The person at the wrapping table: a package on the scale, a key, the next."""

    def __init__(
        self, qtbot: QtBot, window: MainWindow, place: WrapPlace, scale: PlayedScale
    ) -> None:
        self.qtbot = qtbot
        self.window = window
        self.place = place
        self.scale = scale
        self.keys = Keyboard(qtbot)
        self.each: list[int] = []

    def wrap(self, load: str, *, next_line: bool) -> None:
        before = self.keys.count
        if next_line:
            self.keys.press(Key.Key_Down)
        self.scale.lay(load)
        self.qtbot.waitUntil(lambda: self.place.strip.weight.text().startswith(load))
        self.keys.press(Key.Key_Return)
        self.scale.lay("0.00")
        says = self.place.strip.scale.says
        self.qtbot.waitUntil(lambda: says.text().startswith("0.00"))
        self.each.append(self.keys.count - before)


def at_the_table(qtbot: QtBot, bench: Bench, scale: PlayedScale) -> Wrapper:
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.enter("wrap")
    window.show()
    place = window.place()
    assert isinstance(place, WrapPlace)
    qtbot.waitUntil(lambda: not bench.work.busy() and place.wrapping is not None)
    wrapper = Wrapper(qtbot, window, place, scale)
    wrapper.keys.at(window)
    place.lines.setFocus()
    return wrapper


@pytest.mark.timed
def test_a_half_hog_takes_at_most_three_keys_a_package(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    scale: PlayedScale,
    capsys: pytest.CaptureFixture[str],
) -> None:
    order = order_on_the_table(store, signed, choices=HALF_HOG)
    wrapper = at_the_table(qtbot, bench, scale)
    place = wrapper.place
    begun = wrapper.keys.count
    wrapper.keys.press(Key.Key_Return)  # from the lines to the scale, once an order
    first = wrapper.keys.count - begun
    with slow_turns() as slow:
        for at, line in enumerate(place.lines.rows.rows()):
            assert line.planned is not None
            for nth in range(max(line.planned.mid, 1)):
                wrapper.wrap(f"{1 + nth % 3}.0{nth % 5 * 2}", next_line=at > 0 and nth == 0)
    assert slow == []
    with store.read() as work:
        made = work.packages.of_order(order.id)
        counts = work.packages.counts(order.id)
    assert {row.line for row in counts} == {1, 2, 3, 4}
    assert len(made) == len(wrapper.each) >= 10
    assert max(wrapper.each) <= MOST_KEYS_A_PACKAGE
    wrapper.keys.ctrl(Key.Key_Return)
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    assert found.state == "ready"
    with capsys.disabled():
        print(  # noqa: T201
            f"\na half hog wrapped: {len(made)} packages, {first + sum(wrapper.each)} keys, "
            f"at most {max(wrapper.each)} a package"
        )
