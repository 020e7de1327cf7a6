"""The block sheet, read back from the finished PDF and held against the plan."""

import re
from dataclasses import replace
from fractions import Fraction
from io import BytesIO

import pytest
from pypdf import PdfReader

from printing.block_words import block_row
from printing.page import SIZES, PaperName
from printing.words import Words
from shared.carcass.carcass import Gone
from shared.cutting.breaking import block_lines, pool_lines
from shared.cutting.order import Amount, Choice
from shared.cutting.plan import plan
from shared.units import Weight, pounds_text
from tests.printing.rasterised import codes_of, letters_of, pages_of
from tests.printing.sheet_lot import NAME, planned, sheet_of
from tests.printing.test_long_names import drawn_over

MM = 72 / 25.4


def _plain(text: str) -> str:
    return " ".join(text.replace("\u00a0", " ").split())


def _pages(pdf: bytes) -> list[str]:
    return [_plain(page) for page in pages_of(pdf)]


def test_each_side_begins_a_page_with_its_tag_and_owners() -> None:
    one, two, *_ = _pages(sheet_of(planned()))
    assert "Side 1" in one
    assert "Tag 114" in one
    assert NAME in one
    assert "Odell Prewitt" not in one
    assert "Side 2" in two
    assert "Odell Prewitt" in two
    assert "from sheet 2 of the order" in one
    assert "Printed March 9, 2026, 14:05" in one


def test_every_weight_and_count_is_the_plans() -> None:
    lot = planned()
    one, two, *_ = _pages(sheet_of(lot))
    for line in block_lines(lot.question, lot.answer, lot.catalogue):
        if line.cut == "grind_open":
            continue
        page = one if line.side == 1 else two
        assert f"about {_plain(pounds_text(line.weight_ng))}" in page, line.cut
        assert f" {line.count} " in page, line.cut
    assert "Boneless chops" in one
    assert "12 1 in Boneless chops" in one
    assert "5 ¾ in Ham steaks" in two


def test_what_goes_to_the_grinder_is_one_row_with_its_pounds() -> None:
    lot = planned()
    lines = block_lines(lot.question, lot.answer, lot.catalogue)
    whole = sum(line.weight_ng for line in lines if line.cut == "grind_open" and line.share == 1)
    one, *_ = _pages(sheet_of(lot))
    assert one.count("to the grind") == 1
    assert f"the rest, about {_plain(pounds_text(whole))}" in one


def test_the_table_at_the_end_has_pounds_and_lean() -> None:
    lot = planned()
    text = _pages(sheet_of(lot))[-1]
    for line in pool_lines(lot.question, lot.answer, lot.catalogue):
        pounds = _plain(pounds_text(line.weight_ng)).removesuffix(" lb")
        lean, fat = (_plain(pounds_text(ng)) for ng in (line.lean_ng, line.fat_ng))
        assert f"{pounds} lb {line.lean} % lean" in text
        assert f"{lean} lean and {fat} fat" in text
    assert "Grinder, stew, sausage, bones and fat" in text


def _heights(pdf: bytes, page: int, pattern: str) -> list[float]:
    """Heights in mm of the capitals and figures of the first group of a pattern."""
    letters = letters_of(pdf, page)
    found = re.search(pattern, "".join(one[0] for one in letters))
    assert found is not None, pattern
    here = letters[found.start(1) : found.end(1)]
    return [(top - bottom) / MM for one, _l, bottom, _r, top in here if one in "BHT1245"]


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_capitals_are_read_at_a_distance(paper: PaperName) -> None:
    """Settled for the sheet: main lines at least 4 mm, count and thickness 8 mm, tag 20 pt."""
    pdf = sheet_of(planned(), paper=paper)
    figures = _heights(pdf, 0, r"(12\s+1)\s*in\s+Boneless chops")
    assert len(figures) == 3
    assert min(figures) >= 8
    for page, name in ((0, "(Boneless chops)"), (1, "(Ham steaks)")):
        (height,) = _heights(pdf, page, name)
        assert height >= 4
    assert min(_heights(pdf, 0, r"(Tag 114)")) * MM >= 20 * 0.72


