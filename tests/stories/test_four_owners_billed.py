"""A beef shared by four, from the booking to the bills: to the cent, corrected, and sold twice."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from db.store import Store
from db.unit_of_work import Work
from desktop.bench import Bench
from desktop.office import issuing
from desktop.office.billing import read_billing
from desktop.office.day_bills import issue_day, read_day
from desktop.office.progress import Steps
from desktop.office.scale_check import credit_and_bill_again, disagreements
from shared.billing.rates import Charge
from shared.carcass.carcass import Holding
from shared.cutting.order import Amount, Choice
from shared.shop.animals import Weighing
from shared.shop.holdings import ShareFault
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.money import IssuedBill
from shared.shop.orders import Order
from shared.shop.packages import NewPackage, PackageMade
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.bench.books import bench_on
from tests.db.examples import (
    KILL_DAY,
    arrived,
    booked,
    customer,
    line,
    moved,
    order_of,
    settled,
    weighed,
)
from tests.desktop.office.ready_orders import RATES

GROUND = Choice(1, 1, "ground_beef", Amount("rest"))
CARD = (
    Charge("kill", "per_head", Fraction(9_501)),
    Charge("cut_and_wrap", "per_lb_hot", Fraction(85)),
    Charge("package", "per_package", Fraction(35)),
)
PACKAGES = (3, 2, 1, 1)


def shares_of(work: Work) -> tuple[LotShare, ...]:
    """Four families, two on each side."""
    owners = [
        customer(work, f"Family {name}", f"(555) 010-02{at:02d}") for at, name in enumerate("ABCD")
    ]
    return tuple(
        LotShare(at, owner.id, holdings=(Holding(0, side, "", Fraction(1, 2)),))
        for at, (owner, side) in enumerate(zip(owners, (1, 1, 2, 2), strict=True), start=1)
    )


@pytest.fixture
def bench(store: Store, signed: SignedOn, tmp_path: Path, qapp: object) -> Bench:
    return bench_on(store, tmp_path)


def ready_to_bill(store: Store, signed: SignedOn, led: int = 0) -> Lot:
    """Booked, weighed, ordered, wrapped and handed over; nothing billed.

    The owner of share `led` is cut as the first one says.
    """
    with store.work(signed.person, signed.station) as work:
        work.rates.save(replace(RATES, charges=CARD))
        shares = shares_of(work)
        farmer = customer(work, "Dora Lind", "(555) 010-0299")
        lot = booked(work, NewLot("beef", 1, KILL_DAY, farmer.id, shares))
        animal = arrived(work, lot)
        weighed(work, animal, "401.5", side=1)
        weighed(work, animal, "398.25", side=2)
        moved(work, animal.id, "passed", "hanging", "on_block", "cut")
        orders = [order_of(work, lot, share) for share in (1, 2, 3, 4)]
        ground = [0 if one.share == led else line(work, one, GROUND).line for one in orders]
        for order in orders:
            if order.share == led:
                assert isinstance(work.orders.lead(order.id, 1, version=order.version), Order)
        for order in orders:
            settled(work, order.id)
        ids = [one.id for one in orders]
        work.orders.release(lot.id, ids, snapshot="{}", pdf=b"%PDF sheet")
        for order, number, packages in zip(orders, ground, PACKAGES, strict=True):
            for _ in range(packages):
                new = NewPackage(
                    order.id, number or ground[0], GROUND.cut, "ground", Weight(1, "lb")
                )
                assert isinstance(work.packages.add(new), PackageMade)
            for state in ("cut", "ready", "handed_over"):
                found = work.orders.get(order.id)
                assert found is not None
                done = work.orders.move(order.id, state, version=found.version)
                assert isinstance(done, Order)
        work.commit()
    return lot


def lines(bench: Bench, lot: Lot, code: str) -> list[int]:
    """What stands on the four's last bills for a charge, in the order of the shares."""
    found: list[int] = []
    with bench.store.read() as work:
        orders = sorted(work.orders.of_lot(lot.id), key=lambda one: one.share)
    for order in orders:
        billing = read_billing(bench.store, order.id)
        assert billing is not None
        assert billing.last_bill is not None
        found += [one.amount_cents for one in billing.last_bill.lines if one.code == code]
    return found


