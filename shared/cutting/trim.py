"""The pools: what each share has to grind, render and boil, and what its choices draw of it.

A pool holds what is trim by nature, what the cuts give back, and what was given to the trim; never
what nobody has settled. All at expected weights; 95 % of it is sure and 105 % the most (from
memory). Pounds are drawn first, in line order, then whatever takes the rest.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.carcass.catalogue import Part, Pool
from shared.cutting.added_stock import LEAN, pearson
from shared.cutting.answer import (
    VERDICTS,
    Conflict,
    PlanLine,
    PoolDraw,
    Trim,
    Verdict,
    Where,
)
from shared.cutting.capacity import ALL, NOTHING, Animal
from shared.cutting.demand import Demand, Shop
from shared.cutting.ways import POOLS, Gives

BANDS = (Fraction(95, 100), Fraction(1), Fraction(105, 100))


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


@dataclass(frozen=True, slots=True)
class _Draw:
    """One pool choice: pounds asked (None: the rest), and what a nanogram of it takes of each.

    `added` is the part of it that comes from inspected stock.
    """

    line: int
    cut: str
    asked: int | None
    takes: tuple[tuple[Pool, Fraction], ...]
    added: Fraction = NOTHING


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
    drawn: list[PoolDraw] = []
    conflicts: list[Conflict] = []
    verdicts: list[tuple[int, Verdict]] = []
    if demands:
        _draw(share.number, pool, demands, shop, drawn, conflicts, verdicts)
    amounts = pool["lean"], pool["fat"], pool["bones"], pool["skin"], pool["offal"]
    trim = Trim(share.number, *amounts, loss)
    order = sorted(drawn, key=lambda one: one.line)
    return Pools(trim, tuple(order), tuple(conflicts), tuple(verdicts))


def _by_nature(pool: dict[Pool, int], share: int, shop: Shop, natural: Sequence[PlanLine]) -> None:
    """Parts that are trim whatever the order says, as far as no line takes them.

    Of a divided side a share has its fraction less what it took itself, and no more than the
    others leave.
    """
    parts = shop.ways.nature
    mine: dict[tuple[int, int, str], Fraction] = {}
    everybodys: dict[tuple[int, int, str], Fraction] = {}
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


def _draw(
    share: int,
    pool: dict[Pool, int],
    demands: Sequence[Demand],
    shop: Shop,
    drawn: list[PoolDraw],
    conflicts: list[Conflict],
    verdicts: list[tuple[int, Verdict]],
) -> None:
    """Let a share's pool choices draw: pounds in line order, then the rest."""
    draws: list[_Draw] = []
    for one in demands:
        lean, leanest = _lean(one), _leanest(one, shop.ways.catalogue.leanest)
        if lean is not None and lean > leanest:
            where = Where(0, 0, part="lean")
            conflicts.append(Conflict((one.choice.line,), "leaner", where, lean, leanest, leanest))
        else:
            draws.append(_compiled(one, pool))
    pounds = [one for one in draws if one.asked is not None]
    standing = pounds
    while (fall := _first_to_fall(standing, pool)) >= 0:
        conflicts.append(_told(_shrunk(standing[: fall + 1], pool), pool))
        standing = [one for place, one in enumerate(standing) if place != fall]
    level = next(n for n in range(3) if _fit(standing, pool, BANDS[n]))
    for one in standing:
        verdicts.append((one.line, VERDICTS[level]))
    left: dict[Pool, Fraction | int] = {**pool}
    for one in [*standing, *[it for it in draws if it.asked is None]]:
        weight = one.asked if one.asked is not None else int(_most(one, left))
        made = _drawn(share, one, weight)
        drawn.append(made)
        for name, part in one.takes:
            left[name] = max(NOTHING, left[name] - part * weight)


def _lean(one: Demand) -> Fraction | None:
    """The lean a ground product is asked with, None where it comes as it is.

    Where so much is added whatever comes of it, only the lean the order itself states counts.
    """
    added = one.choice.added
    if "lean" not in one.cut.pools or ("fat" not in one.cut.pools and added is None):
        return None
    if one.choice.lean is not None or (added is not None and added.share is not None):
        return one.choice.lean
    return one.cut.lean_percent


def _leanest(one: Demand, leanest: Fraction) -> Fraction:
    """The leanest a product can be: what is added makes it fatter.

    Worked number: a fifth of pork fat, 10 % lean, in trim of 95 % at the leanest is 78 %.
    """
    added = one.choice.added
    if "fat" not in one.cut.pools:
        leanest = ALL
    if added is None or added.share is None:
        return leanest
    return added.share * LEAN[added.of] + (1 - added.share) * leanest


