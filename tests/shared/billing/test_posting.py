"""Every happening moves as much in as out, and deposits are used as far as owed."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.accounts import CHART, OPENABLE
from shared.billing.bill import make_bill
from shared.billing.posting import (
    Posting,
    Standing,
    adds_up,
    bill_postings,
    cash_moved_postings,
    collected_postings,
    credit_postings,
    drawer_postings,
    on_account_postings,
    opening_postings,
    payment_postings,
)
from shared.billing.rates import Charge
from tests.shared.billing.lots import HALVES, good, hung, lot_of

CENTS = st.integers(1, 10_000_000)


def test_a_bill_with_tax_and_a_deposit() -> None:
    """$100.00 at 6 % with $50.00 deposited."""
    charge = Charge("kill", "per_head", Fraction(20_000), tax_rate=Fraction(6, 100))
    bill = good(make_bill(lot_of(hung("350", "350"), HALVES, charge), 1))
    rate = Fraction(3, 50)
    assert bill_postings(bill.total_cents, bill.lines, "beef", Standing(0, 5_000)) == (
        Posting("receivable", 10_600),
        Posting("income", -10_000, "kill", "beef", rate),
        Posting("tax", -600, "kill", "beef", rate),
        Posting("deposits", 5_000),
        Posting("receivable", -5_000),
    )


def test_what_the_lines_dont_account_for_is_income_without_a_code() -> None:
    assert credit_postings(900, (), "beef", {}) == (
        Posting("receivable", -900),
        Posting("income", 900, "", "beef"),
    )


def test_a_refund_comes_out_of_what_is_owed_then_out_of_the_deposits() -> None:
    assert payment_postings("refund", "cash", 3_000, Standing(0, 5_000)) == (
        Posting("money:cash", -3_000),
        Posting("deposits", 3_000),
    )
    assert payment_postings("refund", "check", 3_000, Standing(-1_000, 5_000)) == (
        Posting("money:check", -3_000),
        Posting("receivable", 1_000),
        Posting("deposits", 2_000),
    )


def test_a_deposit_after_the_bill_is_used_at_once() -> None:
    assert payment_postings("deposit", "cash", 3_000, Standing(2_000, 0)) == (
        Posting("money:cash", 3_000),
        Posting("deposits", -3_000),
        Posting("deposits", 2_000),
        Posting("receivable", -2_000),
    )


@given(
    st.sampled_from(["deposit", "payment", "refund", "write_off"]),
    st.sampled_from(["cash", "check", "card", "transfer", "other"]),
    CENTS,
    st.builds(Standing, st.integers(-10_000, 10_000), st.integers(0, 10_000)),
    st.booleans(),
)
def test_whatever_is_taken_adds_up(
    kind: str, means: str, cents: int, standing: Standing, before: bool
) -> None:
    made = payment_postings(kind, means, cents, standing, from_before=before)  # type: ignore[arg-type]
    assert adds_up(made)
    assert all(one.account in CHART for one in made)
    held = standing.held - sum(one.cents for one in made if one.account == "deposits")
    assert held >= 0


@given(CENTS, CENTS)
def test_the_rest_adds_up_too(cents: int, other: int) -> None:
    for account in OPENABLE:
        assert adds_up(opening_postings(account, cents))
    assert adds_up(on_account_postings("check", cents))
    assert adds_up(cash_moved_postings(cents))
    assert adds_up(collected_postings("card", -cents))
    assert (cents == other) == (not adds_up(drawer_postings(cents, other)))
