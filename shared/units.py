"""Weights and lengths: exact values, read from shop text and shown as the shop writes them.

A length is a plain `int` in 1/203,200 in: a 64th of an inch is 3,175 and a tenth of a millimeter
800. An estimated weight is a plain `int` of nanograms; a weighed one is a `Weight`, kept as
weighed. 1 lb = 0.45359237 kg and 1 in = 25.4 mm exactly (international yard and pound agreement,
1959; NIST Handbook 44, Appendix C).
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Final, Literal, Protocol, cast

from shared.reading import Quantity, Unread, places_of, read_quantities

__all__ = [
    "LENGTH_UNITS_PER_INCH",
    "LENGTH_UNITS_PER_MM",
    "NG_PER_G",
    "NG_PER_KG",
    "NG_PER_LB",
    "NG_PER_OZ",
    "SIXTY_FOURTH",
    "Unread",
    "Weight",
    "WeightUnit",
    "convert",
    "cube_root_floor",
    "length_text",
    "net",
    "pounds_text",
    "read_length",
    "read_weight",
    "scaled_length",
    "weight_sum",
    "weight_text",
    "whole_pounds_text",
]

WeightUnit = Literal["lb", "oz", "kg", "g"]

LENGTH_UNITS_PER_INCH: Final = 203_200
LENGTH_UNITS_PER_MM: Final = 8_000
SIXTY_FOURTH: Final = 3_175

NG_PER_LB: Final = 453_592_370_000
NG_PER_OZ: Final = 28_349_523_125
NG_PER_KG: Final = 1_000_000_000_000
NG_PER_G: Final = 1_000_000_000

MOST_WEIGHT_NG: Final = 10_000_000 * NG_PER_LB
"""A reading must be below this; it fits a signed 64-bit column."""
MOST_PLACES: Final = 12
"""A weight has no more decimals than these."""
MOST_LENGTH: Final = 10_000 * LENGTH_UNITS_PER_INCH

_NG_PER: Final[dict[WeightUnit, int]] = {
    "lb": NG_PER_LB,
    "oz": NG_PER_OZ,
    "kg": NG_PER_KG,
    "g": NG_PER_G,
}
_WEIGHT_WORDS: Final[dict[str, WeightUnit]] = {
    **dict.fromkeys(("lb", "lbs", "#", "pound", "pounds", "libra", "libras"), "lb"),
    **dict.fromkeys(("oz", "ounce", "ounces", "onza", "onzas"), "oz"),
    **dict.fromkeys(("kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"), "kg"),
    **dict.fromkeys(("g", "gram", "grams", "gramo", "gramos"), "g"),
}
_LENGTH_WORDS: Final[dict[str, int]] = {
    **dict.fromkeys(
        ("in", "ins", "inch", "inches", '"', "''", "pulgada", "pulgadas"), LENGTH_UNITS_PER_INCH
    ),
    **dict.fromkeys(("mm", "millimeter", "millimeters"), LENGTH_UNITS_PER_MM),
    **dict.fromkeys(("cm", "centimeter", "centimeters"), 10 * LENGTH_UNITS_PER_MM),
}
_GLYPHS: Final = {
    Fraction(1, 4): "¼", Fraction(1, 2): "½", Fraction(3, 4): "¾", Fraction(1, 8): "⅛",
    Fraction(3, 8): "⅜", Fraction(5, 8): "⅝", Fraction(7, 8): "⅞",
}  # fmt: skip
_NO_BREAK = "\u00a0"
_MINUS = "\u2212"


@dataclass(frozen=True, slots=True)
class Weight:
    """A weight as weighed: `count` × 10**`exponent` of `unit`.

    3.50 lb is Weight(350, "lb", -2). Two weights are equal when they were written alike, so that
    3.5 lb and 3.50 lb can be told apart; `<`, `<=`, `>`, `>=` compare what they weigh.
    """

    count: int
    unit: WeightUnit
    exponent: int = 0

    @classmethod
    def from_pounds(cls, pounds: str | int) -> "Weight":
        """A weight in pounds from plain digits: "98.5" is 985 tenths of a pound.

        Raises ValueError for anything else; what people type goes to `read_weight`.
        """
        found = read_weight(f"{pounds} lb")
        if isinstance(found, Unread) or found.unit != "lb":
            raise ValueError(f"not pounds: {pounds!r}")
        return found

    @property
    def exact_nanograms(self) -> Fraction:
        """The weight in nanograms, also where it isn't whole: half an ounce ends in .5."""
        return self.count * _NG_PER[self.unit] * Fraction(10) ** self.exponent

    @property
    def nanograms(self) -> int:
        """The weight in whole nanograms, rounded half up: 1 lb is 453,592,370,000.

        For sorting and estimates: 8.5 oz are 240,970,946,562.5 ng, told as ...563. Sums of what
        was weighed are made by `weight_sum` and stay exact.
        """
        above = self.count * _NG_PER[self.unit]
        if self.exponent >= 0:
            return above * 10**self.exponent
        below = 10**-self.exponent
        return (2 * above + below) // (2 * below)

    @property
    def pounds(self) -> Fraction:
        """The weight in pounds, exactly: 4 oz is 1/4."""
        return self.exact_nanograms / NG_PER_LB

    def text(self) -> str:
        """The weight with every digit as weighed, plain space before the unit: "3.50 lb"."""
        return f"{self.digits()} {self.unit}"

    def digits(self, *, grouped: bool = False) -> str:
        """The digits as weighed, without the unit: "1250.50", grouped "1,250.50"."""
        sign = "-" if self.count < 0 else ""
        whole, part = divmod(abs(self.count), 10 ** max(0, -self.exponent))
        whole *= 10 ** max(0, self.exponent)
        digits = f"{whole:,}" if grouped else str(whole)
        return sign + digits + (f".{part:0{-self.exponent}d}" if self.exponent < 0 else "")

    def __lt__(self, other: "Weight") -> bool:
        return self.exact_nanograms < other.exact_nanograms

    def __le__(self, other: "Weight") -> bool:
        return self.exact_nanograms <= other.exact_nanograms

    def __gt__(self, other: "Weight") -> bool:
        return self.exact_nanograms > other.exact_nanograms

    def __ge__(self, other: "Weight") -> bool:
        return self.exact_nanograms >= other.exact_nanograms


