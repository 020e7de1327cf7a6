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
STOCK = {"pork_fat": Fraction(1, 10), "pork_trim": Fraction(1, 2), "beef_fat": Fraction(1, 10)}
"""Lean of what is added from inspected stock: common practice, no source."""


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
    """A share's fraction less what it took itself, and no more than all lines leave."""
    for code, part in lot.species.parts.items():
        if not part.get("by_nature_trim"):
            continue
        for side in lot.sides_of(share):
            here = [
                (one.share, each.fraction)
                for one in lines
                for each in one.taken
                if (one.carcass + 1, one.side) == side and each.part == code
            ]
            mine = sum((part for owner, part in here if owner == share), Fraction(0))
            left = 1 - sum((part for _, part in here), Fraction(0))
            if not lot.lost(side, code):
                left = max(Fraction(0), min(left, lot.holds_part(share, side, code) - mine))
                _add(lot, pool, code, left * lot.part_weight(side, code))


def _add(lot: Lot, pool: Pool, code: str, weight: Fraction) -> None:
    part = lot.species.parts[code]
    if part["primal"] == "variety":
        pool["offal"] += weight
        return
    for name, key in zip(NAMES, ("lean", "fat", "bone", "skin"), strict=False):
        pool[name] += weight * share_of(part.get(key, "0"))


def takes(lot: Lot, choice: Json, pool: Pool) -> dict[str, Fraction] | None:
    """What a pound of the product takes of each pool; None where it is leaner than can be.

    "added" is what of the pound comes from inspected stock.
    """
    cut = lot.species.cuts[choice["cut"]]
    names: list[str] = cut["pools"]
    there = sum((pool[name] for name in names), Fraction(0))
    mix = {name: pool[name] / there if there else Fraction(1, len(names)) for name in names}
    stated, usual = choice.get("lean"), cut.get("lean_percent")
    leanest = share_of(lot.species.toml["leanest"]) if "fat" in names else Fraction(1)
    if "added" in choice and "lean" in names:
        stock = STOCK[choice["added"]["of"]]
        if "share" in choice["added"]:
            return _stated(share_of(choice["added"]["share"]), stock, stated, mix, leanest)
        if stated or usual:
            asked = share_of(stated or usual)
            if asked > leanest:
                return None
            of_own, of_stock = asked - stock, mix["lean"] - asked  # Pearson's square
            if of_own > 0 and of_stock > 0:
                own = of_own / (of_own + of_stock)
                return {"added": 1 - own} | {name: own * part for name, part in mix.items()}
    if {"lean", "fat"} <= set(names) and (stated or usual):
        part = share_of(stated or usual)
        return None if part > leanest else {"lean": part, "fat": 1 - part}
    if "added" in choice and "share" in choice["added"]:
        part = share_of(choice["added"]["share"])
        return {"added": part} | {name: (1 - part) * one for name, one in mix.items()}
    return mix


def _stated(
    part: Fraction, stock: Fraction, stated: str | None, mix: Pool, leanest: Fraction
) -> dict[str, Fraction] | None:
    """So much of the pound is added; the rest is as lean as it takes, or as it comes."""
    own = {name: (1 - part) * one for name, one in mix.items()}
    if stated:
        lean = share_of(stated) - part * stock
        if lean > leanest * (1 - part):
            return None
        if "fat" in mix:
            lean = min(1 - part, max(Fraction(0), lean))
            own = {"lean": lean, "fat": 1 - part - lean}
    return {"added": part} | own


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
            for name in set(taken) - {"added"}:
                part = taken[name]
                key = (choice["share"], name)
                needs[key] = needs.get(key, Fraction(0)) + part * asked
    if any(_short_batch(lot, one) for one in lot.choices):
        return "cant"
    for word, band in BANDS:
        if all(need <= pools[share][name] * band for (share, name), need in needs.items()):
            return word
    return "cant"


def _short_batch(lot: Lot, choice: Json) -> bool:
    """Whether a custom animal's line comes to less than the least batch, co-owners' meat and all.

    Where a line of that batch takes the rest it may yet be enough.
    """
    batch = lot.species.cuts[choice["cut"]].get("batch")
    mine = _animals(lot, choice["share"])
    custom = any(
        lot.order["carcasses"][one - 1].get("regime", "custom") == "custom" for one in mine
    )
    if batch is None or not custom or lot.order["species"] in ("deer", "bison"):
        return False
    together = [
        one
        for one in lot.choices
        if _animals(lot, one["share"]) & mine and _kettle(one) == _kettle(choice)
    ]
    if any(one["amount"] == "rest" for one in together):
        return False
    return sum(weight_of(one["amount"]["pounds"]) for one in together) < weight_of(
        batch["smallest"]
    )


def _animals(lot: Lot, share: int) -> set[int]:
    return {held["carcass"] for held in lot.shares[share]["holdings"]}


def _kettle(choice: Json) -> tuple[str, str]:
    return ("", choice["seasoning"]) if choice.get("seasoning") else (choice["cut"], "")


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
        if sum(parts) + one.added_ng != one.weight_ng or min(*parts, one.added_ng) < 0:
            yield f"line {one.line} draws {parts}, in all {one.weight_ng}"
        mix = takes(lot, choices[one.line], pools[one.share]) or {}
        if abs(one.added_ng - mix.get("added", 0) * one.weight_ng) > 1 + one.weight_ng / 10**9:
            yield f"line {one.line} adds {one.added_ng}"
        amount = choices[one.line]["amount"]
        if amount != "rest" and abs(one.weight_ng - weight_of(amount["pounds"])) >= 1:
            yield f"line {one.line} draws {one.weight_ng}, asked {amount}"
        for name, part in zip(NAMES, parts, strict=True):
            drawn[one.share, name] = drawn.get((one.share, name), 0) + part
    for (share, name), weight in drawn.items():
        if weight > pools[share][name] * BANDS[-1][1] + 10:
            yield f"share {share} draws {weight} of {name}, there is {float(pools[share][name])}"
