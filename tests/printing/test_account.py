"""A customer's account as a paper: every move with the balance after it, on as many pages."""

from datetime import date, timedelta

import pytest

from printing.account import account as print_account
from printing.words import Words
from shared.billing.account import Account, Move, account_of
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
    pages,
    size,
    text,
)
from tests.printing.test_long_names import LONG, drawn_over, rects

FIRST, LAST = date(2026, 3, 1), date(2026, 3, 31)
MOVES = (
    Move(date(2026, 2, 10), "bill", 7, 1001, "", 10000),
    Move(date(2026, 3, 2), "payment", 3, 1001, "", -6000),
    Move(date(2026, 3, 9), "bill", 8, 1002, "", 2500),
)


def paper_of(
    account: Account, name: str = NAME, shop: ShopDetails = SHOP, words: Words = WORDS
) -> bytes:
    return print_account(account, shop=shop, customer=(name, "4 Elm Road"), made=MADE, words=words)


def many(count: int) -> Account:
    """So many bills of $12,345.67, one a few hours."""
    moves = (
        Move(FIRST + timedelta(days=at % 31), "bill", 1000 + at, 2000 + at, LONG, 1234567)
        for at in range(count)
    )
    return account_of(moves, FIRST, LAST)


def test_it_brings_forward_moves_and_closes() -> None:
    """$100 in February, $60 paid and $25 billed in March: $100, $40, $65."""
    pdf = paper_of(account_of(MOVES, FIRST, LAST))
    assert sorted(amounts(pdf)) == sorted([10000, 6000, 4000, 2500, 6500, 10000, 2500, -6000, 6500])
    said = text(pdf)
    for words in (NAME, "Oak Hollow Meats", "March 1, 2026", "March 31, 2026", "Bill 8", "1002"):
        assert words in said.replace("\n", " ")
    assert "Bill 7" not in said
    assert "Below nothing" not in said


def test_a_deposit_that_waits_for_its_bill_is_explained() -> None:
    held = account_of([Move(FIRST, "deposit", 1, 1001, "", -5000)], FIRST, LAST)
    assert "Below nothing, the shop owes the customer." in text(paper_of(held)).replace("\n", " ")


def test_a_month_without_a_move_is_a_paper_too() -> None:
    assert set(amounts(paper_of(account_of([], FIRST, LAST)))) == {0}


@pytest.mark.parametrize("words", [WORDS, SPANISH])
@pytest.mark.parametrize("shop", [SHOP, SHOP_A4])
def test_many_moves_and_long_names_keep_every_row_on_the_paper(
    shop: ShopDetails, words: Words
) -> None:
    account = many(60)
    pdf = paper_of(account, LONG, shop, words)
    found = pages(pdf)
    assert len(found) > 1
    assert size(pdf) == SIZES[shop.paper]
    assert [
        words.say("bills.page", page=at + 1, pages=len(found)) in one
        for at, one in enumerate(found)
    ] == [True] * len(found)
    shown = amounts(pdf)
    assert all(line.balance in shown for line in account.lines)
    assert shown[-1] == account.closing == 60 * 1234567
    assert max(one[2] for one in rects(pdf)) <= size(pdf)[0] - 30
    assert drawn_over(pdf) == []
    assert pdf == paper_of(account, LONG, shop, words)


def test_in_spanish() -> None:
    said = text(paper_of(account_of(MOVES, FIRST, LAST), words=SPANISH))
    for words in ("Estado de cuenta", "Saldo anterior", "Saldo final", "Cuenta 8"):
        assert words in said
