"""The same store on PostgreSQL, where several stations share one; skipped without a server.

STEELYARD_TEST_POSTGRES names a server on which databases may be made, such as
`postgresql://app@127.0.0.1:54329/postgres`.
"""

import os
import threading
from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import make_url

import db.tables  # noqa: F401  # fills METADATA
from db import migrate
from db.columns import METADATA
from db.engine import server_engine
from db.problems import StoreBug, StoreUnavailable
from db.store import Store, open_store
from shared.cutting.order import Amount, Choice
from shared.shop.calendar import Booking, Comes, OtherDay, Plan, why_full
from shared.shop.calls import CallRules
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.customers import Customer
from shared.shop.lots import Lot
from shared.shop.money import Balance, IssuedBill
from shared.shop.people import SignedOn
from shared.shop.problems import MoveRefused, StaleEdit
from shared.units import Weight
from tests.db.examples import (
    GROUND,
    arrived,
    at_the_block,
    customer,
    issued_pdf,
    line,
    lot_of_halves,
    lot_of_one,
    order_of,
    package,
)
from tests.db.repositories.test_counted import by_count
from tests.db.test_unit_of_work import LOCKED, full_shop
from tests.store_fixture import Clock

SERVER = os.environ.get("STEELYARD_TEST_POSTGRES", "")
COMES = Comes("scalded", "inspected", "the head")
pytestmark = pytest.mark.skipif(not SERVER, reason="no server: STEELYARD_TEST_POSTGRES isn't set")


@pytest.fixture(scope="module")
def url() -> Iterator[str]:
    """A database of one's own on the server."""
    name = f"steelyard_test_{os.getpid()}"
    server = server_engine(SERVER).execution_options(isolation_level="AUTOCOMMIT")
    with server.connect() as connection:
        connection.exec_driver_sql(f"CREATE DATABASE {name}")
    yield make_url(SERVER).set(database=name).render_as_string(hide_password=False)
    with server.connect() as connection:
        connection.exec_driver_sql(f"DROP DATABASE {name} WITH (FORCE)")
    server.dispose()


@pytest.fixture
def shared_store(url: str, clock: Clock) -> Iterator[Store]:
    """An empty store on the server."""
    engine = server_engine(url)
    with engine.begin() as connection:
        connection.exec_driver_sql("DROP SCHEMA public CASCADE")
        connection.exec_driver_sql("CREATE SCHEMA public")
    engine.dispose()
    store = open_store(url, clock=clock)
    yield store
    store.close()


@pytest.fixture
def here(shared_store: Store) -> SignedOn:
    return shared_store.sign_on("Test", "Bench")


def but_the_text_index(_: object, name: str | None, *__: object) -> bool:
    return name is None or not name.startswith("find_")


def test_up_and_down_again_leaves_nothing(shared_store: Store, url: str) -> None:
    engine = server_engine(url)
    with engine.connect() as connection:
        context = MigrationContext.configure(
            connection, opts={"compare_type": True, "include_object": but_the_text_index}
        )
        assert compare_metadata(context, METADATA) == []
    shared_store.close()
    migrate.downgrade(engine, "base")
    with engine.connect() as connection:
        left = connection.exec_driver_sql(
            "SELECT tablename FROM pg_tables WHERE schemaname = 'public'"
        ).fetchall()
        assert [row[0] for row in left] == ["alembic_version"]
    migrate.upgrade(engine)
    engine.dispose()


def test_a_newer_server_is_refused(shared_store: Store, url: str) -> None:
    shared_store.close()
    engine = server_engine(url)
    with engine.begin() as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = '9999'")
    engine.dispose()
    with pytest.raises(StoreUnavailable) as refused:
        open_store(url)
    assert refused.value.code == "too_new"


