"""GS1 element strings: what a package's barcode says, checked before it is drawn.

A value of variable length is ended by FNC1 (here the character 29) unless it is last. Sources:
GS1 Barcode Syntax Dictionary and Syntax Engine (27 July 2026).
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from shared.marking.identifiers import IDENTIFIERS, Identifier, Piece
from shared.marking.problems import MarkingProblem
from shared.reading import places_of
from shared.units import NG_PER_KG, NG_PER_LB, Weight

FNC1: Final = "\x1d"
SET_82: Final = frozenset(
    "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz"
)
"""The characters a GS1 text may hold (GS1 General Specifications, set 82)."""

_DAYS: Final = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_HUMAN = re.compile(r"\((\d{2,4})\)")
MOST_DECIMALS: Final = 5


@dataclass(frozen=True, slots=True)
class Element:
    """An application identifier and its value: ("01", "98898765432106")."""

    ai: str
    value: str


@dataclass(frozen=True, slots=True)
class ElementString:
    """Elements in the order they are encoded; make one with `element_string`."""

    elements: tuple[Element, ...]

    @property
    def raw(self) -> str:
        """As encoded, FNC1 only where it is needed; the symbol's leading FNC1 is not in it."""
        return "".join(
            one.ai + one.value + (FNC1 if more and IDENTIFIERS[one.ai].separated else "")
            for one, more in _with_more(self.elements)
        )

    @property
    def human(self) -> str:
        """For people, below the bars: "(01)98898765432106(3202)012345"."""
        return "".join(f"({one.ai}){one.value}" for one in self.elements)

    @property
    def bracketed(self) -> str:
        """With square brackets, which no value may hold, as barcode encoders take it."""
        return "".join(f"[{one.ai}]{one.value}" for one in self.elements)

    def value(self, ai: str) -> str:
        """The value of one identifier, "" where it isn't there."""
        return next((one.value for one in self.elements if one.ai == ai), "")

    @property
    def net_weight(self) -> Weight | None:
        """The net weight it carries: (3202)012345 is 123.45 lb. None where it carries none."""
        for one in self.elements:
            places = IDENTIFIERS[one.ai].decimals
            if places is not None and one.ai[:3] in ("310", "320"):
                return Weight(int(one.value), "kg" if one.ai[:3] == "310" else "lb", -places)
        return None


def check_digit(digits: str) -> int:
    """The GS1 check digit: weights 3 and 1 from the right, up to the next ten.

    629104150021 sums to 57, so 3. Raises ValueError for anything but digits.
    """
    if not _all_digits(digits):
        raise ValueError(f"not digits: {digits!r}")
    total = sum(int(one) * (3, 1)[place % 2] for place, one in enumerate(reversed(digits)))
    return -total % 10


def gtin14(digits: str) -> str | MarkingProblem:
    """A GTIN of 8, 12, 13 or 14 digits as 14, its check digit checked."""
    bare = digits.strip()
    if not _all_digits(bare):
        return MarkingProblem("characters", {"ai": "01", "value": digits})
    if len(bare) not in (8, 12, 13, 14):
        return MarkingProblem("length", {"ai": "01", "value": digits})
    if check_digit(bare[:-1]) != int(bare[-1]):
        data = {"ai": "01", "value": digits, "expected": str(check_digit(bare[:-1]))}
        return MarkingProblem("check_digit", data)
    return bare.rjust(14, "0")


def element_string(elements: Iterable[Element]) -> ElementString | MarkingProblem:
    """The elements, each value checked against its format; in the order given."""
    every = tuple(elements)
    if not every:
        return MarkingProblem("empty")
    for place, one in enumerate(every):
        if any(one.ai == other.ai for other in every[:place]):
            return MarkingProblem("twice", {"ai": one.ai})
        problem = _fault(one)
        if problem is not None:
            return problem
    return ElementString(every)


def lacking(found: ElementString) -> MarkingProblem | None:
    """What an identifier must stand beside and doesn't: a net weight needs a GTIN."""
    there = {one.ai for one in found.elements}
    for one in found.elements:
        needs = IDENTIFIERS[one.ai].needs
        if needs and not there.intersection(needs):
            code = "needs_count" if needs == ("37",) else "needs_gtin"
            return MarkingProblem(code, {"ai": one.ai, "needs": " ".join(needs)})
    return None


