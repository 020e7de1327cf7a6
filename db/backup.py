"""Copies of the store: made before migrating and once a day, rotated, and put back when needed."""

import contextlib
import os
import re
import sqlite3
from collections.abc import Generator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Literal, cast

from db.migrate import must_migrate, raw_revision
from db.problems import StoreUnavailable, of_sqlite

CopyKind = Literal["daily", "before_migrating", "by_hand", "replaced"]
KINDS: tuple[CopyKind, ...] = ("daily", "before_migrating", "by_hand", "replaced")
STAMP = "%Y%m%dT%H%M%S%fZ"
NAME = re.compile(r"(?P<stem>.+)-(?P<stamp>[0-9]{8}T[0-9]{12}Z)-(?P<kind>[a-z_]+)\.db")
MAGIC = b"SQLite format 3\x00"
KEPT_DAYS = 14


@dataclass(frozen=True, slots=True)
class StoreCopy:
    """One copy in the folder of copies."""

    path: Path
    at: datetime
    kind: CopyKind
    size: int


def copy_store(store_path: Path, target: Path) -> Path:
    """A whole, consistent copy of a store that may be in use, written beside and then renamed."""
    part = target.with_name(target.name + ".part")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        part.unlink(missing_ok=True)
        with _opened(store_path, "ro") as source, _opened(part, "rwc") as copy:
            source.backup(copy)
        part.replace(target)
    except sqlite3.Error as error:
        part.unlink(missing_ok=True)
        raise of_sqlite(error, str(target)) from error
    except OSError as error:
        raise of_os(error, target) from error
    return target


def name_of_copy(store_path: Path, at: datetime, kind: CopyKind) -> str:
    """`steelyard-20261125T131500000000Z-daily.db`."""
    return f"{store_path.stem}-{at.astimezone(UTC).strftime(STAMP)}-{kind}.db"


def list_copies(folder: Path) -> tuple[StoreCopy, ...]:
    """The copies in a folder, newest first; other files are passed over."""
    found: list[StoreCopy] = []
    if not folder.is_dir():
        return ()
    for path in folder.iterdir():
        match = NAME.fullmatch(path.name)
        if match is None or match["kind"] not in KINDS:
            continue
        at = datetime.strptime(match["stamp"], STAMP).replace(tzinfo=UTC)
        found.append(StoreCopy(path, at, cast("CopyKind", match["kind"]), path.stat().st_size))
    return tuple(sorted(found, key=lambda one: (one.at, one.path.name), reverse=True))


def copy_of_today(store_path: Path, folder: Path, now: datetime) -> Path | None:
    """Make the day's copy if there is none yet; today is the day in UTC. Returns the new copy."""
    today = now.astimezone(UTC).date()
    if any(one.kind == "daily" and one.at.date() == today for one in list_copies(folder)):
        return None
    made = copy_store(store_path, folder / name_of_copy(store_path, now, "daily"))
    rotate(folder)
    return made


def rotate(folder: Path, keep: int = KEPT_DAYS) -> tuple[Path, ...]:
    """Remove all but the newest `keep` daily copies; other kinds are never removed."""
    daily = [one for one in list_copies(folder) if one.kind == "daily"]
    gone = tuple(one.path for one in daily[keep:])
    for path in gone:
        path.unlink(missing_ok=True)
    return gone


def must_be_sound(path: Path) -> str | None:
    """Check that the file is a whole store we know; its revision. Raises StoreUnavailable."""
    try:
        with path.open("rb") as file:
            head = file.read(len(MAGIC))
        if head != MAGIC:
            raise StoreUnavailable("not_a_store", {"path": str(path)})
        with _opened(path, "rw") as connection:
            problems = quick_check(connection)
            if problems:
                raise StoreUnavailable("damaged", {"path": str(path), "detail": problems[0]})
            found = raw_revision(connection)
    except sqlite3.Error as error:
        raise of_sqlite(error, str(path)) from error
    except OSError as error:
        raise of_os(error, path) from error
    if found is None:
        raise StoreUnavailable("not_a_store", {"path": str(path)})
    must_migrate(found, str(path))
    return found


def quick_check(connection: sqlite3.Connection) -> Sequence[str]:
    """What SQLite finds wrong with the file; empty when it is sound."""
    rows = connection.execute("PRAGMA quick_check").fetchall()
    found = [str(row[0]) for row in rows]
    return [] if found == ["ok"] else found


def restore_store(copy: Path, store_path: Path, *, now: datetime, folder: Path) -> Path | None:
    """Put a copy in the store's place; the store as it was is kept in `folder` and returned.

    The copy is checked first; nothing is touched unless it is sound and no one has the store open
    for writing.
    """
    must_be_sound(copy)
    kept: Path | None = None
    if store_path.exists():
        _must_be_free(store_path)
        kept = folder / name_of_copy(store_path, now, "replaced")
    try:
        if kept is not None:
            folder.mkdir(parents=True, exist_ok=True)
            for tail in ("", "-wal", "-shm"):
                old = store_path.with_name(store_path.name + tail)
                if old.exists():
                    old.replace(kept.with_name(kept.name + tail))
    except OSError as error:
        raise of_os(error, store_path) from error
    copy_store(copy, store_path)
    return kept


def _must_be_free(store_path: Path) -> None:
    """Refuse while another program is writing; a damaged store may always be replaced."""
    try:
        with _opened(store_path, "rw", seconds=1) as connection:
            connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
            connection.execute("BEGIN EXCLUSIVE")
            connection.execute("ROLLBACK")
    except sqlite3.Error as error:
        problem = of_sqlite(error, str(store_path))
        if isinstance(problem, StoreUnavailable) and problem.code in ("damaged", "not_a_store"):
            return
        raise problem from error


@contextlib.contextmanager
def _opened(path: Path, mode: str, seconds: int = 5) -> Generator[sqlite3.Connection]:
    connection = sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}", uri=True, timeout=seconds, isolation_level=None
    )
    try:
        yield connection
    finally:
        connection.close()


def of_os(error: OSError, path: Path) -> StoreUnavailable:
    """What an error of the system means: no space is "disk_full", no leave "read_only"."""
    if error.errno in (28, 122):  # ENOSPC, EDQUOT
        return StoreUnavailable("disk_full", {"path": str(path)})
    if isinstance(error, PermissionError) or error.errno == 30:  # EROFS
        return StoreUnavailable("read_only", {"path": str(path)})
    if isinstance(error, FileNotFoundError | NotADirectoryError | FileExistsError):
        return StoreUnavailable("no_folder", {"path": str(path)})
    return StoreUnavailable(
        "disk_failed", {"path": str(path), "detail": os.strerror(error.errno or 0)}
    )
