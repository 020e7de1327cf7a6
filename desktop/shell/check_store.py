"""`steelyard check-store`: is every page and every row of the records as it should be."""

import argparse
from pathlib import Path

from desktop.records import store_text
from desktop.shell.context import (
    CANT,
    DONE,
    CommandError,
    Commands,
    complain,
    guarded,
    paths_of,
    say,
    words_of,
)


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "check-store",
        parents=[everywhere],
        help="check the records, or a copy of them",
        description="Checks every page and every row of the shop's records, or of a copy. "
        "Exit status 0 when all is sound, 1 when not. Records of an older version are "
        "sound when nothing else is wrong with them; opening brings them up to date.",
    )
    command.add_argument("file", nargs="?", type=Path, metavar="FILE", help="a copy to check")
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Say what is wrong, each on a line, or that nothing is."""
    from db.store import check_store

    paths, words = paths_of(given), words_of(given)
    path: Path = given.file or paths.database
    if not path.exists():
        raise CommandError(words.say("shell.no_records", path=str(path)), status=CANT)
    faults = check_store(path)
    if [one.code for one in faults] == ["not_migrated"]:
        say(words.say("shell.sound_older", path=str(path)))
        return DONE
    for fault in faults:
        complain(store_text(fault.code, {"path": str(path), **fault.data}, words, paths))
    if faults:
        return CANT
    say(words.say("shell.sound", path=str(path)))
    return DONE
