"""The kept records, as tables of text."""

import time
from collections.abc import Iterator
from datetime import date, timedelta

import pytest

from db.unit_of_work import Work
from shared.shop.counted import NewCount
from shared.shop.records import TABLES, RecordTable
from tests.db.examples import (
    KILL_DAY,
    arrived,
    at_the_block,
    line,
    lot_of_halves,
    order_of,
    package,
    weighed,
)
from tests.db.repositories.test_counted import by_count
from tests.store_fixture import MORNING

TODAY = MORNING.date()


def read(work: Work, name: str, start: date = TODAY, end: date = TODAY) -> list[dict[str, str]]:
    table = next(one for one in TABLES if one.name == name)
    return [
        dict(zip(table.columns, row, strict=True))
        for piece in work.records.rows(table, start, end)
        for row in piece
    ]


def made(work: Work) -> None:
    lot = lot_of_halves(work)
    animal = arrived(work, lot)
    weighed(work, animal, "92.5", 1)
    order = order_of(work, lot)
    package(work, order, line(work, order))
    work.payments.take(order.id, "deposit", "cash", 5005)


def test_a_weight_is_written_as_weighed_and_money_in_dollars(work: Work) -> None:
    made(work)
    [weighing] = read(work, "weighings")
    assert (weighing["tag"], weighing["kind"], weighing["weight"]) == ("114", "hot", "92.5 lb")
    [payment] = read(work, "payments")
    assert payment["dollars"] == "50.05"
    assert payment["at"] == "2026-03-02 08:00:00"
    [packed] = read(work, "packages")
    assert (packed["label"], packed["weight"]) == ("1", "16.25 lb")


@pytest.fixture
def in_alaska(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """The shop's wall is nine hours behind UTC: 8:00 there is 23:00 of the day before."""
    if not hasattr(time, "tzset"):
        pytest.skip("this system's zone can't be set")
    with monkeypatch.context() as here:
        here.setenv("TZ", "AKST9")
        time.tzset()
        yield
    time.tzset()


@pytest.mark.usefixtures("in_alaska")
def test_days_and_hours_are_those_on_the_shops_wall(work: Work) -> None:
    made(work)
    assert read(work, "weighings") == []
    [weighing] = read(work, "weighings", TODAY - timedelta(1), TODAY - timedelta(1))
    assert weighing["at"] == "2026-03-01 23:00:00"


def test_owners_and_animals_are_those_of_the_kill_days(work: Work) -> None:
    made(work)
    assert [one["owner"] for one in read(work, "owners", KILL_DAY, KILL_DAY)] == [
        "Anna Berg",
        "Bert Iversen",
    ]
    after = KILL_DAY + timedelta(days=1)
    assert read(work, "animals", after, after) == []


def test_every_table_has_a_text_for_each_column(work: Work) -> None:
    made(work)
    tables: dict[str, RecordTable] = {one.name: one for one in TABLES}
    filled = [name for name in tables if read(work, name, date(2020, 1, 1), date(2030, 1, 1))]
    assert filled == [name for name in tables if name not in ("losses", "counted", "bills")]


def test_what_was_wrapped_by_count_is_a_table_of_its_own(work: Work) -> None:
    by_count(work)
    made(work)
    order = work.orders.of_lot(1)[0]
    choice = order.choices[0]
    with at_the_block(work, order.id):
        work.counted.add(NewCount(order.id, choice.line, choice.cut, "Whole ham", 12))
    [row] = read(work, "counted")
    assert (row["product"], row["packages"], row["void"]) == ("Whole ham", "12", "")
