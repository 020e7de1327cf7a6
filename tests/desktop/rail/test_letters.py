"""Alt letters of the rail: none leads to two things in sight, in neither language."""

from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.language import Language
from desktop.paths import resources
from desktop.rail.place import RailPlace
from printing.words import Words
from shared.carcass.carcass import Regime
from shared.shop.holdings import whole
from shared.shop.lots import LotShare, NewLot
from shared.shop.scales import Scale
from shared.shop.states import AnimalState
from shared.units import Weight
from tests.db import examples
from tests.desktop.audit import twin_letters

DAY = date(2026, 3, 2)
STATES: tuple[tuple[Regime, tuple[AnimalState, ...]], ...] = (
    ("inspected", ()),
    ("inspected", ("passed",)),
    ("inspected", ("passed", "hanging")),
    ("custom", ()),
    ("custom", ("passed",)),
)


@pytest.fixture(params=["en", "es"])
def rail(
    request: pytest.FixtureRequest, qtbot: QtBot, qapp: QApplication, bench: Bench
) -> Iterator[RailPlace]:
    """Beeves in every state with steps to take, and a scale with its hook."""
    before = QLocale()
    language = Language(qapp, resources() / "translations")
    assert language.use(request.param)
    bench.words = Words(request.param, strict=True)
    with bench.store.work(bench.person, bench.station) as work:
        work.scales.save(
            Scale(
                name="Rail scale",
                port="",
                pattern="comma_header",
                division=Weight(5, "lb", -1),
                hook=Weight(35, "lb", -1),
            )
        )
        owner = examples.customer(work)
        shares = (LotShare(1, owner.id, holdings=whole(0)),)
        for at, (regime, states) in enumerate(STATES):
            new = NewLot("beef", 1, DAY, owner.id, shares, regime=regime)
            animal = examples.arrived(work, examples.booked(work, new), str(300 + at))
            examples.weighed(work, animal, "800")
            examples.moved(work, animal.id, *states)
        work.commit()
    made = RailPlace(bench)
    qtbot.addWidget(made)
    made.show()
    yield made
    language.use("en")
    QLocale.setDefault(before)


def test_each_state_of_an_animal_has_a_letter_for_each_thing(rail: RailPlace) -> None:
    rows = rail.table.rows.rows()
    assert len(rows) == len(STATES)
    for row in rows:
        rail.open(Target("rail", "animal", row.id))
        for part in rail.panel.weights.strip.stops():
            part.show()
            assert part.isVisibleTo(rail)
        assert twin_letters(rail) == {}, (row.state, row.regime)
