"""How a carcass was dressed when the scale weighed it, and what that makes of its parts' shares.

A species' shares are stated for its reference dressing. A carcass that hangs otherwise (skinned,
head on, kidneys out) is rebased: its weight over the part of a reference carcass that was on the
hook is what it would weigh in the reference dressing, and the shares are shares of that.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.carcass.catalogue import Catalogue, Part

OnOff = Literal["", "on", "off"]
InOut = Literal["", "in", "out"]


@dataclass(frozen=True, slots=True)
class Dressing:
    """What was on the carcass on the scale; "" is the usual way for its species and skin.

    `leaf` is the leaf or kidney fat. The head goes with its tongue and cheeks.
    """

    head: OnOff = ""
    feet: OnOff = ""
    leaf: InOut = ""
    kidneys: InOut = ""

    def said(self) -> Mapping[str, str]:
        """What is said, by field; nothing of what is left to the usual way."""
        told = {"head": self.head, "feet": self.feet, "leaf": self.leaf, "kidneys": self.kidneys}
        return {field: word for field, word in told.items() if word}


USUAL = Dressing()
FIELDS: Mapping[str, tuple[str, str]] = {
    "head": ("on", "off"),
    "feet": ("on", "off"),
    "leaf": ("in", "out"),
    "kidneys": ("in", "out"),
}
PARTS: Mapping[str, frozenset[str]] = {
    "head": frozenset({"head", "tongue", "cheeks"}),
    "feet": frozenset({"fore_foot", "hind_foot", "feet"}),
    "leaf": frozenset({"leaf_fat", "kidney_fat"}),
    "kidneys": frozenset({"kidney", "kidneys"}),
}


def on_the_scale(part: Part, skin: str, dressing: Dressing) -> bool:
    """Whether a part is in the hanging weight of a carcass so dressed.

    A part that needs the skin isn't where the skin was pulled; the rest is as the carcass says,
    else as the species' reference dressing has it.
    """
    if part.needs_skin and skin == "skinned":
        return False
    for field, codes in PARTS.items():
        if part.code in codes:
            word = dressing.said().get(field, "")
            return part.counted if not word else word == FIELDS[field][0]
    return part.counted


def hung_fraction(catalogue: Catalogue, skin: str, dressing: Dressing) -> Fraction:
    """The carcass so dressed over the same carcass in the reference dressing.

    Worked number: of a scalded hog's 210.9 lb the skin is 10.2 lb and the feet 4.4 lb; skinned
    it is 196.3/210.9 (93.1 %), so a side that weighs 93.1 lb skinned is cut as one of 100 lb.
    """
    if dressing is USUAL and skin != "skinned":
        return Fraction(1)
    change = Fraction(0)
    for part in _in_question(catalogue, skin, dressing):
        hung = on_the_scale(part, skin, dressing)
        if hung != part.counted:
            change += part.share if hung else -part.share
    return 1 + change


def _in_question(catalogue: Catalogue, skin: str, dressing: Dressing) -> Iterator[Part]:
    """Parts that may hang otherwise than in the reference dressing, each once."""
    said: set[str] = set()
    for field in dressing.said():
        said |= PARTS[field]
    for part in catalogue.parts.values():
        if (skin == "skinned" and part.needs_skin) or part.code in said:
            yield part
