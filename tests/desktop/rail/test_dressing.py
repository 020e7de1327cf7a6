"""What the rail says of a dressing percentage.

Usual ranges: pork scalded 68 to 77 %, skinned 63 to 71 % (South Dakota State Univ. Extension and
NCAT-ATTRA, with the shop's practice); 218 lb of 300 lb is a skinned hog a plant really weighed.
"""

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

import pytest

from desktop.rail.dressing import (
    Dressed,
    dressed,
    dressing_question,
    dressing_words,
    percent_text,
    shrink_words,
)
from desktop.rail.seen import SeenAnimal
from shared.carcass import anatomy
from shared.carcass.carcass import Gone
from shared.shop.animals import Animal, Loss, Weighing
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


def _shrink(hot: str, chilled: str, taken: str = "0", *, unweighed: bool = False) -> str:
    hot_ng, chilled_ng, taken_ng = (
        Weight.from_pounds(one).nanograms if one != "0" else 0 for one in (hot, chilled, taken)
    )
    said = shrink_words(hot_ng, chilled_ng, Fraction(1, 50), (taken_ng, unweighed))
    return said.replace("\u00a0", " ")


def test_what_was_taken_off_is_no_loss_of_the_cooler() -> None:
    """218 lb hot, 6.5 lb of an abscess off, 207.27 lb chilled: 4.23 of 211.5 lb are 2 %."""
    assert _shrink("218", "213.64") == "Lost 2 % in the cooler. 2 % is usual here."
    assert _shrink("218", "207.27", "6.5") == (
        "Lost 2 % in the cooler, without the 6.50 lb taken off. 2 % is usual here."
    )
    # 10.73 of 218 lb are 4.9 %: nobody weighed what is among it
    assert _shrink("218", "207.27", unweighed=True) == (
        "Lost 4.9 % since the hot weight, with what was taken off unweighed; 2 % is usual in the "
        "cooler."
    )
    assert _shrink("218", "207.27", "6.5", unweighed=True).startswith(
        "Without the 6.50 lb taken off it lost 2 %, with what was taken off unweighed;"
    )


def test_more_than_went_in_is_told_with_its_sign() -> None:
    """219 of 218 lb was "-1.5 %": a negative tenth was counted from the next whole one."""
    assert _shrink("218", "219").startswith("Lost \u22120.5 % in the cooler.")


def _animal(*gone: tuple[Gone, int]) -> SeenAnimal:
    """A hog of 218 lb hot at eight and 207.27 lb chilled at ten; losses at those hours."""
    hot, chilled = Weight.from_pounds("218"), Weight.from_pounds("207.27")
    weighings = (
        Weighing(1, 1, "hot", 0, "", hot, None, None, "", "typed", _hour(8), "Test", "Rail"),
        Weighing(2, 1, "chilled", 0, "", chilled, None, None, "", "typed", _hour(10), "Test", ""),
    )
    losses = [Loss(at, 1, one, _hour(hour), "Test", "Rail") for at, (one, hour) in enumerate(gone)]
    return SeenAnimal(Animal(1, 1, 0, "pork", skin="scalded"), 1, (), weighings, tuple(losses))


def _hour(hour: int) -> datetime:
    return datetime(2026, 3, 2, hour, tzinfo=UTC)


def test_only_what_hung_and_went_between_the_two_weights_counts() -> None:
    six, one = Weight.from_pounds("6.5"), Weight.from_pounds("1")
    assert _animal().taken_between() == (0, False)
    ham = Gone("ham_centre", 1, six, "abscess")
    assert _animal((ham, 9)).taken_between() == (six.nanograms, False)
    assert _animal((ham, 11)).taken_between() == (0, False), "after the chilled weight"
    assert _animal((replace(ham, before_scale=True), 7)).taken_between() == (0, False)
    liver = Gone("liver", 0, one, "flukes")
    assert _animal((ham, 9), (liver, 9)).taken_between() == (six.nanograms, False)
    assert _animal((ham, 9), (replace(ham, weight=None), 9)).taken_between()[1]
