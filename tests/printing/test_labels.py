"""Labels: everything required stands on them, letters are high enough, barcodes read back."""

from dataclasses import replace
from datetime import date
from io import BytesIO

import pytest
import zxingcpp
from PIL import Image

from printing.labels import LabelRefused, labels
from printing.stock_canvas import EDGE
from printing.words import Words
from shared.marking.label import LabelFacts, LabelFinish, PackageLabel, package_label
from shared.marking.package_code import read_package
from shared.marking.plant_marks import LEGEND_POINTS
from shared.units import Weight
from tests.printing.rasterised import codes_of, letters_of, pages_of, picture_of, text_of

WORDS = Words("en", strict=True)
NAME = "Jørgen & Łucja <O'Neil>"
STEAKS = LabelFacts(
    regime="custom",
    species="pork",
    product_key="cut.ham_steak",
    owner=NAME,
    order_number=1042,
    package_number=7,
    net=Weight(235, "lb", -2),
    packed_on=date(2026, 3, 9),
    plant_name="Two Creeks Meats",
    plant_address="118 Mill Road\nCedar Fork, MI 48999",
)
SMOKED = LabelFinish("smoked", cured=True, smoked=True, seasoned=True, fully_cooked=False)
LINKS = replace(
    STEAKS,
    product="Country breakfast sausage links with sage and red pepper, hickory smoked",
    package_number=8,
    finishes=(SMOKED,),
    ingredients=("pork", "salt", "sage"),
    allergens=("mustard",),
)


def _label(facts: LabelFacts) -> PackageLabel:
    made = package_label(facts)
    assert isinstance(made, PackageLabel), made
    return made


def test_a_custom_label_says_everything_required() -> None:
    text = text_of(labels([_label(STEAKS)], words=WORDS))
    for told in (
        "NOT FOR SALE",
        "Ham steak",
        f"For {NAME}",
        "Order 1042, package 7",
        "NET WEIGHT",
        "2.35\u00a0lb",
        "Packed on March 9, 2026",
        "KEEP FROZEN",
        "Two Creeks Meats",
        "118 Mill Road",
        "1042-7-7",
    ):
        assert told.replace("\u00a0", " ") in text.replace("\u00a0", " ")


def test_smoked_links_name_cooking_ingredients_and_allergens() -> None:
    text = text_of(labels([_label(LINKS)], words=WORDS))
    for told in ("COOK BEFORE EATING", "Ingredients: pork, salt, sage", "Contains: mustard"):
        assert told in text


@pytest.mark.parametrize("facts", [STEAKS, LINKS])
def test_the_mark_stands_at_least_three_eighths_of_an_inch(facts: LabelFacts) -> None:
    """9 CFR 317.16: letters not less than three-eighths of an inch in height, 27 points."""
    for dpi in (203, 300):
        pdf = labels([_label(facts)], words=WORDS, dpi=dpi)
        mark = letters_of(pdf)[: len("NOT FOR SALE")]
        assert "".join(one[0] for one in mark) == "NOT FOR SALE"
        high = [top - bottom for letter, _left, bottom, _right, top in mark if letter in "NTFRALE"]
        assert len(high) == 7
        assert min(high) >= 27


@pytest.mark.parametrize("dpi", [203, 300])
def test_the_serial_is_read_back_from_each_label(dpi: int) -> None:
    pdf = labels([_label(STEAKS), _label(LINKS)], words=WORDS, dpi=dpi)
    read = [[code.text for code in codes_of(pdf, page, dpi)] for page in (0, 1)]
    assert read == [["1042-7-7"], ["1042-8-5"]]


@pytest.mark.parametrize("dpi", [203, 300])
def test_a_shop_with_a_gtin_prints_gs1(dpi: int) -> None:
    (code,) = codes_of(
        labels([_label(replace(STEAKS, gtin="98898765432106"))], words=WORDS), 0, dpi
    )
    assert code.content_type == zxingcpp.ContentType.GS1
    assert code.text == "(01)98898765432106(3202)000235(13)260309(21)1042-7"


def test_nothing_lies_outside_the_label() -> None:
    pdf = labels([_label(LINKS)], words=WORDS)
    for letter, left, bottom, right, top in letters_of(pdf):
        assert 0 <= left <= right <= 288, letter
        assert 0 <= bottom <= top <= 216, letter


