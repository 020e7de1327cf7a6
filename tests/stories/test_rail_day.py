"""A day of twenty mixed animals at the rail, by keyboard and the played scale; then a bad liver."""

from collections.abc import Iterator
from dataclasses import dataclass
from time import perf_counter

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from db.unit_of_work import Work
from desktop.bench import Bench
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.place import CounterPlace
from desktop.main_window import MainWindow
from desktop.rail.check_in import CheckInDialog
from desktop.rail.loss import LossDialog
from desktop.rail.place import RailPlace
from desktop.rail.weight_places import Stage
from shared.cutting.order import Amount, Choice
from shared.shop.calls import ToRing
from shared.shop.holdings import half
from shared.shop.lots import LotShare, NewLot
from shared.shop.scales import Scale
from shared.units import Weight
from tests.db import examples
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.scale_on_a_terminal import PlayedScale
from tests.stories.keyboard import Keyboard

Key = Qt.Key
KEYS_OF_A_WEIGHT = 1  # Enter; the scale writes the digits


@dataclass(frozen=True)
class Beast:
    """One animal of the day: what the pen's scale says, and the rail's with the hook."""

    species: str
    regime: str
    live: str
    hot: tuple[str, ...]


# Live and hot weights within the usual dressing of each species (trade tables of each file);
# each hot weight is said with the 3.5-lb hook, which is taken off.
KINDS = (
    *(Beast("pork", "custom", "270.0", ("100.5", "99.5")) for _ in range(8)),
    *(Beast("beef", "inspected", "1250.0", ("392.5", "390.0")) for _ in range(4)),
    *(Beast("lamb", "custom", "130.0", ("68.5",)) for _ in range(4)),
    *(Beast("goat", "custom", "80.0", ("43.5",)) for _ in range(2)),
    *(Beast("veal", "inspected", "400.0", ("121.0", "120.5")) for _ in range(2)),
)


class Day:
    """The window, the keyboard, and the scale that is played."""

    def __init__(self, qtbot: QtBot, bench: Bench, window: MainWindow, scale: PlayedScale) -> None:
        self.qtbot = qtbot
        self.bench = bench
        self.window = window
        self.scale = scale
        self.keys = Keyboard(qtbot)
        place = window.place()
        assert isinstance(place, RailPlace)
        self.rail = place

    def come(self, tag: str, live: str) -> None:
        """The next of the list is checked in and weighed alive."""
        self.keys.press(Key.Key_Return)
        dialog = self.rail.dialog
        assert isinstance(dialog, CheckInDialog)
        self.keys.at(dialog)
        self.keys.type(tag)
        self.keys.ctrl(Key.Key_Return)
        self.keys.at(self.window)
        self.weigh(live)
        self.keys.press(Key.Key_Escape)

    def weigh(self, load: str) -> None:
        """Lay a load on the scale; Enter keeps what stands in the field."""
        field = self.keys.focused()
        self.scale.lay(load)
        self.qtbot.waitUntil(lambda: shown_in(field).startswith(grouped(load)))
        self.keys.press(Key.Key_Return)
        self.scale.lay("0.0")
        says = self.rail.panel.weights.strip.says
        self.qtbot.waitUntil(lambda: says.text() == "0.0\u00a0lb")

    def now_weigh(self, stage: Stage) -> None:
        self.rail.in_a_row.stage.set_value(stage)
        self.rail.in_a_row.stage.changed.emit()

    def tag(self, tag: str) -> None:
        self.keys.type(tag)
        self.keys.press(Key.Key_Return)


def shown_in(field: object) -> str:
    assert isinstance(field, QLineEdit)
    return field.text()


def grouped(load: str) -> str:
    return f"{int(load.split('.')[0]):,}.{load.split('.')[1]}"


def book(work: Work, bench: Bench) -> None:
    """Each animal in two halves, the small ones too; the hogs' owners want hams and the liver."""
    for n, beast in enumerate(KINDS):
        owners = [examples.customer(work, f"Owner {n} {side}", f"555 01{n:02}") for side in "ab"]
        shares = tuple(
            LotShare(side, owner.id, holdings=half(0, side))
            for side, owner in enumerate(owners, start=1)
        )
        regime = "inspected" if beast.regime == "inspected" else "custom"
        lot = examples.booked(
            work, NewLot(beast.species, 1, bench.today(), owners[0].id, shares, regime=regime)
        )
        if beast.species == "beef":
            for share in (1, 2):
                order = examples.order_of(work, lot, share)
                examples.line(work, order, Choice(0, 0, "liver", Amount("all")))
                examples.line(work, order, Choice(0, 0, "arm_roast", Amount("pieces", 1)))


