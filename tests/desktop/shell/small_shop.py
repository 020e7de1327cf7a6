"""A shop with one weighed hog in halves, a rate card, two packages and a deposit."""

from datetime import date
from fractions import Fraction
from pathlib import Path

from desktop.office.billing import read_billing
from desktop.paths import Paths
from desktop.records import open_records
from shared.billing.bill import Bill
from shared.billing.division import new_divisions
from shared.billing.lot import BilledLot
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge, RateCard
from shared.billing.snapshot import snapshot
from shared.shop.details import ShopDetails
from shared.shop.money import IssuedBill
from shared.shop.orders import Order
from tests.db import examples

CARD = RateCard(
    "2026",
    "Rates",
    date(2026, 1, 1),
    charges=(
        Charge("kill", "per_head", Fraction(6000)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(85)),
    ),
)


def make(folder: Path, *, weighed: bool = True, card: bool = True) -> tuple[Paths, Order]:
    """The shop's folder and Anna's order, side 1 of 92.5 lb."""
    paths = Paths(folder)
    paths.make()
    store = open_records(paths)
    signed = store.sign_on("Ann", "Counter")
    with store.work(signed.person, signed.station) as work:
        details = work.shop.details()
        work.shop.save(
            ShopDetails(name="Oak Hollow Meats", address="12 Mill Lane", version=details.version)
        )
        if card:
            work.rates.save(CARD)
        lot = examples.lot_of_halves(work)
        animal = examples.arrived(work, lot)
        if weighed:
            examples.weighed(work, animal, "92.5", 1)
            examples.weighed(work, animal, "94", 2)
        order = examples.order_of(work, lot)
        ham = examples.line(work, order)
        examples.package(work, order, ham)
        work.payments.take(order.id, "deposit", "check", 5000)
        work.commit()
    store.close()
    return paths, order


def issue_and_pay(paths: Paths, order: Order, cents: int) -> int:
    """The order's bill issued and some of it paid; the bill's number."""
    store = open_records(paths)
    billing = read_billing(store, order.id)
    assert billing is not None
    assert isinstance(billing.next_bill, Bill)
    assert isinstance(billing.billed, BilledLot)
    divisions = new_divisions(billing.billed)
    assert not isinstance(divisions, BillingProblem)
    signed = store.sign_on("Ann", "Counter")
    with store.work(signed.person, signed.station) as work:
        issued = work.bills.issue(
            order.id,
            total_cents=billing.next_bill.total_cents,
            snapshot=snapshot(billing.next_bill),
            pdf=examples.issued_pdf,
            lines=billing.next_bill.lines,
            divisions=divisions,
        )
        assert isinstance(issued, IssuedBill)
        work.payments.take(order.id, "payment", "cash", cents)
        work.commit()
    store.close()
    return issued.number