def test_a_name_that_does_not_fit_is_refused() -> None:
    endless = _label(replace(STEAKS, owner="Wladimir Aleksandrowicz " * 12))
    with pytest.raises(LabelRefused) as refused:
        labels([_label(LINKS), endless], words=WORDS)
    assert refused.value.package_number == 7
    assert [one.code for one in refused.value.problems] == ["doesnt_fit"]


def test_too_many_ingredients_are_refused() -> None:
    with pytest.raises(LabelRefused):
        labels([_label(replace(LINKS, ingredients=("smoked paprika",) * 80))], words=WORDS)


def test_stock_too_low_for_the_legend_is_refused() -> None:
    facts = replace(STEAKS, regime="inspected", establishment="M1", legend_artwork=True)
    with pytest.raises(LabelRefused):
        labels([_label(replace(facts, stock="4x2"))], words=WORDS)


@pytest.mark.parametrize("stock", ["4x3", "4x6"])
def test_raw_inspected_goods_have_a_second_label(stock: str) -> None:
    """9 CFR 317.2(l): type of at least 1/16 in, the heading larger, a rationale and four steps."""
    facts = replace(STEAKS, regime="inspected", establishment="M1", legend_artwork=True)
    pdf = labels([_label(replace(facts, stock=stock))], words=WORDS)
    first, second = pages_of(pdf)
    assert "Safe Handling Instructions" in second
    assert "Safe Handling" not in first
    assert "inspected and passed" in second.replace("\n", " ")
    letters = letters_of(pdf, 1)
    heights = [top - bottom for one, _left, bottom, _right, top in letters if one in "SHITKWCR"]
    assert min(heights) >= 4.5
    assert heights[0] == max(heights)


def test_custom_goods_never_have_it() -> None:
    assert len(pages_of(labels([_label(STEAKS)], words=WORDS))) == 1


@pytest.mark.parametrize("dpi", [203, 300])
@pytest.mark.parametrize("stock", ["4x3", "4x6", "4x2", "2.25x1.25", "sheet4x2"])
def test_every_stock_is_read_back_at_the_printer_s_resolution(stock: str, dpi: int) -> None:
    label = _label(replace(STEAKS, owner="Anna Berg", stock=stock))
    pdf = labels([label], words=WORDS, dpi=dpi)
    assert [one.text for one in codes_of(pdf, dpi=dpi)] == [label.serial]
    mark = letters_of(pdf)[: len("NOT FOR SALE")]
    assert min(top - bottom for one, _l, bottom, _r, top in mark if one.strip()) >= 27


@pytest.mark.parametrize("dpi", [203, 300])
@pytest.mark.parametrize("stock", ["4x6", "4x2", "2.25x1.25", "sheet4x2"])
def test_a_shop_with_a_gtin_is_read_as_gs1_on_every_stock(stock: str, dpi: int) -> None:
    facts = replace(STEAKS, owner="Anna Berg", stock=stock, gtin="98898765432106", lot="12")
    label = _label(facts)
    assert label.gs1 is not None
    [code] = codes_of(labels([label], words=WORDS, dpi=dpi), dpi=dpi)
    assert code.content_type == zxingcpp.ContentType.GS1
    assert code.text == label.gs1.human
    sent = code.bytes.decode("ascii")
    for scanned in (f"{code.symbology_identifier}{sent}", sent, code.text):
        found = read_package(scanned)
        assert isinstance(found, tuple)
        assert [(one.order, one.package) for one in found] == [(1042, 7)]
        assert [one.net and one.net.nanograms for one in found] == [label.net.nanograms]


def test_a_sheet_holds_ten_and_goes_on_to_the_next() -> None:
    many = [
        _label(replace(STEAKS, owner="Anna Berg", stock="sheet4x2", package_number=number))
        for number in range(1, 13)
    ]
    pdf = labels(many, words=WORDS)
    assert len(pages_of(pdf)) == 2
    assert len(codes_of(pdf, 0)) == 10
    assert sorted(one.text for one in codes_of(pdf, 1)) == sorted(one.serial for one in many[10:])


