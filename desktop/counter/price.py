"""What an order will come to, as an estimate from the plan and the shop's rates."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from shared.billing.bill import Bill, make_bill
from shared.billing.lot import billed_lot
from shared.billing.problems import BillingProblem
from shared.cutting.dealt import as_own
from shared.cutting.forecast import Forecast, Range

if TYPE_CHECKING:
    from collections.abc import Mapping

    from db.unit_of_work import Work
    from desktop.counter.order_desk import OrderDesk
    from shared.billing.rates import RateCard
    from shared.shop.lots import Lot


@dataclass(frozen=True, slots=True)
class Price:
    """The bill as it would be in the middle, and its cents where all runs light or heavy."""

    bill: Bill
    low: int
    high: int


def cards_of(lot: "Lot", work: "Work") -> "dict[int, RateCard] | None":
    """The rate card of each share; None while the shop has none for one of them."""
    cards: dict[int, RateCard] = {}
    for share in lot.shares:
        customer = None if share.customer_id is None else work.customers.get(share.customer_id)
        card = work.rates.current(
            lot.day,
            species=lot.species,
            regime=lot.regime,
            group="" if customer is None else customer.group,
        )
        if card is None:
            return None
        cards[share.number] = card
    return cards


def price(desk: "OrderDesk", cards: "Mapping[int, RateCard]") -> Price | None:
    """The bill by the forecast with its band; None where the rates can't price it.

    Nothing of it is kept: the bill proper is made from what was weighed.
    """
    low, middle, high = (
        estimate(desk, cards, _all_at(desk.dealt, end)) for end in ("low", "mid", "high")
    )
    if low is None or middle is None or high is None:
        return None
    ends = sorted((low.total_cents, middle.total_cents, high.total_cents))
    return Price(middle, ends[0], ends[-1])


def estimate(
    desk: "OrderDesk", cards: "Mapping[int, RateCard]", forecast: Forecast | None = None
) -> Bill | None:
    """The bill of the shown order as it would be by a forecast, the desk's unless told."""
    question, expected = as_own(desk.question, forecast or desk.dealt)
    lot = billed_lot(question, desk.catalogue, cards, forecast=expected)
    if isinstance(lot, BillingProblem):
        return None
    found = make_bill(replace(lot, producer=desk.lot.producer), desk.share)
    return None if isinstance(found, BillingProblem) else found


def _all_at(forecast: Forecast, end: str) -> Forecast:
    """The forecast with every line at its least, middle or most."""
    if end == "mid":
        return forecast

    def at(found: Range) -> Range:
        one = found.low if end == "low" else found.high
        return Range(one, one, one)

    return Forecast(
        tuple(
            replace(line, finished=at(line.finished), packages=at(line.packages))
            for line in forecast.lines
        )
    )
