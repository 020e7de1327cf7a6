"""The pools: what each share has to grind, render and boil, and what its choices draw of it.

A pool holds what is trim by nature, what the cuts give back, and what was given to the trim; never
what nobody has settled. All at expected weights.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part
from shared.cutting.answer import (
    VERDICTS,
    Conflict,
    PlanLine,
    PoolDraw,
    Trim,
    Verdict,
)
from shared.cutting.capacity import ALL, NOTHING, Animal
from shared.cutting.demand import Demand, Shop
from shared.cutting.drawing import Drawing
from shared.cutting.ways import LOST, POOLS

Parts = dict[tuple[int, int, str], Fraction]  # of carcass, side and part
Given = list[tuple[int, int]]  # a pool's place in POOLS or LOST, and nanograms
GivenBack = dict[int, tuple[PlanLine, Given]]  # by the line's id


@dataclass(frozen=True, slots=True)
class Pools:
    """What one share has and draws, the conflicts, and the verdict by line."""

    trim: Trim
    draws: tuple[PoolDraw, ...]
    conflicts: tuple[Conflict, ...]
    verdicts: tuple[tuple[int, Verdict], ...]

    @property
    def verdict(self) -> Verdict:
        """The worst of the lines that stand."""
        return VERDICTS[max([VERDICTS.index(one) for _, one in self.verdicts], default=0)]


def pools(
    share: Share,
    shop: Shop,
    demands: Sequence[Demand],
    lines: Sequence[PlanLine],
    natural: Sequence[PlanLine] = (),
    known: GivenBack | None = None,
    before: tuple[Trim, Sequence[PlanLine]] | None = None,
) -> Pools:
    """Fill a share's pools from its plan lines and let its pool choices draw.

    `natural` are the lines of any share that take what is trim by nature (uncut quarters),
    `known` what lines were reckoned to give back before; `before` are the share's trim and the
    lines it came of, where what is trim by nature is as it was.
    """
    if before is None:
        given = [0] * (LOST + 1)
        if share.leader is None:
            _by_nature(given, share.number, shop, natural)
        _give_back(given, lines, shop, known)
    else:
        given = _moved(*before, lines, shop, known)
    pool = dict(zip(POOLS, given, strict=False))
    drawing = Drawing(share.number, pool)
    if demands:
        drawing.draw(demands, shop.ways.catalogue.leanest)
    trim = Trim(share.number, *given)
    order = sorted(drawing.drawn, key=lambda one: one.line)
    return Pools(trim, tuple(order), tuple(drawing.conflicts), tuple(drawing.verdicts))


def _by_nature(given: list[int], share: int, shop: Shop, natural: Sequence[PlanLine]) -> None:
    """Parts that are trim whatever the order says, as far as no line takes them.

    Of a divided side a share has its fraction less what it took itself, and no more than the
    others leave.
    """
    parts = shop.ways.nature
    mine: Parts = {}
    everybodys: Parts = {}
    for made in natural:
        for one in made.taken:
            key = (made.carcass, made.side, one.part)
            everybodys[key] = everybodys.get(key, NOTHING) + one.fraction
            if made.share == share:
                mine[key] = mine.get(key, NOTHING) + one.fraction
    for one in shop.held[share] if parts else ():
        animal = shop.herd[one.side.carcass]
        for part in parts:
            if part.per == "side":
                left = one.fractions[part.quarter]
                key = (one.side.carcass, one.side.number, part.code)
                if key in everybodys:
                    others = ALL - everybodys[key]
                    left = max(NOTHING, min(left - mine.get(key, NOTHING), others))
                weight = 0 if part.code in one.side.lost else one.side.part_ng(part)
            else:
                left = one.of_animal
                weight = 0 if part.code in animal.lost else animal.part_ng(part)
            left_ng = weight * left.numerator // left.denominator
            for place, above, below in shop.ways.gives[part.code]:
                given[place] += left_ng * above // below


def _moved(
    trim: Trim,
    was: Sequence[PlanLine],
    lines: Sequence[PlanLine],
    shop: Shop,
    known: GivenBack | None,
) -> list[int]:
    """What is given with other lines: less of those that are gone, more of those that came."""
    if len(was) == len(lines):
        pairs = [pair for pair in zip(was, lines, strict=True) if pair[0] is not pair[1]]
        was, lines = [one for one, _ in pairs], [one for _, one in pairs]
    else:
        before, after = {id(one) for one in was}, {id(one) for one in lines}
        was = [one for one in was if id(one) not in after]
        lines = [one for one in lines if id(one) not in before]
    gone, come = [0] * (LOST + 1), list(trim[1:])
    _give_back(gone, was, shop, known)
    _give_back(come, lines, shop, known)
    return [more - less for more, less in zip(come, gone, strict=True)]


def _give_back(
    given: list[int], lines: Sequence[PlanLine], shop: Shop, known: GivenBack | None
) -> None:
    """Add what lines give back to each pool, and what the knife loses."""
    gives_back = shop.ways.gives_back
    for made in lines:
        fractions = gives_back[made.cut]
        if fractions is not None:
            weight = made.weight_ng
            for place, above, below in fractions:
                given[place] += weight * above // below
            continue
        before = None if known is None else known.get(id(made))
        if before is None:
            before = made, _given_to_trim(made, shop)
            if known is not None:
                known[id(made)] = before  # the line is held there, so that no other has its id
        for place, amount in before[1]:
            given[place] += amount


def _given_to_trim(made: PlanLine, shop: Shop) -> Given:
    """What a line that is given to the trim gives to each pool."""
    found: Given = []
    animal, gives = shop.herd[made.carcass], shop.ways.gives
    weights = None if not made.side else animal.sides[made.side - 1].weights
    for code, fraction in made.taken:
        if weights is None:
            whole = _weight(animal, shop.ways.catalogue.parts[code])
        else:
            whole = weights[code]
        taken = whole if fraction is ALL else whole * fraction.numerator // fraction.denominator
        found += [(place, taken * a // b) for place, a, b in gives[code]]
    return found


def _weight(animal: Animal, part: Part) -> int:
    """What a part weighs that comes of both sides, or one to an animal."""
    if part.per == "animal":
        return animal.part_ng(part)
    return animal.sides[0].part_ng(part) + animal.sides[1].part_ng(part)
