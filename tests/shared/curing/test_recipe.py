"""What a recipe must say before it is kept and before a label is made from it."""

from fractions import Fraction

from shared.curing.recipe import Ingredient, Recipe, allergens, faults, in_order_of_weight

SALT = Ingredient("salt", Fraction(2))
MUSTARD = Ingredient("mustard flour", Fraction(1, 2), "mustard")
WHEY = Ingredient("whey powder", Fraction(3), "milk")


def test_the_heaviest_comes_first() -> None:
    assert in_order_of_weight((MUSTARD, SALT, WHEY)) == (WHEY, SALT, MUSTARD)


def test_the_shop_s_order_holds_where_a_weight_is_not_said() -> None:
    unsaid = Ingredient("pepper")
    assert in_order_of_weight((MUSTARD, unsaid, WHEY)) == (MUSTARD, unsaid, WHEY)


def test_allergens_are_unknown_until_somebody_has_looked() -> None:
    recipe = Recipe(name="Links", ingredients=(WHEY, SALT, WHEY, MUSTARD))
    assert allergens(recipe) is None
    looked = Recipe(name="Links", ingredients=recipe.ingredients, allergens_known=True)
    assert allergens(looked) == ("milk", "mustard")


def test_what_is_missing_is_named() -> None:
    assert faults(Recipe()) == ("name_missing", "no_ingredients")
    cured = Recipe(
        name="Bacon", ingredients=(SALT,), product="bacon_pumped", strength=Fraction(5, 4)
    )
    assert faults(cured) == ("strength_wrong", "ready_missing")
