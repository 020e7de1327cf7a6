"""A program of its own that opens its first booking: nothing was read by a test before it.

`python -m tests.desktop.counter.first_booking_process FOLDER` prints the milliseconds of the
window's thread that the longest turn took, for the first booking and for the second.
"""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from db.store import open_store
from desktop.app import make_bench
from desktop.collecting import Collecting
from desktop.counter.place import CounterPlace
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.messages import SilentMessages
from desktop.paths import Paths, bundled_fonts
from desktop.settings import SettingsFile
from desktop.work import slow_turns
from tests.bench.find import fill

MANY = 20_000


def main(folder: Path) -> None:
    """Open the counter of a shop with many orders, wait as a person would, book."""
    app = QApplication([])
    Collecting(app)
    theme.apply(app, Theme(family=load_fonts(bundled_fonts())))
    paths = Paths(folder)
    paths.make()
    store = open_store(paths.database, keep_copies=False)
    fill(store, MANY)
    settings = SettingsFile(paths.settings)
    bench = make_bench(store, paths, settings, SilentMessages(), "Test", "Bench")
    place = CounterPlace(bench)
    place.resize(1366, 620)
    place.refresh()
    place.show()
    while bench.work.busy():
        QTest.qWait(10)
    for _ in range(2):
        with slow_turns(limit_ms=0) as turns:
            place.book()
            QTest.qWait(50)
            while bench.work.busy():
                QTest.qWait(10)
        assert place.dialog is not None
        sys.stdout.write(f"{max(turns)}\n")
        place.dialog.drop()
        QTest.qWait(20)
    bench.work.finish()
    store.close()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
