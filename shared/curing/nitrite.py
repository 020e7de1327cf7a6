"""In-going nitrite of a batch in parts per million of the green weight, held against the rules.

Sources: FSIS Processing Inspectors' Calculations Handbook (Directive 7620.3, 1995), 9 CFR 424.21(c)
and 424.22(b). It checks what the shop did by its own recipe; it advises no cure. What isn't known
"can't be checked": there is never a tick without every figure.
"""

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from shared.units import Weight

Product = Literal["comminuted", "immersed", "pumped", "dry_cured", "bacon_pumped", "bacon_dry"]
Verdict = Literal[
    "within",
    "below_floor",
    "above_ceiling",
    "on_target",
    "below_target",
    "above_target",
    "cant_be_checked",
]
PRODUCTS: tuple[Product, ...] = (
    "comminuted",
    "immersed",
    "pumped",
    "dry_cured",
    "bacon_pumped",
    "bacon_dry",
)
TICKS: tuple[Verdict, ...] = ("within", "on_target")
# Where the cure goes in with a brine: its pick-up must be known.
WITH_BRINE: tuple[Product, ...] = ("immersed", "pumped", "bacon_pumped")
# Bacon has rules of its own (9 CFR 424.22(b), 424.21(c)): what a recipe of another class counts as
# when bellies are in it. Its cure goes in the same way, with a brine or without.
AS_BACON: dict[Product, Product] = {
    "comminuted": "bacon_dry",
    "dry_cured": "bacon_dry",
    "immersed": "bacon_pumped",
    "pumped": "bacon_pumped",
}
MILLION = 1_000_000


@dataclass(frozen=True, slots=True)
class Limit:
    """Whole ppm of in-going nitrite: a target, or a floor and a ceiling."""

    target: int | None = None
    floor: int | None = None
    ceiling: int | None = None


# Ceilings: 9 CFR 424.21(c) as the handbook counts them, on green weight; ground meat's is a quarter
# ounce to 100 lb (from memory), which is 156.25 and told 156. Floor: the handbook's
# 120 ppm for cured products that are kept refrigerated. Pumped, massaged or immersed bacon: 120
# ppm is what must go in (9 CFR 424.22(b)), not a ceiling. Dry-cured bacon: 200.
LIMITS: dict[Product, Limit] = {
    "comminuted": Limit(floor=120, ceiling=156),
    "immersed": Limit(floor=120, ceiling=200),
    "pumped": Limit(floor=120, ceiling=200),
    "dry_cured": Limit(floor=120, ceiling=625),
    "bacon_pumped": Limit(target=120),
    "bacon_dry": Limit(floor=120, ceiling=200),
}


@dataclass(frozen=True, slots=True)
class CureUse:
    """What went in. `strength` is the cure mix's share of sodium nitrite (1/16 for 6.25 %).

    `green` is the raw meat's weight. With a brine: `brine` is its whole weight, the cure in it,
    and `pickup` the weight gained as a share of the green weight (1/5 for 20 %). `bacon`: whole
    bellies are in it, whatever the recipe is checked as.
    """

    product: Product
    green: Weight | None = None
    cure: Weight | None = None
    strength: Fraction | None = None
    brine: Weight | None = None
    pickup: Fraction | None = None
    bacon: bool = False


@dataclass(frozen=True, slots=True)
class NitriteCheck:
    """The verdict; `ppm` is exact, None where `missing` names what isn't known.

    `bacon_as` is the class bacon is held to where it lies in a recipe of another class: `limit`
    is that class's then, and the verdict never a tick.
    """

    verdict: Verdict
    limit: Limit
    ppm: Fraction | None = None
    missing: tuple[str, ...] = ()
    bacon_as: Product | None = None


def nitrite(use: CureUse) -> NitriteCheck:
    """Check one batch.

    4 oz of a 6.25 % mix on 100 lb of ground meat: 0.25 × 0.0625 × 1,000,000 ÷ 100 = 156.25 ppm,
    told 156 and within. A brine of 100 lb with 0.06 lb of nitrite, pumped 20 %: 0.06 × 0.20 ×
    1,000,000 ÷ 100 = 120 ppm, on the target of pumped bacon. Bellies in a dry-cured recipe at
    250 ppm: within its 625, but above the 200 of dry-cured bacon, and so told; at 150 ppm they
    "can't be checked" until the recipe is bacon's.
    """
    bacon_as = AS_BACON.get(use.product) if use.bacon else None
    if bacon_as is not None:
        found = nitrite(replace(use, product=bacon_as, bacon=False))
        verdict = "cant_be_checked" if found.verdict in TICKS else found.verdict
        return replace(found, verdict=verdict, bacon_as=bacon_as)
    limit = LIMITS[use.product]
    missing = _missing(use)
    if missing:
        return NitriteCheck("cant_be_checked", limit, missing=missing)
    ppm = _ppm(use)
    return NitriteCheck(_verdict(ppm, limit), limit, ppm)


def whole_ppm(ppm: Fraction) -> int:
    """Parts per million as they are told, rounded half up: 156.25 is 156."""
    return (2 * ppm.numerator + ppm.denominator) // (2 * ppm.denominator)


def _missing(use: CureUse) -> tuple[str, ...]:
    needed: dict[str, object] = {"cure": use.cure, "strength": use.strength}
    if use.product in WITH_BRINE:
        needed |= {"brine": use.brine, "pickup": use.pickup}
    else:
        needed["green"] = use.green
    unknown = [name for name, value in needed.items() if value is None]
    for name, weight in (("green", use.green), ("brine", use.brine)):
        if name in needed and weight is not None and weight.nanograms <= 0:
            unknown.append(name)
    return tuple(unknown)


def _ppm(use: CureUse) -> Fraction:
    assert use.cure is not None
    assert use.strength is not None
    salt = use.cure.nanograms * use.strength * MILLION
    if use.product in WITH_BRINE:
        assert use.brine is not None
        assert use.pickup is not None
        return salt * use.pickup / use.brine.nanograms
    assert use.green is not None
    return salt / use.green.nanograms


def _verdict(ppm: Fraction, limit: Limit) -> Verdict:
    """In whole ppm, as the rules are: a quarter ounce of nitrite on 100 lb is 156.25, told 156."""
    told = whole_ppm(ppm)
    if limit.target is not None:
        if told == limit.target:
            return "on_target"
        return "below_target" if told < limit.target else "above_target"
    if limit.ceiling is not None and told > limit.ceiling:
        return "above_ceiling"
    if limit.floor is not None and told < limit.floor:
        return "below_floor"
    return "within"
