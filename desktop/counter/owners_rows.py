"""Owners side by side: what each says of one primal, whether they answered, and whom to ring."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.choice_words import cut_words, finish_words
from desktop.counter.share_words import share_words
from desktop.look.patterns import Mark
from printing.words import sentences
from printing.words.choice_words import amount_text
from shared.cutting.owners_questions import put_together

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words
    from shared.shop.orders import Order

WORST = (Mark.CONTESTED, Mark.OPEN, Mark.TIGHT, Mark.SETTLED)


@dataclass(frozen=True, slots=True)
class OwnersRow:
    """One row: what it is about, a cell with its mark for each owner, the primal it begins."""

    what: str
    cells: tuple[tuple[str, Mark], ...]
    primal: str = ""


def owners_rows(desk: "OrderDesk", primal: str, words: "Words") -> list[OwnersRow]:
    """The share, the answer and the lines of one primal, owner by owner."""
    here = [_lines(desk, one, primal, words) for one in desk.orders]
    rows = _heads(desk)
    deepest = max((len(lines) for lines in here), default=0)
    for place in range(max(deepest, 1)):
        cells = tuple(lines[place] if place < len(lines) else ("", Mark.PLAIN) for lines in here)
        name = _named(desk, primal, words) if place == 0 else ""
        rows.append(OwnersRow(name, cells, "" if place else primal))
    return rows


def whole_rows(desk: "OrderDesk", words: "Words") -> list[OwnersRow]:
    """As `owners_rows` with a row for each primal: the cuts of it by name, the worst mark."""
    rows = _heads(desk)
    for primal in primals_of(desk):
        cells = tuple(_in_short(desk, one, primal, words) for one in desk.orders)
        rows.append(OwnersRow(_named(desk, primal, words), cells, primal))
    return rows


def _heads(desk: "OrderDesk") -> list[OwnersRow]:
    translate = QCoreApplication.translate
    shares = {one.number: one for one in desk.lot.shares}
    had = tuple((share_words(shares[one.share].holdings), Mark.PLAIN) for one in desk.orders)
    answered = tuple(answer_of(desk, one) for one in desk.orders)
    return [
        OwnersRow(translate("Owners", "Has"), had),
        OwnersRow(translate("Owners", "Answered"), answered),
    ]


def _named(desk: "OrderDesk", primal: str, words: "Words") -> str:
    name = words.name(desk.catalogue.species, f"primal.{primal}")
    return name[:1].upper() + name[1:]


def _in_short(desk: "OrderDesk", order: "Order", primal: str, words: "Words") -> tuple[str, Mark]:
    cuts = desk.catalogue.cuts
    led = _led(desk, order)
    if led:
        return led, Mark.PLAIN
    lines = [one for one in order.choices if cuts[one.cut].primal == primal]
    said = [cut_words(one, desk.catalogue, words) for one in lines]
    marks = [_mark(desk, one.line) for one in lines]
    if primal in _still(desk, order):
        said.append(QCoreApplication.translate("Owners", "open"))
        marks.append(Mark.OPEN)
    worst = next((one for one in WORST if one in marks), Mark.PLAIN)
    return "; ".join(said), worst


def _led(desk: "OrderDesk", order: "Order") -> str:
    """As whose order an owner's is cut, "" on its own."""
    leader = next((one.leader for one in desk.lot.shares if one.number == order.share), None)
    if leader is None:
        return ""
    translate = QCoreApplication.translate
    owner = next((one.owner for one in desk.orders if one.share == leader), "")
    named = owner or translate("Owners", "share {number}, to be named").format(number=leader)
    return translate("Owners", "as {owner} says").format(owner=named)


def _still(desk: "OrderDesk", order: "Order") -> set[str]:
    """The primals of which something of an owner is open."""
    return {desk.catalogue.parts[part.part].primal for part in desk.open_parts(order.share)}


