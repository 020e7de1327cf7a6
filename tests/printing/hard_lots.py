"""Five hard lots for the block sheet: each is what a cutter has cursed over, invented here."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Age, Carcass, Gone, Holding, Share, SideWeights
from shared.cutting.forecast import forecast
from shared.cutting.order import Amount, Choice, Package, Question
from shared.cutting.plan import plan
from shared.units import LENGTH_UNITS_PER_INCH, Weight
from tests.printing.sheet_lot import Planned

INCH = LENGTH_UNITS_PER_INCH
POUND = Package(weight=Weight(1, "lb"))
LONG_NOTE = (
    "Keep everything of this beef apart from the other family's. My father wants the shanks cut "
    "2 inches thick with the marrow in, the brisket left in one piece with all of its fat, and no "
    "string on the roasts. Cousin Bettina is allergic to mustard and celery: nothing seasoned may "
    "touch our grind. Ring me on the second number before you cut the ribs, the first is dead."
)


@dataclass(frozen=True, slots=True)
class Hard:
    """A planned lot and the notes of its orders by share."""

    planned: Planned
    notes: Mapping[int, str]


def _plan(
    species: str,
    shares: Sequence[Share],
    choices: Sequence[Choice],
    *,
    age: Age = "under_30",
    gone: tuple[Gone, ...] = (),
    pounds: tuple[int, int] = (350, 352),
) -> Planned:
    sides = (SideWeights(Weight(pounds[0], "lb")), SideWeights(Weight(pounds[1], "lb")))
    beast = Carcass(species, "2481", age=age, skin="skinned", hot=sides, gone=gone)
    question = Question((beast,), tuple(shares), tuple(choices))
    known = catalogue(species)
    answer = plan(question, known)
    return Planned(question, answer, known, forecast(question, answer, known))


def _all(share: int, first: int, cuts: Sequence[tuple[str, str, int | None]]) -> list[Choice]:
    """Lines of a share: cut, kind of amount, thickness in sixteenths of an inch."""
    return [
        Choice(
            first + at,
            share,
            cut,
            Amount("all" if kind == "all" else "rest"),
            thickness=None if sixteenths is None else INCH * sixteenths // 16,
            package=POUND if cut.startswith("ground") else Package(),
        )
        for at, (cut, kind, sixteenths) in enumerate(cuts)
    ]


BEEF = (
    ("arm_roast", "all", None),
    ("cross_rib_roast", "all", None),
    ("grind_chuck", "rest", None),
    ("shank_slices", "all", 32),
    ("brisket_half", "all", None),
    ("grind_brisket", "rest", None),
    ("short_ribs", "rest", None),
    ("grind_plate", "rest", None),
    ("flank_steak", "all", None),
    ("t_bone_steak", "all", 20),
    ("sirloin_steak", "all", 16),
    ("top_round_steak", "all", 12),
    ("bottom_round_roast", "all", None),
    ("eye_of_round_roast", "all", None),
    ("sirloin_tip_roast", "all", None),
    ("grind_round", "rest", None),
    ("grind_open", "rest", None),
    ("ground_beef", "rest", None),
)


def four_owners() -> Hard:
    """A beef of four: each side split in halves, one loin in T-bones of two thicknesses."""
    half = Fraction(1, 2)
    names = (
        "Wilhelmina Featherstonehaugh-Oyelaran",
        "Bo Lund",
        "María del Socorro Etxeberria",
        "Dag & Åse",
    )
    shares = [
        Share(at, name, (Holding(0, 1 + (at > 2), fraction=half),))
        for at, name in enumerate(names, start=1)
    ]
    choices: list[Choice] = []
    for share in (1, 2, 3, 4):
        choices += _all(share, 100 * share, BEEF)
        choices.append(Choice(100 * share + 50, share, "rib_steak", Amount("all")))
    return Hard(_plan("beef", shares, choices), {3: "Ring before the grind."})


def over_thirty_months() -> Hard:
    """Over 30 months, a shoulder trimmed, seven ribs as one roast, liver condemned."""
    shares = [Share(1, "Odell Prewitt", (Holding(0, 1),)), Share(2, "Kitty Ó Sé", (Holding(0, 2),))]
    mine = [
        ("arm_roast", "all", None),
        ("grind_chuck", "rest", None),
        ("strip_steak", "all", 18),
        ("whole_tenderloin", "all", None),
        ("grind_open", "rest", None),
        ("ground_beef", "rest", None),
    ]
    choices = _all(1, 100, mine) + _all(2, 200, mine)
    choices.append(Choice(150, 1, "rib_roast_chine_off", Amount("pieces", 1), ribs=7))
    choices.append(Choice(250, 2, "rib_steak_chine_off", Amount("all"), thickness=INCH * 11 // 8))
    choices.append(Choice(151, 1, "grind_rib", Amount("rest")))
    gone = (
        Gone("arm_clod", 1, Weight(9, "lb"), "abscess at the point of the shoulder"),
        Gone("liver", 0, None, "flukes"),
    )
    return Hard(_plan("beef", shares, choices, age="30_and_over", gone=gone), {})


def everything_ground() -> Hard:
    """A beef all in the grinder: two leans, patties and a seasoned sausage."""
    shares = [Share(1, "Hank O'Dowd", (Holding(0, 1), Holding(0, 2)))]
    choices = [
        Choice(1, 1, "grind_open", Amount("rest")),
        Choice(
            2,
            1,
            "beef_patties",
            Amount("pounds", weight=Weight(80, "lb")),
            lean=Fraction(17, 20),
            package=Package(weight=Weight(2, "lb")),
        ),
        Choice(
            3,
            1,
            "summer_sausage",
            Amount("pounds", weight=Weight(25, "lb")),
            finishes=("seasoned",),
            seasoning="old_mill_mustard",
        ),
        Choice(4, 1, "ground_beef", Amount("rest"), lean=Fraction(4, 5), package=POUND),
    ]
    return Hard(_plan("beef", shares, choices), {})


def long_note() -> Hard:
    """Half a beef whose owner writes letters, and a note on a line."""
    shares = [Share(1, "Augusta Lindqvist", (Holding(0, 1),)), Share(2, "Bo", (Holding(0, 2),))]
    choices = _all(1, 100, BEEF) + _all(2, 200, BEEF)
    choices[9] = Choice(
        109, 1, "t_bone_steak", Amount("all"), thickness=INCH, note="leave the tail on, all of it"
    )
    return Hard(_plan("beef", shares, choices), {1: LONG_NOTE})


HOG: Sequence[tuple[str, Amount, int | None, tuple[str, ...]]] = (
    ("jowl_bacon", Amount("all"), None, ("cured_smoked",)),
    ("boneless_butt_roast", Amount("pieces", 2), None, ()),
    ("blade_steak", Amount("slices", 8), 12, ()),
    ("grind_butt", Amount("rest"), None, ()),
    ("arm_steak", Amount("slices", 4), 12, ()),
    ("picnic_roast", Amount("rest"), None, ("cured_smoked",)),
    ("whole_ham", Amount("pieces", 1), None, ("cured_smoked",)),
    ("ham_steak", Amount("slices", 8), 8, ("cured_smoked",)),
    ("ham_end_roast", Amount("rest"), None, ()),
    ("country_ribs", Amount("slices", 6), 20, ()),
    ("rib_chop", Amount("slices", 10), 20, ()),
    ("centre_chop", Amount("slices", 12), 12, ()),
    ("sirloin_chop", Amount("slices", 6), 12, ()),
    ("grind_loin", Amount("rest"), None, ()),
    ("bacon", Amount("all"), None, ("cured_smoked", "sliced")),
    ("spareribs", Amount("all"), None, ()),
    ("foot", Amount("all"), None, ()),
    ("grind_hocks", Amount("rest"), None, ()),
    ("leaf_fat", Amount("all"), None, ()),
    ("fatback", Amount("all"), None, ()),
    ("heart", Amount("all"), None, ()),
    ("liver", Amount("all"), None, ()),
    ("grind_open", Amount("rest"), None, ()),
)


def two_page_hog() -> Hard:
    """A hog of which nearly every cut is wanted, a side of it on two pages."""
    shares = [Share(1, "Theodora Quist", (Holding(0, 1), Holding(0, 2)))]
    choices = [
        Choice(
            at,
            1,
            cut,
            amount,
            thickness=None if sixteenths is None else INCH * sixteenths // 16,
            finishes=finishes,
        )
        for at, (cut, amount, sixteenths, finishes) in enumerate(HOG, start=1)
    ]
    sausage = Amount("pounds", weight=Weight(25, "lb"))
    choices += [
        Choice(90, 1, "link_sausage", sausage, finishes=("seasoned", "links"), seasoning="fennel"),
        Choice(91, 1, "ground_pork", Amount("rest"), lean=Fraction(4, 5), package=POUND),
        Choice(92, 1, "lard", Amount("rest")),
    ]
    return Hard(_plan("pork", shares, choices, pounds=(118, 117)), {})


HARD: Mapping[str, Callable[[], Hard]] = {
    "four_owners": four_owners,
    "over_thirty_months": over_thirty_months,
    "everything_ground": everything_ground,
    "long_note": long_note,
    "two_page_hog": two_page_hog,
}
