"""The house's usual way for what an order leaves open, each line planned before it is given."""

from dataclasses import replace
from typing import TYPE_CHECKING

from shared.cutting.order import Amount, Choice, Package

if TYPE_CHECKING:
    from shared.carcass.catalogue import Catalogue, UsualLine
    from shared.cutting.answer import Answer
    from shared.cutting.order import AmountKind, Question
    from shared.cutting.plan import Planner


def usual_choice(usual: "UsualLine", share: int) -> Choice:
    """A line of the usual as a line of an order, not yet numbered."""
    kind: AmountKind = "rest"
    if usual.amount == "all":
        kind = "all"
    elif usual.amount == "pieces":
        kind = "pieces"
    return Choice(
        line=0,
        share=share,
        cut=usual.cut,
        amount=Amount(kind, usual.count),
        thickness=usual.thickness,
        piece_weight=usual.piece_weight,
        package=Package(usual.package_pieces, usual.package_weight),
        finishes=usual.finishes,
    )


def usual_choices(
    question: "Question",
    answer: "Answer",
    planner: "Planner",
    catalogue: "Catalogue",
    share: int,
) -> tuple[Choice, ...]:
    """Lines that close what is open of a share; each was planned and takes nothing from others.

    A usual line is given when it closes an open part without a new conflict; ground meat when
    nothing draws on the trim yet. What stays open then goes to the trim.
    """
    found: list[Choice] = []
    for candidate in _candidates(catalogue, question, share):
        line = 1 + max((one.line for one in question.choices), default=0)
        tried = replace(question, choices=(*question.choices, replace(candidate, line=line)))
        then = planner.answer(tried)
        pool = catalogue.cuts[candidate.cut].kind == "pool"
        useful = pool or _open(then, share) < _open(answer, share)
        if useful and len(then.conflicts) <= len(answer.conflicts):
            question, answer = tried, then
            found.append(candidate)
    return tuple(found)


def _candidates(catalogue: "Catalogue", question: "Question", share: int) -> list[Choice]:
    pools = {"pool"}
    has_pool = any(
        one.share == share and catalogue.cuts[one.cut].kind in pools for one in question.choices
    )
    usual = [usual_choice(one, share) for one in catalogue.usual]
    cut_up = [one for one in usual if catalogue.cuts[one.cut].kind not in pools]
    ground = [one for one in usual if catalogue.cuts[one.cut].kind in pools]
    leavings = [
        Choice(0, share, code, Amount("rest"))
        for code, cut in catalogue.cuts.items()
        if cut.kind == "to_trim"
    ]
    return cut_up + leavings + ([] if has_pool else ground)


def _open(answer: "Answer", share: int) -> int:
    return sum(1 for part in answer.open_parts if part.share == share)
