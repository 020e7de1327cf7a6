"""Minutes by class of cut, worked by hand (what the shop enters has no outside source)."""

from shared.carcass import anatomy
from shared.shop.block_minutes import CLASS_OF, line_minutes, usual_minutes

ENTERED = {"roasts": 4, "steaks": 6, "ground": 5, "finishes": 3}


def test_a_line_takes_its_class_and_what_is_done_to_it() -> None:
    assert line_minutes(ENTERED, "roasts", finished=True) == 4 + 3
    assert line_minutes(ENTERED, "ground", finished=False) == 5
    assert line_minutes(ENTERED, None, finished=False) == 0
    assert line_minutes({"steaks": 6}, "roasts", finished=True) == 0


def test_the_usual_of_a_lamb_is_counted_line_by_line() -> None:
    """Five lines of slices and chops, shank, riblets and leg, flank and ground: 30 + 12 + 10."""
    lamb = anatomy.catalogue("lamb")
    assert usual_minutes(ENTERED, lamb.cuts, lamb.usual) == 52


def test_smoke_and_cure_take_no_time_at_the_block_but_slicing_does() -> None:
    pork = anatomy.catalogue("pork")
    by_cut = {one.cut: one for one in pork.usual}
    ham, bacon = by_cut["short_shank_ham"], by_cut["bacon"]
    assert (ham.finishes, bacon.finishes) == (("cured_smoked",), ("cured_smoked", "sliced"))
    assert usual_minutes(ENTERED, pork.cuts, [ham]) == 4
    assert usual_minutes(ENTERED, pork.cuts, [bacon]) == 4 + 3


def test_a_cut_is_of_one_class_whatever_the_animal() -> None:
    found: dict[str, set[str]] = {}
    for species in anatomy.species():
        for one in anatomy.catalogue(species).cuts.values():
            found.setdefault(one.code, set()).add(CLASS_OF.get(one.kind, ""))
    assert [code for code, classes in found.items() if len(classes) > 1] == []
