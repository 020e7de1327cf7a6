"""A customer's account of some days as a paper: brought forward, each move, what stands."""

from collections.abc import Iterator
from datetime import datetime

from printing.letterhead import Letterhead, day_text, money_row, notes, open_paper, sender
from printing.page import Column, PaperName, table
from printing.words import Words
from shared.billing.account import Account, AccountLine
from shared.money import money_text
from shared.shop.details import ShopDetails


def account(
    account: Account,
    *,
    shop: ShopDetails,
    customer: tuple[str, ...],
    made: datetime,
    words: Words,
    paper: PaperName | None = None,
) -> bytes:
    """The account as PDF on the shop's paper, or on `paper`.

    `customer` is the name and the lines that stand under it.
    """
    head = Letterhead(
        sender=sender(shop),
        title=words.say("bills.account_title"),
        corner=customer[:1],
        party=customer,
        facts=(
            (words.say("bills.account_from"), day_text(account.start, words)),
            (words.say("bills.account_to"), day_text(account.end, words)),
        ),
    )
    sheet = open_paper(paper or shop.paper, head, "", made, words)
    columns = (
        Column(words.say("bills.date"), 110),
        Column(words.say("bills.what"), sheet.room - 390),
        Column(words.say("bills.order"), 55, "right"),
        Column(words.say("bills.account_charged"), 75, "right"),
        Column(words.say("bills.account_taken_off"), 75, "right"),
        Column(words.say("bills.account_balance"), 75, "right"),
    )
    table(sheet, columns, list(_rows(account, words)))
    sheet.need(130)
    sheet.skip(8)
    money_row(sheet, words.say("bills.account_brought"), account.opening)
    money_row(sheet, words.say("bills.account_charged"), account.charged)
    money_row(sheet, words.say("bills.account_taken_off"), -account.taken_off)
    money_row(sheet, words.say("bills.account_closing"), account.closing, 12, strong=True)
    if min(account.opening, account.closing, *(one.balance for one in account.lines)) < 0:
        notes(sheet, (words.say("bills.note_account"),))
    return sheet.pdf()


def _rows(account: Account, words: Words) -> Iterator[tuple[str, ...]]:
    start, brought = day_text(account.start, words), words.say("bills.account_brought")
    yield start, brought, "", "", "", money_text(account.opening)
    for line in account.lines:
        yield _row(line, words)


def _row(line: AccountLine, words: Words) -> tuple[str, ...]:
    move = line.move
    key = f"money.entry_{move.kind}"
    what = words.say(key) if words.has(key) else move.kind
    if move.number:
        what = f"{what} {move.number}"
    if move.memo:
        what = f"{what}, {move.memo}"
    more = money_text(move.cents) if move.cents > 0 else ""
    less = money_text(-move.cents) if move.cents < 0 else ""
    order = str(move.order_number or "")
    return day_text(move.day, words), what, order, more, less, money_text(line.balance)
