"""A file written where the person said, off the window's thread; why it wasn't, in a sentence.

The new file takes the place of an old one only when it is whole: a disk that fills up in the
middle leaves what was there.
"""

import contextlib
import errno
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from PySide6.QtCore import QObject

    from desktop.bench import Bench


def write_out(
    bench: "Bench",
    path: Path,
    content: Callable[[], str | bytes],
    then: Callable[[str], object],
    owner: "QObject",
) -> None:
    """Make the content on a worker and write it; `then` gets "" or why it wasn't written."""

    def write() -> OSError | None:
        made = content()
        try:
            _put(path, made.encode("utf-8") if isinstance(made, str) else made)
        except OSError as fault:
            return fault
        return None

    bench.work.run(
        write,
        then=lambda fault: then("" if fault is None else why_not_written(path, fault)),
        owner=owner,
    )


def why_not_written(path: Path, fault: OSError) -> str:
    """What the world says, and what would work: a full disk, a folder nobody may write in."""
    translate = QCoreApplication.translate
    said = translate("FileOut", "{path} can't be written ({why}).")
    if fault.errno in (errno.ENOSPC, errno.EDQUOT):
        said = translate(
            "FileOut", "{path} was not written: the disk is full. Make room, or choose another."
        )
    elif fault.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        said = translate(
            "FileOut", "{path} can't be written: it is not allowed there. Choose another folder."
        )
    elif fault.errno in (errno.ENOENT, errno.ENOTDIR):
        said = translate("FileOut", "There is no folder {folder}. Choose one that is there.")
    elif fault.errno == errno.EISDIR:
        said = translate("FileOut", "{path} is a folder. Give the file a name of its own.")
    return said.format(path=path, folder=path.parent, why=fault.strerror or fault)


def _put(path: Path, content: bytes) -> None:
    if path.is_dir():
        raise IsADirectoryError(errno.EISDIR, "is a folder", str(path))
    fresh = path.with_name(path.name + ".new")
    try:
        fresh.write_bytes(content)
        fresh.replace(path)
    except OSError:
        with contextlib.suppress(OSError):
            fresh.unlink()
        raise
