"""What the bills of a lot's orders have in common, read once for all of them."""

from collections import Counter
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from shared.billing.ended import Ended, ended
from shared.billing.extras import SaidExtras, told_again
from shared.billing.lot import BilledLot, Division, billed_lot, with_extras
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard, card_for
from shared.billing.stakes import PRODUCER
from shared.carcass.anatomy import catalogue
from shared.curing.waiting import in_cure, weighed_in

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from datetime import date

    from db.unit_of_work import Work
    from shared.billing.extras import BilledExtra
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot
    from shared.shop.money import IssuedBill, Payment
    from shared.shop.orders import Order

COMPLETE = ("ready", "handed_over")


@dataclass(frozen=True, slots=True)
class House:
    """What holds for every lot: the shop's details and its rate cards."""

    shop: "ShopDetails"
    cards: "tuple[RateCard, ...]"


@dataclass(frozen=True, slots=True)
class OfLot:
    """A lot as it is billed, with all its orders, bills and payments.

    `said` is what is also on the next bills, by order; `before` the lines that stand on bills.
    """

    lot: "Lot"
    shop: "ShopDetails"
    orders: "tuple[Order, ...]"
    billed: BilledLot | BillingProblem
    issued: "tuple[IssuedBill, ...]"
    payments: "tuple[Payment, ...]"
    said: "Mapping[int, SaidExtras]"
    before: "tuple[BilledExtra, ...]"

    def bills_of(self, order_id: int | None) -> "tuple[IssuedBill, ...]":
        """Bills and credits of an order; None are the producer's own."""
        return tuple(one for one in self.issued if one.order_id == order_id)

    def payments_of(self, order_id: int | None) -> "tuple[Payment, ...]":
        """The payments of an order, or the producer's own."""
        return tuple(one for one in self.payments if one.order_id == order_id)

    def keys_of(self, order_id: int | None) -> frozenset[str]:
        """Keys of the lines that stand on its bills."""
        return frozenset(one.key for one in self.before if one.order_id == order_id)


def read_house(work: "Work") -> House:
    """What holds for every lot."""
    return House(work.shop.details(), tuple(work.rates.all()))


def read_lot(work: "Work", lot_id: int, house: House) -> OfLot | None:
    """Read a lot for billing; None when there is no such lot."""
    lot = work.lots.get(lot_id)
    if lot is None:
        return None
    orders, issued = work.orders.of_lot(lot.id), work.bills.of_lot(lot.id)
    billed, said = _billed(work, lot, house, orders, issued), work.extras.of_lot(lot.id)
    before = work.extras.billed(lot.id)
    if isinstance(billed, BilledLot):
        billed = _with_said(orders, billed, said, before)
    payments = work.payments.of_lot(lot.id)
    return OfLot(lot, house.shop, orders, billed, issued, payments, said, before)


def _with_said(
    orders: "Sequence[Order]",
    billed: BilledLot,
    said: "Mapping[int, SaidExtras]",
    before: "Sequence[BilledExtra]",
) -> BilledLot:
    """The lot with what is also on its orders' next bills, told what stands on earlier ones."""
    own = {one.id for one in orders if one.share == billed.producer_share} | {None}
    his = producers_codes(billed)
    for order in orders:
        share = billed.share(order.share)
        if share is None or order.id not in said:
            continue
        theirs = [one for one in before if one.order_id in (own if one.code in his else {order.id})]
        told = told_again(said[order.id].extras, theirs, share.card)
        billed = with_extras(billed, order.share, asked=told.asked, credits_given=told.credits)
    return billed


def producers_codes(billed: BilledLot) -> frozenset[str]:
    """The charges that fall to the producer."""
    card = billed.the_producers_card
    charges = () if card is None else card.charges
    return frozenset(one.code for one in charges if one.falls_to == "producer")


