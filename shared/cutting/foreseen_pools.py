"""Whether what surely stays of a plan fills its pools, whatever a change of some lines moves.

What takes the rest may change only where it meets a line that does, or what takes the rest there.
So it is enough that the lines that surely stay fill the pools: with 2 lb of soup bones asked, the
bones of one untouched quarter. Where they don't, the whole must be planned.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from shared.carcass.carcass import Share
from shared.cutting.answer import Answer, PlanLine, Verdict
from shared.cutting.demand import Demand, Shop
from shared.cutting.footprint import Footprints
from shared.cutting.order import Question
from shared.cutting.take import Option
from shared.cutting.trim import GivenBack, pools


class _Rests(NamedTuple):
    """An option of a line that takes the rest: what it makes may change with what it meets."""

    ground: int
    of: Demand
    option: Option

    def places(self) -> Iterator[tuple[int, int, int, str]]:
        """Line, carcass, side and way of all it may make."""
        line, option = self.of.choice.line, self.option
        for side in (option.side, *[held.side.number for held in option.held]):
            yield line, option.carcass, side, option.ways[0].way.code


class PoolsForeseen:
    """The pools of an answer, and what is sure of them with some of its lines changed."""

    def __init__(
        self,
        question: Question,
        answer: Answer,
        demands: Sequence[Demand],
        shop: Shop,
        shaken: Mapping[int, Demand],
        gave: GivenBack,
    ) -> None:
        """The answer's question and its lines; those `shaken` are planned anew whatever changes.

        `gave` is what lines of the plan were reckoned to give back to the pools.
        """
        self._question, self._answer, self._shop, self._gave = question, answer, shop, gave
        self._verdicts = dict(answer.group_verdicts)
        self._prints = Footprints(shop.ways)
        self._natural = any(self._takes_nature(one) for one in demands)
        self._shaken = shaken
        self._drawing = [one for one in demands if one.pool]
        self._known: dict[int, tuple[Demand, int]] = {}
        self._resting = [
            _Rests(self._prints.of(option), one, option)
            for one in demands
            if one.rest
            for option in one.options
        ]
        self._ground, self._lost = self._spread(self._of(shaken.values()), 0)
        self._enough: dict[int, list[tuple[set[int], int]]] = {}

    def _takes_nature(self, one: Demand) -> bool:
        return one.choice.cut in self._shop.ways.takes_nature

    def verdicts(
        self, demands: Mapping[int, Demand], touched: set[int], moved: Sequence[Demand]
    ) -> list[Verdict] | None:
        """The verdicts of the pools: as they were, or sure; None where that isn't known.

        The demands are by line; those `touched` may be made otherwise, those `moved` are others.
        """
        drawing: dict[int, list[Demand]] = {}
        for one in self._drawing:
            if one.choice.line in demands:
                drawing.setdefault(one.choice.share, []).append(one)
        if not drawing:
            return []
        natural = self._natural or any(self._takes_nature(one) for one in moved)
        if natural or any(one.cut.batch is not None for mine in drawing.values() for one in mine):
            return None
        mine = [demands[line] for line in touched if line in demands and line not in self._shaken]
        _, lost = self._spread(self._ground | self._of([*mine, *moved]), self._lost)
        touched = touched | self._shaken.keys()
        shares = {one.choice.share for one in (*mine, *moved, *self._shaken.values())}
        among = self._among(lost)
        shares |= {one.of.choice.share for one in among}
        found: list[Verdict] = []
        for share in self._question.shares:
            mine = drawing.get(share.number, [])
            if share.number not in shares:
                found.extend([self._verdicts[one.choice.line] for one in mine])
                if "cant" in found:  # a conflict over the pools, of which the newest is aside
                    return None
            elif mine and not self._filled(share, mine, touched, lost, among):
                return None
        return found

    def _spread(self, ground: int, lost: int) -> tuple[int, int]:
        """Add what takes the rest where something may be otherwise, and what meets that in turn.

        What is `lost` so is a bit for each of those that take the rest.
        """
        before = -1
        while before != lost:
            before = lost
            for number, one in enumerate(self._resting):
                if one.ground & ground and not lost >> number & 1:
                    lost |= 1 << number
                    ground |= one.ground
        return ground, lost

    def _among(self, lost: int) -> list[_Rests]:
        found: list[_Rests] = []
        while lost:
            number = lost.bit_length() - 1
            found.append(self._resting[number])
            lost ^= 1 << number
        return found

    def _filled(
        self,
        share: Share,
        draws: list[Demand],
        touched: set[int],
        lost: int,
        among: Iterable[_Rests],
    ) -> bool:
        """Whether what surely stays of a share's lines is enough for all it draws.

        What is enough without some lines is enough without fewer of them.
        """
        known = self._enough.setdefault(share.number, [])
        if any(touched <= lines and not lost & ~rests for lines, rests in known):
            return True
        if not all(_steady(one) for one in draws):
            return False
        places = {place for one in among for place in one.places()}
        stays: list[PlanLine] = [
            one
            for one in self._answer.lines
            if one.share == share.number
            and one.line not in touched
            and (one.line, one.carcass, one.side, one.way) not in places
        ]
        least = pools(share, self._shop, draws, stays, known=self._gave)
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


def _steady(one: Demand) -> bool:
    """Whether what a product takes of the pools doesn't hang on how much there is of each."""
    if one.choice.amount.kind != "pounds":
        return True
    lean = one.choice.lean if one.choice.lean is not None else one.cut.lean_percent
    fixed = lean is not None and {"lean", "fat"} <= {*one.cut.pools}
    return one.choice.added is None and (fixed or len(one.cut.pools) == 1)
