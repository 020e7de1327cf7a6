"""Weights and lengths: published constants, shop text read and shown, exact sums and roots."""

import subprocess
import sys
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared import units
from shared.reading import Unread
from shared.units import (
    LENGTH_UNITS_PER_INCH,
    NG_PER_LB,
    SIXTY_FOURTH,
    Weight,
    WeightUnit,
    convert,
    cube_root_floor,
    length_text,
    net,
    pounds_text,
    read_length,
    read_weight,
    scaled_length,
    weight_sum,
    weight_text,
    whole_pounds_text,
)

UNITS: st.SearchStrategy[WeightUnit] = st.sampled_from(("lb", "oz", "kg", "g"))


@st.composite
def weighed(draw: st.DrawFn) -> Weight:
    unit = draw(UNITS)
    places = 0 if unit == "oz" else draw(st.integers(0, 4))
    return Weight(draw(st.integers(0, 9_999_999)), unit, -places)


# NIST Handbook 44, Appendix C: avoirdupois pound 453.59237 g, ounce 28.349523125 g, inch 2.54 cm,
# all exact (international yard and pound agreement, 1959).
@pytest.mark.parametrize(
    ("ours", "published"),
    [
        (units.NG_PER_LB, "453.59237e9"),
        (units.NG_PER_OZ, "28.349523125e9"),
        (units.NG_PER_KG, "1e12"),
        (units.NG_PER_G, "1e9"),
        (units.LENGTH_UNITS_PER_INCH, "203200"),
        (units.SIXTY_FOURTH * 64, "203200"),
        (Fraction(units.LENGTH_UNITS_PER_INCH, units.LENGTH_UNITS_PER_MM), "25.4"),
        (units.NG_PER_OZ * 16, "453.59237e9"),
    ],
)
def test_constants_are_the_published_ones(ours: int | Fraction, published: str) -> None:
    assert ours == Fraction(published)


# Multiplied out by hand from the published pound, ounce and inch.
@pytest.mark.parametrize(
    ("count", "from_unit", "to_unit", "result"),
    [
        ("100", "lb", "kg", Fraction("45.359237")),
        ("250.5", "lb", "kg", Fraction("113.624888685")),
        ("1", "oz", "g", Fraction("28.349523125")),
        ("1", "lb", "oz", Fraction(16)),
        ("1", "in", "cm", Fraction("2.54")),
        ("25.4", "mm", "in", Fraction(1)),
        ("1", "kg", "lb", Fraction(100_000_000, 45_359_237)),
    ],
)
def test_pint_converts_exactly(count: str, from_unit: str, to_unit: str, result: Fraction) -> None:
    assert convert(Fraction(count), from_unit, to_unit) == result


@given(weighed(), UNITS)
def test_pint_and_our_constants_agree(weight: Weight, unit: WeightUnit) -> None:
    count = Fraction(weight.digits())
    one = Weight(1, unit).nanograms
    assert convert(count, weight.unit, unit) == Fraction(weight.nanograms, one)


def test_starting_up_does_not_load_pint() -> None:
    code = "import sys, shared.units, shared.money; sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


@pytest.mark.parametrize(
    ("text", "weight"),
    [
        ("3 1/2 lb", Weight(35, "lb", -1)),
        ("3½", Weight(35, "lb", -1)),
        ("3 ½ lb", Weight(35, "lb", -1)),
        ("½ lb", Weight(5, "lb", -1)),
        ("3⁄4 lb", Weight(75, "lb", -2)),
        ("3-1/2", Weight(35, "lb", -1)),
        ("3 - 1/2 lbs", Weight(35, "lb", -1)),
        ("1/16 lb", Weight(625, "lb", -4)),
        ("3.5", Weight(35, "lb", -1)),
        ("3.50", Weight(350, "lb", -2)),
        (".5", Weight(5, "lb", -1)),
        ("5.", Weight(5, "lb")),
        ("98.5 lb", Weight(985, "lb", -1)),
        ("98.5lb.", Weight(985, "lb", -1)),
        ("98.5\u00a0LB", Weight(985, "lb", -1)),
        ("98.5#", Weight(985, "lb", -1)),
        ("98.5 #", Weight(985, "lb", -1)),
        ("1,250 lb", Weight(1250, "lb")),
        ("1,250.5 lb", Weight(12505, "lb", -1)),
        ("1,250 1/2 lb", Weight(12505, "lb", -1)),
        ("12.34 kg", Weight(1234, "kg", -2)),
        ("3,5 kg", Weight(35, "kg", -1)),
        ("0,454 kg", Weight(454, "kg", -3)),
        ("1250,125 kg", Weight(1250125, "kg", -3)),
        ("1 lb 4 oz", Weight(125, "lb", -2)),
        ("1 lb, 4 oz", Weight(125, "lb", -2)),
        ("1lb4oz", Weight(125, "lb", -2)),
        ("1 lb 1 oz", Weight(10625, "lb", -4)),
        ("20 oz", Weight(20, "oz")),
        ("5 libras", Weight(5, "lb")),
        ("0 lb", Weight(0, "lb")),
        ("9999999 lb", Weight(9_999_999, "lb")),
    ],
)
def test_weights_are_read_as_the_shop_writes_them(text: str, weight: Weight) -> None:
    assert read_weight(text) == weight


