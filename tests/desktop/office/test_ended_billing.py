"""What is billed of an animal that ended before it was cut, through the store, the books balanced.

Kill and cutting as small plants charge them: kill by the head, cutting by the hot pound, disposal
$10-12 a head where it is charged at all (MSU Extension, July 2013). That killed meat which is
condemned owes the kill and no cutting, and what never was killed owes neither: common practice, no
source.
"""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest

from db.store import Store
from db.unit_of_work import Work
from desktop.office.billing import Billing, read_billing
from printing.bill import ended_notes
from printing.words import Words
from shared.billing.bill import Bill
from shared.billing.rates import AppliesTo, Charge, RateCard
from shared.shop.animals import Animal
from shared.shop.lots import Lot
from shared.shop.money import IssuedBill, Payment
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from shared.shop.problems import NotClosed
from tests.db.examples import (
    GROUND,
    HAM,
    arrived,
    issued_pdf,
    line,
    lot_of_halves,
    moved,
    order_of,
    weighed,
)

KILL = Charge("kill", "per_head", Fraction(6000))
CUT = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
SEASON = Charge("sausage", "per_lb_in", Fraction(95), applies_to=AppliesTo(cuts=("ground",)))
BAGS = Charge("package", "per_package", Fraction(35))
DISPOSAL = Charge("disposal", "per_head", Fraction(1200))
CARD = RateCard("usual", "Usual", date(2026, 1, 1), charges=(KILL, CUT, SEASON, BAGS, DISPOSAL))


def lot(work: Work, card: RateCard = CARD, regime: str = "custom") -> Lot:
    """Anna's and Bert's halves of a hog with lines on both orders; Anna has paid $50 down."""
    work.rates.save(card)
    made = lot_of_halves(work)
    if regime == "inspected":
        saved = work.lots.save_details(replace(made, regime="inspected"))
        assert isinstance(saved, Lot)
        made = saved
    for share in (1, 2):
        order = order_of(work, made, share)
        line(work, order, HAM)
        line(work, order, GROUND)
    taken = work.payments.take(order_of(work, made).id, "deposit", "check", 5000, "1188")
    assert isinstance(taken, Payment)
    return made


def gone(work: Work, animal: Animal, state: str, reason: str = "down") -> None:
    seen = work.animals.get(animal.id)
    assert seen is not None
    found = work.animals.move(animal.id, state, reason=reason, version=seen.version)  # pyright: ignore[reportArgumentType]
    assert isinstance(found, Animal), found


def read(store: Store, lot: Lot, share: int = 1) -> Billing:
    with store.read() as work:
        order = order_of(work, lot, share)
    found = read_billing(store, order.id)
    assert found is not None
    return found


def lines(billing: Billing) -> list[tuple[str, str, int]]:
    assert isinstance(billing.next_bill, Bill), billing.next_bill
    return [(one.code, one.kind, one.amount_cents) for one in billing.next_bill.lines]


def said(billing: Billing) -> list[str]:
    assert isinstance(billing.next_bill, Bill)
    return list(ended_notes(billing.next_bill, Words("en")))


def books(work: Work) -> dict[str, int]:
    """The accounts by their cents; every entry adds up to nothing."""
    sums: dict[str, int] = {}
    for entry in work.ledger.entries(date(2000, 1, 1), date(2100, 1, 1)):
        assert sum(one.cents for one in entry.lines) == 0
        for one in entry.lines:
            sums[one.account] = sums.get(one.account, 0) + one.cents
    return {account: cents for account, cents in sums.items() if cents}


