"""The producer's statement to a buyer: his price for the animal, in his name, not the plant's."""

from collections.abc import Iterator, Sequence
from datetime import datetime

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
)
from printing.page import Column, PaperName, table
from printing.words import Words
from shared.billing.statement import Statement, StatementLine, TakeHome
from shared.money import money_text


def statement(
    statement: Statement,
    *,
    producer: Sequence[str],
    buyer: Sequence[str],
    paper: PaperName,
    made: datetime,
    words: Words,
    take_home: TakeHome | None = None,
    plant_bill_cents: int | None = None,
) -> bytes:
    """The statement as PDF; `producer` and `buyer` are the lines that stand under their names.

    With `plant_bill_cents` it says what the plant bills beside it, with `take_home` what a pound
    carried home costs in all.
    """
    head = _head(statement, producer, buyer, made, words)
    sheet = open_paper(paper, head, "", made, words)
    columns = (
        Column(words.say("bills.what"), sheet.room - 340),
        Column(words.say("bills.basis"), 110),
        Column(words.say("bills.quantity"), 80, "right"),
        Column(words.say("bills.rate"), 70, "right"),
        Column(words.say("bills.amount"), 80, "right"),
    )
    table(sheet, columns, [_row(line, statement, words) for line in statement.lines])
    sheet.need(120)
    sheet.skip(8)
    money_row(sheet, words.say("bills.total"), statement.total_cents)
    if statement.deposit_cents:
        money_row(sheet, words.say("bills.paid_to_producer"), -statement.deposit_cents)
    due = statement.due_cents
    key = "bills.owed" if due < 0 else "bills.due_producer"
    money_row(sheet, words.say(key, name=statement.producer), abs(due), 12, strong=True)
    notes(sheet, tuple(_notes(statement, take_home, plant_bill_cents, words)))
    return sheet.pdf()


def _head(
    statement: Statement,
    producer: Sequence[str],
    buyer: Sequence[str],
    made: datetime,
    words: Words,
) -> Letterhead:
    tags = ", ".join(tag for tag in statement.animals if tag)
    corner = [statement.owner]
    if tags:
        corner.append(words.say("bills.tag", len(statement.animals), tags=tags))
    count = len(statement.animals)
    facts = [
        (words.say("bills.date"), day_text(made.astimezone().date(), words)),
        (
            words.say("bills.animals"),
            f"{count} {words.name(statement.species, f'species.{statement.species}', count)}",
        ),
    ]
    hanging = statement.hanging
    if hanging.pounds is not None:
        weight = pounds(hanging.pounds)
        if hanging.by_table:
            weight = words.say("bills.by_table_short", what=weight)
        facts.append((words.say(f"bills.hanging_{hanging.kind}"), weight))
    return Letterhead(
        sender=(statement.producer, *(line for line in producer if line.strip())),
        title=words.say("bills.statement_title"),
        corner=tuple(corner),
        party=(statement.owner, *(line for line in buyer if line.strip())),
        facts=tuple(facts),
    )


def _row(line: StatementLine, statement: Statement, words: Words) -> tuple[str, ...]:
    animal = words.name(statement.species, f"species.{statement.species}")
    what = words.say("bills.your_share")
    if line.animal:
        what = f"{animal[:1].upper()}{animal[1:]}"
        if line.tag:
            what = words.say("bills.of_tag", what=what, tag=line.tag)
    if line.unit == "lb":
        quantity = pounds(line.quantity)
    elif line.unit == "head":
        few = 1 if line.quantity <= 1 else 2
        quantity = words.say("bills.unit_head", few, number=head_text(line.quantity))
    else:
        quantity = number_text(line.quantity)
    basis = words.say(f"bills.basis_{line.basis}")
    return what, basis, quantity, rate_shown(line.rate), money_text(line.amount_cents)


def _notes(
    statement: Statement, take_home: TakeHome | None, plant_cents: int | None, words: Words
) -> Iterator[str]:
    yield words.say("bills.note_statement", name=statement.producer)
    if plant_cents is not None:
        both = money_text(plant_cents + statement.total_cents)
        yield words.say("bills.note_both", plant=money_text(plant_cents), both=both)
    if take_home is not None:
        yield words.say(
            "bills.note_take_home",
            pounds=pounds(take_home.pounds),
            per_lb=money_text(take_home.per_lb_cents),
        )
        under = take_home.under_percent
        if under is not None:
            key = "bills.note_under" if under >= 0 else "bills.note_over"
            yield words.say(key, percent=abs(under))
    if statement.hanging.by_table:
        yield words.say("bills.note_by_table")
