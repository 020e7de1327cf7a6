"""The order as it was understood, with expected pounds, packages and price as an estimate."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from printing.bill import charge_name, quantity_text
from printing.counts import range_text
from printing.letterhead import (
    Letterhead,
    amount_row,
    day_text,
    money_row,
    notes,
    open_paper,
    sender,
)
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.choice_words import amount_text, finishes_text, ground_in, percent_text
from printing.words.place_words import capital
from shared.billing.bill import Bill, BillLine
from shared.carcass.catalogue import Catalogue
from shared.curing.asked import left_open
from shared.cutting.forecast import Forecast, Range
from shared.cutting.order import Choice, Question
from shared.cutting.promise import promised
from shared.cutting.where_it_went import hanging_ng
from shared.money import money_text
from shared.shop.details import ShopDetails
from shared.units import length_text, weight_text, whole_pounds_text


@dataclass(frozen=True, slots=True)
class Booking:
    """What was booked: the order, the lot, the animals, the day, and whose share it is.

    `share_text` is what he has of the animal in words ("half, side 1"). `open_primals` are the
    codes of what nobody has settled yet and `due` the day by which it must be; `without_answer`
    "usual", "hang" or "ring" is what happens else. `price` is what all of it comes to where it
    runs light and where it runs heavy, in cents.
    """

    order_number: int
    lot_number: int
    species: str
    tags: tuple[str, ...]
    day: date
    owner: str
    share_text: str = ""
    note: str = ""
    deposit_cents: int = 0
    due: date | None = None
    without_answer: str = ""
    open_primals: tuple[str, ...] = ()
    price: tuple[int, int] | None = None


def confirmation(
    booking: Booking,
    question: Question,
    catalogue: Catalogue,
    forecast: Forecast,
    share: int,
    *,
    estimate: Bill | None,
    shop: ShopDetails,
    customer: Sequence[str],
    made: datetime,
    words: Words,
) -> bytes:
    """The confirmation of one owner's order as PDF; every expected figure is called so."""
    head = _head(booking, shop, customer, words)
    source = words.say("bills.from_order", number=booking.order_number)
    paper = open_paper(shop.paper, head, source, made, words)
    choices = [one for one in question.choices if one.share == share]
    if choices:
        _cuts(paper, choices, catalogue, forecast, words)
        paper.skip(6)
        home = _home(question, catalogue, forecast, share)
        packages = range_text(forecast.packages(share))
        said = words.say(
            "bills.expected",
            low=whole_pounds_text(home.low),
            high=whole_pounds_text(home.high),
            packages=packages,
        )
    else:
        said = words.say("bills.nothing_asked")
    paper.paragraph(0, said, 11, paper.room, "semibold")
    if estimate is not None:
        _price(paper, estimate, booking.price, words)
    notes(paper, tuple(_notes(booking, estimate, words, _unsaid(choices, catalogue, words))))
    return paper.pdf()


def _unsaid(choices: Sequence[Choice], catalogue: Catalogue, words: Words) -> list[str]:
    """The cuts of which the owner said neither fresh nor cured."""
    return [
        words.name(catalogue.species, f"cut.{one.cut}")
        for one in choices
        if left_open(catalogue, one.cut, one.finishes)
    ]


def _home(question: Question, catalogue: Catalogue, forecast: Forecast, share: int) -> Range:
    """What the counter tells its owner to expect: the forecast, within what the sources give."""
    whose = (one for one in question.shares if one.number == share)
    hanging = sum(hanging_ng(one, question, catalogue) for one in whose)
    return promised(forecast, share, hanging, catalogue)


def _head(booking: Booking, shop: ShopDetails, customer: Sequence[str], words: Words) -> Letterhead:
    told = ", ".join(tag for tag in booking.tags if tag)
    corner = (booking.owner, words.say("bills.tag", len(booking.tags), tags=told) if told else "")
    animal = words.name(booking.species, f"species.{booking.species}")
    facts = (
        (words.say("bills.kill_day"), day_text(booking.day, words)),
        (words.say("bills.order"), str(booking.order_number)),
        (words.say("bills.lot"), str(booking.lot_number)),
        (words.say("bills.animals"), animal),
        (words.say("bills.share"), booking.share_text),
    )
    return Letterhead(
        sender=sender(shop),
        title=words.say("bills.confirmation_title", number=booking.order_number),
        corner=tuple(line for line in corner if line),
        party=tuple(line for line in customer if line.strip()),
        facts=tuple(fact for fact in facts if fact[1]),
    )