def _billed(
    work: "Work",
    lot: "Lot",
    house: House,
    orders: "Sequence[Order]",
    issued: "Sequence[IssuedBill]",
) -> BilledLot | BillingProblem:
    by_share, producers = _cards(work, lot, house.cards)
    packages, counted = work.packages.of_lot(lot.id), work.counted.of_lot(lot.id)
    cured = work.batches.of_lot(lot.id)
    found = billed_lot(
        work.lots.question(lot.id),
        catalogue(lot.species),
        by_share,
        packages=packages,
        counted=counted,
        weights=work.counted_lines.weights_of_lot(lot.id),
        complete=[one.share for one in orders if one.state in COMPLETE],
        waiting_lines=in_cure(
            lot.id, cured, {one.line for one in (*packages, *counted) if not one.void}
        ),
        into=weighed_in(lot.id, cured),
        fore_share=house.shop.fore_share,
    )
    if isinstance(found, BillingProblem):
        return found
    his = [one.number for one in lot.shares if one.customer_id in (None, lot.producer_id)]
    return replace(
        found,
        producer=lot.producer,
        producer_share=his[0] if his else None,
        producer_card=producers,
        kept=_kept(work, orders, issued, his[0] if his else None),
        storage_days=house.shop.storage_days,
        endings=_endings(lot, found),
    )


def _endings(lot: "Lot", billed: BilledLot) -> "dict[int, Ended]":
    """How animals ended that aren't cut; killed is what has a kill day or a hot weight."""
    found: dict[int, Ended] = {}
    for animal in lot.animals:
        carcass = billed.animals[animal.index]
        hot = (
            carcass.hot_whole,
            *[w for one in carcass.hot for w in (one.whole, one.fore, one.hind)],
        )
        killed = animal.killed_on is not None or any(weight is not None for weight in hot)
        if how := ended(animal.state, killed=killed):
            found[animal.index] = how
    return found


def _kept(
    work: "Work", orders: "Sequence[Order]", issued: "Sequence[IssuedBill]", his: int | None
) -> tuple[Division, ...]:
    """How charges were divided when first billed, as far as they stand on a bill.

    Once a bill of the lot was credited whole, what stands on none is divided anew: a weight
    corrected from 93.5 to 95.5 lb is billed at 95.5 lb. What was billed again by then stands as
    it was billed, so that the others' parts add up with it. `his` is the producer's own share.
    """
    lot_id = orders[0].lot_id
    kept = work.bills.divisions(lot_id)
    back: Counter[int] = Counter()
    for one in issued:
        if one.credits is not None:
            back[one.credits] += one.total_cents
    if not any(0 < one.total_cents <= back[one.id] for one in issued):
        return kept
    shares = {one.id: one.share for one in orders}
    stands: dict[int, dict[str, int]] = {}
    for order_id, key, cents in work.bills.standing_lines(lot_id):
        share = PRODUCER if order_id is None else shares.get(order_id, PRODUCER)
        stands.setdefault(share, {})[key] = cents
    own = stands.get(his or 0, {})
    producers = {**own, **stands.get(PRODUCER, {})}
    return tuple(
        one if one.share == PRODUCER else replace(one, cents=stands[one.share][one.charge])
        for one in kept
        if one.charge in (producers if one.share == PRODUCER else stands.get(one.share, {}))
    )


def _cards(
    work: "Work", lot: "Lot", cards: "Sequence[RateCard]"
) -> tuple[dict[int, RateCard], RateCard | None]:
    """The card of each share that has one, and the producer's."""
    day = min([one.killed_on for one in lot.animals if one.killed_on], default=lot.day)
    groups = _groups(work, lot, cards)
    by_share = {
        share.number: card
        for share in lot.shares
        if (card := _card(cards, day, lot, groups[share.customer_id or lot.producer_id]))
    }
    return by_share, _card(cards, day, lot, groups[lot.producer_id])


def _card(cards: "Sequence[RateCard]", day: "date", lot: "Lot", group: str) -> RateCard | None:
    return card_for(cards, day, species=lot.species, regime=lot.regime, group=group)


def _groups(work: "Work", lot: "Lot", cards: "Sequence[RateCard]") -> dict[int, str]:
    """The owners' customer groups; looked up only where a card is for one group."""
    ids = {share.customer_id or lot.producer_id for share in lot.shares} | {lot.producer_id}
    if not any(card.group for card in cards):
        return dict.fromkeys(ids, "")
    found = {one: work.customers.get(one) for one in ids}
    return {who: "" if one is None else one.group for who, one in found.items()}
