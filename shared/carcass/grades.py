"""Yield grades and lean of a carcass by published equations: calculated, never a USDA grade.

Working figures only, for the rail and the forecast; none goes on a label. Measures are exact
decimals in inches, square inches, pounds and per cent; what comes out is exact too.
"""

from dataclasses import dataclass
from decimal import ROUND_DOWN, Decimal
from fractions import Fraction
from typing import Literal

Muscling = Literal["thin", "average", "thick"]
Fatness = Literal["lean", "usual", "fat"]
Standing = Literal["published", "from_memory"]
MUSCLE_SCORE: dict[Muscling, int] = {"thin": 1, "average": 2, "thick": 3}


@dataclass(frozen=True, slots=True)
class Graded:
    """A calculated figure, the grade it falls in, and how its equation is known.

    `figure` is exact; `grade` is the whole grade, decimals dropped.
    """

    figure: Decimal
    grade: int
    standing: Standing = "published"


def beef_yield_grade(fat: Decimal, kph: Decimal, hot: Decimal, ribeye: Decimal) -> Graded:
    """YG = 2.50 + 2.50 FT + 0.20 KPH + 0.0038 HCW - 0.32 REA, from 1.0 to 5.9.

    Decimals are dropped, not rounded: 3.9 is a 3. Source: Beef Improvement Federation Guidelines.
    Worked number: fat 0.40 in, KPH 2.5 %, 735 lb, ribeye 12.0 sq in give 2.953, grade 2.
    """
    _positive(hot, ribeye)
    figure = (
        Decimal("2.50")
        + Decimal("2.50") * fat
        + Decimal("0.20") * kph
        + Decimal("0.0038") * hot
        - Decimal("0.32") * ribeye
    )
    figure = min(max(figure, Decimal("1.0")), Decimal("5.9"))
    return Graded(figure, int(figure))


def beef_cuts(fat: Decimal, kph: Decimal, hot: Decimal, ribeye: Decimal) -> Graded:
    """Boneless, closely trimmed retail cuts of round, loin, rib and chuck, % of the carcass.

    51.34 - 5.784 FT - 0.462 KPH + 0.740 REA - 0.0093 HCW: the equation is from memory. Grades
    begin at 52.4, 50.1, 47.8 and 45.5 % (extension tables).
    Worked number: the carcass of `beef_yield_grade` gives 49.91590 %, grade 3.
    """
    _positive(hot, ribeye)
    figure = (
        Decimal("51.34")
        - Decimal("5.784") * fat
        - Decimal("0.462") * kph
        + Decimal("0.740") * ribeye
        - Decimal("0.0093") * hot
    )
    return Graded(figure, _band(figure, ("52.35", "50.05", "47.75", "45.45")), "from_memory")


def lamb_yield_grade(fat: Decimal) -> Graded:
    """YG = 0.4 + 10 x the adjusted fat over the 12th rib; 0.25 in gives 2.9, grade 2.

    Source: Purdue Univ. Extension; Oregon Blue Mountain Community College. Held to 1.0 to 5.9.
    """
    figure = Decimal("0.4") + 10 * fat
    figure = min(max(figure, Decimal("1.0")), Decimal("5.9"))
    return Graded(figure, int(figure))


def lamb_cuts(hot: Decimal, fat: Decimal, body_wall: Decimal, ribeye: Decimal) -> Graded:
    """49.936 - 0.0848 HCW - 4.376 BF - 3.53 BWT + 2.456 REA, % of the carcass.

    Source: coefficients Purdue Univ.; the intercept is from memory and gives back the data of
    Univ. of Maryland WMREC 2019 to a hundredth. Bands of class notes: 49.8, 48.6, 47.3, 46.0.
    Worked number: 63.0 lb, .083 in, .529 in, 3.01 sq in give 49.76 %, printed 49.75.
    """
    _positive(hot, ribeye)
    figure = (
        Decimal("49.936")
        - Decimal("0.0848") * hot
        - Decimal("4.376") * fat
        - Decimal("3.53") * body_wall
        + Decimal("2.456") * ribeye
    )
    return Graded(figure, _band(figure, ("49.75", "48.5", "47.2", "45.9")), "from_memory")


