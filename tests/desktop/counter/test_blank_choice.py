"""A cut as the counter first offers it."""

import pytest

from desktop.counter.line_dialog import blank_choice
from desktop.office.usual_charges import usual_charges
from shared.carcass.anatomy import catalogue, species
from shared.cutting.order import Amount


@pytest.mark.parametrize("kind", species())
def test_every_cut_is_offered_in_an_amount_it_can_be_had_in(kind: str) -> None:
    """Saddle chops were offered as "the rest": the dialog stood with its amount empty."""
    known = catalogue(kind)
    offered = {code: blank_choice(known, code, 1).amount for code in known.cuts}
    assert [code for code, cut in known.cuts.items() if offered[code].kind not in cut.amounts] == []


def test_saddle_chops_are_offered_by_the_slice() -> None:
    assert blank_choice(catalogue("lamb"), "saddle_chop", 1).amount == Amount("slices", 1)


# What the house does with a primal is its usual; which finishes a cut may have, the species' file.
@pytest.mark.parametrize(
    ("cut", "finishes"),
    [
        ("whole_ham", ("cured_smoked",)),
        ("belly_slab", ("cured_smoked",)),
        ("whole_picnic", ("fresh",)),
    ],
)
def test_a_whole_ham_is_offered_fresh_or_cured(cut: str, finishes: tuple[str, ...]) -> None:
    """By its name it had no finish, and the block read neither fresh nor cured."""
    assert blank_choice(catalogue("pork"), cut, 1).finishes == finishes


@pytest.mark.parametrize(
    ("kind", "cut", "finishes"),
    [
        ("deer", "summer_sausage", ("seasoned",)),
        ("beef", "summer_sausage", ("seasoned",)),
        ("deer", "snack_sticks", ("seasoned",)),
        ("deer", "jerky", ()),
        ("pork", "bulk_sausage", ("seasoned",)),
        ("pork", "link_sausage", ("seasoned", "links")),
        ("lamb", "ground_lamb", ()),
        ("deer", "venison_patties", ()),
    ],
)
def test_a_sausage_is_offered_as_it_is_made(kind: str, cut: str, finishes: tuple[str, ...]) -> None:
    """Nobody ticked "seasoned", and the charge for it, which is by that finish, was nothing."""
    assert blank_choice(catalogue(kind), cut, 1).finishes == finishes


def test_every_sausage_offered_falls_under_the_usual_charge_for_sausage() -> None:
    charge = next(one for one in usual_charges() if one.code == "sausage")
    for kind in species():
        known = catalogue(kind)
        for code in known.cuts:
            if "sausage" in code:
                offered = blank_choice(known, code, 1).finishes
                assert set(charge.applies_to.finishes) & set(offered), (kind, code)
