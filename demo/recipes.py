"""What the invented plant says its cures and seasonings are made of; no recipe to work by."""

from fractions import Fraction

from shared.curing.recipe import Ingredient, Recipe

SEASONING = (
    Ingredient("pork", Fraction(100)),
    Ingredient("salt", Fraction(2)),
    Ingredient("black pepper", Fraction(1, 2)),
    Ingredient("mustard flour", Fraction(1, 4), "mustard"),
    Ingredient("sage", Fraction(1, 4)),
)
CURE = (
    Ingredient("pork"),
    Ingredient("water"),
    Ingredient("salt"),
    Ingredient("sugar"),
    Ingredient("sodium nitrite"),
)
RUB = tuple(one for one in CURE if one.name != "water")
RECIPES = (
    Recipe(
        name="House bacon and ham",
        finish="cured_smoked",
        ingredients=CURE,
        allergens_known=True,
        product="bacon_pumped",
        strength=Fraction(1, 16),
        ready="cook_before_eating",
    ),
    Recipe(
        name="Dry-cured bacon",
        finish="cured_smoked",
        ingredients=RUB,
        allergens_known=True,
        product="bacon_dry",
        strength=Fraction(1, 16),
        ready="cook_before_eating",
    ),
    Recipe(
        name="Brined ham",
        finish="cured",
        ingredients=CURE,
        allergens_known=True,
        product="immersed",
        strength=Fraction(1, 16),
        ready="cook_before_eating",
    ),
    Recipe(
        name="Farmhouse sausage",
        finish="seasoned",
        ingredients=SEASONING,
        allergens_known=True,
    ),
)
