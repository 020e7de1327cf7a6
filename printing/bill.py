"""The bill: one owner's services of the plant, line by line, and what is left to pay.

A plant's bill never carries the producer's price for the animal; that is his own statement.
"""

from collections.abc import Iterator, Sequence
from datetime import date, datetime
from fractions import Fraction

from printing.letterhead import (
    Letterhead,
    day_text,
    head_text,
    money_row,
    notes,
    number_text,
    open_paper,
    pounds,
    rate_shown,
    sender,
)
from printing.page import Column, Paper, table
from printing.typefaces import width
from printing.words import Words
from printing.written import about_pounds
from shared.billing.bill import Bill, BillLine, Paid
from shared.billing.ended import ENDINGS
from shared.money import money_text
from shared.shop.details import ShopDetails

SIZES = (10.0, 9.0, 8.0)  # the bill is set smaller where that brings it on one page
ON_PAPER = ("by_table", "half_of_whole", "waiting", "below_nothing")


def bill(
    bill: Bill,
    *,
    number: int,
    shop: ShopDetails,
    customer: Sequence[str],
    made: datetime,
    words: Words,
    order_number: int = 0,
    lot_number: int = 0,
    quoted: tuple[int, int] | None = None,
) -> bytes:
    """The bill as PDF, on one page wherever it can be.

    `number` 0 is a draft and says so. `customer` is his name and the lines of his address.
    `quoted` is what a quote comes to at least and at most, in cents.
    """
    head = _head(bill, number, shop, customer, made, words, order_number, lot_number)
    card = words.say("bills.card", name=bill.card_name, day=day_text(bill.card_from, words))
    papers: list[Paper] = []
    for size in SIZES:
        paper = open_paper(shop.paper, head, card, made, words)
        _draw(paper, bill, number, words, size, quoted)
        if paper.page == 1:
            return paper.pdf()
        papers.append(paper)
    return papers[0].pdf()


def charge_name(line: BillLine, words: Words) -> str:
    """What a line is for: the shop's own words, else the catalogue's."""
    if line.name:
        return line.name
    if line.kind == "credit":
        return words.say("bills.credit")
    key = f"charge.{line.code}"
    return words.say(key) if words.has(key) else line.code


def reason_text(line: BillLine, words: Words) -> str:
    """Why a line is there: its reason; for interest its days, on how much and at which rate."""
    if line.code != "late_interest":
        return line.reason
    first, last, *basis = line.reason.split("/", 3)
    days = [day_text(date.fromisoformat(day), words) for day in (first, last)]
    if len(basis) < 2:  # as bills were kept at first
        return words.say("money.late_days", first=days[0], last=days[1])
    amount, rate = money_text(int(basis[0])), number_text(100 * Fraction(basis[1]))
    return words.say("money.late_on", first=days[0], last=days[1], amount=amount, rate=rate)


def quantity_text(line: BillLine, words: Words, *, estimate: bool = False) -> str:
    """How much of it: "187.5 lb", "½ head", "4 packages"; on an estimate "about 188 lb"."""
    if line.quantity is None:
        return ""
    if line.unit == "lb":
        if estimate:
            return words.say("bills.about", what=about_pounds(line.quantity))
        return pounds(line.quantity)
    if line.unit == "each":
        return number_text(line.quantity)
    count = head_text(line.quantity) if line.unit == "head" else number_text(line.quantity)
    few = 1 if line.quantity <= 1 else 2
    return words.say(f"bills.unit_{line.unit}", few, number=count)


def _head(
    bill: Bill,
    number: int,
    shop: ShopDetails,
    customer: Sequence[str],
    made: datetime,
    words: Words,
    order_number: int,
    lot_number: int,
) -> Letterhead:
    key = "bills.estimate_title" if bill.estimate else "bills.draft_title"
    title = words.say("bills.title", number=number) if number else words.say(key)
    facts = [(words.say("bills.date"), day_text(made.astimezone().date(), words))]
    if order_number:
        facts.append((words.say("bills.order"), str(order_number)))
    if lot_number:
        facts.append((words.say("bills.lot"), str(lot_number)))
    facts.append((words.say("bills.animals"), _animals(bill, words)))
    facts.append((words.say(f"bills.hanging_{bill.hanging.kind}"), _hanging(bill, words)))
    tags = ", ".join(tag for tag in bill.animals if tag)
    corner = (bill.owner, words.say("bills.tag", len(bill.animals), tags=tags) if tags else "")
    return Letterhead(
        sender=sender(shop),
        title=title,
        corner=tuple(line for line in corner if line),
        party=tuple(line for line in customer if line.strip()),
        facts=tuple(facts),
    )


def _animals(bill: Bill, words: Words) -> str:
    count = len(bill.animals)
    return f"{count} {words.name(bill.species, f'species.{bill.species}', count)}"


def _hanging(bill: Bill, words: Words) -> str:
    weight = bill.hanging.pounds
    if weight is None:
        return words.say("bills.not_weighed")
    text = pounds(weight)
    if bill.hanging.estimated:
        text = words.say("bills.about", what=about_pounds(weight))
    if bill.hanging.by_table:
        text = words.say("bills.by_table_short", what=text)
    return text


