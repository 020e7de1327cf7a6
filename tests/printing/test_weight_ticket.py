"""The weight ticket: weight before cutting, net by kind of package, ground, loss, instructions."""

from dataclasses import replace
from fractions import Fraction

import pytest

from printing.counts import Counted, share_counts
from printing.weight_ticket import TicketShare, is_ground, weight_ticket
from printing.words import Words
from shared.billing.quantities import HangingWeights, hanging_weights
from shared.carcass.carcass import Holding
from shared.shop.details import ShopDetails
from tests.printing.orders import Planned, halves, made
from tests.printing.pages import MADE, NAME, SHOP, SHOP_A4, SIZES, SPANISH, WORDS, size, text

FORE = Fraction(55, 100)


@pytest.fixture(scope="module")
def planned() -> Planned:
    return halves()


def ticket(planned: Planned, holdings: tuple[Holding, ...] = (Holding(0, 1),)) -> TicketShare:
    hanging = hanging_weights(planned.question.carcasses, holdings, "hot", FORE)
    assert isinstance(hanging, HangingWeights)
    packages = (
        made(1, 1, "whole_ham", "16.25"),
        made(2, 2, "centre_chop", "1.50"),
        made(3, 2, "centre_chop", "1.45"),
        made(4, 3, "ground_pork", "20.3"),
        made(5, 2, "centre_chop", "9.99", void="torn"),
        made(6, 4, "whole_ham", "17.05", share=2),
    )
    counts = share_counts(
        planned.question,
        planned.catalogue,
        planned.forecast,
        1,
        packages,
        order_number=1042,
        hanging=hanging.pounds,
    )
    choices = tuple(one for one in planned.question.choices if one.share == 1)
    return TicketShare(counts, hanging, choices, ("114",), "Green Farm")


def paper_of(
    planned: Planned, value: TicketShare, shop: ShopDetails = SHOP, words: Words = WORDS
) -> bytes:
    return weight_ticket(
        value,
        catalogue=planned.catalogue,
        lot_number=9,
        shop=shop,
        buyer=(NAME, "1 Mill Road", "Oakfield"),
        made=MADE,
        words=words,
    )


def test_what_california_asks_for_is_on_it(planned: Planned) -> None:
    """B&P 12024.9-12024.10: weight before cutting, net by class, ground, cutting instructions."""
    value = ticket(planned)
    assert (value.ground, value.cutting_loss) == (Fraction("20.3"), 92 - Fraction("39.5"))
    said = " ".join(text(paper_of(planned, value)).split())
    for part in (
        "Weight before cutting (Hanging, hot)",
        "Side 1, tag 114 weighed 92.00",
        "Green Farm",
        NAME,
        "cured and smoked 1 16.25",
        "2 2.95",
        "All 4 39.50",
        "Ground meat in all: 20.3 lb",
        "52.5 lb, 57.1 %",
        "Cutting instructions",
        "nice & <thick>",
        "keep a copy",
    ):
        assert part in said, part
    assert "9.99" not in said


def test_each_quarter_is_listed_and_how_its_weight_was_found(planned: Planned) -> None:
    value = ticket(planned, (Holding(0, 1, "fore"), Holding(0, 2, "hind", Fraction(1, 2))))
    said = " ".join(text(paper_of(planned, value)).split())
    assert "Side 1, forequarter, tag 114 by table 50.60" in said
    assert "Side 2, hindquarter, 1/2 of it, tag 114 by table 20.70" in said
    assert "All 71.30" in said
    assert "By table: the quarter was not weighed by itself" in said


def test_a_weight_that_is_still_to_come_is_said(planned: Planned) -> None:
    value = ticket(planned)
    lacking = hanging_weights(planned.question.carcasses, (Holding(0, 1),), "chilled", FORE)
    assert isinstance(lacking, HangingWeights)
    value = TicketShare(value.counts, lacking, (), ("114",))
    assert value.cutting_loss is None
    said = text(paper_of(planned, value))
    assert "not weighed yet" in said
    assert "waits for the weight before cutting" in said
    assert "None were given." in said


@pytest.mark.parametrize(
    ("cut", "finishes", "ground"),
    [
        ("ground_pork", (), True),
        ("beef_patties", (), True),
        ("stew", ("ground",), True),
        ("whole_ham", (), False),
        ("background_roast", (), False),
    ],
)
def test_what_counts_as_ground(cut: str, finishes: tuple[str, ...], ground: bool) -> None:
    assert is_ground(Counted(cut, finishes, None, 0, 1, Fraction(1))) is ground


@pytest.mark.parametrize("shop", [SHOP, SHOP_A4], ids=["letter", "a4"])
def test_in_spanish_on_both_papers(planned: Planned, shop: ShopDetails) -> None:
    pdf = paper_of(planned, ticket(planned), shop, SPANISH)
    assert size(pdf) == SIZES[shop.paper]
    assert "Boleta de peso" in text(pdf)
    assert "Merma de corte" in text(pdf)


def test_a_count_leaves_the_cutting_loss_unknown(planned: Planned) -> None:
    value = ticket(planned)
    row = replace(value.counts.rows[0], packages=3, by_count=2)
    value = replace(value, counts=replace(value.counts, rows=(row, *value.counts.rows[1:])))
    assert value.cutting_loss is None
    said = text(paper_of(planned, value)).replace("\n", " ")
    assert "Cutting loss: not known, packages were wrapped by count" in said
    assert "+ 2 by count" in said
