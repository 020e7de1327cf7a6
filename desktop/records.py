"""Opening, copying and putting back the shop's records; window and shell do it alike."""

import errno
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

    from db.problems import StoreUnavailable
    from db.store import Store
    from desktop.paths import Paths
    from printing.words import Words

OF_THE_DISK = (errno.ENOSPC, errno.EDQUOT, errno.EROFS, errno.EIO)


def open_records(paths: "Paths") -> "Store":
    """The shop's own records, made when missing. Raises StoreUnavailable."""
    from db.store import open_store  # 200 ms: only when the records are wanted

    return open_store(paths.database, copies=paths.copies)


def copy_now(paths: "Paths", now: datetime, target: Path | None = None) -> Path:
    """A copy of the records, in the folder of copies unless told where.

    Raises StoreUnavailable.
    """
    from db.backup import copy_store, name_of_copy
    from db.problems import StoreUnavailable

    if not paths.database.exists():
        raise StoreUnavailable("no_copy", {"path": str(paths.database)})
    if target is None:
        target = paths.copies / name_of_copy(paths.database, now, "by_hand")
    return copy_store(paths.database, target)


def refusal_text(refusal: "StoreUnavailable", words: "Words", paths: "Paths") -> str:
    """Why the records can't be used and the way out, in a sentence."""
    return store_text(refusal.code, refusal.data, words, paths)


def world_text(fault: BaseException, words: "Words", paths: "Paths") -> str:
    """What the world refuses: records in use, a full disk; "" where it is a fault of ours."""
    from db.problems import StoreUnavailable

    if isinstance(fault, StoreUnavailable):
        return refusal_text(fault, words, paths)
    if isinstance(fault, OSError) and fault.errno in OF_THE_DISK:
        from db.backup import of_os

        return refusal_text(of_os(fault, Path(fault.filename or paths.data)), words, paths)
    return ""


def store_text(code: str, data: "Mapping[str, str]", words: "Words", paths: "Paths") -> str:
    """The sentence for one of the store's codes."""
    known = {"path": str(paths.database), "copies": str(paths.copies), "detail": "", "table": ""}
    return words.say(f"store.{code}", 1, **{**known, **data})
