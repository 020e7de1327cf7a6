"""The demo shop used by chance, by a seed: nothing anyone does may be a fault of the program.

Found so, over some tens of thousands of actions: papers made at once with each other's letters, a
report drawn as another, a keyboard that no place had.
"""

import logging
import os
import runpy
import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from time import monotonic

import pytest
from PySide6.QtCore import QLocale, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import check_store, open_store
from desktop.app import Program, make_bench
from desktop.bench import Bench
from desktop.language import Language
from desktop.look.theme import Theme
from desktop.paths import Paths, resources
from desktop.settings import SettingsFile
from tests.desktop.recorded_messages import RecordedMessages
from tests.store_fixture import Clock
from tests.stories.random_hands import RandomHands

SCRIPT = Path(__file__).parents[2] / "demo" / "make_demo.py"
SEEDS = [int(one) for one in os.environ.get("STEELYARD_HANDS_SEEDS", "20261126 501").split()]
ACTIONS = int(os.environ.get("STEELYARD_HANDS_ACTIONS", "100"))
MOST_S = ACTIONS * 0.06
Start = Callable[[int], tuple[Program, RandomHands]]


@pytest.fixture(scope="module")
def demo_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo's records, made once: each test has a copy."""
    path = tmp_path_factory.mktemp("demo") / "steelyard.db"
    made = open_store(path, keep_copies=False)
    runpy.run_path(str(SCRIPT))["make_demo"](made, Clock().now.date())
    made.close()
    return path


@pytest.fixture
def bench(demo_shop: Path, clock: Clock, tmp_path: Path) -> Iterator[Bench]:
    """A station of the demo shop."""
    paths = Paths(tmp_path / "shop")
    paths.make()
    shutil.copy(demo_shop, paths.database)
    store = open_store(paths.database, keep_copies=False, clock=clock)
    settings = SettingsFile(paths.settings)
    made = make_bench(store, paths, settings, RecordedMessages(), "Test", "Bench")
    made.now = clock
    yield made
    store.close()


@pytest.fixture
def start(
    qapp: QApplication,
    qtbot: QtBot,
    bench: Bench,
    worn: Theme,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> Iterator[Start]:
    """The program on the demo shop, and hands by a seed; no mail is written to anyone."""
    before, told = QLocale(), Language(qapp, resources() / "translations")

    def refuse(_url: QUrl) -> bool:
        return False

    monkeypatch.setattr(QDesktopServices, "openUrl", refuse)
    monkeypatch.setattr("desktop.printers.Printers.names", lambda _self: ["Paper", "Labels"])
    monkeypatch.setattr("desktop.printers.Printers.send", lambda *_given: None)
    opened: list[Program] = []

    def begun(seed: int) -> tuple[Program, RandomHands]:
        hands = RandomHands(seed, tmp_path)
        bench.messages = hands.door
        program = Program(qapp, bench, told, worn.family)
        opened.append(program)
        qtbot.addWidget(program.window)
        program.open()
        return program, hands

    yield begun
    for one in opened:
        bench.settings.change(language="en", theme="light", percent=100)
        one.window.close()
        one.close()
        one.deleteLater()
    QLocale.setDefault(before)


@pytest.mark.parametrize("seed", SEEDS)
def test_nothing_done_by_chance_is_a_fault(
    qtbot: QtBot, start: Start, caplog: pytest.LogCaptureFixture, seed: int
) -> None:
    program, hands = start(seed)
    with qtbot.captureExceptions() as faults, caplog.at_level(logging.ERROR):
        hands.use(program, ACTIONS, monotonic() + MOST_S)
        qtbot.waitUntil(lambda: not program.bench.work.busy())
    assert hands.done > 20, "the machine was too busy to see anything"
    assert faults == [], list(hands.last)
    assert [one.getMessage() for one in caplog.records if one.levelno >= logging.ERROR] == []
    assert hands.wrong == []
    assert check_store(program.bench.paths.database) == ()


def test_the_hands_see_a_fault(qtbot: QtBot, start: Start, monkeypatch: pytest.MonkeyPatch) -> None:
    """Else the test above could never fail."""

    def fail(_self: object) -> None:
        raise ZeroDivisionError(datetime.now(UTC))

    program, hands = start(1)
    for place in ("counter", "rail", "block", "wrap", "office"):
        program.window.enter(place)
        monkeypatch.setattr(type(program.window.place()), "first_focus", fail)
    with qtbot.captureExceptions() as faults:
        while not faults and hands.done < 10 * ACTIONS:
            hands.use(program, 10, monotonic() + MOST_S)
    assert {kind for kind, _fault, _trace in faults} == {ZeroDivisionError}
