"""What the rail says of a dressing percentage.

Usual ranges: pork scalded 68 to 77 %, skinned 63 to 71 % (South Dakota State Univ. Extension and
NCAT-ATTRA, with the shop's practice); 218 lb of 300 lb is a skinned hog a plant really weighed.
"""

from fractions import Fraction

import pytest

from desktop.rail.dressing import Dressed, dressed, dressing_question, dressing_words, percent_text
from shared.carcass import anatomy
from shared.units import Weight


def found(pounds: int, skin: str = "skinned") -> Dressed:
    ranges = anatomy.catalogue("pork").ranges
    live = Weight(300, "lb").nanograms
    return dressed(ranges, live, Weight(pounds, "lb").nanograms, skin)


@pytest.mark.parametrize(
    ("pounds", "finding", "words"),
    [
        (205, "usual", "Dresses 68.3 %. Usual here: 63 % to 71 %."),
        (218, "note", "Dresses 72.7 %, outside the usual 63 % to 71 %. Taken as weighed."),
        (120, "question", "Dresses 40 %; 63 % to 71 % is usual. Read the scale again."),
        (290, "question", "Dresses 96.7 %; 63 % to 71 % is usual. Read the scale again."),
    ],
)
def test_a_skinned_hog_of_300_lb(pounds: int, finding: str, words: str) -> None:
    seen = found(pounds)
    assert seen.finding == finding
    assert dressing_words(seen).replace("\u00a0", " ") == words


def test_scalded_218_lb_of_300_lb_is_usual() -> None:
    assert found(218, "scalded").finding == "usual"


def test_the_question_names_the_figure_and_what_is_usual() -> None:
    asked = dressing_question(found(290)).replace("\u00a0", " ")
    assert "96.7 %" in asked
    assert "63 % to 71 %" in asked


def test_what_is_just_outside_is_never_told_as_the_end_of_the_range() -> None:
    """719.5 of 1,180 lb is 60.97 %: "61 %, outside the usual 61 % to 66 %" says two things."""
    ranges = anatomy.catalogue("beef").ranges
    live, hot = Weight(1180, "lb").nanograms, Weight(7195, "lb", -1).nanograms
    words = dressing_words(dressed(ranges, live, hot, "steer")).replace("\u00a0", " ")
    assert words.startswith("Dresses 60.9 %, outside the usual 61 % to "), words


def test_per_cent_is_rounded_half_up_to_a_tenth() -> None:
    assert percent_text(Fraction(109, 150)) == "72.7\u00a0%"
    assert percent_text(Fraction(1, 2000)) == "0.1\u00a0%"
    assert percent_text(Fraction(3, 4)) == "75\u00a0%"