def weight_sum(weights: Sequence[Weight]) -> Weight:
    """The sum, exactly, with the decimals of the finest weight.

    Weights in one unit stay in it: 3.50 lb + 1.2 lb is 4.70 lb. Pounds with ounces become
    pounds, and kilograms with grams kilograms. Pounds or ounces with metric weights become
    kilograms with as many decimals as it takes: 1 lb + 1 kg is 1.45359237 kg. No weights at all
    are 0 lb.
    """
    units = {weight.unit for weight in weights}
    if len(units) <= 1:
        unit: WeightUnit = weights[0].unit if weights else "lb"
        return _summed(weights, unit, min((weight.exponent for weight in weights), default=0))
    if units == {"lb", "oz"}:
        return _summed(weights, "lb", _finest(weights, "lb"))
    return _summed(weights, "kg", _finest(weights, "kg"))


def net(gross: Weight, tare: Weight) -> Weight | Unread:
    """Gross less tare, exactly; never below nothing.

    98.50 lb on a 12.5 lb gambrel is 86.00 lb net. A tare above the gross weight gives an Unread
    with code "tare_over_gross" and both weights in `understood`.
    """
    if tare > gross:
        shown = (gross.text(), tare.text())
        return Unread("tare_over_gross", " − ".join(shown), shown)
    return weight_sum((gross, Weight(-tare.count, tare.unit, tare.exponent)))


def read_weight(text: str, default_unit: WeightUnit | None = "lb") -> Weight | Unread:
    """A weight from shop text, kept as typed.

    "3 1/2 lb" is 3.5 lb; "98.50" is 98.50 in the default unit; "1 lb 4 oz" is 1.25 lb; also
    "12.34 kg", "3½", "3-1/2", "1,250 #", "8.5 oz". For a comma as decimal point see
    `shared.reading.read_quantities`. Weights whose decimals never end (1/3 lb) or are more than
    twelve are refused with the code "not_exact"; 10,000,000 lb and more with "too_large".
    `default_unit=None` asks for the unit to be said.
    """
    found = read_quantities(text)
    if isinstance(found, Unread):
        return found
    parts: list[tuple[Quantity, WeightUnit]] = []
    for one in found:
        unit = _WEIGHT_WORDS.get(one.word) if one.word else default_unit
        if unit is None:
            return Unread("unknown_unit" if one.word else "no_unit", text, (one.written,))
        parts.append((one, unit))
    units = tuple(unit for _, unit in parts)
    if units not in ((units[0],), ("lb", "oz")):
        return Unread("mixed_units", text, tuple(f"{one.written} {unit}" for one, unit in parts))
    first, unit = parts[0]
    value, places = first.value, first.places
    if len(parts) == 2:
        value += parts[1][0].value / 16
        places = max(places, places_of(value)) if places_of(value) >= 0 else -1
    exact = value * _NG_PER[unit]
    if exact >= MOST_WEIGHT_NG:
        return Unread("too_large", text, (first.written, unit))
    if not 0 <= places <= MOST_PLACES:
        return Unread("not_exact", text, tuple(f"{one.written} {unit}" for one, unit in parts))
    return Weight(int(value * 10**places), unit, -places)


def read_length(text: str, default_unit: Literal["in", "mm", "cm"] | None = "in") -> int | Unread:
    """A length from shop text, in 1/203,200 in.

    "1¼ in", "1 1/4" and '1.25"' are 254,000; "2 cm" is 160,000. What falls between our units
    (1/3 in) is refused with the code "not_exact"; 10,000 in and more with "too_large".
    """
    found = read_quantities(text)
    if isinstance(found, Unread):
        return found
    one = found[0]
    if len(found) > 1:
        return Unread("mixed_units", text, tuple(f"{each.written} {each.word}" for each in found))
    word = one.word or default_unit
    if word is None:
        return Unread("no_unit", text, (one.written,))
    unit = _LENGTH_WORDS.get(word)
    if unit is None:
        return Unread("unknown_unit", text, (one.written,))
    length = one.value * unit
    if length >= MOST_LENGTH:
        return Unread("too_large", text, (one.written, word))
    if length.denominator != 1:
        return Unread("not_exact", text, (one.written, word))
    return length.numerator


