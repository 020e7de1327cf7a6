"""Names and figures as long as they come: nothing is broken, drawn over, or off the paper."""

from dataclasses import replace
from fractions import Fraction

import pytest
from pypdfium2 import PdfDocument

from printing.typefaces import width, wrap
from printing.words import Words
from shared.billing.bill import make_bill
from shared.billing.rates import Charge
from shared.billing.statement import Price, statement
from shared.shop.details import ShopDetails
from tests.printing import test_bill, test_statement
from tests.printing.pages import SHOP, SHOP_A4, SPANISH, WORDS, pages, size, text
from tests.shared.billing.lots import WHOLE, fine, good, hung, lot_of

LONG = (
    "Maximiliana Katharina von Hohenstaufen-Wittelsbach y Fernández de la Torre,"
    " widow of the late Bartholomew Featherstonehaugh"
)
CARD = "Rates for members of the cooperative and their relatives in the first degree, spring"
DEAR = Charge("other", "flat", Fraction(9_999_999), tax_rate=Fraction(8_875, 100_000))


def test_a_name_too_wide_for_its_room_is_broken_at_its_hyphen() -> None:
    name = "Wolkenstein-Featherstonehaugh Trust"
    room = width("Featherstonehaugh", "bold", 20) + 1
    assert wrap(name, "bold", 20, room) == ["Wolkenstein-", "Featherstonehaugh", "Trust"]
    assert wrap("Featherstonehaugh", "bold", 20, room / 2)[0] == "Featherst"


def rects(pdf: bytes) -> list[tuple[float, float, float, float]]:
    """Left, bottom, right and top of every run of text on the first page, read by PDFium."""
    told = PdfDocument(pdf)[0].get_textpage()
    return [told.get_rect(at) for at in range(told.count_rects())]


def drawn_over(pdf: bytes) -> list[tuple[float, float, float, float]]:
    """Runs of text that lie on another one of the same line."""
    found = sorted(rects(pdf), key=lambda one: one[0])
    return [
        two
        for at, one in enumerate(found)
        for two in found[at + 1 :]
        if two[0] < one[2] - 1 and min(one[3], two[3]) - max(one[1], two[1]) > 3
    ]


@pytest.mark.parametrize("words", [WORDS, SPANISH])
@pytest.mark.parametrize("shop", [SHOP, SHOP_A4])
def test_a_bill_keeps_its_figures_whole_and_its_foot_on_the_paper(
    shop: ShopDetails, words: Words
) -> None:
    """$99,999.99 is the most a flat charge may cost; at 8.875 % its tax is $8,875.00."""
    bill = good(make_bill(lot_of(hung("409.5", "409.5"), (WHOLE,), DEAR), 1))
    pdf = test_bill.paper_of(replace(bill, owner=LONG, card_name=CARD), shop=shop, words=words)
    lines = [one.strip() for one in text(pdf).splitlines()]
    joined = " ".join(lines)
    assert joined.count("$99,999.99") >= 2
    assert "$8,875.00" in joined
    assert len(pages(pdf)) == 1
    assert max(one[2] for one in rects(pdf)) <= size(pdf)[0] - 30
    assert drawn_over(pdf) == []


@pytest.mark.parametrize("words", [WORDS, SPANISH])
def test_a_statements_balance_names_a_long_producer_beside_its_amount(words: Words) -> None:
    value = fine(statement(test_statement.LOT, 1, Price("per_lb_hot", Fraction(300))))
    pdf = test_statement.paper_of(replace(value, owner=LONG, producer=LONG), words=words)
    assert max(one[2] for one in rects(pdf)) <= size(pdf)[0] - 30
    assert drawn_over(pdf) == []
    assert "$2,457.00" in text(pdf)


def test_a_foot_too_long_for_its_line_is_cut_short_and_says_so() -> None:
    """Read by PDFium, the page's number stands clear of it."""
    bill = good(make_bill(lot_of(hung("409.5", "409.5"), (WHOLE,), DEAR), 1))
    pdf = test_bill.paper_of(replace(bill, card_name=f"{CARD}, {CARD}"))
    assert "…" in text(pdf)
    assert "Page 1 of 1" in text(pdf)
    assert drawn_over(pdf) == []
