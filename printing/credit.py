"""A credit note: what is given back of a bill, and why; the bill itself stays as it was."""

from collections.abc import Iterator, Sequence
from datetime import datetime

from printing.letterhead import Letterhead, day_text, money_row, notes, open_paper, sender
from printing.page import Column, table
from printing.words import Words
from shared.billing.credit_note import CreditLine, CreditNote
from shared.money import money_text
from shared.shop.details import ShopDetails


def credit(
    note: CreditNote,
    *,
    number: int,
    shop: ShopDetails,
    customer: Sequence[str],
    made: datetime,
    words: Words,
    order_number: int = 0,
) -> bytes:
    """The credit note as PDF; its sums are what the customer gets back, above nothing."""
    facts = [
        (words.say("bills.date"), day_text(made.astimezone().date(), words)),
        (words.say("bills.of_bill"), str(note.bill_number)),
    ]
    if order_number:
        facts.append((words.say("bills.order"), str(order_number)))
    head = Letterhead(
        sender=sender(shop),
        title=words.say("bills.credit_title", number=number),
        corner=(note.owner,) if note.owner else (),
        party=tuple(line for line in customer if line.strip()),
        facts=tuple(facts),
    )
    source = words.say("bills.on_bill", number=note.bill_number)
    paper = open_paper(shop.paper, head, source, made, words)
    taxed = any(line.tax_cents for line in note.lines)
    sums = ("amount", "tax") if taxed else ("amount",)
    columns = [Column(words.say("bills.what"), paper.room - 80 * len(sums))]
    columns += [Column(words.say(f"bills.{one}"), 80, "right") for one in sums]
    table(paper, columns, [_row(line, words)[: len(columns)] for line in note.lines])
    paper.skip(8)
    money_row(paper, words.say("bills.credited"), note.total_cents, 12, strong=True)
    notes(paper, (words.say("bills.reason", reason=note.reason),))
    return paper.pdf()


def _row(line: CreditLine, words: Words) -> tuple[str, ...]:
    tax = money_text(line.tax_cents) if line.tax_cents else ""
    return "\n".join(_what(line, words)), money_text(line.amount_cents), tax


def _what(line: CreditLine, words: Words) -> Iterator[str]:
    key = f"charge.{line.code}"
    if line.code == "credit":
        name = words.say("bills.credit")
    else:
        name = line.name or (words.say(key) if words.has(key) else line.code)
    yield words.say("bills.of_tag", what=name, tag=line.tag) if line.tag else name
    if line.reason:
        yield line.reason
