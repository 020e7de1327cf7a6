"""What a label must say, by regime: 9 CFR 316.16, 317.16 (custom), 317.2 (inspected)."""

from dataclasses import replace
from datetime import date

import pytest

from shared.marking.label import LabelFacts, LabelFinish, PackageLabel, package_label
from shared.marking.problems import MarkingProblem
from shared.units import Weight

CUSTOM = LabelFacts(
    regime="custom",
    species="pork",
    product_key="cut.pork_chop",
    owner="Jørgen & Łucja <O'Neil>",
    order_number=1042,
    package_number=7,
    net=Weight(235, "lb", -2),
    packed_on=date(2026, 11, 25),
    plant_name="Crooked Creek Meats",
    plant_address="12 Mill Road, Harlan",
)
INSPECTED = replace(
    CUSTOM, regime="inspected", owner="", legend_artwork=True, establishment="99999"
)
HAM = LabelFinish("smoked", cured=True, smoked=True, fully_cooked=False)
CURED = replace(
    CUSTOM,
    finishes=(HAM,),
    ingredients=("pork", "water", "salt", "sugar", "sodium nitrite"),
    allergens=(),
)


def good(facts: LabelFacts) -> PackageLabel:
    found = package_label(facts)
    assert isinstance(found, PackageLabel), found
    return found


def codes(facts: LabelFacts) -> list[str]:
    found = package_label(facts)
    assert not isinstance(found, PackageLabel)
    return [one.code for one in found]


def test_a_custom_package_is_marked_and_has_its_owner() -> None:
    """9 CFR 317.16: NOT FOR SALE; no safe-handling block, legend or price of the inspected."""
    label = good(CUSTOM)
    assert label.required == (
        "not_for_sale", "product", "owner", "order", "net_weight", "packed_on", "keep", "plant",
        "serial",
    )  # fmt: skip
    assert (label.not_for_sale, label.safe_handling, label.legend) == (True, False, False)
    assert (label.keep, label.ready, label.serial) == ("keep_frozen", "", "1042-7-7")
    assert (label.owner, label.net.text()) == ("Jørgen & Łucja <O'Neil>", "2.35 lb")


def test_a_plant_with_a_grant_still_prints_no_legend_on_custom_goods() -> None:
    label = good(replace(CUSTOM, legend_artwork=True, establishment="99999"))
    assert (label.legend, label.establishment) == (False, "")
    assert not {"legend", "establishment"} & set(label.required)


def test_an_inspected_raw_package_has_the_safe_handling_block() -> None:
    """9 CFR 317.2(l): on not-ready-to-eat product that was inspected and passed."""
    label = good(INSPECTED)
    assert (label.not_for_sale, label.safe_handling, label.legend) == (False, True, True)
    assert {"safe_handling", "legend", "establishment"} <= set(label.required)
    assert not {"not_for_sale", "owner"} & set(label.required)


@pytest.mark.parametrize(
    ("cooked", "ready", "handling"),
    [(True, "fully_cooked", False), (False, "cook_before_eating", True)],
)
def test_smoked_goods_say_whether_they_are_cooked(cooked: bool, ready: str, handling: bool) -> None:
    finish = replace(HAM, fully_cooked=cooked)
    recipe = CURED.ingredients
    label = good(replace(INSPECTED, finishes=(finish,), ingredients=recipe, allergens=("soy",)))
    assert (label.ready, label.safe_handling) == (ready, handling)
    assert {"ready", "ingredients", "allergens"} <= set(label.required)
    custom = good(replace(CURED, finishes=(finish,)))
    assert (custom.ready, custom.safe_handling) == (ready, False)
    assert "allergens" not in custom.required


def test_what_isnt_known_of_smoked_goods_stops_the_label() -> None:
    assert codes(replace(CURED, finishes=(replace(HAM, fully_cooked=None),))) == ["ready_unknown"]
    smoked_after = (
        replace(HAM, fully_cooked=None),
        LabelFinish("hot", smoked=True, fully_cooked=True),
    )
    assert good(replace(CURED, finishes=smoked_after)).ready == "fully_cooked"


