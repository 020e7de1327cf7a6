"""The price so far is the shop's rates on the weights the plan goes by."""

from datetime import date
from fractions import Fraction

from db.unit_of_work import Work
from desktop.bench import Bench
from desktop.counter.order_desk import OrderDesk
from desktop.counter.price import estimate
from shared.billing.rates import Charge, RateCard
from tests.db.examples import lot_of_halves


def test_half_of_a_185_lb_hog_at_80_cents(bench: Bench) -> None:
    """By hand: 185 lb ÷ 2 = 92.5 lb at 80 cents is $74.00."""
    charges = (Charge("cut_and_wrap", "per_lb_hot", Fraction(80)),)
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.rates.save(RateCard("plain", "Plain", date(2026, 1, 1), charges=charges))
        work.commit()
    with bench.store.read() as work:
        bill = estimate(OrderDesk(bench, lot.id, lot.shares[0].order_id), work)
    assert bill is not None
    assert bill.estimate
    assert bill.total_cents == 7400


def test_without_rates_there_is_no_price(bench: Bench, work: Work) -> None:
    lot = lot_of_halves(work)
    work.commit()
    desk = OrderDesk(bench, lot.id, lot.shares[0].order_id)
    assert estimate(desk, work) is None
