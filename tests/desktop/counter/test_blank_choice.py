"""A cut as the counter first offers it."""

import pytest

from desktop.counter.line_dialog import blank_choice
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
