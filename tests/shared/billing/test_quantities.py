"""Hanging weights of shares, and what was made of each line."""

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.problems import BillingProblem
from shared.billing.quantities import (
    HangingWeights,
    expected_sides,
    hanging_weights,
    head_fraction,
    made_lines,
)
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.cutting.order import Amount, Choice
from shared.shop.counted import CountedPackages
from shared.shop.packages import PackageMade
from shared.units import Weight
from tests.shared.billing.lots import FORE, HALVES, QUARTERS, SPLIT_QUARTERS, WHOLE, hung, pounds

SIDES = st.builds(Weight, st.integers(1, 900_000), st.just("lb"), st.sampled_from([0, -1, -2]))


def weights_of(carcass: Carcass, holdings: tuple[Holding, ...]) -> HangingWeights:
    found = hanging_weights((carcass,), holdings, "hot", FORE)
    assert isinstance(found, HangingWeights)
    return found


@given(SIDES, st.fractions(Fraction(1, 100), Fraction(99, 100), max_denominator=1_000))
def test_fore_and_hind_by_table_add_up_to_the_side(side: Weight, fore_share: Fraction) -> None:
    beef = Carcass("beef", hot=(SideWeights(side), SideWeights()))
    total = Fraction(0)
    for holdings in QUARTERS[:2]:
        found = hanging_weights((beef,), holdings, "hot", fore_share)
        assert isinstance(found, HangingWeights)
        assert found.by_table
        total += found.pounds or 0
    assert total == side.pounds


def test_a_weighed_quarter_is_its_own_weight_and_the_other_the_rest() -> None:
    sides = SideWeights(whole=pounds("300"), fore=pounds("171.5"))
    beef = Carcass("beef", hot=(sides, SideWeights()))
    fore, hind = (weights_of(beef, QUARTERS[place]) for place in (0, 1))
    assert [(one.pounds, one.held[0].source) for one in (fore, hind)] == [
        (Fraction("171.5"), "weighed"),
        (Fraction("128.5"), "by_difference"),
    ]


def test_a_side_weighed_in_quarters_is_their_sum() -> None:
    sides = SideWeights(fore=pounds("171.5"), hind=pounds("128"))
    beef = Carcass("beef", hot=(sides, sides))
    assert weights_of(beef, HALVES[0]).pounds == Fraction("299.5")
    assert weights_of(beef, QUARTERS[1]).pounds == 128
    assert weights_of(beef, SPLIT_QUARTERS[0]).pounds == Fraction("149.75")


def test_one_quarter_alone_says_nothing_of_the_side() -> None:
    beef = Carcass("beef", hot=(SideWeights(fore=pounds("171.5")), SideWeights()))
    assert weights_of(beef, QUARTERS[0]).pounds == Fraction("171.5")
    assert [weights_of(beef, one).pounds for one in (QUARTERS[1], HALVES[0])] == [None, None]


def test_quarters_that_dont_add_up_to_their_side_are_said() -> None:
    sides = SideWeights(pounds("300"), pounds("171.5"), pounds("128"))
    beef = Carcass("beef", tag="114", hot=(sides, SideWeights()))
    found = hanging_weights((beef,), HALVES[0], "hot", FORE)
    assert found == BillingProblem("quarters_differ", {"tag": "114", "side": "1"})


def test_an_unknown_carcass_or_side_is_said() -> None:
    for holding in (Holding(1, 1), Holding(0, 3)):
        found = hanging_weights((hung("1", "1"),), (holding,), "hot", FORE)
        assert isinstance(found, BillingProblem)
        assert found.code == "no_such_animal"


def test_shares_by_head() -> None:
    kinds = (WHOLE, HALVES[1], QUARTERS[1], SPLIT_QUARTERS[2])
    assert [head_fraction(one, 0) for one in kinds] == [
        Fraction(1),
        Fraction(1, 2),
        Fraction(1, 4),
        Fraction(1, 4),
    ]
    assert head_fraction(WHOLE, 1) == 0


def test_a_quote_fills_in_what_isnt_weighed_and_only_that() -> None:
    """Pork with a 2 % shrink in its file: 98 lb chilled is 100 lb hot. Derived."""
    pork = catalogue("pork")
    hog = Carcass("pork", skin="scalded", booked=pounds("200"))
    guess = expected_sides(hog, pork)
    assert guess.hot == (100, 100)
    assert guess.chilled == (100 * (1 - pork.ranges.shrink),) * 2
    found = hanging_weights((hog,), WHOLE, "hot", FORE, [guess])
    assert isinstance(found, HangingWeights)
    assert (found.pounds, found.estimated) == (200, True)
    weighed = replace(hog, hot=(SideWeights(pounds("97")), SideWeights(pounds("96"))))
    found = hanging_weights((weighed,), WHOLE, "hot", FORE, [guess])
    assert isinstance(found, HangingWeights)
    assert (found.pounds, found.estimated) == (193, False)


def package(line: int, cut: str, net: str, void: str = "") -> PackageMade:
    return PackageMade(
        1, 1, 1, 1, 1, line, cut, cut, "Owner", pounds(net), None, 1, ("smoked",), "",
        datetime(2024, 4, 20, tzinfo=UTC), "Test", "Bench", void,
    )  # fmt: skip


def test_what_was_made_leaves_void_packages_out_and_keeps_strays() -> None:
    pork = catalogue("pork")
    cut = next(one for one in pork.cuts.values() if one.kind == "roast")
    choice = Choice(1, 1, cut.code, Amount("pieces", 2), finishes=("smoked",))
    packages = [
        package(1, cut.code, "3.25"),
        package(1, cut.code, "2.5"),
        package(1, cut.code, "9", void="wrong owner"),
        package(0, "from_the_floor", "1.5"),
    ]
    ordered, stray = made_lines([choice], pork, packages, complete=True, into={1: Fraction(6)})
    assert (ordered.kind, ordered.finishes, ordered.packages) == ("roast", ("smoked",), 2)
    assert (ordered.finished, ordered.into) == (Fraction("5.75"), 6)
    assert (stray.line, stray.kind, stray.finished, stray.into) == (0, "", Fraction("1.5"), None)


def test_counted_packages_are_added_to_their_line_and_void_ones_are_not() -> None:
    pork = catalogue("pork")
    cut = next(one for one in pork.cuts.values() if one.kind == "roast")
    choice = Choice(1, 1, cut.code, Amount("pieces", 2), finishes=("smoked",))
    at = datetime(2024, 4, 20, tzinfo=UTC)
    twelve = CountedPackages(
        1, 1, 1, 1, 1, cut.code, "Roast", "Owner", 12, ("smoked",), at, "Test", "Bench"
    )
    counted = [twelve, replace(twelve, id=2, packages=30, void="miscounted")]
    packages = [package(1, cut.code, "3.25")]
    (made,) = made_lines([choice], pork, packages, complete=True, counted=counted)
    assert (made.packages, made.counted, made.finished) == (13, 12, Fraction("3.25"))