def length_text(units: int) -> str:
    """A length as cutters write it: 254,000 is "1¼ in", 977,900 is "4 13/16 in".

    In inches to the 64th; what lies between two 64ths is rounded down (toward nothing), so that
    19 mm, 47.87 64ths, is shown as "47/64 in". Spaces are no-break spaces.
    """
    sixty_fourths = abs(units) // SIXTY_FOURTH
    sign = _MINUS if units < 0 and sixty_fourths else ""
    inches, rest = divmod(sixty_fourths, 64)
    part = Fraction(rest, 64)
    if not rest:
        number = str(inches)
    elif part in _GLYPHS:
        number = f"{inches or ''}{_GLYPHS[part]}"
    else:
        number = f"{inches}{_NO_BREAK}{part}" if inches else str(part)
    return f"{sign}{number}{_NO_BREAK}in"


def pounds_text(ng: int, places: int = 1) -> str:
    """Nanograms in pounds, rounded half up (away from nothing): "1,250.5 lb", "3.3 lb" for 3¼ lb.

    The space is a no-break space.
    """
    scaled = abs(ng) * 10**places
    count = (2 * scaled + NG_PER_LB) // (2 * NG_PER_LB)
    return weight_text(Weight(-count if ng < 0 else count, "lb", -places))


def whole_pounds_text(ng: int) -> str:
    """Nanograms in whole pounds, rounded half up: 98½ lb is "99 lb"."""
    return pounds_text(ng, 0)


def weight_text(weight: Weight) -> str:
    """A weight for people, every digit as weighed: "1,250.50 lb" with a no-break space."""
    digits = weight.digits(grouped=True).replace("-", _MINUS)
    return f"{digits}{_NO_BREAK}{weight.unit}"


def convert(count: Fraction, from_unit: str, to_unit: str) -> Fraction:
    """A count in another unit, exactly: 100 lb is 45.359237 kg.

    Knows lb, oz, kg, g, in, mm and cm. Raises what Pint raises for other units, or between a
    weight and a length. The first call loads Pint (about 150 ms): not for the window's thread.
    """
    return Fraction(_registry().convert(count, from_unit, to_unit))


def cube_root_floor(n: int) -> int:
    """The greatest whole number whose cube is at most n: 26 gives 2, 27 gives 3.

    Raises ValueError below nothing.
    """
    if n < 0:
        raise ValueError(f"no cube root of {n} here")
    if n == 0:
        return 0
    root = 1 << (n.bit_length() + 2) // 3  # above it: from there Newton's steps only fall
    while True:
        lower = (2 * root + n // (root * root)) // 3
        if lower >= root:
            return root
        root = lower


def scaled_length(reference_length: int, weight_ng: int, reference_ng: int) -> int:
    """A length that grows with the cube root of the weight, rounded down to 1/64 in.

    All by whole numbers. 14 in on a 92 lb side is 14 × ∛(98 ÷ 92) = 14.298 in on one of 98 lb:
    915 64ths, 14 19/64 in, or 2,905,125. Raises ValueError for a reference weight that isn't
    above nothing and for anything below nothing.
    """
    if reference_length < 0 or weight_ng < 0 or reference_ng <= 0:
        raise ValueError("a length scales from a reference above nothing")
    cube = reference_length**3 * weight_ng // (reference_ng * SIXTY_FOURTH**3)
    return cube_root_floor(cube) * SIXTY_FOURTH


def _finest(weights: Sequence[Weight], unit: WeightUnit) -> int:
    """The exponent that writes every one of the weights exactly in the unit."""
    return -max(
        max(-weight.exponent, places_of(weight.exact_nanograms / _NG_PER[unit]))
        if weight.unit != unit
        else -weight.exponent
        for weight in weights
    )


def _summed(weights: Sequence[Weight], unit: WeightUnit, exponent: int) -> Weight:
    total = sum((weight.exact_nanograms for weight in weights), Fraction(0))
    count = total / _NG_PER[unit] / Fraction(10) ** exponent
    return Weight(int(count), unit, exponent)


class _Registry(Protocol):
    """What we use of Pint's registry; its own types leave the numbers open."""

    def define(self, definition: str) -> None: ...

    def convert(self, value: Fraction, src: str, dst: str) -> Fraction: ...


@cache
def _registry() -> _Registry:
    from pint import UnitRegistry

    empty = cast("Callable[..., _Registry]", UnitRegistry)
    registry = empty(None, non_int_type=Fraction)
    for line in (
        "gram = [mass] = g",
        "kilogram = 1000 * gram = kg",
        "pound = 0.45359237 * kilogram = lb",
        "ounce = pound / 16 = oz",
        "millimeter = [length] = mm",
        "centimeter = 10 * millimeter = cm",
        "inch = 25.4 * millimeter = in",
    ):
        registry.define(line)
    return registry