def _compiled(one: Demand, pool: dict[Pool, int]) -> _Draw:
    """What a nanogram of the product takes of each pool.

    Worked number: ground at 80 % lean takes 4/5 of its weight in lean and 1/5 in fat. With no
    lean stated, lean and fat come as they are there.
    """
    amount = one.choice.amount
    asked = amount.weight.nanograms if amount.kind == "pounds" and amount.weight else None
    lean = _lean(one)
    added = _added(one, lean, pool)
    own = 1 - added
    if lean is not None and "fat" in one.cut.pools and not _as_it_comes(one, added):
        stock = LEAN[one.choice.added.of] if one.choice.added is not None else NOTHING
        mine = max(NOTHING, min(own, lean - added * stock))
        takes: list[tuple[Pool, Fraction]] = [("lean", mine), ("fat", own - mine)]
    else:
        takes = [(name, own * part) for name, part in _as_there(one, pool)]
    return _Draw(one.choice.line, one.cut.code, asked, tuple(_nonzero(takes)), added)


def _as_it_comes(one: Demand, added: Fraction) -> bool:
    """Whether so much is added to the trim as it comes that the mix has the lean asked."""
    return one.choice.added is not None and one.choice.added.share is None and added > 0


def _as_there(one: Demand, pool: dict[Pool, int]) -> list[tuple[Pool, Fraction]]:
    """Pools in the proportion in which they are there."""
    there = sum([pool[name] for name in one.cut.pools])
    return [
        (name, Fraction(pool[name], there) if there else Fraction(1, len(one.cut.pools)))
        for name in one.cut.pools
    ]


def _added(one: Demand, lean: Fraction | None, pool: dict[Pool, int]) -> Fraction:
    """The part of a product that is added: as stated, else by Pearson's square."""
    added = one.choice.added
    if added is None:
        return NOTHING
    if added.share is not None:
        return added.share
    own = dict(_as_there(one, pool)).get("lean", NOTHING)
    return NOTHING if lean is None else pearson(own, LEAN[added.of], lean)


def _nonzero(takes: Iterable[tuple[Pool, Fraction]]) -> Iterator[tuple[Pool, Fraction]]:
    return (one for one in takes if one[1])


def _most(one: _Draw, left: Mapping[Pool, Fraction | int]) -> Fraction:
    """The most of a product that the pools give: the scarcer of lean and fat sets it."""
    return min([left[name] / part for name, part in one.takes], default=Fraction(0))


def _needs(draws: Iterable[_Draw]) -> dict[Pool, Fraction]:
    needs: dict[Pool, Fraction] = {}
    for one in draws:
        for name, part in one.takes:
            needs[name] = needs.get(name, Fraction(0)) + part * (one.asked or 0)
    return needs


def _fit(draws: Iterable[_Draw], pool: dict[Pool, int], band: Fraction) -> bool:
    return all(need <= pool[name] * band for name, need in _needs(draws).items())


def _first_to_fall(draws: Sequence[_Draw], pool: dict[Pool, int]) -> int:
    for place in range(len(draws)):
        if not _fit(draws[: place + 1], pool, BANDS[2]):
            return place
    return -1


def _shrunk(draws: Sequence[_Draw], pool: dict[Pool, int]) -> list[_Draw]:
    kept = list(draws)
    for one in reversed(draws[:-1]):
        without = [other for other in kept if other is not one]
        if not _fit(without, pool, BANDS[2]):
            kept = without
    return kept


def _told(draws: Sequence[_Draw], pool: dict[Pool, int]) -> Conflict:
    """The numbers of a conflict over the pools: `where.part` is the pool that runs short.

    Products alike in lean are told in product pounds ("25 lb asked, 18 lb there"), others in
    pounds of that pool.
    """
    needs = _needs(draws)
    short = max(needs, key=lambda name: needs[name] / pool[name] if pool[name] else 1 << 30)
    lines = tuple(one.line for one in draws)
    if len({one.takes for one in draws}) == 1:
        part = dict(draws[0].takes)[short]
        there = Fraction(pool[short]) / part
        rivals = tuple((one.line, Fraction(one.asked or 0)) for one in draws)
    else:
        there = Fraction(pool[short])
        rivals = tuple(
            (one.line, dict(one.takes).get(short, Fraction(0)) * (one.asked or 0)) for one in draws
        )
    asked = sum([amount for _, amount in rivals], Fraction(0))
    where = Where(0, 0, part=short)
    return Conflict(lines, "trim", where, asked, there, there * BANDS[2], rivals)


def _drawn(share: int, one: _Draw, weight: int) -> PoolDraw:
    """Whole nanograms of each pool, and of what is added, that add up to the product."""
    amounts = {name: int(part * weight) for name, part in one.takes}
    over = weight - sum(amounts.values())
    if one.takes and not one.added:
        amounts[one.takes[0][0]] += over
        over = 0
    drawn = [amounts.get(name, 0) for name in POOLS]
    return PoolDraw(one.line, share, one.cut, weight, *drawn, added_ng=over)
