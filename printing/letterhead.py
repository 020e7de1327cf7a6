"""The head of a paper that goes to a customer, its footer, and figures as papers write them."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from fractions import Fraction

from printing.page import Foot, Paper, PaperName
from printing.typefaces import width, wrap
from printing.words import Words
from shared.money import money_text, rate_text
from shared.shop.details import ShopDetails

NO_BREAK = "\u00a0"
CORNER = 20.0
_PARTS = {
    Fraction(1, 2): "½",
    Fraction(1, 4): "¼",
    Fraction(3, 4): "¾",
    Fraction(1, 8): "⅛",
}


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


def sender(shop: ShopDetails) -> tuple[str, ...]:
    """The plant as its papers name it: name, address, phone, email."""
    lines = [shop.name, *shop.address.splitlines(), shop.phone, shop.email]
    return tuple(line for line in lines if line.strip())


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


def day_text(day: date, words: Words) -> str:
    """A day in words: "March 9, 2026"."""
    month = words.say(f"bills.month_{day.month}")
    return words.say("bills.day", day=day.day, month=month, year=day.year)


def time_text(moment: datetime) -> str:
    """The hour and minute by the shop's own clock: "14:05"."""
    return moment.astimezone().strftime("%H:%M")


def number_text(exact: Fraction, least: int = 0, most: int = 4) -> str:
    """A quantity with the decimals it has, at most four, rounded half up: 187.5, 203.125, 1,250."""
    places = least
    while places < most and (exact * 10**places).denominator != 1:
        places += 1
    scaled = (2 * abs(exact) * 10**places + 1) // 2
    whole, rest = divmod(int(scaled), 10**places)
    sign = "\u2212" if exact < 0 and scaled else ""
    return f"{sign}{whole:,}" + (f".{rest:0{places}d}" if places else "")


def head_text(exact: Fraction) -> str:
    """Heads as people say them: ½, ¼, 1½; a part without a sign of its own as 1/3."""
    whole, part = divmod(exact, 1)
    if not part:
        return str(whole)
    written = _PARTS.get(part, str(part) if not whole else f"{NO_BREAK}{part}")
    return f"{whole or ''}{written}"


def pounds(exact: Fraction) -> str:
    """Pounds with the decimals they have: "187.5 lb"."""
    return f"{number_text(exact)}{NO_BREAK}lb"


def rate_shown(rate: Fraction) -> str:
    """A rate in dollars; one whose decimals never end, to the hundredth of a cent."""
    try:
        return rate_text(rate)
    except ValueError:
        return "$" + number_text(rate / 100, 2)


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
