"""The revisions: up, down, no drift, rows kept, children not lost, newer files refused."""

import sqlite3
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.operations import Operations
from alembic.script import ScriptDirectory
from sqlalchemy.exc import IntegrityError

import db.tables  # noqa: F401  # fills METADATA
from db import migrate
from db.columns import METADATA
from db.engine import file_engine
from db.problems import StoreUnavailable
from db.store import Store, open_store
from db.unit_of_work import Work
from tests.db.examples import lot_of_halves
from tests.store_fixture import Clock


def tables_of(path: Path) -> dict[str, str]:
    with sqlite3.connect(path) as connection:
        found = dict(
            connection.execute(
                "SELECT name, sql FROM sqlite_master WHERE type = 'table'"
                " AND name NOT LIKE 'sqlite_%' AND name <> 'alembic_version'"
                " AND name NOT LIKE 'find_%'"  # the text index, which holds no rows of its own
            ).fetchall()
        )
    connection.close()
    return found


def but_the_text_index(name: str | None, *_: object) -> bool:
    return name is None or not name.startswith("find_")


def test_the_revisions_known_by_name_are_the_files_in_order() -> None:
    script = ScriptDirectory.from_config(migrate.config())
    walked = [one.revision for one in script.walk_revisions()]
    assert tuple(reversed(walked)) == migrate.REVISIONS
    assert script.get_heads() == [migrate.HEAD]


def test_up_and_down_again_leaves_nothing(tmp_path: Path) -> None:
    engine = file_engine(tmp_path / "s.db", foreign_keys=False)
    migrate.upgrade(engine)
    assert len(tables_of(tmp_path / "s.db")) == len(METADATA.tables)
    migrate.downgrade(engine, "base")
    assert tables_of(tmp_path / "s.db") == {}
    migrate.upgrade(engine)
    assert len(tables_of(tmp_path / "s.db")) == len(METADATA.tables)
    engine.dispose()


def test_the_tables_in_code_are_the_tables_in_the_file(store_path: Path) -> None:
    engine = file_engine(store_path, foreign_keys=False)
    with engine.connect() as connection:
        context = MigrationContext.configure(
            connection,
            opts={
                "compare_type": True,
                "render_as_batch": True,
                "include_name": but_the_text_index,
            },
        )
        assert compare_metadata(context, METADATA) == []
    engine.dispose()


def test_every_column_of_the_code_is_nullable_where_the_file_says_so(store_path: Path) -> None:
    """compare_metadata passes over generated columns and constraints of some kinds."""
    with sqlite3.connect(store_path) as connection:
        for name, table in METADATA.tables.items():
            rows = connection.execute(f"PRAGMA table_xinfo({name})").fetchall()
            there = {row[1]: bool(row[3]) for row in rows}
            primary = {row[1] for row in rows if row[5]}
            assert set(there) == {column.name for column in table.columns}, name
            for column in table.columns:
                if column.name not in primary:
                    assert there[column.name] == (not column.nullable), f"{name}.{column.name}"
    connection.close()


def test_every_table_is_strict(store_path: Path) -> None:
    with sqlite3.connect(store_path) as connection:
        rows = connection.execute("PRAGMA table_list").fetchall()
    connection.close()
    strict = {row[1]: row[5] for row in rows if row[2] == "table"}
    ours = {name: strict[name] for name in METADATA.tables}
    assert ours == dict.fromkeys(METADATA.tables, 1)


def test_rows_survive_going_down_to_the_first_revision_and_up(
    store: Store, work: Work, store_path: Path
) -> None:
    lot = lot_of_halves(work)
    work.commit()
    store.close()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, migrate.REVISIONS[0])
    migrate.upgrade(engine)
    engine.dispose()
    again = open_store(store_path, keep_copies=False)
    with again.read() as reading:
        assert reading.lots.get(lot.id) == lot
    again.close()


