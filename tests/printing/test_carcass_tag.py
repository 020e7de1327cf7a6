"""Rail tags: one a side, the mark high enough, the tag's barcode read back."""

from datetime import date

import pytest

from printing.carcass_tag import carcass_tag
from printing.words import Words
from shared.carcass.carcass import Carcass
from shared.shop.details import ShopDetails
from tests.printing.rasterised import codes_of, letters_of, pages_of

WORDS = Words("en", strict=True)
OWNERS = ["Jørgen & Łucja <O'Neil>", "Marta Vinterberg"]


def _tags(carcass: Carcass, owners: list[str] | None = None) -> bytes:
    return carcass_tag(
        carcass,
        lot_number=12,
        owners=OWNERS if owners is None else owners,
        killed_on=date(2026, 3, 5),
        shop=ShopDetails(name="Two Creeks Meats"),
        words=WORDS,
    )


def test_each_side_has_a_tag() -> None:
    one, two = pages_of(_tags(Carcass("pork", tag="114")))
    assert "Side 1" in one
    assert "Side 2" in two
    for told in ("114", "NOT FOR SALE", "For " + ", ".join(OWNERS), "Lot 12", "March 5, 2026"):
        assert told in one
    (whole,) = pages_of(_tags(Carcass("lamb", tag="9", split=False)))
    assert "Whole" in whole


def test_the_mark_stands_at_least_three_eighths_of_an_inch() -> None:
    """9 CFR 316.16: letters at least three-eighths of an inch in height, 27 points."""
    mark = letters_of(_tags(Carcass("pork", tag="114")), 1)[: len("NOT FOR SALE")]
    high = [top - bottom for letter, _left, bottom, _right, top in mark if letter in "NTFRALE"]
    assert len(high) == 7
    assert min(high) >= 27


def test_an_inspected_carcass_has_no_such_mark() -> None:
    assert "NOT FOR SALE" not in pages_of(_tags(Carcass("pork", tag="114", regime="inspected")))[0]


@pytest.mark.parametrize("tag", ["114", "B-2026-0451"])
def test_the_tag_is_read_back(tag: str) -> None:
    pdf = _tags(Carcass("beef", tag=tag, age="30_and_over"))
    assert [code.text for code in codes_of(pdf, 1)] == [tag]
    assert "30 MONTHS AND OVER" in pages_of(pdf)[0]


def test_what_does_not_fit_is_refused() -> None:
    with pytest.raises(ValueError, match="without a tag"):
        _tags(Carcass("pork"))
    with pytest.raises(ValueError, match="too long"):
        _tags(Carcass("pork", tag="1" * 40))
    with pytest.raises(ValueError, match="names"):
        _tags(Carcass("pork", tag="1"), ["Wladimir Aleksandrowicz"] * 20)


@pytest.mark.parametrize("tag", ["114", "B-2026-0451"])
def test_no_line_runs_into_the_bars_in_either_language(tag: str) -> None:
    """A long Spanish date stood over the bars, and neither was read."""
    for language in ("en", "es"):
        pdf = carcass_tag(
            Carcass("beef", tag=tag, age="30_and_over"),
            lot_number=12,
            owners=OWNERS,
            killed_on=date(2026, 11, 13),
            shop=ShopDetails(name="Two Creeks Meats"),
            words=Words(language, strict=True),
        )
        assert [code.text for code in codes_of(pdf, 1)] == [tag]
        beside = [right for _letter, _left, low, right, _top in letters_of(pdf, 1) if low < 39]
        assert beside
        assert max(beside) < 288 - 13 - 60
