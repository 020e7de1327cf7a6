"""The producer's statement: his price, divided so that his buyers' shares add up."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.billing.canonical import read_text
from shared.billing.problems import BillingProblem
from shared.billing.rates import Charge
from shared.billing.statement import (
    VERSION,
    Price,
    Statement,
    statement,
    statement_text,
    take_home,
)
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.money import amount_of
from tests.shared.billing.lots import HALVES, QUARTERS, SPLIT_QUARTERS, fine, hung, lot_of, pounds


@given(
    st.integers(1, 9_999),
    st.integers(1, 9_999),
    st.fractions(0, 1_000, max_denominator=1_000),
    st.sampled_from([HALVES, QUARTERS, SPLIT_QUARTERS]),
)
def test_the_buyers_pay_the_animals_price_together(
    first: int, second: int, rate: Fraction, holdings: tuple[tuple[Holding, ...], ...]
) -> None:
    lot = lot_of(hung(f"{first}.5", f"{second}"), holdings)
    papers = [fine(statement(lot, share.number, Price("per_lb_hot", rate))) for share in lot.shares]
    whole = Fraction(first) + Fraction(1, 2) + second
    assert sum(paper.total_cents for paper in papers) == amount_of(rate, whole)


def test_a_price_for_each_share_and_money_paid_already() -> None:
    lot = lot_of(hung(None, None), HALVES)
    paper = fine(statement(lot, 1, Price("per_share", Fraction(90_000)), deposit_cents=20_000))
    assert (paper.total_cents, paper.due_cents, paper.producer) == (90_000, 70_000, "Producer")
    assert read_text(statement_text(paper), "statement", VERSION, Statement) == paper


def test_a_price_by_head_and_by_chilled_weight() -> None:
    lot = lot_of(hung("100", "100"), HALVES, Charge("kill", "per_head", Fraction(1)))
    heads = [fine(statement(lot, one, Price("per_head", Fraction(90_001)))) for one in (1, 2)]
    assert [paper.total_cents for paper in heads] == [45_001, 45_000]
    beef = hung("100", "100")
    cold = replace(lot, animals=(replace(beef, chilled=beef.hot),))
    paper = fine(statement(cold, 2, Price("per_lb_chilled", Fraction(300))))
    assert (paper.hanging.kind, paper.total_cents) == ("chilled", 30_000)


def test_a_statement_doesnt_wait() -> None:
    lot = lot_of(hung("100", None), HALVES)
    price = Price("per_lb_hot", Fraction(300))
    assert statement(lot, 1, price) == BillingProblem(
        "weight_missing", {"tag": "114", "animal": "1"}
    )
    assert statement(lot, 5, price) == BillingProblem("no_such_share", {"share": "5"})
    assert statement(lot, 1, Price("per_head", Fraction(-1))) == BillingProblem(
        "rate_negative", {"rate": "-1"}
    )


@pytest.mark.parametrize(
    ("cents", "home", "retail", "per_lb", "under"),
    [
        (48_048, "100", "624", 480, 23),
        (48_048, "77", "624", 624, 0),
        (80_000, "100", "720", 800, -11),
    ],
)
def test_take_home_beside_retail(
    cents: int, home: str, retail: str, per_lb: int, under: int
) -> None:
    """23 % under $6.24 is what Michigan State Univ. Extension found in 2014; the rest is ours."""
    found = take_home(cents, Fraction(home), Fraction(retail))
    assert (found.per_lb_cents, found.under_percent) == (per_lb, under)


def test_no_pounds_have_no_price() -> None:
    with pytest.raises(ValueError, match="pounds"):
        take_home(100, Fraction(0))
    assert take_home(100, Fraction(3)).under_percent is None


def test_a_lot_of_two_animals_and_a_side_weighed_two_ways() -> None:
    holdings = ((Holding(0, 1), Holding(0, 2)), (Holding(1, 1), Holding(1, 2)))
    lot = lot_of([hung("100", "100", "a"), hung("90", "90", "b")], holdings)
    price = Price("per_lb_hot", Fraction(300))
    paper = fine(statement(lot, 2, price))
    assert [(line.animal, line.tag, line.amount_cents) for line in paper.lines] == [
        (2, "b", 54_000)
    ]
    sides = SideWeights(pounds("300"), pounds("171.5"), pounds("128"))
    beef = Carcass("beef", tag="9", hot=(sides, sides))
    assert statement(lot_of(beef, HALVES), 1, price) == BillingProblem(
        "quarters_differ", {"tag": "9", "side": "1"}
    )
