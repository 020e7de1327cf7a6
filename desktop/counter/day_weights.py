"""The shares of a day's kill with what they weigh, as the Counter tells them to their owners."""

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import TYPE_CHECKING

from shared.billing.problems import BillingProblem
from shared.billing.quantities import HangingWeights, hanging_weights
from shared.carcass.anatomy import catalogue
from shared.shop.calendar import hang_days
from shared.shop.calls import due_on
from shared.units import NG_PER_LB

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from db.store import Store
    from db.unit_of_work import Work
    from printing.hanging_words import HangingNote
    from shared.carcass.carcass import Carcass, Holding
    from shared.shop.customers import Customer
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot
    from shared.shop.orders import Order
    from shared.shop.weights_told import WeightTold


@dataclass(frozen=True, slots=True)
class DayShare:
    """One share: what is told of it, to whom, in which language, and when he was told last."""

    order_id: int
    note: "HangingNote"
    language: str
    email: str
    phone: str
    told: "WeightTold | None" = None

    @property
    def hanging_ng(self) -> int | None:
        """What the share weighs, None while some of it isn't weighed."""
        whole = self.note.hanging.pounds
        return None if whole is None else int(whole * NG_PER_LB)

    @property
    def told_otherwise(self) -> bool:
        """Whether it was told, and weighs something else by now."""
        return self.told is not None and self.told.hanging_ng != self.hanging_ng


def read_day(store: "Store", day: "date") -> list[DayShare]:
    """Every share of the day's lots, by lot and share. Run it on a worker.

    A lot whose weights contradict each other is told as not weighed.
    """
    found: list[DayShare] = []
    with store.read() as work:
        lots, shop = work.weights_told.lots_of_day(day), work.shop.details()
    for lot_id in lots:
        with store.read() as work:  # one unit a lot, so that nobody waits for all of them
            lot = work.lots.get(lot_id)
            if lot is not None:
                found += _of_lot(work, lot, shop)
    return found


def with_quote(store: "Store", share: DayShare) -> "tuple[int, int] | None":
    """Low and high cents of the share's order as it stands; None where it can't be priced."""
    from desktop.office.billing import read_billing
    from desktop.office.quoting import quote_of

    billing = read_billing(store, share.order_id)
    quote = None if billing is None else quote_of(store, billing)
    if quote is None or isinstance(quote, BillingProblem):
        return None
    return quote.low_cents, quote.high_cents


def _of_lot(work: "Work", lot: "Lot", shop: "ShopDetails") -> list[DayShare]:
    question, orders = work.lots.question(lot.id), work.orders.of_lot(lot.id)
    told = work.weights_told.last([one.id for one in orders])
    rules, hang = work.calls.rules(), hang_days(work.calendar.plan(), lot.species)
    held = {one.number: one.holdings for one in question.shares}
    quartered = any(one.quarter for holdings in held.values() for one in holdings)
    fore = shop.fore_share or Fraction(0)  # asked for of quarters alone
    if quartered and shop.fore_share is None:
        fore = catalogue(lot.species).ranges.fore_share  # reading a species' figures takes 40 ms
    found: list[DayShare] = []
    for order in orders:
        customer = None
        if order.customer_id is not None:
            customer = work.customers.get(order.customer_id)
        hanging, follows = _hanging(question.carcasses, held[order.share], shop, fore)
        killed = _killed(lot, held[order.share])
        due = order.due or due_on(rules, killed or lot.day, hang)
        note = replace(
            _note(lot, order, customer, held[order.share]),
            killed_on=killed,
            hanging=hanging,
            due=due if order.state == "open" else None,
            chilled_follows=follows,
        )
        found.append(
            DayShare(
                order.id,
                note,
                customer.language if customer is not None else shop.language,
                "" if customer is None else customer.email.strip(),
                "" if customer is None else customer.phone,
                told.get(order.id),
            )
        )
    return found


def _note(
    lot: "Lot", order: "Order", customer: "Customer | None", holdings: "Sequence[Holding]"
) -> "HangingNote":
    """Whose note it is and of which animals; the weights come to it."""
    from printing.hanging_words import HangingNote

    lines = () if customer is None else (customer.name, *customer.address.splitlines())
    mine = {one.carcass for one in holdings}
    animals = [(at, one) for at, one in enumerate(lot.animals) if at in mine]
    return HangingNote(
        order_number=order.number,
        lot_number=lot.number,
        species=lot.species,
        owner=order.owner,
        party=tuple(line for line in lines if line.strip()),
        tags=tuple(one.tag for one in lot.animals),
        killed_on=None,
        hanging=HangingWeights("hot", ()),
        due=None,
        held=tuple(one.tag or str(at + 1) for at, one in animals if one.state == "held"),
        condemned=tuple(one.tag or str(at + 1) for at, one in animals if one.state == "condemned"),
    )


def _killed(lot: "Lot", holdings: "Sequence[Holding]") -> "date | None":
    mine = {one.carcass for one in holdings}
    days = [one.killed_on for at, one in enumerate(lot.animals) if at in mine and one.killed_on]
    return max(days, default=None)


def _hanging(
    carcasses: "Sequence[Carcass]",
    holdings: "Sequence[Holding]",
    shop: "ShopDetails",
    fore: "Fraction",
) -> tuple[HangingWeights, bool]:
    """The weight the shop goes by; the hot one while the chilled one isn't there, and that."""
    if shop.hanging_basis == "chilled":
        chilled = hanging_weights(carcasses, holdings, "chilled", fore)
        if isinstance(chilled, HangingWeights) and chilled.pounds is not None:
            return chilled, False
    hot = hanging_weights(carcasses, holdings, "hot", fore)
    if isinstance(hot, BillingProblem):
        hot = HangingWeights("hot", ())
    return hot, shop.hanging_basis == "chilled"