def test_rebuilding_a_parent_table_keeps_its_children(tmp_path: Path) -> None:
    """With foreign keys on, SQLite's DROP TABLE inside Alembic's rebuild deletes the children.

    Both are run here, so that the trap is known to be still there and the way round it to work.
    """
    kept = {}
    for keys in (True, False):
        engine = file_engine(tmp_path / f"{keys}.db", foreign_keys=keys)
        with engine.begin() as connection:
            for sql in (
                "CREATE TABLE parent (id INTEGER PRIMARY KEY, name TEXT)",
                "CREATE TABLE child (id INTEGER PRIMARY KEY, parent_id INTEGER"
                " REFERENCES parent (id) ON DELETE CASCADE)",
                "INSERT INTO parent VALUES (1, 'a')",
                "INSERT INTO child VALUES (1, 1), (2, 1)",
            ):
                connection.exec_driver_sql(sql)
        with engine.begin() as connection:
            operations = Operations(MigrationContext.configure(connection))
            with operations.batch_alter_table("parent", recreate="always") as batch:
                batch.add_column(sa.Column("more", sa.Text()))
            migrate.check_keys(connection)
            kept[keys] = connection.exec_driver_sql("SELECT count(*) FROM child").scalar()
        engine.dispose()
    assert kept == {True: 0, False: 2}


def test_a_migration_that_orphans_a_row_is_refused(store_path: Path) -> None:
    engine = file_engine(store_path, foreign_keys=False)
    with engine.begin() as connection:
        connection.exec_driver_sql("INSERT INTO own_names VALUES ('en', 'cut.a', 'A')")
        migrate.check_keys(connection)
        connection.exec_driver_sql(
            "INSERT INTO shares (lot_id, number, deposit_asked) VALUES (99, 1, 0)"
        )
        with pytest.raises(StoreUnavailable) as refused:
            migrate.check_keys(connection)
        assert refused.value.code == "migration_failed"
        assert refused.value.data["table"] == "shares"
    engine.dispose()


def test_a_failing_migration_leaves_the_file_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The whole of it is one transaction; nothing half made stays behind."""
    path = tmp_path / "s.db"

    def fail(connection: sa.Connection) -> None:
        raise StoreUnavailable("migration_failed")

    monkeypatch.setattr(migrate, "check_keys", fail)
    engine = file_engine(path, foreign_keys=False)
    with pytest.raises(StoreUnavailable):
        migrate.upgrade(engine)
    engine.dispose()
    assert tables_of(path) == {}


def test_a_newer_file_is_refused_and_left_alone(store_path: Path, clock: Clock) -> None:
    with sqlite3.connect(store_path) as connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
    connection.close()
    before = store_path.read_bytes()
    with pytest.raises(StoreUnavailable) as refused:
        open_store(store_path, clock=clock)
    assert refused.value.code == "too_new"
    assert refused.value.data["found"] == "9999"
    assert store_path.read_bytes() == before


def test_the_revision_is_read_without_alembic(store_path: Path, tmp_path: Path) -> None:
    connection = sqlite3.connect(store_path)
    assert migrate.raw_revision(connection) == migrate.HEAD
    connection.close()
    empty = sqlite3.connect(tmp_path / "empty.db")
    assert migrate.raw_revision(empty) is None
    empty.close()


def test_half_an_ounce_is_kept_after_0011_and_the_locks_are_still_on(tmp_path: Path) -> None:
    engine = file_engine(tmp_path / "s.db", foreign_keys=False)
    migrate.upgrade(engine, "0010")
    before = locks_of(tmp_path / "s.db")
    migrate.upgrade(engine, "0011")
    assert locks_of(tmp_path / "s.db") == before
    with engine.begin() as connection:
        connection.exec_driver_sql(
            "INSERT INTO weighings (animal_id, kind, side, quarter, weight_count, weight_unit,"
            " weight_exponent, scale, source, at, person_id, station_id, withdrawn, reason)"
            " VALUES (1, 'hot', 1, '', 85, 'oz', -1, '', 'typed', '2026-03-02', 1, 1, 0, '')"
        )
        kept = connection.exec_driver_sql("SELECT weight_ng FROM weighings").scalar_one()
        assert kept == 240_970_946_563
        with pytest.raises(IntegrityError, match="rows are locked"):
            connection.exec_driver_sql("UPDATE weighings SET weight_count = 1")
    engine.dispose()


def locks_of(path: Path) -> list[tuple[str, str]]:
    """Indexes and triggers of the tables that were made anew."""
    with sqlite3.connect(path) as connection:
        rows = connection.execute(
            "SELECT name, sql FROM sqlite_master WHERE type IN ('index', 'trigger')"
            " AND tbl_name IN ('weighings', 'packages') ORDER BY name"
        ).fetchall()
    connection.close()
    assert rows
    return rows
