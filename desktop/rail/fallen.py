"""Which choices a loss brings down: those that stood before it and do not after, by owner."""

from collections.abc import Collection
from dataclasses import dataclass
from typing import Literal

from shared.cutting.answer import Answer
from shared.cutting.order import Question
from shared.units import NG_PER_LB

SLIGHT_NG = NG_PER_LB // 20


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
    the trim too. Less is a piece less, or as much as the tenth of a pound that is shown can tell:
    nobody is rung for a millionth that kerfs and rounding moved.

    All hams asked for and one ham condemned: that line gets less. Two whole hams asked for: the
    line falls.
    """
    lost = _contested(new) - _contested(old)
    took = {
        one.line for one in old.lines if not parts or any(each.part in parts for each in one.taken)
    }
    if not parts:
        took |= {one.line for one in old.draws}
    less = {line for line in took if _is_less(old, new, line)} - lost
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


def _is_less(old: Answer, new: Answer, line: int) -> bool:
    if _count(new, line) < _count(old, line):
        return True
    return _planned(old, line) - _planned(new, line) >= SLIGHT_NG


def _count(answer: Answer, line: int) -> int:
    return sum(one.count for one in answer.lines if one.line == line)


def _planned(answer: Answer, line: int) -> int:
    lines = sum(one.weight_ng for one in answer.lines if one.line == line)
    return lines + sum(one.weight_ng for one in answer.draws if one.line == line)
