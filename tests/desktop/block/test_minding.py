"""Whom the block is told to ask of an old animal: no inspector stands by custom-exempt work."""

from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.minding import cautions
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Age, Carcass, Holding, Regime, Share, SideWeights
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import plan
from shared.units import Weight
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


def test_what_an_age_brings_down_after_the_release_is_one_caution(
    qtbot: QtBot, bench: Bench
) -> None:
    """Each line had its own with the same reason: eight of them filled the screen."""
    hanging(bench)
    place = shown(qtbot, bench)
    place.show_carcass(1)
    cutting = place.view.cutting
    assert cutting is not None
    owner = Share(1, "Anna", (Holding(0, 1), Holding(0, 2)))
    bones = ("t_bone_steak", "neck_bones", "porterhouse_steak")
    asked = tuple(Choice(n, 1, cut, Amount("all")) for n, cut in enumerate(bones, start=1))
    side = SideWeights(Weight(350, "lb"))
    beef = Carcass("beef", "14", age="30_and_over", skin="skinned", hot=(side, side))
    question, known = Question((beef,), (owner,), asked), catalogue("beef")
    answer = plan(question, known)
    assert len(answer.conflicts) == 3
    old = replace(cutting, question=question, answer=answer, catalogue=known)
    told = [one for one in cautions(old, bench.words) if one.startswith("No longer stands")]
    assert len(told) == 1
    assert told[0].count("From 30 months on") == 1
    for cut in bones:
        assert bench.words.name("beef", f"cut.{cut}", 2).removesuffix("s") in told[0]