@pytest.mark.parametrize(
    ("text", "code", "understood"),
    [
        ("", "empty", ()),
        (" \u00a0", "empty", ()),
        ("heavy", "not_a_number", ()),
        ("lb", "not_a_number", ()),
        ("3.5.2 lb", "not_a_number", ()),
        ("3.5 1/2 lb", "not_a_number", ("3.5",)),
        ("3 5/4 lb", "not_a_number", ()),
        ("1/0 lb", "not_a_number", ()),
        ("1,25,0 lb", "not_a_number", ()),
        ("1.250,5 kg", "not_a_number", ()),
        ("3 4 lb", "not_a_number", ("3",)),
        ("1 lb,", "not_a_number", ("1 lb",)),
        ("5-", "not_a_number", ("5",)),
        ("-5 lb", "negative", ()),
        ("−5", "negative", ()),
        ("-x", "not_a_number", ()),
        ("3 stone", "unknown_unit", ("3",)),
        ("3 *", "unknown_unit", ("3",)),
        ("1 lb 4 kg", "mixed_units", ("1 lb", "4 kg")),
        ("4 oz 1 lb", "mixed_units", ("4 oz", "1 lb")),
        ("1/3 lb", "not_exact", ("1/3 lb",)),
        ("0.0000000000001 lb", "not_exact", ("0.0000000000001 lb",)),
        ("10000000", "too_large", ("10000000", "lb")),
        ("9" * 5_000, "not_a_number", ()),
    ],
)
def test_what_is_no_weight_is_refused_with_a_reason(
    text: str, code: str, understood: tuple[str, ...]
) -> None:
    found = read_weight(text)
    assert isinstance(found, Unread)
    assert (found.code, found.text, found.understood) == (code, text, understood)


def test_the_unit_can_be_left_open_or_asked_for() -> None:
    assert read_weight("3.5", "kg") == Weight(35, "kg", -1)
    bare = read_weight("3.5", None)
    assert isinstance(bare, Unread)
    assert bare.code == "no_unit"
    length = read_length("3.5", None)
    assert isinstance(length, Unread)
    assert length.code == "no_unit"


@given(weighed())
def test_a_weight_shown_reads_back_as_weighed(weight: Weight) -> None:
    assert read_weight(weight.text()) == weight
    assert read_weight(weight_text(weight)) == weight


@given(st.integers(0, 9_999), st.integers(0, 15))
def test_pounds_and_ounces_are_sixteenths(pounds: int, ounces: int) -> None:
    found = read_weight(f"{pounds} lb {ounces} oz")
    assert isinstance(found, Weight)
    assert found.pounds == pounds + Fraction(ounces, 16)


@given(st.text(max_size=70))
def test_no_text_makes_the_readers_fail(text: str) -> None:
    weight, length = read_weight(text), read_length(text)
    assert isinstance(weight, Unread) or weight.nanograms >= 0
    assert isinstance(length, Unread) or length >= 0


@given(st.text(alphabet="0123456789 .,/-½¼⅓lbozkgin#\"'⁄−", max_size=16))
def test_no_shop_text_makes_the_readers_fail(text: str) -> None:
    weight, length = read_weight(text), read_length(text)
    assert isinstance(weight, Unread) or weight.nanograms >= 0
    assert isinstance(length, Unread) or length >= 0


