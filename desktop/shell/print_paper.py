"""`steelyard print DOCUMENT`: a paper of the shop as PDF, from its records or an order file."""

import argparse
from dataclasses import replace
from datetime import date
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, get_args

from desktop.shell.context import (
    DONE,
    WRONG,
    CommandError,
    Commands,
    guarded,
    now,
    records,
    words_of,
    write_bytes,
)

if TYPE_CHECKING:
    from printing.words import Words
    from shared.billing.statement import Price

SPECIES = ("beef", "bison", "deer", "goat", "lamb", "pork", "veal")
BASES = ("per_lb_hot", "per_lb_chilled", "per_head", "per_share")


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line, one paper a subcommand."""
    command = commands.add_parser(
        "print",
        parents=[everywhere],
        help="write a paper as PDF",
        description="Writes a paper of the shop as PDF. Nothing is issued or released; what was "
        "is printed as it was kept. Exit status 0, 1 when it can't be made, 2 when the command "
        "or the file is wrong.",
    )
    papers = command.add_subparsers(title="documents", metavar="DOCUMENT", required=True)
    sheet = _paper(papers, everywhere, "block-sheet", "what the block cuts of a lot")
    sheet.add_argument("of", metavar="LOT|FILE", help="the lot's number, or an order file")
    sheet.add_argument("--paper", choices=("letter", "a4"), help="paper for an order file")
    _order(_paper(papers, everywhere, "labels", "the labels of an order's packages"))
    form = _paper(papers, everywhere, "order-form", "the blank order form of a species")
    form.add_argument("of", choices=SPECIES, metavar="SPECIES", help=", ".join(SPECIES))
    form.add_argument("--paper", choices=("letter", "a4"), help="the paper's size")
    _order(_paper(papers, everywhere, "bill", "the bill of an order"))
    _order(_paper(papers, everywhere, "quote", "what an order will come to, as a range"))
    what = "weights before cutting and of packages, and the cutting instructions"
    _order(_paper(papers, everywhere, "weight-ticket", what))
    statement = _paper(papers, everywhere, "statement", "the producer's statement to an owner")
    _order(statement)
    statement.add_argument("--price", required=True, help="his price, like $3.00")
    statement.add_argument(
        "--per", choices=BASES, default="per_lb_hot", help="what the price is for"
    )
    for name, what in (
        ("counts", "package counts of a lot"),
        ("trace", "everything that happened to a lot"),
        ("producer-report", "what became of a producer's animals"),
        ("where-it-went", "from live to packages: where did the rest go"),
    ):
        of_lot = _paper(papers, everywhere, name, what)
        of_lot.add_argument("of", type=int, metavar="LOT", help="the lot's number")
    _day(_paper(papers, everywhere, "day-list", "the bookings of a kill day, in their turn"))
    tag = _paper(papers, everywhere, "tag", "the rail tags of an animal")
    tag.add_argument("of", type=int, metavar="LOT", help="the lot's number")
    tag.add_argument("--animal", type=int, default=1, metavar="N", help="which one, from 1")


def _paper(
    papers: Commands, everywhere: argparse.ArgumentParser, name: str, what: str
) -> argparse.ArgumentParser:
    paper = papers.add_parser(name, parents=[everywhere], help=what)
    paper.add_argument(
        "-o", "--output", type=Path, required=True, metavar="FILE", help="the PDF to write"
    )
    paper.set_defaults(run=guarded(run), document=name)
    return paper


def _day(paper: argparse.ArgumentParser) -> None:
    paper.add_argument("of", type=date.fromisoformat, metavar="DAY", help="like 2026-03-09")


def _order(paper: argparse.ArgumentParser) -> None:
    paper.add_argument("of", type=int, metavar="ORDER", help="the order's number")


def run(given: argparse.Namespace) -> int:
    """Make the paper and write it."""
    words = words_of(given)
    if given.document == "order-form":
        pdf = _blank_form(given, words)
    elif given.document == "block-sheet" and not given.of.isdecimal():
        pdf = _sheet_of_file(given, words)
    else:
        pdf = _stored(given, words)
    write_bytes(given, given.output, pdf)
    return DONE


def _stored(given: argparse.Namespace, words: "Words") -> bytes:
    from desktop.shell import stored_papers as papers
    from desktop.shell.day_list_paper import day_list_paper
    from desktop.shell.went_paper import where_it_went_paper
    from printing.words import Words

    price = _price(given, words) if given.document == "statement" else None
    with records(given) as store:
        with store.read() as work:
            words = Words(given.language, work.shop.own_names(given.language))
        if given.document == "block-sheet":
            return papers.sheet_paper(store, int(given.of), words)
        if given.document == "labels":
            return papers.labels_paper(store, given.of, words)
        if given.document == "counts":
            return papers.counts_paper(store, given.of, words)
        if given.document in ("trace", "producer-report"):
            return papers.traced_paper(store, given.of, given.document, words)
        if given.document == "day-list":
            return day_list_paper(store, given.of, words)
        if given.document == "where-it-went":
            return where_it_went_paper(store, given.of, words)
        if given.document == "tag":
            return papers.tag_paper(store, given.of, given.animal, words)
        if given.document == "weight-ticket":
            return papers.ticket_paper(store, given.of, words)
        if given.document == "quote":
            return papers.quote_paper(store, given.of, words)
        billing = papers.billing_of(store, given.of, words)
        if price is not None:
            return papers.statement_paper(billing, price, words)
        return papers.bill_paper(store, billing, words)


def _price(given: argparse.Namespace, words: "Words") -> "Price":
    from shared.billing.statement import Price, PriceBasis
    from shared.money import read_rate

    assert given.per in get_args(PriceBasis)
    rate = read_rate(given.price)
    if not isinstance(rate, Fraction):
        raise CommandError(words.say("bills.problem_price_unread", text=given.price), WRONG)
    return Price(given.per, rate)


def _sheet_of_file(given: argparse.Namespace, words: "Words") -> bytes:
    from desktop.shell.plan import read_order
    from printing.block_sheet import block_sheet
    from shared.carcass.anatomy import catalogue
    from shared.cutting.forecast import forecast
    from shared.cutting.plan import plan
    from shared.shop.details import ShopDetails

    order = read_order(given.of, words)
    known = catalogue(order.species)
    settings = replace(order.question.settings, at_block=True)  # what the block reads
    question = replace(order.question, settings=settings)
    answer = plan(question, known)
    return block_sheet(
        question,
        answer,
        known,
        forecast(question, answer, known),
        lot_number=0,
        sheet_number=0,
        shop=ShopDetails(paper=given.paper or "letter"),
        made=now(),
        words=words,
    )


def _blank_form(given: argparse.Namespace, words: "Words") -> bytes:
    from printing.order_form import FormFor, order_form
    from shared.carcass.anatomy import catalogue
    from shared.shop.details import ShopDetails

    shop = ShopDetails(paper=given.paper or "letter")
    return order_form(catalogue(given.of), FormFor(), shop=shop, made=now(), words=words)