def test_seasoned_goods_name_ingredients_and_allergens() -> None:
    links = replace(CUSTOM, finishes=(LabelFinish("breakfast", seasoned=True),))
    assert codes(links) == ["ingredients_missing", "allergens_unknown"]
    label = good(replace(links, ingredients=("pork", "sage"), allergens=("mustard",)))
    assert (label.ready, label.allergens) == ("", ("mustard",))
    assert good(replace(CUSTOM, finishes=(LabelFinish("tied"),))).ingredients == ()


@pytest.mark.parametrize(
    ("facts", "code"),
    [
        (replace(CUSTOM, owner=" "), "owner_missing"),
        (replace(CUSTOM, net=None), "net_missing"),
        (replace(CUSTOM, net=Weight(0, "lb")), "net_not_positive"),
        (replace(CUSTOM, net=Weight(-1, "lb"), gtin="98898765432106"), "net_not_positive"),
        (replace(CUSTOM, packed_on=None), "packed_on_missing"),
        (replace(CUSTOM, plant_name=""), "plant_missing"),
        (replace(CUSTOM, plant_address=""), "address_missing"),
        (replace(CUSTOM, product_key="", product=" "), "product_missing"),
        (replace(CUSTOM, package_number=0), "numbers_missing"),
        (replace(CUSTOM, order_number=10**9), "numbers_missing"),
        (replace(CUSTOM, retail_cents=899), "price_on_custom"),
        (replace(CUSTOM, product="Ground beef 80 %"), "lean_on_label"),
        (replace(CUSTOM, stock="9x9"), "unknown_stock"),
        (replace(CUSTOM, dpi=72), "unknown_dpi"),
        (replace(CUSTOM, gtin="98898765432107"), "check_digit"),
        (replace(INSPECTED, legend_artwork=False), "legend_missing"),
        (replace(INSPECTED, establishment=""), "establishment_missing"),
    ],
)
def test_a_label_that_lacks_something_isnt_made(facts: LabelFacts, code: str) -> None:
    assert codes(facts) == [code]


def test_everything_missing_is_told_at_once() -> None:
    assert codes(LabelFacts("custom", "pork")) == [
        "product_missing", "net_missing", "packed_on_missing", "plant_missing",
        "address_missing", "numbers_missing", "owner_missing",
    ]  # fmt: skip


def test_a_small_label_holds_the_mark_the_names_the_weight_and_a_code() -> None:
    label = good(replace(CUSTOM, stock="2.25x1.25"))
    assert label.required == ("not_for_sale", "product", "owner", "net_weight", "serial")
    beside = good(replace(CUSTOM, stock="2.25x1.25", marked_elsewhere=True))
    assert beside.required == ("product", "owner", "net_weight", "serial")
    assert not beside.not_for_sale


def test_small_stock_is_refused_where_the_package_must_say_more() -> None:
    smoked = LabelFinish("smoked", smoked=True, fully_cooked=True)
    for facts in (INSPECTED, replace(CUSTOM, finishes=(smoked,))):
        found = package_label(replace(facts, stock="2.25x1.25", ingredients=("pork",)))
        assert isinstance(found, tuple)
        assert "stock_too_small" in {one.code for one in found}


def test_an_inspected_package_may_have_a_price_and_a_gs1_code() -> None:
    label = good(replace(INSPECTED, retail_cents=899, gtin="98898765432106", lot="L31"))
    assert label.retail_cents == 899
    assert label.gs1 is not None
    assert label.gs1.human == "(01)98898765432106(3202)000235(13)261125(10)L31(21)1042-7"
    assert good(INSPECTED).gs1 is None


def test_refrigerated_goods_say_so() -> None:
    assert good(replace(CUSTOM, frozen=False)).keep == "keep_refrigerated"
    assert isinstance(package_label(replace(CUSTOM, owner="")), tuple)
    assert package_label(replace(CUSTOM, owner="")) == (MarkingProblem("owner_missing"),)
