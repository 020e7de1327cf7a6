"""One order's money, read in one go: the bill to make, what is issued, paid and due."""

from collections import Counter
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from shared.billing.bill import Bill, make_bill, make_producer_bill
from shared.billing.ended import Ended, ended
from shared.billing.extras import SaidExtras, Storing, storing, told_again
from shared.billing.lot import BilledLot, Division, billed_lot, with_extras
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard, card_for
from shared.billing.snapshot import from_snapshot
from shared.billing.stakes import PRODUCER
from shared.carcass.anatomy import catalogue
from shared.curing.waiting import in_cure, weighed_in

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence
    from datetime import date

    from db.store import Store
    from db.unit_of_work import Work
    from shared.billing.extras import BilledExtra
    from shared.shop.customers import Customer
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot
    from shared.shop.money import Balance, IssuedBill, Payment
    from shared.shop.orders import Order

COMPLETE = ("ready", "handed_over")


@dataclass(frozen=True, slots=True)
class Billing:
    """An order as the Office sees it.

    `next_bill` holds what isn't billed yet; `shown` is the bill to show: the next one while it
    has lines, else the last one issued. `producers` is the same lot seen from the producer who
    holds no share of it but is billed for something (`for_producer`); None where he isn't.
    `said` is what is also on the next bills of the lot's orders, by order; `storing` the storage
    this one is still to be billed for. `differs`: what stands billed would be another amount at
    the weights that stand now; only `scale_check.read_checked` looks.
    """

    order: "Order"
    lot: "Lot"
    shop: "ShopDetails"
    customer: "Customer | None"
    producer: "Customer | None"
    billed: BilledLot | BillingProblem
    next_bill: Bill | BillingProblem
    last_bill: Bill | None
    issued: "tuple[IssuedBill, ...]"
    payments: "tuple[Payment, ...]"
    balance: "Balance"
    for_producer: bool = False
    producers: "Billing | None" = None
    said: "Mapping[int, SaidExtras]" = field(default_factory=dict[int, SaidExtras])
    storing: Storing | None = None
    differs: bool = False

    @property
    def extras(self) -> SaidExtras:
        """What is also on the order's next bill."""
        return self.said.get(self.order.id, SaidExtras())

    @property
    def order_id(self) -> int | None:
        """Whose order bills and payments are of; None for the producer's own."""
        return None if self.for_producer else self.order.id

    @property
    def payer(self) -> str:
        """Who pays it."""
        return self.lot.producer if self.for_producer else self.order.owner

    @property
    def payers(self) -> tuple[tuple[int | None, str], ...]:
        """Who may pay: whose bill it is first (None), then the lot's other owners and producer."""
        mine = self.lot.producer_id if self.for_producer else self.order.customer_id
        others = {one.customer_id: one.owner for one in self.lot.shares if one.customer_id}
        others[self.lot.producer_id] = self.lot.producer
        return ((None, self.payer), *[one for one in others.items() if one[0] != mine])

    @property
    def card(self) -> RateCard | None:
        """The rate card of the order's owner."""
        if isinstance(self.billed, BillingProblem):
            return None
        share = self.billed.share(self.order.share)
        return None if share is None else share.card

    @property
    def has_next(self) -> bool:
        """Whether something is to be billed that is on no bill yet."""
        return isinstance(self.next_bill, Bill) and any(
            line.kind != "waiting" for line in self.next_bill.lines
        )

    @property
    def shown(self) -> Bill | None:
        """The bill whose lines are shown."""
        if self.last_bill is not None and not self.has_next:
            return self.last_bill
        return self.next_bill if isinstance(self.next_bill, Bill) else self.last_bill

    @property
    def bills(self) -> "tuple[IssuedBill, ...]":
        """Bills without credit notes."""
        return tuple(one for one in self.issued if one.credits is None)


def address_lines(customer: "Customer | None", name: str) -> tuple[str, ...]:
    """A customer's name and the lines of the address, as papers take them."""
    if customer is None:
        return (name,)
    return (customer.name, *[line for line in customer.address.splitlines() if line.strip()])


def read_billing(store: "Store", order_id: int) -> Billing | None:
    """Read an order's money; None when there is no such order."""
    with store.read() as work:
        order = work.orders.get(order_id)
        lot = work.lots.get(order.lot_id) if order is not None else None
        if order is None or lot is None:
            return None
        shop = work.shop.details()
        billed, said = _billed(work, lot, shop), work.extras.of_lot(lot.id)
        before = work.extras.billed(lot.id)
        if isinstance(billed, BilledLot):
            billed = _with_said(work, lot, billed, said, before)
        payments = work.payments.of_order(order_id)
        issued = work.bills.of_order(order_id)
        already = work.bills.billed_keys(order_id, lot.id)
        bill: Bill | BillingProblem = (
            billed
            if isinstance(billed, BillingProblem)
            else make_bill(billed, order.share, payments=payments, already=already)
        )
        found = Billing(
            order=order,
            lot=lot,
            shop=shop,
            customer=work.customers.get(order.customer_id) if order.customer_id else None,
            producer=work.customers.get(lot.producer_id),
            billed=billed,
            next_bill=bill,
            last_bill=_last(work, issued),
            issued=issued,
            payments=payments,
            balance=work.payments.balance(order_id),
            said=said,
            storing=_storing(work, order, before, shop),
        )
        return replace(found, producers=_producers(work, found))


