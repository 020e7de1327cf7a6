"""A credit note prints what is given back, of which bill, and why."""

from fractions import Fraction

import pytest

from printing.credit import credit
from printing.words import Words
from shared.billing.bill import make_bill
from shared.billing.credit_note import CreditNote, credit_note
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge
from shared.shop.details import ShopDetails
from tests.printing.pages import (
    MADE,
    NAME,
    SHOP,
    SHOP_A4,
    SIZES,
    SPANISH,
    WORDS,
    amounts,
    size,
    text,
)
from tests.shared.billing.lots import WHOLE, good, hung, lot_of


def note() -> CreditNote:
    kill = Charge("kill", "per_head", Fraction(10000), tax_rate=Fraction(5, 100))
    cut = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
    bill = good(make_bill(lot_of(hung("409.5", "409.5"), (WHOLE,), kill, cut), 1))
    made = credit_note(
        bill, 17, "the scale was <wrong>", cents={"cut_and_wrap:1": 1234, "kill:1": 2000}
    )
    assert not isinstance(made, BillingProblem)
    return made


def paper_of(shop: ShopDetails = SHOP, words: Words = WORDS) -> bytes:
    return credit(
        note(), number=3, shop=shop, customer=(NAME,), made=MADE, words=words, order_number=1042
    )


def test_sums_and_reason() -> None:
    pdf = paper_of()
    said = text(pdf).replace("\n", " ")
    assert "Credit note 3" in said
    assert "on bill 17" in said
    assert "the scale was <wrong>" in said
    assert sorted(amounts(pdf)) == [100, 1234, 2000, 3334]  # 5 % tax of the $20.00 is $1.00


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_name_paper_and_bytes(shop: ShopDetails) -> None:
    assert size(paper_of(shop)) == SIZES[shop.paper]
    assert NAME in text(paper_of(shop)).replace("\n", " ")
    assert paper_of(shop) == paper_of(shop)


def test_in_spanish() -> None:
    assert "Nota de crédito 3" in text(paper_of(words=SPANISH))