def _cuts(
    paper: Paper,
    choices: Sequence[Choice],
    catalogue: Catalogue,
    forecast: Forecast,
    words: Words,
) -> None:
    columns = (
        Column(words.say("bills.cut"), paper.room - 290),
        Column(words.say("bills.asked"), 80),
        Column(words.say("bills.packed"), 80),
        Column(words.say("bills.expected_packages"), 60, "right"),
        Column(words.say("bills.expected_pounds"), 70, "right"),
    )
    rows = [_row(one, catalogue, forecast, words) for one in choices]
    table(paper, columns, rows)


def _row(choice: Choice, catalogue: Catalogue, forecast: Forecast, words: Words) -> tuple[str, ...]:
    found = forecast.line(choice.line)
    package = choice.package
    packed = ""
    if package.weight is not None:
        packed = weight_text(package.weight)
    elif package.pieces:
        packed = words.say("bills.to_a_package", number=package.pieces)
    return (
        "\n".join(_what(choice, catalogue, words)),
        amount_text(choice, catalogue, words),
        packed,
        range_text(found.packages) if found else "–",
        _pounds_range(found.finished) if found else "–",
    )


def _what(choice: Choice, catalogue: Catalogue, words: Words) -> Iterator[str]:
    species = catalogue.species
    parts = [words.name(species, f"cut.{choice.cut}", 2)]
    if choice.thickness is not None:
        parts.append(length_text(choice.thickness))
    if choice.piece_weight is not None:
        parts.append(weight_text(choice.piece_weight))
    if choice.ribs is not None:
        parts.append(words.say("asked.ribs", choice.ribs))
    if choice.lean is not None:
        parts.append(words.say("asked.lean", percent=percent_text(choice.lean)))
    parts += ground_in(choice, words)
    parts += finishes_text(choice.cut, choice.finishes, catalogue, words)
    yield capital(", ".join(parts))
    if choice.note:
        yield choice.note


def _pounds_range(found: Range) -> str:
    low, high = whole_pounds_text(found.low), whole_pounds_text(found.high)
    number = low.partition("\u00a0")[0]
    return high if low == high else f"{number}–{high}"


def _price(paper: Paper, estimate: Bill, between: tuple[int, int] | None, words: Words) -> None:
    paper.skip(10)
    columns = (
        Column(words.say("bills.what"), paper.room - 170),
        Column(words.say("bills.quantity"), 80, "right"),
        Column(words.say("bills.about_amount"), 90, "right"),
    )
    paper.need(80)
    paper.paragraph(0, words.say("bills.estimate_title"), 12, paper.room, "bold")
    paper.skip(2)
    rows = [
        (
            charge_name(line, words),
            _about(line, words),
            words.say("bills.waits") if line.kind == "waiting" else money_text(line.amount_cents),
        )
        for line in estimate.lines
    ]
    table(paper, columns, rows)
    paper.skip(4)
    if estimate.tax_cents:
        money_row(paper, words.say("bills.tax_sum"), estimate.tax_cents)
    total = money_text(estimate.total_cents)
    if between is not None and between[0] < between[1]:
        low, high = (money_text(cents) for cents in between)
        total = words.say("bills.price_between", low=low, high=high)
    amount_row(paper, words.say("bills.total_estimate"), total, 11, strong=True)


def _about(line: BillLine, words: Words) -> str:
    """How much of it: pounds that aren't weighed yet as whole ones, "about 39 lb"."""
    if line.unit != "lb" or line.quantity is None:
        return quantity_text(line, words)
    return words.say("bills.about_quantity", quantity=f"{round(line.quantity)}\u00a0lb")


def _notes(
    booking: Booking, estimate: Bill | None, words: Words, unsaid: Sequence[str]
) -> Iterator[str]:
    names = [words.name(booking.species, f"primal.{one}") for one in booking.open_primals]
    if names:
        yield words.say("forms.confirm_open", names=", ".join(names))
    if unsaid:
        told = "; ".join(dict.fromkeys(unsaid))
        yield words.say("forms.confirm_fresh_or_cured", names=told)
    if names and booking.due is not None:
        yield words.say("forms.confirm_due", day=day_text(booking.due, words))
    if names and booking.without_answer:
        yield words.say(f"forms.without_{booking.without_answer}")
    yield words.say("bills.note_expected")
    if estimate is not None:
        yield words.say("bills.note_estimate")
        yield words.say("bills.note_services")
    if booking.deposit_cents:
        yield words.say("bills.note_deposit", money=money_text(booking.deposit_cents))
    if booking.note:
        yield words.say("bills.your_note", note=booking.note)
