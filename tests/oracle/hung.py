"""What a side weighs, from the order file and the species file alone."""

from collections.abc import Mapping
from fractions import Fraction

from tests.oracle.species_file import Json, Species, share_of, weight_of

HUNG_APART = {
    "head": ("head", "tongue", "cheeks"),
    "feet": ("feet", "fore_foot", "hind_foot"),
    "leaf": ("leaf_fat", "kidney_fat"),
    "kidneys": ("kidney", "kidneys"),
}
"""What an order file's dressing may put on or off the scale, by the codes of its parts."""


def side_weight(carcass: Json, side: int, species: Species) -> Fraction:
    """Chilled, else hot less shrink, else live × dressing, else the guess, else the reference.

    Over what of a carcass hung on the scale, since shares are of the species' own dressing.
    """
    ranges = species.toml["ranges"]
    kept = 1 - share_of(ranges["shrink"])
    hung = hung_of(carcass, species)
    for key, times in (("chilled", Fraction(1)), ("hot", kept)):
        weighed = _weighed(carcass.get(key, [{}, {}])[side - 1])
        if weighed is not None:
            return _made_whole(carcass, side, key, weighed * times, species)
    if "hot_whole" in carcass:
        half = weight_of(carcass["hot_whole"]) / 2 * kept
        return _made_whole(carcass, side, "hot", half, species)
    if "live" in carcass:
        usual = ranges["dressing_usual"]
        low, high = usual.get(carcass.get("skin")) or usual.get(carcass.get("sex")) or usual[""]
        on_foot = weight_of(carcass["live"]) * (share_of(low) + share_of(high)) / 2
        return on_foot * kept / 2 / hung
    if "booked" in carcass:
        return weight_of(carcass["booked"]) * kept / 2 / hung
    return species.reference


def _made_whole(
    carcass: Json, side: int, key: str, weighed: Fraction, species: Species
) -> Fraction:
    """The whole side of what was on the scale, without what was off before."""
    off = [it for it in carcass.get("gone", []) if it["side"] == side and _was_off(it, key)]
    here = on_scale(carcass, species)
    away = {it["part"] for it in off if "weight" not in it} & here
    back = [weight_of(it["weight"]) for it in off if "weight" in it and it["part"] not in away]
    hung = hung_of(carcass, species)
    left = hung - sum(share_of(species.parts[code]["share"]) for code in away)
    return (weighed + sum(back)) / (left if left > 0 else hung)


def _was_off(gone: Json, key: str) -> bool:
    return bool(gone.get("before_scale") or (key == "chilled" and gone.get("before_chilled")))


def hung_of(carcass: Json, species: Species) -> Fraction:
    """A carcass as it was weighed over the same one dressed as its species' shares are."""
    there = on_scale(carcass, species)
    hung = Fraction(1)
    for code, part in species.parts.items():
        hung += (int(code in there) - int(part.get("counted", True))) * share_of(part["share"])
    return hung


def on_scale(carcass: Json, species: Species) -> set[str]:
    """The parts that are in the hanging weight of a carcass so dressed."""
    told = carcass.get("dressing", {})
    found: set[str] = set()
    for code, part in species.parts.items():
        keys = [key for key, codes in HUNG_APART.items() if code in codes and key in told]
        asked = told[keys[0]] if keys else None
        here = part.get("counted", True) if asked is None else asked in ("on", "in")
        if here and not (carcass.get("skin") == "skinned" and part.get("needs_skin")):
            found.add(code)
    return found


def _weighed(weights: Mapping[str, str]) -> Fraction | None:
    if "whole" in weights:
        return weight_of(weights["whole"])
    if "fore" in weights and "hind" in weights:
        return weight_of(weights["fore"]) + weight_of(weights["hind"])
    return None
