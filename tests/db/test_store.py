"""Opening the store: what is refused, with which code, and what is copied when."""

import os
import sqlite3
import subprocess
import sys
from datetime import timedelta
from pathlib import Path
from types import SimpleNamespace

import pytest

from db import store as store_module
from db.backup import list_copies
from db.problems import StoreBug, StoreUnavailable, of_sqlite
from db.store import Store, check_store, open_store
from db.unit_of_work import Work
from shared.shop.people import SignedOn
from tests.db.examples import customer, lot_of_halves
from tests.store_fixture import Clock


def code_of(path: Path | str) -> str:
    with pytest.raises(StoreUnavailable) as refused:
        open_store(path, keep_copies=False)
    return refused.value.code


def test_a_new_shop_is_made_where_there_is_none(tmp_path: Path) -> None:
    path = tmp_path / "new" / "folder" / "steelyard.db"
    opened = open_store(path)
    with opened.read() as work:
        assert work.shop.details().name == ""
    opened.close()
    assert check_store(path) == ()


def test_an_empty_file_is_a_new_shop(tmp_path: Path) -> None:
    path = tmp_path / "steelyard.db"
    path.touch()
    open_store(path).close()
    assert check_store(path) == ()


def test_a_file_of_something_else_is_not_a_store(tmp_path: Path) -> None:
    path = tmp_path / "steelyard.db"
    path.write_text("Dear Anna, the hog is ready for you on Monday. " * 40)
    assert code_of(path) == "not_a_store"
    path.unlink()
    other = sqlite3.connect(path)
    other.execute("CREATE TABLE songs (name TEXT)")
    other.commit()
    other.close()
    assert code_of(path) == "not_a_store"


def test_a_damaged_file_is_refused(store: Store, work: Work, store_path: Path) -> None:
    for number in range(200):
        customer(work, f"Customer {number}")
    work.commit()
    store.close()
    connection = sqlite3.connect(store_path)
    connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
    connection.close()
    data = bytearray(store_path.read_bytes())
    page = int.from_bytes(data[16:18], "big")
    for start in range(3 * page, len(data) - page, page):
        data[start : start + 100] = b"\xff" * 100
    store_path.write_bytes(data)
    assert code_of(store_path) == "damaged"
    assert check_store(store_path)[0].code == "damaged"


