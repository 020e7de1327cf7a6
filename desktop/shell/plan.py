"""`steelyard plan FILE`: the plan of an order file, or what can't be and what would work."""

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.shell.context import (
    ASKS,
    CANT,
    DONE,
    WRONG,
    CommandError,
    Commands,
    complain,
    guarded,
    records,
    say,
    words_of,
)

if TYPE_CHECKING:
    from printing.words import Words
    from shared.cutting.answer import Verdict
    from shared.orderfile import FileFault, OrderFile

STATUS: "dict[Verdict, int]" = {
    "sure": DONE,
    "likely": DONE,
    "tight": DONE,
    "asks": ASKS,
    "cant": CANT,
}


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "plan",
        parents=[everywhere],
        help="plan the cutting of an order file",
        description="Plans the cutting of an order file and prints the plan, or the conflicts "
        "with what would work. Exit status 0 when it stands, 1 when it can't be cut, 2 when the "
        "file is wrong, 3 when the owners must settle something first.",
    )
    command.add_argument("file", metavar="FILE", help="an order file, or - for standard input")
    command.add_argument("--json", action="store_true", help="print the answer as JSON")
    command.add_argument(
        "--shop",
        type=Path,
        metavar="DIR",
        help="use the figures and names of the shop in this folder; without it the same file "
        "gives the same answer on every machine",
    )
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Read, plan, print."""
    words = words_of(given)
    order = read_order(given.file, words)
    if given.shop is not None:
        order, words = _with_shop(given, order)
    return _answer(order, words, as_json=given.json)


def _answer(order: "OrderFile", words: "Words", *, as_json: bool) -> int:
    from desktop.shell import plan_json, plan_text
    from shared.carcass import anatomy
    from shared.cutting.plan import Planner
    from shared.cutting.remedy import remedies

    catalogue = anatomy.catalogue(order.species)
    planner = Planner(catalogue)
    answer = planner.answer(order.question)
    offered = remedies(order.question, answer, catalogue, planner) if answer.conflicts else ()
    if as_json:
        say(plan_json.as_json(order, catalogue, answer, offered))
    else:
        say(plan_text.as_text(order, catalogue, answer, offered, words))
    return STATUS[answer.verdict]


def read_order(name: str, words: "Words") -> "OrderFile":
    """The order file, or a refusal that names line and field of everything wrong in it."""
    from shared import orderfile

    try:
        text = sys.stdin.read() if name == "-" else Path(name).read_text("utf-8-sig")
    except UnicodeDecodeError as fault:
        raise CommandError(words.say("shell.not_utf8", path=name), WRONG) from fault
    except OSError as fault:
        detail = fault.strerror or str(fault)
        raise CommandError(words.say("shell.no_file", path=name, detail=detail), WRONG) from fault
    found = orderfile.read(text)
    if isinstance(found, orderfile.OrderFile):
        return found
    for each in found[:-1]:
        complain(fault_text(name, each, words))
    raise CommandError(fault_text(name, found[-1], words), WRONG)


def fault_text(name: str, fault: "FileFault", words: "Words") -> str:
    """One fault as "order.json:12:9: /choices/0/cut: …", in words."""
    key = f"file.{fault.code}"
    said = words.say(key, 1, asked=fault.asked, found=fault.found)
    return f"{name}:{fault.line}:{fault.column}: {fault.pointer or '/'}: {said}"


def _with_shop(given: argparse.Namespace, order: "OrderFile") -> "tuple[OrderFile, Words]":
    """The order with the shop's own figures where it has none of its own, and the shop's names."""
    from dataclasses import replace

    from printing.words import Words

    with records(given, given.shop) as store, store.read() as work:
        own = work.shop.planner_settings(order.species, at_block=order.question.settings.at_block)
        names = work.shop.own_names(given.language)
    question = order.question
    settings = replace(
        own,
        kerf_saw=_first(question.settings.kerf_saw, own.kerf_saw),
        kerf_slicer=_first(question.settings.kerf_slicer, own.kerf_slicer),
        own_lengths=question.settings.own_lengths or own.own_lengths,
        at_block=question.settings.at_block,
    )
    return replace(order, question=replace(question, settings=settings)), Words(
        given.language, names
    )


def _first(said: int | None, own: int | None) -> int | None:
    return own if said is None else said
