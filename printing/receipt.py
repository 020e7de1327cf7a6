"""A receipt for money taken or given back, with what is left of the order."""

from collections.abc import Sequence
from datetime import datetime

from printing.letterhead import Letterhead, day_text, money_row, notes, open_paper, sender
from printing.page import Paper
from printing.words import Words
from shared.shop.details import ShopDetails
from shared.shop.money import Balance, Payment


def receipt(
    payment: Payment,
    balance: Balance,
    *,
    shop: ShopDetails,
    customer: Sequence[str],
    order_number: int,
    made: datetime,
    words: Words,
) -> bytes:
    """The receipt as PDF; `balance` is the order's after this payment.

    $100.00 deposited before the bill leaves no bill yet: the paper says that it is held.
    """
    head = _head(payment, shop, customer, order_number, words)
    source = words.say("bills.taken_by", person=payment.person) if payment.person else ""
    paper = open_paper(shop.paper, head, source, made, words)
    paper.rule()
    paper.skip(8)
    kind = words.say(f"bills.received_{payment.kind}")
    money_row(paper, kind, payment.cents, 14, strong=True)
    paper.skip(10)
    _balance(paper, balance, words)
    told = [words.say("bills.note_paid")] if balance.billed and not balance.due else []
    if not balance.billed:
        told.append(words.say("bills.note_held"))
    if payment.note:
        told.append(payment.note)
    notes(paper, told)
    return paper.pdf()


def _head(
    payment: Payment, shop: ShopDetails, customer: Sequence[str], order_number: int, words: Words
) -> Letterhead:
    facts = [
        (words.say("bills.date"), day_text(payment.day, words)),
        (words.say("bills.by_means"), words.say(f"bills.means_{payment.means}")),
    ]
    if order_number:
        facts.insert(1, (words.say("bills.order"), str(order_number)))
    party = tuple(line for line in customer if line.strip())
    return Letterhead(
        sender=sender(shop),
        title=words.say("bills.receipt_title", number=payment.number),
        corner=party[:1],
        party=party,
        facts=tuple(facts),
    )


def _balance(paper: Paper, balance: Balance, words: Words) -> None:
    if balance.billed:
        money_row(paper, words.say("bills.billed"), balance.billed - balance.credited)
        money_row(paper, words.say("bills.paid_in_all"), -(balance.deposits + balance.paid))
        key = "bills.owed" if balance.due < 0 else "bills.due"
        money_row(paper, words.say(key), abs(balance.due), 12, strong=True)
    else:
        money_row(paper, words.say("bills.held"), balance.deposits + balance.paid)