def test_a_day_in_the_shop(shared_store: Store, here: SignedOn) -> None:
    """Every list and sum, on the server's own types."""
    with shared_store.work(here.person, here.station) as work:
        full_shop(work)
        work.commit()
    with shared_store.read() as reading:
        order = reading.orders.get(1)
        assert order is not None
        (row,) = reading.orders.list(text="berg")
        assert (row.billed_cents, row.due_cents, row.lines, row.packages) == (100, -4900, 1, 1)
        assert type(row.due_cents) is int
        balance = reading.payments.balance(order.id)
        assert balance == Balance(100, 0, 5000, 0, 5000)
        assert type(balance.billed) is int
        (animal,) = reading.animals.list(text="114")
        assert animal.hot_ng == Weight(925, "lb", -1).nanograms
        assert animal.owners in ("Anna Berg, Bert Iversen", "Bert Iversen, Anna Berg")
        (count,) = reading.packages.counts(order.id)
        assert (count.packages, count.nanograms) == (1, Weight(1625, "lb", -2).nanograms)
        assert [one.customer for one in reading.bills.list()] == ["Anna Berg"]
        assert [one.kind for one in reading.search.find("1")] == ["order", "lot", "animal"]
        assert len(reading.lots.question(1).choices) == 1
        paper = reading.papers.get(1)
        assert paper is not None
        assert paper.pdf == b"%PDF"


def test_a_line_and_its_undoing(shared_store: Store, here: SignedOn) -> None:
    with shared_store.work(here.person, here.station) as work:
        order = order_of(work, lot_of_halves(work))
        made = line(work, order, GROUND)
        assert work.lots.question(order.lot_id).choices == (made,)
        work.orders.undo(order.id, 0)
        assert work.lots.question(order.lot_id).choices == ()


def test_a_stale_edit_is_refused(shared_store: Store, here: SignedOn) -> None:
    with shared_store.work(here.person, here.station) as work:
        mine = customer(work)
        assert isinstance(work.customers.save(mine), Customer)
        assert isinstance(work.customers.save(mine), StaleEdit)


@pytest.mark.parametrize(("table", "change"), LOCKED)
def test_locked_rows(
    shared_store: Store, here: SignedOn, table: str, change: str, url: str
) -> None:
    with shared_store.work(here.person, here.station) as work:
        full_shop(work)
        work.commit()
    change = change.replace("x'00'", "'\\x00'").replace("at = ''", "at = now()")
    for sql in (f"UPDATE {table} SET {change}", f"DELETE FROM {table}"):
        with (
            pytest.raises(StoreBug, match=f"{table}: rows are locked"),
            shared_store.work(here.person, here.station) as work,
        ):
            work._connection.exec_driver_sql(sql)


