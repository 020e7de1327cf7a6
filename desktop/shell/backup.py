"""`steelyard backup`: a whole copy of the records, also while the window is open."""

import argparse
from pathlib import Path

from desktop.records import copy_now
from desktop.shell.context import DONE, Commands, guarded, now, paths_of, say, words_of


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "backup",
        parents=[everywhere],
        help="copy the records, also while they are in use",
        description="Makes a whole, consistent copy of the shop's records, also while the window "
        "is open. Without -o it goes into the shop's folder of copies.",
    )
    command.add_argument("-o", "--output", type=Path, metavar="FILE", help="where the copy goes")
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Make the copy and say where it is."""
    made = copy_now(paths_of(given), now(), given.output)
    say(words_of(given).say("shell.copied", path=str(made)))
    return DONE
