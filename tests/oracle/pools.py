"""What the plan leaves for grinding, boiling and rendering, and whether the pounds asked are there.

Worked out from the answer's lines and the species file, in exact fractions of nanograms.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from shared.cutting.answer import Answer, PlanLine
from tests.oracle.lot import Lot
from tests.oracle.species_file import Json, share_of, weight_of

NAMES: tuple[str, ...] = ("lean", "fat", "bones", "skin", "offal")
BANDS = (("sure", Fraction(19, 20)), ("likely", Fraction(1)), ("tight", Fraction(21, 20)))
Pool = dict[str, Fraction]


def pools_of(lot: Lot, lines: Sequence[PlanLine]) -> dict[int, Pool]:
    """The pools of every share."""
    found: dict[int, Pool] = {number: dict.fromkeys(NAMES, Fraction(0)) for number in lot.shares}
    for number, share in lot.shares.items():
        if not share.get("leader"):
            _by_nature(lot, number, found[number], lines)
    for one in lines:
        cut = lot.species.cuts[one.cut]
        if cut["kind"] == "to_trim":
            for taken in one.taken:
                sides = (one.side,) if one.side else (1, 2)
                if lot.species.parts[taken.part].get("per", "side") == "animal":
                    sides = (1,)
                for side in sides:
                    weight = lot.part_weight((one.carcass + 1, side), taken.part)
                    _add(lot, found[one.share], taken.part, taken.fraction * weight)
        else:
            given = cut.get("trimming", {})
            for name, key in zip(NAMES, ("lean", "fat", "bone", "skin"), strict=False):
                found[one.share][name] += one.weight_ng * share_of(given.get(key, "0"))
    return found


def _by_nature(lot: Lot, share: int, pool: Pool, lines: Sequence[PlanLine]) -> None:
    for code, part in lot.species.parts.items():
        if not part.get("by_nature_trim"):
            continue
        for side in lot.sides_of(share):
            taken = sum(
                (
                    each.fraction
                    for one in lines
                    for each in one.taken
                    if (one.carcass + 1, one.side) == side and each.part == code
                ),
                Fraction(0),
            )
            if not lot.lost(side, code):
                left = max(Fraction(0), lot.holds_part(share, side, code) - taken)
                _add(lot, pool, code, left * lot.part_weight(side, code))


def _add(lot: Lot, pool: Pool, code: str, weight: Fraction) -> None:
    part = lot.species.parts[code]
    if part["primal"] == "variety":
        pool["offal"] += weight
        return
    for name, key in zip(NAMES, ("lean", "fat", "bone", "skin"), strict=False):
        pool[name] += weight * share_of(part.get(key, "0"))


def takes(lot: Lot, choice: Json, pool: Pool) -> dict[str, Fraction] | None:
    """What a pound of the product takes of each pool; None where it is leaner than can be."""
    cut = lot.species.cuts[choice["cut"]]
    names: list[str] = cut["pools"]
    lean = choice.get("lean") or cut.get("lean_percent")
    if {"lean", "fat"} <= set(names) and lean:
        part = share_of(lean)
        if part > share_of(lot.species.toml["leanest"]):
            return None
        return {"lean": part, "fat": 1 - part}
    there = sum((pool[name] for name in names), Fraction(0))
    return {name: pool[name] / there if there else Fraction(1, len(names)) for name in names}


def verdict(lot: Lot, lines: Sequence[PlanLine]) -> str:
    """sure, likely, tight or cant: whether the pounds asked of the pools are there."""
    pools = pools_of(lot, lines)
    needs: dict[tuple[int, str], Fraction] = {}
    for choice in lot.choices:
        if lot.species.cuts[choice["cut"]]["kind"] != "pool":
            continue
        taken = takes(lot, choice, pools[choice["share"]])
        if taken is None:
            return "cant"
        if isinstance(choice["amount"], dict):
            asked = weight_of(choice["amount"]["pounds"])
            for name, part in taken.items():
                key = (choice["share"], name)
                needs[key] = needs.get(key, Fraction(0)) + part * asked
    for word, band in BANDS:
        if all(need <= pools[share][name] * band for (share, name), need in needs.items()):
            return word
    return "cant"


def faults(lot: Lot, answer: Answer) -> Iterator[str]:
    """What is wrong with the trim the answer tells and with what its pool lines draw of it."""
    pools = pools_of(lot, answer.lines)
    for told in answer.trim:
        mine = [int(pools[told.share][name]) for name in NAMES]
        said = [told.lean_ng, told.fat_ng, told.bones_ng, told.skin_ng, told.offal_ng]
        if any(abs(one - other) > 400 for one, other in zip(mine, said, strict=True)):
            yield f"share {told.share} has {mine}, told {said}"
    choices = {one["line"]: one for one in lot.choices}
    drawn: dict[tuple[int, str], int] = {}
    for one in answer.draws:
        parts = (one.lean_ng, one.fat_ng, one.bones_ng, one.skin_ng, one.offal_ng)
        if sum(parts) != one.weight_ng or min(parts) < 0:
            yield f"line {one.line} draws {parts}, in all {one.weight_ng}"
        amount = choices[one.line]["amount"]
        if amount != "rest" and abs(one.weight_ng - weight_of(amount["pounds"])) >= 1:
            yield f"line {one.line} draws {one.weight_ng}, asked {amount}"
        for name, part in zip(NAMES, parts, strict=True):
            drawn[one.share, name] = drawn.get((one.share, name), 0) + part
    for (share, name), weight in drawn.items():
        if weight > pools[share][name] * BANDS[-1][1] + 10:
            yield f"share {share} draws {weight} of {name}, there is {float(pools[share][name])}"
