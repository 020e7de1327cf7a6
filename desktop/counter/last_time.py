"""An earlier order of a customer planned again on the carcass at hand, line by line."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Literal

from shared.cutting.order import Choice, Question
from shared.cutting.plan import Planner
from shared.cutting.remedy import remedies

if TYPE_CHECKING:
    from collections.abc import Sequence

    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Answer, Conflict

How = Literal["same", "changed", "there", "conflict", "nothing_left", "unknown_cut"]
_OWN_WAYS_OUT = ("less", "rest", "other_side", "thicker", "less_lean", "each_side")


@dataclass(frozen=True, slots=True)
class Again:
    """One line of the earlier order, and what becomes of it here.

    `now` is None where nothing is added: "there" is asked for already, the others can't be had;
    `conflict` says why, in the words of `question`.
    """

    before: Choice
    now: Choice | None
    how: How
    conflict: "Conflict | None" = None
    question: Question | None = None


def planned_again(
    question: Question, catalogue: "Catalogue", share: int, earlier: "Sequence[Choice]"
) -> tuple[Again, ...]:
    """Each earlier line as it stands here beside what is asked already, which comes first.

    A line that can't stand takes the first way out that changes only itself, else it is left
    out. Two whole hams of a whole hog become one on a half.
    """
    planner = Planner(catalogue)
    answer = planner.answer(question)
    found: list[Again] = []
    for before in earlier:
        if _is_there(before, question, share):
            found.append(Again(before, None, "there"))
            continue
        one, question, answer = _again(before, question, answer, planner, catalogue, share)
        found.append(one)
    return tuple(found)


def _again(
    before: Choice,
    question: Question,
    answer: "Answer",
    planner: Planner,
    catalogue: "Catalogue",
    share: int,
) -> "tuple[Again, Question, Answer]":
    cut = catalogue.cuts.get(before.cut)
    if cut is None:
        return Again(before, None, "unknown_cut"), question, answer
    line = 1 + max((one.line for one in question.choices), default=0)
    asked = replace(
        before,
        line=line,
        share=share,
        way=before.way if before.way in {way.code for way in cut.ways} else "",
        finishes=tuple(one for one in before.finishes if one in cut.finishes),
        pinned=(),
        made=False,
    )
    tried = replace(question, choices=(*question.choices, asked))
    then = planner.answer(tried)
    at = next((at for at, one in enumerate(then.conflicts) if line in one.lines), None)
    if at is None:
        if cut.kind != "pool" and not any(one.line == line for one in then.lines):
            return Again(before, None, "nothing_left"), question, answer
        same = asked.finishes == before.finishes and asked.way == before.way
        return Again(before, asked, "same" if same else "changed"), tried, then
    conflict = then.conflicts[at]
    for way_out in remedies(tried, then, catalogue, planner)[at]:
        (edit, *others) = way_out.edits
        if way_out.kind in _OWN_WAYS_OUT and not others and edit.line == line and edit.choice:
            changed = replace(question, choices=(*question.choices, edit.choice))
            result = planner.answer(changed)
            if len(result.conflicts) <= len(answer.conflicts):
                return Again(before, edit.choice, "changed"), changed, result
    return Again(before, None, "conflict", conflict, tried), question, answer


def _is_there(before: Choice, question: Question, share: int) -> bool:
    """Whether the order asks for all or the rest of it already, in the same words."""
    if before.amount.kind not in ("all", "rest"):
        return False
    mine = (one for one in question.choices if one.share == share)
    return any(_plain(one) == _plain(before) for one in mine)


def _plain(choice: Choice) -> Choice:
    return replace(choice, line=0, share=0, pinned=(), made=False)