def test_a_small_label_refuses_a_name_that_does_not_fit() -> None:
    endless = _label(replace(STEAKS, owner="Wladimir Aleksandrowicz " * 4, stock="2.25x1.25"))
    with pytest.raises(LabelRefused) as refused:
        labels([endless], words=WORDS)
    assert refused.value.problems[0].data == {"what": "owner"}


def test_an_inspected_cooked_label_leaves_room_for_the_legend() -> None:
    cooked = replace(SMOKED, fully_cooked=True)
    facts = replace(
        LINKS, regime="inspected", establishment="M1", legend_artwork=True, finishes=(cooked,)
    )
    pdf = labels([_label(facts)], words=WORDS)
    assert "NOT FOR SALE" not in text_of(pdf)
    assert "FULLY COOKED" in text_of(pdf)
    corner = [one for one in letters_of(pdf) if one[3] > 288 - 7 - 58 and one[4] > 216 - 7 - 58]
    assert [one[0] for one in corner if one[0].strip()] == []


def a_bar(wide: int, high: int) -> bytes:
    """An image with a black bar along its left third: nobody's legend."""
    image = Image.new("1", (wide, high), 1)
    image.paste(0, (0, 0, wide // 3, high))
    held = BytesIO()
    image.save(held, "PNG")
    return held.getvalue()


@pytest.mark.parametrize("dpi", [203, 300])
def test_the_plants_artwork_is_placed_whole_in_its_corner(dpi: int) -> None:
    """58 points each way, 7 from the right and upper edge; nothing is drawn without one."""
    facts = replace(STEAKS, regime="inspected", establishment="M1", legend_artwork=True, dpi=dpi)
    label = _label(facts)
    placed = picture_of(labels([label], words=WORDS, dpi=dpi, artwork=a_bar(300, 300)), dpi)
    bare = picture_of(labels([label], words=WORDS, dpi=dpi), dpi)
    left, top, side = (288 - 7 - 58) * dpi // 72, 7 * dpi // 72, 58 * dpi // 72
    corner = (left, top, left + side, top + side)
    assert bare.crop(corner).getextrema() == (255, 255)
    dark = [one < 128 for one in placed.crop(corner).tobytes()]
    assert 0.30 < sum(dark) / len(dark) < 0.37
    beside = (left + side // 2, top, left + side, top + side)
    assert placed.crop(beside).getextrema() == (255, 255)


def test_custom_goods_never_bear_it() -> None:
    with_artwork = labels([_label(STEAKS)], words=WORDS, artwork=a_bar(300, 300))
    assert with_artwork == labels([_label(STEAKS)], words=WORDS)


def test_a_label_for_each_package_and_the_same_bytes_twice() -> None:
    many = [_label(replace(STEAKS, package_number=number)) for number in range(1, 41)]
    pdf = labels(many, words=WORDS)
    assert len(pages_of(pdf)) == 40
    assert pdf == labels(many, words=WORDS)


@pytest.mark.parametrize("stock", ["4x2", "sheet4x2"])
def test_low_stock_holds_an_inspected_ham_with_its_facts_beside_the_legend(stock: str) -> None:
    """9 CFR 317.2(h): numerals of 1/8 in on a panel of 5 to 25 square inches (from memory)."""
    cooked = replace(SMOKED, fully_cooked=True, seasoned=False)
    facts = replace(
        STEAKS,
        regime="inspected",
        establishment="M1",
        legend_artwork=True,
        finishes=(cooked,),
        ingredients=("ham", "water", "salt", "sugar", "sodium nitrite"),
        allergens=(),
        stock=stock,
        net=Weight(12355, "lb", -2),
    )
    pdf = labels([_label(facts)], words=WORDS)
    text = text_of(pdf)
    for told in ("Ham steak", "FULLY COOKED", "Ingredients: ham", "Est. M1", "NET WEIGHT"):
        assert told in text
    letters = letters_of(pdf)
    heavy = [top - bottom for one, _, bottom, _, top in letters if one in "123"]
    assert max(heavy) >= 9
    if stock == "4x2":
        wide, high = 4 * 72, 2 * 72
        legend = (wide - EDGE - LEGEND_POINTS, high - EDGE - LEGEND_POINTS)
        inside = [
            one for one, _, bottom, right, _ in letters if right > legend[0] and bottom > legend[1]
        ]
        assert "".join(inside).strip() == "", "the legend's place is the plant's"