def test_gone_parts_notes_and_conflicts_come_first() -> None:
    gone = Gone("jowl", 1, Weight(2, "lb"), "abscess")
    wrong = Choice(90, 1, "whole_ham", Amount("pieces", 1))
    pdf = sheet_of(planned(more=(wrong,), gone=(gone,)), notes={2: "Call <Odell> & ask " * 3})
    one, two, *_ = _pages(pdf)
    first = one.index("Boneless chops")
    assert one.index("NOT EVERYTHING ASKED CAN BE CUT") < first
    assert one.index("2 lb trimmed away (abscess)") < first
    assert two.index("Odell Prewitt: Call <Odell> & ask Call") < two.index("Ham steaks")
    assert "abscess" not in two
    assert "keep {rind}" in two


def test_the_tag_is_read_back() -> None:
    pdf = sheet_of(planned())
    assert [code.text for code in codes_of(pdf, 0, 300)] == ["114"]
    assert [code.text for code in codes_of(pdf, 1, 203)] == ["114"]


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("tag", ["114", "B-2026-0451"])
def test_the_head_is_not_drawn_over(tag: str, language: str, paper: PaperName) -> None:
    """The owner's name grew into the weight, and the bars of a long tag reached its number."""
    lot = planned()
    (carcass,), (first, second) = lot.question.carcasses, lot.question.shares
    question = replace(
        lot.question,
        carcasses=(replace(carcass, tag=tag),),
        shares=(replace(first, owner="Marta Vinterberg"), second),
    )
    lot = replace(lot, question=question)
    pdf = sheet_of(lot, paper=paper, language=language)
    assert drawn_over(pdf) == []
    assert [code.text for code in codes_of(pdf, 0, 300)] == [tag]
    told = _pages(pdf)[0]
    assert told.startswith("Side 1" if language == "en" else "Media")
    assert ("Side 1" if language == "en" else "Media canal 1") in told


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_nothing_lies_outside_the_page(paper: PaperName, language: str) -> None:
    pdf = sheet_of(planned(), paper=paper, language=language, notes={1: "long " * 900})
    wide, high = SIZES[paper]
    box = PdfReader(BytesIO(pdf)).pages[0].mediabox
    assert Fraction(str(box.width)) == pytest.approx(wide, abs=0.01)
    assert len(pages_of(pdf)) > 3
    for page in range(len(pages_of(pdf))):
        for letter, left, bottom, right, top in letters_of(pdf, page):
            if letter.strip():
                assert 30 <= left <= right <= wide - 30, letter
                assert 30 <= bottom <= top <= high - 30, letter


def test_a_long_note_is_told_in_full() -> None:
    words = [f"word{number:03d}" for number in range(600)]
    pdf = sheet_of(planned(), notes={1: " ".join(words)})
    text = " ".join(_pages(pdf))
    assert [one for one in words if one not in text] == []


def test_printing_twice_is_the_same() -> None:
    assert sheet_of(planned()) == sheet_of(planned())


@pytest.mark.parametrize(
    ("language", "row", "asked"),
    [
        ("en", "Whole ham, hock off, fresh or cured: not said", "Fresh or cured isn't said for"),
        ("es", "fresco o curado: sin decir", "No se dijo si fresco o curado para"),
    ],
)
def test_a_ham_of_which_neither_fresh_nor_cured_is_said_is_an_open_matter(
    language: str, row: str, asked: str
) -> None:
    """Orders from before it was asked have such lines; the ham must not be cured unasked."""
    lot = planned()
    choices = tuple(
        replace(one, finishes=()) if one.cut == "short_shank_ham" else one
        for one in lot.question.choices
    )
    old = replace(lot, question=replace(lot.question, choices=choices))
    old = replace(old, answer=plan(old.question, old.catalogue))
    one, two, *_ = _pages(sheet_of(old, language=language))
    assert row in one
    assert asked in one
    assert asked not in two
    said = _pages(sheet_of(lot, language=language))
    assert asked not in " ".join(said)
    assert row not in " ".join(said)


def test_a_rest_under_one_piece_is_one_and_smaller_than_asked() -> None:
    # "<1 3 lb" was read as no roast of 3 lb at all.
    lot = planned()
    line = block_lines(lot.question, lot.answer, lot.catalogue)[0]
    known = Words("en", strict=True)
    roast = replace(line, count=0, thickness=None, piece_weight=Weight(3, "lb"))
    row = block_row([roast], lot.catalogue, known, {})
    assert (row.count, row.size, row.unit) == ("1", "<3", "lb")
    whole = block_row([replace(roast, piece_weight=None)], lot.catalogue, known, {})
    assert (whole.count, whole.size) == ("<1", "")
