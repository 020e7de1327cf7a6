"""The papers the invented lots were given: block sheets and bills as the shop prints them."""

from collections.abc import Callable
from functools import cache
from typing import TYPE_CHECKING

from printing.bill import bill as printed_bill
from printing.block_sheet import block_sheet as printed_sheet
from printing.words import Words
from shared.billing.bill import Bill
from shared.carcass.anatomy import catalogue
from shared.cutting.answer import Answer
from shared.cutting.forecast import forecast
from shared.cutting.order import Question
from shared.shop.lots import Lot
from shared.shop.orders import Order

if TYPE_CHECKING:
    from db.unit_of_work import Work


@cache
def _words(language: str) -> Words:
    return Words(language)


def block_sheet(work: "Work", lot: Lot, question: Question, answer: Answer) -> bytes:
    """The first sheet of the block for a lot."""
    found = catalogue(lot.species)
    return printed_sheet(
        question,
        answer,
        found,
        forecast(question, answer, found),
        lot_number=lot.number,
        sheet_number=1,
        shop=work.shop.details(),
        made=work.now,
        words=_words("en"),
    )


def bill_paper(work: "Work", order: Order, lot: Lot, bill: Bill) -> Callable[[int], bytes]:
    """What makes the paper of a bill from its number, in the customer's language."""
    owner = work.customers.get(order.customer_id or 0)
    language = owner.language if owner else "en"
    lines = (order.owner, *(owner.address.splitlines() if owner else ()))
    shop, made = work.shop.details(), work.now

    def paper(number: int) -> bytes:
        return printed_bill(
            bill,
            number=number,
            shop=shop,
            customer=lines,
            made=made,
            words=_words(language),
            order_number=order.number,
            lot_number=lot.number,
        )

    return paper
