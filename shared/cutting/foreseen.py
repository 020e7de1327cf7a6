"""The verdict of an order with a few lines changed, foreseen from the answer it had before.

A change in one group of parts never moves another group: only the groups it touches are tried
anew. What takes the rest may change only where it meets a line that does, or what takes the rest
there. So of the pools it is enough that the lines that surely stay fill them: with 2 lb of soup
bones asked, the bones of one untouched quarter. Where they don't, the whole must be planned.
"""

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import NamedTuple

from shared.carcass.carcass import Share
from shared.cutting.answer import VERDICTS, Answer, PlanLine, Verdict
from shared.cutting.beside import Beside
from shared.cutting.capacity import EXPECTED, SCENARIOS, SURE
from shared.cutting.cut_alike import alike_questions
from shared.cutting.demand import Demand, Shop
from shared.cutting.footprint import Footprints
from shared.cutting.groups import groups, keys_of
from shared.cutting.order import Question
from shared.cutting.settled import worst
from shared.cutting.singles import rooms_of
from shared.cutting.standing import Standing, stand
from shared.cutting.take import Cell, Lane, Missing, Option
from shared.cutting.trim import pools


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


class _Rests(NamedTuple):
    """An option of a line that takes the rest: what it makes may change with what it meets."""

    line: int
    share: int
    carcass: int
    sides: tuple[int, ...]
    way: str
    ground: int


