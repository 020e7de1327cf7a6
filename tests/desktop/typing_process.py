"""A program of its own that opens an order and types into it until it is killed.

`python -m tests.desktop.typing_process FOLDER LOT ORDER SEED`: after each key it prints the moment
(the machine's own clock) and what then stands in the note.
"""

import os
import random
import sys
from pathlib import Path
from time import monotonic

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from db.store import open_store
from desktop.app import make_bench
from desktop.counter.place import CounterPlace
from desktop.messages import SilentMessages
from desktop.paths import Paths
from desktop.settings import SettingsFile

LETTERS = "abcdefghijklmnopqrstuvwxyz ,.0123456789"
KEY_MS = 25


def main(folder: Path, lot_id: int, order_id: int, seed: int) -> None:
    """Type without end."""
    app = QApplication([])
    paths = Paths(folder)
    paths.make()
    store = open_store(paths.database, keep_copies=False)
    settings = SettingsFile(paths.settings)
    bench = make_bench(store, paths, settings, SilentMessages(), "Test", "Bench")
    place = CounterPlace(bench)
    place.show()
    place.show_order(lot_id, order_id)
    QTest.keyClicks(place.order.table, "h")
    app.processEvents()
    dialog = place.order.dialog
    assert dialog is not None
    dialog.cut.set_text("ham steak")
    dialog.cut.changed.emit()
    chosen = random.Random(seed)
    while app is not None:
        QTest.keyClicks(dialog.note.editor, chosen.choice(LETTERS))
        sys.stdout.write(f"{monotonic()}\t{dialog.note.text()}\n")
        sys.stdout.flush()
        QTest.qWait(KEY_MS)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]))
