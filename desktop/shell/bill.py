"""`steelyard bill ORDER`: what an order is billed, line by line, from the shop's records."""

import argparse
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from desktop.shell.context import (
    CANT,
    DONE,
    CommandError,
    Commands,
    guarded,
    records,
    say,
    words_of,
    write_bytes,
)

if TYPE_CHECKING:
    from printing.words import Words
    from shared.billing.bill import Bill, BillLine


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "bill",
        parents=[everywhere],
        help="show the bill of an order",
        description="Shows what an order is billed: the bill that would be issued now, or the "
        "last one issued where nothing is left to bill. Nothing is issued. Exit status 0, or 1 "
        "when there is no such order or its bill can't be made.",
    )
    command.add_argument("order", type=int, metavar="ORDER", help="the order's number")
    command.add_argument(
        "-o", "--output", type=Path, metavar="FILE", help="write the bill as PDF to this file"
    )
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Say the bill, or write its paper."""
    from desktop.shell.stored_papers import bill_paper, billing_of, shown_bill

    with records(given) as store:
        words = words_of(given)
        billing = billing_of(store, given.order, words)
        if given.output is not None:
            write_bytes(given, given.output, bill_paper(store, billing, words))
            return DONE
        bill = shown_bill(billing, words)
        issued = billing.bills[-1].number if billing.bills and not billing.has_next else 0
        due = billing.balance.due if issued else bill.due_cents
    if not bill.lines:
        raise CommandError(words.say("shell.nothing_to_bill", number=given.order), CANT)
    say("\n".join(as_text(bill, words, issued, due)).replace("\u00a0", " "))
    return DONE


def as_text(bill: "Bill", words: "Words", issued: int, due: int) -> Iterator[str]:
    """The bill for reading in a shell: its number if it is issued, and what is due now."""
    from printing.letterhead import day_text
    from shared.money import money_text

    yield words.say("bills.title", number=issued) if issued else words.say("bills.draft_title")
    animals = ", ".join(tag for tag in bill.animals if tag)
    yield f"{bill.owner}{', ' if animals else ''}{animals}"
    yield words.say("bills.card", name=bill.card_name, day=day_text(bill.card_from, words))
    yield ""
    yield from (_line(line, words) for line in bill.lines)
    yield ""
    sums = [("bills.tax_sum", bill.tax_cents)] if bill.tax_cents else []
    sums.append(("bills.total", bill.total_cents))
    if due != bill.total_cents:
        sums.append(("bills.paid_in_all", due - bill.total_cents))
    sums.append(("bills.owed" if due < 0 else "bills.due", abs(due)))
    yield from (f"{words.say(key):<75} {money_text(cents):>12}" for key, cents in sums)


def _line(line: "BillLine", words: "Words") -> str:
    from printing.bill import charge_name, quantity_text, reason_text
    from printing.letterhead import rate_shown
    from shared.money import money_text

    what = charge_name(line, words)
    if line.tag:
        what = words.say("bills.of_tag", what=what, tag=line.tag)
    if line.reason:
        what = f"{what}: {reason_text(line, words)}"
    how = quantity_text(line, words)
    if line.rate is not None and how:
        how = f"{how} × {rate_shown(line.rate)}"
    if line.kind == "waiting":
        waits = words.say(f"bills.waits_{line.waits_for or 'packages'}")
        return f"{what:<32} {waits}"
    if line.by_table:
        how = f"{how}, {words.say('bills.line_by_table')}"
    return f"{what:<32} {how:<42} {money_text(line.amount_cents):>12}"
