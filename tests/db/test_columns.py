"""Money and weight are exact in the file itself: the type of every stored value is looked at."""

import sqlite3
from datetime import UTC, date, datetime, timedelta, timezone
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sqlalchemy.dialects.sqlite import dialect as sqlite_dialect

from db.columns import Cents, Day, ExactFraction, Flag, UtcDateTime
from db.store import Store
from db.tables.row import nanograms_sql
from db.unit_of_work import Work
from shared.units import (
    MOST_WEIGHT_NG,
    NG_PER_KG,
    NG_PER_LB,
    Unread,
    Weight,
    WeightUnit,
    read_weight,
)
from tests.db.examples import arrived, issued_pdf, lot_of_halves, order_of
from tests.db.test_unit_of_work import full_shop

FILE = sqlite_dialect()


@pytest.mark.parametrize("wrong", [Decimal("1.10"), Fraction(1, 2), "110", True, 110 / 1])
def test_cents_are_whole_numbers_or_nothing(wrong: object) -> None:
    with pytest.raises(TypeError):
        Cents().process_bind_param(wrong, FILE)


def test_a_moment_without_its_zone_is_refused() -> None:
    with pytest.raises(TypeError):
        UtcDateTime().process_bind_param(datetime(2026, 3, 2, 8, 0), FILE)
    with pytest.raises(TypeError):
        Day().process_bind_param(datetime(2026, 3, 2, 8, 0, tzinfo=UTC), FILE)
    with pytest.raises(TypeError):
        Flag().process_bind_param(1, FILE)
    with pytest.raises(TypeError):
        ExactFraction().process_bind_param(Decimal("0.5"), FILE)


def test_a_moment_of_another_zone_is_the_same_moment_and_sorts_as_text() -> None:
    central = timezone(timedelta(hours=-6))
    column = UtcDateTime()
    there = datetime(2026, 3, 2, 23, 30, tzinfo=central)
    kept = column.process_bind_param(there, FILE)
    assert kept == "2026-03-03T05:30:00.000000+00:00"
    assert column.process_result_value(kept, FILE) == there
    earlier = column.process_bind_param(datetime(2026, 3, 3, 5, 0, tzinfo=UTC), FILE)
    assert isinstance(earlier, str)
    assert isinstance(kept, str)
    assert earlier < kept


@given(st.fractions())
def test_a_fraction_comes_back_exact(value: Fraction) -> None:
    kept = ExactFraction().process_bind_param(value, FILE)
    assert ExactFraction().process_result_value(kept, FILE) == value


@given(st.dates())
def test_a_day_comes_back(value: date) -> None:
    kept = Day().process_bind_param(value, FILE)
    assert Day().process_result_value(kept, FILE) == value


def nanograms_in_sql(weight: Weight) -> int | None:
    with sqlite3.connect(":memory:") as connection:
        row = connection.execute(
            f"SELECT {nanograms_sql('w')} FROM (SELECT ? AS w_count, ? AS w_unit, ? AS w_exponent)",
            (weight.count, weight.unit, weight.exponent),
        ).fetchone()
    connection.close()
    return row[0]


def test_the_generated_column_by_published_figures() -> None:
    """NIST Handbook 44, appendix C: 1 lb = 453.59237 g, 1 oz = 28.349523125 g, exactly."""
    assert nanograms_in_sql(Weight(1, "lb")) == 453_592_370_000
    assert nanograms_in_sql(Weight(1, "oz")) == 28_349_523_125
    assert nanograms_in_sql(Weight(1234, "kg", -2)) == 12_340_000_000_000
    assert nanograms_in_sql(Weight(625, "lb", -4)) == 28_349_523_125
    assert nanograms_in_sql(Weight(5, "oz", -1)) == 14_174_761_563  # and a half less
    assert nanograms_in_sql(Weight(85, "oz", -1)) == 240_970_946_563  # ...562.5
    assert nanograms_in_sql(Weight(1, "stone")) is None  # type: ignore[arg-type]


@given(
    st.integers(0, 9_999_999) | st.integers(0, 10**18),
    st.sampled_from(("lb", "oz", "kg", "g")),
    st.integers(-12, 1),
)
def test_the_generated_column_says_what_the_value_says(
    count: int, unit: WeightUnit, exponent: int
) -> None:
    weight = Weight(count, unit, exponent)
    assume(weight.exact_nanograms < MOST_WEIGHT_NG)
    assert nanograms_in_sql(weight) == weight.nanograms


@pytest.mark.parametrize(
    "typed",
    ["98.50", "3 1/2 lb", "12.34 kg", "1 lb 4 oz", "1/16 lb", "9999999.9999 lb", "850 g", "8.5 oz"],
)
def test_a_weight_comes_back_as_weighed(work: Work, typed: str) -> None:
    weight = read_weight(typed)
    assert not isinstance(weight, Unread)
    animal = arrived(work, lot_of_halves(work))
    work.weighings.record(animal.id, "hot", weight)
    (kept,) = work.weighings.of_animal(animal.id)
    assert kept.weight == weight
    assert work.animals.list()[0].hot_ng == weight.nanograms


def test_every_amount_in_the_file_is_an_integer(store: Store, work: Work, store_path: Path) -> None:
    full_shop(work)
    order = work.orders.list()[1]
    work.bills.issue(order.id, total_cents=319_688, snapshot="{}", pdf=issued_pdf)
    work.commit()
    connection = sqlite3.connect(store_path)
    for table, column in (
        ("bills", "total_cents"),
        ("payments", "cents"),
        ("shares", "deposit_asked"),
        ("weighings", "weight_ng"),
        ("packages", "net_ng"),
        ("packages", "net_count"),
    ):
        kinds = {row[0] for row in connection.execute(f"SELECT typeof({column}) FROM {table}")}
        assert kinds == {"integer"}, f"{table}.{column}"
    assert {row[0] for row in connection.execute("SELECT typeof(fraction) FROM holdings")} == {
        "text"
    }
    connection.close()


def test_no_column_of_the_file_can_hold_a_real_number(store_path: Path) -> None:
    """STRICT tables hold what their column says, and none says REAL or ANY."""
    connection = sqlite3.connect(store_path)
    # The text index (FTS5) keeps words alone, in tables of SQLite's own that can't be strict.
    tables = connection.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT GLOB 'find_*'"
    ).fetchall()
    kinds = {
        row[2]
        for (name,) in tables
        if name != "alembic_version"
        for row in connection.execute(f"PRAGMA table_xinfo({name})")
    }
    assert {kind.split()[0] for kind in kinds} == {"INTEGER", "TEXT", "BLOB"}
    with pytest.raises(sqlite3.IntegrityError, match="cannot store TEXT"):
        connection.execute("UPDATE counters SET last = 'twelve'")
    connection.close()


def test_cents_add_up_in_sql_without_rounding(work: Work) -> None:
    """0.10 + 0.20 in binary fractions is not 0.30; in cents it is."""
    order = order_of(work, lot_of_halves(work))
    for _ in range(30):
        work.payments.take(order.id, "payment", "cash", 10)
        work.payments.take(order.id, "payment", "check", 20)
    assert work.payments.balance(order.id).paid == 900


def test_pounds_and_kilograms_add_up_exactly(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    work.weighings.record(animal.id, "hot", Weight(925, "lb", -1), side=1)
    work.weighings.record(animal.id, "hot", Weight(42, "kg"), side=2)
    expected = 925 * NG_PER_LB // 10 + 42 * NG_PER_KG
    assert work.animals.list()[0].hot_ng == expected
