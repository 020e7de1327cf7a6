"""`steelyard self-test`: does every room of this installation work, in a folder of its own."""

import argparse
import os
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.paths import Paths
from desktop.shell.context import CANT, DONE, Commands, complain, now, say, words_of

if TYPE_CHECKING:
    from collections.abc import Callable

ORDER = """{"steelyard_order": 1, "species": "pork",
 "carcasses": [{"tag": "1", "hot": [{"whole": "92 lb"}, {"whole": "92 lb"}]}],
 "shares": [{"number": 1, "owner": "Self test", "holdings": [
   {"carcass": 1, "side": 1, "fraction": "1"}, {"carcass": 1, "side": 2, "fraction": "1"}]}],
 "choices": [{"line": 1, "share": 1, "cut": "whole_ham", "amount": {"pieces": PIECES}}]}"""
"""Two hams hang on two sides: two stand, three can't."""
NAME = "Jørgen & Łucja <O'Neil>"


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "self-test",
        parents=[everywhere],
        help="see that this installation works",
        description="Reads the species, plans an order, makes, copies and checks records, writes "
        "a paper and opens the window, all in a folder of its own that is removed again. "
        "Exit status 0 when everything works, 1 when not.",
    )
    command.add_argument("--no-window", action="store_true", help="leave the window out")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Try each room and say how it went."""
    words = words_of(given)
    tries: list[tuple[str, Callable[[Path], None]]] = [
        ("words", _try_words),
        ("species", _try_species),
        ("plan", _try_plan),
        ("records", _try_records),
        ("paper", _try_paper),
    ]
    if not given.no_window:
        tries.append(("window", _try_window))
    failed = False
    with tempfile.TemporaryDirectory(prefix="steelyard-") as name:
        for what, attempt in tries:
            try:
                attempt(Path(name))
            except Exception as fault:  # whatever it is, it is reported and fails the test
                failed = True
                why = f"{type(fault).__name__}: {fault}"
                complain(words.say("shell.test_failed", what=what, why=why))
            else:
                say(words.say("shell.test_ok", what=what))
    if failed:
        return CANT
    say(words.say("shell.test_all"))
    return DONE


def _expect(found: object, wanted: object, what: str) -> None:
    if found != wanted:
        raise RuntimeError(f"{what}: {found!r}, not {wanted!r}")


def _try_words(_folder: Path) -> None:
    from printing.words import LANGUAGES, Words

    for language in LANGUAGES:
        Words(language, strict=True).name("pork", "cut.whole_ham")


def _try_species(_folder: Path) -> None:
    from shared.carcass import anatomy, checking

    for species in anatomy.species():
        found = checking.check(anatomy.catalogue(species))
        wrong = [fault for fault in found if fault.level == "wrong"]
        _expect(wrong, [], f"faults of {species}")


def _try_plan(_folder: Path) -> None:
    from shared import orderfile
    from shared.carcass import anatomy
    from shared.cutting.plan import plan

    for pieces, wanted in ((2, "sure"), (3, "cant")):
        order = orderfile.read(ORDER.replace("PIECES", str(pieces)))
        if not isinstance(order, orderfile.OrderFile):
            raise RuntimeError(f"the order file: {order}")
        verdict = plan(order.question, anatomy.catalogue(order.species)).verdict
        _expect(verdict, wanted, f"{pieces} hams of one hog")


def _try_records(folder: Path) -> None:
    from db.backup import restore_store
    from db.store import check_store
    from desktop.records import copy_now, open_records

    paths = Paths(folder / "records")
    paths.make()
    store = open_records(paths)
    signed = store.sign_on("Self test", "Self test")
    store.close()
    copy = copy_now(paths, now())
    restore_store(copy, paths.database, now=now(), folder=paths.copies)
    _expect(check_store(paths.database), (), "faults of the records")
    store = open_records(paths)
    with store.read() as work:
        _expect(signed.person in work.people.persons(), True, "the person in the copy")
    store.close()


def _try_paper(_folder: Path) -> None:
    import pypdfium2

    from printing.page import Foot, Paper

    paper = Paper("letter", "Self test", Foot(lambda page, of: f"{page} / {of}", ""), now())
    paper.paragraph(0, NAME, 12, 400)
    document = pypdfium2.PdfDocument(paper.pdf())
    try:
        _expect(NAME in document[0].get_textpage().get_text_range(), True, f"{NAME} on paper")
    finally:
        document.close()


def _try_window(folder: Path) -> None:
    if not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY") or os.name == "nt"):
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from desktop import app

    _expect(app.try_out(folder / "window"), 0, "the window's exit status")
