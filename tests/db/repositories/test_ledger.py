"""The books: every happening balances, nothing is changed, and what customers owe is right."""

from datetime import date
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import text

from db.problems import StoreBug, StoreUnavailable
from db.store import Store
from db.unit_of_work import Work
from shared.billing.bill import BillLine
from shared.billing.credit_note import CreditLine
from shared.shop.ledger import DrawerCount, Entry, EntryLine
from shared.shop.money import IssuedBill, Payment, balance_of
from shared.shop.people import SignedOn
from shared.shop.problems import Refused
from tests.db.examples import customer, issued_pdf, lot_of_halves, order_of
from tests.store_fixture import Clock

TODAY = date(2026, 3, 2)
LONG_AGO, FAR_OFF = date(2000, 1, 1), date(2100, 1, 1)


def taxed(code: str, cents: int, rate: str = "0", tax: int = 0) -> BillLine:
    return BillLine(
        key=f"{code}:1",
        code=code,
        name="",
        kind="charge",
        basis="flat",
        animal=1,
        tag="",
        quantity=Fraction(1),
        unit="each",
        rate=Fraction(cents),
        rule="",
        amount_cents=cents,
        tax_rate=Fraction(rate),
        tax_cents=tax,
    )


def issue(work: Work, order_id: int, *lines: BillLine) -> IssuedBill:
    total = sum(one.amount_cents + one.tax_cents for one in lines)
    made = work.bills.issue(order_id, total_cents=total, snapshot="{}", pdf=issued_pdf, lines=lines)
    assert isinstance(made, IssuedBill), made
    return made


def journal(work: Work) -> tuple[Entry, ...]:
    return work.ledger.entries(LONG_AGO, FAR_OFF)


def shown(entry: Entry) -> list[tuple[str, int]]:
    return [(one.account, one.cents) for one in entry.lines]


