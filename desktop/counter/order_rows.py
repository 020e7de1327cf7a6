"""The rows of an order's table: every primal, and the lines of the one that is unfolded."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.choice_words import cut_words, finish_words, range_words
from desktop.counter.side_marks import held_primals
from desktop.counter.ways_offered import Offer, offers, to_do
from desktop.look.patterns import Mark
from desktop.tables import Column, Figure, figure
from printing.words.choice_words import amount_text
from shared.curing.asked import left_open
from shared.cutting.forecast import Range
from shared.units import pounds_text

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words
    from shared.cutting.order import Choice

_INDENT = "\u2003"


@dataclass(frozen=True, slots=True)
class OrderRowShown:
    """A primal (line 0), one line of it, or a way of cutting it that is offered by number."""

    primal: str
    line: int
    cut: str
    amount: str
    finish: str
    pounds: Figure
    packages: str
    mark: Mark
    offer: Offer | None = None


def columns() -> list[Column[OrderRowShown]]:
    """Cut, amount, finish, pounds, packages."""
    return [
        Column(
            "cut",
            lambda: QCoreApplication.translate("OrderRows", "Cut"),
            lambda row: row.cut,
            kind="state",
            mark=lambda row: row.mark,
            width=240,
            tip=lambda row: row.cut.strip(),
        ),
        Column(
            "amount",
            lambda: QCoreApplication.translate("OrderRows", "Amount"),
            lambda row: row.amount,
            width=104,
            tip=lambda row: row.amount,
        ),
        Column(
            "finish",
            lambda: QCoreApplication.translate("OrderRows", "Finish"),
            lambda row: row.finish,
            stretch=True,
            tip=lambda row: row.finish,
        ),
        *_figures(),
    ]


def _figures() -> list[Column[OrderRowShown]]:
    return [
        Column(
            "pounds",
            lambda: QCoreApplication.translate("OrderRows", "Pounds"),
            lambda row: row.pounds,
            kind="figure",
            width=80,
        ),
        Column(
            "packages",
            lambda: QCoreApplication.translate("OrderRows", "Packages"),
            lambda row: row.packages,
            kind="figure",
            width=84,
        ),
    ]


def rows_of(
    desk: "OrderDesk", unfolded: str, words: "Words", *, ways: bool = False
) -> list[OrderRowShown]:
    """Every primal of the share in the block's order; under the unfolded one its lines.

    While something of it is to be asked, or with `ways`, also the ways it may be cut. An order
    that is cut as another says shows that one's lines, and its own part of them.
    """
    marked = _marked(desk)
    mine, led = desk.says.choices, desk.leader is not None
    open_parts = desk.open_parts(desk.says.share)
    open_in = [desk.catalogue.parts[part.part].primal for part in open_parts]
    rows: list[OrderRowShown] = []
    held = held_primals(desk)
    for primal in desk.catalogue.primals:
        if primal not in held:
            continue
        lines = [one for one in mine if desk.catalogue.cuts[one.cut].primal == primal]
        marks = [_mark(desk, one, marked) for one in lines]
        rows.append(_primal_row(desk, primal, lines, marks, primal in open_in, words))
        if primal == unfolded:
            rows += [
                _line_row(desk, primal, one, mark, words)
                for one, mark in zip(lines, marks, strict=True)
            ]
            if not led and (ways or not lines or to_do(desk, primal)):
                rows += [_offer_row(desk, primal, one, words) for one in offers(desk, primal)]
    return rows


def in_full(row: OrderRowShown | None) -> str:
    """A row's words without a cell cutting them off: cut, amount, finish."""
    if row is None:
        return ""
    parts = [row.cut.strip().replace("\u2002", "  "), row.amount, row.finish]
    said = [part for part in parts if part]
    return ": ".join([*said[:1], ", ".join(said[1:])]) if said[1:] else "".join(said)


def _marked(desk: "OrderDesk") -> dict[int, Mark]:
    """The lines that aren't plain: of the conflicts, tight, or for the owners to agree on.

    A group that can't stand has lines nobody contests: T-bones and a whole tenderloin leave the
    chuck on the same run as it is. Only where no conflict is known all of them are contested.
    """
    verdicts = dict(desk.answer.group_verdicts)
    asked = {line for one in desk.answer.questions for line in one.lines}
    contested = {line for one in desk.answer.conflicts for line in one.lines}
    contested = contested or {line for line, said in verdicts.items() if said == "cant"}
    tight = asked | {line for line, said in verdicts.items() if said in ("tight", "asks")}
    return dict.fromkeys(tight, Mark.TIGHT) | dict.fromkeys(contested, Mark.CONTESTED)