@pytest.fixture
def day(qtbot: QtBot, bench: Bench) -> Iterator[Day]:
    played = PlayedScale()
    with bench.store.work(bench.person, bench.station) as work:
        book(work, bench)
        hook = Weight(35, "lb", -1)
        half_pound = Weight(5, "lb", -1)
        made = work.scales.save(
            Scale(
                name="Rail",
                port=played.port,
                pattern="comma_header",
                division=half_pound,
                hook=hook,
            )
        )
        assert isinstance(made, Scale)
        work.commit()
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.enter("rail")
    window.show()
    told = Day(qtbot, bench, window, played)
    told.keys.at(window)
    yield told
    told.rail.panel.weights.strip.use.close()
    played.unplug()


def run(day: Day) -> dict[str, tuple[int, float]]:
    """The whole day; keys and seconds of each part of it."""
    parts: dict[str, tuple[int, float]] = {}
    day.now_weigh("pen")
    day.rail.table.setFocus()
    keys, begun = day.keys.count, perf_counter()
    species = [one.species for one in KINDS]
    for n, beast in enumerate(KINDS):
        at = next(
            place for place, row in enumerate(day.rail.table.rows.rows()) if row.state == "booked"
        )
        day.rail.table.choose(at)
        seen = day.rail.panel.seen
        assert seen is not None
        assert seen.animal.species == species[n]
        day.come(str(301 + n), beast.live)
    parts["arrival"] = (day.keys.count - keys, perf_counter() - begun)

    day.now_weigh("rail")
    keys, begun = day.keys.count, perf_counter()
    day.keys.press(Key.Key_F7)
    for n, beast in enumerate(KINDS):
        day.tag(str(301 + n))
        for load in beast.hot:
            day.weigh(load)
    parts["hot weights"] = (day.keys.count - keys, perf_counter() - begun)

    keys, begun = day.keys.count, perf_counter()
    for n in range(len(KINDS)):
        day.tag(str(301 + n))
        day.keys.press(Key.Key_Space)
        day.keys.press(Key.Key_Space)
    parts["inspection, hung"] = (day.keys.count - keys, perf_counter() - begun)
    return parts


def test_twenty_mixed_animals_by_keyboard_and_scale(
    day: Day, capsys: pytest.CaptureFixture[str]
) -> None:
    parts = run(day)
    with day.bench.store.read() as work:
        rows = work.animals.list(states=("hanging",))
        weighings = [one for row in rows for one in work.weighings.of_animal(row.id)]
    assert len(rows) == len(KINDS)
    assert {one.source for one in weighings} == {"scale"}
    hot = [one for one in weighings if one.kind == "hot"]
    assert {one.tare for one in hot} == {Weight(35, "lb", -1)}
    assert len(hot) == sum(len(one.hot) for one in KINDS)
    sides = [len(one.hot) for one in KINDS]
    # Tag of three digits and Enter, then Enter for each load: nothing else.
    assert parts["hot weights"][0] == 1 + sum(4 + KEYS_OF_A_WEIGHT * n for n in sides)
    with capsys.disabled():
        for part, (keys, seconds) in parts.items():
            print(f"\n{part}: {keys} keys, {seconds:.1f} s for {len(KINDS)} animals", end="")  # noqa: T201
        print()  # noqa: T201


def test_a_condemned_liver_and_a_trimmed_shoulder_raise_their_calls(
    day: Day, messages: RecordedMessages, capsys: pytest.CaptureFixture[str]
) -> None:
    run(day)
    day.tag("309")
    keys = day.keys.count
    for part, side, reason in (("liver", "", "flukes"), ("all of the chuck", "Side 1", "abscess")):
        day.keys.press(Key.Key_F9)
        dialog = day.rail.dialog
        assert isinstance(dialog, LossDialog)
        day.keys.at(dialog)
        day.keys.fill(dialog.part, part)
        if side:
            day.keys.fill(dialog.side, side)
        day.keys.fill(dialog.reason, reason)
        day.keys.ctrl(Key.Key_Return)
        day.keys.at(day.window)
    keys = day.keys.count - keys
    told = "\n".join(messages.told)
    assert "No longer stands for Owner 8 a: bone-in arm roast." in told
    assert "Owner 8 b: bone-in arm roast" not in told
    assert "No longer stands for Owner 8 b: sliced liver." in told
    day.keys.press(Key.Key_F2)
    day.keys.ctrl(Key.Key_R)
    counter = day.window.place()
    assert isinstance(counter, CounterPlace)
    dialog = counter.dialog
    assert isinstance(dialog, CallsDialog)
    rows = dialog.table.rows.rows()
    losses = [one for one in rows if isinstance(one, ToRing) and "loss" in one.about]
    assert {one.order.owner for one in losses} == {"Owner 8 a", "Owner 8 b"}
    with capsys.disabled():
        print(f"\nA liver and a chuck lost: {keys} keys\n{told}")  # noqa: T201
        for one in losses:
            dialog.table.choose(rows.index(one))
            print(one.order.owner, "|", dialog.lost.text())  # noqa: T201
    assert QApplication.activeModalWidget() is dialog