def _mark(desk: "OrderDesk", line: int) -> Mark:
    if any(line in one.lines for one in desk.answer.conflicts):
        return Mark.CONTESTED
    if any(line in one.lines for one in desk.answer.questions):
        return Mark.TIGHT
    return Mark.SETTLED


def primals_of(desk: "OrderDesk") -> list[str]:
    """The primals of which any owner has something, in cutting order."""
    return [one for one in desk.catalogue.primals if spoken_of(desk, one)]


def answer_of(desk: "OrderDesk", order: "Order") -> tuple[str, Mark]:
    """Whether an owner has answered: nothing asked, so many primals open, or all of it."""
    translate = QCoreApplication.translate
    if order.state != "open":
        return translate("Owners", "settled"), Mark.SETTLED
    if any(one.leader for one in desk.lot.shares if one.number == order.share):
        return translate("Owners", "as another says, not settled"), Mark.TIGHT
    if not order.choices:
        return translate("Owners", "nothing yet"), Mark.OPEN
    still = _still(desk, order)
    if still:
        return translate("Owners", "open primals: {count}").format(count=len(still)), Mark.OPEN
    return translate("Owners", "all of it, not settled"), Mark.TIGHT


def spoken_of(desk: "OrderDesk", primal: str) -> bool:
    """Whether any owner has something of a primal: a line, or what is still open."""
    cuts, parts = desk.catalogue.cuts, desk.catalogue.parts
    asked = {cuts[one.cut].primal for order in desk.orders for one in order.choices}
    still = {
        parts[one.part].primal for order in desk.orders for one in desk.open_parts(order.share)
    }
    return primal in asked | still


def matters(desk: "OrderDesk", words: "Words") -> list[tuple[str, Mark]]:
    """What the owners must agree on, and what can't be, in sentences."""
    given = (desk.question, desk.catalogue, words)
    found = [(sentences.conflict(one, *given), Mark.CONTESTED) for one in desk.answer.conflicts]
    found += [
        (sentences.owners_question(one, *given), Mark.TIGHT)
        for one in put_together(desk.answer.questions)
    ]
    return found


def calls(desk: "OrderDesk", phones: dict[int, str]) -> list[str]:
    """Whom to ring, about what, at which number; those with most to say first."""
    translate = QCoreApplication.translate
    lines = {one.line: one.share for one in desk.question.choices}
    asked = {share for one in desk.answer.questions for share in one.shares}
    contested = {lines[at] for one in desk.answer.conflicts for at in one.lines if at in lines}
    found: list[tuple[int, str]] = []
    for order in desk.orders:
        why: list[str] = []
        if order.share in contested:
            why.append(translate("Owners", "what can't be cut"))
        if order.share in asked:
            why.append(translate("Owners", "what the owners must agree on"))
        said, mark = answer_of(desk, order)
        if mark is Mark.OPEN:
            why.append(said)
        if not why:
            continue
        name = order.owner or translate("Owners", "share {number}, to be named").format(
            number=order.share
        )
        phone = phones.get(order.id) or translate("Owners", "no phone kept")
        text = translate("Owners", "{name}, {phone}: {why}").format(
            name=name, phone=phone, why="; ".join(why)
        )
        found.append((-len(why), text))
    return [text for _, text in sorted(found, key=lambda one: one[0])]


def _lines(
    desk: "OrderDesk", order: "Order", primal: str, words: "Words"
) -> list[tuple[str, Mark]]:
    led = _led(desk, order)
    cells: list[tuple[str, Mark]] = [(led, Mark.PLAIN)] if led else []
    for one in order.choices:
        if desk.catalogue.cuts[one.cut].primal != primal:
            continue
        details = [
            amount_text(one, desk.catalogue, words),
            finish_words(one, desk.catalogue, words),
        ]
        cells.append((cut_words(one, desk.catalogue, words), _mark(desk, one.line)))
        cells.append(("\u2003" + ", ".join(part for part in details if part), Mark.PLAIN))
    if primal in _still(desk, order):
        cells.append((QCoreApplication.translate("Owners", "open"), Mark.OPEN))
    return cells