def test_numbers_have_no_gaps_and_no_twins(shared_store: Store, here: SignedOn) -> None:
    kept: list[int] = []
    faults: list[BaseException] = []

    def issue(start: int) -> None:
        try:
            for turn in range(start, start + 12):
                with shared_store.work(here.person, here.station) as work:
                    order = order_of(work, lot_of_one(work))
                    bill = work.bills.issue(
                        order.id, total_cents=100, snapshot="{}", pdf=issued_pdf
                    )
                    assert isinstance(bill, IssuedBill)
                    if turn % 3:
                        work.commit()
                        kept.append(bill.number)
        except BaseException as fault:
            faults.append(fault)

    threads = [threading.Thread(target=issue, args=(start,)) for start in (0, 100)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert faults == []
    assert sorted(kept) == list(range(1, 17))


def test_reading_sees_one_moment_while_another_writes(shared_store: Store, here: SignedOn) -> None:
    with shared_store.read() as reading:
        assert reading.customers.find("") == ()
        with shared_store.work(here.person, here.station) as work:
            customer(work)
            work.commit()
        assert reading.customers.find("") == ()


def test_two_stations_at_once_take_one_animal_only_once(
    shared_store: Store, here: SignedOn
) -> None:
    with shared_store.work(here.person, here.station) as work:
        animal = arrived(work, lot_of_halves(work))
        work.commit()
    with (
        shared_store.work(here.person, here.station) as one,
        shared_store.work(here.person, here.station) as other,
    ):
        mine, theirs = one.animals.get(animal.id), other.animals.get(animal.id)
        assert mine == theirs == animal
        moved = one.animals.move(animal.id, "weighed", version=animal.version)
        assert not isinstance(moved, StaleEdit)
        one.commit()
        late = other.animals.move(animal.id, "weighed", version=animal.version)
        assert late == MoveRefused("no_such_move", "weighed", "weighed")


def test_the_books_balance_and_report_the_same_on_the_server(
    shared_store: Store, here: SignedOn
) -> None:
    with shared_store.work(here.person, here.station) as work:
        order = order_of(work, lot_of_halves(work))
        work.payments.take(order.id, "deposit", "cash", 5_000)
        issued = work.bills.issue(order.id, total_cents=12_000, snapshot="{}", pdf=issued_pdf)
        assert isinstance(issued, IssuedBill)
        work.bills.credit(issued.id, total_cents=1_000, reason="fat", snapshot="{}", pdf=issued_pdf)
        work.payments.take(order.id, "payment", "check", 4_000)
        work.ledger.count_drawer(4_990, "ten cents short")
        work.periods.close(date(2026, 2, 28))
        work.commit()
    day = date(2026, 3, 2)
    with shared_store.read() as work:
        assert [(one.cents, one.since) for one in work.books.receivables(day)] == [(2_000, day)]
        assert work.books.deposits() == ()
        assert [(one.means, one.cents) for one in work.books.takings(day, day)] == [
            ("cash", 5_000),
            ("check", 4_000),
        ]
        assert [one.net_cents for one in work.books.tax(day, day)] == [11_000]
        assert [one.cents for one in work.books.income(day, day)] == [11_000]
        assert sum(work.books.balances().values()) == 0
        assert [one.id for one in work.ledger.entries(day, day)] == [1, 2, 3, 4, 5]
        assert work.periods.closed_through() == date(2026, 2, 28)


def test_the_calendar_is_kept_on_the_server(shared_store: Store, here: SignedOn) -> None:
    with shared_store.work(here.person, here.station) as work:
        lot = lot_of_one(work)
        plan = Plan({lot.day.weekday(): {"pork": 1}}, hooks=4)
        work.calendar.save_plan(plan)
        work.calendar.set_other(OtherDay(date(2026, 12, 25), True, "Christmas"))
        assert lot.animals
        assert work.waiting.add(lot.producer_id, "pork", 1, lot.day, comes=COMES) == 1
        full = why_full(work.calendar.filled(lot.day, lot.day), Booking(lot.day, "pork", 1))
        assert [one.code for one in full] == ["places"]
        assert work.calendar.overrule(lot.id, full, "hurt animal") is None
        work.commit()
    with shared_store.read() as work:
        assert work.calendar.plan() == plan
        there = work.calendar.filled(date(2026, 12, 25), date(2026, 12, 25))
        assert there.others[date(2026, 12, 25)].closed
        assert [one.id for one in work.calendar.lots(lot.day, lot.day)] == [lot.id]
        assert [one.comes for one in work.waiting.list("pork", lot.day)] == [COMES]


def test_block_minutes_are_counted_on_the_server(shared_store: Store, here: SignedOn) -> None:
    """A ground line takes 5 minutes on Anna's side; Bert hasn't answered."""
    entered = {"pork": {"ground": 5, "finishes": 3}}
    with shared_store.work(here.person, here.station) as work:
        lot = lot_of_halves(work)
        work.calendar.save_plan(Plan({lot.day.weekday(): {"pork": 9}}, minutes_a_cut=entered))
        line(work, order_of(work, lot, 1), Choice(0, 1, "ground_pork", Amount("rest")))
        usual = work.calendar.filled(lot.day, lot.day).usual["pork"]
        assert work.calendar.needed_by(lot.id) == 5 + usual
        (there,) = work.calendar.filled(lot.day, lot.day).bookings
        assert there.cut_minutes == 5 + usual


def test_two_stations_cant_move_into_the_same_last_place(
    shared_store: Store, here: SignedOn
) -> None:
    """Whoever asks second in a unit that writes waits, and then sees the place taken."""
    full_day = date(2026, 3, 16)
    with shared_store.work(here.person, here.station) as work:
        lots = [lot_of_one(work) for _ in range(2)]
        work.calendar.save_plan(Plan({full_day.weekday(): {"pork": 1}}))
        work.commit()
    asked, go_on = threading.Event(), threading.Event()
    seen: dict[int, list[str]] = {}

    def move(lot: Lot, *, first: bool) -> None:
        with shared_store.work(here.person, here.station) as work:
            there = work.calendar.filled(full_day, full_day, without=lot.id)
            full = why_full(there, Booking(full_day, "pork", 1))
            seen[lot.id] = [one.code for one in full]
            asked.set()
            if first:
                assert go_on.wait(10)
            if not full:
                assert isinstance(work.lots.save_details(replace(lot, day=full_day)), Lot)
                work.commit()

    one = threading.Thread(target=move, args=(lots[0],), kwargs={"first": True})
    other = threading.Thread(target=move, args=(lots[1],), kwargs={"first": False})
    one.start()
    assert asked.wait(10)
    other.start()
    other.join(0.5)
    assert other.is_alive()  # it waits: nothing is told it yet
    assert lots[1].id not in seen
    go_on.set()
    one.join(10)
    other.join(10)
    assert seen == {lots[0].id: [], lots[1].id: ["places"]}
    with shared_store.read() as work:
        assert [it.id for it in work.calendar.lots(full_day, full_day)] == [lots[0].id]


@pytest.mark.parametrize(
    ("row", "said"),
    [
        ("INSERT INTO ledger_entries VALUES (9, 'opening', '2026-03-02', 0, NULL, NULL, '',"
         " now(), 1, 1)", "debits and credits differ"),
        ("INSERT INTO ledger_postings VALUES (1, 9, 'bank', 5, '2026-03-02', '', '')",
         "the entry is made already"),
        ("UPDATE ledger_postings SET cents = 1", "rows are locked"),
        ("DELETE FROM closed_periods", "rows are locked"),
        ("INSERT INTO closed_periods VALUES (9, '2026-02-01', '', now(), 1, 1)",
         "a later day is closed already"),
    ],
)  # fmt: skip
def test_the_server_too_refuses_what_doesnt_balance(
    shared_store: Store, here: SignedOn, url: str, row: str, said: str
) -> None:
    with shared_store.work(here.person, here.station) as work:
        work.ledger.open_with("bank", 100)
        work.periods.close(date(2026, 2, 28))
        work.commit()
    engine = server_engine(url)
    with engine.connect() as connection, pytest.raises(Exception, match=said):
        connection.exec_driver_sql(row)
    engine.dispose()


@pytest.mark.parametrize("with_index", [True, False])
def test_names_written_nearly_so_are_found_there_too(
    shared_store: Store, here: SignedOn, with_index: bool
) -> None:
    with shared_store.work(here.person, here.station) as work:
        for name in ("Anna Johnson", "Jørgen Bérg", "Bert Iversen"):
            customer(work, name)
        if not with_index:
            work._desk.connection.exec_driver_sql("DROP EXTENSION IF EXISTS pg_trgm CASCADE")
        for typed, there in (("jonson", "Anna Johnson"), ("breg", "Jørgen Bérg")):
            assert [(one.title, one.near) for one in work.search.find(typed)] == [(there, True)]
        assert [one.name for one in work.customers.nearly("Bert Ivresen")] == ["Bert Iversen"]
        assert [one.title for one in work.search.find("ivreesn") if one.near] == ["Bert Iversen"]


def test_what_is_frozen_told_and_ruled_is_kept_there_too(
    shared_store: Store, here: SignedOn
) -> None:
    with shared_store.work(here.person, here.station) as work:
        lot = lot_of_halves(work)
        order = order_of(work, lot)
        made = package(work, order, line(work, order))
        work.freezing.put([made.id], work._desk.now)
        work.freezing.put([made.id], None)
        assert work.freezing.of_order(order.id)[made.id].since is None
        by_count(work)
        with at_the_block(work, order.id):
            count = work.counted.add(NewCount(order.id, 1, "whole_ham", "Stamped ham", 3))
        assert isinstance(count, CountedPackages)
        work.freezing.put_counts([count.id], work._desk.now)
        assert work.freezing.counts_of_order(order.id)[count.id].person == here.person.name
        work.freezing.agree(order.id, fresh=True)
        assert work.freezing.agreed_fresh(order.id)
        assert work.weights_told.lots_of_day(lot.day) == (lot.id,)
        work.weights_told.tell(order.id, "spoken", 42)
        assert work.weights_told.last([order.id])[order.id].hanging_ng == 42
        rules = work.calls.save_rules(replace(work.calls.rules(), counted_from="block"))
        assert isinstance(rules, CallRules)
        assert len(work.calls.to_ring(lot.day)) == 2
        work.commit()
