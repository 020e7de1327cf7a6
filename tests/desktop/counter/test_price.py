"""The price so far is the shop's rates on the weights the plan goes by."""

from datetime import date
from fractions import Fraction

from db.unit_of_work import Work
from desktop.bench import Bench
from desktop.counter.order_desk import OrderDesk
from desktop.counter.price import cards_of, estimate, price
from shared.billing.rates import Charge, RateCard
from tests.db.examples import lot_of_halves


def test_half_of_a_185_lb_hog_at_80_cents(bench: Bench) -> None:
    """By hand: 185 lb ÷ 2 = 92.5 lb at 80 cents is $74.00."""
    charges = (Charge("cut_and_wrap", "per_lb_hot", Fraction(80)),)
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.rates.save(RateCard("plain", "Plain", date(2026, 1, 1), charges=charges))
        work.commit()
    desk = OrderDesk(bench, lot.id, lot.shares[0].order_id)
    with bench.store.read() as work:
        cards = cards_of(desk.lot, work)
    assert cards is not None
    bill = estimate(desk, cards)
    assert bill is not None
    assert bill.estimate
    assert bill.total_cents == 7400


def test_without_rates_there_is_no_price(bench: Bench, work: Work) -> None:
    lot = lot_of_halves(work)
    work.commit()
    assert cards_of(lot, work) is None


def test_what_is_charged_by_the_package_has_a_band(bench: Bench) -> None:
    """By hand: all of the hocks of one side is 2 packages, ground pork by the pound has a band."""
    charges = (Charge("package", "per_package", Fraction(100)),)
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.rates.save(RateCard("plain", "Plain", date(2026, 1, 1), charges=charges))
        work.commit()
    desk = OrderDesk(bench, lot.id, lot.shares[0].order_id)
    desk.fill_usual()
    with bench.store.read() as work:
        cards = cards_of(desk.lot, work)
    assert cards is not None
    found = price(desk, cards)
    assert found is not None
    packages = desk.forecast.packages(desk.share)
    assert packages.low < packages.mid < packages.high
    ends = (found.low, found.bill.total_cents, found.high)
    assert ends == (packages.low * 100, packages.mid * 100, packages.high * 100)