class Foreseen:
    """An answer, and what it says of the same order with some of its lines changed."""

    def __init__(
        self, question: Question, answer: Answer, demands: Sequence[Demand], shop: Shop
    ) -> None:
        """The demands are all lines of the question, by line; the answer is to that question."""
        self._question, self._answer, self._shop = question, answer, shop
        self._verdicts = dict(answer.group_verdicts)
        self._lines = {one.choice.line: one for one in demands}
        self._prints = Footprints(shop.ways)
        self._stood: dict[tuple[int, ...], tuple[list[Demand], Verdict | None]] = {}
        newest = {max(one.lines) for one in answer.conflicts}
        out_of_step = any(self._out_of_step(one) for one in demands)
        self._blind = out_of_step or _kerf_over_stretch(shop)
        self._natural = any(self._takes_nature(one) for one in demands)
        self._shaken: dict[int, Demand] = {}
        self._groups: list[list[Demand]] = []
        self._in: dict[Lane | Cell, int] = {}
        for group in groups([one for one in demands if one.rows or one.up_to], shop.ways):
            if any(one.choice.line in newest for one in group):
                self._shaken |= {one.choice.line: one for one in group}
                continue
            for one in group:
                lanes, cells = keys_of(one, shop.ways)
                self._in.update(dict.fromkeys((*lanes, *cells), len(self._groups)))
            self._groups.append(group)
        self._known: dict[int, tuple[Demand, int]] = {}
        self._resting = [it for one in demands if one.rest for it in self._rests(one)]
        self._ground, self._lost = self._spread(self._of(self._shaken.values()), 0)
        self._enough: dict[int, list[tuple[set[int], int]]] = {}

    def verdict(
        self, demands: Sequence[Demand], changed: frozenset[int], others: Beside | None = None
    ) -> Verdict | None:
        """The verdict of the order with other lines, None where it must be planned to know.

        The demands are all its lines, by line; `changed` are those that aren't as they were.
        Where all but one of them are tried already with many another one, `others` are those.
        """
        moved = [one for one in demands if one.choice.line in changed]
        moved += [self._lines[line] for line in changed if line in self._lines]
        if self._blind or any(one.pool or self._out_of_step(one) for one in moved):
            return None
        if any(one.refusal is not None for one in demands):
            return None
        choices = [one.choice for one in demands]
        if rooms_of(choices, self._shop.by_carcass, self._shop.ways) != self._shop.rooms:
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
        if alike_questions(demands, self._shop):
            verdicts.append("asks")
        drawn = self._of_pools(demands, touched, moved)
        return None if drawn is None else worst([*verdicts, *drawn])

    def _out_of_step(self, one: Demand) -> bool:
        """Whether a line asks for a part that the figures aren't reckoned in."""
        fraction = one.choice.amount.fraction
        return fraction is not None and self._shop.denominator % fraction.denominator != 0

    def _takes_nature(self, one: Demand) -> bool:
        return one.choice.cut in self._shop.ways.takes_nature

    def _regrouped(
        self, demands: Sequence[Demand], moved: Sequence[Demand]
    ) -> tuple[list[list[Demand]], list[Verdict]]:
        """The groups that aren't as they were, and the verdicts of those that are."""
        ways, met = self._shop.ways, set[int]()
        for one in moved:
            lanes, cells = keys_of(one, ways) if one.rows or one.up_to else ((), ())
            met |= {self._in[key] for key in (*lanes, *cells) if key in self._in}
        verdicts: list[Verdict] = []
        anew = {one.choice.line for one in moved} | self._shaken.keys()
        for place, group in enumerate(self._groups):
            if place in met:
                anew |= {one.choice.line for one in group}
            else:
                verdicts.append(self._verdicts[group[0].choice.line])
        bound = [one for one in demands if (one.rows or one.up_to) and one.choice.line in anew]
        return groups(bound, ways), verdicts

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

    def _of_pools(
        self, demands: Sequence[Demand], touched: set[int], moved: Sequence[Demand]
    ) -> list[Verdict] | None:
        """The verdicts of the pools: as they were, or sure; None where that isn't known."""
        drawing: dict[int, list[Demand]] = {}
        for one in demands:
            if one.pool:
                drawing.setdefault(one.choice.share, []).append(one)
        if not drawing:
            return []
        natural = self._natural or any(self._takes_nature(one) for one in moved)
        if natural or any(one.cut.batch is not None for mine in drawing.values() for one in mine):
            return None
        mine = [one for one in demands if one.choice.line in touched - self._shaken.keys()]
        _, lost = self._spread(self._ground | self._of([*mine, *moved]), self._lost)
        touched = touched | self._shaken.keys()
        shares = {one.choice.share for one in demands if one.choice.line in touched}
        shares |= {one.choice.share for one in (*moved, *self._shaken.values())}
        shares |= {one.share for one in self._among(lost)}
        found: list[Verdict] = []
        for share in self._question.shares:
            mine = drawing.get(share.number, [])
            if share.number not in shares:
                found.extend([self._verdicts[one.choice.line] for one in mine])
                if "cant" in found:  # a conflict over the pools, of which the newest is aside
                    return None
            elif mine and not self._filled(share, mine, touched, lost):
                return None
        return found

    def _spread(self, ground: int, lost: int) -> tuple[int, int]:
        """Add what takes the rest where something may be otherwise, and what meets that in turn.

        What is `lost` so is a bit for each of those that take the rest.
        """
        met = True
        while met:
            met = False
            for number, one in enumerate(self._resting):
                if one.ground & ground and not lost >> number & 1:
                    lost |= 1 << number
                    ground |= one.ground
                    met = True
        return ground, lost

    def _among(self, lost: int) -> list[_Rests]:
        return [one for number, one in enumerate(self._resting) if lost >> number & 1]

    def _filled(self, share: Share, draws: list[Demand], touched: set[int], lost: int) -> bool:
        """Whether what surely stays of a share's lines is enough for all it draws.

        What is enough without some lines is enough without fewer of them.
        """
        known = self._enough.setdefault(share.number, [])
        if any(touched <= lines and not lost & ~rests for lines, rests in known):
            return True
        if not all(_steady(one) for one in draws):
            return False
        places = {
            (one.line, one.carcass, side, one.way)
            for one in self._among(lost)
            for side in one.sides
        }
        stays: list[PlanLine] = [
            one
            for one in self._answer.lines
            if one.share == share.number
            and one.line not in touched
            and (one.line, one.carcass, one.side, one.way) not in places
        ]
        least = pools(share, self._shop, draws, stays)
        enough = not least.conflicts and least.verdict == "sure"
        if enough:
            known.append((touched, lost))
        return enough

    def _of(self, lines: Iterable[Demand]) -> int:
        """The footprint of some lines."""
        ground = 0
        for one in lines:
            known = self._known.get(id(one))
            if known is None:
                mine = 0
                for option in one.options:
                    mine |= self._prints.of(option)
                known = self._known[id(one)] = one, mine  # held, so that no other has its id
            ground |= known[1]
        return ground

    def _rests(self, one: Demand) -> Iterable[_Rests]:
        line, share = one.choice.line, one.choice.share
        for option in one.options:
            sides = (option.side, *[held.side.number for held in option.held])
            way, ground = option.ways[0].way.code, self._prints.of(option)
            yield _Rests(line, share, option.carcass, sides, way, ground)


def _steady(one: Demand) -> bool:
    """Whether what a product takes of the pools doesn't hang on how much there is of each."""
    if one.choice.amount.kind != "pounds":
        return True
    lean = one.choice.lean if one.choice.lean is not None else one.cut.lean_percent
    fixed = lean is not None and {"lean", "fat"} <= {*one.cut.pools}
    return one.choice.added is None and (fixed or len(one.cut.pools) == 1)
