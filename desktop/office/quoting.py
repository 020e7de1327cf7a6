"""What an order will come to, from the shop's records: its plan, its card and the forecast."""

from typing import TYPE_CHECKING

from shared.billing.problems import BillingProblem
from shared.billing.quote import Quote, make_quote
from shared.carcass.anatomy import catalogue
from shared.cutting.forecast import forecast
from shared.cutting.plan import plan

if TYPE_CHECKING:
    from db.store import Store
    from desktop.office.billing import Billing


def quote_of(store: "Store", billing: "Billing") -> Quote | BillingProblem:
    """The quote of the order; plans the lot anew, so run it by `bench.work`."""
    if isinstance(billing.billed, BillingProblem):
        return billing.billed
    with store.read() as work:
        question = work.lots.question(billing.lot.id)
        graded = work.cooler.meat_factor(billing.lot.id)
        own = work.yields.used(billing.lot.species)
    known = catalogue(billing.lot.species)
    expected = forecast(question, plan(question, known), known, own, graded)
    cards = {share.number: share.card for share in billing.billed.shares}
    return make_quote(
        question, known, cards, expected, billing.order.share, fore_share=billing.shop.fore_share
    )
