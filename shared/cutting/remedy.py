"""Ways out of a conflict: concrete changes, each planned before it is offered, the least first.

Planned, or its verdict foreseen from the answer there was, where that tells it for sure.

In this order: the same cut, the most that fits · all becomes the rest · the same cut from another
side or in another way · a neighbouring cut · any other cut of the same part · leave it out. Only
where nothing before leaving it out is found: two lines at once, or a line of another owner.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from heapq import heapify, heappop, heappush

from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer, Conflict, Edit, Remedy, Verdict
from shared.cutting.asked_weight import Asked
from shared.cutting.beside import Beside
from shared.cutting.changed_choice import (
    as_cut,
    by_the_piece,
    carried_over,
    cuts_of_same_part,
    less,
    less_pounds,
    loosened,
    mended,
    to_the_trim,
    with_count,
)
from shared.cutting.demand import Demand, Shop, demand
from shared.cutting.foreseen import Foreseen
from shared.cutting.grouped import Grouped, grouped
from shared.cutting.groups import groups
from shared.cutting.order import Question
from shared.cutting.plan import Planner

MOST_OFFERED = 5


@dataclass(frozen=True, slots=True)
class _Try:
    """An edit that might do: its kind, the lines it changes, and pounds moved.

    `of` is set where nobody has looked yet whether it fits: the line it changes, and the line
    compiled. It moves no fewer pounds then, if it fits or less of it.
    """

    kind: str
    edits: tuple[Edit, ...]
    moved_ng: int
    of: tuple[Demand, Demand] | None = None


def remedies(
    question: Question, answer: Answer, catalogue: Catalogue, planner: Planner | None = None
) -> tuple[tuple[Remedy, ...], ...]:
    """The ways out of each conflict of an answer, at most five each, in the conflicts' order.

    The `planner` that gave the answer still knows most of what is asked here.
    Worked number: a half hog with a whole ham and 6 ham steaks: leave the steaks out, or take
    the ends as roasts and keep the centre for the steaks.
    """
    if not answer.conflicts:
        return ()
    if planner is None:
        planner = Planner(catalogue)
    shop = planner.shop_of(question)
    demands = planner.demands_of(question, shop)
    sets = planner.groups_of(question, shop)
    foreseen = Foreseen(question, answer, demands, shop, planner.gave, sets)
    together = grouped(demands, sets, shop.ways)
    newest = [max(one.lines) for one in answer.conflicts]
    found: list[tuple[Remedy, ...]] = []
    for place, conflict in enumerate(answer.conflicts):
        aside = {line for other, line in enumerate(newest) if other != place} - {newest[place]}
        kept = tuple(one for one in question.choices if one.line not in aside)
        asked = replace(question, choices=kept) if aside else question
        stay = together.without(aside) if aside else together
        case = _Case(asked, conflict, planner, shop, foreseen, stay)
        found.append(case.remedies())
    return tuple(found)


class _Case:
    """One conflict with the order it stands in, the other conflicts set aside."""

    def __init__(
        self,
        question: Question,
        conflict: Conflict,
        planner: Planner,
        shop: Shop,
        foreseen: Foreseen,
        together: Grouped,
    ) -> None:
        self.question = question
        self.conflict = conflict
        self.planner = planner
        self.shop = shop
        self.foreseen = foreseen
        self.together = together
        self.demands = dict(together.lines)
        self.newest = max(conflict.lines)
        self.asked = Asked(shop.ways)
        self.stay: dict[int, Beside] = {}
        self.compiled: dict[int, Demand] = {}
        self.share = self.demands[self.newest].choice.share
        mine = [self.demands[line] for line in sorted(conflict.lines, reverse=True)]
        self.own = [one for one in mine if one.choice.share == self.share]
        self.others = [one for one in mine if one.choice.share != self.share]

    def remedies(self) -> tuple[Remedy, ...]:
        """Class after class until there are enough."""
        found: list[Remedy] = []
        for tries in self._classes():
            if len(found) >= MOST_OFFERED:
                break
            found += self._offered(tries, MOST_OFFERED - len(found), found)
        found = [one for one in found if self._keeps_enough(one)] or found
        if not found:
            for tries in (self._two_lines, self._ask_other):
                found += self._offered(tries, MOST_OFFERED - len(found), found)
        if len(found) < MOST_OFFERED:
            found += self._offered(self._leave_out, MOST_OFFERED - len(found), found)
        return tuple(found)

    def _keeps_enough(self, one: Remedy) -> bool:
        """Whether another cut keeps a quarter of the pounds: one cube steak is no whole ham."""
        (edit, *others) = one.edits
        if one.kind not in ("neighbour", "other_cut") or others or edit.choice is None:
            return True
        if edit.choice.amount.kind not in ("pieces", "slices"):
            return True
        new = self.compiled[id(edit.choice)]
        return self.asked.ng(new) * 4 >= self.asked.ng(self.demands[edit.line])

    def _classes(self) -> tuple[Callable[[], Iterator[_Try]], ...]:
        if self.conflict.kind in ("trim", "batch"):
            return self._less, self._rest, self._give_to_trim
        return self._less, self._rest, self._elsewhere, self._neighbours, self._other_cuts

    def _offered(
        self, tries: Callable[[], Iterator[_Try]], most: int, before: list[Remedy]
    ) -> list[Remedy]:
        """Plan a class's tries, the smaller change first, and offer those that stand."""
        found: list[Remedy] = []
        seen = {one.edits for one in before}
        waiting = [(one.moved_ng, place, one) for place, one in enumerate(tries())]
        heapify(waiting)
        while waiting and len(found) < most:
            _, place, one = heappop(waiting)
            if one.of is not None:
                fitting = self._fitting(one.kind, *one.of)
                if fitting is not None:
                    heappush(waiting, (fitting.moved_ng, place, fitting))
            elif one.edits not in seen:
                seen.add(one.edits)
                verdict = self._verdict(one.edits)
                if verdict != "cant" and not (one.kind == "rest" and self._leaves_less(one)):
                    found.append(Remedy(one.kind, one.edits, one.moved_ng, verdict))
        return found

    def _verdict(self, edits: tuple[Edit, ...]) -> Verdict:
        """The verdict of the order with some edits: foreseen where it can be, else planned."""
        demands = dict(self.demands)
        for edit in edits:
            del demands[edit.line]
        for edit in edits:
            if edit.choice is not None:
                known = self.compiled.get(id(edit.choice))
                demands[edit.line] = demand(edit.choice, self.shop) if known is None else known
        changed = frozenset([edit.line for edit in edits])
        others = self._beside(edits[0].line) if len(edits) == 1 else None
        found = self.foreseen.verdict(demands, changed | {self.newest}, others)
        return self.planner.verdict(self._edited(edits)) if found is None else found

    def _leaves_less(self, one: _Try) -> bool:
        """Whether the rest is less than one piece: what is left of a leg is no whole ham.

        Nothing left is none the less a rest: an order isn't finished while it is being asked.
        """
        (edit,) = one.edits
        if self.demands[edit.line].cut.kind == "to_trim":
            return False
        lines = [it for it in self.planner.lines(self._edited(one.edits)) if it.line == edit.line]
        return bool(lines) and not any(it.count for it in lines)

    def _edited(self, edits: tuple[Edit, ...]) -> Question:
        changed = {one.line: one.choice for one in edits}
        choices = [changed.get(one.line, one) for one in self.question.choices]
        return replace(self.question, choices=tuple(one for one in choices if one is not None))

    def _beside(self, line: int) -> Beside:
        """All lines of the case but one, and what fits beside them."""
        found = self.stay.get(line)
        if found is None:
            stay = self.together.without([line])
            found = self.stay[line] = Beside(stay, [self.newest], self.shop.ways)
        return found

    def _try(self, kind: str, old: Demand, new: Demand) -> _Try:
        """An edit of one line that nobody has looked at yet."""
        moved = self._moved(old, new) if by_the_piece(new) and new.refusal is None else 0
        return _Try(kind, (Edit(new.choice.line, new.choice),), moved, (old, new))

    def _fitting(self, kind: str, old: Demand, new: Demand) -> _Try | None:
        """The edit if it fits; with less of it where all of it doesn't."""
        fitting = self._most_fitting(new)
        return None if fitting is None else self._that_fits(kind, old, fitting)

    def _that_fits(self, kind: str, old: Demand, fitting: Demand) -> _Try:
        self.compiled[id(fitting.choice)] = fitting
        edit = Edit(fitting.choice.line, fitting.choice)
        return _Try(kind, (edit,), self._moved(old, fitting))

    def _most_fitting(self, new: Demand) -> Demand | None:
        if new.refusal is not None:
            return None
        beside = self._beside(new.choice.line)
        if not by_the_piece(new) or new.choice.pinned:
            return new if beside.fits(new) else self._less_of(new)
        count = beside.most(new)
        if count == new.rows[0].need:
            return new
        return with_count(new, count) if count else None

    def _moved(self, old: Demand, new: Demand) -> int:
        return abs(self.asked.ng(old) - self.asked.ng(new))

    def _less_of(self, asked: Demand) -> Demand | None:
        """The line with the greatest count below its own that fits, None where none does."""
        high = sum([row.need for row in asked.rows]) - 1
        if high < 1:
            return None
        smaller = demand(less(asked.choice, high, asked.cut), self.shop)
        if smaller.refusal is not None or not smaller.rows:
            return None
        count = self._beside(asked.choice.line).most(smaller)
        return with_count(smaller, count) if count else None

    def _less(self) -> Iterator[_Try]:
        """The same cut, the most that fits."""
        for one in self.own:
            if one.pool:
                yield from self._fewer_pounds(one)
            elif one.choice.amount.kind in ("pieces", "slices", "pounds", "at_least") and one.rows:
                smaller = self._less_of(one)
                if smaller is not None:
                    yield self._that_fits("less", one, smaller)
            for kind, choice in mended(one, self.conflict, self.shop.ways.catalogue):
                yield _Try(kind, (Edit(choice.line, choice),), 0)

    def _fewer_pounds(self, one: Demand) -> Iterator[_Try]:
        weight = one.choice.amount.weight
        if self.conflict.kind != "trim" or weight is None:
            return
        others = [amount for line, amount in self.conflict.rivals if line != one.choice.line]
        mine = [amount for line, amount in self.conflict.rivals if line == one.choice.line]
        there = self.conflict.expected - sum(others, Fraction(0))
        if there > 0 and mine and mine[0] > 0:
            choice = less_pounds(one.choice, there * weight.nanograms / mine[0])
            if choice is not None and choice.amount.weight is not None:
                moved = weight.nanograms - choice.amount.weight.nanograms
                yield _Try("less", (Edit(choice.line, choice),), moved)

    def _rest(self) -> Iterator[_Try]:
        """All, a fraction, or pounds of the trim, become the rest."""
        for one in self.own:
            kind = one.choice.amount.kind
            takes_rest = "rest" in one.cut.amounts and kind in ("all", "fraction")
            if takes_rest or (one.pool and self.conflict.kind == "trim"):
                amount = replace(one.choice.amount, kind="rest", weight=None, fraction=None)
                choice = replace(one.choice, amount=amount, pinned=())
                yield _Try("rest", (Edit(choice.line, choice),), 0)

    def _elsewhere(self) -> Iterator[_Try]:
        """The same cut from one of the owner's sides only, in another way, or without its pins."""
        for one in self.own:
            for kind, choice in loosened(one, self.shop):
                yield self._try(kind, one, demand(choice, self.shop))

    def _neighbours(self) -> Iterator[_Try]:
        for one in self.own:
            for code in one.cut.neighbours:
                yield from self._as_cut("neighbour", one, code)

    def _other_cuts(self) -> Iterator[_Try]:
        for one in self.own:
            for code in cuts_of_same_part(one, self.conflict, self.shop.ways):
                yield from self._as_cut("other_cut", one, code)

    def _as_cut(self, kind: str, one: Demand, code: str) -> Iterator[_Try]:
        new = as_cut(one, code, self.shop)
        if new is None or new.refusal is not None:
            return
        if not by_the_piece(new) or self._beside(one.choice.line).may_fit(new):
            yield self._try(kind, one, carried_over(one, new, self.asked))

    def _give_to_trim(self) -> Iterator[_Try]:
        """Up to three of the owner's other choices that would give most back to the trim."""
        lines = [one for one in self.demands.values() if one.choice.share == self.share]
        lines = [one for one in lines if not one.pool and one.refusal is None and one.options]
        lines.sort(key=lambda one: -self.asked.ng(one))
        for one in lines[:3]:
            choice = to_the_trim(one, self.shop.ways)
            if choice is not None and self._beside(choice.line).fits(demand(choice, self.shop)):
                moved = self.asked.ng(one)
                yield _Try("other_cut", (Edit(choice.line, choice),), moved)

    def _two_lines(self) -> Iterator[_Try]:
        """Two lines of the owner: one as a neighbouring cut, of the other less."""
        for one in self.own:
            for code in one.cut.neighbours:
                first = as_cut(one, code, self.shop)
                if first is None or first.refusal is not None:
                    continue
                first = carried_over(one, first, self.asked)
                for other in self.own:
                    if other is not one and not other.pool and other.rows:
                        yield from self._both(one, first, other)

    def _both(self, one: Demand, first: Demand, other: Demand) -> Iterator[_Try]:
        high = sum([row.need for row in other.rows]) - 1
        if high < 1:
            return
        smaller = demand(less(other.choice, high, other.cut), self.shop)
        if smaller.refusal is not None:
            return
        gone = one.choice.line, other.choice.line
        stay = [*[it for line, it in self.demands.items() if line not in gone], first]
        ways = self.shop.ways
        must = [it for it in stay if it.rows and it.refusal is None]
        together = grouped(stay, groups(must, ways), ways)
        count = Beside(together, [self.newest, one.choice.line], ways).most(smaller)
        if count:
            second = with_count(smaller, count)
            edits = Edit(one.choice.line, first.choice), Edit(other.choice.line, second.choice)
            moved = self._moved(one, first) + self._moved(other, second)
            yield _Try("two_lines", edits, moved)

    def _ask_other(self) -> Iterator[_Try]:
        """Another owner takes less, or leaves it out."""
        for one in self.others:
            smaller = self._less_of(one) if one.rows and not one.pool else None
            left = 0 if smaller is None else self.asked.ng(smaller)
            choice = None if smaller is None else smaller.choice
            moved = self.asked.ng(one) - left
            yield _Try("ask_other", (Edit(one.choice.line, choice),), abs(moved))

    def _leave_out(self) -> Iterator[_Try]:
        for one in self.own:
            moved = self.asked.ng(one)
            yield _Try("leave_out", (Edit(one.choice.line, None),), moved)