def test_refused_at_the_pen_owes_disposal_only_and_nothing_waits(
    store: Store, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        made = lot(work)
        gone(work, arrived(work, made), "refused", "dead in the pen")
        work.commit()
    assert lines(read(store, made)) == [("disposal", "charge", 600)]
    assert lines(read(store, made, 2)) == [("disposal", "charge", 600)]
    assert said(read(store, made)) == [
        "Tag 114 was refused at the pen: no kill and no cutting is charged."
    ]


def test_without_disposal_on_the_card_nothing_is_billed_and_the_deposit_is_paid_out(
    store: Store, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        made = lot(work, replace(CARD, charges=(KILL, CUT, SEASON, BAGS)))
        gone(work, arrived(work, made), "refused")
        work.commit()
    billing = read(store, made)
    assert lines(billing) == []
    assert not billing.has_next
    assert billing.balance.due == -5000
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, made)
        assert order.id in work.bills.to_bill(("ready",))
        open_still = work.orders.close(order.id, version=order.version)
        assert isinstance(open_still, NotClosed)
        assert open_still.codes == ("balance",)
        back = work.payments.take(order.id, "refund", "check", 5000, "refused at the pen")
        assert isinstance(back, Payment)
        assert work.payments.balance(order.id).due == 0
        assert books(work) == {}
        assert isinstance(work.orders.close(order.id, version=order.version), Order)


def test_condemned_before_the_kill_owes_disposal_only(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        made = lot(work, regime="inspected")
        gone(work, arrived(work, made), "condemned", "dead in the pen (9 CFR 309.3)")
        work.commit()
    assert lines(read(store, made)) == [("disposal", "charge", 600)]
    assert said(read(store, made)) == [
        "Tag 114 was condemned before the kill: no kill and no cutting is charged."
    ]


@pytest.mark.parametrize("hot", ["187", ""])
def test_condemned_after_the_kill_owes_kill_and_disposal_and_no_pound_waits(
    store: Store, signed: SignedOn, hot: str
) -> None:
    """With a hot weight, or taken off before the scale: the kill day says it was killed."""
    with store.work(signed.person, signed.station) as work:
        made = lot(work, regime="inspected")
        animal = arrived(work, made)
        if hot:
            weighed(work, animal, hot)
        else:
            killed = work.animals.change(replace(animal, killed_on=date(2026, 3, 9)))
            assert isinstance(killed, Animal)
        gone(work, animal, "condemned", "septicemia")
        work.commit()
    billing = read(store, made)
    assert lines(billing) == [("kill", "charge", 3000), ("disposal", "charge", 600)]
    assert said(billing) == [
        "Tag 114 was condemned after the kill: the kill is charged, cutting is not."
    ]


def test_what_was_paid_down_above_the_kill_is_owed_back_and_the_books_balance(
    store: Store, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        made = lot(work, regime="inspected")
        animal = arrived(work, made)
        weighed(work, animal, "187")
        gone(work, animal, "condemned", "septicemia")
        work.commit()
    bill = read(store, made).next_bill
    assert isinstance(bill, Bill)
    assert (bill.total_cents, bill.due_cents) == (3600, -1400)
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, made)
        issued = work.bills.issue(
            order.id,
            total_cents=bill.total_cents,
            snapshot="{}",
            pdf=issued_pdf,
            lines=bill.lines,
        )
        assert isinstance(issued, IssuedBill)
        assert work.payments.balance(order.id).due == -1400
        back = work.payments.take(order.id, "refund", "check", 1400, "condemned")
        assert isinstance(back, Payment)
        assert work.payments.balance(order.id).due == 0
        assert books(work) == {"money:check": 3600, "income": -3600}
        assert isinstance(work.orders.close(order.id, version=order.version), Order)


def test_killed_by_the_pound_is_owed_on_the_weight_there_is(store: Store, signed: SignedOn) -> None:
    by_the_pound = Charge("kill", "per_lb_hot", Fraction(20))
    with store.work(signed.person, signed.station) as work:
        made = lot(work, replace(CARD, charges=(by_the_pound, CUT)), regime="inspected")
        animal = arrived(work, made)
        weighed(work, animal, "187")
        gone(work, animal, "condemned", "septicemia")
        work.commit()
    assert lines(read(store, made)) == [("kill", "charge", 1870)]


def test_one_that_goes_on_is_billed_as_ever(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        made = lot(work)
        moved(work, arrived(work, made).id)
        order = order_of(work, made)
        assert order.id not in work.bills.to_bill(("ready",))
        work.commit()
    billing = read(store, made)
    assert [one for one in lines(billing) if one[1] == "charge"] == [
        ("kill", "charge", 3000),
        ("disposal", "charge", 600),
    ]
    assert ("cut_and_wrap", "waiting", 0) in lines(billing)
    assert said(billing) == []
