"""What a package label must say, by regime, and why one can't be made.

Custom-exempt: the mark NOT FOR SALE in letters of at least 3/8 in (9 CFR 317.16; 316.16 for
carcasses), a named owner, and no retail price. Inspected and passed: the parts of 9 CFR 317.2(c)
(from memory) with the plant's own approved legend, and the safe-handling block of 317.2(l) on
what isn't ready to eat. Words are codes; the papers' catalogue says them. This isn't legal
advice: the inspector and the state have the last word.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from typing import Literal

from shared.carcass.carcass import Regime
from shared.marking.gs1 import ElementString, package_elements
from shared.marking.problems import MarkingProblem
from shared.marking.serial import package_serial
from shared.marking.stock import DPIS, STOCKS, Stock
from shared.units import Weight

Keep = Literal["keep_frozen", "keep_refrigerated"]
Ready = Literal["", "cook_before_eating", "fully_cooked"]
MOST_NUMBER = 999_999_999


@dataclass(frozen=True, slots=True)
class LabelFinish:
    """What was done to the product, as far as its label must say it.

    `fully_cooked` must be known of everything cured or smoked; None is not known.
    """

    code: str
    cured: bool = False
    smoked: bool = False
    seasoned: bool = False
    fully_cooked: bool | None = None


@dataclass(frozen=True, slots=True)
class LabelFacts:
    """Everything known of a package when its label is asked for.

    `product` is the name in words, `product_key` its key in the catalogue ("cut.pork_chop"); one
    of them must be there. `package_number` is the label number, never used again.
    `allergens` None is not known, () is none. `legend_artwork`: the plant's approved artwork is
    at hand. `marked_elsewhere`: the bag or a stamp carries NOT FOR SALE already.
    """

    regime: Regime
    species: str
    product_key: str = ""
    product: str = ""
    owner: str = ""
    order_number: int = 0
    package_number: int = 0
    net: Weight | None = None
    packed_on: date | None = None
    frozen: bool = True
    plant_name: str = ""
    plant_address: str = ""
    finishes: tuple[LabelFinish, ...] = ()
    ingredients: tuple[str, ...] = ()
    allergens: tuple[str, ...] | None = None
    establishment: str = ""
    legend_artwork: bool = False
    gtin: str = ""
    lot: str = ""
    retail_cents: int | None = None
    stock: str = "4x3"
    dpi: int = 203
    marked_elsewhere: bool = False


@dataclass(frozen=True, slots=True)
class PackageLabel:
    """A label that may be printed; the net weight is the scale's, never the plan's.

    A custom-exempt label never has a legend or establishment number, whatever the plant has.

    `required` are the codes of what must be on it, in the order it is read: "not_for_sale",
    "product", "owner", "order", "net_weight", "packed_on", "keep", "ready", "ingredients",
    "allergens", "safe_handling", "legend", "establishment", "plant", "serial".
    """

    regime: Regime
    species: str
    product_key: str
    product: str
    owner: str
    order_number: int
    package_number: int
    net: Weight
    packed_on: date
    keep: Keep
    plant_name: str
    plant_address: str
    not_for_sale: bool
    safe_handling: bool
    ready: Ready
    ingredients: tuple[str, ...]
    allergens: tuple[str, ...]
    legend: bool
    establishment: str
    serial: str
    gs1: ElementString | None
    retail_cents: int | None
    stock: Stock
    dpi: int
    required: tuple[str, ...]


def package_label(facts: LabelFacts) -> PackageLabel | tuple[MarkingProblem, ...]:
    """The label, or everything that keeps it from being made.

    A custom-exempt chop of 2.35 lb requires "not_for_sale", "product", "owner", "order",
    "net_weight", "packed_on", "keep", "plant" and "serial".
    """
    ready, gs1 = _ready(facts), _gs1(facts)
    problems = [*_faults(facts)]
    if ready is None:
        problems.append(MarkingProblem("ready_unknown", _finish_names(facts)))
    if isinstance(gs1, MarkingProblem):
        return (*problems, gs1)
    if problems or facts.net is None or facts.packed_on is None or ready is None:
        return tuple(problems)
    custom = facts.regime == "custom"
    safe_handling = not custom and ready != "fully_cooked"
    return PackageLabel(
        regime=facts.regime,
        species=facts.species,
        product_key=facts.product_key,
        product=facts.product.strip(),
        owner=facts.owner.strip(),
        order_number=facts.order_number,
        package_number=facts.package_number,
        net=facts.net,
        packed_on=facts.packed_on,
        keep="keep_frozen" if facts.frozen else "keep_refrigerated",
        plant_name=facts.plant_name.strip(),
        plant_address=facts.plant_address.strip(),
        not_for_sale=custom and not (STOCKS[facts.stock].small and facts.marked_elsewhere),
        safe_handling=safe_handling,
        ready=ready,
        ingredients=facts.ingredients,
        allergens=facts.allergens or (),
        legend=not custom,
        establishment="" if custom else facts.establishment.strip(),
        serial=package_serial(facts.order_number, facts.package_number),
        gs1=gs1,
        retail_cents=facts.retail_cents,
        stock=STOCKS[facts.stock],
        dpi=facts.dpi,
        required=tuple(_required(facts, safe_handling, ready)),
    )


def _required(facts: LabelFacts, safe_handling: bool, ready: Ready) -> Iterator[str]:
    custom = facts.regime == "custom"
    if STOCKS[facts.stock].small:
        yield from () if facts.marked_elsewhere else ("not_for_sale",)
        yield from ("product", "owner", "net_weight", "serial")
        return
    if custom:
        yield "not_for_sale"
    yield "product"
    if facts.owner.strip():
        yield "owner"
    yield from ("order", "net_weight", "packed_on", "keep")
    if ready:
        yield "ready"
    if facts.ingredients:
        yield "ingredients"
    if facts.allergens:
        yield "allergens"
    if safe_handling:
        yield "safe_handling"
    if not custom:
        yield from ("legend", "establishment")
    yield from ("plant", "serial")


def _faults(facts: LabelFacts) -> Iterator[MarkingProblem]:
    if not facts.product.strip() and not facts.product_key:
        yield MarkingProblem("product_missing")
    if "%" in facts.product:
        yield MarkingProblem("lean_on_label", {"product": facts.product})
    if facts.net is None:
        yield MarkingProblem("net_missing")
    elif facts.net.count <= 0:
        yield MarkingProblem("net_not_positive", {"net": facts.net.text()})
    if facts.packed_on is None:
        yield MarkingProblem("packed_on_missing")
    if not facts.plant_name.strip():
        yield MarkingProblem("plant_missing")
    if not facts.plant_address.strip():
        yield MarkingProblem("address_missing")
    if not all(0 < one <= MOST_NUMBER for one in (facts.order_number, facts.package_number)):
        yield MarkingProblem("numbers_missing")
    yield from _recipe_faults(facts)
    yield from _custom_faults(facts) if facts.regime == "custom" else _inspected_faults(facts)
    yield from _stock_faults(facts)


def _recipe_faults(facts: LabelFacts) -> Iterator[MarkingProblem]:
    """Everything seasoned or cured names its ingredients and allergens."""
    if not any(one.seasoned or one.cured for one in facts.finishes):
        return
    if not any(one.strip() for one in facts.ingredients):
        yield MarkingProblem("ingredients_missing", _finish_names(facts))
    if facts.allergens is None:
        yield MarkingProblem("allergens_unknown", _finish_names(facts))


def _custom_faults(facts: LabelFacts) -> Iterator[MarkingProblem]:
    if not facts.owner.strip():
        yield MarkingProblem("owner_missing")
    if facts.retail_cents is not None:
        yield MarkingProblem("price_on_custom")


def _inspected_faults(facts: LabelFacts) -> Iterator[MarkingProblem]:
    if not facts.legend_artwork:
        yield MarkingProblem("legend_missing")
    if not facts.establishment.strip():
        yield MarkingProblem("establishment_missing")


def _stock_faults(facts: LabelFacts) -> Iterator[MarkingProblem]:
    stock = STOCKS.get(facts.stock)
    if stock is None:
        yield MarkingProblem("unknown_stock", {"stock": facts.stock})
    elif stock.small and (facts.regime != "custom" or _says_more(facts)):
        yield MarkingProblem("stock_too_small", {"stock": facts.stock})
    if facts.dpi not in DPIS:
        yield MarkingProblem("unknown_dpi", {"dpi": str(facts.dpi)})


def _says_more(facts: LabelFacts) -> bool:
    """Whether the package must say more than small stock holds: cured, smoked or seasoned goods."""
    return any(one.cured or one.smoked or one.seasoned for one in facts.finishes)


def _ready(facts: LabelFacts) -> Ready | None:
    """Nothing for what is neither cured nor smoked; None where it must be known and isn't."""
    done = [one.fully_cooked for one in facts.finishes if one.cured or one.smoked]
    if not done:
        return ""
    if True in done:
        return "fully_cooked"
    return None if None in done else "cook_before_eating"


def _gs1(facts: LabelFacts) -> ElementString | MarkingProblem | None:
    if not facts.gtin or facts.net is None or facts.packed_on is None or facts.net.count <= 0:
        return None
    return package_elements(
        facts.gtin,
        facts.net,
        facts.packed_on,
        lot=facts.lot,
        serial=f"{facts.order_number}-{facts.package_number}",
    )


def _finish_names(facts: LabelFacts) -> dict[str, str]:
    return {"finishes": " ".join(one.code for one in facts.finishes)}
