"""A species file as its TOML says it, read without the program.

Nothing of `shared.cutting` or `shared.carcass` is imported: only `shared.units` reads texts such
as "13 1/2 in" and "98.5 lb". Lengths are whole 1/203,200 in, weights fractions of nanograms.
"""

import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any

from shared.units import Weight, read_length, read_weight

LEVELS = ("sure", "expected", "most")
SIXTY_FOURTH = 3175
Json = dict[str, Any]

_COUNTED = ("pieces", "pounds", "fraction", "all", "rest", "up_to", "at_least")
AMOUNTS = {
    "steaks": ("slices", *_COUNTED),
    "whole": ("pieces", "fraction", "all", "rest", "up_to", "at_least"),
    "to_trim": ("rest", "all", "fraction"),
    "pool": ("rest", "pounds"),
}
"""What a kind of cut understands where its table doesn't say; other kinds as roasts: counted."""


@cache
def share_of(text: str | int) -> Fraction:
    """A fraction of the files: "1/2", "0.0473", "19.6/210.9", "4.73 %"."""
    words = str(text).strip()
    if words.endswith("%"):
        return share_of(words[:-1]) / 100
    above, _, below = words.partition("/")
    return Fraction(above) / Fraction(below or 1)


@cache
def length_of(text: str) -> int:
    found = read_length(text)
    assert isinstance(found, int), text
    return found


@cache
def weight_of(text: str) -> Fraction:
    found = read_weight(text)
    assert isinstance(found, Weight), text
    return found.exact_nanograms


def cube_root_length(length: int, weight: Fraction, reference: Fraction) -> int:
    """The greatest number of 64ths n with (n/64 in)³ × reference ≤ length³ × weight, in units."""
    want = length**3 * weight / reference
    n = int(float(want) ** (1 / 3) / SIXTY_FOURTH) + 2
    while (n * SIXTY_FOURTH) ** 3 > want:
        n -= 1
    return n * SIXTY_FOURTH


def down_to_64ths(length: Fraction) -> int:
    return int(length / SIXTY_FOURTH) * SIXTY_FOURTH


def load_species(path: Path) -> Json:
    return tomllib.loads(path.read_text(encoding="utf-8"))


@dataclass(frozen=True)
class Stretch:
    code: str
    length: int
    ribs: int
    quarter: str
    band: Fraction


class Species:
    """A species file by code."""

    def __init__(self, toml: Json) -> None:
        self.toml = toml
        self.parts: dict[str, Json] = {one["code"]: one for one in toml["part"]}
        self.cuts: dict[str, Json] = {one["code"]: one for one in toml["cut"]}
        self.runs: dict[str, tuple[Stretch, ...]] = {
            run["code"]: tuple(_stretch(one, run) for one in run["stretch"])
            for run in toml.get("run", [])
        }
        self.part_at: dict[tuple[str, str, str], str] = {
            (one["run"], one["stretch"], one["lane"]): code
            for code, one in self.parts.items()
            if one.get("run")
        }
        self.finishes: dict[str, Json] = {one["code"]: one for one in toml.get("finish", [])}
        self.reference = weight_of(toml["reference_side"])
        self.kerf = {tool: length_of(text) for tool, text in toml["kerf"].items()}

    @classmethod
    def read(cls, path: Path) -> "Species":
        return cls(load_species(path))

    def place(self, run: str, stretch: str) -> int:
        return [one.code for one in self.runs[run]].index(stretch)

    def ways(self, choice: Json) -> list[Json]:
        """The ways of a choice's cut, or the one it names."""
        ways: list[Json] = self.cuts[choice["cut"]].get("way", [])
        named = choice.get("way")
        return [way for way in ways if not named or way["code"] == named]

    def parts_of(self, way: Json) -> Iterator[str]:
        """Every part a way may take."""
        take = way.get("run")
        if take:
            first, last = self.ends(take)
            for stretch in self.runs[take["run"]][first : last + 1]:
                for lane in take["lanes"]:
                    if (take["run"], stretch.code, lane) in self.part_at:
                        yield self.part_at[take["run"], stretch.code, lane]
        for one in way.get("parts", []):
            yield one["part"]

    def amounts(self, cut: Json) -> set[str]:
        """The kinds of amount a cut understands; what is counted also by up to and at least."""
        amounts = set(cut.get("amounts", AMOUNTS.get(cut["kind"], _COUNTED)))
        return amounts | ({"up_to", "at_least"} if amounts & {"pieces", "slices"} else set())

    def thickness(self, choice: Json) -> int:
        """What a slice takes of the meat: its thickness, twice that where it is opened."""
        text = choice.get("thickness") or self.cuts[choice["cut"]].get("thickness") or "0 in"
        opened = [self.finishes[one].get("opened", 1) for one in choice.get("finishes", [])]
        return length_of(text) * max([1, *opened])

    def least_thickness(self, choice: Json) -> int:
        """The least thickness asked that the cut's tool and the choice's finishes allow."""
        texts = [self.cuts[choice["cut"]].get("least_thickness", "0 in")]
        texts += [
            self.finishes[one].get("least_thickness", "0 in") for one in choice.get("finishes", [])
        ]
        return max(1, *(length_of(text) for text in texts))

    def ends(self, take: Json) -> tuple[int, int]:
        first = self.place(take["run"], take["first"])
        return first, self.place(take["run"], take.get("last", take["first"]))


def _stretch(one: Json, run: Json) -> Stretch:
    band = share_of(one.get("band", run.get("band", "0")))
    return Stretch(
        one["code"], length_of(one["length"]), one.get("ribs", 0), one.get("quarter", ""), band
    )
