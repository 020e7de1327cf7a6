"""Whom the block is told to ask of an old animal: no inspector stands by custom-exempt work."""

from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.minding import cautions
from shared.carcass.carcass import Age, Regime
from tests.desktop.block.hog import hanging
from tests.desktop.block.test_place import shown


@pytest.mark.parametrize("age", ["30_and_over", "unknown"])
@pytest.mark.parametrize("regime", ["inspected", "custom"])
def test_an_old_animal_is_told_by_its_regime(
    qtbot: QtBot, bench: Bench, age: Age, regime: Regime
) -> None:
    hanging(bench)
    place = shown(qtbot, bench)
    place.show_carcass(1)
    cutting = place.view.cutting
    assert cutting is not None
    animal = replace(cutting.animal, species="beef", age=age, regime=regime)
    told = cautions(replace(cutting, animal=animal), bench.words)[0]
    assert "No backbone goes to the owner" in told
    assert ("inspector" in told) is (regime == "inspected")
    assert ("state or FSIS contact" in told) is (regime == "custom")
