"""A recipe's ingredients as the shop types them: one a line, its weight on 100 before it."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from shared.curing.recipe import Ingredient

_LINE = re.compile(r"(?:(\d+(?:\.\d+)?|\.\d+)\s+)?([^()]*?)\s*(?:\(([^()]*)\))?")


@dataclass(frozen=True, slots=True)
class UnreadIngredient:
    """A line that can't be read: its number, counted from 1, and what stands there."""

    line: int
    text: str


def read_ingredients(text: str) -> tuple[Ingredient, ...] | UnreadIngredient:
    """The ingredients; a weight on 100 of meat may come first, an allergen last in parentheses.

    "2 salt", "0.25 cure mix" and "whey powder (milk)" are three ingredients: 2 and 1/4 on 100,
    and one whose weight isn't said and which holds milk. Empty lines are left out.
    """
    found: list[Ingredient] = []
    for number, line in enumerate(text.splitlines(), start=1):
        words = " ".join(line.split())
        if not words:
            continue
        read = _LINE.fullmatch(words)
        if read is None or not read[2] or not any(letter.isalpha() for letter in read[2]):
            return UnreadIngredient(number, words)
        weight = Fraction(read[1]) if read[1] else None
        found.append(Ingredient(read[2], weight, (read[3] or "").strip()))
    return tuple(found)


def ingredients_text(ingredients: Iterable[Ingredient]) -> str:
    """The same again, a line each; reading it gives the same ingredients."""
    return "\n".join(_line(one) for one in ingredients)


def _line(one: Ingredient) -> str:
    weight = "" if one.per_hundred is None else f"{decimal_text(one.per_hundred)} "
    return f"{weight}{one.name}{f' ({one.allergen})' if one.allergen else ''}"


def decimal_text(exact: Fraction) -> str:
    """A figure as it was typed; it was read from decimals and so ends: 1/4 is 0.25."""
    whole, rest = divmod(exact, 1)
    digits = ""
    while rest and len(digits) < 9:
        digit, rest = divmod(rest * 10, 1)
        digits += str(digit)
    return f"{whole}.{digits}" if digits else str(whole)
