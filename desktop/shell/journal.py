"""`steelyard journal`: the books of some days, as plain text or as a table."""

import argparse
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from desktop.shell.context import (
    CANT,
    DONE,
    WRONG,
    CommandError,
    Commands,
    guarded,
    now,
    records,
    say,
    words_of,
)

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from printing.words import Words
    from shared.shop.ledger import Entry

PIECE = timedelta(days=31)


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "journal",
        parents=[everywhere],
        help="write the books of some days for the bookkeeper",
        description="Writes every entry of the books, balanced, as plain text in the openly "
        "documented Beancount syntax, or with --csv as a table. Without -o it goes to the "
        "standard output.",
    )
    command.add_argument(
        "--from", dest="start", metavar="DAY", help="first day, like 2026-01-31; else 1 January"
    )
    command.add_argument("--to", dest="end", metavar="DAY", help="last day; without it, today")
    command.add_argument("--csv", action="store_true", help="a table for a spreadsheet")
    command.add_argument("-o", "--output", type=Path, metavar="FILE", help="write to this file")
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Write the journal."""
    words = words_of(given)
    today = now().astimezone().date()
    end = _day(given.end, today, words)
    start = _day(given.start, end.replace(month=1, day=1), words)
    if start > end:
        raise CommandError(words.say("money.days_backwards", start=start, end=end), WRONG)
    with records(given) as store, store.read() as work, _output(given, words) as out:
        title = work.shop.details().name or "Steelyard"
        for line in written(pieces(work, start, end), title, as_csv=given.csv):
            out.write(line)
    if given.output is not None:
        say(words.say("shell.written", path=str(given.output)))
    return DONE


def pieces(work: "Work", start: date, end: date) -> "Iterator[Entry]":
    """The entries of a span, read a month at a time."""
    while start <= end:
        last = min(end, start + PIECE)
        yield from work.ledger.entries(start, last)
        start = last + timedelta(days=1)


def written(entries: "Iterator[Entry]", title: str, *, as_csv: bool) -> Iterator[str]:
    """The journal piece by piece, with line ends."""
    from shared.billing.journal import COLUMNS, journal_lines, journal_rows
    from shared.spreadsheet import csv_text

    if not as_csv:
        yield from (f"{line}\n" for line in journal_lines(entries, title))
        return
    yield csv_text(COLUMNS, ())
    yield from (csv_text(row, ()) for row in journal_rows(entries))


@contextmanager
def _output(given: argparse.Namespace, words: "Words") -> Iterator[TextIO]:
    """Where it goes: the file named, or the standard output."""
    import sys

    if given.output is None:
        yield sys.stdout
        return
    try:
        with given.output.open("w", encoding="utf-8", newline="") as out:
            yield out
    except OSError as fault:
        detail = fault.strerror or str(fault)
        told = words.say("shell.not_written", path=str(given.output), detail=detail)
        raise CommandError(told, CANT) from fault


def _day(text: str | None, unsaid: date, words: "Words") -> date:
    if text is None:
        return unsaid
    try:
        return date.fromisoformat(text)
    except ValueError as fault:
        raise CommandError(words.say("money.day_unread", text=text), WRONG) from fault
