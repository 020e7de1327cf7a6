"""What every command has at hand: the shop's folder, the words, and where to say things."""

import argparse
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.paths import Paths, paths_for
from printing.words import LANGUAGES, Words

if TYPE_CHECKING:
    from db.store import Store

__all__ = [
    "ASKS",
    "CANT",
    "DONE",
    "LANGUAGES",
    "WRONG",
    "CommandError",
    "Commands",
    "complain",
    "guarded",
    "now",
    "paths_of",
    "records",
    "say",
    "words_of",
    "write_bytes",
]

DONE, CANT, WRONG, ASKS = 0, 1, 2, 3

Commands = argparse._SubParsersAction  # noqa: SLF001  # argparse gives it no other name
Run = Callable[[argparse.Namespace], int]


class CommandError(Exception):
    """A command can't go on: its sentence for people and the exit status."""

    def __init__(self, sentence: str, status: int) -> None:
        super().__init__(sentence)
        self.sentence = sentence
        self.status = status


def paths_of(given: argparse.Namespace) -> Paths:
    """The shop's folder that was named, else the user's own."""
    return paths_for(given.data_dir)


def words_of(given: argparse.Namespace) -> Words:
    """The words of the language asked for, else English."""
    return Words(given.language)


def now() -> datetime:
    """This moment."""
    return datetime.now(UTC)


def say(sentence: str) -> None:
    """To the standard output."""
    sys.stdout.write(sentence + "\n")


def complain(sentence: str) -> None:
    """To the standard error."""
    sys.stderr.write(sentence + "\n")


def guarded(run: Run) -> Run:
    """A command whose refusals, and the store's, end as a sentence and an exit status."""

    def guarded_run(given: argparse.Namespace) -> int:
        from db.problems import StoreUnavailable
        from desktop.records import refusal_text

        try:
            return run(given)
        except CommandError as refusal:
            complain(refusal.sentence)
            return refusal.status
        except StoreUnavailable as refusal:
            complain(refusal_text(refusal, words_of(given), paths_of(given)))
            return CANT
        except BrokenPipeError:
            return CANT

    return guarded_run


@contextmanager
def records(given: argparse.Namespace, folder: Path | None = None) -> "Iterator[Store]":
    """The shop's records, which must be there already; closed at the end."""
    from desktop.records import open_records

    paths = paths_of(given) if folder is None else Paths(folder)
    if not paths.database.exists():
        raise CommandError(
            words_of(given).say("shell.no_records", path=str(paths.database)), status=CANT
        )
    store = open_records(paths)
    try:
        yield store
    finally:
        store.close()


def write_bytes(given: argparse.Namespace, path: Path, content: bytes) -> None:
    """Write a file and say so; a refusal of the disk is a sentence."""
    words = words_of(given)
    try:
        path.write_bytes(content)
    except OSError as fault:
        raise CommandError(
            words.say("shell.not_written", path=str(path), detail=fault.strerror or str(fault)),
            status=CANT,
        ) from fault
    say(words.say("shell.written", path=str(path)))
