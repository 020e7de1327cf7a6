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
