"""Money: whole cents, exact rates, rounding half up, and splits that add up.

Money is a plain `int` of cents. A rate is a `Fraction` of cents for one unit (a pound, a head, a
package) and may hold fractions of a cent; an amount never does.
"""

from collections.abc import Sequence
from fractions import Fraction
from typing import Final

from shared.reading import Quantity, Unread, places_of, read_number

MOST_CENTS: Final = 1_000_000_000
"""Money typed must be below ten million dollars."""
MOST_RATE_PLACES: Final = 6
"""Decimals of a dollar that a rate may have."""

_MINUS = "\u2212"


def round_half_up(exact: Fraction | int) -> int:
    """To the nearest whole number, halves away from nothing: 319687.5 is 319,688.

    −2.5 is −3, so that a credit is its charge with the sign turned.
    """
    size = (2 * abs(exact) + 1) // 2
    return -size if exact < 0 else size


def amount_of(rate: Fraction, quantity: Fraction | int) -> int:
    """Rate × quantity in cents, rounded half up once.

    687.5 lb at $4.65 is $3,196.875, so $3,196.88 (a published price sheet of 2021; the
    tests name it).
    """
    return round_half_up(rate * quantity)


def split_cents(total: int, weights: Sequence[Fraction | int]) -> tuple[int, ...]:
    """Cents divided in proportion to the weights, adding up to the total exactly.

    Largest remainder: each part gets its whole cents, and the cents left over go one each to the
    parts with the largest fractions, ties to the lower index. 100 cents over (1, 1, 1) are
    (34, 33, 33). A negative total is split as its mirror, so a credit undoes its charge part by
    part. Raises ValueError for a weight below nothing, and when all are nothing.
    """
    whole = sum(weights, Fraction(0))
    if whole <= 0 or any(weight < 0 for weight in weights):
        raise ValueError("a split needs weights, none below nothing and not all nothing")
    if total < 0:
        return tuple(-part for part in split_cents(-total, weights))
    exact = [Fraction(total) * weight / whole for weight in weights]
    parts = [part.numerator // part.denominator for part in exact]
    neediest = sorted(range(len(parts)), key=lambda at: parts[at] - exact[at])
    for at in neediest[: total - sum(parts)]:
        parts[at] += 1
    return tuple(parts)


def read_money(text: str) -> int | Unread:
    """Cents from what was typed: "$1,250.00" and "1250" are 125,000; "12.5" is 1,250.

    "-5" is refused with the code "negative", "12.345" with "sub_cent", ten million dollars and
    more with "too_large". A comma is only ever one of thousands.
    """
    found = _dollars(text)
    if isinstance(found, Unread):
        return found
    cents = found.value * 100
    if cents >= MOST_CENTS:
        return Unread("too_large", text, (found.written,))
    if cents.denominator != 1:
        return Unread("sub_cent", text, (found.written,))
    return cents.numerator


def read_rate(text: str) -> Fraction | Unread:
    """Cents for one unit; fractions of a cent are allowed: "$0.715" is 143/2, "71.5¢" as well.

    At most six decimals of a dollar, else the code is "not_exact".
    """
    bare = text.strip()
    in_cents = bare.endswith("¢") and not bare.startswith("$")
    found = _dollars(bare.removesuffix("¢") if in_cents else bare)
    if isinstance(found, Unread):
        return Unread(found.code, text, found.understood)
    cents = found.value if in_cents else found.value * 100
    if cents >= MOST_CENTS:
        return Unread("too_large", text, (found.written,))
    if places_of(cents / 100) > MOST_RATE_PLACES:
        return Unread("not_exact", text, (found.written,))
    return cents


def money_text(cents: int) -> str:
    """Cents as people read them: "$1,250.00", and "−$5.00" below nothing."""
    dollars, rest = divmod(abs(cents), 100)
    return f"{_MINUS if cents < 0 else ''}${dollars:,}.{rest:02d}"


def rate_text(rate: Fraction) -> str:
    """A rate in dollars with all its decimals, at least two: 143/2 cents is "$0.715".

    Raises ValueError for a rate whose decimals never end; no card can hold one.
    """
    places = max(2, places_of(rate / 100))
    scaled = abs(rate) / 100 * 10**places
    if scaled.denominator != 1:
        raise ValueError(f"a rate of {rate} cents has no last decimal")
    dollars, rest = divmod(scaled.numerator, 10**places)
    return f"{_MINUS if rate < 0 else ''}${dollars:,}.{rest:0{places}d}"


def _dollars(text: str) -> Quantity | Unread:
    """A decimal number of dollars: no fractions, and no comma in place of the point."""
    bare = text.strip()
    sign = "-" if bare[:1] in ("-", _MINUS) else ""
    bare = bare.removeprefix("-").removeprefix(_MINUS).strip().removeprefix("$")
    found = read_number(sign + bare)
    if isinstance(found, Unread):
        return Unread(found.code, text, found.understood)
    digits = "".join(found.written.split(","))
    if not digits.replace(".", "", 1).isdecimal() or _places_typed(digits) != found.places:
        return Unread("not_a_number", text)
    return found


def _places_typed(digits: str) -> int:
    """How many decimals plain digits show: "12.50" shows 2, "1250" none."""
    return len(digits.partition(".")[2])
