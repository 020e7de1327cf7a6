"""Labels of boxes: whose, where, what is in it, on every stock; the code read back."""

from dataclasses import replace

import pytest

from printing.box_label import box_label
from printing.words import Words
from shared.marking.box_label import BoxLabel, InBox
from shared.marking.serial import BoxSerial, box_serial, read_box
from shared.marking.stock import DPIS, STOCKS
from shared.units import NG_PER_LB
from tests.printing.rasterised import codes_of, letters_of, pages_of, text_of

WORDS = Words("en", strict=True)
ROWS = (InBox("Ground pork", 12, 12 * NG_PER_LB), InBox("Pork chop", 6, 981 * NG_PER_LB // 100))
BOX = BoxLabel(
    1042,
    "Jørgen & Łucja <O'Neil>",
    "3",
    "Freezer 2, shelf B",
    ROWS,
    True,
    box_serial(1042, "3"),
    STOCKS["4x3"],
    203,
)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("dpi", DPIS)
@pytest.mark.parametrize("stock", STOCKS)
def test_every_stock_says_it_and_its_code_reads_back(stock: str, dpi: int, language: str) -> None:
    label = replace(BOX, stock=STOCKS[stock], dpi=dpi)
    pdf = box_label(label, words=Words(language, strict=True))  # pyright: ignore[reportArgumentType]
    text = text_of(pdf)
    for told in ("NOT FOR SALE", "1042", "21.81", "Ground pork", "Pork chop", "Freezer 2"):
        assert told in text, (stock, told)
    codes = [read_box(one.text) for one in codes_of(pdf, dpi=dpi)]
    assert set(codes) == {BoxSerial(1042, "3")}  # a sheet has the label it runs on to beside it


def test_the_mark_is_high_enough_on_every_label_it_needs() -> None:
    """9 CFR 316.16 and 317.16: letters of at least 3/8 in, 27 points."""
    many = tuple(InBox(f"Product {at}", 1, NG_PER_LB) for at in range(30))
    pdf = box_label(replace(BOX, rows=many), words=WORDS)
    assert len(pages_of(pdf)) > 1
    for page in range(len(pages_of(pdf))):
        marks = [one for one in letters_of(pdf, page) if one[0] in "NFS"][:3]
        assert all(top - bottom >= 27 for _, _, bottom, _, top in marks)


def test_contents_that_run_on_lose_nothing_and_no_line_twice() -> None:
    many = tuple(InBox(f"Product no. {at:02}", 1, NG_PER_LB) for at in range(60))
    for stock in STOCKS:
        text = text_of(box_label(replace(BOX, rows=many, stock=STOCKS[stock]), words=WORDS))
        for one in many:
            assert text.count(one.product) == 1, (stock, one.product)
        assert "60 packages" in text


def test_inspected_goods_bear_no_mark_and_no_legend_of_ours() -> None:
    text = text_of(box_label(replace(BOX, not_for_sale=False), words=WORDS))
    assert "NOT FOR SALE" not in text
    assert "inspect" not in text.casefold()


def test_nothing_is_drawn_over_the_edge() -> None:
    long = replace(
        BOX,
        owner="Maria-Magdalena Featherstonehaugh-Oppenheimer and Bartholomew Featherstonehaugh",
        place="Walk-in freezer at the back, third rack on the left, bottom",
        rows=(InBox("Country breakfast sausage links with sage and red pepper", 6, NG_PER_LB),),
    )
    for stock in STOCKS.values():
        if stock.media != "roll":
            continue
        wide, high = (one * 72 / 203_200 for one in (stock.width, stock.height))
        for letter, left, bottom, right, top in letters_of(
            box_label(replace(long, stock=stock), words=WORDS)
        ):
            if letter.strip():
                assert left >= 0, (stock.code, letter)
                assert bottom >= 0, (stock.code, letter)
                assert right <= wide, (stock.code, letter)
                assert top <= high, (stock.code, letter)


def test_a_slip_in_the_boxs_code_is_found() -> None:
    good = box_serial(1042, "3")
    assert read_box(f" {good.lower()} ") == BoxSerial(1042, "3")
    for wrong in (good.replace("1042", "1024"), good.replace("B3", "B8"), "1042-7-7", "box 3"):
        assert not isinstance(read_box(wrong), BoxSerial), wrong
    with pytest.raises(ValueError, match="no serial"):
        box_serial(1042, "a box with a long name")


@pytest.mark.parametrize("dpi", DPIS)
@pytest.mark.parametrize("stock", STOCKS)
def test_each_further_label_carries_the_boxs_code_too(stock: str, dpi: int) -> None:
    many = tuple(InBox(f"Country sausage no. {at:02}", 1, NG_PER_LB) for at in range(40))
    pdf = box_label(replace(BOX, rows=many, stock=STOCKS[stock], dpi=dpi), words=WORDS)
    pages = len(pages_of(pdf))
    assert pages > 1 or STOCKS[stock].media != "roll"
    read = [[read_box(one.text) for one in codes_of(pdf, page, dpi=dpi)] for page in range(pages)]
    assert all(read)
    assert {one for page in read for one in page} == {BoxSerial(1042, "3")}
    if STOCKS[stock].media == "roll":
        assert [len(page) for page in read] == [1] * pages