def test_weights_weigh_what_they_say() -> None:
    assert Weight(350, "lb", -2).nanograms == 1_587_573_295_000
    assert Weight(4, "oz").pounds == Fraction(1, 4)
    assert Weight(2, "kg", 1).text() == "20 kg"
    assert Weight(350, "lb", -2).text() == "3.50 lb"
    assert Weight(5, "lb", -2).text() == "0.05 lb"
    assert Weight.from_pounds("98.5") == Weight(985, "lb", -1)
    assert Weight.from_pounds(92) == Weight(92, "lb")


@pytest.mark.parametrize("text", ["", "x", "-5", "1/3", "4 kg", "3 oz"])
def test_only_pounds_come_from_pounds(text: str) -> None:
    with pytest.raises(ValueError, match="not pounds"):
        Weight.from_pounds(text)


def test_half_an_ounce_is_kept_as_weighed_and_rounded_only_in_nanograms() -> None:
    """1 oz = 28.349523125 g exactly (NIST Handbook 44, Appendix C); 8.5 oz end in half of one."""
    scale = Weight(85, "oz", -1)
    assert read_weight("8.5 oz") == scale
    assert scale.exact_nanograms * 2 == 481_941_893_125
    assert scale.nanograms == 240_970_946_563
    assert Weight(25, "oz", -2).nanograms == 7_087_380_781  # 0.25 oz: ...781.25 ng
    assert weight_sum([scale] * 32).nanograms == 17 * NG_PER_LB
    assert read_weight("2 lb 8.5 oz") == Weight(253125, "lb", -5)


def test_weights_order_by_what_they_weigh() -> None:
    pound, half, kilogram = Weight(1, "lb"), Weight(8, "oz"), Weight(1, "kg")
    assert sorted([kilogram, pound, half]) == [half, pound, kilogram]
    fine, coarse = Weight(350, "lb", -2), Weight(35, "lb", -1)
    assert fine != coarse
    assert fine <= coarse <= fine
    assert not fine < coarse
    assert not fine > coarse
    assert kilogram > pound
    assert pound >= Weight(16, "oz")


@pytest.mark.parametrize(
    ("weights", "total"),
    [
        ((), Weight(0, "lb")),
        ((Weight(350, "lb", -2), Weight(12, "lb", -1)), Weight(470, "lb", -2)),
        ((Weight(1234, "kg", -2), Weight(1, "kg")), Weight(1334, "kg", -2)),
        ((Weight(1, "lb"), Weight(4, "oz")), Weight(125, "lb", -2)),
        ((Weight(1, "kg"), Weight(250, "g")), Weight(125, "kg", -2)),
        ((Weight(1, "lb"), Weight(1, "kg")), Weight(145359237, "kg", -8)),
    ],
)
def test_sums_stay_in_their_unit(weights: tuple[Weight, ...], total: Weight) -> None:
    assert weight_sum(weights) == total


@given(st.lists(weighed(), max_size=6))
def test_sums_are_exact(weights: list[Weight]) -> None:
    assert weight_sum(weights).nanograms == sum(weight.nanograms for weight in weights)


def test_net_is_gross_less_tare_and_never_below_nothing() -> None:
    gross, tare = Weight(9850, "lb", -2), Weight(125, "lb", -1)
    assert net(gross, tare) == Weight(8600, "lb", -2)
    assert net(gross, gross) == Weight(0, "lb", -2)
    below = net(tare, gross)
    assert isinstance(below, Unread)
    assert (below.code, below.understood) == ("tare_over_gross", ("12.5 lb", "98.50 lb"))


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("1¼ in", 254_000),
        ("1 1/4", 254_000),
        ("1-1/4 inches", 254_000),
        ("1.25 in", 254_000),
        ('3/4"', 152_400),
        ("3/4''", 152_400),
        ("¾ ″", 152_400),
        ("2 cm", 160_000),
        ("19 mm", 152_000),
        ("1/64 in", 3_175),
        ("0.1 mm", 800),
        ("1/203200 in", 1),
    ],
)
def test_lengths_are_read_as_the_shop_writes_them(text: str, length: int) -> None:
    assert read_length(text) == length


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("1/3 in", "not_exact"),
        ("0.00001 mm", "not_exact"),
        ("3 ft", "unknown_unit"),
        ("3 lb", "unknown_unit"),
        ("1 in 2 mm", "mixed_units"),
        ("10000 in", "too_large"),
        ("-1 in", "negative"),
        ("thick", "not_a_number"),
        ("", "empty"),
    ],
)
def test_what_is_no_length_is_refused_with_a_reason(text: str, code: str) -> None:
    found = read_length(text)
    assert isinstance(found, Unread)
    assert found.code == code


