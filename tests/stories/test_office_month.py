"""The Office over a month of the invented plant: billed, corrected, balanced by another library."""

import runpy
import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from beancount import loader
from beancount.core import data

from db.store import Store, open_store
from desktop.bench import Bench
from desktop.office import issuing
from desktop.office.billing import read_billing
from desktop.office.day_bills import DayBill, issue_day, one_pdf, read_day
from desktop.office.money_dialog import Given
from desktop.office.progress import Steps
from desktop.office.scale_check import disagreements
from desktop.shell.journal import pieces, written
from shared.billing.accounts import CHART
from shared.billing.bill import Bill, make_bill
from shared.billing.payment import Tender
from shared.billing.rates import Charge
from shared.billing.snapshot import from_snapshot
from shared.shop.ledger import ClosedPeriod, DrawerCount, Entry
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from shared.shop.problems import Refused
from tests.bench.books import bench_on
from tests.desktop.office.ready_orders import StopsAfter, handed_over
from tests.printing.pages import pages
from tests.shared.billing.lots import SPLIT_QUARTERS, good, hung, lot_of

SCRIPT = Path(__file__).parents[2] / "demo" / "make_demo.py"
TODAY = date(2026, 3, 2)
FIRST, LAST = date(2020, 1, 1), date(2030, 12, 31)


def morning() -> datetime:
    return datetime(2026, 3, 2, 8, tzinfo=UTC)