def _draw(
    paper: Paper,
    bill: Bill,
    number: int,
    words: Words,
    size: float,
    quoted: tuple[int, int] | None,
) -> None:
    several = len(bill.animals) > 1
    taxed = bill.tax_cents != 0
    wide = (105.0, 80.0, 62.0, 72.0) + ((50.0,) if taxed else ())
    headings = ("basis", "quantity", "rate", "amount") + (("tax",) if taxed else ())
    rows = [_row(line, bill, words, several=several, taxed=taxed) for line in bill.lines]
    wide = (wide[0], *(_room(at, least, rows, size) for at, least in enumerate(wide[1:], start=2)))
    columns = [Column(words.say("bills.what"), paper.room - sum(wide))]
    columns.append(Column(words.say("bills.basis"), wide[0]))
    for heading, room in zip(headings[1:], wide[1:], strict=True):
        columns.append(Column(words.say(f"bills.{heading}"), room, "right"))
    table(paper, columns, rows, size)
    paper.need(size * 1.6 * (6 + len(bill.paid)))
    paper.skip(8)
    _sums(paper, bill, words, size)
    if quoted is not None and quoted[0] != quoted[1]:
        low, high = (money_text(cents) for cents in quoted)
        paper.skip(6)
        paper.paragraph(
            0, words.say("money.quote_range", low=low, high=high), 12, paper.room, "semibold"
        )
    notes(paper, tuple(_notes(bill, number, words)), min(size, 9.0))


def _room(at: int, least: float, rows: Sequence[tuple[str, ...]], size: float) -> float:
    """What a column of figures takes, so that none of them is broken."""
    return max(least, *(width(row[at], "regular", size) + 8 for row in rows), least)


def _row(
    line: BillLine, bill: Bill, words: Words, *, several: bool, taxed: bool
) -> tuple[str, ...]:
    waits = line.kind == "waiting"
    cells = (
        "\n".join(_what(line, words, several=several)),
        words.say(f"bills.basis_{line.basis}") if line.kind != "credit" else "",
        quantity_text(line, words, estimate=bill.expects(line)),
        rate_shown(line.rate) if line.rate is not None else "",
        words.say("bills.waits") if waits else money_text(line.amount_cents),
    )
    if not taxed:
        return cells
    return (*cells, money_text(line.tax_cents) if line.tax_cents else "")


def _what(line: BillLine, words: Words, *, several: bool) -> Iterator[str]:
    name = charge_name(line, words)
    yield words.say("bills.of_tag", what=name, tag=line.tag) if several and line.tag else name
    if line.reason:
        yield reason_text(line, words)
    if line.kind == "waiting":
        yield words.say(f"bills.waits_{line.waits_for or 'packages'}")
    if line.shrink:
        yield words.say("bills.less_shrink", percent=number_text(line.shrink * 100))
    if line.rule == "shared" and line.whole_cents is not None:
        yield words.say("bills.rule_shared", whole=money_text(line.whole_cents))
    elif line.rule == "minimum" and line.whole_cents not in (None, line.amount_cents):
        whole = money_text(line.whole_cents or 0)
        yield words.say("bills.rule_part_of_minimum", whole=whole)
    elif line.rule in ("minimum", "steps", "kept"):
        yield words.say(f"bills.rule_{line.rule}")
    if line.by_table:
        yield words.say("bills.line_by_table")


def _sums(paper: Paper, bill: Bill, words: Words, size: float) -> None:
    if bill.tax_cents:
        money_row(paper, words.say("bills.charges"), bill.charges_cents, size)
        money_row(paper, words.say("bills.tax_sum"), bill.tax_cents, size)
    money_row(paper, words.say("bills.total"), bill.total_cents, size)
    for paid in bill.paid:
        given = paid.cents if paid.kind == "refund" else -paid.cents
        money_row(paper, _paid_text(paid, words), given, size)
    due = bill.due_cents
    key = "bills.owed" if due < 0 else "bills.due"
    if bill.waiting:
        key = "bills.due_so_far"
    if bill.estimate:
        key = "bills.due_estimate"
    money_row(paper, words.say(key), abs(due) if due < 0 else due, size + 2, strong=True)


def _paid_text(paid: Paid, words: Words) -> str:
    kind = words.say(f"bills.paid_{paid.kind}")
    if paid.kind == "write_off":
        return f"{kind}, {day_text(paid.day, words)}"
    means = words.say(f"bills.means_{paid.means}")
    return f"{kind}, {means}, {day_text(paid.day, words)}"


def ended_notes(bill: Bill, words: Words) -> Iterator[str]:
    """Why lines aren't there of an animal that ended before it was cut, a sentence for each."""
    for one in bill.cautions:
        if one.code in ENDINGS:
            what = words.say("trace.tag", tag=one.key) if one.key else words.say("bills.one_animal")
            yield words.say(f"bills.ended_{one.code}", what=what)


def _notes(bill: Bill, number: int, words: Words) -> Iterator[str]:
    if bill.estimate:
        yield words.say("bills.note_estimate")
    elif not number:
        yield words.say("bills.note_draft")
    yield from dict.fromkeys(ended_notes(bill, words))
    told = {caution.code for caution in bill.cautions}
    for code in ON_PAPER:
        if code in told:
            yield words.say(f"bills.note_{code}")
    yield words.say("bills.note_services")
