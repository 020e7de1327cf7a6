"""Bills and credits: kept as issued, numbered, never billed twice; balances to the cent."""

from dataclasses import replace
from fractions import Fraction

import pytest

from db.store import Store
from db.unit_of_work import Work
from shared.billing.bill import Bill, BillLine, make_bill, make_producer_bill
from shared.billing.division import new_divisions
from shared.billing.lot import BilledLot, Division
from shared.billing.problems import BillingProblem
from shared.billing.rates import AppliesTo, Charge
from shared.billing.snapshot import snapshot
from shared.shop.money import Balance, IssuedBill, Payment
from shared.shop.people import SignedOn
from shared.shop.problems import Refused
from tests.db.examples import issued_pdf, lot_of_halves, lot_of_one, order_of
from tests.shared.billing.lots import HALVES, good, hung, lot_of, smoked
from tests.store_fixture import Clock


def bill_line(key: str, cents: int) -> BillLine:
    code = key.partition(":")[0]
    return BillLine(
        key=key,
        code=code,
        name="",
        kind="charge",
        basis="per_lb_hot",
        animal=1,
        tag="114",
        quantity=Fraction(185, 2),
        unit="lb",
        rate=Fraction(143, 2),
        rule="",
        amount_cents=cents,
    )


def issued(work: Work, order_id: int, cents: int, *lines: BillLine) -> IssuedBill:
    made = work.bills.issue(
        order_id, total_cents=cents, snapshot='{"bill":1}', pdf=issued_pdf, lines=lines
    )
    assert isinstance(made, IssuedBill), made
    return made


