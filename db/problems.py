"""What can go wrong with the store: the world (StoreUnavailable) or us (StoreBug)."""

import shutil
import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Literal

StoreCode = Literal[
    "too_new",
    "damaged",
    "not_a_store",
    "locked",
    "read_only",
    "disk_full",
    "disk_failed",
    "network_drive",
    "no_folder",
    "server_unreachable",
    "migration_failed",
    "no_copy",
]

# Primary result codes of SQLite (https://www.sqlite.org/rescode.html).
SQLITE_CODES: Mapping[int, StoreCode] = {
    5: "locked",
    6: "locked",
    8: "read_only",
    10: "disk_failed",
    11: "damaged",
    13: "disk_full",
    14: "no_folder",
    26: "not_a_store",
}


class ReadStopped(Exception):  # noqa: N818 - nobody erred: it was asked to stop
    """A read that was asked to stop has stopped; nothing came of it."""


class StoreUnavailable(Exception):  # noqa: N818 - it says what is so, not that we erred
    """The world says no; `code` and `data` become a sentence for people in the window or shell."""

    def __init__(self, code: StoreCode, data: Mapping[str, str] | None = None) -> None:
        super().__init__(code, dict(data or {}))
        self.code: StoreCode = code
        self.data: Mapping[str, str] = dict(data or {})


class StoreBug(Exception):  # noqa: N818
    """We asked the store for something it can never do: log it and report it."""


@dataclass(frozen=True, slots=True)
class StoreFault:
    """One thing the check of a store found: a code and where."""

    code: str
    data: Mapping[str, str] = field(default_factory=dict[str, str])


LEAST_ROOM = 65_536  # SQLite makes its index of what is being written in pieces of 32 KiB


def _has_room(path: str) -> bool:
    try:
        return shutil.disk_usage(Path(path).parent).free >= LEAST_ROOM
    except OSError:
        return True  # it doesn't answer even that


def of_sqlite(error: sqlite3.Error, path: str = "") -> StoreUnavailable | StoreBug:
    """What an error of SQLite means: `SQLITE_FULL` (13) is "disk_full".

    A disk without room for the files beside the store is `SQLITE_IOERR` (10); it is full all the
    same.
    """
    number = getattr(error, "sqlite_errorcode", None)
    code = SQLITE_CODES.get(number & 0xFF) if isinstance(number, int) else None
    if code is None:
        return StoreBug(str(error))
    if code == "disk_failed" and path and not _has_room(path):
        code = "disk_full"
    return StoreUnavailable(code, {"path": path, "detail": str(error)})
