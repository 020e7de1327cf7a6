"""The shop's recipes; one that was kept is never changed, only replaced."""

import json
from fractions import Fraction
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import Connection, Row, false, select, update

from db.desk import Desk
from db.tables.batches import Recipes
from shared.curing.recipe import Ingredient, Ready, Recipe, RecipeFault, faults

if TYPE_CHECKING:
    from shared.curing.nitrite import Product


class RecipeBook:
    """`work.recipes`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def save(self, recipe: Recipe) -> Recipe | tuple[RecipeFault, ...]:
        """Keep a recipe. One that changed is a new one; the old stays for its batches, retired."""
        wrong = faults(recipe)
        if wrong:
            return wrong
        desk = self._desk
        desk.must_write()
        if recipe.id:
            self._retire(recipe.id)
        new = desk.insert(
            Recipes,
            {
                "name": recipe.name.strip(),
                "finish": recipe.finish,
                "species": recipe.species,
                "language": recipe.language,
                "ingredients": _text(recipe.ingredients),
                "allergens_known": recipe.allergens_known,
                "product": recipe.product,
                "strength": recipe.strength,
                "ready": recipe.ready,
                "retired": False,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("recipe", new, "saved", name=recipe.name, before=recipe.id or None)
        found = self.get(new)
        assert found is not None
        return found

    def retire(self, recipe_id: int, reason: str) -> None:
        """The recipe is used no more; batches made by it keep it."""
        self._retire(recipe_id)
        self._desk.record("recipe", recipe_id, "retired", reason)

    def _retire(self, recipe_id: int) -> None:
        self._desk.must_write()
        self._desk.connection.execute(
            update(Recipes).where(Recipes.id == recipe_id).values(retired=True)
        )

    def get(self, recipe_id: int) -> Recipe | None:
        """The recipe, or None."""
        row = self._desk.connection.execute(
            select(Recipes).where(Recipes.id == recipe_id)
        ).one_or_none()
        return None if row is None else _recipe(row)

    def all(self, *, retired: bool = False) -> tuple[Recipe, ...]:
        """The recipes in use, by name; with the retired ones if asked."""
        found = select(Recipes).order_by(Recipes.name, Recipes.id)
        if not retired:
            found = found.where(Recipes.retired == false())
        return tuple(_recipe(row) for row in self._desk.connection.execute(found))


def recipes_in_use(connection: Connection) -> tuple[Recipe, ...]:
    """Every recipe that isn't retired; one query."""
    found = select(Recipes).where(Recipes.retired == false()).order_by(Recipes.id)
    return tuple(_recipe(row) for row in connection.execute(found))


def _recipe(row: Row[*tuple[Any, ...]]) -> Recipe:
    return Recipe(
        id=row.id,
        name=row.name,
        finish=row.finish,
        species=row.species,
        language=row.language,
        ingredients=_ingredients(row.ingredients),
        allergens_known=row.allergens_known,
        product=cast("Product", row.product),
        strength=row.strength,
        ready=cast("Ready", row.ready),
        retired=row.retired,
    )


def _text(ingredients: tuple[Ingredient, ...]) -> str:
    rows = [
        [one.name, None if one.per_hundred is None else str(one.per_hundred), one.allergen]
        for one in ingredients
    ]
    return json.dumps(rows, ensure_ascii=False)


def _ingredients(text: str) -> tuple[Ingredient, ...]:
    rows: list[tuple[str, str | None, str]] = json.loads(text)
    return tuple(
        Ingredient(name, None if weight is None else Fraction(weight), allergen)
        for name, weight, allergen in rows
    )
