"""A day's bills are read lot by lot: an order more of a lot asks the store little."""

from sqlalchemy import event

from db.store import Store
from desktop.office.billing import BillingReader, read_billing
from desktop.office.day_bills import read_day
from desktop.office.progress import Steps
from shared.shop.people import SignedOn
from tests.desktop.office.ready_orders import handed_over

OF_AN_ORDER = 6
"""Its customer, what is stored and since when, its last bill's paper; the rest is the lot's."""


def test_an_order_more_of_a_lot_asks_little(store: Store, signed: SignedOn) -> None:
    first = handed_over(store, signed)
    asked: list[str] = []

    def count(*args: object) -> None:
        asked.append(str(args[2]))

    with store.read() as work:
        reader = BillingReader(work)
        event.listen(store._engine, "before_cursor_execute", count)
        try:
            one = reader.read(first.id)
            whole, asked[:] = len(asked), []
            other = reader.read(first.id + 1)
        finally:
            event.remove(store._engine, "before_cursor_execute", count)
    assert one is not None
    assert other is not None
    assert one.billed is other.billed
    assert whole > 20
    assert len(asked) <= OF_AN_ORDER


def test_read_together_and_alone_are_the_same(store: Store, signed: SignedOn) -> None:
    handed_over(store, signed, producer="Carl Dahl")
    handed_over(store, signed, rates=False)
    bills = read_day(store, Steps()).bills
    assert len(bills) == 5
    for one in bills:
        alone = read_billing(store, one.billing.order.id)
        assert alone is not None
        assert one.billing == (alone.producers if one.billing.for_producer else alone)
        with store.read() as work:
            assert one.billing.balance == (
                work.payments.producer_balance(alone.lot.id)
                if one.billing.for_producer
                else work.payments.balance(alone.order.id)
            )
