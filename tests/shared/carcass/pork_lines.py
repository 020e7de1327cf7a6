"""Pork cut on paper in the style of table P-B: pounds of each of its lines, from the parts.

It knows nothing of the planner. Pounds are of both sides of the 213-lb carcass.
"""

import sys
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.checking import parts_of_way

PORK = catalogue("pork")
CHILLED = Fraction("210.9")  # P-B: 213.0 lb less 2.1 lb shrink; the parts are shares of this
HOT_B, HOT_A = Fraction("213.0"), Fraction("184.2")
TRIM_LEAN = Fraction(4, 5)  # from memory: the trim of ham, loin and butt is about 80 % lean


def say(text: str) -> None:
    """A line for the reader of the test's output."""
    sys.stdout.write(text + "\n")


@dataclass(frozen=True)
class Line:
    """One line of a table: what is printed and what the species file gives, in the same unit."""

    name: str
    printed: Fraction
    ours: Fraction

    def error(self) -> float:
        return float((self.ours - self.printed) / self.printed)

    def show(self) -> None:
        figures = f"{float(self.printed):7.2f} {float(self.ours):7.2f} {self.error():+7.1%}"
        say(f"{self.name:38} {figures}")


def line(name: str, printed: str, ours: Fraction) -> Line:
    return Line(name, Fraction(printed), ours)


def pounds(*codes: str) -> Fraction:
    """Pounds of parts on both sides of P-B's carcass."""
    return sum((PORK.parts[code].share for code in codes), Fraction(0)) * CHILLED


def primal(*names: str) -> Fraction:
    parts = [one for one in PORK.parts.values() if one.primal in names and one.counted]
    return sum((one.share for one in parts), Fraction(0)) * CHILLED


def taken(code: str, way: str = "plain") -> Fraction:
    """Pounds the cut takes of both sides, all of it."""
    parts = parts_of_way(PORK, PORK.cuts[code].way(way))
    return sum((part.share * share for part, share in parts), Fraction(0)) * CHILLED


def kept(code: str, way: str = "plain") -> Fraction:
    trim = PORK.cuts[code].trimming
    return taken(code, way) * (1 - trim.lean - trim.fat - trim.bone - trim.skin - trim.loss)


def lean_of(code: str, way: str = "plain") -> Fraction:
    """Lean a cut gives back; of one that goes to the grind all the lean there is."""
    cut = PORK.cuts[code]
    if cut.kind != "to_trim":
        return taken(code, way) * cut.trimming.lean
    parts = parts_of_way(PORK, cut.way(way))
    return sum((part.lean * part.share * share for part, share in parts), Fraction(0)) * CHILLED


def hams() -> dict[str, Fraction]:
    """Semi-boneless: the ham boned and cured, the hock sold fresh with skin and bone."""
    whole = primal("ham") + pounds(
        "hind_hock", "ham_butt_skin", "ham_centre_skin", "ham_shank_skin"
    )
    cured, fresh, trim = (
        kept("boneless_ham"),
        pounds("hind_hock"),
        lean_of("boneless_ham") / TRIM_LEAN,
    )
    return {"cured": cured, "fresh": fresh, "trim": trim, "other": whole - cured - fresh - trim}


def loins() -> dict[str, Fraction]:
    """The blade end goes to the grind, rib and center boned, back ribs of rib and blade end."""
    ribs, eye = taken("back_ribs"), kept("boneless_loin_roast")
    sirloin, tender = kept("boneless_sirloin_roast"), kept("tenderloin")
    lean = lean_of("grind_blade_end") - pounds("back_ribs_blade_end") * Fraction("0.40")
    lean += lean_of("boneless_loin_roast") + lean_of("boneless_sirloin_roast")
    trim = lean / TRIM_LEAN
    other = primal("loin") - ribs - eye - sirloin - tender - trim
    return {
        "back ribs": ribs, "boneless": eye, "sirloin roast": sirloin,
        "tenderloin": tender, "trim": trim, "other": other,
    }  # fmt: skip


def sides() -> dict[str, Fraction]:
    """Belly trim is fat, so all that squaring takes off counts as trim; the skin is the other."""
    belly = PORK.cuts["bacon"].trimming
    trim = taken("bacon") * (belly.lean + belly.fat)
    skin = pounds("belly_rib_end_skin", "belly_flank_end_skin")
    return {"bacon": kept("bacon"), "spareribs": kept("spareribs"), "trim": trim, "other": skin}


def butts() -> dict[str, Fraction]:
    """The table's own mix: 6.3 lb of its 17.5 lb went into steaks."""
    steaks = Fraction("6.3") / Fraction("17.5")
    both = kept("butt_roast")
    trim = lean_of("butt_roast") / TRIM_LEAN
    other = taken("butt_roast") - both - trim
    return {
        "blade steaks": both * steaks, "blade roast": both * (1 - steaks),
        "trim": trim, "other": other,
    }  # fmt: skip


def picnics() -> dict[str, Fraction]:
    """Boneless picnic with the meat of the fore hock."""
    hock = PORK.parts["fore_hock"]
    boneless = kept("boneless_picnic") + pounds("fore_hock") * (hock.lean + hock.fat)
    whole = pounds("picnic", "picnic_skin", "fore_hock")
    return {"boneless": boneless, "other": whole - boneless}


FEET = ("jowl", "fore_foot", "hind_foot", "tail", "neck_bones", "neck_bones_rib_2")
BACK_SKIN = tuple(
    f"{name}_skin"
    for name in (
        "butt", "butt_rib_2", "loin_ribs_3_4", "loin_blade_end", "loin_rib", "loin_centre",
        "loin_sirloin",
    )
)  # fmt: skip


def fat_and_skin() -> Fraction:
    fats = [one.code for one in PORK.parts.values() if one.primal == "fat" and one.counted]
    return pounds(*fats, *BACK_SKIN)


@dataclass(frozen=True)
class Setting:
    """How a table's carcass differs from P-B's, fixed by lines of the table itself.

    `lean_scale` makes room for its loose fat; jowls, feet, tail and neck bones stay as they are,
    since a fatter hog walks on the same feet. `moved` is what its loin break leaves on the belly,
    as a fraction of the carcass.
    """

    lean_scale: Fraction
    moved: Fraction

    @classmethod
    def fixed_by(cls, fat: Fraction, loin: Fraction) -> "Setting":
        ours_fat, small = fat_and_skin() / HOT_B, pounds(*FEET) / HOT_B
        scale = (1 - fat - small) / (1 - ours_fat - small)
        return cls(scale, primal("loin") / HOT_B * scale - loin)


def primal_shares() -> dict[str, Fraction]:
    parts = {
        "ham": hams(), "loin": loins(), "side": sides(), "butt": butts(), "picnic": picnics(),
    }  # fmt: skip
    return {name: sum(lines.values(), Fraction(0)) / HOT_B for name, lines in parts.items()}


def moved_shares(setting: Setting) -> dict[str, Fraction]:
    shares = {name: share * setting.lean_scale for name, share in primal_shares().items()}
    shares["loin"] -= setting.moved
    shares["side"] += setting.moved
    return shares
