"""A paper's frame: whole rows, footers on every page, nothing outside, the same bytes twice."""

from datetime import datetime
from io import BytesIO

import pytest
from pypdf import PdfReader

from printing.page import Column, Foot, Paper, PaperName, table
from tests.printing.rasterised import letters_of, pages_of

MADE = datetime(2026, 3, 9, 14, 5)


def _head(paper: Paper) -> None:
    paper.text(0, 20, "Head", 20, "bold")
    paper.skip(30)


def _paper(name: PaperName, rows: int) -> bytes:
    paper = Paper(name, "A paper", Foot(lambda one, all_: f"Page {one} of {all_}", "Sheet 2"), MADE)
    paper.set_head(_head)
    columns = [Column("Cut", 200), Column("Pounds", 80, "right")]
    table(
        paper, columns, [(f"row {n:03d} of names\nsecond {n:03d}", "12.5 lb") for n in range(rows)]
    )
    return paper.pdf()


@pytest.mark.parametrize(("name", "size"), [("letter", (612, 792)), ("a4", (595, 842))])
def test_every_page_has_head_headings_and_foot(name: PaperName, size: tuple[int, int]) -> None:
    pdf = _paper(name, 60)
    pages = pages_of(pdf)
    assert len(pages) > 1
    for number, text in enumerate(pages, start=1):
        assert "Head" in text
        assert "Pounds" in text
        assert "Sheet 2" in text
        assert f"Page {number} of {len(pages)}" in text
    box = PdfReader(BytesIO(pdf)).pages[0].mediabox
    assert (round(float(box.width)), round(float(box.height))) == size


def test_no_row_is_cut_by_a_page() -> None:
    for text in pages_of(_paper("letter", 60)):
        firsts = {word for word in text.split() if word.isdigit() and len(word) == 3}
        for number in firsts:
            assert f"row {number}" in text
            assert f"second {number}" in text


def test_nothing_lies_outside_the_page() -> None:
    pdf = _paper("a4", 60)
    for page in range(len(pages_of(pdf))):
        for letter, left, bottom, right, top in letters_of(pdf, page):
            assert left >= 0, letter
            assert bottom >= 0, letter
            assert right <= 595.3, letter
            assert top <= 841.9, letter


def test_the_same_input_gives_the_same_bytes() -> None:
    assert _paper("letter", 3) == _paper("letter", 3)
    assert _paper("letter", 3) != _paper("letter", 4)