def _mark(desk: "OrderDesk", choice: "Choice", marked: dict[int, Mark]) -> Mark:
    mark = marked.get(choice.line, Mark.SETTLED)
    if mark is Mark.SETTLED and left_open(desk.catalogue, choice.cut, choice.finishes):
        return Mark.TIGHT
    return mark


def _primal_row(
    desk: "OrderDesk",
    primal: str,
    lines: "list[Choice]",
    marks: list[Mark],
    still_open: bool,
    words: "Words",
) -> OrderRowShown:
    mark, said = Mark.PLAIN, ""
    if Mark.CONTESTED in marks:
        mark, said = Mark.CONTESTED, QCoreApplication.translate("OrderRows", "contested")
    elif still_open:
        mark, said = Mark.OPEN, QCoreApplication.translate("OrderRows", "open")
    elif Mark.TIGHT in marks:
        mark, said = Mark.TIGHT, _tight_or_asked(desk, lines)
    elif marks:
        mark, said = Mark.SETTLED, QCoreApplication.translate("OrderRows", "settled")
    name = words.name(desk.catalogue.species, f"primal.{primal}")
    short = ", ".join(words.name(desk.catalogue.species, f"cut.{one.cut}") for one in lines)
    title = name[:1].upper() + name[1:]
    made = [found for one in lines if (found := desk.part(one.line)) is not None]
    pounds = sum(one.finished.mid for one in made)
    low, high = sum(one.packages.low for one in made), sum(one.packages.high for one in made)
    return OrderRowShown(
        primal,
        0,
        title,
        said,
        short,
        figure(pounds_text(pounds)) if made else Figure(""),
        range_words(Range(low, sum(one.packages.mid for one in made), high)) if made else "",
        mark,
    )


def _tight_or_asked(desk: "OrderDesk", lines: "list[Choice]") -> str:
    """The word beside the hatch: owners must agree, fresh or cured isn't said, or tight."""
    asked = {line for one in desk.answer.questions for line in one.lines}
    if any(one.line in asked for one in lines):
        return QCoreApplication.translate("OrderRows", "to agree")
    if any(left_open(desk.catalogue, one.cut, one.finishes) for one in lines):
        return QCoreApplication.translate("ChoiceWords", "fresh or cured?")
    return QCoreApplication.translate("OrderRows", "tight")


def _line_row(
    desk: "OrderDesk", primal: str, choice: "Choice", mark: Mark, words: "Words"
) -> OrderRowShown:
    made = desk.part(choice.line)
    finish = finish_words(choice, desk.catalogue, words)
    was = desk.last_time.get(choice.line)
    if was is not None:
        changed = QCoreApplication.translate("OrderRows", "last time {amount}")
        amount = amount_text(was, desk.catalogue, words)
        finish = ", ".join(one for one in (changed.format(amount=amount), finish) if one)
    return OrderRowShown(
        primal=primal,
        line=choice.line,
        cut=_INDENT + cut_words(choice, desk.catalogue, words),
        amount=amount_text(choice, desk.catalogue, words),
        finish=finish,
        pounds=Figure("") if made is None else figure(pounds_text(made.finished.mid)),
        packages="" if made is None else range_words(made.packages),
        mark=mark,
    )


def _offer_row(desk: "OrderDesk", primal: str, offer: Offer, words: "Words") -> OrderRowShown:
    names = [cut_words(one, desk.catalogue, words) for one in offer.choices]
    cut, amount, finish = names[0], "", ""
    if len(names) == 1:
        amount = amount_text(offer.choices[0], desk.catalogue, words)
        finish = finish_words(offer.choices[0], desk.catalogue, words)
    if offer.usual:
        cut = QCoreApplication.translate("OrderRows", "usual: {cut}").format(cut=cut)
        if len(names) > 1:
            cut = QCoreApplication.translate("OrderRows", "the usual")
            finish = "; ".join(names)
    cut = f"{_INDENT}{offer.number}\u2002{cut}"
    return OrderRowShown(primal, 0, cut, amount, finish, Figure(""), "", Mark.OPEN, offer)
