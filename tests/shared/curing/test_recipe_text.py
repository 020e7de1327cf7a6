"""Ingredients as the shop types them."""

from fractions import Fraction

import pytest

from shared.curing.recipe import Ingredient
from shared.curing.recipe_text import UnreadIngredient, ingredients_text, read_ingredients

TYPED = "2 salt\n\n .25  cure mix\nwhey powder (milk)\n1.5 brown sugar"
READ = (
    Ingredient("salt", Fraction(2)),
    Ingredient("cure mix", Fraction(1, 4)),
    Ingredient("whey powder", None, "milk"),
    Ingredient("brown sugar", Fraction(3, 2)),
)


def test_a_line_an_ingredient() -> None:
    assert read_ingredients(TYPED) == READ


def test_what_is_shown_reads_back() -> None:
    assert ingredients_text(READ) == "2 salt\n0.25 cure mix\nwhey powder (milk)\n1.5 brown sugar"
    assert read_ingredients(ingredients_text(READ)) == READ


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("salt\n2", 2, "2"),
        ("salt (milk", 1, "salt (milk"),
        ("()", 1, "()"),
        ("salt\n1 (soy)", 2, "1 (soy)"),
    ],
)
def test_a_line_that_names_nothing_is_told_by_its_number(text: str, line: int, words: str) -> None:
    assert read_ingredients(text) == UnreadIngredient(line, words)
