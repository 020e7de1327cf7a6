"""Copies: whole while someone writes, rotated, checked before they are put back."""

import sqlite3
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from db.backup import (
    CopyKind,
    copy_of_today,
    copy_store,
    list_copies,
    name_of_copy,
    restore_store,
    rotate,
)
from db.problems import StoreUnavailable
from db.store import Store, check_store, open_store
from db.unit_of_work import Work
from shared.shop.people import SignedOn
from tests.db.examples import customer
from tests.store_fixture import MORNING


def names_in(path: Path) -> list[str]:
    opened = open_store(path, keep_copies=False)
    with opened.read() as work:
        found = [one.name for one in work.customers.find("")]
    opened.close()
    return found


def test_a_copy_is_whole_and_opens(store: Store, work: Work, tmp_path: Path) -> None:
    customer(work, "Anna")
    work.commit()
    assert store.path is not None
    copy = copy_store(store.path, tmp_path / "elsewhere" / "copy.db")
    assert check_store(copy) == ()
    assert names_in(copy) == ["Anna"]
    assert [one.name for one in copy.parent.iterdir() if one.suffix == ".part"] == []


def test_a_copy_made_while_another_writes_holds_whole_units_only(
    store: Store, signed: SignedOn, tmp_path: Path
) -> None:
    """Each unit adds a pair; no copy may hold half of one."""
    assert store.path is not None
    stop = threading.Event()

    def write() -> None:
        number = 0
        while not stop.is_set():
            with store.work(signed.person, signed.station) as work:
                customer(work, f"A {number}")
                customer(work, f"B {number}")
                work.commit()
            number += 1

    writer = threading.Thread(target=write)
    writer.start()
    try:
        copies = [copy_store(store.path, tmp_path / f"{n}.db") for n in range(8)]
    finally:
        stop.set()
        writer.join()
    for copy in copies:
        assert check_store(copy) == ()
        connection = sqlite3.connect(copy)
        first, second = (
            connection.execute(f"SELECT count(*) FROM customers WHERE name LIKE '{x} %'").fetchone()
            for x in "AB"
        )
        connection.close()
        assert first == second


def test_copies_are_listed_newest_first_and_other_files_passed_over(
    store_path: Path, tmp_path: Path
) -> None:
    folder = tmp_path / "copies"
    made: tuple[tuple[int, CopyKind], ...] = (
        (0, "daily"),
        (2, "by_hand"),
        (1, "before_migrating"),
    )
    for hours, kind in made:
        at = MORNING + timedelta(hours=hours)
        copy_store(store_path, folder / name_of_copy(store_path, at, kind))
    (folder / "notes.txt").write_text("ours")
    (folder / "steelyard-20260101T000000000000Z-unknown.db").write_text("")
    found = list_copies(folder)
    assert [(one.kind, one.at) for one in found] == [
        ("by_hand", MORNING + timedelta(hours=2)),
        ("before_migrating", MORNING + timedelta(hours=1)),
        ("daily", MORNING),
    ]
    assert all(one.size > 0 for one in found)
    assert list_copies(tmp_path / "nowhere") == ()


def test_only_old_daily_copies_are_rotated_away(store_path: Path, tmp_path: Path) -> None:
    folder = tmp_path / "copies"
    kept = copy_store(store_path, folder / name_of_copy(store_path, MORNING, "before_migrating"))
    for days in range(5):
        at = MORNING + timedelta(days=days)
        copy_store(store_path, folder / name_of_copy(store_path, at, "daily"))
    gone = rotate(folder, keep=3)
    assert len(gone) == 2
    daily = [one.at for one in list_copies(folder) if one.kind == "daily"]
    assert daily == [MORNING + timedelta(days=days) for days in (4, 3, 2)]
    assert kept.exists()


def test_one_copy_a_day(store_path: Path, tmp_path: Path) -> None:
    late = datetime(2026, 3, 2, 23, 59, tzinfo=UTC)
    assert copy_of_today(store_path, tmp_path / "c", late) is not None
    assert copy_of_today(store_path, tmp_path / "c", late) is None
    assert copy_of_today(store_path, tmp_path / "c", late + timedelta(minutes=1)) is not None


def test_putting_a_copy_back_keeps_what_was_there(
    store: Store, work: Work, signed: SignedOn, tmp_path: Path
) -> None:
    path = store.path
    assert path is not None
    customer(work, "Before")
    work.commit()
    copy = copy_store(path, tmp_path / "copy.db")
    with store.work(signed.person, signed.station) as later:
        customer(later, "After")
        later.commit()
    store.close()
    kept = restore_store(copy, path, now=MORNING, folder=tmp_path / "copies")
    assert names_in(path) == ["Before"]
    assert kept is not None
    assert names_in(kept) == ["After", "Before"]
    assert [one.kind for one in list_copies(tmp_path / "copies")] == ["replaced"]


def test_restoring_to_a_new_place_keeps_nothing(store_path: Path, tmp_path: Path) -> None:
    new = tmp_path / "new" / "steelyard.db"
    assert restore_store(store_path, new, now=MORNING, folder=tmp_path / "copies") is None
    assert check_store(new) == ()


def test_a_bad_copy_touches_nothing(store: Store, store_path: Path, tmp_path: Path) -> None:
    store.close()
    before = store_path.read_bytes()
    bad = tmp_path / "bad.db"
    bad.write_bytes(before[: len(before) // 2])
    newer = copy_store(store_path, tmp_path / "newer.db")
    connection = sqlite3.connect(newer)
    connection.execute("UPDATE alembic_version SET version_num = '9999'")
    connection.commit()
    connection.close()
    text = tmp_path / "text.db"
    text.write_text("not a store at all")
    for copy, code in ((bad, "damaged"), (newer, "too_new"), (text, "not_a_store")):
        with pytest.raises(StoreUnavailable) as refused:
            restore_store(copy, store_path, now=MORNING, folder=tmp_path / "copies")
        assert refused.value.code == code
    assert store_path.read_bytes() == before
    assert not (tmp_path / "copies").exists()


def test_a_store_that_is_being_written_is_not_replaced(
    store: Store, store_path: Path, tmp_path: Path
) -> None:
    copy = copy_store(store_path, tmp_path / "copy.db")
    other = sqlite3.connect(store_path, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    with pytest.raises(StoreUnavailable) as refused:
        restore_store(copy, store_path, now=MORNING, folder=tmp_path / "copies")
    assert refused.value.code == "locked"
    other.execute("ROLLBACK")
    other.close()
    assert store_path.exists()


def test_a_damaged_store_can_be_replaced(store: Store, store_path: Path, tmp_path: Path) -> None:
    copy = copy_store(store_path, tmp_path / "copy.db")
    store.close()
    store_path.write_bytes(b"\x00" * 8192)
    kept = restore_store(copy, store_path, now=MORNING, folder=tmp_path / "copies")
    assert kept is not None
    assert kept.read_bytes() == b"\x00" * 8192
    assert check_store(store_path) == ()
