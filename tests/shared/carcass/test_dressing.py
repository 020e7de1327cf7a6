"""A carcass that hangs otherwise than its species' reference is rebased, never twice.

Sources: a hog's skin and feet are the parts of table P-B (National Pork Board, 2016); a skinned,
headless hog dresses about 63 % and a scalded one with its head 72 % (ATTRA, J. Cloud).
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Gone, SideWeights
from shared.carcass.dressing import FIELDS, PARTS, Dressing, hung_fraction, on_the_scale
from shared.carcass.weights import side_weights
from shared.units import NG_PER_LB, Weight

PORK, BEEF = catalogue("pork"), catalogue("beef")
SPECIES = ("beef", "pork", "lamb", "goat", "veal", "bison", "deer")


def hung(**said: str) -> tuple[SideWeights, SideWeights]:
    side = SideWeights(whole=Weight.from_pounds(said["pounds"]))
    return side, side


def shares_on_the_scale(species: str, skin: str, dressing: Dressing) -> Fraction:
    found = catalogue(species)
    parts = [it for it in found.parts.values() if on_the_scale(it, skin, dressing)]
    return sum((it.share for it in parts), Fraction(0)) / hung_fraction(found, skin, dressing)


DRESSINGS = (
    Dressing(),
    Dressing(head="on", feet="on", leaf="in", kidneys="in"),
    Dressing(head="off", feet="off", leaf="out", kidneys="out"),
)


@pytest.mark.parametrize("species", SPECIES)
@pytest.mark.parametrize("skin", ["scalded", "skinned", "unknown"])
@pytest.mark.parametrize("dressing", DRESSINGS)
def test_shares_add_up_to_the_side_as_weighed(species: str, skin: str, dressing: Dressing) -> None:
    assert shares_on_the_scale(species, skin, dressing) == 1


def test_a_skinned_hog_is_cut_as_a_bigger_scalded_one() -> None:
    """10.2 lb of skin and 4.4 lb of feet of 210.9 lb are gone: 196.3 lb."""
    assert hung_fraction(PORK, "skinned", Dressing()) == Fraction("196.3") / Fraction("210.9")
    first, _ = side_weights(Carcass("pork", skin="skinned", chilled=hung(pounds="98.15")), PORK)
    assert first.hanging_ng == Weight.from_pounds("98.15").nanograms
    assert abs(first.nanograms - Weight.from_pounds("105.45").nanograms) <= 1
    # the ham butt of a scalded side of 105.45 lb is the same piece of meat
    assert Fraction(first.nanograms, NG_PER_LB) * PORK.parts["ham_butt"].share == pytest.approx(8.7)


def test_head_kidneys_and_leaf_change_what_hangs() -> None:
    head_on = hung_fraction(PORK, "scalded", Dressing(head="on"))
    assert head_on == 1 + PORK.parts["head"].share + PORK.parts["tongue"].share
    out = hung_fraction(BEEF, "unknown", Dressing(kidneys="out", leaf="out"))
    # kidney 2.4 lb and suet 21.4 lb of table B-A's 715 lb
    assert out == 1 - Fraction("23.8") / 715
    assert hung_fraction(BEEF, "unknown", Dressing(kidneys="in")) == 1


def test_the_two_dressings_of_one_hog_give_nearly_the_same_meat() -> None:
    """ATTRA's 72 % scalded, head on, and 63 % skinned, head off, of a 250-lb hog: 180, 157.5 lb."""
    scalded = Carcass("pork", skin="scalded", hot_whole=Weight(180, "lb"))
    scalded = replace(scalded, dressing=Dressing(head="on"))
    skinned = Carcass("pork", skin="skinned", hot_whole=Weight.from_pounds("157.5"))
    one, other = (side_weights(it, PORK)[0].nanograms for it in (scalded, skinned))
    assert abs(Fraction(one, other) - 1) < Fraction(2, 100)


def test_what_went_before_the_scale_and_the_skin_are_both_put_back_once() -> None:
    """A side weighed at 350 lb after 22 lb of chuck went, kidneys and suet out, is 372/0.9667."""
    lost = Gone("blade_eye", 1, Weight(22, "lb"), "bruise", before_scale=True)
    carcass = Carcass("beef", chilled=hung(pounds="350"), gone=(lost,))
    assert side_weights(carcass, BEEF)[0].nanograms == 372 * NG_PER_LB
    bare = replace(carcass, dressing=Dressing(kidneys="out", leaf="out"))
    first, second = side_weights(bare, BEEF)
    assert first.nanograms == int(372 * NG_PER_LB / (1 - Fraction("23.8") / 715))
    assert second.nanograms < first.nanograms
    after = replace(carcass, gone=(replace(lost, before_scale=False),))
    assert side_weights(after, BEEF)[0].nanograms == 350 * NG_PER_LB


def test_every_part_named_is_some_species_part() -> None:
    known = {code for name in SPECIES for code in catalogue(name).parts}
    assert set().union(*PARTS.values()) <= known
    assert set(FIELDS) == set(PARTS)
