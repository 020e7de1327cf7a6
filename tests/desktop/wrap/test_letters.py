"""Alt letters of the wrap and its dialogs: none leads to two things, in neither language."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.language import Language
from desktop.paths import resources
from desktop.wrap.odd_package import OddPackage
from desktop.wrap.place import WrapPlace
from printing.words import Words
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.desktop.audit import twin_letters
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_place import opened, weigh


@pytest.fixture(params=["en", "es"])
def place(
    request: pytest.FixtureRequest,
    qtbot: QtBot,
    qapp: QApplication,
    bench: Bench,
    store: Store,
    signed: SignedOn,
) -> Iterator[WrapPlace]:
    """An order at the wrap with packages weighed, some without a label."""
    before = QLocale()
    language = Language(qapp, resources() / "translations")
    assert language.use(request.param)
    bench.words = Words(request.param, strict=True)
    order_on_the_table(store, signed)
    made = opened(qtbot, bench)
    made.resize(1366, 620)
    weigh(made, "18.5")
    made.lines.choose(2)
    weigh(made, "1")
    weigh(made, "1.02")
    qtbot.waitUntil(lambda: not bench.work.busy())
    yield made
    language.use("en")
    QLocale.setDefault(before)


def test_weighing_and_packages_have_a_letter_each(qtbot: QtBot, place: WrapPlace) -> None:
    """All that may be in sight at once: labels missing, a scale to choose, a way back."""
    place.show()
    qtbot.waitExposed(place)
    side, scale = place.side, place.strip.scale
    for at in range(place.lines.rows.rowCount()):
        place.lines.choose(at)
        for part in (side.missing, side.stroke, side.ready, side.back, scale.which, place.strip):
            part.show()
            part.setEnabled(True)
        assert twin_letters(place) == {}
        place.entry.count.show()
        place.strip.hide()
        assert twin_letters(place) == {}


def test_gross_and_net_have_a_letter_each(place: WrapPlace) -> None:
    place.strip.tare.set_value(Weight(2, "lb", -2))
    assert twin_letters(place) == {}


def test_its_dialogs_have_a_letter_each(place: WrapPlace) -> None:
    """Boxes, an odd package, batches: whatever of them is in sight."""
    place.show_boxes()
    assert twin_letters(place.boxes) == {}
    place.boxes.drop()
    place.odd_package()
    assert isinstance(place.dialog, OddPackage)
    assert twin_letters(place.dialog) == {}
    place.dialog.drop()
    place.show_batches()
    assert twin_letters(place.batches) == {}
    place.batches.reject()
