"""`steelyard --demo`: an invented shop, made where there is none yet, in a folder of its own."""

import argparse
import runpy
from pathlib import Path

from desktop.paths import Paths, paths_for
from desktop.shell.context import DONE, WRONG, guarded, now, words_of

SCRIPT = Path(__file__).parents[2] / "demo" / "make_demo.py"


def folder(given: argparse.Namespace) -> Path:
    """The folder that was named, else one beside the user's own, never the user's own."""
    if given.data_dir is not None:
        return paths_for(given.data_dir).data
    own = paths_for().data
    return own.with_name(own.name + "-demo")


def make(given: argparse.Namespace) -> int:
    """Make the shop if the folder has none; `demo/make_demo.py` says what is in it."""
    return guarded(_make)(given)


def _make(given: argparse.Namespace) -> int:
    from desktop.records import open_records
    from desktop.shell.context import complain

    paths = Paths(folder(given))
    if paths.database.exists():
        return DONE
    if not SCRIPT.exists():
        complain(words_of(given).say("shell.no_demo"))
        return WRONG
    paths.make()
    store = open_records(paths)
    try:
        runpy.run_path(str(SCRIPT))["make_demo"](store, now().date())
    except BaseException:
        store.close()
        for file in paths.data.glob(paths.database.name + "*"):
            file.unlink()
        raise
    store.close()
    return DONE
