"""What each side weighs, from the best figure there is, and the dressing percentage.

Best first: chilled · hot less the cooler's shrink · live × dressing · the guess made when booking
· the species' reference side. Weights are whole nanograms; a figure for the whole carcass is
halved, the odd nanogram going to side 1.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.carcass.carcass import Carcass
from shared.carcass.catalogue import Catalogue, Ranges
from shared.carcass.dressing import hung_fraction, on_the_scale

SideBasis = Literal["chilled", "hot", "live", "booked", "reference"]


@dataclass(frozen=True, slots=True)
class SideWeight:
    """The chilled weight of one side as far as it is known, and what it was made from.

    `nanograms` is rebased to a whole side in the species' reference dressing, since the parts'
    shares are shares of that. What was cut off before the scale is added back: a side weighed at
    350 lb after 22 lb of chuck was cut off is a 372-lb side without 22 lb, and one of 90 lb after
    the whole of a part that is a tenth of it went unweighed is a 100-lb side. `hanging_ng` is
    what hangs there, 350 lb and 90 lb.
    """

    nanograms: int
    basis: SideBasis
    hanging_ng: int


def side_weights(carcass: Carcass, catalogue: Catalogue) -> tuple[SideWeight, SideWeight]:
    """Side 1 and side 2.

    Worked numbers: pork, hot 100 lb a side, shrink 2 % gives 98 lb a side, basis "hot"; skinned
    it is cut as a scalded side of 98 × 210.9/196.3 = 105.3 lb.
    """
    hung = hung_fraction(catalogue, carcass.skin, carcass.dressing)
    return _side(carcass, catalogue, 0, hung), _side(carcass, catalogue, 1, hung)


def weight_band(carcass: Carcass, catalogue: Catalogue) -> Fraction:
    """How far the carcass's chilled weight may lie from `side_weights`, by what it was made from.

    Chilled: nothing. Hot: 2 in 100 (coolers take 2 to 5 %: Univ. of Tennessee PB1822). Live: half
    the usual range of dressing. A booked guess 1 in 10, no weight at all 1 in 4: common practice,
    no source. Worked number: a skinned hog known by live weight, 63 to 71 %, 4/67 (6 %).
    """
    bases: list[SideBasis] = [side.basis for side in side_weights(carcass, catalogue)]
    low, high = usual_dressing(catalogue.ranges, carcass.skin, carcass.sex)
    bands: dict[SideBasis, Fraction] = {
        "chilled": Fraction(0),
        "hot": Fraction(1, 50),
        "live": (high - low) / (high + low),
        "booked": Fraction(1, 10),
        "reference": Fraction(1, 4),
    }
    return max(bands[basis] for basis in bases)


def dressing(live_ng: int, hot_ng: int) -> Fraction:
    """Hot carcass weight over live weight; 218 lb of 300 lb is 109/150 (72.7 %)."""
    if live_ng <= 0:
        raise ValueError(f"live weight must be above nothing, found {live_ng}")
    return Fraction(hot_ng, live_ng)


def usual_dressing(ranges: Ranges, *classes: str) -> tuple[Fraction, Fraction]:
    """The usual range for the first class that the species has one for, else its general one."""
    for name in classes:
        if name and name in ranges.dressing_usual:
            return ranges.dressing_usual[name]
    if "" in ranges.dressing_usual:
        return ranges.dressing_usual[""]
    lows = [low for low, _ in ranges.dressing_usual.values()]
    highs = [high for _, high in ranges.dressing_usual.values()]
    return min(lows), max(highs)


def _side(carcass: Carcass, catalogue: Catalogue, index: int, hung: Fraction) -> SideWeight:
    found = _hanging(carcass, catalogue, index)
    if found is None:
        reference = catalogue.reference_side_ng
        return SideWeight(reference, "reference", int(reference * hung))
    hanging, basis = found
    if basis not in ("chilled", "hot"):
        return SideWeight(int(hanging / hung), basis, hanging)
    off = [one for one in carcass.gone if one.side == index + 1 and one.off_before(basis)]
    parts = catalogue.parts
    away = {
        one.part
        for one in off
        if one.weight is None
        and one.part in parts
        and on_the_scale(parts[one.part], carcass.skin, carcass.dressing)
    }
    whole = hanging + sum(
        one.weight.nanograms for one in off if one.weight is not None and one.part not in away
    )
    left = hung - sum(parts[code].share for code in away)
    return SideWeight(int(whole / (left if left > 0 else hung)), basis, hanging)


def _hanging(carcass: Carcass, catalogue: Catalogue, index: int) -> tuple[int, SideBasis] | None:
    chilled = carcass.chilled[index].nanograms
    if chilled is not None:
        return chilled, "chilled"
    kept = 1 - catalogue.ranges.shrink
    hot = carcass.hot[index].nanograms
    if hot is None and carcass.hot_whole is not None:
        hot = _half(carcass.hot_whole.nanograms, index)
    if hot is not None:
        return int(hot * kept), "hot"
    if carcass.live is not None:
        low, high = usual_dressing(catalogue.ranges, carcass.skin, carcass.sex)
        whole = int(carcass.live.nanograms * (low + high) / 2 * kept)
        return _half(whole, index), "live"
    if carcass.booked is not None:
        return _half(int(carcass.booked.nanograms * kept), index), "booked"
    return None


def _half(whole: int, index: int) -> int:
    return whole // 2 + (whole % 2 if index == 0 else 0)
