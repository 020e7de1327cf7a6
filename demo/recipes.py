"""What the invented plant says its cures and seasonings are made of; no recipe to work by."""

RECIPES = {
    "en": {
        "recipe.cured_smoked.ingredients": "pork, water, salt, sugar, sodium nitrite",
        "recipe.cured_smoked.allergens": "-",
        "recipe.cured.ingredients": "pork, water, salt, sugar, sodium nitrite",
        "recipe.cured.allergens": "-",
        "recipe.seasoned.ingredients": "pork, salt, black pepper, sage, mustard flour",
        "recipe.seasoned.allergens": "mustard",
    },
    "es": {
        "recipe.cured_smoked.ingredients": "cerdo, agua, sal, azúcar, nitrito de sodio",
        "recipe.cured_smoked.allergens": "-",
        "recipe.cured.ingredients": "cerdo, agua, sal, azúcar, nitrito de sodio",
        "recipe.cured.allergens": "-",
        "recipe.seasoned.ingredients": "cerdo, sal, pimienta negra, salvia, harina de mostaza",
        "recipe.seasoned.allergens": "mostaza",
    },
}
