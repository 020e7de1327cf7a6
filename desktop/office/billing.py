"""One order's money, read in one go: the bill to make, what is issued, paid and due."""

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from desktop.office.lot_reading import House, OfLot, read_house, read_lot
from shared.billing.bill import Bill, make_bill, make_producer_bill
from shared.billing.extras import SaidExtras, Storing, storing
from shared.billing.lot import BilledLot
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard
from shared.billing.snapshot import from_snapshot
from shared.shop.money import balance_of

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from db.store import Store
    from db.unit_of_work import Work
    from shared.shop.customers import Customer
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot
    from shared.shop.money import Balance, IssuedBill, Payment
    from shared.shop.orders import Order


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
        return BillingReader(work).read(order_id)


class BillingReader:
    """Reads the money of many orders within one reading: the house and each lot once."""

    def __init__(self, work: "Work") -> None:
        self._work = work
        self._house: House | None = None
        self._lots: dict[int, OfLot] = {}
        self._orders: dict[int, Order] = {}
        self._customers: dict[int, Customer | None] = {}

    def read(self, order_id: int) -> Billing | None:
        """An order's money; None when there is no such order."""
        order = self._orders.get(order_id) or self._work.orders.get(order_id)
        of_lot = None if order is None else self._lot(order.lot_id)
        if order is None or of_lot is None:
            return None
        billed, issued = of_lot.billed, of_lot.bills_of(order_id)
        payments, already = of_lot.payments_of(order_id), of_lot.keys_of(order_id)
        bill: Bill | BillingProblem = (
            billed
            if isinstance(billed, BillingProblem)
            else make_bill(billed, order.share, payments=payments, already=already)
        )
        share = next(one for one in of_lot.lot.shares if one.number == order.share)
        found = Billing(
            order=order,
            lot=of_lot.lot,
            shop=of_lot.shop,
            customer=self._customer(order.customer_id),
            producer=self._customer(of_lot.lot.producer_id),
            billed=billed,
            next_bill=bill,
            last_bill=_last(self._work, issued),
            issued=issued,
            payments=payments,
            balance=balance_of(issued, payments, share.deposit_asked),
            said=of_lot.said,
            storing=_storing(self._work, order, of_lot),
        )
        return replace(found, producers=_producers(self._work, found, of_lot))

    def _lot(self, lot_id: int) -> OfLot | None:
        if self._house is None:
            self._house = read_house(self._work)
        if lot_id not in self._lots:
            found = read_lot(self._work, lot_id, self._house)
            if found is None:
                return None
            self._lots[lot_id] = found
            self._orders.update({one.id: one for one in found.orders})
        return self._lots[lot_id]

    def _customer(self, customer_id: int | None) -> "Customer | None":
        if customer_id is None:
            return None
        if customer_id not in self._customers:
            self._customers[customer_id] = self._work.customers.get(customer_id)
        return self._customers[customer_id]


def _storing(work: "Work", order: "Order", of_lot: OfLot) -> Storing | None:
    until = work.extras.fetched_on(order.id) if order.state == "handed_over" else None
    mine = [one for one in of_lot.before if one.order_id == order.id]
    today = work.now.astimezone().date()
    which = of_lot.shop.storage_days
    closed = () if which == "every_day" else work.calendar.closed_days()
    return storing(work.extras.ready_on(order.id), until or today, mine, which, closed)


def _producers(work: "Work", billing: Billing, of_lot: OfLot) -> Billing | None:
    """The lot from the side of a producer without a share; None where nothing falls to him."""
    billed = billing.billed
    if isinstance(billed, BillingProblem) or billed.producer_share is not None:
        return None
    payments, issued = of_lot.payments_of(None), of_lot.bills_of(None)
    bill = make_producer_bill(billed, payments=payments, already=of_lot.keys_of(None))
    if not issued and (isinstance(bill, BillingProblem) or not bill.lines):
        return None
    return replace(
        billing,
        customer=billing.producer,
        next_bill=bill,
        last_bill=_last(work, issued),
        issued=issued,
        payments=payments,
        balance=balance_of(issued, payments),
        for_producer=True,
    )


def _last(work: "Work", issued: "Sequence[IssuedBill]") -> Bill | None:
    bills = [one for one in issued if one.credits is None]
    paper = work.papers.get(bills[-1].paper_id) if bills else None
    found = from_snapshot(paper.snapshot) if paper is not None else None
    return found if isinstance(found, Bill) else None
