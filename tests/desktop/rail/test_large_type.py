"""Every dialog of the rail stands whole in the least window at 150 % type, in both languages."""

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QSize, QTranslator
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

import desktop
from desktop.bench import Bench
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import bundled_fonts
from desktop.rail.calendar_dialog import CalendarDialog
from desktop.rail.check_in import CheckInDialog
from desktop.rail.cooler_dialog import CoolerDialog
from desktop.rail.loss import LossDialog
from desktop.rail.minutes_dialog import MinutesDialog
from desktop.rail.place import RailPlace
from desktop.rail.week_dialog import WeekDialog
from desktop.scales_dialog import ScalesDialog
from shared.shop.lots import Lot
from tests.db import examples

LEAST = (1366, 696)
SPANISH = Path(desktop.__file__).parent / "resources" / "translations" / "steelyard_es.qm"


@pytest.fixture(params=["en", "es"])
def large(qapp: QApplication, request: pytest.FixtureRequest) -> Iterator[None]:
    theme.apply(qapp, Theme(percent=150, family=load_fonts(bundled_fonts())))
    translator = QTranslator()
    if request.param == "es":
        assert translator.load(str(SPANISH))
        qapp.installTranslator(translator)
    yield
    qapp.removeTranslator(translator)
    theme.apply(qapp, Theme())


@pytest.fixture
def lot(bench: Bench) -> Lot:
    with bench.store.work(bench.person, bench.station) as work:
        made = examples.lot_of_halves(work, "beef", day=date(2026, 3, 2))
        animal = examples.arrived(work, made)
        examples.weighed(work, animal, "389", 1)
        work.commit()
    return made


def dialogs(rail: RailPlace) -> dict[str, Callable[[], QDialog]]:
    bench, seen = rail.bench, rail.panel.seen
    assert seen is not None
    return {
        "check in": lambda: CheckInDialog(bench, seen.animal, rail),
        "loss": lambda: LossDialog(bench, seen, rail),
        "week": lambda: WeekDialog(bench, rail),
        "minutes": lambda: MinutesDialog(bench, rail),
        "calendar": lambda: CalendarDialog(bench, rail),
        "cooler": lambda: CoolerDialog(bench, rail),
        "scales": lambda: ScalesDialog(bench, rail),
    }


@pytest.mark.usefixtures("large", "lot")
def test_every_dialog_stands_whole_in_the_least_window(qtbot: QtBot, bench: Bench) -> None:
    rail = RailPlace(bench)
    qtbot.addWidget(rail)
    rail.resize(*LEAST)
    rail.show()
    qtbot.waitExposed(rail)
    assert rail.minimumSizeHint().width() <= LEAST[0]
    assert rail.around.width() == rail.panel.width() + 12
    for name, make in dialogs(rail).items():
        dialog = make()
        dialog.show()
        qtbot.waitExposed(dialog)
        least, size = dialog.minimumSizeHint(), dialog.size()
        assert size.expandedTo(least) == size, name
        assert size.boundedTo(QSize(*LEAST)) == size, name
        dialog.close()
        dialog.deleteLater()
