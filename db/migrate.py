"""Bringing a store to today's revision; Alembic is loaded only when there is something to do."""

import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from db.problems import StoreUnavailable

if TYPE_CHECKING:
    from alembic.config import Config
    from sqlalchemy import Connection, Engine

# Every revision this program knows, oldest first; a test holds it against the files.
REVISIONS = (
    *("0001", "0002", "0003", "0004", "0005", "0006", "0007", "0008", "0009", "0010", "0011"),
    *("0012", "0013", "0014", "0015", "0016", "0017", "0018", "0019", "0020", "0021", "0022"),
    "0023",
)
HEAD = REVISIONS[-1]
FOLDER = Path(__file__).resolve().parent / "migrations"


def config() -> "Config":
    """Alembic's configuration, without any file of its own."""
    from alembic.config import Config

    made = Config()
    made.set_main_option("script_location", str(FOLDER))
    made.set_main_option("path_separator", "os")
    return made


def raw_revision(connection: sqlite3.Connection) -> str | None:
    """The revision of a file, read without Alembic; None when it never had one."""
    rows = connection.execute(
        "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'alembic_version'"
    ).fetchall()
    if not rows:
        return None
    found = connection.execute("SELECT version_num FROM alembic_version").fetchone()
    return None if found is None else str(found[0])


def must_migrate(found: str | None, path: str = "") -> bool:
    """Whether that revision is behind; a revision we don't know was made by a newer program."""
    if found is not None and found not in REVISIONS:
        raise StoreUnavailable("too_new", {"path": path, "found": found, "known": HEAD})
    return found != HEAD


def upgrade(engine: "Engine", revision: str = "head") -> None:
    """Migrate up in one transaction, keys off; nothing stays of it if it fails.

    The engine must have foreign keys off: rebuilding a parent table with them on deletes its
    children.
    """
    from alembic import command

    with engine.connect() as connection, connection.begin():
        made = config()
        made.attributes["connection"] = connection
        command.upgrade(made, revision)
        check_keys(connection)


def downgrade(engine: "Engine", revision: str) -> None:
    """Migrate down in one transaction; for tests and for going back before a release."""
    from alembic import command

    with engine.connect() as connection, connection.begin():
        made = config()
        made.attributes["connection"] = connection
        command.downgrade(made, revision)
        check_keys(connection)


def check_keys(connection: "Connection") -> None:
    """Refuse a migration that left a row without its parent."""
    if connection.dialect.name != "sqlite":
        return
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").fetchall()
    if broken:
        raise StoreUnavailable("migration_failed", {"table": str(broken[0][0])})
