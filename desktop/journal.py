"""What is half typed at a station, kept in a file of its own in case the program is killed.

One thread writes it, at most 300 ms after the key; the window's thread never waits for the disk.
"""

import contextlib
import json
import logging
import os
import threading
from collections.abc import Callable, Mapping
from pathlib import Path
from time import monotonic

from PySide6.QtCore import QLockFile

log = logging.getLogger(__name__)
GATHER_S = 0.15  # keys that follow one another are written together, well within 300 ms

MOST_WINDOWS = 9  # of one station that are open at once

Texts = Mapping[str, str]


def own_journal(folder: Path, station_id: int) -> "Journal":
    """The journal of a station, which no other window that is open writes or reads.

    Opened twice on one computer, the second window would show what is being typed in the first,
    and write over its drafts. It has a file of its own. What a killed window held is free again.
    """
    for nth in range(1, MOST_WINDOWS + 1):
        path = folder / (
            f"station-{station_id}.json" if nth == 1 else f"station-{station_id}-{nth}.json"
        )
        lock = QLockFile(str(path.with_suffix(".lock")))
        lock.setStaleLockTime(0)  # held as long as its program runs, be it for days
        if lock.tryLock(0):
            return Journal(path, lock.unlock)
        if lock.error() is not QLockFile.LockError.LockFailedError:
            break  # nothing can be written there, drafts neither
    return Journal(folder / f"station-{station_id}.json")


class Journal:
    """Drafts by name, e.g. "line": texts of fields by name. Safe from any thread.

    The whole file is written anew beside the old one and put in its place, so that a kill in
    the middle leaves the one or the other.
    """

    def __init__(self, path: Path, release: Callable[[], object] | None = None) -> None:
        """Drafts in this file; `release` gives the file to another when it is closed."""
        self._path = path
        self._release = release
        self._drafts: dict[str, dict[str, str]] | None = None
        self._changed = threading.Condition()
        self._dirty_since: float | None = None
        self._ending = self._writing = False
        self._writer: threading.Thread | None = None

    def note(self, name: str, texts: Texts, *, at_once: bool = False) -> None:
        """Keep what now stands in a form; it is on the disk within 300 ms, or is written at once.

        Who must know that it is there waits for it on a worker (`wait_written`).
        """
        with self._changed:
            drafts = self._read()
            if drafts.get(name) != dict(texts):
                drafts.pop(name, None)
                drafts[name] = dict(texts)
                self._wake()
                if at_once:
                    self._dirty_since = monotonic() - GATHER_S

    def wait_written(self, most: float = 2.0) -> bool:
        """Wait until all that was noted is on the disk; False where it isn't after so long."""
        with self._changed:
            return self._changed.wait_for(
                lambda: self._dirty_since is None and not self._writing, most
            )

    def forget(self, name: str) -> None:
        """The form was taken or left: nothing of it is half typed any more."""
        with self._changed:
            if self._read().pop(name, None) is not None:
                self._wake()

    def found(self, name: str) -> dict[str, str] | None:
        """What was half typed under this name, or None."""
        with self._changed:
            texts = self._read().get(name)
            return None if texts is None else dict(texts)

    def names(self) -> tuple[str, ...]:
        """Every draft, the one typed last at the end."""
        with self._changed:
            return tuple(self._read())

    def close(self) -> None:
        """Write what is still to be written, and end the thread."""
        with self._changed:
            self._ending = True
            self._changed.notify_all()
            writer, self._writer = self._writer, None
        if writer is not None:
            writer.join()
        with self._changed:
            self._ending = False
        if self._release is not None:
            self._release()

    def _read(self) -> dict[str, dict[str, str]]:
        if self._drafts is None:
            self._drafts = _drafts_in(self._path)
        return self._drafts

    def _wake(self) -> None:
        if self._dirty_since is None:
            self._dirty_since = monotonic()
        if self._writer is None:
            self._writer = threading.Thread(target=self._run, name="journal", daemon=True)
            self._writer.start()
        self._changed.notify_all()

    def _run(self) -> None:
        while True:
            with self._changed:
                while self._dirty_since is None and not self._ending:
                    self._changed.wait()
                if self._dirty_since is None:
                    return
                left = self._dirty_since + GATHER_S - monotonic()
                if left > 0 and not self._ending:
                    self._changed.wait(left)
                    continue
                text = json.dumps(self._drafts, ensure_ascii=False)
                self._dirty_since, self._writing = None, True
            self._write(text)
            with self._changed:
                self._writing = False
                self._changed.notify_all()

    def _write(self, text: str) -> None:
        new = self._path.with_suffix(".new")
        try:
            with new.open("w", encoding="utf-8") as file:
                file.write(text)
                file.flush()
                os.fsync(file.fileno())
            new.replace(self._path)
        except OSError:
            log.exception("drafts not written to %s", self._path)


def _drafts_in(path: Path) -> dict[str, dict[str, str]]:
    """The drafts of a file; none of a file that is missing. One that can't be read is set aside."""
    try:
        found: object = json.loads(path.read_text(encoding="utf-8"))
    except FileNotFoundError:
        return {}
    except (OSError, ValueError, RecursionError):
        log.exception("drafts not read from %s", path)
        with contextlib.suppress(OSError):
            path.replace(path.with_suffix(".damaged"))
        return {}
    drafts: dict[str, dict[str, str]] = {}
    if isinstance(found, dict):
        for name, texts in found.items():
            if isinstance(texts, dict):
                drafts[str(name)] = {str(key): str(text) for key, text in texts.items()}
    return drafts
