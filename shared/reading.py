"""Reading what people type: numbers with fractions, each with the unit word behind it.

Nothing here raises for bad input: what can't be read comes back as an `Unread` that says why.
This file knows no units; `shared.units` and `shared.money` do.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

UnreadCode = Literal[
    "empty",
    "not_a_number",
    "no_unit",
    "unknown_unit",
    "mixed_units",
    "negative",
    "tare_over_gross",
    "not_exact",
    "sub_cent",
    "too_large",
]

MOST_CHARACTERS = 60
"""Nobody types a longer weight; a longer text isn't looked at."""

_VULGAR = {
    "¼": "1/4", "½": "1/2", "¾": "3/4", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10", "⅓": "1/3",
    "⅔": "2/3", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6",
    "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
_ALIKE = str.maketrans(
    {"⁄": "/", "∕": "/", "−": "-", "–": "-", "‑": "-", "″": '"', "”": '"', "“": '"'}
    | {glyph: f" {digits}" for glyph, digits in _VULGAR.items()}
)
_GROUPED = r"[1-9][0-9]{0,2}(?:,[0-9]{3})+"
_WHOLE = re.compile(rf"[0-9]+|{_GROUPED}")
_POINT = re.compile(rf"(?P<whole>(?:{_GROUPED}|[0-9]*))\.(?P<part>[0-9]*)")
_COMMA = re.compile(r"(?P<whole>[0-9]+),(?P<part>[0-9]+)")
_QUANTITY = re.compile(
    r"(?:(?:(?P<whole>[0-9][0-9,]*)(?: ?- ?| ))?(?P<above>[0-9]+) ?/ ?(?P<below>[0-9]+)"
    r"|(?P<decimal>[0-9.,]*[0-9][.]?))"
    r" ?(?P<word>[^\W\d_]+[.]?|[#\"]|'')? ?"
)
_GOES_ON = re.compile(r"[0-9.,/-]")


@dataclass(frozen=True, slots=True)
class Unread:
    """A text that can't be taken as it stands.

    `code` says why: "empty"; "not_a_number"; "no_unit" (a bare number where the unit must be
    said); "unknown_unit"; "mixed_units" ("1 lb 4 kg"); "negative"; "tare_over_gross" (a net
    weight below nothing); "not_exact" (1/3 lb: its decimals never end, or it falls between our
    smallest units); "sub_cent"; "too_large". `text` is what was typed. `understood` holds the
    pieces that could be read, in order, so that the window can show them.
    """

    code: UnreadCode
    text: str
    understood: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number as typed and the word behind it.

    `places` is how many decimals were written ("3.50" has 2), or how many a typed fraction needs
    (3 1/4 needs 2); -1 when its decimals never end (1/3). `word` is "" for a bare number, else
    in small letters without the closing point.
    """

    value: Fraction
    places: int
    written: str
    word: str


def read_quantities(text: str) -> tuple[Quantity, ...] | Unread:
    """The numbers of a text, each with its unit word.

    "1 lb 4½ oz" is (1, "lb") and (9/2, "oz"). A number is whole (1250 or 1,250), decimal (3.50),
    a fraction (3/4, ¾), or mixed (3 1/2, 3-1/2, 3½). A comma is taken as the decimal point only
    where it can't be one of thousands: exactly one comma, no point, and what follows isn't three
    digits after one to three that don't start with 0. So "3,5" is 3.5 and "0,454" is 0.454, but
    "1,250" is one thousand two hundred and fifty.
    """
    plain = " ".join(text.translate(_ALIKE).split())
    if not plain:
        return Unread("empty", text)
    if len(text) > MOST_CHARACTERS:
        return Unread("not_a_number", text)
    if plain.startswith("-"):
        rest = read_quantities(plain[1:])
        return Unread("not_a_number" if isinstance(rest, Unread) else "negative", text)
    found: list[Quantity] = []
    at = 0
    while at < len(plain):
        match = _QUANTITY.match(plain, at)
        one = None if match is None else _quantity(match)
        understood = tuple(_spoken(each) for each in found)
        if match is None or one is None:
            goes_on = not found or found[-1].word or _GOES_ON.match(plain, at)
            return Unread("not_a_number" if goes_on else "unknown_unit", text, understood)
        if found and not found[-1].word:
            return Unread("not_a_number", text, understood)
        found.append(one)
        at = match.end()
        if one.word and plain.startswith(",", at):
            at += 2 if plain.startswith(", ", at) else 1
            if at >= len(plain):
                return Unread("not_a_number", text, (*understood, _spoken(one)))
    return tuple(found)


def read_number(text: str) -> Quantity | Unread:
    """One bare number, with nothing behind it: "1,250.50" is 1250.50."""
    found = read_quantities(text)
    if isinstance(found, Unread):
        return found
    first = found[0]
    if first.word:
        return Unread("unknown_unit", text, (first.written,))
    return first


def places_of(value: Fraction) -> int:
    """How many decimals write the value exactly: 1/16 needs 4, 3 needs 0; -1 if none ever do."""
    rest, twos, fives = value.denominator, 0, 0
    while rest % 2 == 0:
        rest, twos = rest // 2, twos + 1
    while rest % 5 == 0:
        rest, fives = rest // 5, fives + 1
    return max(twos, fives) if rest == 1 else -1


def _spoken(one: Quantity) -> str:
    return f"{one.written} {one.word}".strip()


def _quantity(match: re.Match[str]) -> Quantity | None:
    word = (match["word"] or "").casefold().rstrip(".")
    written = match[0].removesuffix(" ")
    if match["word"]:
        written = written.removesuffix(match["word"]).removesuffix(" ")
    if match["above"] is None:
        decimal = _decimal(match["decimal"])
        return None if decimal is None else Quantity(*decimal, written, word)
    whole = match["whole"] or "0"
    above, below = int(match["above"]), int(match["below"])
    if below == 0 or not _WHOLE.fullmatch(whole) or (match["whole"] and above >= below):
        return None
    value = int(whole.replace(",", "")) + Fraction(above, below)
    return Quantity(value, places_of(value), written, word)


def _decimal(text: str) -> tuple[Fraction, int] | None:
    if _WHOLE.fullmatch(text):
        return Fraction(int(text.replace(",", ""))), 0
    match = _POINT.fullmatch(text) or _COMMA.fullmatch(text)
    if match is None:
        return None
    whole, part = match["whole"].replace(",", ""), match["part"]
    return Fraction(int((whole + part) or "0"), 10 ** len(part)), len(part)
