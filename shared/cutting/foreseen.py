"""The verdict of an order with a few lines changed, foreseen from the answer it had before.

A change in one group of parts never moves another group: only the groups it touches are tried
anew. Of the pools it is enough that what surely stays fills them.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise

from shared.cutting.answer import VERDICTS, Answer, Verdict
from shared.cutting.beside import Beside
from shared.cutting.capacity import EXPECTED, SCENARIOS, SURE
from shared.cutting.cut_alike import alike_questions
from shared.cutting.demand import Demand, Shop
from shared.cutting.foreseen_pools import PoolsForeseen
from shared.cutting.groups import groups, keys_of
from shared.cutting.order import Question
from shared.cutting.settled import worst
from shared.cutting.singles import rooms_of
from shared.cutting.standing import Standing, stand
from shared.cutting.take import Cell, Lane, Missing, Option
from shared.cutting.trim import GivenBack


def _kerf_over_stretch(shop: Shop) -> bool:
    """Whether a last kerf may reach beyond the next stretch, as no real animal lets it.

    A shop may give a length of its own, or measure one, that is shorter than its saw is thick.
    """
    settings = shop.settings
    kerf = max(
        *shop.ways.catalogue.kerf.values(), settings.kerf_saw or 0, settings.kerf_slicer or 0
    )
    return any(
        after - before < kerf
        for animal in shop.herd
        for side in animal.sides
        for bounds in side.bounds[SURE]
        for before, after in pairwise(bounds)
    )


class Foreseen:
    """An answer, and what it says of the same order with some of its lines changed."""

    def __init__(
        self,
        question: Question,
        answer: Answer,
        demands: Sequence[Demand],
        shop: Shop,
        gave: GivenBack,
        sets: Iterable[list[Demand]],
    ) -> None:
        """The demands are all lines of the question, by line; the answer is to that question.

        `gave` is what lines of the plan were reckoned to give back to the pools, `sets` are the
        groups of the lines.
        """
        self._shop = shop
        self._lines = {one.choice.line: one for one in demands}
        self._refused = [one.choice.line for one in demands if one.refusal is not None]
        self._single = [one for one in demands if one.choice.cut in shop.ways.singles]
        self._stood: dict[tuple[int, ...], tuple[list[Demand], Verdict | None]] = {}
        out_of_step = any(self._out_of_step(one) for one in demands)
        self._blind = out_of_step or _kerf_over_stretch(shop)
        self._shaken: dict[int, Demand] = {}
        self._groups: list[tuple[list[Demand], Verdict]] = []
        self._in: dict[Lane | Cell, int] = {}
        self._sort(answer, sets)
        self._verdicts = dict(Counter[Verdict]([verdict for _, verdict in self._groups]))
        self._pools = PoolsForeseen(question, answer, demands, shop, self._shaken, gave)

    def _sort(self, answer: Answer, sets: Iterable[list[Demand]]) -> None:
        """The groups of the answer; those with a conflict are tried anew whatever changes."""
        ways, verdicts = self._shop.ways, dict(answer.group_verdicts)
        newest = {max(one.lines) for one in answer.conflicts}
        for group in sets:
            if any(one.choice.line in newest for one in group):
                self._shaken |= {one.choice.line: one for one in group}
                continue
            for one in group:
                for keys in keys_of(one, ways):
                    for key in keys:
                        self._in[key] = len(self._groups)
            self._groups.append((group, verdicts[group[0].choice.line]))

    def verdict(
        self,
        demands: Mapping[int, Demand],
        changed: frozenset[int],
        others: Beside | None = None,
    ) -> Verdict | None:
        """The verdict of the order with other lines, None where it must be planned to know.

        The demands are all its lines, by line; `changed` are those that aren't as they were.
        Where all but one of them are tried already with many another one, `others` are those.
        """
        new = [demands[line] for line in changed if line in demands]
        moved = [*new, *[self._lines[line] for line in changed if line in self._lines]]
        if self._blind or any(one.pool or self._out_of_step(one) for one in moved):
            return None
        if any(one.refusal is not None for one in new) or any(
            line in demands and line not in changed for line in self._refused
        ):
            return None
        if self._other_rooms(demands, changed, new):
            return None
        touched = set(changed)
        anew, verdicts = self._regrouped(demands, moved)
        for group in anew:
            told = self._of_group(group, others)
            if told is None or told == "cant":
                return told
            verdicts.append(told)
            if any(one.choice.line in changed for one in group):
                touched |= {one.choice.line for one in group}
        if alike_questions(list(demands.values()), self._shop):
            verdicts.append("asks")
        drawn = self._pools.verdicts(demands, touched, moved)
        return None if drawn is None else worst([*verdicts, *drawn])

    def _other_rooms(
        self, demands: Mapping[int, Demand], changed: frozenset[int], new: Sequence[Demand]
    ) -> bool:
        """Whether owners have other parts of what comes one to an animal than before."""
        stay = [one for one in self._single if one.choice.line in demands.keys() - changed]
        choices = [one.choice for one in (*stay, *new)]
        return rooms_of(choices, self._shop.by_carcass, self._shop.ways) != self._shop.rooms

    def _out_of_step(self, one: Demand) -> bool:
        """Whether a line asks for a part that the figures aren't reckoned in."""
        fraction = one.choice.amount.fraction
        return fraction is not None and self._shop.denominator % fraction.denominator != 0

    def _regrouped(
        self, demands: Mapping[int, Demand], moved: Sequence[Demand]
    ) -> tuple[list[list[Demand]], list[Verdict]]:
        """The groups that aren't as they were, and the verdicts of those that are."""
        ways, met = self._shop.ways, set[int]()
        for one in moved:
            for keys in keys_of(one, ways) if one.rows or one.up_to else ():
                met |= {self._in[key] for key in keys if key in self._in}
        anew = {one.choice.line for one in moved} | self._shaken.keys()
        stay = self._verdicts.copy()
        for place in met:
            group, verdict = self._groups[place]
            anew |= {one.choice.line for one in group}
            stay[verdict] -= 1
        lines = [demands[line] for line in sorted(anew) if line in demands]
        bound = [one for one in lines if one.rows or one.up_to]
        return groups(bound, ways), [verdict for verdict, count in stay.items() if count]

    def _of_group(self, group: list[Demand], others: Beside | None) -> Verdict | None:
        """How a group stands; None where its layout would decide, or owners may have to settle."""
        key = tuple(map(id, group))
        known = self._stood.get(key)
        if known is None:
            known = self._stood[key] = group, self._tried(group, others)
        return known[1]  # the group is held, so that no other has its id

    def _tried(self, group: list[Demand], others: Beside | None) -> Verdict | None:
        hoped = any(one.up_to for one in group)
        lone = None if others is None or hoped else others.lone(group)
        asks = None if lone is None else self._asks(group)
        if asks is not None and others is not None and lone is not None:
            scenario = others.surest(lone)
            if scenario is None:
                return self._fallen(group)
            return worst((VERDICTS[scenario], "asks" if asks else "sure"))
        if hoped and self._shop.split:
            return None
        found = stand([one for one in group if one.rows], self._shop.ways)
        return self._fallen(group) if found is None else self._told(found)

    def _asks(self, group: Sequence[Demand]) -> bool | None:
        """Whether a piece is bigger than its owner's part; None where that hangs on its place."""
        asks = False
        for row in [row for one in group for row in one.rows] if self._shop.split else ():
            bigger = {self._bigger(option, at) for option in row.options for at in SCENARIOS}
            if len(bigger) > 1:
                return None
            asks = asks or True in bigger
        return asks

    def _fallen(self, group: Sequence[Demand]) -> Verdict | None:
        """A group that can't stand: what comes one to an animal may be its owners' to settle."""
        cells = [cell for one in group for cell in keys_of(one, self._shop.ways).cells]
        return None if any(side == 0 for _, side, *_ in cells) else "cant"

    def _told(self, found: Standing) -> Verdict | None:
        """A group's verdict: with a piece that is bigger than its owner's part it asks.

        None where that hangs on the lengths at which it is laid out.
        """
        asks: set[bool] = {False}
        for row, made in zip(found.rows, found.units, strict=True) if self._shop.split else ():
            for option, count in zip(row.options, made, strict=True):
                if count:
                    bigger = {self._bigger(option, at) for at in (found.scenario, EXPECTED)}
                    if len(bigger) > 1:
                        return None
                    asks |= bigger
        return worst((found.verdict, "asks" if True in asks else "sure"))

    def _bigger(self, option: Option, scenario: int) -> bool:
        take = option.take(scenario, self._shop.ways)
        return not isinstance(take, Missing) and take.undivided
