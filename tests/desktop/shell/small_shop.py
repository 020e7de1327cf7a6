"""A shop with one weighed hog in halves, a rate card, two packages and a deposit."""

from datetime import date
from fractions import Fraction
from pathlib import Path

from desktop.paths import Paths
from desktop.records import open_records
from shared.billing.rates import Charge, RateCard
from shared.shop.details import ShopDetails
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
