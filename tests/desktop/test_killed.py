"""The program is killed while somebody types: what was typed a second before is there again."""

import os
import random
import subprocess
import sys
from pathlib import Path
from time import monotonic

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import open_store
from desktop.counter.line_dialog import LineDialog
from desktop.counter.place import CounterPlace
from desktop.paths import Paths
from desktop.settings import SettingsFile
from tests.db.examples import lot_of_halves
from tests.desktop.recorded_messages import RecordedMessages

ROOM = Path(__file__).parents[2]
SEED = 20261125


@pytest.mark.parametrize("keys", [random.Random(SEED).randint(60, 100), 75])
def test_what_was_typed_a_second_before_a_kill_is_there_again(
    qtbot: QtBot, store_path: Path, keys: int
) -> None:
    folder = store_path.parent
    paths = Paths(folder)
    paths.make()
    store = open_store(paths.database, keep_copies=False)
    signed = store.sign_on("Test", "Bench")
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    store.close()
    order_id = lot.shares[0].order_id
    typed, killed = _type_and_kill(folder, lot.id, order_id, keys)
    sure = max((text for at, text in typed if at <= killed - 1.0), key=len)
    assert sure, "the test typed for more than a second"
    place = _started_again(qtbot, folder)
    assert place.order.desk is not None
    assert place.order.desk.order.id == order_id
    dialog = place.order.dialogs.shown
    assert isinstance(dialog, LineDialog)
    assert dialog.cut.value() == "ham_steak"
    there = dialog.note.text()
    assert there.startswith(sure)
    assert typed[-1][1].startswith(there), "nothing that was never typed"
    dialog.drop()
    assert place.bench.journal.names() == ()
    place.bench.work.finish()
    place.bench.journal.close()
    place.bench.store.close()


def _type_and_kill(
    folder: Path, lot_id: int, order_id: int, keys: int
) -> tuple[list[tuple[float, str]], float]:
    """Every key's moment with what then stood there, and the moment of the kill."""
    command = [sys.executable, "-m", "tests.desktop.typing_process"]
    command += [str(folder), str(lot_id), str(order_id), str(SEED)]
    quiet = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONIOENCODING": "utf-8"}
    with subprocess.Popen(
        command, cwd=ROOM, stdout=subprocess.PIPE, text=True, encoding="utf-8", env=quiet
    ) as process:
        assert process.stdout is not None
        lines = [process.stdout.readline() for _ in range(keys)]
        process.kill()
        killed = monotonic()
        lines += process.stdout.readlines()
    pairs = [line.rstrip("\n").split("\t", 1) for line in lines if "\t" in line]
    return [(float(at), text) for at, text in pairs], killed


def _started_again(qtbot: QtBot, folder: Path) -> CounterPlace:
    from desktop.app import make_bench

    assert QApplication.instance() is not None
    paths = Paths(folder)
    store = open_store(paths.database, keep_copies=False)
    settings = SettingsFile(paths.settings)
    bench = make_bench(store, paths, settings, RecordedMessages(), "Test", "Bench")
    place = CounterPlace(bench)
    qtbot.addWidget(place)
    place.show()
    place.refresh()
    return place
