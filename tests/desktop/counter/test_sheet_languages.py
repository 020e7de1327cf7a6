"""The block sheet's languages as the shop set them, and what its recipes hold."""

import pytest

from desktop.counter.release import known_allergens, sheet_words
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.curing.recipe import Ingredient, Recipe
from shared.shop.findings import SheetWords

MUSTARD = Recipe(
    name="Old mill",
    finish="seasoned",
    ingredients=(Ingredient("salt"), Ingredient("mustard seed", allergen="mustard")),
    allergens_known=True,
)


@pytest.mark.parametrize(
    ("spoken", "first", "second"),
    [("window", "es", None), ("en", "en", None), ("es", "es", None), ("both", "en", "es")],
)
def test_the_sheet_speaks_as_the_shop_set_it(
    spoken: SheetWords, first: str, second: str | None
) -> None:
    words, also = sheet_words(spoken, Words("es"))
    assert words.language == first
    assert (also.language if also else None) == second


def test_only_recipes_somebody_looked_at_are_told() -> None:
    known = catalogue("pork")
    assert known_allergens([MUSTARD], known, "en") == {"seasoned": ("mustard",)}
    unread = Recipe(name="x", finish="seasoned", ingredients=MUSTARD.ingredients)
    assert known_allergens([unread], known, "en") == {}
