"""`steelyard records`: the records that must be kept, written out as tables for who may ask."""

import argparse
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

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
from shared.shop.trace import may_go_before

if TYPE_CHECKING:
    from db.store import Store
    from printing.words import Words


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "records",
        parents=[everywhere],
        help="write the kept records as CSV tables",
        description="Writes animals, owners, weights, losses, packages, bills, payments and "
        "changes of a span of days as CSV files into a folder. Nothing is removed.",
    )
    command.add_argument("--from", dest="start", metavar="DAY", help="first day, like 2026-01-31")
    command.add_argument("--to", dest="end", metavar="DAY", help="last day, like 2026-12-31")
    command.add_argument(
        "-o", "--output", type=Path, required=True, metavar="FOLDER", help="where the files go"
    )
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Write the tables and say how many rows there are."""
    words = words_of(given)
    today = now().date()
    start = _day(given.start, may_go_before(today), words)
    end = _day(given.end, today, words)
    if start > end:
        raise CommandError(words.say("trace.records_backwards", start=start, end=end), WRONG)
    with records(given) as store:
        try:
            count = write_records(store, start, end, given.output)
        except OSError as fault:
            detail = fault.strerror or str(fault)
            told = words.say("shell.not_written", path=str(given.output), detail=detail)
            raise CommandError(told, CANT) from fault
    since = may_go_before(today).isoformat()
    say(words.say("trace.records_written", count, path=str(given.output), day=since))
    return DONE


def write_records(
    store: "Store",
    start: date,
    end: date,
    folder: Path,
    told: Callable[[int], bool] = lambda _count: True,
) -> int:
    """Write every table into the folder; the number of rows.

    `told` hears how many rows are written so far and answers whether to go on.
    Raises OSError when the disk refuses.
    """
    from shared.shop.records import TABLES
    from shared.spreadsheet import csv_text

    folder.mkdir(parents=True, exist_ok=True)
    count = 0
    with store.read() as work:
        for table in TABLES:
            path = folder / f"{table.name}.csv"
            with path.open("w", encoding="utf-8-sig", newline="") as out:
                out.write(csv_text(table.columns, ()))
                for piece in work.records.rows(table, start, end):
                    out.write(csv_text(piece[0], piece[1:]))
                    count += len(piece)
                    if not told(count):
                        return count
    return count


def _day(text: str | None, unsaid: date, words: "Words") -> date:
    if text is None:
        return unsaid
    try:
        return date.fromisoformat(text)
    except ValueError as fault:
        raise CommandError(words.say("trace.records_day_unread", text=text), WRONG) from fault
