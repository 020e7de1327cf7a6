"""A lot as the order file's JSON and the species file say it, worked out without the program.

Nothing of `shared.cutting` or `shared.carcass` is imported. Lengths are whole 1/203,200 in,
weights fractions of nanograms.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Any

from tests.oracle.hung import side_weight
from tests.oracle.species_file import (
    LEVELS,
    Json,
    Species,
    cube_root_length,
    down_to_64ths,
    length_of,
    share_of,
    weight_of,
)


@dataclass(frozen=True)
class Window:
    """Where a run take may lie on one side: whole window, and the parts of it that are open.

    `stretches` are the places of the stretches held; `lost` the reason why one of the parts in
    it is missing.
    """

    lo: int
    hi: int
    stretches: tuple[int, ...]
    open: tuple[tuple[int, int], ...]
    lost: str


@dataclass
class Side:
    """One side: its weight, lengths of stretches by level, and parts lost with the reason."""

    carcass: int
    number: int
    weight: Fraction
    lengths: dict[str, dict[str, int]]
    lost: dict[str, str]
    trimmed: dict[str, Fraction]


class Lot:
    """An order file against its species."""

    def __init__(self, order: Json, species: Species) -> None:
        self.order = order
        self.species = species
        self.settings: Json = order.get("settings", {})
        self.choices: list[Json] = sorted(order["choices"], key=lambda one: one["line"])
        self.shares: dict[int, Json] = {one["number"]: one for one in order["shares"]}
        self.sides: dict[tuple[int, int], Side] = {
            (number, side): self._side(carcass, number, side)
            for number, carcass in enumerate(order["carcasses"], start=1)
            for side in (1, 2)
        }
        self._known: dict[tuple[object, ...], Any] = {}
        self._animal_trimmed: list[dict[str, Fraction]] = []
        self.animal_lost = [self._animal_lost(one) for one in order["carcasses"]]
        self._sharing = self._shared_singles()

    def refresh(self) -> "Lot":
        """Look at the order's choices again after they were changed."""
        self.choices = sorted(self.order["choices"], key=lambda one: one["line"])
        self._sharing = self._shared_singles()
        return self

    # -- the carcass -------------------------------------------------------------------------

    def _side(self, carcass: Json, number: int, side: int) -> Side:
        weight = side_weight(carcass, side, self.species)
        own = self.settings.get("own_lengths", {})
        measured = {
            one["stretch"]: length_of(one["length"])
            for one in carcass.get("measured", [])
            if one["side"] == side
        }
        lengths: dict[str, dict[str, int]] = {level: {} for level in LEVELS}
        for stretches in self.species.runs.values():
            for stretch in stretches:
                code = stretch.code
                base = length_of(own[code]) if code in own else stretch.length
                length = cube_root_length(base, weight, self.species.reference)
                lengths["expected"][code] = length
                lengths["sure"][code] = down_to_64ths(length * (1 - stretch.band))
                lengths["most"][code] = down_to_64ths(length * (1 + stretch.band))
                if code in measured:
                    for level in LEVELS:
                        lengths[level][code] = measured[code]
        found = Side(number, side, weight, lengths, self._bound(carcass, "side"), {})
        if carcass.get("condemned"):
            found.lost = self._all_parts("side")
            return found
        for gone in carcass.get("gone", []):
            part = self.species.parts[gone["part"]]
            if part.get("per", "side") == "side" and gone["side"] == side:
                _take_away(found.lost, found.trimmed, gone, part, weight)
        return found

    def _all_parts(self, per: str) -> dict[str, str]:
        """Everything of a condemned animal is gone."""
        return {
            code: "gone"
            for code, part in self.species.parts.items()
            if part.get("per", "side") == per
        }

    def _bound(self, carcass: Json, per: str) -> dict[str, str]:
        """Parts that nobody may have: spinal column of old cattle, skin of a skinned hog."""
        age = carcass.get("age", "unknown")
        old = age == "30_and_over" or (age == "unknown" and self.settings.get("at_block", False))
        bound: dict[str, str] = {}
        for code, part in self.species.parts.items():
            if part.get("per", "side") != per:
                continue
            if part.get("needs_skin") and carcass.get("skin") == "skinned":
                bound[code] = "skin"
            if part.get("srm_from_30_months") and old:
                bound[code] = "srm"
        return bound

    def _animal_lost(self, carcass: Json) -> dict[str, str]:
        number = self.order["carcasses"].index(carcass) + 1
        whole = self.sides[number, 1].weight + self.sides[number, 2].weight
        lost = self._bound(carcass, "animal")
        trimmed: dict[str, Fraction] = {}
        if carcass.get("condemned"):
            self._animal_trimmed.append(trimmed)
            return self._all_parts("animal")
        for gone in carcass.get("gone", []):
            part = self.species.parts[gone["part"]]
            if part.get("per", "side") == "animal":
                _take_away(lost, trimmed, gone, part, whole)
        self._animal_trimmed.append(trimmed)
        return lost

    # -- who holds what ----------------------------------------------------------------------

    @cached_property
    def _held(self) -> dict[tuple[int, int, int], dict[str, Fraction]]:
        """By share, carcass and side: the fraction held of "fore", "hind" and "" (the side)."""
        held: dict[tuple[int, int, int], dict[str, Fraction]] = {}
        for share in self.shares.values():
            for owner in {share["number"], share.get("leader") or share["number"]}:
                for one in share["holdings"]:
                    key = (owner, one["carcass"], one["side"])
                    mine = held.setdefault(key, {})
                    quarter = one.get("quarter", "")
                    part = share_of(one.get("fraction", "1"))
                    mine[quarter] = mine.get(quarter, Fraction(0)) + part
        return held

    def held(self, share: int, side: tuple[int, int]) -> dict[str, Fraction]:
        """The fractions a share holds of a side, by quarter."""
        return self._held.get((share, *side), {})

    def fraction(self, share: int, side: tuple[int, int], quarter: str) -> Fraction:
        """How much of a quarter of a side ("" is what lies in neither) a share holds."""
        key = ("fraction", share, side, quarter)
        if key not in self._known:
            mine = self.held(share, side)
            whole = mine.get("", Fraction(0)) + (mine.get(quarter, 0) if quarter else 0)
            self._known[key] = min(Fraction(1), whole)
        return self._known[key]

    def sides_of(self, share: int) -> list[tuple[int, int]]:
        return sorted((c, s) for owner, c, s in self._held if owner == share)

    def holds_part(self, share: int, side: tuple[int, int], code: str) -> Fraction:
        """The fraction of a part a share holds; of what comes one to an animal, all of it."""
        part = self.species.parts[code]
        if part.get("per", "side") == "animal":
            return Fraction(any(c == side[0] for c, _ in self.sides_of(share)))
        quarter = part.get("quarter", "")
        if part.get("run"):
            runs = self.species.runs[part["run"]]
            quarter = runs[self.species.place(part["run"], part["stretch"])].quarter
        return self.fraction(share, side, quarter)

    def _shared_singles(self) -> dict[tuple[int, str], dict[int, Fraction]]:
        """Who wants each part of an animal that is divided by the package, and his animal."""
        found: dict[tuple[int, str], dict[int, Fraction]] = {}
        for choice in self.choices:
            for code in {
                it for way in self.species.ways(choice) for it in self.species.parts_of(way)
            }:
                part = self.species.parts[code]
                if part.get("per", "side") == "side" or not part.get("divisible", True):
                    continue
                for carcass in {c for c, _ in self.sides_of(choice["share"])}:
                    owned = self.of_animal(choice["share"], carcass)
                    found.setdefault((carcass, code), {})[choice["share"]] = owned
        return found

    def of_animal(self, share: int, carcass: int) -> Fraction:
        """The fraction of a carcass a share holds: a side is a half, a quarter a fourth."""
        total = Fraction(0)
        for side in (1, 2):
            held = self.held(share, (carcass, side))
            quarters = sum((part for name, part in held.items() if name), Fraction(0))
            total += min(Fraction(1, 2), held.get("", Fraction(0)) / 2 + quarters / 4)
        return total

    def part_of_single(self, share: int, carcass: int, code: str) -> Fraction:
        """What a share may have of a part of the animal: its part among those who want it."""
        owners = self._sharing.get((carcass, code), {})
        if len(owners) < 2 or share not in owners:
            return Fraction(1)
        return owners[share] / sum(owners.values(), Fraction(0))

    def lost(self, side: tuple[int, int], code: str) -> str:
        """Why a part is not there, or ""."""
        if self.species.parts[code].get("per", "side") == "animal":
            return self.animal_lost[side[0] - 1].get(code, "")
        return self.sides[side].lost.get(code, "")

    def part_weight(self, side: tuple[int, int], code: str) -> Fraction:
        """Expected weight of a part on a side, or of the animal's one."""
        key = ("weight", side, code)
        if key not in self._known:
            self._known[key] = self._part_weight(side, code)
        return self._known[key]

    def _part_weight(self, side: tuple[int, int], code: str) -> Fraction:
        part = self.species.parts[code]
        if self.lost(side, code) == "gone":
            return Fraction(0)
        if part.get("per", "side") == "animal":
            whole = self.sides[side[0], 1].weight + self.sides[side[0], 2].weight
            gone = self._animal_trimmed[side[0] - 1].get(code, Fraction(0))
            return max(Fraction(0), whole * share_of(part["share"]) - gone)
        here = self.sides[side]
        whole = here.weight * share_of(part["share"])
        return max(Fraction(0), whole - here.trimmed.get(code, Fraction(0)))

    # -- places on a run ---------------------------------------------------------------------

    def bounds(self, side: tuple[int, int], run: str, level: str) -> list[int]:
        """Borders of the stretches of a run, from the head end."""
        key = ("bounds", side, run, level)
        if key not in self._known:
            borders = [0]
            for stretch in self.species.runs[run]:
                borders.append(borders[-1] + self.sides[side].lengths[level][stretch.code])
            self._known[key] = borders
        return self._known[key]

    def window(self, share: int, side: tuple[int, int], take: Json, level: str) -> Window | None:
        """Where the take may lie for that share on that side; None where it holds none of it."""
        key = ("window", share, side, id(take), level)
        if key not in self._known:
            self._known[key] = self._window(share, side, take, level)
        return self._known[key]

    def _window(self, share: int, side: tuple[int, int], take: Json, level: str) -> Window | None:
        first, last = self.species.ends(take)
        stretches = self.species.runs[take["run"]]
        mine = [
            place
            for place in range(first, last + 1)
            if self.fraction(share, side, stretches[place].quarter) > 0
        ]
        if not mine or (take["size"] == "whole" and len(mine) <= last - first):
            return None
        borders = self.bounds(side, take["run"], level)
        lo, hi = borders[mine[0]], borders[mine[-1] + 1]
        if mine[0] == first and "first_share" in take:
            length = borders[first + 1] - borders[first]
            lo = borders[first + 1] - int(length * share_of(take["first_share"]))
        if mine[-1] == last and "last_share" in take:
            length = borders[last + 1] - borders[last]
            hi = borders[last] + int(length * share_of(take["last_share"]))
        why = ""
        free: list[int] = []
        for place in mine:
            reasons = self._missing(side, take, stretches[place].code)
            why = why or next((reason for reason in reasons if reason != "empty"), "")
            if not reasons:
                free.append(place)
        opened = tuple((max(lo, borders[a]), min(hi, borders[b + 1])) for a, b in neighbours(free))
        return Window(lo, hi, tuple(mine), opened, why)

    def _missing(self, side: tuple[int, int], take: Json, stretch: str) -> list[str]:
        """Why a take can't lie on a stretch: "empty" lanes and lost parts."""
        reasons: list[str] = []
        for lane in take["lanes"]:
            code = self.species.part_at.get((take["run"], stretch, lane))
            if code is None:
                reasons.append("empty")
            elif self.lost(side, code):
                reasons.append(self.lost(side, code))
        return reasons

    def kerf_of(self, choice: Json) -> int:
        tool = self.species.cuts[choice["cut"]].get("tool", "saw")
        own = self.settings.get(f"kerf_{tool}")
        return length_of(own) if own else self.species.kerf[tool]


def neighbours(places: Sequence[int]) -> list[tuple[int, int]]:
    """Places that follow one another, joined: 0, 1, 3 are 0-1 and 3-3."""
    joined: list[tuple[int, int]] = []
    for place in places:
        if joined and joined[-1][1] + 1 == place:
            joined[-1] = (joined[-1][0], place)
        else:
            joined.append((place, place))
    return joined


def _take_away(
    lost: dict[str, str], trimmed: dict[str, Fraction], gone: Json, part: Json, whole: Fraction
) -> None:
    code = gone["part"]
    if "weight" not in gone:
        lost[code] = "gone"
        return
    trimmed[code] = trimmed.get(code, Fraction(0)) + weight_of(gone["weight"])
    if trimmed[code] >= whole * share_of(part["share"]):
        lost[code] = "gone"