def test_a_bill_is_kept_with_its_paper(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    bill = issued(work, order.id, 313_030)
    assert (bill.number, bill.total_cents, bill.customer_id) == (1, 313_030, order.customer_id)
    assert (bill.issued_at, bill.person, bill.credits) == (work.now, "Test", None)
    paper = work.papers.get(bill.paper_id)
    assert paper is not None
    assert (paper.kind, paper.number, paper.pdf) == ("bill", 1, b"%PDF bill 1")
    assert paper.snapshot == '{"bill":1}'
    assert work.bills.get(bill.id) == bill
    assert work.bills.of_order(order.id) == (bill,)


def test_a_line_is_billed_once_unless_credited(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    fresh = issued(work, order.id, 7000, bill_line("kill:1", 2000), bill_line("wrap:1", 5000))
    again = work.bills.issue(
        order.id, total_cents=1, snapshot="{}", pdf=issued_pdf, lines=(bill_line("kill:1", 1),)
    )
    assert again == Refused("already_billed", {"keys": "kill:1"})
    cured = issued(work, order.id, 900, bill_line("smoke:0", 900))
    assert (fresh.number, cured.number) == (1, 2)
    assert work.bills.billed_keys(order.id, order.lot_id) == {"kill:1", "wrap:1", "smoke:0"}
    work.bills.credit(fresh.id, total_cents=7000, reason="x", snapshot="{}", pdf=issued_pdf)
    assert work.bills.billed_keys(order.id, order.lot_id) == {"smoke:0"}
    assert issued(work, order.id, 6900, bill_line("kill:1", 6900)).number == 3


def test_a_line_that_waits_is_billed_later(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    waiting = replace(bill_line("smoke:0", 0), kind="waiting", quantity=None, waits_for="packages")
    issued(work, order.id, 2000, bill_line("kill:1", 2000), waiting)
    assert work.bills.billed_keys(order.id, order.lot_id) == {"kill:1"}
    assert issued(work, order.id, 900, bill_line("smoke:0", 900)).number == 2


def test_a_refused_bill_takes_no_number(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, lot_of_halves(work))
        issued(work, order.id, 1, bill_line("kill:1", 1))
        work.bills.issue(
            order.id, total_cents=1, snapshot="", pdf=issued_pdf, lines=(bill_line("kill:1", 1),)
        )
        work.commit()
    with store.work(signed.person, signed.station) as work:
        assert issued(work, order.id, 1).number == 2


def test_a_paper_that_cannot_be_made_takes_no_number(store: Store, signed: SignedOn) -> None:
    """The printer's fault comes while the number is taken; both go together."""

    def fail(number: int) -> bytes:
        raise ValueError(f"no paper for {number}")

    def issue_badly() -> None:
        with store.work(signed.person, signed.station) as work:
            order = order_of(work, lot_of_halves(work))
            work.bills.issue(order.id, total_cents=1, snapshot="", pdf=fail)
            work.commit()

    with pytest.raises(ValueError, match="no paper for 1"):
        issue_badly()
    with store.work(signed.person, signed.station) as work:
        assert issued(work, order_of(work, lot_of_halves(work)).id, 1).number == 1


def test_credits_have_their_own_numbers_and_never_exceed_the_bill(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    bill = issued(work, order.id, 1000)

    def credit(cents: int, reason: str = "overcharged", of: int = bill.id) -> object:
        return work.bills.credit(
            of, total_cents=cents, reason=reason, snapshot="{}", pdf=issued_pdf
        )

    first = credit(400)
    assert isinstance(first, IssuedBill)
    assert (first.number, first.credits, first.reason) == (1, bill.id, "overcharged")
    assert credit(601) == Refused("more_than_billed", {"left": "600"})
    assert credit(0) == Refused("not_positive")
    assert credit(10, " ") == Refused("reason_missing")
    assert credit(10, of=first.id) == Refused("no_such_bill")
    assert credit(10, of=99) == Refused("no_such_bill")
    second = credit(600)
    assert isinstance(second, IssuedBill)
    assert second.number == 2
    assert work.payments.balance(order.id) == Balance(1000, 1000, 0, 0, 5000)


def test_the_first_division_holds(work: Work) -> None:
    lot = lot_of_halves(work)
    anna, bert = order_of(work, lot, 1), order_of(work, lot, 2)
    first = (Division("kill:1", 1, 3334), Division("kill:1", 2, 3333))
    work.bills.issue(anna.id, total_cents=1, snapshot="", pdf=issued_pdf, divisions=first)
    late = (Division("kill:1", 1, 1), Division("wrap:1", 2, 5))
    work.bills.issue(bert.id, total_cents=1, snapshot="", pdf=issued_pdf, divisions=late)
    assert work.bills.divisions(lot.id) == (*first, late[1])


def test_the_producers_own_bill_has_no_order(work: Work) -> None:
    lot = lot_of_halves(work)
    bill = work.bills.issue(None, lot_id=lot.id, total_cents=2500, snapshot="{}", pdf=issued_pdf)
    assert isinstance(bill, IssuedBill)
    assert (bill.order_id, bill.customer_id) == (None, lot.producer_id)
    paid = work.payments.take(None, "payment", "cash", 1000, lot_id=lot.id)
    assert isinstance(paid, Payment)
    assert work.payments.producer_balance(lot.id).due == 1500
    assert work.payments.balance(order_of(work, lot).id).due == 0
    assert work.bills.of_lot(lot.id) == (bill,)
    assert [one.order_number for one in work.bills.list()] == [None]


def test_a_balance_step_by_step(work: Work) -> None:
    """Hand-worked: deposit 50, bill 123.45, credit 3.45, checks 60 and 12, refund 2."""
    order = order_of(work, lot_of_halves(work))
    assert work.payments.balance(order.id) == Balance(0, 0, 0, 0, 5000)
    work.payments.take(order.id, "deposit", "cash", 5000)
    assert work.payments.balance(order.id).due == -5000
    bill = issued(work, order.id, 12_345)
    assert work.payments.balance(order.id).due == 7345
    work.bills.credit(bill.id, total_cents=345, reason="x", snapshot="", pdf=issued_pdf)
    assert work.payments.balance(order.id).due == 7000
    work.payments.take(order.id, "payment", "check", 6000)
    work.payments.take(order.id, "payment", "check", 1200)
    assert work.payments.balance(order.id).due == -200
    work.payments.take(order.id, "refund", "cash", 200, "overpaid")
    assert work.payments.balance(order.id) == Balance(12_345, 345, 5000, 7000, 5000)
    assert work.payments.balance(order.id).due == 0


def test_payments_are_numbered_and_a_refund_says_why(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    assert work.payments.take(order.id, "payment", "cash", 0) == Refused("not_positive")
    for kind in ("refund", "write_off"):
        assert work.payments.take(order.id, kind, "cash", 5) == Refused("reason_missing")
    made = [work.payments.take(order.id, "payment", "cash", 5) for _ in range(3)]
    assert [one.number for one in made if isinstance(one, Payment)] == [1, 2, 3]
    assert work.payments.of_order(order.id) == tuple(made)
    assert work.payments.of_lot(order.lot_id) == tuple(made)


def test_the_list_is_sorted_and_filtered(store: Store, signed: SignedOn, clock: Clock) -> None:
    for name, cents in (("Cleo", 300), ("Ada", 100), ("Ben", 200)):
        with store.work(signed.person, signed.station) as work:
            issued(work, order_of(work, lot_of_one(work, name)).id, cents)
            work.commit()
        clock.pass_by(days=1)
    with store.read() as reading:
        rows = reading.bills.list()
        assert [(one.number, one.customer, one.due_cents) for one in rows] == [
            (1, "Cleo", 300),
            (2, "Ada", 100),
            (3, "Ben", 200),
        ]
        assert [one.number for one in reading.bills.list(sort="customer")] == [2, 3, 1]
        top = reading.bills.list(sort="total", descending=True, limit=2)
        assert [one.number for one in top] == [1, 3]
        assert [one.number for one in reading.bills.list(text="ada")] == [2]
        assert [one.number for one in reading.bills.list(text="3")] == [3]
        second = rows[1].issued_at.date()
        assert [one.number for one in reading.bills.list(start=second)] == [2, 3]
        assert [one.number for one in reading.bills.list(end=second)] == [1, 2]


def test_fresh_goods_are_billed_first_and_cured_ones_on_a_second_bill(work: Work) -> None:
    """Two halves; each is billed for kill and cutting at once, for smoking when it is made."""
    order = order_of(work, lot_of_halves(work))
    charges = (
        Charge("kill", "per_head", Fraction(5_001)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(70)),
        Charge(
            "smoke", "per_lb_finished", Fraction(111), applies_to=AppliesTo(finishes=("smoked",))
        ),
    )
    half_made = ((smoked("9.5", complete=False),), (smoked("10"),))
    fresh = lot_of(hung("92.5", "94"), HALVES, *charges, made=half_made)
    first = issued_from(work, order.id, fresh)
    assert [(one.key, one.kind) for one in first.lines] == [
        ("kill:1", "charge"),
        ("cut_and_wrap:1", "charge"),
        ("smoke:0", "waiting"),
    ]
    made = ((smoked("10.25"),), (smoked("10"),))
    cured = lot_of(hung("92.5", "94"), HALVES, *charges, made=made)
    second = issued_from(work, order.id, cured)
    assert [(one.key, one.amount_cents) for one in second.lines] == [("smoke:0", 1_138)]
    assert [one.number for one in work.bills.of_order(order.id)] == [1, 2]
    whole = good(make_bill(cured, 1))
    assert first.total_cents + second.total_cents == whole.total_cents
    assert work.payments.balance(order.id).billed == whole.total_cents


def issued_from(work: Work, order_id: int, lot: BilledLot) -> Bill:
    """Share 1's next bill of a lot, issued with what it divides."""
    order = work.orders.get(order_id)
    assert order is not None
    lot = replace(lot, kept=work.bills.divisions(order.lot_id))
    already = work.bills.billed_keys(order_id, order.lot_id)
    bill, divisions = good(make_bill(lot, 1, already=already)), new_divisions(lot)
    assert not isinstance(divisions, BillingProblem)
    found = work.bills.issue(
        order_id,
        total_cents=bill.total_cents,
        snapshot=snapshot(bill),
        pdf=issued_pdf,
        lines=bill.lines,
        divisions=divisions,
    )
    assert isinstance(found, IssuedBill), found
    return bill


def test_what_falls_to_a_producer_without_a_share_is_a_bill_of_his_own(work: Work) -> None:
    lot = lot_of_halves(work)
    charge = Charge("disposal", "per_head", Fraction(1_200), falls_to="producer")
    billed = lot_of(hung("92.5", "94"), HALVES, charge)
    bill = good(make_producer_bill(billed))
    made = work.bills.issue(
        None,
        lot_id=lot.id,
        total_cents=bill.total_cents,
        snapshot=snapshot(bill),
        pdf=issued_pdf,
        lines=bill.lines,
    )
    assert isinstance(made, IssuedBill)
    assert (made.order_id, made.customer_id, made.total_cents) == (None, lot.producer_id, 1_200)
    assert work.payments.producer_balance(lot.id).due == 1_200
    work.payments.take(None, "payment", "check", 1_200, lot_id=lot.id)
    assert work.payments.producer_balance(lot.id).due == 0
    assert work.books.receivables() == ()
