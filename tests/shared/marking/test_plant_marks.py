"""The plant's own marks: numbers, artwork, GTINs of weighed packages."""

import pytest

from shared.marking.plant_marks import (
    MOST_BYTES,
    Artwork,
    PlantMarks,
    artwork_problem,
    establishment_problem,
    least_dots,
    product_number,
)
from shared.marking.problems import MarkingProblem

DRAWN = Artwork("legend.png", b"png", 300, 240)


def test_an_artwork_needs_a_dot_for_each_of_the_printers() -> None:
    assert (least_dots(203), least_dots(300)) == (164, 242)
    assert artwork_problem(DRAWN, 300) is None
    coarse = artwork_problem(Artwork("small.png", b"png", 100, 163), 203)
    assert coarse is not None
    assert (coarse.code, coarse.data["needed"]) == ("artwork_too_coarse", "164")
    heavy = artwork_problem(Artwork("heavy.png", bytes(MOST_BYTES + 1), 300, 300), 203)
    assert heavy is not None
    assert heavy.code == "artwork_too_large"


@pytest.mark.parametrize(
    ("text", "taken"),
    [("M1234", True), ("38-B", True), ("", True), ("Est. 12", False), ("1234567890123", False)],
)
def test_an_establishment_number_is_letters_and_digits(text: str, taken: bool) -> None:
    assert (establishment_problem(text) is None) is taken


@pytest.mark.parametrize(
    ("text", "found"),
    [
        # GS1 General Specifications, 7.9: the check digit by weights 3 and 1 from the right;
        # indicator 9 is a trade item of variable measure (2.1.11, from memory).
        ("90614141000015", "90614141000015"),
        ("9 0614141 00001 5", "90614141000015"),
        ("90614141000012", "check_digit"),
        ("00614141000012", "not_variable"),
        ("614141000012", "not_variable"),
        ("9061414100001", "check_digit"),
        ("9061", "length"),
        ("9o614141000015", "characters"),
    ],
)
def test_a_weighed_packages_gtin_begins_with_9(text: str, found: str) -> None:
    told = product_number(text)
    assert (told.code if isinstance(told, MarkingProblem) else told) == found


def test_a_legend_is_there_when_the_stock_or_the_artwork_has_it() -> None:
    assert not PlantMarks().has_legend
    assert PlantMarks("M1", "stock").has_legend
    assert not PlantMarks("M1", "artwork").has_legend
    assert PlantMarks("M1", "artwork", DRAWN).has_legend
