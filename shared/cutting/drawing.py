"""What a share's pool choices draw of its pools: pounds in line order, then what takes the rest.

Of a pool 95 % is sure and 105 % the most (from memory). All in whole numbers: of a product so
many parts in `whole` come from each pool.
"""

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import NamedTuple

from shared.carcass.catalogue import Pool
from shared.cutting.added_stock import LEAN, pearson
from shared.cutting.answer import VERDICTS, Conflict, PoolDraw, Verdict, Where
from shared.cutting.capacity import ALL, NOTHING
from shared.cutting.demand import Demand
from shared.cutting.ways import POOLS

BANDS = (95, 100, 105)  # per cent of a pool: what is sure, what is expected, what is most
Needs = dict[Pool, tuple[int, int]]


class Draw(NamedTuple):
    """One pool choice: nanograms asked (None: the rest), and what it takes of each pool.

    Of `whole` nanograms of the product so many come from each pool of `takes`; the rest is
    `added`, from inspected stock.
    """

    line: int
    cut: str
    asked: int | None
    takes: tuple[tuple[Pool, int], ...]
    whole: int
    added: bool

    def part(self, name: Pool) -> Fraction:
        """The part of the product that comes from a pool."""
        return Fraction(dict(self.takes).get(name, 0), self.whole)


class Drawing:
    """What some pool choices of one share draw, in conflicts, verdicts by line, and draws."""

    def __init__(self, share: int, pool: dict[Pool, int]) -> None:
        """Pools nobody has drawn of."""
        self.share = share
        self.pool = pool
        self.drawn: list[PoolDraw] = []
        self.conflicts: list[Conflict] = []
        self.verdicts: list[tuple[int, Verdict]] = []

    def draw(self, demands: Sequence[Demand], leanest: Fraction) -> None:
        """Let choices draw: pounds in line order, then the rest."""
        pool = self.pool
        draws: list[Draw] = []
        for one in demands:
            if one.draw is not None:
                draws.append(one.draw)
                continue
            lean, most = _lean(one), _leanest(one, leanest)
            if lean is not None and lean > most:
                where = Where(0, 0, part="lean")
                told = Conflict((one.choice.line,), "leaner", where, lean, most, most)
                self.conflicts.append(told)
            else:
                draws.append(_compiled(one, lean, pool))
        standing = [one for one in draws if one.asked is not None]
        needs = _needs(standing)
        while not _fit(needs, pool, BANDS[2]):
            fall = _first_to_fall(standing, pool)
            self.conflicts.append(_told(_shrunk(standing[: fall + 1], pool), pool))
            standing = [one for place, one in enumerate(standing) if place != fall]
            needs = _needs(standing)
        if standing:
            level = next(n for n in range(3) if _fit(needs, pool, BANDS[n]))
            for one in standing:
                self.verdicts.append((one.line, VERDICTS[level]))
        self._take([*standing, *[one for one in draws if one.asked is None]])

    def _take(self, draws: Sequence[Draw]) -> None:
        """Take what was asked, and all that is left for what takes the rest."""
        left: Needs = {name: (there, 1) for name, there in self.pool.items()}
        for one in draws:
            weight = _most(one, left) if one.asked is None else one.asked
            self.drawn.append(_drawn(self.share, one, weight))
            for name, part in one.takes:
                above, below = left[name]
                if below == one.whole:
                    left[name] = max(0, above - part * weight), below
                else:
                    above = above * one.whole - part * weight * below
                    left[name] = max(0, above), below * one.whole


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


