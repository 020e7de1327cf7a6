"""The program from a shell: one command a file in `desktop/shell/`; no command opens the window.

Exit status: 0 done (a plan that stands), 1 it can't be done (a plan that can't be cut, records
that can't be used), 2 the command or the file is wrong, 3 the owners must settle something first.
"""

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

from desktop.shell import (
    backup,
    bill,
    check_store,
    figures,
    journal,
    plan,
    print_paper,
    records,
    restore,
    self_test,
)
from desktop.shell.context import LANGUAGES

COMMANDS = (
    plan,
    figures,
    print_paper,
    bill,
    journal,
    records,
    backup,
    restore,
    check_store,
    self_test,
)


def parser() -> argparse.ArgumentParser:
    """The whole command line with its help."""
    everywhere = argparse.ArgumentParser(add_help=False)
    _add_options(everywhere, argparse.SUPPRESS)
    top = argparse.ArgumentParser(
        prog="steelyard",
        description="Processing orders, cut sheets, labels and bills for a small custom meat "
        "plant. Without a command the window opens.",
        epilog="Exit status: 0 done, 1 it can't be done, 2 the command or the file is wrong, "
        "3 the owners must settle something first.",
    )
    _add_options(top, None)
    top.add_argument(
        "--demo",
        action="store_true",
        help="make an invented shop in the data folder if there is none yet, and open it",
    )
    commands = top.add_subparsers(title="commands", metavar="COMMAND", dest="command")
    for command in COMMANDS:
        command.add_to(commands, everywhere)
    return top


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command, or open the window; the exit status."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(encoding="utf-8", errors="replace")
    given = parser().parse_args(arguments)
    given.language = given.language or "en"
    if given.command is not None:
        return int(given.run(given))
    return _open_window(given)


def _add_options(to: argparse.ArgumentParser, default: object) -> None:
    to.add_argument(
        "--data-dir",
        type=Path,
        metavar="FOLDER",
        default=default,
        help="the shop's folder; without it, the one this system keeps for the user",
    )
    to.add_argument(
        "--language",
        choices=LANGUAGES,
        default=default,
        help="the language of what is printed and said",
    )


def _open_window(given: argparse.Namespace) -> int:
    data_dir: Path | None = given.data_dir
    if given.demo:
        from desktop.shell import demo_shop

        status = demo_shop.make(given)
        if status:
            return status
        data_dir = demo_shop.folder(given)
    from desktop import app  # Qt is read only here

    return app.run(data_dir)


if __name__ == "__main__":
    sys.exit(main())
