"""A receipt says what was taken and what is left."""

from dataclasses import replace

import pytest

from printing.receipt import receipt
from printing.words import Words
from shared.shop.details import ShopDetails
from shared.shop.money import Balance, Payment
from tests.printing.pages import (
    MADE,
    NAME,
    SHOP,
    SHOP_A4,
    SIZES,
    SPANISH,
    WORDS,
    amounts,
    pages,
    size,
    text,
)
from tests.shared.billing.lots import paid


def paper_of(
    payment: Payment, balance: Balance, shop: ShopDetails = SHOP, words: Words = WORDS
) -> bytes:
    return receipt(
        payment,
        balance,
        shop=shop,
        customer=(NAME, "4 Elm Road"),
        order_number=1042,
        made=MADE,
        words=words,
    )


def test_a_payment_and_what_is_left() -> None:
    balance = Balance(billed=67330, deposits=10000, paid=40000)
    pdf = paper_of(paid("payment", 40000, "card"), balance)
    said = text(pdf)
    assert sorted(amounts(pdf)) == [-50000, 17330, 40000, 67330]
    assert "Payment received" in said
    assert "card" in said
    assert "Balance due" in said
    assert "April 20, 2024" in said


def test_paid_in_full_says_so() -> None:
    said = text(paper_of(paid("payment", 57330), Balance(67330, 0, 10000, 57330)))
    assert "Paid in full" in said
    assert "$0.00" in said


def test_a_deposit_is_held_until_there_is_a_bill() -> None:
    pdf = paper_of(paid("deposit", 10000, "check"), Balance(deposits=10000))
    assert amounts(pdf) == [10000, 10000]
    assert "Held for the bill" in text(pdf)


def test_what_is_owed_to_the_customer_is_said_as_such() -> None:
    said = text(paper_of(paid("payment", 70000), Balance(67330, 0, 0, 70000)))
    assert "Owed to you" in said
    assert "$26.70" in said


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_name_paper_and_bytes(shop: ShopDetails) -> None:
    payment = replace(paid("payment", 67330), note="thanks & <ok>")
    pdf = paper_of(payment, Balance(67330, 0, 0, 67330), shop)
    assert size(pdf) == SIZES[shop.paper]
    assert len(pages(pdf)) == 1
    assert NAME in text(pdf).replace("\n", " ")
    assert "thanks & <ok>" in text(pdf)
    assert pdf == paper_of(payment, Balance(67330, 0, 0, 67330), shop)


def test_in_spanish() -> None:
    said = text(paper_of(paid("payment", 100), Balance(100, 0, 0, 100), words=SPANISH))
    assert "Pago recibido" in said
