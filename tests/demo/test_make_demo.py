"""The invented plant: it is all there, its released orders stand and its closed bills balance."""

import runpy
import sys
from collections import Counter
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from db.store import Store, open_store
from shared.billing.bill import Bill
from shared.billing.snapshot import from_snapshot
from shared.carcass.anatomy import catalogue
from shared.cutting.plan import plan
from shared.shop.arrival import standing
from shared.shop.calendar import Booking, Filled, places_on, why_full
from shared.shop.states import ORDER_STATES, release_refusals

SCRIPT = Path(__file__).parents[2] / "demo" / "make_demo.py"
TODAY = date(2026, 3, 2)


@pytest.fixture(scope="module")
def shop(store_template: Path, tmp_path_factory: pytest.TempPathFactory) -> Store:
    """The invented plant, made once as `steelyard --demo` makes it."""
    path = tmp_path_factory.mktemp("demo") / "steelyard.db"
    path.write_bytes(store_template.read_bytes())
    store = open_store(path, keep_copies=False, clock=lambda: datetime(2026, 3, 2, 8, tzinfo=UTC))
    runpy.run_path(str(SCRIPT))["make_demo"](store, TODAY)
    return store


def test_the_plant_has_five_weeks_of_work_for_forty_customers(shop: Store) -> None:
    with shop.read() as work:
        assert work.shop.details().phone.startswith("(555)")
        assert len(work.customers.find("", limit=1000)) >= 40
        lots = work.lots.list(limit=1000)
        cards = work.rates.all()
        found = work.search.find("lucja")
    assert len(lots) == 46 + 2  # the deer
    assert {lot.species for lot in lots} == {"pork", "beef", "lamb", "goat", "deer"}
    days = {lot.day for lot in lots}
    assert TODAY - timedelta(days=36) <= min(days) < TODAY - timedelta(days=30)
    assert TODAY + timedelta(days=3) < max(days) <= TODAY + timedelta(days=9)
    assert {card.regime for card in cards} == {"custom", "inspected"}
    assert [one.title for one in found if one.kind == "customer"] == ["Jørgen & Łucja <O'Neil>"]


def test_every_lot_is_booked_on_a_day_the_shop_kills_its_species(shop: Store) -> None:
    """The calendar showed hogs on a Wednesday that has no places."""
    with shop.read() as work:
        days = [lot.day for lot in work.lots.list(limit=1000)]
        filled = work.calendar.filled(min(days), max(days))
    for (day, species), head in filled.head.items():
        there = places_on(filled.plan, filled.others, day)
        assert head <= there.get(species, 0), (day, species)
    assert max(filled.hooks.values()) <= (filled.plan.hooks or 0)


@pytest.mark.parametrize("ahead", range(7))
def test_whatever_weekday_it_is_opened_on_every_day_takes_what_is_booked(ahead: int) -> None:
    sys.path.append(str(SCRIPT.parents[1]))
    from demo.bookings import BOOKINGS
    from demo.deer import DEER
    from demo.week import WEEK, extra_day, kill_day

    today = TODAY + timedelta(days=ahead)
    wanted = [(one.species, one.kill, one.cut) for one in BOOKINGS]
    wanted += [("deer", one.days, 2) for one in DEER]
    booked = [(it, days, kill_day(it, days, today, cut)) for it, days, cut in wanted]
    other = extra_day(today)
    others = {other.day: other} if other else {}
    lots = tuple(Booking(today + timedelta(kill), species, 1) for species, _, kill in booked)
    for at, one in enumerate(lots):
        filled = Filled(WEEK, others, lots[:at] + lots[at + 1 :])
        assert why_full(filled, one) == ()
    for species, days, kill in booked:
        assert (kill > 0, kill < 0) == (days > 0, days < 0), (species, days)
        assert abs(kill - days) < 7
    cut = [(kill, one.cut) for (_, _, kill), one in zip(booked, BOOKINGS, strict=False)]
    assert [one for one in cut if one[0] < 0 and one[0] > one[1] - 2] == []


def test_every_state_is_there_to_be_seen(shop: Store) -> None:
    with shop.read() as work:
        animals = Counter(row.state for row in work.animals.list(limit=1000))
        orders = work.orders.list(limit=1000)
    assert set(animals) >= {"booked", "arrived", "hanging", "on_block", "cut"}
    assert animals["on_block"] == 1
    assert {row.state for row in orders} == set(ORDER_STATES)
    assert any(row.due_cents > 0 for row in orders if row.state == "handed_over")
    assert any(row.state == "open" and row.lines == 0 for row in orders)


