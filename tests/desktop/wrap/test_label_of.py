"""Labels at the Wrap: what stands on one, and what keeps one from being printed."""

from dataclasses import replace
from io import BytesIO

from pypdf import PdfReader
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.recipe_dialog import RecipeDialog
from desktop.wrap.label_of import label_complaint, label_of
from desktop.wrap.papers import counts_pdf, labels_pdf
from desktop.wrap.wrapping import Wrapping, read_wrapping
from shared.marking.label import PackageLabel
from shared.marking.plant_marks import PlantMarks
from shared.shop.packages import NewPackage, PackageMade
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.desktop.wrap.orders import order_on_the_table


def weighed_in(store: Store, signed: SignedOn, bench: Bench, at: int) -> Wrapping:
    order = order_on_the_table(store, signed)
    before = read_wrapping(store, order.id, bench.words)
    assert before is not None
    line = before.lines[at]
    with store.work(signed.person, signed.station) as work:
        made = work.packages.add(
            NewPackage(
                order.id,
                line.line,
                line.cut,
                line.product,
                Weight.from_pounds("18.50"),
                finishes=line.finishes,
            )
        )
        assert isinstance(made, PackageMade)
        work.commit()
    found = read_wrapping(store, order.id, bench.words)
    assert found is not None
    return found


def text_of(pdf: object) -> str:
    assert isinstance(pdf, bytes)
    pages = PdfReader(BytesIO(pdf)).pages
    return " ".join("\n".join(page.extract_text() for page in pages).split())


def test_a_custom_exempt_label_says_what_it_must(
    store: Store, signed: SignedOn, bench: Bench
) -> None:
    # 9 CFR 316.16 and 317.16: custom-exempt product is marked NOT FOR SALE.
    wrapping = weighed_in(store, signed, bench, 0)
    label = label_of(wrapping.packages[0], wrapping)
    assert isinstance(label, PackageLabel)
    text = text_of(labels_pdf((label,), bench.words, wrapping.marks))
    for part in ("NOT FOR SALE", "Whole ham", "Anna Berg", "18.50", "Oak Lane Meats"):
        assert part.casefold() in text.casefold()


def test_bacon_gets_its_label_once_the_cure_is_known(
    qtbot: QtBot, store: Store, signed: SignedOn, bench: Bench
) -> None:
    wrapping = weighed_in(store, signed, bench, 1)
    problems = label_of(wrapping.packages[0], wrapping)
    assert isinstance(problems, tuple)
    assert {one.code for one in problems} == {"ingredients_missing", "allergens_unknown"}
    assert "Office, Recipes" in label_complaint(problems)
    dialog = RecipeDialog(bench)
    qtbot.addWidget(dialog)
    dialog.name.set_value("House bacon")
    dialog.finish.set_value("cured_smoked")
    dialog.ingredients.set_value("water\nsalt\nsugar\nsodium nitrite")
    dialog.looked.set_value(True)
    dialog.ready.set_value("cook_before_eating")
    dialog.try_it()
    again = read_wrapping(store, wrapping.order.id, bench.words)
    assert again is not None
    label = label_of(again.packages[0], again)
    assert isinstance(label, PackageLabel)
    assert label.allergens == ()
    assert label.ready == "cook_before_eating"
    assert "sodium nitrite" in text_of(labels_pdf((label,), bench.words, wrapping.marks))


def test_the_counts_paper_has_the_order_and_its_owner(
    store: Store, signed: SignedOn, bench: Bench
) -> None:
    wrapping = weighed_in(store, signed, bench, 0)
    text = text_of(counts_pdf(wrapping, bench.now(), bench.words))
    assert "Anna Berg" in text
    assert "18.5" in text


def inspected(store: Store, signed: SignedOn, bench: Bench) -> Wrapping:
    """Anna's ham of an animal that the inspector passed."""
    wrapping = weighed_in(store, signed, bench, 0)
    return replace(wrapping, lot=replace(wrapping.lot, regime="inspected"))


def test_an_inspected_label_waits_for_the_plants_marks(
    store: Store, signed: SignedOn, bench: Bench
) -> None:
    wrapping = inspected(store, signed, bench)
    problems = label_of(wrapping.packages[0], wrapping)
    assert isinstance(problems, tuple)
    assert [one.code for one in problems] == ["legend_missing", "establishment_missing"]
    assert label_complaint(problems).count("Office, Shop, Marks") == 2


def test_with_them_it_bears_number_legend_and_gs1_code(
    store: Store, signed: SignedOn, bench: Bench
) -> None:
    wrapping = inspected(store, signed, bench)
    gtins = {("pork", "whole_ham"): "90614141000015"}
    marks = PlantMarks("M1234", "stock", None, gtins, "keep_refrigerated")
    wrapping = replace(wrapping, marks=marks)
    label = label_of(wrapping.packages[0], wrapping)
    assert isinstance(label, PackageLabel)
    assert (label.legend, label.not_for_sale, label.safe_handling) == (True, False, True)
    assert label.gs1 is not None
    assert label.gs1.value("01") == "90614141000015"
    assert label.gs1.value("10") == str(wrapping.lot.number)
    text = text_of(labels_pdf((label,), bench.words, marks))
    for part in ("Est. M1234", "KEEP REFRIGERATED", "Safe Handling Instructions"):
        assert part in text
    assert "NOT FOR SALE" not in text


def test_custom_exempt_goods_bear_none_of_them(
    store: Store, signed: SignedOn, bench: Bench
) -> None:
    wrapping = weighed_in(store, signed, bench, 0)
    gtins = {("pork", "whole_ham"): "90614141000015"}
    wrapping = replace(wrapping, marks=PlantMarks("M1234", "stock", None, gtins))
    label = label_of(wrapping.packages[0], wrapping)
    assert isinstance(label, PackageLabel)
    assert (label.legend, label.establishment, label.gs1) == (False, "", None)


def test_a_refusal_names_the_stock_that_does(store: Store, signed: SignedOn, bench: Bench) -> None:
    """A raw inspected ham needs the safe-handling block, which 4 by 2 in can't hold (317.2(l))."""
    wrapping = inspected(store, signed, bench)
    marks = PlantMarks("M1234", "stock", None, {}, "keep_refrigerated")
    wrapping = replace(wrapping, marks=marks, shop=replace(wrapping.shop, stock="4x2"))
    label = label_of(wrapping.packages[0], wrapping)
    assert isinstance(label, PackageLabel)
    refused = labels_pdf((label,), bench.words, marks)
    assert isinstance(refused, tuple)
    assert label_complaint(refused) == (
        "Not all the label must say fits on this stock; it fits on 4 × 3 in or 4 × 6 in "
        "(Office, Shop)."
    )
    larger = replace(wrapping, shop=replace(wrapping.shop, stock="4x3"))
    label = label_of(larger.packages[0], larger)
    assert isinstance(label, PackageLabel)
    assert isinstance(labels_pdf((label,), bench.words, marks), bytes), "what was named does"
