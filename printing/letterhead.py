"""The head of a paper that goes to a customer, its footer, and sums at its right."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from printing.page import Foot, Paper, PaperName
from printing.typefaces import width, wrap
from printing.words import Words
from printing.written import (
    NO_BREAK,
    day_text,
    head_text,
    number_text,
    pounds,
    rate_shown,
    sender,
    time_text,
)
from shared.money import money_text

__all__ = [
    "CORNER",
    "NO_BREAK",
    "Letterhead",
    "amount_row",
    "day_text",
    "head_text",
    "money_row",
    "notes",
    "number_text",
    "open_paper",
    "pounds",
    "rate_shown",
    "sender",
    "time_text",
]

CORNER = 20.0


@dataclass(frozen=True, slots=True)
class Letterhead:
    """Who writes, what the paper is, whom it is about, and the facts beside the address.

    `corner` is told in 20 points at the top right of every page: the owner and the tags.
    """

    sender: tuple[str, ...]
    title: str
    corner: tuple[str, ...]
    party: tuple[str, ...] = ()
    facts: tuple[tuple[str, str], ...] = ()

    def draw(self, paper: Paper) -> None:
        """The head at the cursor: whole on the first page, title and corner on the others."""
        left = self._sender(paper) if paper.page == 1 else 0.0
        right = self._corner(paper)
        paper.y = max(left, right) + 6
        paper.rule(0.8)
        paper.skip(6)
        paper.text(0, paper.y + 14, self.title, 16, "bold")
        paper.skip(24)
        if paper.page == 1:
            self._addressed(paper)

    def _sender(self, paper: Paper) -> float:
        y = 0.0
        room = paper.room * 0.45
        for number, line in enumerate(self.sender):
            size, face = (13.0, "bold") if number == 0 else (9.0, "regular")
            for part in wrap(line, face, size, room):
                y += size * 1.3
                paper.text(0, y, part, size, face)
        return y

    def _corner(self, paper: Paper) -> float:
        y = 0.0
        for line in self.corner:
            for part in wrap(line, "bold", CORNER, paper.room * 0.52):
                y += CORNER * 1.15
                paper.text(paper.room, y, part, CORNER, "bold", "right")
        return y

    def _addressed(self, paper: Paper) -> None:
        top, half = paper.y, paper.room * 0.5
        for line in self.party:
            for part in wrap(line, "regular", 11, half - 12):
                paper.text(0, paper.y + 11, part, 11)
                paper.skip(14)
        left, paper.y = paper.y, top
        for label, value in self.facts:
            paper.text(half, paper.y + 11, label, 9)
            for part in wrap(value, "semibold", 10, half - 95):
                paper.text(half + 95, paper.y + 11, part, 10, "semibold")
                paper.skip(14)
        paper.y = max(left, paper.y) + 8


def open_paper(
    name: PaperName, head: Letterhead, source: str, made: datetime, words: Words
) -> Paper:
    """A paper with this head on every page; `source` is what the footer says it was made from."""

    def page_of(page: int, pages: int) -> str:
        return words.say("bills.page", page=page, pages=pages)

    day = day_text(made.astimezone().date(), words)
    printed = words.say("bills.printed", day=day, time=time_text(made))
    foot = f"{printed} · {source}" if source else printed
    paper = Paper(name, head.title, Foot(page_of, foot), made)
    paper.set_head(head.draw)
    return paper


def notes(paper: Paper, texts: Sequence[str], size: float = 9.0) -> None:
    """What must be told beside the figures, in one box that is never cut."""
    if not texts:
        return
    room = paper.room - 16
    lines = [line for text in texts for line in wrap(text, "regular", size, room)]
    high = len(lines) * size * 1.35 + 12
    paper.need(high + 8)
    paper.skip(8)
    paper.box(0, paper.y, paper.room, high)
    for number, line in enumerate(lines):
        paper.text(8, paper.y + 6 + size + number * size * 1.35, line, size)
    paper.skip(high)


def money_row(
    paper: Paper, label: str, cents: int, size: float = 10.0, *, strong: bool = False
) -> None:
    """One line of a sum at the right: its name and its amount; strong ones in a box.

    A long name takes further lines beside the amount.
    """
    amount_row(paper, label, money_text(cents), size, strong=strong)


def amount_row(
    paper: Paper, label: str, amount: str, size: float = 10.0, *, strong: bool = False
) -> None:
    """The same with the amount in words, e.g. a range: "$216.42 – $245.39"."""
    face = "bold" if strong else "regular"
    lines = wrap(label, face, size, 256 - width(amount, face, size) - 8)
    high = size * 1.6 + (len(lines) - 1) * size * 1.3
    paper.need(high)
    left = paper.room - 260
    if strong:
        paper.skip(3)
        paper.box(left - 8, paper.y, 268, high + 4, 1.0)
        paper.skip(2)
    for number, line in enumerate(lines):
        paper.text(left, paper.y + size * (1.15 + 1.3 * number), line, size, face)
    paper.text(paper.room - 4, paper.y + size * 1.15, amount, size, face, "right")
    paper.skip(high + (4 if strong else 0))
