"""Package counts: made by the scale beside planned, and the take-home of the hanging weight."""

from datetime import UTC, datetime
from fractions import Fraction

import pytest

from printing.counts import Counted, ShareCounts, counts, share_counts
from printing.words import Words
from shared.cutting.forecast import Range
from shared.shop.counted import CountedWeight
from shared.shop.details import ShopDetails
from shared.units import Weight
from tests.printing.orders import HANGING, Planned, by_count, halves, made
from tests.printing.pages import (
    MADE,
    NAME,
    SHOP,
    SHOP_A4,
    SIZES,
    SPANISH,
    WORDS,
    pages,
    size,
    text,
)


@pytest.fixture(scope="module")
def planned() -> Planned:
    return halves()


def counted(planned: Planned) -> ShareCounts:
    packages = (
        made(1, 1, "whole_ham", "16.25"),
        made(2, 2, "centre_chop", "1.50"),
        made(3, 2, "centre_chop", "1.45"),
        made(4, 2, "centre_chop", "9.99", void="torn"),
        made(5, 0, "neck_bones", "3.2"),
        made(6, 4, "whole_ham", "17.05", share=2),
    )
    return share_counts(
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        packages,
        order_number=1042,
        hanging=HANGING,
    )


def paper_of(value: ShareCounts, shop: ShopDetails = SHOP, words: Words = WORDS) -> bytes:
    return counts(
        [value], species="pork", lot_number=9, tags=["114"], shop=shop, made=MADE, words=words
    )


def test_void_packages_and_other_owners_are_left_out(planned: Planned) -> None:
    value = counted(planned)
    assert value.packages == 4
    assert value.finished == Fraction("22.4")
    chops = next(row for row in value.rows if row.cut == "centre_chop")
    assert (chops.packages, chops.finished) == (2, Fraction("2.95"))
    assert chops.planned == Range(3, 3, 3)  # 6 chops, 2 to a package


def test_planned_and_made_stand_side_by_side(planned: Planned) -> None:
    value = counted(planned)
    said = text(paper_of(value))
    assert "Packages planned" in said.replace("\n", " ")
    for figure in ("16.25", "2.95", "3.2", "22.4"):
        assert figure in said
    assert "Neck bones" in said
    assert "not on the order" in said
    assert "22.4 lb taken home of 92 lb hanging: 24.3 %" in said.replace("\n", " ")


def test_the_published_yield_prints() -> None:
    # Michigan State Univ. Extension, worksheet of 1 Apr 2024: 556.92 lb of 819 lb are 68 %.
    row = Counted("ground_pork", (), Range(1, 1, 1), 0, 300, Fraction("556.92"))
    value = ShareCounts(NAME, 1042, Fraction(819), (row,))
    assert value.take_home == 68
    assert "556.92 lb taken home of 819 lb hanging: 68.0 %" in text(paper_of(value)).replace(
        "\n", " "
    )


def test_without_a_hanging_weight_it_says_so() -> None:
    said = text(paper_of(ShareCounts(NAME, 1042, None, ())))
    assert "the hanging weight is not known yet" in said


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_name_paper_and_bytes(planned: Planned, shop: ShopDetails) -> None:
    pdf = paper_of(counted(planned), shop)
    assert size(pdf) == SIZES[shop.paper]
    assert len(pages(pdf)) == 1
    assert NAME in text(pdf).replace("\n", " ")
    assert pdf == paper_of(counted(planned), shop)


def test_in_spanish(planned: Planned) -> None:
    assert "Conteo de paquetes" in text(paper_of(counted(planned), words=SPANISH))


def test_what_was_counted_is_said_and_leaves_the_take_home_open(planned: Planned) -> None:
    """Three chops weighed and four counted: their pounds stand with what isn't in them."""
    tally = [
        by_count(1, "whole_ham", 1),
        by_count(2, "centre_chop", 4),
        by_count(2, "centre_chop", 40, void="miscounted"),
        by_count(4, "whole_ham", 9, share=2),
    ]
    value = share_counts(
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        (made(1, 2, "centre_chop", "1.50"),),
        order_number=1042,
        hanging=HANGING,
        counted=tally,
    )
    rows = {row.cut: (row.packages, row.by_count, row.finished) for row in value.rows}
    assert rows["whole_ham"] == (1, 1, 0)
    assert rows["centre_chop"] == (5, 4, Fraction("1.50"))
    assert (value.packages, value.by_count, value.take_home) == (6, 5, None)
    said = text(paper_of(value)).replace("\n", " ")
    assert "+ 4 by count" in said
    assert "1.5 lb weighed. Wrapped by count, not weighed: 5 packages" in said
    assert "taken home of" not in said
    assert "counted by hand" in said


def test_what_was_counted_and_weighed_together_is_in_the_pounds_and_says_so(
    planned: Planned,
) -> None:
    """Four counted packages of 8 lb in all; a weight of another share's line says nothing."""
    at = datetime(2026, 3, 12, 9, tzinfo=UTC)
    weights = [
        CountedWeight(1, share, 2, 4, Weight(net, "lb"), None, at, "Test")
        for share, net in ((2, 99), (1, 8))
    ]
    value = share_counts(
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        (made(1, 2, "centre_chop", "1.50"),),
        order_number=1042,
        hanging=HANGING,
        counted=[by_count(2, "centre_chop", 4)],
        weights=weights,
    )
    row = next(row for row in value.rows if row.cut == "centre_chop")
    assert (row.packages, row.by_count, row.together) == (5, 0, 4)
    assert row.finished == value.finished == Fraction("9.5")
    assert value.take_home == Fraction("9.5") / HANGING * 100
    said = text(paper_of(value)).replace("\n", " ")
    assert "4 together" in said
    assert "not package by package" in said
