"""The evening of the kill on paper: what an owner's share weighs."""

from collections.abc import Sequence
from datetime import datetime

from printing.hanging_words import HangingNote, how_found, part_told, told_lines
from printing.letterhead import Letterhead, day_text, notes, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from shared.shop.details import ShopDetails


def hanging_notes(
    told: Sequence[tuple[HangingNote, Words]], *, shop: ShopDetails, made: datetime
) -> bytes:
    """One PDF with a note for each share, each in its owner's language and on its own page."""
    from io import BytesIO

    from pypdf import PdfReader, PdfWriter

    writer = PdfWriter()
    for note, words in told:
        writer.append(PdfReader(BytesIO(hanging_note(note, shop=shop, made=made, words=words))))
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def hanging_note(note: HangingNote, *, shop: ShopDetails, made: datetime, words: Words) -> bytes:
    """One owner's note as PDF: a side of 93.5 lb hot is told as 93.5 lb, hot, with how it came."""
    tags = ", ".join(tag for tag in note.tags if tag)
    facts = [
        (words.say("bills.order"), str(note.order_number)),
        (words.say("bills.lot"), str(note.lot_number)),
    ]
    if note.killed_on is not None:
        facts.append((words.say("forms.hangs_killed"), day_text(note.killed_on, words)))
    head = Letterhead(
        sender=sender(shop),
        title=words.say("forms.hangs_title"),
        corner=(note.owner, words.say("bills.tag", len(note.tags), tags=tags))
        if tags
        else (note.owner,),
        party=note.party,
        facts=tuple(facts),
    )
    paper = open_paper(shop.paper, head, words.say("money.ticket_source"), made, words)
    _parts(paper, note, words)
    for at, line in enumerate(told_lines(note, words)):
        paper.need(40)
        paper.skip(8)
        size = 11 if at else 13
        paper.paragraph(0, line, size, paper.room, "regular" if at else "bold")
    notes(paper, tuple(how_found(note.hanging, words)))
    return paper.pdf()


def _parts(paper: Paper, note: HangingNote, words: Words) -> None:
    columns = (
        Column(words.say("money.part"), paper.room - 260),
        Column(words.say("money.how"), 150),
        Column(words.say("money.pounds"), 110, "right"),
    )
    table(paper, columns, [part_told(one, note.tags, words) for one in note.hanging.held], 11)
    paper.skip(6)
