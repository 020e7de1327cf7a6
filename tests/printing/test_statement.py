"""The producer's statement: his price, his name, nothing of the plant."""

from dataclasses import replace
from fractions import Fraction

import pytest

from printing.page import PaperName
from printing.statement import statement as print_statement
from printing.words import Words
from shared.billing.bill import make_bill
from shared.billing.rates import Charge
from shared.billing.statement import Price, Statement, TakeHome, statement, take_home
from tests.printing.pages import MADE, NAME, SIZES, SPANISH, WORDS, amounts, pages, size, text
from tests.shared.billing.lots import HALVES, WHOLE, fine, good, hung, lot_of

# Michigan State Univ. Extension, pricing worksheet of 1 Apr 2024: 819 lb × $3.00 = $2,457.00;
# with the plant's $673.30 it is $3,130.30 for 556.92 lb, $5.62 a pound, 22 % under $7.20.
KILL = Charge("kill", "per_head", Fraction(10000))
CUT = Charge("cut_and_wrap", "per_lb_hot", Fraction(70))
LOT = lot_of(hung("409.5", "409.5"), (WHOLE,), KILL, CUT)


def paper_of(
    value: Statement,
    paper: PaperName = "letter",
    words: Words = WORDS,
    taken: TakeHome | None = None,
    plant: int | None = None,
) -> bytes:
    return print_statement(
        value,
        producer=("Hill Road 7", "Oakfield"),
        buyer=("4 Elm Road",),
        paper=paper,
        made=MADE,
        words=words,
        take_home=taken,
        plant_bill_cents=plant,
    )


@pytest.fixture
def published() -> Statement:
    value = fine(statement(LOT, 1, Price("per_lb_hot", Fraction(300)), deposit_cents=50000))
    return replace(value, owner=NAME, producer="Łucja's farm")


def test_the_published_example_as_two_papers(published: Statement) -> None:
    plant = good(make_bill(LOT, 1)).total_cents
    both = plant + published.total_cents
    assert both == 313030
    taken = take_home(both, Fraction("556.92"), Fraction(720))
    pdf = paper_of(published, taken=taken, plant=plant)
    said = text(pdf).replace("\n", " ")
    for figure in ("819 lb", "$3.00", "$2,457.00", "$673.30", "$3,130.30", "556.92 lb", "$5.62"):
        assert figure in said
    assert "22 % under the retail price" in said
    assert "Balance due to Łucja's farm" in said
    assert amounts(pdf).count(195700) == 1  # $2,457.00 less the $500.00 paid to him


def test_it_carries_none_of_the_plants_charges(published: Statement) -> None:
    pdf = paper_of(published)
    assert sorted(amounts(pdf)) == [-50000, 300, 195700, 245700, 245700]
    assert "per head" not in text(pdf)


def test_halves_add_up_to_the_animal() -> None:
    lot = lot_of(hung("409.5", "401.3"), HALVES, CUT)
    price = Price("per_lb_hot", Fraction(465, 2))
    values = [fine(statement(lot, share, price)) for share in (1, 2)]
    printed = [max(amounts(paper_of(value))) for value in values]
    assert sum(printed) == 188511  # 810.8 lb × $2.325 = $1,885.11


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_one_page_of_either_paper_with_the_name_as_written(
    published: Statement, paper: PaperName
) -> None:
    pdf = paper_of(published, paper)
    assert len(pages(pdf)) == 1
    assert size(pdf) == SIZES[paper]
    assert NAME in text(pdf).replace("\n", " ")
    assert pdf == paper_of(published, paper)


def test_in_spanish(published: Statement) -> None:
    assert "Estado de cuenta" in text(paper_of(published, words=SPANISH))
