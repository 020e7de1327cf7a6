"""`steelyard restore`: put a copy in the place of the records; what was there is kept."""

import argparse
from pathlib import Path

from desktop.shell.context import DONE, Commands, guarded, now, paths_of, say, words_of


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "restore",
        parents=[everywhere],
        help="put a copy in the place of the records",
        description="Puts a copy in the place of the shop's records. The copy is checked first, "
        "and the records as they were are kept. Without COPY it lists the copies there are.",
    )
    command.add_argument("copy", nargs="?", type=Path, metavar="COPY", help="the copy to put back")
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """List the copies, or put one back."""
    return _list(given) if given.copy is None else _put_back(given)


def _list(given: argparse.Namespace) -> int:
    from db.backup import list_copies

    paths = paths_of(given)
    copies = list_copies(paths.copies)
    if not copies:
        say(words_of(given).say("shell.no_copies", path=str(paths.copies)))
    for copy in copies:
        say(f"{copy.at:%Y-%m-%d %H:%M} UTC  {copy.kind:16}  {copy.size:>12,}  {copy.path}")
    return DONE


def _put_back(given: argparse.Namespace) -> int:
    from db.backup import restore_store
    from db.problems import StoreUnavailable

    copy: Path = given.copy
    if not copy.exists():
        raise StoreUnavailable("no_copy", {"path": str(copy)})
    paths = paths_of(given)
    paths.make()
    kept = restore_store(copy, paths.database, now=now(), folder=paths.copies)
    words = words_of(given)
    say(words.say("shell.restored", copy=str(copy), path=str(paths.database)))
    if kept is not None:
        say(words.say("shell.kept", path=str(kept)))
    return DONE
