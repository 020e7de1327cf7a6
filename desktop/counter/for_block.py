"""An order as the block will cut it: cattle whose age nobody knows count as 30 months and over."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from shared.carcass import thirty_months
from shared.cutting.plan import plan

if TYPE_CHECKING:
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words
    from shared.carcass.carcass import Carcass
    from shared.cutting.answer import Answer
    from shared.cutting.order import Question


@dataclass(frozen=True, slots=True)
class ForBlock:
    """The lot planned as the block cuts it; `falls` are the lines that only its age brings down."""

    question: "Question"
    answer: "Answer"
    falls: frozenset[int] = frozenset()


def for_block(desk: "OrderDesk") -> ForBlock:
    """The plan a sheet is made from, whether the animal is killed yet or not (9 CFR 310.22).

    T-bones of a beef of unknown age: planned both ways they stand, at the block they fall.
    """
    question = desk.question
    if not _no_age(desk):
        return ForBlock(question, desk.answer)
    strict, loose = desk.answer, desk.answer
    if question.settings.at_block:
        loose = plan(_planned(question, at_block=False), desk.catalogue)
    else:
        question = _planned(question, at_block=True)
        strict = plan(question, desk.catalogue)
    return ForBlock(question, strict, _contested(strict) - _contested(loose))


def age_falls(desk: "OrderDesk", block: ForBlock, words: "Words", *, settling: bool) -> str:
    """What falls of the shown order, or of the lot, until its age is said; "" where nothing does.

    An owner who settles hears of his own lines only, and only once the animal is killed.
    """
    falls = block.falls
    if settling:
        mine = {one.line for one in desk.order.choices}
        falls = falls & mine if desk.question.settings.at_block else frozenset[int]()
    if not falls:
        return ""
    species = desk.catalogue.species
    cuts = dict.fromkeys(one.cut for one in desk.question.choices if one.line in falls)
    tags = ", ".join(one.tag or str(n) for n, one in enumerate(_no_age(desk), start=1))
    said = QCoreApplication.translate(
        "Release",
        "Tag {tags}: the age isn't known, and the block cuts it as 30 months and over. Then it "
        "can't give {cuts}. Say its age at the Rail (F3), or ask for what needs no backbone.",
    )
    return said.format(
        tags=tags, cuts=", ".join(words.name(species, f"cut.{it}", 2) for it in cuts)
    )


def _no_age(desk: "OrderDesk") -> list["Carcass"]:
    if not thirty_months.holds_for(desk.catalogue.species):
        return []
    return [one for one in desk.question.carcasses if one.age == "unknown" and not one.condemned]


def _planned(question: "Question", *, at_block: bool) -> "Question":
    return replace(question, settings=replace(question.settings, at_block=at_block))


def _contested(answer: "Answer") -> frozenset[int]:
    return frozenset(line for one in answer.conflicts for line in one.lines)