def test_a_file_cut_short_is_damaged(store: Store, store_path: Path) -> None:
    store.close()
    data = store_path.read_bytes()
    store_path.write_bytes(data[: len(data) // 2])
    assert code_of(store_path) == "damaged"


def test_a_folder_that_cannot_be_made_is_said(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    assert code_of(tmp_path / "file" / "steelyard.db") == "no_folder"


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="root may write anywhere")
def test_a_read_only_file_is_said(store: Store, store_path: Path) -> None:
    store.close()
    store_path.chmod(0o444)
    assert code_of(store_path) == "read_only"


def test_what_the_system_says_becomes_a_code(
    store_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(store_module, "on_network_drive", lambda path: False)
    codes = {28: "disk_full", 122: "disk_full", 13: "read_only", 30: "read_only", 5: "disk_failed"}
    for number, code in codes.items():

        def refuse(*_: object, number: int = number) -> None:
            raise OSError(number, os.strerror(number))

        with monkeypatch.context() as patch:
            patch.setattr(Path, "open", refuse)
            assert code_of(store_path) == code


def test_a_disk_without_room_for_what_lies_beside_the_store_is_full_not_failing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """SQLite says "disk I/O error" where its -shm file finds no room (seen on a full tmpfs)."""
    error = sqlite3.OperationalError("disk I/O error")
    error.sqlite_errorcode = 4874  # SQLITE_IOERR_SHMSIZE, https://www.sqlite.org/rescode.html
    path = str(tmp_path / "shop.db")
    for free, code in ((10_000_000, "disk_failed"), (0, "disk_full")):
        left = SimpleNamespace(free=free)
        monkeypatch.setattr("shutil.disk_usage", lambda _folder, left=left: left)
        told = of_sqlite(error, path)
        assert isinstance(told, StoreUnavailable)
        assert told.code == code


def test_a_network_drive_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(store_module, "on_network_drive", lambda path: True)
    assert code_of(tmp_path / "steelyard.db") == "network_drive"
    assert not (tmp_path / "steelyard.db").exists()


def test_a_server_that_is_not_there_is_said() -> None:
    assert code_of("postgresql://nobody@127.0.0.1:1/none") == "server_unreachable"


def test_another_program_holding_the_file_is_locked(
    store: Store, signed: SignedOn, store_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("db.engine.BUSY_MILLISECONDS", 20)
    other = sqlite3.connect(store_path, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    impatient = open_store(store_path, keep_copies=False)
    with pytest.raises(StoreUnavailable) as refused, impatient.work(1, 1):
        pass
    assert refused.value.code == "locked"
    with impatient.read() as work:
        assert work.people.persons() == (signed.person,)
    other.execute("ROLLBACK")
    with impatient.work(signed.person.id, signed.station.id) as work:
        assert work.person == signed.person
    other.close()
    impatient.close()


def test_a_full_disk_keeps_nothing_and_says_so(store: Store, signed: SignedOn) -> None:
    """SQLite's own limit on pages stands in for the disk; its error is the same."""
    with store.read() as reading:
        size = reading._connection.exec_driver_sql("PRAGMA page_count").scalar()

    def fill_up() -> None:
        with store.work(*both(signed)) as work:
            work._connection.exec_driver_sql(f"PRAGMA max_page_count={size}")
            for number in range(2000):
                customer(work, f"Customer {number}")
            work.commit()

    with pytest.raises(StoreUnavailable) as refused:
        fill_up()
    assert refused.value.code == "disk_full"
    with store.read() as reading:
        assert reading.customers.find("") == ()


def both(signed: SignedOn) -> tuple[int, int]:
    return signed.person.id, signed.station.id


def test_the_first_opening_of_a_day_makes_a_copy(store_path: Path, clock: Clock) -> None:
    folder = store_path.parent / "copies"
    for _ in range(3):
        open_store(store_path, clock=clock).close()
    assert [one.kind for one in list_copies(folder)] == ["daily"]
    clock.pass_by(days=1)
    open_store(store_path, clock=clock).close()
    days = [one.at.date() for one in list_copies(folder)]
    assert days == [clock.now.date(), clock.now.date() - timedelta(days=1)]


def test_an_older_file_is_copied_before_it_is_migrated(
    store_path: Path, clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A file that says an older revision: the migration then fails, and the copy is there."""
    monkeypatch.setattr("db.migrate.REVISIONS", ("0000", *store_module.migrate.REVISIONS))
    with sqlite3.connect(store_path) as connection:
        connection.execute("UPDATE alembic_version SET version_num = '0000'")
    connection.close()
    seen: list[str] = []
    folder = store_path.parent / "copies"

    def migrated(engine: object) -> None:
        seen.extend(one.kind for one in list_copies(folder))

    monkeypatch.setattr("db.migrate.upgrade", migrated)
    open_store(store_path, clock=clock, keep_copies=False).close()
    assert seen == ["before_migrating"]


def test_the_check_finds_a_row_without_its_parent(store_path: Path) -> None:
    with sqlite3.connect(store_path) as connection:
        connection.execute("INSERT INTO shares (lot_id, number, deposit_asked) VALUES (9, 1, 0)")
    connection.close()
    assert [(one.code, one.data["table"]) for one in check_store(store_path)] == [
        ("no_parent", "shares")
    ]


def test_the_pragmas_hold_on_every_connection(store: Store) -> None:
    with store.read() as one, store.read() as other:
        for work in (one, other):
            found = {
                name: work._connection.exec_driver_sql(f"PRAGMA {name}").scalar()
                for name in ("journal_mode", "synchronous", "foreign_keys", "busy_timeout")
            }
            assert found == {
                "journal_mode": "wal",
                "synchronous": 2,
                "foreign_keys": 1,
                "busy_timeout": 5000,
            }


def test_a_unit_opened_for_reading_does_not_write(store: Store) -> None:
    with store.read() as work:
        with pytest.raises(StoreBug):
            customer(work)
        with pytest.raises(StoreBug):
            work.commit()


def test_reading_sees_one_moment_while_another_writes(store: Store, signed: SignedOn) -> None:
    with store.read() as reading:
        assert reading.customers.find("") == ()
        with store.work(*both(signed)) as work:
            lot_of_halves(work)
            work.commit()
        assert reading.customers.find("") == ()
    with store.read() as reading:
        assert len(reading.customers.find("")) == 2


def test_opening_a_store_of_today_does_not_load_the_migrations_tools(store_path: Path) -> None:
    """Alembic costs a tenth of a second; it is loaded only to migrate."""
    code = (
        "import sys; from db.store import open_store;"
        f"open_store({str(store_path)!r}, keep_copies=False).close();"
        "print('alembic' in sys.modules)"
    )
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert found.stdout.strip() == "False"