def parse(raw: str) -> ElementString | MarkingProblem:
    """Read what a scanner gives; a leading symbology identifier such as "]C1" is passed over."""
    text = raw[3:] if raw.startswith("]") else raw
    text = text.removeprefix(FNC1)
    elements: list[Element] = []
    while text:
        identifier = _identifier_of(text)
        if identifier is None:
            return MarkingProblem("unknown_ai", {"ai": text[:4]})
        rest = text.removeprefix(identifier.ai)
        end = rest.find(FNC1) if identifier.separated else identifier.most
        value = rest if end < 0 else rest[:end]
        if not identifier.separated and (len(value) < end or FNC1 in value):
            return MarkingProblem("cut_short", {"ai": identifier.ai, "value": value})
        elements.append(Element(identifier.ai, value))
        text = rest[len(value) :].removeprefix(FNC1)
    return element_string(elements)


def parse_human(text: str) -> ElementString | MarkingProblem:
    """Read what stands below the bars: "(01)98898765432106(3202)012345"."""
    pieces = _HUMAN.split(text.strip())
    if pieces[0] or len(pieces) < 3:
        return MarkingProblem("unknown_ai", {"ai": text[:4]})
    pairs = zip(pieces[1::2], pieces[2::2], strict=True)
    return element_string(Element(ai, value) for ai, value in pairs)


def package_elements(
    gtin: str, net: Weight, packed_on: date, *, lot: str = "", serial: str = ""
) -> ElementString | MarkingProblem:
    """A weighed package: GTIN, net weight, packed on, lot and serial.

    12.34 lb gives (3202)001234. Pounds and ounces are given in pounds (320n), kilograms and
    grams in kilograms (310n), with the decimals as weighed. "not_variable": a weighed package
    needs a GTIN of 14 digits that begins with 9.
    """
    number = gtin14(gtin)
    if isinstance(number, MarkingProblem):
        return number
    if not number.startswith("9"):
        return MarkingProblem("not_variable", {"gtin": number})
    weight = _weight_element(net)
    if isinstance(weight, MarkingProblem):
        return weight
    elements = [Element("01", number), weight, Element("13", packed_on.strftime("%y%m%d"))]
    elements += [Element(ai, value) for ai, value in (("10", lot), ("21", serial)) if value]
    return element_string(elements)


def _weight_element(net: Weight) -> Element | MarkingProblem:
    pounds = net.unit in ("lb", "oz")
    exact = net.exact_nanograms / (NG_PER_LB if pounds else NG_PER_KG)
    written = -net.exponent if net.unit in ("lb", "kg") else places_of(exact)
    places = max(0, min(written, MOST_DECIMALS))
    while places and exact * 10**places >= 1_000_000:
        places -= 1
    count = exact * 10**places
    data = {"net": net.text()}
    if count.denominator != 1:
        return MarkingProblem("not_exact", data)
    if count >= 1_000_000:
        return MarkingProblem("too_heavy", data)
    if count <= 0:
        return MarkingProblem("net_not_positive", data)
    return Element(f"{'320' if pounds else '310'}{places}", f"{count.numerator:06d}")


def _with_more(elements: Sequence[Element]) -> Iterator[tuple[Element, bool]]:
    last = len(elements) - 1
    for place, one in enumerate(elements):
        yield one, place < last


def _identifier_of(text: str) -> Identifier | None:
    return next((IDENTIFIERS[text[:n]] for n in (2, 3, 4) if text[:n] in IDENTIFIERS), None)


def _fault(one: Element) -> MarkingProblem | None:
    data = {"ai": one.ai, "value": one.value}
    identifier = IDENTIFIERS.get(one.ai)
    if identifier is None:
        return MarkingProblem("unknown_ai", data)
    rest = one.value
    for piece in identifier.pieces:
        value, rest = rest[: piece.most], rest[piece.most :]
        code = _piece_fault(piece, value)
        if code:
            return MarkingProblem(code, data)
    return MarkingProblem("length", data) if rest else None


def _piece_fault(piece: Piece, value: str) -> str:
    if len(value) < piece.least:
        return "length"
    if not _all_digits(value) if piece.kind == "digits" else not SET_82.issuperset(value):
        return "characters" if value else ""
    if piece.check == "check_digit":
        return "" if check_digit(value[:-1]) == int(value[-1]) else "check_digit"
    if piece.check and value:
        return "" if _is_date(value, month_alone=piece.check == "date_or_month") else "date"
    return ""


def _is_date(value: str, *, month_alone: bool) -> bool:
    """Whether YYMMDD is a day; 29 February only in a leap year (any year GS1 can mean: yy ÷ 4)."""
    if len(value) != 6:
        return False
    year, month, day = int(value[:2]), int(value[2:4]), int(value[4:])
    if not 1 <= month <= 12 or (day == 0 and not month_alone):
        return False
    most = 28 if month == 2 and year % 4 else _DAYS[month - 1]
    return day <= most


def _all_digits(text: str) -> bool:
    return text.isascii() and text.isdecimal()