def _compiled(one: Demand, lean: Fraction | None, pool: dict[Pool, int]) -> Draw:
    """What the product takes of each pool.

    Worked number: ground at 80 % lean takes 4/5 of its weight in lean and 1/5 in fat. With no
    lean stated, lean and fat come as they are there.
    """
    amount, stock = one.choice.amount, one.choice.added
    asked = amount.weight.nanograms if amount.kind == "pounds" and amount.weight else None
    added = NOTHING if stock is None else _added(one, lean, pool)
    # so much added to the trim as it comes that the mix has the lean asked
    as_it_comes = stock is not None and stock.share is None and added > 0
    fixed = stock is None and len(one.cut.pools) == 1
    if lean is not None and "fat" in one.cut.pools and stock is None:
        whole = lean.denominator
        takes: list[tuple[Pool, int]] = [("lean", lean.numerator), ("fat", whole - lean.numerator)]
        fixed = True
    elif lean is not None and "fat" in one.cut.pools and not as_it_comes:
        own = 1 - added
        if stock is not None:
            lean = max(NOTHING, min(own, lean - added * LEAN[stock.of]))
        fat, whole = own - lean, lean.denominator * own.denominator
        takes = [
            ("lean", lean.numerator * own.denominator),
            ("fat", fat.numerator * (whole // fat.denominator)),
        ]
    else:
        there = _as_there(one, pool)
        whole = sum([part for _, part in there]) * added.denominator
        own = added.denominator - added.numerator
        takes = [(name, part * own) for name, part in there]
    kept = tuple([take for take in takes if take[1]])
    found = Draw(one.choice.line, one.cut.code, asked, kept, whole, added > 0)
    if fixed:
        one.draw = found
    return found


def _as_there(one: Demand, pool: dict[Pool, int]) -> list[tuple[Pool, int]]:
    """Pools in the proportion in which they are there."""
    some = any(pool[name] for name in one.cut.pools)
    return [(name, pool[name] if some else 1) for name in one.cut.pools]


def _added(one: Demand, lean: Fraction | None, pool: dict[Pool, int]) -> Fraction:
    """The part of a product that is added: as stated, else by Pearson's square."""
    added = one.choice.added
    if added is None:
        return NOTHING
    if added.share is not None:
        return added.share
    there = _as_there(one, pool)
    own = Fraction(dict(there).get("lean", 0), sum([part for _, part in there]))
    return NOTHING if lean is None else pearson(own, LEAN[added.of], lean)


def _most(one: Draw, left: Needs) -> int:
    """The most of a product that the pools give: the scarcer of lean and fat sets it."""
    most = [left[name][0] * one.whole // (left[name][1] * part) for name, part in one.takes]
    return min(most, default=0)


def _needs(draws: Iterable[Draw]) -> Needs:
    """What draws need of each pool, nanograms as above and below the line."""
    needs: Needs = {}
    for one in draws:
        for name, part in one.takes:
            mine = part * (one.asked or 0)
            above, below = needs.get(name, (0, one.whole))
            if below == one.whole:
                needs[name] = above + mine, below
            else:
                needs[name] = above * one.whole + mine * below, below * one.whole
    return needs


def _fit(needs: Needs, pool: dict[Pool, int], band: int) -> bool:
    return all(above * 100 <= pool[name] * band * below for name, (above, below) in needs.items())


def _first_to_fall(draws: Sequence[Draw], pool: dict[Pool, int]) -> int:
    """The first of the choices that don't fit with which they no longer do."""
    return next(
        place for place in range(len(draws)) if not _fit(_needs(draws[: place + 1]), pool, BANDS[2])
    )


def _shrunk(draws: Sequence[Draw], pool: dict[Pool, int]) -> list[Draw]:
    kept = list(draws)
    for one in reversed(draws[:-1]):
        without = [other for other in kept if other is not one]
        if not _fit(_needs(without), pool, BANDS[2]):
            kept = without
    return kept


def _told(draws: Sequence[Draw], pool: dict[Pool, int]) -> Conflict:
    """The numbers of a conflict over the pools: `where.part` is the pool that runs short.

    Products alike in lean are told in product pounds ("25 lb asked, 18 lb there"), others in
    pounds of that pool.
    """
    needs = dict[Pool, Fraction]()
    for name, (above, below) in _needs(draws).items():
        needs[name] = Fraction(above, below)
    short = max(needs, key=lambda it: needs[it] / pool[it] if pool[it] else 1 << 30)
    lines = tuple(one.line for one in draws)
    first = draws[0]
    alike = {
        tuple([(name, Fraction(part, one.whole)) for name, part in one.takes]) for one in draws
    }
    if len(alike) == 1:
        there = Fraction(pool[short]) / first.part(short)
        rivals = tuple((one.line, Fraction(one.asked or 0)) for one in draws)
    else:
        there = Fraction(pool[short])
        rivals = tuple((one.line, one.part(short) * (one.asked or 0)) for one in draws)
    asked = sum([amount for _, amount in rivals], NOTHING)
    where = Where(0, 0, part=short)
    most = there * Fraction(BANDS[2], 100)
    return Conflict(lines, "trim", where, asked, there, most, rivals)


def _drawn(share: int, one: Draw, weight: int) -> PoolDraw:
    """Whole nanograms of each pool, and of what is added, that add up to the product."""
    amounts = {name: part * weight // one.whole for name, part in one.takes}
    over = weight - sum(amounts.values())
    if one.takes and not one.added:
        amounts[one.takes[0][0]] += over
        over = 0
    drawn = [amounts.get(name, 0) for name in POOLS]
    return PoolDraw(one.line, share, one.cut, weight, *drawn, added_ng=over)
