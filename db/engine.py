"""The one place that makes engines: SQLite in a file with its pragmas, or PostgreSQL by URL."""

import sqlite3
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url

READING = "steelyard_reading"
BUSY_MILLISECONDS = 5000


def file_engine(path: Path, *, foreign_keys: bool = True) -> Engine:
    """An engine on a SQLite file. Revisions run with foreign keys off, all else with them on."""
    engine = create_engine(URL.create("sqlite+pysqlite", database=str(path)))
    _begin_by_ourselves(engine)

    def prepare(connection: sqlite3.Connection, record: object) -> None:
        connection.isolation_level = None
        for pragma in (
            f"busy_timeout={BUSY_MILLISECONDS}",
            "journal_mode=WAL",
            "synchronous=FULL",
            f"foreign_keys={'ON' if foreign_keys else 'OFF'}",
            "recursive_triggers=ON",  # so that REPLACE can't get round a locked row
        ):
            connection.execute(f"PRAGMA {pragma}").close()

    event.listen(engine, "connect", prepare)
    return engine


def server_engine(url: str) -> Engine:
    """An engine on a PostgreSQL server shared by several stations."""
    parsed = make_url(url)
    if parsed.drivername == "postgresql":
        parsed = parsed.set(drivername="postgresql+psycopg")
    return create_engine(parsed, pool_pre_ping=True)


def reader_of(engine: Engine) -> Engine:
    """The same store for reading only: all that one unit reads is of one moment."""
    if engine.dialect.name == "sqlite":
        return engine.execution_options(**{READING: True})
    return engine.execution_options(isolation_level="REPEATABLE READ", postgresql_readonly=True)


def _begin_by_ourselves(engine: Engine) -> None:
    """A unit that will write takes its place at once; one that only reads takes none.

    A transaction that reads first and writes later fails at once with "database is locked" when
    another has written between, whatever the busy timeout says.
    """

    def begin(connection: Connection) -> None:
        options: Any = connection.get_execution_options()
        reading = bool(options.get(READING, False))
        connection.exec_driver_sql("BEGIN" if reading else "BEGIN IMMEDIATE")

    event.listen(engine, "begin", begin)