@pytest.mark.parametrize(
    ("length", "text"),
    [
        (254_000, "1¼\u00a0in"),
        (152_400, "¾\u00a0in"),
        (977_900, "4\u00a013/16\u00a0in"),
        (406_400, "2\u00a0in"),
        (0, "0\u00a0in"),
        (SIXTY_FOURTH, "1/64\u00a0in"),
        (152_000, "47/64\u00a0in"),
        (SIXTY_FOURTH - 1, "0\u00a0in"),
        (1 - SIXTY_FOURTH, "0\u00a0in"),
        (-254_000, "−1¼\u00a0in"),
    ],
)
def test_lengths_are_shown_as_cutters_write_them(length: int, text: str) -> None:
    assert length_text(length) == text


@given(st.integers(0, 100 * LENGTH_UNITS_PER_INCH))
def test_a_length_shown_reads_back_rounded_down_to_the_64th(length: int) -> None:
    assert read_length(length_text(length)) == length // SIXTY_FOURTH * SIXTY_FOURTH


@pytest.mark.parametrize(
    ("ng", "places", "text"),
    [
        (NG_PER_LB * 1250 + NG_PER_LB // 2, 1, "1,250.5\u00a0lb"),
        (NG_PER_LB * 13 // 4, 1, "3.3\u00a0lb"),
        (NG_PER_LB * 13 // 4 - 1, 1, "3.2\u00a0lb"),
        (NG_PER_LB, 2, "1.00\u00a0lb"),
        (-NG_PER_LB * 13 // 4, 1, "−3.3\u00a0lb"),
        (-1, 1, "0.0\u00a0lb"),
        (0, 1, "0.0\u00a0lb"),
    ],
)
def test_pounds_are_shown_rounded_half_up(ng: int, places: int, text: str) -> None:
    assert pounds_text(ng, places) == text


def test_whole_pounds_and_weights_are_shown() -> None:
    assert whole_pounds_text(NG_PER_LB * 197 // 2) == "99\u00a0lb"
    assert whole_pounds_text(NG_PER_LB * 197 // 2 - 1) == "98\u00a0lb"
    assert weight_text(Weight(125050, "lb", -2)) == "1,250.50\u00a0lb"


@given(st.integers(0, 10**60))
def test_cube_roots_are_the_greatest_that_fit(n: int) -> None:
    root = cube_root_floor(n)
    assert root**3 <= n < (root + 1) ** 3


@given(st.integers(1, 10**20))
def test_cube_roots_are_right_beside_a_cube(root: int) -> None:
    beside = [cube_root_floor(root**3 + off) for off in (-1, 0, 1)]
    assert beside == [root - 1, root, root]


def test_a_negative_number_has_no_cube_root_here() -> None:
    with pytest.raises(ValueError, match="cube root"):
        cube_root_floor(-1)


def test_lengths_scale_with_the_cube_root_of_the_weight() -> None:
    inch, pound = LENGTH_UNITS_PER_INCH, NG_PER_LB
    assert scaled_length(14 * inch, 92 * pound, 92 * pound) == 14 * inch
    assert scaled_length(14 * inch, 8 * 92 * pound, 92 * pound) == 28 * inch
    # 14 × ∛(98/92) = 14.2979…, by hand from ∛1.0652174 = 1.0212795: 915.07 64ths, so 915.
    assert scaled_length(14 * inch, 98 * pound, 92 * pound) == 915 * SIXTY_FOURTH == 2_905_125
    assert scaled_length(14 * inch, 0, 92 * pound) == 0


@given(
    st.integers(0, 60 * LENGTH_UNITS_PER_INCH),
    st.integers(0, 900 * NG_PER_LB),
    st.integers(1, 900 * NG_PER_LB),
)
def test_a_scaled_length_is_the_greatest_64th_that_fits(length: int, ng: int, ref: int) -> None:
    scaled = scaled_length(length, ng, ref)
    assert scaled % SIXTY_FOURTH == 0
    assert scaled**3 * ref <= length**3 * ng < (scaled + SIXTY_FOURTH) ** 3 * ref


@pytest.mark.parametrize("figures", [(-1, 1, 1), (1, -1, 1), (1, 1, 0)])
def test_a_length_scales_only_from_a_reference(figures: tuple[int, int, int]) -> None:
    with pytest.raises(ValueError, match="reference"):
        scaled_length(*figures)
