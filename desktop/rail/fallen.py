"""Which choices a loss brings down: those that stood before it and do not after, by owner."""

from collections.abc import Collection
from dataclasses import dataclass
from typing import Literal

from shared.cutting.answer import Answer
from shared.cutting.order import Question


@dataclass(frozen=True, slots=True)
class Fallen:
    """One choice. `how`: "falls" (it can't be cut beside the others), "less" (less is left)."""

    owner: str
    line: int
    cut: str
    how: Literal["falls", "less"]


def fallen(
    question: Question, old: Answer, new: Answer, parts: Collection[str] = ()
) -> tuple[Fallen, ...]:
    """The choices that no longer stand without the parts, then those that get less, by line.

    Without parts named (an animal condemned whole) every line is looked at, what it draws of
    the trim too.

    All hams asked for and one ham condemned: that line gets less. Two whole hams asked for: the
    line falls.
    """
    lost = _contested(new) - _contested(old)
    took = {
        one.line for one in old.lines if not parts or any(each.part in parts for each in one.taken)
    }
    if not parts:
        took |= {one.line for one in old.draws}
    less = {line for line in took if _planned(new, line) < _planned(old, line)} - lost
    owners = {share.number: share.owner for share in question.shares}
    found: tuple[tuple[Literal["falls", "less"], set[int]], ...] = (("falls", lost), ("less", less))
    return tuple(
        Fallen(owners[choice.share], choice.line, choice.cut, how)
        for how, lines in found
        for choice in question.choices
        if choice.line in lines
    )


def _contested(answer: Answer) -> set[int]:
    return {line for conflict in answer.conflicts for line in conflict.lines}


def _planned(answer: Answer, line: int) -> int:
    lines = sum(one.weight_ng for one in answer.lines if one.line == line)
    return lines + sum(one.weight_ng for one in answer.draws if one.line == line)
