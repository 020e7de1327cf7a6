"""The label of a package, and in words what keeps one from being made."""

from typing import TYPE_CHECKING, TypedDict

from PySide6.QtCore import QCoreApplication

from shared.carcass.anatomy import catalogue
from shared.curing.recipe import allergens, in_order_of_weight, recipe_for
from shared.marking.label import LabelFacts, LabelFinish, PackageLabel, package_label

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from desktop.wrap.wrapping import Wrapping
    from shared.curing.recipe import Recipe
    from shared.marking.problems import MarkingProblem
    from shared.shop.packages import PackageMade

SEASONED = ("seasoned", "marinated")


def label_of(
    package: "PackageMade", wrapping: "Wrapping"
) -> "PackageLabel | tuple[MarkingProblem, ...]":
    """The label of a package of this order, or everything that keeps it from being made."""
    lot, shop = wrapping.lot, wrapping.shop
    made_by = {
        code: recipe_for(wrapping.recipes, code, lot.species, shop.language)
        for code in package.finishes
    }
    finishes = _finishes(lot.species, made_by)
    asked = [made_by[one.code] for one in finishes if one.cured or one.seasoned]
    return package_label(
        LabelFacts(
            regime=lot.regime,
            species=lot.species,
            product_key=f"cut.{package.cut}",
            product=package.product,
            owner=package.owner,
            order_number=wrapping.order.number,
            package_number=package.label_number,
            net=package.net,
            packed_on=package.made_at.astimezone().date(),
            plant_name=shop.name,
            plant_address=shop.address,
            finishes=finishes,
            ingredients=_ingredients(asked),
            allergens=_allergens(asked),
            frozen=wrapping.marks.keep == "keep_frozen",
            stock=shop.stock,
            dpi=shop.dpi,
            **_inspected(package, wrapping),
        )
    )


class _Inspected(TypedDict, total=False):
    establishment: str
    legend_artwork: bool
    gtin: str
    lot: str


def _inspected(package: "PackageMade", wrapping: "Wrapping") -> _Inspected:
    """The plant's own marks, on inspected goods only: custom-exempt meat is nobody's to sell."""
    lot, marks = wrapping.lot, wrapping.marks
    if lot.regime == "custom":
        return {}
    return {
        "establishment": marks.establishment,
        "legend_artwork": marks.has_legend,
        "gtin": marks.gtins.get((lot.species, package.cut), ""),
        "lot": str(lot.number),
    }


def _finishes(species: str, made_by: "Mapping[str, Recipe | None]") -> tuple[LabelFinish, ...]:
    """What a finish means for the label. Only what is said to be cooked counts as cooked."""
    known = catalogue(species).finishes
    found: list[LabelFinish] = []
    for code, recipe in made_by.items():
        cured = code in known and known[code].cured
        smoked = "smoked" in code or code == "fully_cooked"
        said = code == "fully_cooked" or (recipe is not None and recipe.ready == "fully_cooked")
        cooked = said if cured or smoked else None
        found.append(LabelFinish(code, cured, smoked, code in SEASONED, cooked))
    return tuple(found)


def _ingredients(made_by: "Sequence[Recipe | None]") -> tuple[str, ...]:
    """Everything that is in it, each recipe's heaviest first; nothing where one isn't known."""
    named: list[str] = []
    for one in made_by:
        if one is None:
            return ()
        named += [part.name for part in in_order_of_weight(one.ingredients)]
    return tuple(dict.fromkeys(named))


def _allergens(made_by: "Sequence[Recipe | None]") -> tuple[str, ...] | None:
    """Allergens of all recipes; None where somebody has yet to look."""
    named: list[str] = []
    for one in made_by:
        known = None if one is None else allergens(one)
        if known is None:
            return None
        named += known
    return tuple(dict.fromkeys(named))


def label_complaint(problems: "Sequence[MarkingProblem]") -> str:
    """Why there is no label, one sentence for each reason, and what would work."""
    said = [
        _fits_on(one.data["stocks"]) if one.data.get("stocks") else _sentence(one.code)
        for one in problems
    ]
    return " ".join(dict.fromkeys(said))


def _fits_on(stocks: str) -> str:
    """Not on this stock, but on those: "4 × 3 in or 4 × 6 in"."""
    translate = QCoreApplication.translate
    named = [f"{one.replace('x', ' × ')} in" for one in stocks.split(",")]
    either = translate("Label", " or ").join(named)
    return translate(
        "Label",
        "Not all the label must say fits on this stock; it fits on {stocks} (Office, Shop).",
    ).format(stocks=either)


def _sentence(code: str) -> str:
    translate = QCoreApplication.translate
    match code:
        case "plant_missing":
            return translate("Label", "The label needs the shop's name: Office, Shop.")
        case "address_missing":
            return translate("Label", "The label needs the shop's address: Office, Shop.")
        case "owner_missing":
            return translate(
                "Label", "A custom-exempt label needs its owner: name the share first."
            )
        case "ingredients_missing":
            return translate("Label", "Keep a recipe for the cure or seasoning: Office, Recipes.")
        case "allergens_unknown":
            return translate("Label", "Say the recipe's allergens: Office, Recipes.")
        case "legend_missing":
            return translate(
                "Label",
                "An inspected label needs the plant's approved legend: Office, Shop, Marks.",
            )
        case "establishment_missing":
            return translate(
                "Label", "An inspected label needs the establishment's number: Office, Shop, Marks."
            )
        case _:
            return _of_the_product(code)


def _of_the_product(code: str) -> str:
    translate = QCoreApplication.translate
    match code:
        case "not_variable" | "length" | "check_digit" | "characters":
            return translate("Label", "The product's GTIN can't be used: Office, Shop, Marks.")
        case "stock_too_small":
            return translate("Label", "This stock holds too little for it; choose a larger one.")
        case "unknown_stock" | "unknown_dpi":
            return translate("Label", "The label stock set in the Office is not one known here.")
        case "lean_on_label":
            return translate(
                "Label", "A lean figure can't stand on a label; name the product without it."
            )
        case "doesnt_fit":
            return translate(
                "Label",
                "Not all the label must say fits on it; choose larger stock (Office, Shop).",
            )
        case "ready_unknown":
            return translate("Label", "Say whether the finish is fully cooked.")
        case "net_missing" | "net_not_positive":
            return translate("Label", "A label needs a net weight above nothing.")
        case _:
            return translate("Label", "The label lacks something it must say.")
