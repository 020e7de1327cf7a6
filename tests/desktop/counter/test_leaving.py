"""What is here of an order, a row for each product, named as the screen speaks."""

from dataclasses import replace

from db.unit_of_work import Work
from desktop.counter.leaving import Told, leaving_rows, shown_name
from printing.words import Words
from shared.shop.packages import NewPackage, PackageMade
from shared.units import Weight
from tests.db.examples import GROUND, at_the_block, line, lot_of_halves, order_of


def tube(work: Work) -> PackageMade:
    """A pound of ground, labeled in English."""
    order = order_of(work, lot_of_halves(work))
    ground = line(work, order, GROUND)
    with at_the_block(work, order.id):
        new = NewPackage(
            order.id, ground.line, "ground_pork", "Ground pork", Weight.from_pounds("1.02")
        )
        made = work.packages.add(new)
    assert isinstance(made, PackageMade)
    return made


def test_a_label_in_another_language_is_named_as_the_screen_speaks(work: Work) -> None:
    ground = tube(work)
    spanish, english = Words("es", strict=True), Words("en", strict=True)
    assert shown_name(spanish, "pork", ground) == "Carne molida de cerdo"
    assert shown_name(english, "pork", ground) == "Ground pork"
    spoken = replace(ground, product="Carne molida de cerdo, sazonado", finishes=("seasoned",))
    assert shown_name(english, "pork", spoken) == "Ground pork, seasoned"


def test_a_name_of_the_shop_s_own_stays_as_it_stands_on_the_label(work: Work) -> None:
    own = replace(tube(work), product="Old blend")
    assert shown_name(Words("es", strict=True), "pork", own) == "Old blend"
    assert shown_name(Words("en", strict=True), "pork", own) == "Old blend"


def test_one_product_labeled_in_two_languages_is_one_row(work: Work) -> None:
    first = tube(work)
    second = replace(first, id=first.id + 1, product="Carne molida de cerdo")
    words, rules = Words("es", strict=True), work.freezing.rules()
    (row,) = leaving_rows(
        [first, second],
        [],
        {},
        rules,
        Told({}, {}),
        first.made_at,
        lambda one: shown_name(words, "pork", one),
    )
    assert (row.product, row.here) == ("Carne molida de cerdo", 2)
