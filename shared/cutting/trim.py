"""The pools: what each share has to grind, render and boil, and what its choices draw of it.

A pool holds what is trim by nature, what the cuts give back, and what was given to the trim; never
what nobody has settled. All at expected weights.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part, Pool
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
from shared.cutting.ways import POOLS, Gives


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
) -> Pools:
    """Fill a share's pools from its plan lines and let its pool choices draw.

    `natural` are the lines of any share that take what is trim by nature (uncut quarters).
    """
    pool: dict[Pool, int] = dict.fromkeys(POOLS, 0)
    if share.leader is None:
        _by_nature(pool, share.number, shop, natural)
    loss = 0
    for made in lines:
        loss += _given_back(pool, made, shop)
    drawing = Drawing(share.number, pool)
    if demands:
        drawing.draw(demands, shop.ways.catalogue.leanest)
    amounts = pool["lean"], pool["fat"], pool["bones"], pool["skin"], pool["offal"]
    trim = Trim(share.number, *amounts, loss)
    order = sorted(drawing.drawn, key=lambda one: one.line)
    return Pools(trim, tuple(order), tuple(drawing.conflicts), tuple(drawing.verdicts))


def _by_nature(pool: dict[Pool, int], share: int, shop: Shop, natural: Sequence[PlanLine]) -> None:
    """Parts that are trim whatever the order says, as far as no line takes them.

    Of a divided side a share has its fraction less what it took itself, and no more than the
    others leave.
    """
    parts = shop.ways.nature
    mine = dict[tuple[int, int, str], Fraction]()
    everybodys = dict[tuple[int, int, str], Fraction]()
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
            _add(pool, shop.ways.gives[part.code], weight * left.numerator // left.denominator)


def _add(pool: dict[Pool, int], gives: Gives, weight: int) -> None:
    for name, above, below in gives:
        pool[name] += weight * above // below


def _given_back(pool: dict[Pool, int], made: PlanLine, shop: Shop) -> int:
    """Add what a line gives back to the pools; what its knife loses."""
    catalogue = shop.ways.catalogue
    cut = catalogue.cuts[made.cut]
    if cut.kind == "to_trim":
        animal = shop.herd[made.carcass]
        for one in made.taken:
            part = catalogue.parts[one.part]
            whole = _weight(animal, made.side, part)
            taken = whole * one.fraction.numerator // one.fraction.denominator
            _add(pool, shop.ways.gives[one.part], taken)
        return 0
    _add(pool, shop.ways.gives_back[made.cut], made.weight_ng)
    loss = cut.trimming.loss
    return made.weight_ng * loss.numerator // loss.denominator if loss else 0


def _weight(animal: Animal, side: int, part: Part) -> int:
    if part.per == "animal":
        return animal.part_ng(part)
    if side == 0:
        return animal.sides[0].part_ng(part) + animal.sides[1].part_ng(part)
    return animal.sides[side - 1].part_ng(part)
