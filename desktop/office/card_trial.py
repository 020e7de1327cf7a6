"""Lots of some days as they would be billed, to try a rate card on them."""

from collections.abc import Callable, Iterable
from datetime import date
from typing import TYPE_CHECKING, Any

from desktop.office.billing import read_billing
from shared.billing.lot import BilledLot
from shared.billing.trial import Trial, TriedLot, try_card

if TYPE_CHECKING:
    from db.store import Store
    from shared.billing.rates import RateCard
    from shared.shop.lots import Lot

MOST_LOTS = 500


Over = Callable[[list[Any]], Iterable[Any]]


def trial_of(store: "Store", new: "RateCard", start: date, end: date, over: Over = iter) -> Trial:
    """The card tried on the lots of some days; `end` is within. `over` may tell or stop it.

    Last month's animals are some hundred lots at a hundredth of a second each: run it by
    `bench.work`.
    """
    with store.read() as work:
        cards = work.rates.all()
    return try_card(new, cards, lots_of(store, start, end, over))


def lots_of(store: "Store", start: date, end: date, over: Over = iter) -> tuple[TriedLot, ...]:
    """The lots of some days that can be billed, cancelled ones left out."""
    with store.read() as work:
        rows = work.lots.list(start=start, end=end, limit=MOST_LOTS)
        first = [(row.id, work.orders.of_lot(row.id)) for row in rows]
    found: list[TriedLot] = []
    for _, orders in over(first):
        billing = read_billing(store, orders[0].id) if orders else None
        if billing is not None and isinstance(billing.billed, BilledLot):
            groups = _groups(store, billing.lot)
            lot = billing.lot
            day = min([one.killed_on for one in lot.animals if one.killed_on], default=lot.day)
            found.append(TriedLot(lot.number, day, lot.regime, billing.billed, groups))
    return tuple(found)


def _groups(store: "Store", lot: "Lot") -> dict[int, str]:
    """The owners' customer groups by share, the producer's own under 0."""
    owners = {share.number: share.customer_id or lot.producer_id for share in lot.shares}
    owners[0] = lot.producer_id
    with store.read() as work:
        people = {one: work.customers.get(one) for one in set(owners.values())}
    return {
        number: person.group
        for number, owner in owners.items()
        if (person := people[owner]) is not None
    }
