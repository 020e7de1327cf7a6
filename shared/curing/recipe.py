"""The shop's own recipe: what is in it, in order of weight, its allergens, and its cure."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.curing.nitrite import Product

Ready = Literal["", "cook_before_eating", "fully_cooked"]
RecipeFault = Literal["name_missing", "no_ingredients", "strength_wrong", "ready_missing"]
# The allergens that a label must name: Food Allergen Labeling and Consumer Protection Act and the
# FASTER Act (from memory); USDA asks for the same under its own rules.
ALLERGENS = (
    "milk",
    "egg",
    "fish",
    "shellfish",
    "tree_nuts",
    "peanuts",
    "wheat",
    "soy",
    "sesame",
)


@dataclass(frozen=True, slots=True)
class Ingredient:
    """One ingredient as the label names it; `per_hundred` is its weight on 100 of meat.

    `allergen` is one of ALLERGENS, the shop's own word for another, or "".
    """

    name: str
    per_hundred: Fraction | None = None
    allergen: str = ""


@dataclass(frozen=True, slots=True)
class Recipe:
    """A recipe of one finish; species "" is for all. Once used it is replaced, never changed.

    `product` is the nitrite rule it falls under, "" where there is no cure in it; `strength` the
    share of sodium nitrite in the cure mix, as the packet says. `allergens_known` says that
    somebody has looked: without it no label is made.
    """

    id: int = 0
    name: str = ""
    finish: str = ""
    species: str = ""
    language: str = "en"
    ingredients: tuple[Ingredient, ...] = ()
    allergens_known: bool = False
    product: Product | Literal[""] = ""
    strength: Fraction | None = None
    ready: Ready = ""
    retired: bool = False


def faults(recipe: Recipe) -> tuple[RecipeFault, ...]:
    """What keeps a recipe from being kept; a cured one must say whether it is ready to eat."""
    found: list[RecipeFault] = []
    if not recipe.name.strip():
        found.append("name_missing")
    if not recipe.ingredients:
        found.append("no_ingredients")
    if recipe.strength is not None and not 0 < recipe.strength <= 1:
        found.append("strength_wrong")
    if recipe.product and not recipe.ready:
        found.append("ready_missing")
    return tuple(found)


def in_order_of_weight(ingredients: Sequence[Ingredient]) -> tuple[Ingredient, ...]:
    """As a label must list them, the heaviest first (9 CFR 317.2(f), from memory).

    Those whose weight isn't said stay where they stand: with any of them the shop's order holds.
    """
    if any(one.per_hundred is None for one in ingredients):
        return tuple(ingredients)
    return tuple(sorted(ingredients, key=lambda one: -(one.per_hundred or 0)))


def allergens(recipe: Recipe) -> tuple[str, ...] | None:
    """Each allergen once, in the order of the ingredients; None where nobody has looked."""
    if not recipe.allergens_known:
        return None
    return tuple(dict.fromkeys(one.allergen for one in recipe.ingredients if one.allergen))


def recipe_for(
    recipes: Sequence[Recipe], finish: str, species: str, language: str
) -> Recipe | None:
    """The recipe a finish of this species is made by; one of the language comes first."""
    fitting = [
        one
        for one in recipes
        if one.finish == finish and one.species in ("", species) and not one.retired
    ]
    fitting.sort(key=lambda one: (one.species != species, one.language != language, one.id))
    return fitting[0] if fitting else None
