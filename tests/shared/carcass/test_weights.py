"""A side's weight comes from the best figure there is."""

from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Gone, SideWeights
from shared.carcass.weights import dressing, side_weights, usual_dressing
from shared.units import NG_PER_LB, Weight

PORK = catalogue("pork")
BEEF = catalogue("beef")


def sides(carcass: Carcass) -> tuple[tuple[Fraction, str], tuple[Fraction, str]]:
    first, second = side_weights(carcass, PORK)
    return (
        (Fraction(first.nanograms, NG_PER_LB), first.basis),
        (Fraction(second.nanograms, NG_PER_LB), second.basis),
    )


def both(text: str) -> tuple[SideWeights, SideWeights]:
    side = SideWeights(whole=Weight.from_pounds(text))
    return side, side


def test_chilled_is_better_than_hot_and_hot_than_live() -> None:
    live, booked = Weight(290, "lb"), Weight(200, "lb")
    known = Carcass("pork", live=live, booked=booked, hot=both("100"), chilled=both("97.5"))
    assert sides(known) == ((Fraction("97.5"), "chilled"),) * 2
    hot = Carcass("pork", live=live, booked=booked, hot=both("100"))
    assert sides(hot) == ((Fraction(98), "hot"),) * 2
    on_foot = Carcass("pork", live=live, booked=booked, skin="skinned")
    # 290 lb at the middle of 63 to 71 %, less 2 %, halved.
    hanging = side_weights(on_foot, PORK)
    assert [Fraction(one.hanging_ng, NG_PER_LB) for one in hanging] == [Fraction("95.207")] * 2
    assert {one.basis for one in hanging} == {"live"}
    assert sides(Carcass("pork", booked=booked)) == ((Fraction(98), "booked"),) * 2
    assert sides(Carcass("pork")) == ((Fraction(100), "reference"),) * 2


def test_a_carcass_weighed_whole_is_halved() -> None:
    whole = Carcass("pork", hot_whole=Weight(180, "lb"))
    assert sides(whole) == ((Fraction("88.2"), "hot"),) * 2


def test_quarters_weighed_apart_make_the_side() -> None:
    quarters = SideWeights(fore=Weight(60, "lb"), hind=Weight(50, "lb"))
    carcass = Carcass("pork", chilled=(quarters, SideWeights()))
    assert sides(carcass)[0] == (Fraction(110), "chilled")
    assert SideWeights(fore=Weight(60, "lb")).nanograms is None


def test_what_was_cut_off_before_the_scale_is_added_back() -> None:
    """A side weighed at 350 lb after 22 lb of chuck was cut off is a 372-lb side."""
    side = SideWeights(whole=Weight(350, "lb"))
    lost = Gone("blade_eye", 1, Weight(22, "lb"), "bruise", before_scale=True)
    first, second = side_weights(Carcass("beef", chilled=(side, side), gone=(lost,)), BEEF)
    assert first.nanograms == 372 * NG_PER_LB
    assert second.nanograms == 350 * NG_PER_LB


def test_a_whole_part_off_before_the_scale_is_added_back_by_its_share() -> None:
    """By the species file: 90 lb without a part that is a tenth of a side is a 100-lb side."""
    eye = BEEF.parts["chuck_eye"].share
    side = SideWeights(whole=Weight(350, "lb"))
    lost = Gone("chuck_eye", 1, None, "abscess", before_scale=True)
    some = Gone("chuck_eye", 1, Weight(2, "lb"), "bruise", before_scale=True)
    for gone in ((lost,), (some, lost)):  # the pounds went with the rest of it
        first, second = side_weights(Carcass("beef", hot=(side, side), gone=gone), BEEF)
        assert first.nanograms == int(first.hanging_ng / (1 - eye))
        assert second.nanograms == second.hanging_ng


def test_what_went_between_the_weights_is_added_to_the_chilled_one_alone() -> None:
    hot, chilled = SideWeights(whole=Weight(150, "lb")), SideWeights(whole=Weight(146, "lb"))
    lost = Gone("jowl", 1, Weight(1, "lb"), "abscess", before_chilled=True)
    carcass = Carcass("pork", hot=(hot, hot), chilled=(chilled, SideWeights()), gone=(lost,))
    assert sides(carcass)[0] == (147, "chilled")
    bare = Carcass("pork", hot=(hot, hot), gone=(lost,))
    assert sides(bare)[0] == (147, "hot")
    assert side_weights(carcass, PORK)[0].hanging_ng == 146 * NG_PER_LB


def test_dressing_is_hot_over_live() -> None:
    """1,163 lb live, 730 hot (Univ. of California Cooperative Extension 31-651, printed 62.7)."""
    assert round(dressing(1163 * NG_PER_LB, 730 * NG_PER_LB) * 100, 1) == Fraction("62.8")
    with pytest.raises(ValueError, match="above nothing"):
        dressing(0, NG_PER_LB)


def test_the_usual_range_is_the_class_asked_for_first() -> None:
    ranges = PORK.ranges
    assert usual_dressing(ranges, "", "skinned") == ranges.dressing_usual["skinned"]
    low, high = usual_dressing(ranges, "unknown")
    assert low == min(one for one, _ in ranges.dressing_usual.values())
    assert high == max(one for _, one in ranges.dressing_usual.values())
    # A skinned 300-lb hog is expected to hang at about 200 to 210 lb: common practice, no source.
    low, high = usual_dressing(ranges, "skinned")
    assert 200 <= 300 * (low + high) / 2 <= 210
