"""When a lot is planned as the block cuts it: from the kill of an animal of unknown age on."""

import pytest

from db.unit_of_work import Work
from shared.carcass.carcass import Age
from tests.db import examples


@pytest.mark.parametrize(
    ("species", "age", "killed", "as_over"),
    [
        ("beef", "unknown", False, False),
        ("beef", "unknown", True, True),
        ("veal", "unknown", True, True),
        ("beef", "under_30", True, False),
        ("beef", "30_and_over", True, False),  # its own age says it
        ("pork", "unknown", True, False),  # 9 CFR 310.22 names cattle
    ],
)
def test_from_the_first_hot_weight_on(
    work: Work, species: str, age: Age, killed: bool, as_over: bool
) -> None:
    lot = examples.lot_of_one(work, species=species)
    (animal,) = work.animals.of_lot(lot.id)
    work.animals.arrive(animal.id, tag="14", age=age, version=animal.version)
    if killed:
        examples.weighed(work, animal, "380", side=1)
    assert work.lots.question(lot.id).settings.at_block is as_over
    assert work.lots.question(lot.id, at_block=False).settings.at_block is False
    assert work.lots.question(lot.id, at_block=True).settings.at_block is True


def test_hung_without_a_weight_counts_as_killed(work: Work) -> None:
    lot = examples.lot_of_one(work, species="beef")
    animal = examples.arrived(work, lot)
    examples.moved(work, animal.id, "weighed", "passed")
    assert not work.lots.question(lot.id).settings.at_block
    examples.moved(work, animal.id, "hanging")
    assert work.lots.question(lot.id).settings.at_block
