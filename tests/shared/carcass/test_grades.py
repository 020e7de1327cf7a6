"""Equations of grades against the published carcasses they are printed beside."""

from decimal import Decimal
from fractions import Fraction

import pytest

from shared.carcass.grades import (
    Muscling,
    beef_cuts,
    beef_yield_grade,
    fat_free_lean,
    fat_free_lean_probed,
    fat_free_lean_unribbed,
    fatness,
    grade_factor,
    lamb_cuts,
    lamb_yield_grade,
    lean_percent,
    pork_grade,
    retail_change,
)

SLIDES = (Decimal("0.40"), Decimal("2.5"), Decimal(735), Decimal("12.0"))


def test_beef_of_the_slide_deck_how_to_yield_grade_beef() -> None:
    """Printed 2.95, exact 2.953: grade 2."""
    found = beef_yield_grade(*SLIDES)
    assert (found.figure, found.grade, found.standing) == (Decimal("2.953"), 2, "published")


def test_decimals_are_dropped_and_the_scale_ends() -> None:
    """3.9 is a 3 (Beef Improvement Federation Guidelines)."""
    assert beef_yield_grade(Decimal("0.779"), *SLIDES[1:]).figure == Decimal("3.9005")
    assert beef_yield_grade(Decimal("0.779"), *SLIDES[1:]).grade == 3
    assert beef_yield_grade(Decimal(3), *SLIDES[1:]).figure == Decimal("5.9")
    assert beef_yield_grade(Decimal(0), Decimal(0), Decimal(500), Decimal(16)).grade == 1
    with pytest.raises(ValueError, match="above nothing"):
        beef_yield_grade(Decimal("0.4"), Decimal("2.5"), Decimal(0), Decimal(12))


def test_beef_cuts_are_from_memory_and_say_so() -> None:
    """Our own arithmetic: no published worked example was found."""
    found = beef_cuts(*SLIDES)
    assert found.figure == Decimal("49.9159")
    assert (found.grade, found.standing) == (3, "from_memory")
    # extension bands: 52.4 begins grade 1, 45.4 ends grade 5
    fatter = beef_cuts(Decimal("1.4"), Decimal("4"), Decimal(800), Decimal(11))
    assert fatter.figure < Decimal("45.4")
    assert fatter.grade == 5


@pytest.mark.parametrize(
    ("hot", "fat", "wall", "ribeye", "grade", "printed"),
    [  # Univ. of Maryland WMREC 2019: ram, short scrotum, wether, all 64
        ("63.0", ".083", ".529", "3.01", "1.23", "49.75"),
        ("60.7", ".100", ".514", "2.83", "1.40", "49.48"),
        ("58.6", ".142", ".558", "2.71", "1.82", "49.04"),
        ("60.6", ".111", ".536", "2.84", "1.51", "49.40"),
    ],
)
def test_lambs_of_maryland(
    hot: str, fat: str, wall: str, ribeye: str, grade: str, printed: str
) -> None:
    assert lamb_yield_grade(Decimal(fat)).figure == Decimal(grade)
    found = lamb_cuts(Decimal(hot), Decimal(fat), Decimal(wall), Decimal(ribeye))
    assert abs(found.figure - Decimal(printed)) <= Decimal("0.015")
    # class notes: 49.7 to 48.6 is grade 2; the ram's printed 49.75 lies between the two bands
    assert found.grade == (1 if printed == "49.75" else 2)


def test_lamb_grade_of_usual_fat() -> None:
    """About .15 in is grade 1, .25 in grade 2, .35 in grade 3 (class notes)."""
    assert [lamb_yield_grade(Decimal(it)).grade for it in (".15", ".25", ".35")] == [1, 2, 3]
    assert lamb_yield_grade(Decimal("0")).figure == 1


@pytest.mark.parametrize(
    ("fat", "muscling", "figure", "grade"),
    [  # slideplayer 14065469
        (".9", "average", "1.6", 1),
        (".5", "thin", "2", 2),
        (".6", "average", "1", 1),
        # USDA standards: average muscling, 1.00 to 1.24 in is No. 2; thick, 1.25 to 1.49 in
        ("1.00", "average", "2", 2),
        ("1.24", "average", "2.96", 2),
        ("1.25", "thick", "2", 2),
        ("0.99", "average", "1.96", 1),
        ("2.5", "average", "8", 4),
    ],
)
def test_pork_grades(fat: str, muscling: Muscling, figure: str, grade: int) -> None:
    found = pork_grade(Decimal(fat), muscling)
    assert (found.figure, found.grade) == (Decimal(figure), grade)


def test_fat_free_lean_of_a_hog() -> None:
    """Our own arithmetic on Pringle's equations: no published worked example was found."""
    lean = fat_free_lean(Decimal(200), Decimal("7.0"), Decimal("0.8"))
    assert lean == Decimal("105.1062")
    assert lean_percent(lean, Decimal(200)) == Decimal("52.55")
    assert fat_free_lean_unribbed(Decimal(200), Decimal("1.0")) == Decimal("102.4")
    assert fat_free_lean_probed(Decimal(200), Decimal("0.8"), Decimal("2.2")) == Decimal("99.06")


def test_fat_free_lean_of_the_typical_market_hog() -> None:
    """National Pork Board 2016: 213 lb, 8.0 sq in, 0.72 in, 116.9 lb lean (54.9 %).

    The page doesn't say by which equation; ours gives 115.91 lb, 0.8 % less.
    """
    lean = fat_free_lean(Decimal(213), Decimal("8.0"), Decimal("0.72"))
    assert lean == Decimal("115.90788")
    assert abs(lean / Decimal("116.9") - 1) < Decimal("0.01")


def test_a_grade_moves_the_take_home_by_published_steps() -> None:
    """Total retail begins at 79.8, 75.2, 70.6, 66.0 % for grades 1 to 4 (extension table)."""
    found = beef_yield_grade(*SLIDES)
    assert retail_change(found) == Fraction("0.046") * Fraction("0.547")
    assert round(grade_factor(found), 4) == Fraction("1.0345")
    assert fatness(found) == "lean"
    assert fatness(beef_yield_grade(Decimal("0.7"), *SLIDES[1:])) == "usual"
    assert fatness(beef_yield_grade(Decimal("1.0"), *SLIDES[1:])) == "fat"
