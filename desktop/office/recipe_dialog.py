"""A recipe: what is in it, its allergens, the rule its cure falls under, ready to eat or not."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, NoteField, TextField
from desktop.language import LANGUAGES
from shared.carcass.anatomy import catalogue
from shared.carcass.anatomy import species as all_species
from shared.curing.nitrite import PRODUCTS
from shared.curing.recipe import Recipe
from shared.curing.recipe_text import (
    UnreadIngredient,
    decimal_text,
    ingredients_text,
    read_ingredients,
)

if TYPE_CHECKING:
    from typing import Literal

    from desktop.bench import Bench
    from shared.curing.nitrite import Product
    from shared.curing.recipe import Ready

NO_CURE = ""
ANY = ""


class RecipeDialog(FormDialog):
    """Keeps a recipe; one that stands already is replaced, its batches keep the old one."""

    def __init__(
        self, bench: "Bench", recipe: Recipe | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._recipe = recipe or Recipe(language=bench.words.language)
        self.name = TextField(self, required=True, most=80)
        self.finish: ChoiceField[str] = ChoiceField(self, required=True)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.language: ChoiceField[str] = ChoiceField(self, required=True)
        self.ingredients = NoteField(self, required=True, lines=7)
        self.looked: ChoiceField[bool] = ChoiceField(self, required=True)
        self.ready: ChoiceField[str] = ChoiceField(self, required=True)
        self.product: ChoiceField[str] = ChoiceField(self, required=True)
        self.strength = TextField(self, most=12)
        self.grid.add(self.name, span=2)
        for field in (self.finish, self.species):
            self.grid.add(field)
        self.grid.add(self.ingredients, span=2)
        for field in (self.looked, self.ready, self.product, self.strength, self.language):
            self.grid.add(field)
        self.retranslate()
        self._fill()

    def _fill(self) -> None:
        one = self._recipe
        self.name.set_value(one.name)
        self.finish.set_value(one.finish or None)
        self.species.set_value(one.species)
        self.language.set_value(one.language)
        self.ingredients.set_value(ingredients_text(one.ingredients))
        self.looked.set_value(one.allergens_known)
        self.ready.set_value(one.ready)
        self.product.set_value(one.product)
        if one.strength is not None:
            self.strength.set_value(decimal_text(one.strength * 100))

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Recipe"),
            self.tr(
                "Your own recipe, for labels and batches. It advises no cure: what goes in is by "
                "your plan and your inspector."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self._name_recipe()
        self._name_rules()

    def _name_recipe(self) -> None:
        words = self.bench.words
        self.name.set_label(self.tr("&Name"))
        self.finish.set_label(self.tr("For the &finish"))
        self.finish.set_choices([(code, words.name("pork", f"finish.{code}")) for code in _codes()])
        self.species.set_label(self.tr("Of which &animals"))
        self.species.set_choices(
            [
                (ANY, self.tr("all animals")),
                *((one, words.name(one, f"species.{one}")) for one in all_species()),
            ]
        )
        self.ingredients.set_label(
            self.tr("&Ingredients, one a line: 2 salt · 0.25 cure mix · whey powder (milk)")
        )

    def _name_rules(self) -> None:
        words = self.bench.words
        self.looked.set_label(self.tr("Allergen&s"))
        self.looked.set_choices(
            [
                (True, self.tr("looked at: all are in parentheses")),
                (False, self.tr("not looked at yet: no labels")),
            ]
        )
        self.ready.set_label(self.tr("&Ready to eat"))
        self.ready.set_choices(
            [
                ("", self.tr("neither cured nor smoked")),
                ("cook_before_eating", self.tr("cook before eating")),
                ("fully_cooked", self.tr("fully cooked")),
            ]
        )
        self.product.set_label(self.tr("Nitrite &checked as"))
        self.product.set_choices(
            [
                (NO_CURE, self.tr("no cure in it")),
                *((one, words.say(f"batches.product_{one}")) for one in PRODUCTS),
            ]
        )
        self.strength.set_label(self.tr("Nitrite in the cure mix, in &percent"))
        self.strength.hint(self.tr("as the packet says, 6.25"))
        self.language.set_label(self.tr("Lan&guage of the ingredients"))
        self.language.set_choices(list(LANGUAGES.items()))

    def attempt(self) -> str:
        found = read_ingredients(self.ingredients.text())
        if isinstance(found, UnreadIngredient):
            self.ingredients.complain(
                self.tr("Line {line} names no ingredient: {text}").format(
                    line=found.line, text=found.text
                )
            )
            return self.tr("Change that line.")
        strength = _strength(self.strength.text())
        if strength is None and self.strength.text().strip():
            self.strength.complain(self.tr("A percentage between 0 and 100, like 6.25."))
            return self.tr("Say the strength as the packet does.")
        made = Recipe(
            id=self._recipe.id,
            name=self.name.value() or "",
            finish=self.finish.value() or "",
            species=self.species.value() or ANY,
            language=self.language.value() or "en",
            ingredients=found,
            allergens_known=bool(self.looked.value()),
            product=_product(self.product.value()),
            strength=strength,
            ready=_ready(self.ready.value()),
        )
        return self._keep(made)

    def _keep(self, made: Recipe) -> str:
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            kept = work.recipes.save(made)
            if isinstance(kept, Recipe):
                work.commit()
                return ""
        if "ready_missing" in kept:
            self.ready.complain(self.tr("A cured product is one or the other."))
            return self.tr("Say whether it is cooked before eating.")
        return self.tr("The recipe needs a name and its ingredients.")


def _codes() -> list[str]:
    """Finishes that may hold a recipe: what is cured, smoked, seasoned or made into sausage."""
    named = ("seasoned", "marinated", "smoked", "links", "patties", "jerky")
    found = [one for species in all_species() for one in catalogue(species).finishes.values()]
    codes = [one.code for one in found if one.cured or one.code in named]
    return list(dict.fromkeys(codes))


def _strength(text: str) -> Fraction | None:
    """6.25 is 1/16 of the mix."""
    plain = text.strip().rstrip("%").strip()
    try:
        share = Fraction(plain) / 100
    except (ValueError, ZeroDivisionError):
        return None
    return share if 0 < share <= 1 else None


def _product(code: str | None) -> "Product | Literal['']":
    for one in PRODUCTS:
        if one == code:
            return one
    return ""


def _ready(code: str | None) -> "Ready":
    return "fully_cooked" if code == "fully_cooked" else "cook_before_eating" if code else ""
