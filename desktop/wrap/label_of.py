"""The label of a package, and in words what keeps one from being made."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from shared.carcass.anatomy import catalogue
from shared.marking.label import LabelFacts, LabelFinish, PackageLabel, package_label

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from desktop.wrap.wrapping import Wrapping
    from shared.marking.problems import MarkingProblem
    from shared.shop.packages import PackageMade

SEASONED = ("seasoned", "marinated")
# The shop's own answers for each finish are kept among its own names, under these keys.
INGREDIENTS = "recipe.{finish}.ingredients"
ALLERGENS = "recipe.{finish}.allergens"


def label_of(
    package: "PackageMade", wrapping: "Wrapping"
) -> "PackageLabel | tuple[MarkingProblem, ...]":
    """The label of a package of this order, or everything that keeps it from being made."""
    lot, shop = wrapping.lot, wrapping.shop
    finishes = _finishes(lot.species, package.finishes)
    asked = [one.code for one in finishes if one.cured or one.seasoned]
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
            ingredients=_ingredients(wrapping.recipes, asked),
            allergens=_allergens(wrapping.recipes, asked),
            stock=shop.stock,
            dpi=shop.dpi,
        )
    )


def _finishes(species: str, codes: "Sequence[str]") -> tuple[LabelFinish, ...]:
    """What a finish means for the label. Only "fully_cooked" counts as cooked: be careful."""
    known = catalogue(species).finishes
    found: list[LabelFinish] = []
    for code in codes:
        cured = code in known and known[code].cured
        smoked = "smoked" in code or code == "fully_cooked"
        cooked = code == "fully_cooked" if cured or smoked else None
        found.append(LabelFinish(code, cured, smoked, code in SEASONED, cooked))
    return tuple(found)


def _ingredients(recipes: "Mapping[str, str]", finishes: "Sequence[str]") -> tuple[str, ...]:
    lists = [recipes.get(INGREDIENTS.format(finish=one), "") for one in finishes]
    parts = [part.strip() for text in lists for part in text.split(",")]
    return tuple(part for part in parts if part) if all(lists) else ()


def _allergens(recipes: "Mapping[str, str]", finishes: "Sequence[str]") -> tuple[str, ...] | None:
    """Allergens of all finishes; "-" says there are none, nothing says it isn't known."""
    lists = [recipes.get(ALLERGENS.format(finish=one), "") for one in finishes]
    if not all(lists):
        return None
    parts = [part.strip() for text in lists for part in text.split(",")]
    return tuple(part for part in parts if part and part != "-")


def label_complaint(problems: "Sequence[MarkingProblem]") -> str:
    """Why there is no label, one sentence for each reason, and what would work."""
    said = [_sentence(one.code) for one in problems]
    return " ".join(dict.fromkeys(said))


def _sentence(code: str) -> str:
    say = QCoreApplication.translate
    office = "LabelProblem"
    match code:
        case "plant_missing":
            return say(office, "The label needs the shop's name: Office, Shop.")
        case "address_missing":
            return say(office, "The label needs the shop's address: Office, Shop.")
        case "owner_missing":
            return say(office, "A custom-exempt label needs its owner: name the share first.")
        case "ingredients_missing":
            return say(office, "Say what the cure or seasoning is made of: Office, Shop.")
        case "allergens_unknown":
            return say(office, "Say the cure's or seasoning's allergens: Office, Shop.")
        case "legend_missing" | "establishment_missing":
            return say(
                office,
                "An inspected label needs the plant's own approved legend; print it on the "
                "plant's approved stock.",
            )
        case "stock_too_small":
            return say(office, "NOT FOR SALE doesn't fit on this stock; choose a larger one.")
        case "unknown_stock" | "unknown_dpi" | "not_yet":
            return say(office, "The label stock set in the Office is not one known here.")
        case "lean_on_label":
            return say(office, "A lean figure can't stand on a label; name the product without it.")
        case "doesnt_fit":
            return say(office, "Not all the label must say fits on it; shorten the names.")
        case "ready_unknown":
            return say(office, "Say whether the finish is fully cooked.")
        case "net_missing" | "net_not_positive":
            return say(office, "A label needs a net weight above nothing.")
        case _:
            return say(office, "The label lacks something it must say.")