def test_arrivals_are_stated_and_deer_have_their_papers(shop: Store) -> None:
    """Of two deer one waits for its result and is held, the other's is there."""
    with shop.read() as work:
        rows = work.animals.list(limit=1000)
        deer = [one for one in rows if one.species == "deer"]
        intakes = [work.arrivals.deer(one.id) for one in deer]
        held = [len(standing(work.arrivals.holds(one.id))) for one in deer]
        stated = [work.arrivals.of(it.id) for it in rows if it.tag and it.species != "deer"]
    assert all(one and one.license and one.game_tag and one.hunter for one in intakes)
    assert sorted(held) == [0, 1]
    assert {one.state for one in deer} == {"hanging"}
    assert len(stated) > 30
    assert all(one is not None and one.healthy and one.statement_of for one in stated)
    assert {one.condition for one in stated if one} == {"sound", "lame"}


def test_every_order_at_the_block_or_beyond_stands(shop: Store) -> None:
    with shop.read() as work:
        rows = work.orders.list(states=("released", "cut", "ready", "handed_over"), limit=1000)
        assert len(rows) > 30
        for row in rows:
            answer = plan(work.lots.question(row.lot_id), catalogue(row.species))
            assert release_refusals(answer, row.share) == (), row.number


def test_one_open_order_asks_for_more_ham_than_there_is(shop: Store) -> None:
    with shop.read() as work:
        rows = work.orders.list(states=("open", "settled"), limit=1000)
        answers = {
            row.lot_id: plan(work.lots.question(row.lot_id), catalogue(row.species)) for row in rows
        }
    kinds = [one.kind for answer in answers.values() for one in answer.conflicts]
    assert kinds == ["length"]


def test_bills_balance(shop: Store) -> None:
    with shop.read() as work:
        rows = work.orders.list(limit=1000)
        closed = [row for row in rows if row.closed]
        assert len(closed) > 20
        assert {row.due_cents for row in closed} == {0}
        for row in closed:
            (issued,) = work.bills.of_order(row.id)
            paper = work.papers.get(issued.paper_id)
            assert paper is not None
            bill = from_snapshot(paper.snapshot)
            assert isinstance(bill, Bill)
            paid = work.payments.of_order(row.id)
            assert sum(one.cents for one in paid) == issued.total_cents == bill.total_cents
            assert bill.waiting == ()
            assert paper.pdf.startswith(b"%PDF")


def test_the_books_say_what_the_orders_say(shop: Store) -> None:
    """What customers owe and have deposited, by the journal and by bills less payments."""
    with shop.read() as work:
        balances = work.books.balances()
        rows = work.orders.list()
        due = sum(row.due_cents for row in rows)
        owed = sum(one.cents for one in work.books.receivables())
        held = sum(one.cents for one in work.books.deposits())
    assert sum(balances.values()) == 0
    assert owed == balances["receivable"] > 0
    assert owed - held == due


def test_an_older_beef_and_a_condemned_liver_are_among_them(shop: Store) -> None:
    with shop.read() as work:
        rows = work.animals.list(limit=1000)
        lost = [loss for row in rows for loss in work.animals.losses(row.id)]
    assert [row.species for row in rows if row.age == "30_and_over"] == ["beef"]
    assert {loss.gone.part for loss in lost} == {"liver"}


def test_the_same_day_gives_the_same_shop(shop: Store, store: Store) -> None:
    runpy.run_path(str(SCRIPT))["make_demo"](store, TODAY)
    with shop.read() as one, store.read() as other:
        assert one.orders.list(limit=1000) == other.orders.list(limit=1000)
        assert one.bills.list(limit=1000) == other.bills.list(limit=1000)


def test_every_package_of_an_owner_gets_its_label(shop: Store) -> None:
    """Bacon and sausage too: the demo says what its cures and seasonings are made of."""
    from desktop.wrap.label_of import label_of
    from desktop.wrap.wrapping import read_wrapping
    from printing.words import Words
    from shared.marking.label import PackageLabel

    labelled = 0
    with shop.read() as work:
        rows = work.orders.list(states=("ready",), limit=5)
    for row in rows:
        wrapping = read_wrapping(shop, row.id, Words("en"))
        assert wrapping is not None
        for package in wrapping.packages:
            label = label_of(package, wrapping)
            if wrapping.lot.regime == "custom":
                assert isinstance(label, PackageLabel), label
                labelled += 1
    assert labelled > 20
