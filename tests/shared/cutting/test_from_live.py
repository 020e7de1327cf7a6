"""From live to packages every step adds up to the nanogram."""

from dataclasses import replace
from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting.forecast import forecast
from shared.cutting.from_live import OFF_PLAN, Journey, journeys
from shared.cutting.order import Question
from shared.cutting.plan import plan
from shared.cutting.where_it_went import accounts
from shared.units import NG_PER_LB, Weight
from tests.shared.cutting.half_hog import PORK

HALVES = (Share(1, "Ana", (Holding(0, 1),)), Share(2, "Bo", (Holding(0, 2),)))


def told(
    carcass: Carcass, shares: tuple[Share, ...], made: dict[int, int] | None = None
) -> tuple[Journey, ...]:
    known = catalogue(carcass.species)
    question = Question((carcass,), shares, ())
    answer = plan(question, known)
    found = accounts(question, answer, forecast(question, answer, known), known)
    return journeys(question, found, known, made or {})


def test_a_half_of_a_250_lb_hog() -> None:
    """125 lb live, 35 lb on the kill floor, 90 lb hot, 2 % or 1.8 lb to the cooler, 88.2 lb."""
    hog = Carcass("pork", live=Weight(250, "lb"), hot_whole=Weight(180, "lb"))
    first, second = told(hog, HALVES)
    assert first.live_ng == 125 * NG_PER_LB
    assert first.killed_ng == 35 * NG_PER_LB
    assert first.hot_ng == 90 * NG_PER_LB
    assert Fraction(first.cooled_ng, NG_PER_LB) == Fraction("1.8")
    assert Fraction(first.chilled_ng, NG_PER_LB) == Fraction("88.2")
    assert (first.basis, first.estimated, first.owner) == ("hot", True, "Ana")
    assert second.hot_ng == first.hot_ng


def test_rows_add_up_to_the_chilled_weight_also_as_made() -> None:
    hog = Carcass("pork", hot_whole=Weight(180, "lb"))
    for made in (None, {1: 70 * NG_PER_LB}):
        for one in told(hog, HALVES, made):
            assert sum(weight for _, weight in one.rows) == one.chilled_ng
            assert one.live_ng is None
            assert one.killed_ng is None
    packed = dict(told(hog, HALVES, {1: 70 * NG_PER_LB})[0].rows)
    assert packed["packages"] == 70 * NG_PER_LB
    # nothing was ordered, so all 70 lb are other than planned
    assert packed[OFF_PLAN] == -70 * NG_PER_LB


def test_quarters_have_their_share_of_every_weight() -> None:
    """Forequarter about 55 % of a side: Purdue Univ. Extension (Lemenager)."""
    side = SideWeights(whole=Weight(400, "lb"))
    steer = Carcass("beef", live=Weight(1300, "lb"), hot=(side, side))
    fore, hind = told(
        steer, (Share(1, "", (Holding(0, 1, "fore"),)), Share(2, "", (Holding(0, 1, "hind"),)))
    )
    assert fore.hot_ng == 220 * NG_PER_LB
    assert fore.live_ng == Fraction("357.5") * NG_PER_LB
    assert fore.hot_ng + hind.hot_ng == 400 * NG_PER_LB


def test_chilled_only_puts_the_shrink_back() -> None:
    side = SideWeights(whole=Weight(98, "lb"))
    first, _ = told(Carcass("pork", chilled=(side, side)), HALVES)
    assert PORK.ranges.shrink == Fraction(2, 100)
    assert first.hot_ng == 100 * NG_PER_LB
    assert first.basis == "chilled"
    bare = replace(Carcass("pork"), live=Weight(250, "lb"))
    assert told(bare, HALVES)[0].basis == "live"
