"""Cuts without neighbours, and bone-in cuts whose neighbours leave nothing out, are found."""

from dataclasses import replace

import pytest

from shared.carcass.anatomy import catalogue, species
from shared.carcass.checking import check, parts_of_way
from shared.carcass.neighbour_check import leaves_out

PORK = catalogue("pork")


def faults(cut: str, *neighbours: str) -> list[tuple[str, str]]:
    """Codes and places of what is wrong with the hog when a cut has these neighbours only."""
    cuts = {**PORK.cuts, cut: replace(PORK.cuts[cut], neighbours=neighbours)}
    return [(one.code, one.place) for one in check(replace(PORK, cuts=cuts))]


def test_a_cut_that_names_no_other_is_found() -> None:
    assert faults("ham_steak") == [("without_neighbour", "cut ham_steak")]


def test_a_chop_on_the_bone_that_knows_no_boneless_one_is_found() -> None:
    beef = catalogue("beef")
    cut = replace(beef.cuts["rib_steak"], neighbours=("rib_roast",))
    found = check(replace(beef, cuts={**beef.cuts, "rib_steak": cut}))
    wrong = [(one.code, one.place) for one in found if one.level == "wrong"]
    assert wrong == [("neighbours_keep_all", "cut rib_steak")]


@pytest.mark.parametrize(
    ("name", "cut", "less"),
    [
        # the same cut with a part left out
        ("beef", "rib_roast", "rib_roast_chine_off"),
        ("bison", "blade_roast", "blade_roast_chine_off"),
        ("lamb", "whole_leg", "leg_shank_off"),
        ("veal", "rib_chop", "rib_chop_chine_off"),
        ("pork", "whole_ham", "short_shank_ham"),
        # a half in place of a whole
        ("pork", "whole_ham", "half_ham"),
        ("lamb", "whole_rack", "half_rack"),
        ("deer", "whole_backstrap", "half_backstrap"),
        ("beef", "packer_brisket", "brisket_half"),
        # the ends as roasts, the center in steaks
        ("pork", "half_ham", "ham_end_roast"),
        ("pork", "whole_ham", "ham_end_roast"),
        # one side's in place of both sides'
        ("lamb", "crown_roast", "frenched_rack"),
        ("deer", "saddle_roast", "loin_roast"),
    ],
)
def test_the_neighbours_a_counter_hand_would_offer(name: str, cut: str, less: str) -> None:
    """By hand, common practice, no source."""
    assert less in catalogue(name).cuts[cut].neighbours


def test_a_boneless_chop_leaves_the_bone_of_a_bone_in_one() -> None:
    deer = catalogue("deer")
    taken = {
        cut.code: {part.code: share for way in cut.ways for part, share in parts_of_way(deer, way)}
        for cut in deer.cuts.values()
    }
    assert leaves_out(deer, deer.cuts["loin_chop"], "backstrap_steak", taken)
    assert not leaves_out(deer, deer.cuts["backstrap_steak"], "tenderloin", taken)


@pytest.mark.parametrize("name", species())
def test_every_neighbour_is_a_cut_and_not_the_cut_itself(name: str) -> None:
    for cut in catalogue(name).cuts.values():
        assert cut.code not in cut.neighbours
        assert len(set(cut.neighbours)) == len(cut.neighbours)
        assert set(cut.neighbours) <= set(catalogue(name).cuts)
