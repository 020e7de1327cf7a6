"""What falls to the producer and was also on his bill is put back when that is credited."""

from dataclasses import replace
from fractions import Fraction

import pytest

from db.store import Store
from desktop.bench import Bench
from desktop.office import issuing
from desktop.office.billing import Billing, read_billing
from shared.billing.bill import Bill
from shared.billing.extras import Extras
from shared.billing.lot import Asked, Credit
from shared.billing.rates import Charge
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from tests.desktop.office.ready_orders import RATES, handed_over

STORAGE = Charge("storage", "per_day", Fraction(200), asked=True, falls_to="producer")
DELIVERY = Charge("delivery", "flat", Fraction(2500), asked=True)
FIRST = Extras((Asked("storage", Fraction(8)), Asked("delivery", Fraction(1))))
OTHER = Extras((Asked("storage", Fraction(6)),), (Credit("waited an hour", 500),))


def said(store: Store, signed: SignedOn, own_share: bool) -> tuple[int, int]:
    """Two owners who each asked for storage, which falls to the producer; their orders' ids."""
    first = handed_over(store, signed, rates=False, producer="" if own_share else "Dora Lind")
    with store.work(signed.person, signed.station) as work:
        kill = replace(RATES.charges[0], falls_to="producer")
        work.rates.save(replace(RATES, charges=(kill, RATES.charges[1], STORAGE, DELIVERY)))
        one, two = sorted(order.id for order in work.orders.of_lot(first.lot_id))
        work.extras.say(one, FIRST, 0)
        work.extras.say(two, OTHER, 0)
        work.commit()
    return one, two


def of(bench: Bench, order_id: int) -> Billing:
    found = read_billing(bench.store, order_id)
    assert found is not None
    return found


def stands(store: Store, *orders: int) -> list[Extras]:
    with store.read() as work:
        return [work.extras.of(one).extras for one in orders]


def test_the_producers_bill_credited_gives_back_to_each_order_what_it_took(
    bench: Bench, store: Store, signed: SignedOn
) -> None:
    """14 days of storage at $2 and the kill of $60: $88, credited, and $88 again."""
    one, two = said(store, signed, own_share=False)
    owners = issuing.issue(bench, of(bench, one))
    assert isinstance(owners, IssuedBill)
    his = of(bench, one).producers
    assert his is not None
    made = issuing.issue(bench, his)
    assert isinstance(made, IssuedBill)
    assert made.total_cents == 6000 + 14 * 200
    assert stands(store, one, two) == [Extras(), Extras((), OTHER.credits)]
    his = of(bench, one).producers
    assert his is not None
    assert not his.has_next
    note = issuing.credit(bench, his, "the wrong producer", "", None)
    assert isinstance(note, IssuedBill)
    assert stands(store, one, two) == [Extras(FIRST.asked[:1]), OTHER]
    his = of(bench, one).producers
    assert his is not None
    assert isinstance(his.next_bill, Bill)
    again = issuing.issue(bench, his)
    assert isinstance(again, IssuedBill)
    assert again.total_cents == made.total_cents
    assert stands(store, one, two) == [Extras(), Extras((), OTHER.credits)]


def test_what_was_said_again_meanwhile_is_not_doubled(
    bench: Bench, store: Store, signed: SignedOn
) -> None:
    one, two = said(store, signed, own_share=False)
    his = of(bench, one).producers
    assert his is not None
    assert isinstance(issuing.issue(bench, his), IssuedBill)
    with store.work(signed.person, signed.station) as work:
        before = work.extras.of(one)
        longer = Extras((Asked("storage", Fraction(9)), Asked("delivery", Fraction(1))))
        work.extras.say(one, longer, before.id)
        work.commit()
    his = of(bench, one).producers
    assert his is not None
    assert isinstance(issuing.credit(bench, his, "wrong", "", None), IssuedBill)
    assert stands(store, one, two) == [longer, OTHER]


@pytest.mark.parametrize("credited_first", [True, False])
def test_a_producer_with_a_share_gives_back_the_others_days_too(
    bench: Bench, store: Store, signed: SignedOn, credited_first: bool
) -> None:
    """His own bill carries the storage of both; credited, each order has its days again."""
    one, two = said(store, signed, own_share=True)
    with store.read() as work:
        order = work.orders.get(one)
        assert order is not None
        lot = work.lots.get(order.lot_id)
        assert lot is not None
        share = next(each.number for each in lot.shares if each.customer_id == lot.producer_id)
        orders = {each.share: each.id for each in work.orders.of_lot(lot.id)}
    mine = orders[share]
    made = issuing.issue(bench, of(bench, mine))
    assert isinstance(made, IssuedBill)
    if not credited_first:
        other = two if mine == one else one
        assert isinstance(issuing.issue(bench, of(bench, other)), IssuedBill)
    note = issuing.credit(bench, of(bench, mine), "wrong", "", None)
    assert isinstance(note, IssuedBill)
    left = stands(store, one, two)
    assert [{a.code: a.quantity for a in each.asked}.get("storage") for each in left] == [8, 6]
    again = issuing.issue(bench, of(bench, mine))
    assert isinstance(again, IssuedBill)
    assert again.total_cents == made.total_cents
