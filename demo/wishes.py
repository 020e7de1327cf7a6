"""What the invented owners ask for: the usual way of cutting, with changes to some primals."""

from collections.abc import Iterable
from dataclasses import replace

from shared.carcass.anatomy import catalogue
from shared.carcass.catalogue import UsualLine
from shared.cutting.order import Amount, Choice, Package
from shared.units import Weight

INCH = 203_200
TWO = Package(pieces=2)
FORE = ("chuck", "shank", "brisket", "plate", "rib", "trim")
HIND = ("flank", "short_loin", "sirloin", "round", "trim")


def choice(
    cut: str,
    amount: str = "rest",
    count: int = 0,
    *,
    inches: str = "",
    package: Package | None = None,
    finishes: tuple[str, ...] = (),
    note: str = "",
) -> Choice:
    """A line to be added; "8 slices" of so many quarter inches, pounds by `count`."""
    weight = Weight(count, "lb") if amount == "pounds" else None
    kinds = {"all": "all", "rest": "rest", "pieces": "pieces", "slices": "slices"}
    found = Amount("pounds", weight=weight) if amount == "pounds" else _amount(kinds[amount], count)
    thickness = int(inches) * INCH // 4 if inches else None
    return Choice(
        0, 0, cut, found, "", thickness, package=package or Package(), finishes=finishes, note=note
    )


def _amount(kind: str, count: int) -> Amount:
    if kind == "pieces":
        return Amount("pieces", count)
    if kind == "slices":
        return Amount("slices", count)
    return Amount("all") if kind == "all" else Amount("rest")


LOIN_BONELESS = (
    choice("country_ribs", package=Package(weight=Weight(2, "lb"))),
    choice("tenderloin", package=Package(pieces=1)),
    choice("back_ribs", package=Package(pieces=1)),
    choice("boneless_chop", inches="4", package=TWO),
    choice("boneless_sirloin_roast", package=Package(pieces=1)),
)
# By species and name: the primals that are cut another way (their usual lines go), and how.
CHANGES: dict[str, dict[str, tuple[tuple[str, ...], tuple[Choice, ...]]]] = {
    "pork": {
        "boneless": (("loin",), LOIN_BONELESS),
        "sausage": (
            ("picnic",),
            (
                choice("grind_picnic"),
                choice(
                    "bulk_sausage",
                    "pounds",
                    8,
                    package=Package(weight=Weight(1, "lb")),
                    finishes=("seasoned",),
                    note="mild, no sage",
                ),
            ),
        ),
        "ham steaks": (
            ("ham",),
            (
                choice("ham_steak", "slices", 4, inches="3", package=TWO),
                choice("ham_end_roast", package=Package(pieces=1)),
                choice("ham_centre_roast", package=Package(pieces=1)),
            ),
        ),
        "too much ham": (
            ("ham",),
            (
                choice("whole_ham", "pieces", 1, finishes=("cured_smoked",)),
                choice("ham_steak", "slices", 6, inches="3", package=TWO),
            ),
        ),
        "liver": ((), (choice("liver", "all"), choice("heart", "all"))),
    },
    "beef": {
        "strips": (
            ("short_loin",),
            (
                choice("strip_steak", "all", inches="4", package=TWO),
                choice("short_tenderloin", "all"),
                choice("loin_bones"),
            ),
        ),
        "ribeyes": (
            ("rib",),
            (
                choice("ribeye_steak", "all", inches="4", package=TWO),
                choice("back_ribs", "all"),
                choice("grind_rib"),
            ),
        ),
        "grind round": (("round",), (choice("grind_round"),)),
        "patties": (
            (),
            (choice("beef_patties", "pounds", 20, package=Package(weight=Weight(2, "lb"))),),
        ),
        "older": (
            ("chuck", "rib", "short_loin", "sirloin"),
            (
                choice("chuck_roll", "all"),
                choice("clod_roast", "all"),
                choice("grind_chuck"),
                choice("ribeye_steak", "all", inches="4", package=TWO),
                choice("back_ribs", "all"),
                choice("grind_rib"),
                choice("strip_steak", "all", inches="4", package=TWO),
                choice("filet", "all", inches="6", package=TWO),
                choice("top_sirloin_steak", "all", inches="4", package=Package(pieces=1)),
                choice("tri_tip", "all"),
                choice("grind_short_loin"),
                choice("grind_sirloin"),
            ),
        ),
        "fore": (HIND[:-1], ()),
        "hind": (FORE[:-1], ()),
        "no tender": (("variety",), ()),
    },
    "lamb": {
        "roasts": (
            ("shoulder",),
            (
                choice("shoulder_roast", "all"),
                choice("neck_slices", "all", inches="4"),
                choice("grind_shoulder"),
            ),
        ),
        "kabobs": ((), (choice("stew", "pounds", 2, package=Package(weight=Weight(1, "lb"))),)),
    },
    "goat": {"kabobs": ((), (choice("stew", "pounds", 2),))},
}
# Families' packages: fewer and bigger than the usual ones of the species file.
BIGGER = {
    ("pork", "ground_pork"): Package(weight=Weight(2, "lb")),
    ("pork", "bacon"): Package(weight=Weight(2, "lb")),
    ("pork", "centre_chop"): Package(pieces=4),
    ("beef", "ground_beef"): Package(weight=Weight(10, "lb")),
    ("beef", "top_round_steak"): Package(pieces=2),
    ("beef", "sirloin_steak"): Package(pieces=2),
    ("beef", "shank_slices"): Package(pieces=4),
    ("beef", "rib_steak"): Package(pieces=4),
    ("beef", "t_bone_steak"): Package(pieces=4),
    ("beef", "short_ribs"): Package(weight=Weight(3, "lb")),
}


def wanted(species: str, names: Iterable[str]) -> tuple[Choice, ...]:
    """The whole order: the usual lines of the primals left alone, then the changes.

    Pools come last, so that what is ground is what nothing else took.
    """
    changes = [CHANGES[species][name] for name in names]
    gone = {primal for primals, _ in changes for primal in primals}
    kept = [line for line in catalogue(species).usual if line.primal not in gone]
    cut = [_usual(species, line) for line in kept if line.primal != "trim"]
    pools = [_usual(species, line) for line in kept if line.primal == "trim"]
    added = [line for _, lines in changes for line in lines]
    taken_by_pounds = [line for line in added if line.amount.kind == "pounds"]
    others = [line for line in added if line.amount.kind != "pounds"]
    return (*cut, *others, *taken_by_pounds, *pools)


def _usual(species: str, line: UsualLine) -> Choice:
    amount = _amount(line.amount, line.count)
    package = Package(line.package_pieces, line.package_weight)
    found = Choice(
        0,
        0,
        line.cut,
        amount,
        thickness=line.thickness,
        piece_weight=line.piece_weight,
        package=package,
        finishes=line.finishes,
    )
    return replace(found, package=BIGGER.get((species, line.cut), found.package))
