"""A hog in halves, wrapped and handed over, with the shop's rates; nothing billed yet."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from fractions import Fraction
from typing import TYPE_CHECKING, TypeVar

from db.store import Store
from desktop.office.progress import Steps
from shared.billing.rates import AppliesTo, Charge, RateCard
from shared.cutting.order import Choice
from shared.shop.lots import Lot
from shared.shop.orders import Order
from shared.shop.packages import NewPackage, PackageMade
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.db.examples import (
    arrived,
    customer,
    line,
    lot_of_halves,
    moved,
    order_of,
    settled,
    weighed,
)
from tests.desktop.wrap.orders import BACON, GROUND, HAM

if TYPE_CHECKING:
    from shared.shop.states import OrderState

T = TypeVar("T")


class StopsAfter(Steps):
    """As if somebody stopped it while so many steps were done."""

    def __init__(self, count: int = 1) -> None:
        super().__init__()
        self.count = count

    def over(self, things: Iterable[T]) -> Iterator[T]:
        for thing in super().over(things):
            yield thing
            if self.done == self.count - 1:
                self.stop()


RATES = RateCard(
    "usual",
    "Usual rates",
    date(2026, 1, 1),
    charges=(
        Charge("kill", "per_head", Fraction(6000)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(70)),
        Charge(
            "cure_and_smoke",
            "per_lb_finished",
            Fraction(95),
            applies_to=AppliesTo(finishes=("cured_smoked",)),
        ),
    ),
)


def handed_over(store: Store, signed: SignedOn, *, rates: bool = True, producer: str = "") -> Order:
    """Anna's half of 93.5 lb and Bert's of 96.25 lb; Anna has paid $50 down.

    With a `producer` the hog is his, he holds no share, and the kill falls to him.
    """
    with store.work(signed.person, signed.station) as work:
        if rates:
            work.rates.save(_with_kill_to_producer() if producer else RATES)
        lot = lot_of_halves(work)
        if producer:
            his = customer(work, producer, "(555) 010-0789")
            saved = work.lots.save_details(replace(lot, producer_id=his.id))
            assert isinstance(saved, Lot)
            lot = saved
        animal = arrived(work, lot)
        weighed(work, animal, "93.5", side=1)
        weighed(work, animal, "96.25", side=2)
        moved(work, animal.id, "passed", "hanging", "on_block", "cut")
        for share in (1, 2):
            order = order_of(work, lot, share)
            lines = [line(work, order, one) for one in (HAM, BACON, GROUND)]
            settled(work, order.id)
            work.orders.release(lot.id, (order.id,), snapshot="{}", pdf=b"%PDF sheet")
            for one, net in zip(lines, ("18.25", "7.41", "2.05"), strict=True):
                made = work.packages.add(_package(order, one, net))
                assert isinstance(made, PackageMade)
            states: tuple[OrderState, ...] = ("cut", "ready", "handed_over")
            for state in states:
                found = work.orders.get(order.id)
                assert found is not None
                done = work.orders.move(order.id, state, version=found.version)
                assert isinstance(done, Order)
        first = order_of(work, lot, 1)
        work.payments.take(first.id, "deposit", "check", 5000, "1188")
        work.commit()
    return first


def _with_kill_to_producer() -> RateCard:
    kill, *others = RATES.charges
    return replace(RATES, charges=(replace(kill, falls_to="producer"), *others))


def _package(order: Order, one: Choice, net: str) -> NewPackage:
    return NewPackage(
        order.id,
        one.line,
        one.cut,
        one.cut.replace("_", " "),
        Weight.from_pounds(net),
        finishes=one.finishes,
    )