def _with_said(
    work: "Work",
    lot: "Lot",
    billed: BilledLot,
    said: "Mapping[int, SaidExtras]",
    before: "Sequence[BilledExtra]",
) -> BilledLot:
    """The lot with what is also on its orders' next bills, told what stands on earlier ones."""
    orders = work.orders.of_lot(lot.id) if said else ()
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


def _storing(
    work: "Work", order: "Order", before: "Iterable[BilledExtra]", shop: "ShopDetails"
) -> Storing | None:
    until = work.extras.fetched_on(order.id) if order.state == "handed_over" else None
    mine = [one for one in before if one.order_id == order.id]
    today = work.now.astimezone().date()
    which = shop.storage_days
    closed = () if which == "every_day" else work.calendar.closed_days()
    return storing(work.extras.ready_on(order.id), until or today, mine, which, closed)


def _producers(work: "Work", billing: Billing) -> Billing | None:
    """The lot from the side of a producer without a share; None where nothing falls to him."""
    billed, lot = billing.billed, billing.lot
    if isinstance(billed, BillingProblem) or billed.producer_share is not None:
        return None
    payments = [one for one in work.payments.of_lot(lot.id) if one.order_id is None]
    issued = tuple(one for one in work.bills.of_lot(lot.id) if one.order_id is None)
    already = work.bills.billed_keys(None, lot.id)
    bill = make_producer_bill(billed, payments=payments, already=already)
    if not issued and (isinstance(bill, BillingProblem) or not bill.lines):
        return None
    return replace(
        billing,
        customer=billing.producer,
        next_bill=bill,
        last_bill=_last(work, issued),
        issued=issued,
        payments=tuple(payments),
        balance=work.payments.producer_balance(lot.id),
        for_producer=True,
    )


def _last(work: "Work", issued: "Sequence[IssuedBill]") -> Bill | None:
    bills = [one for one in issued if one.credits is None]
    paper = work.papers.get(bills[-1].paper_id) if bills else None
    found = from_snapshot(paper.snapshot) if paper is not None else None
    return found if isinstance(found, Bill) else None


def _billed(work: "Work", lot: "Lot", shop: "ShopDetails") -> BilledLot | BillingProblem:
    known = catalogue(lot.species)
    cards = work.rates.all()
    day = min([one.killed_on for one in lot.animals if one.killed_on], default=lot.day)
    groups = _groups(work, lot, cards)
    by_share: dict[int, RateCard] = {}
    for share in lot.shares:
        card = _card(cards, day, lot, groups.get(share.customer_id or lot.producer_id, ""))
        if card is not None:
            by_share[share.number] = card
    packages, cured = work.packages.of_lot(lot.id), work.batches.of_lot(lot.id)
    counted = work.counted.of_lot(lot.id)
    found = billed_lot(
        work.lots.question(lot.id),
        known,
        by_share,
        packages=packages,
        counted=counted,
        weights=work.counted_lines.weights_of_lot(lot.id),
        complete=[one.share for one in work.orders.of_lot(lot.id) if one.state in COMPLETE],
        waiting_lines=in_cure(
            lot.id, cured, {one.line for one in (*packages, *counted) if not one.void}
        ),
        into=weighed_in(lot.id, cured),
        fore_share=shop.fore_share,
    )
    if isinstance(found, BillingProblem):
        return found
    his = [one.number for one in lot.shares if one.customer_id in (None, lot.producer_id)]
    return replace(
        found,
        producer=lot.producer,
        producer_share=his[0] if his else None,
        producer_card=_card(cards, day, lot, groups.get(lot.producer_id, "")),
        kept=_kept(work, lot.id, his[0] if his else None),
        storage_days=shop.storage_days,
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


def _kept(work: "Work", lot_id: int, his: int | None) -> tuple[Division, ...]:
    """How charges were divided when first billed, as far as they stand on a bill.

    Once a bill of the lot was credited whole, what stands on none is divided anew: a weight
    corrected from 93.5 to 95.5 lb is billed at 95.5 lb. What was billed again by then stands as
    it was billed, so that the others' parts add up with it. `his` is the producer's own share.
    """
    kept = work.bills.divisions(lot_id)
    issued = work.bills.of_lot(lot_id)
    back: Counter[int] = Counter()
    for one in issued:
        if one.credits is not None:
            back[one.credits] += one.total_cents
    if not any(0 < one.total_cents <= back[one.id] for one in issued):
        return kept
    shares = {one.id: one.share for one in work.orders.of_lot(lot_id)}
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


def _card(cards: "Sequence[RateCard]", day: "date", lot: "Lot", group: str) -> RateCard | None:
    return card_for(cards, day, species=lot.species, regime=lot.regime, group=group)


def _groups(work: "Work", lot: "Lot", cards: "Sequence[RateCard]") -> dict[int, str]:
    """The owners' customer groups; looked up only where a card is for one group."""
    if not any(card.group for card in cards):
        return {}
    ids = {share.customer_id or lot.producer_id for share in lot.shares} | {lot.producer_id}
    found = [work.customers.get(one) for one in ids]
    return {one.id: one.group for one in found if one is not None}