def test_a_beef_shared_by_four_is_billed_to_the_cent_and_corrected_to_the_cent(
    bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Kill $95.01. 799.75 lb at $0.85: 67,978.75 cents, $679.79 for the animal.

    By weight 200.75/799.75 of it and 199.125/799.75: 17,063.81 and 16,925.69 cents, rounded down
    67,976; the three cents left go to the largest rests. Side 1 corrected to 411.5 lb makes
    809.75 lb, $688.29: 205.75/809.75 of it is 17,488.78 and 199.125/809.75 is 16,925.66.
    """
    lot = ready_to_bill(store, signed)
    made = [one.issued for one in issue_day(bench, read_day(store, Steps()).bills, Steps())]
    assert [one.number for one in made if one] == [1, 2, 3, 4]
    assert lines(bench, lot, "kill") == [2_376, 2_375, 2_375, 2_375]
    assert lines(bench, lot, "cut_and_wrap") == [17_064, 17_064, 16_926, 16_925]
    assert lines(bench, lot, "package") == [one * 35 for one in PACKAGES]
    with store.work(signed.person, signed.station) as work:
        first = next(one for one in work.weighings.of_animal(lot.animals[0].id) if one.side == 1)
        done = work.weighings.correct(first.id, Weight.from_pounds("411.5"), "read wrongly")
        assert isinstance(done, Weighing)
        work.commit()
    assert lines(bench, lot, "cut_and_wrap") == [17_064, 17_064, 16_926, 16_925]
    checked = disagreements(store, Steps())
    assert {one.line.code for one in checked.found} == {"cut_and_wrap"}
    mended = credit_and_bill_again(bench, checked.found, "weight corrected", Steps())
    assert mended.problem is None
    assert lines(bench, lot, "cut_and_wrap") == [17_489, 17_489, 16_926, 16_925]
    assert lines(bench, lot, "kill") == [2_376, 2_375, 2_375, 2_375]
    with store.read() as work:
        rows = work.bills.list(limit=100)
        assert sum(work.books.balances().values()) == 0
        owed = work.books.balances()["receivable"]
    standing = sum(-one.total_cents if one.credits else one.total_cents for one in rows)
    assert standing == owed == 9_501 + 68_829 + sum(PACKAGES) * 35
    assert disagreements(store, Steps()).found == ()


def test_a_share_sold_twice_is_refused_at_the_booking_and_when_shared_out_anew(
    store: Store, signed: SignedOn
) -> None:
    """Side 1 is sold once and a half; the place that is over is named."""
    with store.work(signed.person, signed.station) as work:
        shares = shares_of(work)
        third = shares[2]
        twice = (
            *shares[:2],
            LotShare(3, third.customer_id, holdings=shares[0].holdings),
            shares[3],
        )
        refused = work.lots.book(NewLot("beef", 1, KILL_DAY, 1, twice))
        assert isinstance(refused, tuple)
        assert {(one.code, one.side) for one in refused} == {("over", 1), ("under", 2)}
        lot = booked(work, NewLot("beef", 1, KILL_DAY, 1, shares))
        again = work.lots.set_shares(lot.id, twice, version=lot.version)
        assert isinstance(again, tuple)
        assert all(isinstance(one, ShareFault) for one in again)
        kept = work.lots.get(lot.id)
        assert kept is not None
        assert [one.holdings for one in kept.shares] == [one.holdings for one in shares]


def test_no_bill_of_the_four_is_issued_twice(bench: Bench, store: Store, signed: SignedOn) -> None:
    lot = ready_to_bill(store, signed)
    with store.read() as work:
        order = work.orders.of_lot(lot.id)[0]
    first, stale = (read_billing(store, order.id) for _ in range(2))
    assert first is not None
    assert stale is not None
    assert isinstance(issuing.issue(bench, first), IssuedBill)
    assert getattr(issuing.issue(bench, stale), "code", "") == "already_billed"


def test_who_is_cut_as_another_says_is_billed_his_own_part(
    bench: Bench, store: Store, signed: SignedOn
) -> None:
    """The same animal, family B cut as family A says: the same cents, and his own two packages."""
    lot = ready_to_bill(store, signed, led=2)
    made = [one.issued for one in issue_day(bench, read_day(store, Steps()).bills, Steps())]
    assert [one.number for one in made if one] == [1, 2, 3, 4]
    assert lines(bench, lot, "kill") == [2_376, 2_375, 2_375, 2_375]
    assert lines(bench, lot, "cut_and_wrap") == [17_064, 17_064, 16_926, 16_925]
    assert lines(bench, lot, "package") == [one * 35 for one in PACKAGES]
