"""What an order will come to, as an estimate from the plan and the shop's rates."""

from dataclasses import replace
from typing import TYPE_CHECKING

from shared.billing.bill import Bill, make_bill
from shared.billing.lot import billed_lot
from shared.billing.problems import BillingProblem

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.counter.order_desk import OrderDesk
    from shared.billing.rates import RateCard


def estimate(desk: "OrderDesk", work: "Work") -> Bill | None:
    """The bill as it would be by the forecast; None while the shop has no rates for it.

    Nothing of it is kept: the bill proper is made from what was weighed.
    """
    cards: dict[int, RateCard] = {}
    for share in desk.lot.shares:
        customer = None if share.customer_id is None else work.customers.get(share.customer_id)
        card = work.rates.current(
            desk.lot.day,
            species=desk.lot.species,
            regime=desk.lot.regime,
            group="" if customer is None else customer.group,
        )
        if card is None:
            return None
        cards[share.number] = card
    lot = billed_lot(desk.question, desk.catalogue, cards, forecast=desk.forecast)
    if isinstance(lot, BillingProblem):
        return None
    found = make_bill(replace(lot, producer=desk.lot.producer), desk.share)
    return None if isinstance(found, BillingProblem) else found
