"""The rail's screens on 40,000 animals beside bare tables: `python -m tests.bench rooms [ANIMALS]`.

A bare table is Qt's own view on a model that only hands out the cells' texts, filled by the same
query as the screen. Both are made, filled, shown and painted once, in turns; medians are printed,
of the window's thread's own clock, so that a busy machine doesn't count.
"""

import os
import sys
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from time import thread_time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtWidgets import QApplication, QTableView, QWidget

from db.store import Store, open_store
from desktop.bench import Bench
from desktop.collecting import Collecting
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import Paths, bundled_fonts
from desktop.printers import Printers
from desktop.rail.calendar_days import span_of
from desktop.rail.calendar_dialog import CalendarDialog
from desktop.rail.check_in import CheckInDialog
from desktop.rail.cooler_dialog import CoolerDialog
from desktop.rail.place import ENDED, IN_HAND, RailPlace
from desktop.settings import SettingsFile
from desktop.trace.trace_dialog import TraceDialog
from desktop.work import Workers
from printing.words import Words
from shared.shop.trace import events
from tests.bench.full_rail import fill
from tests.desktop.recorded_messages import RecordedMessages

ANIMALS, TIMES, WARM = 40_000, 9, 2
SIZE = (1366, 696)
Cells = list[tuple[str, ...]]
_Index = QModelIndex | QPersistentModelIndex


class BareModel(QAbstractTableModel):
    """Texts and nothing else."""

    def __init__(self, cells: Cells) -> None:
        super().__init__()
        self._cells = cells

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._cells)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return len(self._cells[0]) if self._cells else 0

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role == Qt.ItemDataRole.DisplayRole:
            return self._cells[index.row()][index.column()]
        return None


@dataclass(frozen=True)
class Screen:
    """A screen of the rail: how it is opened, and the rows a bare table shows instead of it.

    A form has no rows, and is only held to the slot. `stays`: it is another list of one place.
    """

    name: str
    open: Callable[[], QWidget]
    rows: Callable[[], Sequence[object]] | None
    stays: bool = False


@dataclass(frozen=True)
class Opened:
    """What opening cost, in milliseconds; `slot` is the most the window's thread was held."""

    name: str
    ours: float
    bare: float | None
    slot: float

    @property
    def times(self) -> float:
        """How many times the bare table's time the screen took; 0 for a form."""
        return self.ours / self.bare if self.bare else 0


def main(words: list[str]) -> int:
    """Fill a store, open each screen and print what it took; 1 where a claim doesn't hold."""
    animals = int(words[0]) if words else ANIMALS
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    theme.apply(app, Theme(family=load_fonts(bundled_fonts())))
    Collecting(app)
    with tempfile.TemporaryDirectory() as folder:
        store = open_store(Path(folder) / "s.db", keep_copies=False)
        bench = bench_on(store, Path(folder))
        fill(store, animals, bench.today())
        found = measured(bench)
        bench.work.finish()
        store.close()
    for one in found:
        beside = "a form" if one.bare is None else f"bare {one.bare:5.1f} ms, {one.times:.2f} times"
        sys.stdout.write(
            f"{one.name:10}{one.ours:6.1f} ms; {beside:24}; {one.slot:5.1f} ms of the thread\n"
        )
    return int(any(one.times > 2 or one.slot > 50 for one in found))


def bench_on(store: Store, folder: Path) -> Bench:
    """A station on that store."""
    paths = Paths(folder / "shop")
    paths.make()
    settings = SettingsFile(paths.settings)
    signed = store.sign_on("Bench", "Bench")
    return Bench(
        store=store,
        paths=paths,
        messages=RecordedMessages(),
        settings=settings,
        printers=Printers(settings),
        work=Workers(),
        words=Words(strict=True),
        person=signed.person,
        station=signed.station,
    )


def measured(bench: Bench, times: int = TIMES) -> list[Opened]:
    """Each screen and its bare table in turns, the first of each not counted."""
    found: list[Opened] = []
    for screen in screens(bench):
        ours: list[float] = []
        bare: list[float] = []
        slots: list[float] = []
        for _ in range(WARM + times):
            took, slot = opening(screen.open, stays=screen.stays)
            if screen.rows is not None:
                rows = screen.rows
                bare.append(opening(lambda rows=rows: bare_table(rows()))[0])
            ours.append(took)
            slots.append(slot)
        plain = median(bare[WARM:]) if bare else None
        found.append(Opened(screen.name, median(ours[WARM:]), plain, median(slots[WARM:])))
    return found


def opening(make: Callable[[], QWidget], *, stays: bool = False) -> tuple[float, float]:
    """Make, show and paint it: milliseconds in all, and the longest without a key being read."""
    began = thread_time()
    widget = make()
    made = thread_time()
    widget.resize(*SIZE)
    widget.show()
    QApplication.processEvents()
    shown = thread_time()
    if isinstance(widget, RailPlace):
        widget.panel.weights.strip.use.close()
    widget.hide()
    if not stays:
        widget.deleteLater()
    QApplication.processEvents()
    return 1000 * (shown - began), 1000 * max(made - began, shown - made)


def bare_table(rows: Sequence[object]) -> QWidget:
    """Qt's own table with a text for each field of each row."""
    names = [one for one in dir(rows[0]) if not one.startswith("_")][:10] if rows else []
    view = QTableView()
    model = BareModel([tuple(str(getattr(row, one)) for one in names) for row in rows])
    model.setParent(view)
    view.setModel(model)
    return view


def screens(bench: Bench) -> list[Screen]:
    """The rail's screens; lists and forms."""
    return [*lists(bench), *dialogs(bench)]


def lists(bench: Bench) -> list[Screen]:
    """The place as it opens, and its other lists."""
    today, place = bench.today(), RailPlace(bench)

    def listed(**which: object) -> Sequence[object]:
        with bench.store.read() as work:
            return work.animals.list(**which)  # pyright: ignore[reportArgumentType]

    def shown(which: str) -> QWidget:
        place.which.set_value(which)
        place.refresh()
        return place

    def due_today() -> Sequence[object]:
        return listed(states=IN_HAND, start=today, end=today)

    def ended() -> Sequence[object]:
        return listed(states=ENDED, descending=True)

    return [
        Screen("rail", lambda: RailPlace(bench), lambda: listed(states=IN_HAND)),
        Screen("due today", lambda: shown("today"), due_today, stays=True),
        Screen("cut", lambda: shown("done"), ended, stays=True),
    ]


def dialogs(bench: Bench) -> list[Screen]:
    """What is opened from the place; the trace is one animal's."""
    today = bench.today()
    with bench.store.read() as work:
        booked = work.animals.list(states=("booked",), limit=1)[0]
        cut = work.animals.list(states=("cut",), descending=True, limit=1)[0]
        animal = work.animals.get(booked.id)
    assert animal is not None

    def hanging() -> Sequence[object]:
        with bench.store.read() as work:
            return work.cooler.hanging()

    def of_month() -> Sequence[object]:
        with bench.store.read() as work:
            return work.calendar.lots(*span_of(today, month=True))

    def traced() -> Sequence[object]:
        with bench.store.read() as work:
            hit = work.trace.find(cut.tag)[0]
            found = work.trace.of_lot(hit.lot_id)
        assert found is not None
        return events(found, hit.animal_id)

    return [
        Screen("cooler", lambda: CoolerDialog(bench), hanging),
        Screen("calendar", lambda: CalendarDialog(bench), of_month),
        Screen("trace", lambda: TraceDialog(bench, cut.tag), traced),
        Screen("check in", lambda: CheckInDialog(bench, animal), None),
    ]
