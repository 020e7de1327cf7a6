"""The house's usual way for what an order leaves open, planned before it is given."""

from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from shared.carcass.anatomy import catalogue as read_catalogue
from shared.cutting.order import Amount, Choice, Package

if TYPE_CHECKING:
    from collections.abc import Collection, Sequence

    from shared.carcass.catalogue import Catalogue, UsualLine
    from shared.cutting.answer import Answer
    from shared.cutting.order import AmountKind, Question
    from shared.cutting.plan import Planner

TENDERLOIN = "tender"  # what the lane is called in every species that has one apart
WORTH_A_CUT = Fraction(1, 4)


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


@lru_cache(maxsize=2048)
def parts_of(species: str, code: str) -> frozenset[str]:
    """The parts that a cut may take, by any of its ways."""
    catalogue = read_catalogue(species)
    found: set[str] = set()
    for way in catalogue.cuts[code].ways:
        found |= {one.part for one in way.parts}
        if way.run is not None:
            run = catalogue.runs[way.run.run]
            first, last = run.place(way.run.first), run.place(way.run.last)
            inside = {one.code for one in run.stretches[first : last + 1]}
            found |= {
                code
                for code, part in catalogue.parts.items()
                if part.run == run.code and part.stretch in inside and part.lane in way.run.lanes
            }
    return frozenset(found)


def usual_choices(
    question: "Question",
    answer: "Answer",
    planner: "Planner",
    catalogue: "Catalogue",
    share: int,
    primals: "Collection[str]" = (),
) -> tuple[Choice, ...]:
    """Lines that close what is open of a share; each was planned and takes nothing from others.

    A usual line is given when it closes an open part without a new conflict; ground meat when
    nothing draws on the trim yet. What stays open then goes to the trim, but a tenderloin whose
    T-bones can't be had is cut as steaks: nobody wants it ground. With `primals` only what lies
    in those. All lines are tried together; where that doesn't stand, primal by primal,
    and only then one by one. Parts that a line of a conflict asks for stay open: lamb chops of
    "all" the loin would leave six saddle chops that are two too many no way out.
    """
    contested = _contested(question, answer, catalogue.species)
    filling = _Filling(question, answer, planner, catalogue, share, contested)
    usual = [
        one
        for one in catalogue.usual
        if (not primals or one.primal in primals)
        and not contested & parts_of(catalogue.species, one.cut)
    ]
    cut_up = [one for one in usual if catalogue.cuts[one.cut].kind != "pool"]
    by_primal: dict[str, list[Choice]] = {}
    for one in cut_up:
        by_primal.setdefault(one.primal, []).append(usual_choice(one, share))
    filling.give_all(list(by_primal.values()))
    for code, cut in catalogue.cuts.items():
        here = not primals or cut.primal in primals
        if here and cut.kind in ("steaks", "whole") and "rest" in cut.amounts:
            filling.give_tenderloin(Choice(0, share, code, Amount("rest")))
    filling.give_all(
        [
            [Choice(0, share, code, Amount("rest"))]
            for code, cut in catalogue.cuts.items()
            if cut.kind == "to_trim" and (not primals or cut.primal in primals)
        ]
    )
    if not filling.draws_on_trim():
        for one in usual:
            if catalogue.cuts[one.cut].kind == "pool":
                filling.give([usual_choice(one, share)], closing=False)
    return tuple(filling.found)


def _contested(question: "Question", answer: "Answer", species: str) -> frozenset[str]:
    """The parts that the lines of the conflicts may take; pools take none."""
    asked = {line for one in answer.conflicts for line in one.lines}
    found: frozenset[str] = frozenset()
    for one in question.choices:
        if one.line in asked:
            found |= parts_of(species, one.cut)
    return found


class _Filling:
    """An order being filled: what was given so far, and how it is planned with that."""

    def __init__(
        self,
        question: "Question",
        answer: "Answer",
        planner: "Planner",
        catalogue: "Catalogue",
        share: int,
        contested: frozenset[str],
    ) -> None:
        self._question = question
        self._contested = contested
        self._answer = answer
        self._planner = planner
        self._catalogue = catalogue
        self._share = share
        self.found: list[Choice] = []

    def give_all(self, groups: "Sequence[Sequence[Choice]]") -> None:
        """Give every line that closes something, in as few plans as it takes."""
        useful = [kept for one in groups if (kept := self._touching(one))]
        if not useful or self.give([line for one in useful for line in one]):
            return
        for one in useful:
            group = self._touching(one)
            if group and not self.give(group):
                for line in group:
                    if self._touching([line]) and not self.give([line]):
                        self._give_what_is_allowed(line)

    def _give_what_is_allowed(self, line: Choice) -> None:
        """Where an age forbids a usual cut, give the cut next to it that it leaves.

        A rib without its backbone is boneless ribeye, not trim.
        """
        first = 1 + max((one.line for one in self._question.choices), default=0)
        more = (*self._question.choices, replace(line, line=first))
        then = self._planner.answer(replace(self._question, choices=more))
        if not any(one.kind == "srm" and first in one.lines for one in then.conflicts):
            return
        cuts = self._catalogue.cuts
        for code in cuts[line.cut].neighbours:
            if "all" not in cuts[code].amounts or cuts[code].kind == "to_trim":
                continue
            if self._contested & parts_of(self._catalogue.species, code):
                continue  # what a line that can't be had asks for stays open for its ways out
            finishes = tuple([one for one in line.finishes if one in cuts[code].finishes])
            if self.give([replace(line, cut=code, amount=Amount("all"), finishes=finishes)]):
                return

    def give(self, lines: "Sequence[Choice]", *, closing: bool = True) -> bool:
        """Give these lines if all of them are made and nothing is contested by it."""
        first = 1 + max((one.line for one in self._question.choices), default=0)
        numbered = [replace(one, line=first + place) for place, one in enumerate(lines)]
        tried = replace(self._question, choices=(*self._question.choices, *numbered))
        then = self._planner.answer(tried)
        if len(then.conflicts) > len(self._answer.conflicts):
            return False
        if closing and self._count(then) >= self._count(self._answer):
            return False
        made = {one.line for one in then.lines}
        if closing and len(lines) > 1 and not made.issuperset(one.line for one in numbered):
            return False
        self._question, self._answer = tried, then
        self.found.extend(lines)
        return True

    def give_tenderloin(self, line: Choice) -> None:
        """Give the line where a tenderloin it may take is open, a quarter of it or more."""
        parts, species = self._catalogue.parts, self._catalogue.species
        open_here = {
            one.part
            for one in self._answer.open_parts
            if one.share == self._share
            and one.fraction >= WORTH_A_CUT
            and parts[one.part].lane == TENDERLOIN
        }
        if not open_here.isdisjoint(parts_of(species, line.cut)):
            self.give([line])

    def draws_on_trim(self) -> bool:
        """Whether a line of the share draws on the trim already."""
        return any(
            one.share == self._share and self._catalogue.cuts[one.cut].kind == "pool"
            for one in self._question.choices
        )

    def _touching(self, lines: "Sequence[Choice]") -> list[Choice]:
        open_now = {one.part for one in self._answer.open_parts if one.share == self._share}
        species = self._catalogue.species
        return [one for one in lines if not open_now.isdisjoint(parts_of(species, one.cut))]

    def _count(self, answer: "Answer") -> int:
        return sum(1 for part in answer.open_parts if part.share == self._share)
