"""The weight ticket: weight before cutting, net weights by kind of package, cutting instructions.

Some states ask sellers of bulk meat to give such a paper and to keep a copy (California B&P
12024.9 and 12024.10, New York Ag & Mkts 190-b). The plant prints what its scale says; whether a
seller must hand one out, and how far net may lie from it, is for the seller's own state.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction

from printing.counts import Counted, ShareCounts, net_text
from printing.letterhead import Letterhead, notes, number_text, open_paper, pounds, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.choice_words import choice_text
from printing.words.place_words import capital
from shared.billing.quantities import HangingWeights, HeldWeight
from shared.carcass.catalogue import Catalogue
from shared.cutting.order import Choice
from shared.shop.details import ShopDetails

GROUND = ("ground", "patties")


@dataclass(frozen=True, slots=True)
class TicketShare:
    """One owner's share as weighed: what hung, what was packed, and what he asked for."""

    counts: ShareCounts
    hanging: HangingWeights
    choices: tuple[Choice, ...]
    tags: tuple[str, ...]
    seller: str = ""

    @property
    def packed(self) -> tuple[Counted, ...]:
        """The kinds of package that were made."""
        return tuple(row for row in self.counts.rows if row.packages)

    @property
    def ground(self) -> Fraction:
        """Pounds of ground meat and patties among them."""
        return sum((row.finished for row in self.packed if is_ground(row)), Fraction(0))

    @property
    def cutting_loss(self) -> Fraction | None:
        """Before cutting less net: 187.5 lb less 121.5 lb is 66 lb; None while it isn't weighed.

        A package that was counted leaves it unknown.
        """
        before = self.hanging.pounds
        return None if before is None or self.counts.by_count else before - self.counts.finished


def is_ground(row: Counted) -> bool:
    """Whether a kind of package is ground meat: by its cut's code or what was done to it."""
    return row.cut.startswith("ground") or any(
        one in GROUND for one in (*row.cut.split("_"), *row.finishes)
    )


def weight_ticket(
    share: TicketShare,
    *,
    catalogue: Catalogue,
    lot_number: int,
    shop: ShopDetails,
    buyer: Sequence[str],
    made: datetime,
    words: Words,
) -> bytes:
    """The ticket of one share as PDF; `buyer` is his name and the lines of his address."""
    tags = ", ".join(tag for tag in share.tags if tag)
    corner = [share.counts.owner]
    if tags:
        corner.append(words.say("bills.tag", len(share.tags), tags=tags))
    facts = [
        (words.say("bills.order"), str(share.counts.order_number)),
        (words.say("bills.lot"), str(lot_number)),
    ]
    if share.seller:
        facts.append((words.say("money.seller"), share.seller))
    head = Letterhead(
        sender=sender(shop),
        title=words.say("money.ticket_title"),
        corner=tuple(corner),
        party=tuple(line for line in buyer if line.strip()),
        facts=tuple(facts),
    )
    paper = open_paper(shop.paper, head, words.say("money.ticket_source"), made, words)
    _before(paper, share, words)
    _packed(paper, share, catalogue.species, words)
    _sums(paper, share, words)
    _asked(paper, share.choices, catalogue, words)
    notes(paper, tuple(_notes(share.hanging, words)))
    return paper.pdf()


def _heading(paper: Paper, text: str) -> None:
    paper.need(90)
    paper.skip(8)
    paper.paragraph(0, text, 13, paper.room, "bold")
    paper.skip(4)


def _before(paper: Paper, share: TicketShare, words: Words) -> None:
    kind = words.say(f"bills.hanging_{share.hanging.kind}")
    _heading(paper, words.say("money.before_cutting", kind=kind))
    columns = (
        Column(words.say("money.part"), paper.room - 260),
        Column(words.say("money.how"), 150),
        Column(words.say("money.pounds"), 110, "right"),
    )
    rows = [_held(one, share.tags, words) for one in share.hanging.held]
    if len(rows) > 1:
        rows.append((words.say("bills.all"), "", _pounds_or_waits(share.hanging.pounds, words)))
    table(paper, columns, rows)


def _held(one: HeldWeight, tags: Sequence[str], words: Words) -> tuple[str, str, str]:
    tag = tags[one.carcass] if one.carcass < len(tags) else ""
    parts = [words.say("place.side", side=one.side)]
    if one.quarter:
        parts.append(words.say(f"quarter.{one.quarter}"))
    if one.fraction != 1:
        parts.append(words.say("money.part_of", fraction=str(one.fraction)))
    place = capital(", ".join(parts))
    what = words.say("bills.of_tag", what=place, tag=tag) if tag else place
    return what, words.say(f"money.how_{one.source}"), _pounds_or_waits(one.pounds, words)


def _pounds_or_waits(exact: Fraction | None, words: Words) -> str:
    return words.say("bills.not_weighed") if exact is None else number_text(exact, 2)


def _packed(paper: Paper, share: TicketShare, species: str, words: Words) -> None:
    _heading(paper, words.say("money.net_weights"))
    columns = (
        Column(words.say("money.package_kind"), paper.room - 220),
        Column(words.say("bills.made_packages"), 110, "right"),
        Column(words.say("money.net_pounds"), 110, "right"),
    )
    rows = [
        (_product(row, species, words), str(row.packages), net_text(row, words))
        for row in share.packed
    ]
    total = net_text(share.counts, words)
    rows.append((words.say("bills.all"), str(share.counts.packages), total))
    table(paper, columns, rows)


def _product(row: Counted, species: str, words: Words) -> str:
    name = row.product or words.name(species, f"cut.{row.cut}", 2)
    done = [words.name(species, f"finish.{one}") for one in row.finishes]
    return capital(", ".join((name, *done)))


def _sums(paper: Paper, share: TicketShare, words: Words) -> None:
    told = [words.say("money.ground", pounds=pounds(share.ground))]
    before, loss = share.hanging.pounds, share.cutting_loss
    if share.counts.by_count:
        told.append(words.say("money.loss_by_count"))
    elif before is None or loss is None:
        told.append(words.say("money.loss_waits"))
    else:
        percent = number_text(loss / before * 100, 1, 1) if before else "0"
        told.append(words.say("money.loss", pounds=pounds(loss), percent=percent))
    paper.need(40)
    paper.skip(6)
    for line in told:
        paper.paragraph(0, line, 11, paper.room, "semibold")
        paper.skip(2)


def _asked(paper: Paper, choices: Sequence[Choice], catalogue: Catalogue, words: Words) -> None:
    _heading(paper, words.say("money.instructions"))
    if not choices:
        paper.paragraph(0, words.say("money.no_instructions"), 10, paper.room)
    for choice in choices:
        text = capital(choice_text(choice, catalogue, words))
        if choice.note:
            text = f"{text} – {choice.note}"
        paper.paragraph(0, text, 10, paper.room)
        paper.skip(2)


def _notes(hanging: HangingWeights, words: Words) -> Iterator[str]:
    yield words.say("money.note_ticket")
    if any(one.source == "half_of_whole" for one in hanging.held):
        yield words.say("bills.note_half_of_whole")
    if hanging.by_table:
        yield words.say("bills.note_by_table")
