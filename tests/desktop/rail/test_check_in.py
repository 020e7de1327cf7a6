"""Checking an animal in: cattle are asked their age, hogs their skin, others neither."""

from datetime import date

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.check_in import SEXES, CheckInDialog, sex_words
from shared.carcass.anatomy import species
from tests.db import examples


def dialog(qtbot: QtBot, bench: Bench, kind: str) -> CheckInDialog:
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, kind, date(2026, 3, 2))
        (animal,) = work.animals.of_lot(lot.id)
        work.commit()
    made = CheckInDialog(bench, animal)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.mark.parametrize("kind", species())
def test_age_is_asked_of_cattle_and_bison_only(qtbot: QtBot, bench: Bench, kind: str) -> None:
    # 9 CFR 310.22; bison by the cautious reading
    made = dialog(qtbot, bench, kind)
    cattle = kind in ("beef", "bison", "veal")
    assert made.age.isVisible() is cattle
    assert ("30 months" in made.caution.text()) is cattle
    assert made.skin.isVisible() is (kind == "pork")
    assert made.sex.isVisible()


@pytest.mark.parametrize("kind", species())
def test_every_sex_has_a_word(kind: str) -> None:
    assert SEXES[kind]
    assert all(sex_words(one).strip() for one in SEXES[kind])


def test_a_bison_is_checked_in_with_its_age(qtbot: QtBot, bench: Bench) -> None:
    made = dialog(qtbot, bench, "bison")
    made.tag.set_text("B7")
    made.sex.set_value("heifer")
    made.age.set_value("30_and_over")
    assert made.attempt() == ""
    with bench.store.read() as work:
        found = work.animals.get(made.animal.id)
    assert found is not None
    assert (found.tag, found.sex, found.age) == ("B7", "heifer", "30_and_over")
