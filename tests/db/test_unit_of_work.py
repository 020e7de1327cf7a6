"""All or nothing; who did it; numbers without gaps; and rows that nobody may change."""

import sqlite3
import threading
from datetime import date
from pathlib import Path

import pytest

from db.problems import StoreBug
from db.store import Store
from db.unit_of_work import Work
from shared.carcass.carcass import Gone, Measured
from shared.shop.customers import Customer
from shared.shop.money import IssuedBill
from shared.shop.people import SignedOn
from shared.shop.problems import StaleEdit
from shared.shop.sheets import Sheet
from tests.db.examples import (
    arrived,
    customer,
    issued_pdf,
    line,
    lot_of_halves,
    lot_of_one,
    order_of,
    package,
    settled,
    weighed,
)
from tests.store_fixture import Clock


def test_what_is_not_committed_is_not_kept(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        customer(work)
    with store.read() as reading:
        assert reading.customers.find("") == ()


def test_a_fault_in_the_middle_keeps_nothing(store: Store, signed: SignedOn) -> None:
    def fail_midway() -> None:
        with store.work(signed.person, signed.station) as work:
            lot_of_halves(work)
            _ = 1 // 0
            work.commit()

    with pytest.raises(ZeroDivisionError):
        fail_midway()
    with store.read() as reading:
        assert reading.customers.find("") == ()
        assert reading.lots.list() == ()


def test_a_unit_is_committed_once(work: Work) -> None:
    customer(work)
    work.commit()
    with pytest.raises(StoreBug):
        work.commit()


def test_an_unknown_person_or_station_cannot_work(store: Store, signed: SignedOn) -> None:
    with pytest.raises(StoreBug), store.work(99, signed.station):
        pass
    with pytest.raises(StoreBug), store.work(signed.person, 99):
        pass


def test_a_stale_edit_says_who_and_when_and_writes_nothing(
    store: Store, signed: SignedOn, clock: Clock
) -> None:
    with store.work(signed.person, signed.station) as work:
        mine = customer(work)
        work.commit()
    other = store.sign_on("Olga", "Office")
    clock.pass_by(minutes=5)
    with store.work(other.person, other.station) as work:
        hers = work.customers.save(
            Customer(mine.id, "Anna Berg-Holm", mine.phone, version=mine.version)
        )
        assert isinstance(hers, Customer)
        work.commit()
    with store.work(signed.person, signed.station) as work:
        refused = work.customers.save(Customer(mine.id, "A. Berg", version=mine.version))
        assert refused == StaleEdit("customer", mine.id, 1, 2, "Olga", clock.now)
        assert work.customers.get(mine.id) == hers


def test_every_change_names_person_and_station(work: Work, clock: Clock) -> None:
    made = customer(work)
    changes = work.changes.of("customer", made.id)
    assert [(one.what, one.person, one.station, one.at) for one in changes] == [
        ("added", "Test", "Bench", clock.now)
    ]


def test_every_row_of_work_names_a_person_and_a_station(store_path: Path) -> None:
    """Tables that carry no one are those `changes` tells of, and those that hang on another."""
    connection = sqlite3.connect(store_path)
    tables = [
        row[0]
        for row in connection.execute(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
            " AND name NOT LIKE 'find_%'"  # the text index
        )
    ]
    without = {
        name
        for name in tables
        if "person_id"
        not in {row[1] for row in connection.execute(f"PRAGMA table_info({name})").fetchall()}
    }
    connection.close()
    assert without == {
        "alembic_version", "counters", "persons", "stations",  # no work of anyone's
        "shop", "own_lengths", "own_names", "customers", "lots", "animals", "orders",  # `changes`
        "call_rules", "usual_rules", "usual_lines", "block_rules", "freezer_rules",  # `changes`
        "plant_marks", "product_numbers",  # `changes`
        "batches",  # `changes`, and their stages
        "shares", "holdings",  # with their lot
        "order_lines",  # a projection of order_changes
        "sheet_orders", "charges", "bill_lines", "divisions",  # with their sheet, card or bill
        "ledger_postings",  # with their entry
        "handed_packages", "handed_counts",  # with their hand-over
        "call_offers",  # with their call
        "taken_extras",  # with their bill
        "withdrawn_measurements",  # with their report
    }  # fmt: skip


def test_numbers_have_no_gaps_and_no_twins_under_two_threads(
    store: Store, signed: SignedOn
) -> None:
    """Every third unit is given up after its number was taken."""
    kept: list[int] = []
    faults: list[BaseException] = []

    def issue(start: int) -> None:
        try:
            for turn in range(start, start + 20):
                with store.work(signed.person, signed.station) as work:
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
    assert sorted(kept) == list(range(1, len(kept) + 1))
    assert len(kept) == 13 + 14
    with store.read() as reading:
        assert [one.number for one in reading.bills.list()] == sorted(kept)
        numbers = sorted(one.number for one in reading.orders.list(sort="number"))
        assert numbers == list(range(1, len(kept) + 1))


def full_shop(work: Work) -> None:
    """One row at least in every table that is locked."""
    lot = lot_of_halves(work)
    animal = arrived(work, lot)
    weighed(work, animal, "92.5", 1)
    work.animals.record_loss(animal.id, Gone("liver", 0, None, "spots"))
    work.animals.measure(animal.id, Measured("rib", 1, 203_200))
    order = order_of(work, lot)
    ham = line(work, order)
    order = settled(work, order.id)
    sheet = work.orders.release(lot.id, [order.id], snapshot="{}", pdf=b"%PDF")
    assert isinstance(sheet, Sheet)
    work.orders.acknowledge(sheet.id)
    package(work, order, ham)
    work.payments.take(order.id, "deposit", "cash", 5000)
    work.ledger.count_drawer(5000)
    work.periods.close(date(2026, 2, 28))
    work.bills.issue(order.id, total_cents=100, snapshot="{}", pdf=issued_pdf)


LOCKED = (
    ("weighings", "weight_count = 1"),
    ("measurements", "length = 1"),
    ("order_changes", "line = 9"),
    ("papers", "pdf = x'00'"),
    ("papers", "snapshot = '{}'"),
    ("sheets", "number = 9"),
    ("sheet_orders", "order_id = 2"),
    ("sheet_acknowledgements", "at = ''"),
    ("bills", "total_cents = 1"),
    ("payments", "cents = 1"),
    ("ledger_entries", "day = '2020-01-01'"),
    ("ledger_postings", "cents = 1"),
    ("closed_periods", "through = '2020-01-01'"),
    ("drawer_counts", "counted_cents = expected_cents"),
    ("changes", "what = ''"),
    ("packages", "net_count = 1"),
    ("packages", "label_number = 77"),
    ("losses", "part = 'heart'"),
)


@pytest.mark.parametrize(("table", "change"), LOCKED)
def test_what_is_issued_weighed_or_done_is_locked(
    store: Store, work: Work, store_path: Path, table: str, change: str
) -> None:
    full_shop(work)
    work.commit()
    connection = sqlite3.connect(store_path)
    count = connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0]
    assert count > 0
    with pytest.raises(sqlite3.IntegrityError, match=f"{table}: rows are locked"):
        connection.execute(f"UPDATE {table} SET {change}")
    with pytest.raises(sqlite3.IntegrityError, match=f"{table}: rows are locked"):
        connection.execute(f"DELETE FROM {table}")
    connection.close()


def test_our_own_connection_cannot_replace_a_locked_row(store: Store, work: Work) -> None:
    """REPLACE deletes without firing triggers unless recursive triggers are on."""
    full_shop(work)
    with pytest.raises(Exception, match="payments: rows are locked"):
        work._connection.exec_driver_sql(
            "INSERT OR REPLACE INTO payments SELECT id, number, lot_id, order_id, customer_id,"
            " kind, means, 1, note, at, person_id, station_id FROM payments"
        )


def test_a_fault_of_ours_is_a_bug_not_the_world(store: Store, signed: SignedOn) -> None:
    with pytest.raises(StoreBug), store.work(signed.person, signed.station) as work:
        work._connection.exec_driver_sql("INSERT INTO holdings (lot_id) VALUES (1)")