def test_a_bill_earns_income_and_tax_and_uses_the_deposit(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    work.payments.take(order.id, "deposit", "check", 5_000)
    bill = issue(work, order.id, taxed("kill", 10_000), taxed("smoke", 2_000, "3/50", 120))
    deposit, billed = journal(work)
    assert shown(deposit) == [("money:check", 5_000), ("deposits", -5_000)]
    assert (billed.kind, billed.day, billed.number, billed.person) == (
        "bill",
        TODAY,
        bill.number,
        "Test",
    )
    assert billed.lines == (
        EntryLine("receivable", 12_120, customer="Anna Berg"),
        EntryLine("income", -10_000, "kill", "pork", None, "Anna Berg"),
        EntryLine("income", -2_000, "smoke", "pork", Fraction(3, 50), "Anna Berg"),
        EntryLine("tax", -120, "smoke", "pork", Fraction(3, 50), "Anna Berg"),
        EntryLine("deposits", 5_000, customer="Anna Berg"),
        EntryLine("receivable", -5_000, customer="Anna Berg"),
    )
    assert work.books.balances()["receivable"] == work.payments.balance(order.id).due == 7_120


def test_a_deposit_above_the_bill_stays_held_until_given_back(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    work.payments.take(order.id, "deposit", "cash", 20_000)
    issue(work, order.id, taxed("kill", 12_500))
    assert work.books.balances()["deposits"] == -7_500
    assert [(one.customer, one.order_number, one.cents) for one in work.books.deposits()] == [
        ("Anna Berg", order.number, 7_500)
    ]
    work.payments.take(order.id, "refund", "cash", 7_500, "deposit too high")
    assert work.books.deposits() == ()
    assert work.books.receivables() == ()
    assert work.ledger.in_drawer() == 12_500


def test_a_credit_takes_income_and_tax_back_where_they_were_earned(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    bill = issue(work, order.id, taxed("kill", 10_000), taxed("smoke", 2_000, "3/50", 120))
    work.bills.credit(
        bill.id,
        total_cents=1_060,
        reason="smoked too long",
        snapshot="{}",
        pdf=issued_pdf,
        lines=(CreditLine("smoke:1", "smoke", "", "", 1_000, 60),),
    )
    assert journal(work)[-1].memo == "smoked too long"
    assert [(one.rate, one.net_cents, one.tax_cents) for one in work.books.tax(TODAY, TODAY)] == [
        (Fraction(0), 10_000, 0),
        (Fraction(3, 50), 1_000, 60),
    ]
    assert [(one.code, one.cents) for one in work.books.income(TODAY, TODAY)] == [
        ("kill", 10_000),
        ("smoke", 1_000),
    ]
    assert work.books.tax(date(2026, 3, 3), FAR_OFF) == ()


def test_takings_by_day_and_means_and_who_owes_since_when(
    store: Store, signed: SignedOn, clock: Clock
) -> None:
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_halves(work)
        first, second = order_of(work, lot), order_of(work, lot, 2)
        issue(work, first.id, taxed("kill", 10_000))
        issue(work, second.id, taxed("kill", 3_000))
        work.payments.take(second.id, "payment", "cash", 3_000)
        work.commit()
    clock.pass_by(days=40)
    with store.work(signed.person, signed.station) as work:
        issue(work, first.id, taxed("smoke", 5_000))
        work.payments.take(first.id, "payment", "card", 6_000)
        work.payments.take(first.id, "payment", "cash", 500)
        work.payments.take(first.id, "write_off", "other", 100, "goodwill")
        work.commit()
    later = date(2026, 4, 11)
    with store.read() as work:
        assert [(one.day, one.means, one.cents) for one in work.books.takings(TODAY, later)] == [
            (TODAY, "cash", 3_000),
            (later, "card", 6_000),
            (later, "cash", 500),
        ]
        owed = work.books.receivables(later)
        assert [(one.customer, one.cents, one.since, one.ages, one.orders) for one in owed] == [
            ("Anna Berg", 8_400, TODAY, (5_000, 3_400, 0, 0), (first.number,))
        ]
        assert sum(work.books.balances().values()) == 0


def test_several_payers_of_one_order_have_receipts_of_their_own(work: Work) -> None:
    lot = lot_of_halves(work)
    order, mother = order_of(work, lot), customer(work, "Clara Berg", "(555) 010-0789")
    issue(work, order.id, taxed("kill", 10_000))
    own = work.payments.take(order.id, "payment", "cash", 4_000)
    hers = work.payments.take(order.id, "payment", "check", 5_000, payer_id=mother.id)
    assert isinstance(own, Payment)
    assert isinstance(hers, Payment)
    assert (own.customer_id, hers.customer_id) == (order.customer_id, mother.id)
    assert [(one.customer, one.cents) for one in work.books.receivables(TODAY)] == [
        ("Anna Berg", 1_000)
    ]


def test_who_owns_the_share_now_owes_and_has_deposited(work: Work) -> None:
    """Anna booked and deposited; the half went to Clara before it was billed."""
    lot = lot_of_halves(work)
    order, clara = order_of(work, lot), customer(work, "Clara Berg", "(555) 010-0789")
    work.payments.take(order.id, "deposit", "cash", 5_000)
    raw(work, f"UPDATE shares SET customer_id = {clara.id} WHERE number = 1")
    assert [(one.customer, one.cents) for one in work.books.deposits()] == [("Clara Berg", 5_000)]
    issue(work, order.id, taxed("kill", 10_000))
    assert work.books.deposits() == ()
    assert [(one.customer, one.cents) for one in work.books.receivables(TODAY)] == [
        ("Clara Berg", 5_000)
    ]


def test_an_opening_balance_is_owed_and_paid_on_account(work: Work) -> None:
    anna = customer(work)
    opened = work.ledger.open_with(
        "receivable", 8_000, customer_id=anna.id, day=date(2025, 12, 31), note="old book"
    )
    assert isinstance(opened, Entry)
    assert shown(opened) == [("receivable", 8_000), ("opening", -8_000)]
    assert work.books.receivables(TODAY)[0].since == date(2025, 12, 31)
    too_much = work.ledger.receive(anna.id, "check", 8_001)
    assert too_much == Refused("more_than_due", {"due": "8000"})
    taken = work.ledger.receive(anna.id, "check", 3_000, "first part")
    assert isinstance(taken, Entry)
    assert (taken.kind, taken.number) == ("on_account", 1)
    assert work.ledger.owed_from_before(anna.id) == 5_000
    assert work.books.takings(TODAY, TODAY)[0].cents == 3_000


@pytest.mark.parametrize(
    ("account", "cents", "day", "code"),
    [
        ("income", 100, None, "not_openable"),
        ("receivable", 100, None, "customer_missing"),
        ("bank", 0, None, "nothing"),
        ("bank", 100, date(2026, 3, 3), "not_yet"),
    ],
)
def test_an_opening_balance_that_cant_be_is_said(
    work: Work, account: str, cents: int, day: date | None, code: str
) -> None:
    found = work.ledger.open_with(account, cents, day=day)  # type: ignore[arg-type]
    assert isinstance(found, Refused)
    assert found.code == code


def test_a_deposit_from_before_is_held_but_not_taken_today(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    taken = work.payments.take(order.id, "deposit", "other", 5_000, "old book", from_before=True)
    assert isinstance(taken, Payment)
    assert work.books.takings(TODAY, TODAY) == ()
    assert work.books.deposits()[0].cents == 5_000
    assert work.payments.balance(order.id).deposits == 5_000


def test_the_drawer_is_counted_and_a_difference_needs_a_reason(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    work.ledger.move_cash(-10_000, "change for the week")
    work.payments.take(order.id, "deposit", "cash", 5_000)
    assert work.ledger.in_drawer() == 15_000
    assert work.ledger.count_drawer(14_800) == Refused("reason_missing", {"difference": "-200"})
    count = work.ledger.count_drawer(14_800, "wrong change given")
    assert isinstance(count, DrawerCount)
    assert (count.expected_cents, count.counted_cents, count.difference) == (15_000, 14_800, -200)
    assert work.ledger.in_drawer() == 14_800
    assert work.books.balances()["drawer"] == 200
    moved = work.ledger.move_cash(14_000, "to the bank")
    assert isinstance(moved, Entry)
    assert work.ledger.move_cash(801, "x") == Refused("more_than_there", {"there": "800"})
    assert work.ledger.move_cash(1, " ") == Refused("reason_missing")
    same = work.ledger.count_drawer(800)
    assert isinstance(same, DrawerCount)
    assert journal(work)[-1].kind == "cash_moved"  # a count that agrees moves nothing
    assert [one.counted_cents for one in work.ledger.counts(TODAY, TODAY)] == [14_800, 800]
    assert work.books.takings(TODAY, TODAY)[0].cents == 5_000  # change isn't takings


def test_what_is_collected_for_a_producer_is_never_the_plants(work: Work) -> None:
    """819 lb at the farmer's $3.00 (Michigan State Univ. Extension worksheet, 1 April 2024)."""
    farmer = customer(work, "Green Farm")
    taken = work.ledger.collect(farmer.id, "check", 245_700, "Anna Berg, tag 114")
    assert isinstance(taken, Entry)
    assert (taken.kind, taken.number) == ("collected", 1)
    assert work.ledger.held_for(farmer.id) == 245_700
    assert work.books.income(TODAY, TODAY) == ()
    assert work.books.receivables(TODAY) == ()
    too_much = work.ledger.pay_out(farmer.id, "check", 245_701)
    assert too_much == Refused("more_than_there", {"there": "245700"})
    given_out = work.ledger.pay_out(farmer.id, "check", 245_700)
    assert isinstance(given_out, Entry)
    assert shown(given_out) == [("money:check", -245_700), ("producers", 245_700)]
    assert work.ledger.held_for(farmer.id) == 0
    assert work.ledger.collect(farmer.id, "cash", 0) == Refused("not_positive")


def raw(work: Work, sql: str) -> None:
    work._connection.execute(text(sql))


ENTRY = (
    "INSERT INTO ledger_entries (id, kind, day, number, memo, at, person_id, station_id)"
    " VALUES ({0}, 'opening', '{1}', 0, '', '', 1, 1)"
)
POSTING = (
    "INSERT INTO ledger_postings (entry_id, position, account, cents, day, code, species)"
    " VALUES ({0}, {1}, 'bank', {2}, '2026-03-02', '', '')"
)


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        ((POSTING.format(99, 1, 5), ENTRY.format(99, TODAY)), "debits and credits differ"),
        ((ENTRY.format(99, TODAY),), "debits and credits differ"),
        (
            (
                POSTING.format(99, 1, 5),
                POSTING.format(99, 2, -5),
                ENTRY.format(99, "2026-03-01"),
            ),
            "a posting has another day",
        ),
        ((POSTING.format(1, 9, 5),), "the entry is made already"),
    ],
)
def test_the_store_itself_refuses_what_doesnt_balance(
    work: Work, rows: tuple[str, ...], said: str
) -> None:
    work.ledger.open_with("bank", 100)

    def write() -> None:
        for row in rows:
            raw(work, row)

    with pytest.raises(Exception, match=said):
        write()


def test_a_posting_without_an_entry_isnt_kept(store: Store, signed: SignedOn) -> None:
    def leave_it() -> None:
        with store.work(signed.person, signed.station) as work:
            raw(work, POSTING.format(1, 1, 5))
            work.commit()

    with pytest.raises((StoreBug, StoreUnavailable)):
        leave_it()


STEPS = st.lists(
    st.tuples(
        st.sampled_from(["bill", "credit", "deposit", "payment", "refund", "write_off", "void"]),
        st.integers(1, 50_000),
        st.integers(0, 3_000),
    ),
    min_size=1,
    max_size=12,
)


def happen(work: Work, order_id: int, place: int, step: tuple[str, int, int]) -> None:
    kind, cents, tax = step
    bills = [one for one in work.bills.of_order(order_id) if one.credits is None]
    if kind == "bill":
        issue(work, order_id, taxed(f"charge{place}", cents, "1/20" if tax else "0", tax))
    elif kind in ("credit", "void") and bills:
        total = bills[-1].total_cents if kind == "void" else min(cents, bills[-1].total_cents)
        work.bills.credit(
            bills[-1].id, total_cents=total, reason="x", snapshot="{}", pdf=issued_pdf
        )
    elif kind in ("deposit", "payment", "refund", "write_off"):
        work.payments.take(order_id, kind, "cash", cents, "x")  # type: ignore[arg-type]


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(STEPS)
def test_the_books_balance_and_agree_with_the_order_after_any_sequence(
    store: Store, signed: SignedOn, steps: list[tuple[str, int, int]]
) -> None:
    """Bills, credits, whole credits, deposits, payments, refunds and write-offs in any order."""
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, lot_of_halves(work))
        for place, step in enumerate(steps):
            happen(work, order.id, place, step)
        assert all(sum(line.cents for line in one.lines) == 0 for one in journal(work))
        balances = work.books.balances()
        assert sum(balances.values()) == 0
        held = -balances.get("deposits", 0)
        owes = balances.get("receivable", 0)
        assert held >= 0
        balance = work.payments.balance(order.id)
        assert owes - held == balance.due
        bills, payments = work.bills.of_order(order.id), work.payments.of_order(order.id)
        assert balance_of(bills, payments, balance.deposit_asked) == balance
        assert held == 0 or owes <= 0
        assert [one.id for one in sorted(journal(work), key=lambda one: one.id)] == [
            *range(1, len(journal(work)) + 1)
        ]
