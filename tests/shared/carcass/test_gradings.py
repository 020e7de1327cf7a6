"""Measures as they are taken at the rail, against the published worked figures."""

from decimal import Decimal
from fractions import Fraction

import pytest

from shared.carcass.gradings import meat_factor, read_measure, working_figures


def test_the_beef_of_the_slide_deck() -> None:
    """FT 0.40, KPH 2.5, 735 lb, REA 12.0: printed 2.95, grade 2 ("How to Yield Grade Beef")."""
    measures = {"fat": "0.40", "ribeye": "12.0", "kph": "2.5"}
    found = working_figures("beef", measures, Decimal(735))
    assert found.grade is not None
    assert (found.grade.figure, found.grade.grade) == (Decimal("2.953"), 2)
    assert found.cuts is not None
    assert found.cuts.standing == "from_memory"


def test_the_lambs_of_maryland() -> None:
    """Rams 63.0 lb, .083, .529, 3.01: YG 1.23, 49.75 % printed (Univ. Maryland WMREC 2019)."""
    measures = {"fat": "0.083", "body_wall": "0.529", "ribeye": "3.01"}
    found = working_figures("lamb", measures, Decimal("63.0"))
    assert found.grade is not None
    assert found.grade.figure == Decimal("1.23")
    assert found.cuts is not None
    assert abs(found.cuts.figure - Decimal("49.75")) < Decimal("0.02")


@pytest.mark.parametrize(
    ("fat", "muscling", "grade"), [("0.9", "average", 1), ("0.5", "thin", 2), ("0.6", "average", 1)]
)
def test_the_hogs_of_the_slide_set(fat: str, muscling: str, grade: int) -> None:
    """0.9 in average 1.6; 0.5 in thin 1.0, becomes 2; 0.6 in average 0.4, becomes 1."""
    found = working_figures("pork", {"last_rib_fat": fat, "muscling": muscling}, None)
    assert found.grade is not None
    assert found.grade.grade == grade
    assert found.lean is None


def test_fat_free_lean_of_a_hog() -> None:
    """200 lb, 7.0 sq in, 0.8 in: 105.106 lb, 52.55 % (derived; equation of Pringle, UGA)."""
    measures = {"ribeye": "7.0", "tenth_rib_fat": "0.8"}
    assert working_figures("pork", measures, Decimal(200)).lean == Decimal("52.55")


def test_nothing_is_told_of_what_is_not_measured() -> None:
    for species in ("beef", "pork", "lamb", "goat", "deer"):
        found = working_figures(species, {}, Decimal(100))
        assert (found.grade, found.cuts, found.lean) == (None, None, None)
    assert working_figures("beef", {"fat": "0.4", "ribeye": "12", "kph": "2"}, None).grade is None


@pytest.mark.parametrize(
    ("name", "text", "read"),
    [
        ("fat", ".40", Decimal("0.40")),
        ("fat", "0,4", Decimal("0.4")),
        ("kph", "2.5 %", Decimal("2.5")),
        ("ribeye", "12", Decimal(12)),
        ("fat", "40", None),
        ("ribeye", "120", None),
        ("fat", "-1", None),
        ("fat", "thick", None),
        ("fat", "", None),
    ],
)
def test_a_measure_is_read(name: str, text: str, read: Decimal | None) -> None:
    assert read_measure(name, text) == read


BEEF = {"fat": "0.40", "ribeye": "12.0", "kph": "2.5"}


def test_a_leaner_carcass_gives_more_meat() -> None:
    """2.953 is 0.547 grades better than the middle of 3; 4.6 points a grade (79.8 to 75.2 …)."""
    factor = meat_factor("beef", [(BEEF, Decimal(735))])
    assert Fraction("1.0345") < factor < Fraction("1.0346")


@pytest.mark.parametrize(
    ("species", "graded"),
    [
        ("beef", []),
        ("beef", [(BEEF, None)]),
        ("beef", [(BEEF, Decimal(735)), ({}, Decimal(735))]),
        ("lamb", [({"fat": "0.25"}, Decimal(60))]),
    ],
)
def test_what_is_not_graded_whole_moves_nothing(
    species: str, graded: list[tuple[dict[str, str], Decimal | None]]
) -> None:
    assert meat_factor(species, graded) == 1