def pork_grade(backfat: Decimal, muscling: Muscling) -> Graded:
    """4.0 x last-rib backfat - muscle score (thin 1, average 2, thick 3), from No. 1 to No. 4.

    Thin muscling is never better than No. 2. Worked numbers of a published slide set: 0.9 in
    average 1.6; 0.5 in thin 1.0, becomes 2.0; 0.6 in average 0.4, becomes 1.0.
    """
    figure = 4 * backfat - MUSCLE_SCORE[muscling]
    least = Decimal(2) if muscling == "thin" else Decimal(1)
    figure = max(figure, least)
    return Graded(figure, min(int(figure), 4))


def fat_free_lean(hot: Decimal, ribeye: Decimal, tenth_rib_fat: Decimal) -> Decimal:
    """Pounds of fat-free lean: 8.588 + 0.465 HCW (skin on) + 3.005 LEA - 21.896 fat.

    Source: Univ. of Georgia (Pringle). Worked number: 200 lb, 7.0 sq in, 0.8 in: 105.1062 lb.
    """
    _positive(hot, ribeye)
    return (
        Decimal("8.588")
        + Decimal("0.465") * hot
        + Decimal("3.005") * ribeye
        - Decimal("21.896") * tenth_rib_fat
    )


def fat_free_lean_unribbed(hot: Decimal, last_rib_fat: Decimal) -> Decimal:
    """The same of a carcass that isn't ribbed: 23.7 - 21.3 x last-rib fat + 0.5 HCW.

    Source: Univ. of Georgia (Pringle). Worked number: 200 lb and 1.0 in give 102.4 lb.
    """
    _positive(hot)
    return Decimal("23.7") - Decimal("21.3") * last_rib_fat + Decimal("0.5") * hot


def fat_free_lean_probed(hot: Decimal, fat: Decimal, muscle: Decimal) -> Decimal:
    """The same by optical probe: 15.3 - 31.3 x fat + 0.5 HCW + 4.0 x muscle depth.

    Source: Univ. of Georgia (Pringle). Worked number: 200 lb, 0.8 in, 2.2 in give 99.06 lb.
    """
    _positive(hot)
    return Decimal("15.3") - Decimal("31.3") * fat + Decimal("0.5") * hot + 4 * muscle


def lean_percent(lean: Decimal, hot: Decimal) -> Decimal:
    """Lean as per cent of the carcass, to hundredths, dropped: 105.1062 of 200 lb is 52.55."""
    _positive(hot)
    return (100 * lean / hot).quantize(Decimal("0.01"), rounding=ROUND_DOWN)


def retail_change(graded: Graded) -> Fraction:
    """What a beef yield grade moves of the forecast's take-home, as a fraction of the carcass.

    A published grade step is 4.6 points of the carcass in total retail cuts (79.8, 75.2, 70.6 and
    66.0 % begin grades 1 to 4); the species file is a Choice carcass of grade 3, at its middle
    3.5. Within a grade it moves evenly. Worked number: 2.953 gives 4.6 x 0.547 = 2.52 points up.
    """
    return Fraction("0.046") * (Fraction("3.5") - Fraction(graded.figure))


def grade_factor(graded: Graded) -> Fraction:
    """What a beef yield grade multiplies the meat of a forecast by; fat, bones, offal stay.

    The change over the middle of grade 3's total retail, 72.85 % (70.6 to 75.1).
    Worked number: 2.953 moves 2.5162 points, a factor of 1.0345.
    """
    return 1 + retail_change(graded) / Fraction("0.7285")


def fatness(graded: Graded) -> Fatness:
    """The carcass's setting from its yield grade: 1 and 2 lean, 3 usual, 4 and 5 fat."""
    if graded.grade <= 2:
        return "lean"
    return "usual" if graded.grade == 3 else "fat"


def _band(figure: Decimal, starts: tuple[str, str, str, str]) -> int:
    return 1 + sum(figure < Decimal(start) for start in starts)


def _positive(*figures: Decimal) -> None:
    if any(figure <= 0 for figure in figures):
        raise ValueError(f"a carcass measure must be above nothing, found {figures}")
