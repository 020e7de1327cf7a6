"""In-going nitrite against the worked figures of the inspectors' handbook.

FSIS Processing Inspectors' Calculations Handbook, Directive 7620.3 (1995); 9 CFR 424.21, 424.22.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.curing.bacon import is_belly
from shared.curing.nitrite import LIMITS, CureUse, Limit, Product, nitrite, whole_ppm
from shared.units import Weight

MIX = Fraction(1, 16)  # 6.25 % sodium nitrite


def pounds(text: str) -> Weight:
    return Weight.from_pounds(text)


# 0.06 lb of nitrite in 100 lb of brine, pumped 20 %: 0.06 × 0.20 × 10^6 / 100 = 120 ppm.
def test_a_pumped_bacon_on_its_target() -> None:
    use = CureUse("bacon_pumped", None, pounds("0.96"), MIX, pounds("100"), Fraction(1, 5))
    check = nitrite(use)
    assert check.ppm == 120
    assert check.verdict == "on_target"


# ppm = lb nitrite × 1,000,000 ÷ lb green weight; lb nitrite = lb mix × 0.0625.
@pytest.mark.parametrize(
    ("product", "green", "cure", "ppm", "verdict"),
    [
        ("comminuted", "100", "0.25", Fraction(625, 4), "within"),  # 156.25, told 156
        ("comminuted", "100", "0.2508", Fraction(627, 4), "above_ceiling"),  # told 157
        ("comminuted", "100", "0.2496", 156, "within"),
        ("comminuted", "100", "0.192", 120, "within"),
        ("comminuted", "100", "0.19", Fraction(475, 4), "below_floor"),
        ("dry_cured", "100", "1", 625, "within"),
        ("dry_cured", "100", "1.01", Fraction(2525, 4), "above_ceiling"),
        ("bacon_dry", "100", "0.32", 200, "within"),
        ("bacon_dry", "100", "0.33", Fraction(825, 4), "above_ceiling"),
    ],
)
def test_mixed_or_rubbed_in(
    product: Product, green: str, cure: str, ppm: Fraction, verdict: str
) -> None:
    check = nitrite(CureUse(product, pounds(green), pounds(cure), MIX))
    assert check.ppm == ppm
    assert check.verdict == verdict


@pytest.mark.parametrize(
    ("cure", "pickup", "verdict"),
    [
        ("0.96", "0.20", "within"),
        ("1.61", "0.20", "above_ceiling"),
        ("0.96", "0.19", "below_floor"),
    ],
)
def test_pumped(cure: str, pickup: str, verdict: str) -> None:
    use = CureUse("pumped", None, pounds(cure), MIX, pounds("100"), Fraction(pickup))
    assert nitrite(use).verdict == verdict


@pytest.mark.parametrize(("cure", "told"), [("0.95", "below_target"), ("0.97", "above_target")])
def test_pumped_bacon_has_a_target_not_a_ceiling(cure: str, told: str) -> None:
    use = CureUse("bacon_pumped", None, pounds(cure), MIX, pounds("100"), Fraction(1, 5))
    assert nitrite(use).verdict == told
    assert LIMITS["bacon_pumped"] == Limit(target=120)


@pytest.mark.parametrize(
    ("use", "missing"),
    [
        (CureUse("comminuted", pounds("100"), pounds("0.25")), ("strength",)),
        (CureUse("comminuted", None, pounds("0.25"), MIX), ("green",)),
        (CureUse("pumped", pounds("100"), pounds("0.25"), MIX), ("brine", "pickup")),
        (CureUse("dry_cured"), ("cure", "strength", "green")),
    ],
)
def test_what_is_not_known_is_never_ticked(use: CureUse, missing: tuple[str, ...]) -> None:
    check = nitrite(use)
    assert check.verdict == "cant_be_checked"
    assert check.missing == missing
    assert check.ppm is None


def test_ppm_are_told_whole() -> None:
    assert [whole_ppm(Fraction(n, 2)) for n in (239, 240, 241)] == [120, 120, 121]


# Bellies under a recipe of another class are held to bacon's figures: dry-cured bacon 200 ppm,
# pumped or immersed bacon 120 (9 CFR 424.22(b), Directive 7620.3), and are never ticked.
@pytest.mark.parametrize(
    ("use", "bacon_as", "ppm", "verdict"),
    [
        (CureUse("dry_cured", pounds("100"), pounds("0.4"), MIX), "bacon_dry", 250, "above"),
        (CureUse("dry_cured", pounds("100"), pounds("0.24"), MIX), "bacon_dry", 150, "unchecked"),
        (CureUse("dry_cured", pounds("100"), pounds("0.16"), MIX), "bacon_dry", 100, "below"),
        (
            CureUse("pumped", None, pounds("1.6"), MIX, pounds("100"), Fraction(1, 5)),
            "bacon_pumped",
            200,
            "above",
        ),
        (
            CureUse("immersed", None, pounds("0.96"), MIX, pounds("100"), Fraction(1, 5)),
            "bacon_pumped",
            120,
            "unchecked",
        ),
        (CureUse("dry_cured", pounds("100"), None, MIX), "bacon_dry", None, "unchecked"),
    ],
)
def test_bacon_in_a_recipe_of_another_class(
    use: CureUse, bacon_as: Product, ppm: int | None, verdict: str
) -> None:
    check = nitrite(replace(use, bacon=True))
    assert check.bacon_as == bacon_as
    assert check.limit == LIMITS[bacon_as]
    assert check.ppm == ppm
    told = {
        "above": ("above_ceiling", "above_target"),
        "below": ("below_floor", "below_target"),
        "unchecked": ("cant_be_checked",),
    }
    assert check.verdict in told[verdict]
    assert nitrite(use).bacon_as is None


def test_bacon_under_its_own_recipe_is_ticked() -> None:
    check = nitrite(CureUse("bacon_dry", pounds("100"), pounds("0.32"), MIX, bacon=True))
    assert (check.verdict, check.bacon_as, check.ppm) == ("within", None, 200)


# Bacon is the cured belly of swine (9 CFR 319.107).
@pytest.mark.parametrize(
    ("species", "cut", "belly"),
    [
        ("pork", "bacon", True),
        ("pork", "belly_slab", True),
        ("pork", "skin_on_belly", True),
        ("pork", "half_belly", True),
        ("pork", "spareribs", False),
        ("pork", "grind_belly", False),
        ("pork", "jowl_bacon", False),
        ("pork", "canadian_bacon", False),
        ("pork", "no such cut", False),
        ("beef", "bacon", False),
    ],
)
def test_which_cuts_are_bellies(species: str, cut: str, belly: bool) -> None:
    assert is_belly(species, cut) is belly
