"""What the counter may promise of take-home: from the middle of honest sources for the style.

Classic tables are of closely boned carcasses nobody wastes an ounce of. What a counter tells a
customer stays within what extension services tell theirs, bone-in and boneless each its range.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.catalogue import Catalogue
from shared.cutting.forecast import Forecast, Range


@dataclass(frozen=True, slots=True)
class Style:
    """Take-home of a style of cutting as fractions of the hanging weight, with its source."""

    low: Fraction
    high: Fraction
    source: str


def _style(low: int, high: int, source: str) -> Style:
    return Style(Fraction(low, 100), Fraction(high, 100), source)


STYLES: Mapping[str, tuple[Style, Style]] = {
    # bone-in, boneless
    "beef": (
        _style(60, 70, "Iowa State Ext. 65-70; Univ. of Minnesota DJ0598; SDSU range 55-75"),
        _style(55, 65, "SDSU Extension 65; Univ. of Minnesota DJ0598 55-70"),
    ),
    "lamb": (
        _style(65, 75, "Univ. of Wisconsin-Madison Ext. (Ihde 2023)"),
        _style(43, 50, "Univ. of Wisconsin-Madison Ext. (Ihde 2023)"),
    ),
    "goat": (
        _style(70, 85, "Univ. of Tennessee (Loveday)"),
        _style(40, 60, "Univ. of Tennessee (Loveday)"),
    ),
}
"""Species without a range of honest sources aren't here: their forecast stands as it is."""


def promised(found: Forecast, share: int, hanging_ng: int, catalogue: Catalogue) -> Range:
    """One owner's take-home as the counter tells it, never more than the sources give.

    The style is the mix of what keeps its bone and what doesn't, ground counting as boneless;
    each end is the forecast's or the sources', whichever is less.
    Worked number: 400 lb of beef, half of its packages bone-in, are 57.5 to 67.5 % or 230 to
    270 lb; a forecast of 290 lb, 260 to 320, is told as 230 to 270, about 250.
    """
    told = found.finished(share)
    styles = STYLES.get(catalogue.species)
    if styles is None or told.mid <= 0:
        return told
    lines = [
        (one.finished.mid, catalogue.cuts[one.cut])
        for one in found.of_share(share)
        if catalogue.cuts[one.cut].kind != "offal"
    ]
    whole = sum(weight for weight, _ in lines)
    boned = sum(weight for weight, cut in lines if cut.keeps_bone and cut.kind != "pool")
    part = Fraction(boned, whole) if whole else Fraction(0)
    bone_in, boneless = styles
    low = bone_in.low * part + boneless.low * (1 - part)
    high = bone_in.high * part + boneless.high * (1 - part)
    return Range(
        min(told.low, int(hanging_ng * low)),
        min(told.mid, int(hanging_ng * (low + high) / 2)),
        min(told.high, int(hanging_ng * high)),
    )