@pytest.fixture(scope="module")
def made(store_template: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The invented plant as `steelyard --demo` makes it, made once."""
    path = tmp_path_factory.mktemp("demo") / "steelyard.db"
    shutil.copyfile(store_template, path)
    store = open_store(path, keep_copies=False, clock=morning)
    runpy.run_path(str(SCRIPT))["make_demo"](store, TODAY)
    store.close()
    return path


@pytest.fixture
def shop(made: Path, tmp_path: Path, qapp: object) -> Iterator[Bench]:
    """The plant on a Monday morning, at the Office."""
    shutil.copyfile(made, tmp_path / "steelyard.db")
    store = open_store(tmp_path / "steelyard.db", keep_copies=False, clock=morning)
    bench = bench_on(store, tmp_path)
    yield bench
    bench.work.finish()
    store.close()


def billed(bench: Bench) -> tuple[DayBill, ...]:
    """All that is ready, read and issued as F7 does it."""
    return issue_day(bench, read_day(bench.store, Steps()).bills, Steps())


def as_journal(store: Store) -> str:
    with store.read() as work:
        return "".join(written(pieces(work, FIRST, LAST), "Books", as_csv=False))


def credited_whole(bench: Bench) -> tuple[int, int]:
    """Every bill of the month credited whole; how many there were, and their cents."""
    with bench.store.read() as work:
        bills = [one for one in work.bills.list(limit=1000) if one.credits is None]
    for one in bills:
        assert one.order_id is not None
        billing = read_billing(bench.store, one.order_id)
        assert billing is not None
        issued = next(each for each in billing.bills if each.id == one.id)
        note = issuing.credit(bench, billing, "billed on the wrong card", "", None, issued)
        assert isinstance(note, IssuedBill)
    return len(bills), sum(one.total_cents for one in bills)


def test_a_month_credited_and_billed_again_balances_in_an_independent_library(
    shop: Bench,
) -> None:
    """31 bills of $5,600.99 are credited, billed again in one go, and come to the same."""
    count, cents = credited_whole(shop)
    assert count >= 30
    found = billed(shop)
    assert [one.issued for one in found if one.issued is None] == []
    assert sum(one.issued.total_cents for one in found if one.issued) == cents
    assert billed(shop) == ()
    with shop.store.read() as work:
        rows = work.bills.list(limit=5000)
        orders = work.orders.list(limit=5000)
        balances = work.books.balances()
        owed = sum(one.cents for one in work.books.receivables(TODAY))
    assert len(rows) == 2 * count + len(found)
    assert sum(balances.values()) == 0
    assert balances["receivable"] == owed
    assert sum(one.due_cents for one in orders) == owed + balances.get("deposits", 0)
    entries, errors, _options = loader.load_string(as_journal(shop.store))
    assert errors == []
    theirs: dict[str, Decimal] = {}
    for entry in entries:
        for one in entry.postings if isinstance(entry, data.Transaction) else ():
            assert one.units is not None
            assert isinstance(one.units.number, Decimal)
            theirs[one.account] = theirs.get(one.account, Decimal(0)) + one.units.number
    assert sum(theirs.values()) == 0
    assert theirs["Assets:Receivable"] * 100 == owed
    assert disagreements(shop.store, Steps()).found == ()


def test_every_shared_animal_adds_up_to_the_cent(shop: Bench) -> None:
    """A charge on an animal of several owners is rate times weight once; their parts are it."""
    shared = 0
    with shop.store.read() as work:
        for lot in work.lots.list(limit=1000):
            parts: dict[str, list[int]] = {}
            for one in work.bills.divisions(lot.id):
                parts.setdefault(one.charge, []).append(one.cents)
            bills = [one for one in work.bills.of_lot(lot.id) if one.credits is None]
            papers = [work.papers.get(one.paper_id) for one in bills]
            wholes = _wholes([paper.snapshot for paper in papers if paper is not None])
            for charge, cents in wholes.items():
                shared += 1
                assert sum(parts[charge]) == cents, (lot.number, charge)
    assert shared >= 10


def _wholes(snapshots: list[str]) -> dict[str, int]:
    """What each divided charge comes to for the whole animal, as the bills say it."""
    found: dict[str, int] = {}
    for text in snapshots:
        bill = from_snapshot(text)
        assert isinstance(bill, Bill)
        for line in bill.lines:
            if line.whole_cents is not None and line.animal:
                assert found.setdefault(line.key, line.whole_cents) == line.whole_cents
    return found


def test_one_whole_animal_of_four_owners_adds_up_to_the_cent() -> None:
    """Kill $95.01, and 799.75 lb at $0.85: 67,978.75 cents, $679.79 for the animal.

    By weight an owner on the heavier side has 200.75/799.75 of it, 17,063.69 cents, and one on
    the lighter 199.125/799.75, 16,925.56: rounded down 67,976, and the three cents left go to
    the largest rests.
    """
    kill = Charge("kill", "per_head", Fraction(9_501))
    cut = Charge("cut_and_wrap", "per_lb_hot", Fraction(85))
    lot = lot_of(hung("401.5", "398.25"), SPLIT_QUARTERS, kill, cut)
    bills = [good(make_bill(lot, share)) for share in (1, 2, 3, 4)]
    cents = [{line.code: line.amount_cents for line in bill.lines} for bill in bills]
    assert [one["kill"] for one in cents] == [2_376, 2_375, 2_375, 2_375]
    assert [one["cut_and_wrap"] for one in cents] == [17_064, 17_064, 16_926, 16_925]
    assert sum(bill.total_cents for bill in bills) == 9_501 + 67_979


def test_a_mistake_after_issue_is_a_credit_and_a_new_bill(shop: Bench) -> None:
    with shop.store.read() as work:
        before = as_journal(shop.store)
        last = work.bills.list(sort="number", descending=True, limit=1)[0]
    assert last.order_id is not None
    billing = read_billing(shop.store, last.order_id)
    assert billing is not None
    note = issuing.credit(shop, billing, "billed to the wrong card", "", None)
    assert isinstance(note, IssuedBill)
    again = read_billing(shop.store, last.order_id)
    assert again is not None
    new = issuing.issue(shop, again)
    assert isinstance(new, IssuedBill)
    assert (new.number, new.total_cents) == (last.number + 1, last.total_cents)
    with shop.store.read() as work:
        assert work.payments.balance(last.order_id).due == last.due_cents
        kept = work.bills.get(last.id)
    assert kept is not None
    assert kept.total_cents == last.total_cents
    after = as_journal(shop.store)
    assert set(before.splitlines()) < set(after.splitlines())
    assert loader.load_string(after)[1] == []


def test_forty_bills_in_one_go_are_counted_and_can_be_stopped(
    store: Store, signed: SignedOn, tmp_path: Path, qapp: object
) -> None:
    for at in range(20):
        handed_over(store, signed, rates=at == 0)
    bench = bench_on(store, tmp_path)
    checked = read_day(store, Steps()).bills
    assert len(checked) == 40
    steps = StopsAfter(25)
    first = [one.issued for one in issue_day(bench, checked, steps) if one.issued]
    assert (steps.done, steps.every) == (25, 40)
    assert len(first) == 25
    rest = [one.issued for one in issue_day(bench, read_day(store, Steps()).bills, Steps())]
    assert [one.number for one in (*first, *rest) if one] == list(range(1, 41))
    pdf = one_pdf(store, [one for one in (*first, *rest) if one], Steps())
    assert len(pages(pdf)) == 40
    bench.work.finish()


def test_sunday_night_a_late_check_a_moved_deposit_and_the_bank_balance_there_too(
    shop: Bench,
) -> None:
    """Friday's check, a deposit on another order, $100 to the bank, the drawer, the week closed.

    Every step is as its dialog does it; the other library adds up to the same accounts.
    """
    friday, saturday = date(2026, 2, 27), date(2026, 2, 28)
    with shop.store.read() as work:
        owed = next(one for one in work.orders.list(limit=500) if one.due_cents > 5_000)
        held = next(one for one in work.books.deposits() if one.order_number)
        order_id = work.orders.numbered(held.order_number or 0)
    billing = read_billing(shop.store, owed.id)
    assert billing is not None
    assert order_id is not None
    check = Given("payment", (Tender("check", 5_000, "1188"),), None, friday)
    kept = issuing.take_money(shop, billing, check)
    assert isinstance(kept, tuple)
    with shop.store.work(shop.person, shop.station) as work:
        before = work.ledger.in_drawer()
        assert isinstance(work.payments.move(order_id, owed.id, 1_000, ("to", "from")), tuple)
        assert isinstance(work.ledger.open_with("money:cash", 10_000, day=saturday), Entry)
        assert isinstance(work.ledger.move_cash(10_000, "slip 88", day=saturday), Entry)
        assert isinstance(work.ledger.count_drawer(before), DrawerCount)
        assert work.ledger.last_counted() == TODAY
        assert isinstance(work.periods.close(saturday), ClosedPeriod)
        work.commit()
    again = read_billing(shop.store, owed.id)
    assert again is not None
    assert again.balance.due == owed.due_cents - 6_000
    refused = issuing.take_money(shop, again, replace(check, tenders=(Tender("check", 1),)))
    assert isinstance(refused, Refused)
    assert refused.code == "period_closed"
    text = as_journal(shop.store)
    assert f'{friday} * "{owed.owner}" "payment' in text
    with shop.store.read() as work:
        ours = work.books.balances()
    theirs = added_up(text)
    assert theirs == {one.journal: ours[key] for key, one in CHART.items() if key in ours}
    assert theirs["Liabilities:Moved"] == 0


def added_up(text: str) -> dict[str, Decimal]:
    """Cents by account as the other library reads them, all income together."""
    entries, errors, _options = loader.load_string(text)
    assert errors == []
    found: dict[str, Decimal] = {}
    for entry in entries:
        for one in entry.postings if isinstance(entry, data.Transaction) else ():
            assert one.units is not None
            assert isinstance(one.units.number, Decimal)
            name = "Income" if one.account.startswith("Income:") else one.account
            found[name] = found.get(name, Decimal(0)) + one.units.number * 100
    return found
