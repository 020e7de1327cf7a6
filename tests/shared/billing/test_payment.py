"""Payments: several means, change, deposits, refunds, write-offs; nothing is lost or made."""

from hypothesis import given
from hypothesis import strategies as st

from shared.billing.payment import Taken, Tender, refund, take, write_off
from shared.billing.problems import BillingProblem
from shared.shop.money import Balance

TENDERS = st.lists(
    st.builds(Tender, st.sampled_from(["cash", "card", "check"]), st.integers(1, 100_000)),
    min_size=1,
    max_size=5,
)


def test_the_balance_of_a_bill_with_a_deposit() -> None:
    """$673.30 billed, $5.00 credited, $100.00 deposited, $200.00 paid, $10.00 given back."""
    assert Balance(67_330, 500, 10_000, 20_000 - 1_000, 10_000).due == 37_830


def test_change_comes_out_of_the_cash() -> None:
    taken = take(Balance(billed=57_330), [Tender("card", 40_000), Tender("cash", 20_000)])
    assert isinstance(taken, Taken)
    assert (taken.kind, taken.change_cents, taken.balance.due) == ("payment", 2_670, 0)
    assert taken.tenders == (Tender("card", 40_000), Tender("cash", 17_330))


def test_a_card_above_the_due_is_refused() -> None:
    found = take(Balance(billed=57_330), [Tender("card", 57_331)])
    assert found == BillingProblem("overpaid", {"due": "$573.30", "tendered": "$573.31"})


def test_a_part_payment_leaves_the_rest_due() -> None:
    taken = take(Balance(billed=57_330), [Tender("check", 7_330)])
    assert isinstance(taken, Taken)
    assert (taken.change_cents, taken.balance.due) == (0, 50_000)


def test_a_deposit_is_held_whole_before_any_bill() -> None:
    taken = take(Balance(deposit_asked=10_000), [Tender("cash", 12_500)], deposit=True)
    assert isinstance(taken, Taken)
    assert (taken.kind, taken.balance.deposits, taken.change_cents) == ("deposit", 12_500, 0)


def test_what_cant_be_taken_is_said() -> None:
    due = Balance(billed=100)
    assert take(due, []) == BillingProblem("not_positive")
    assert take(due, [Tender("cash", 100), Tender("cash", 0)]) == BillingProblem("not_positive")
    assert take(Balance(billed=100, paid=100), [Tender("cash", 1)]) == BillingProblem(
        "nothing_due", {"due": "$0.00"}
    )


def test_only_what_is_owed_is_given_back() -> None:
    owed = Balance(billed=5_000, deposits=8_000)
    assert refund(owed, 3_000, "check") == Tender("check", 3_000)
    assert refund(owed, 3_001) == BillingProblem(
        "more_than_owed", {"owed": "$30.00", "asked": "$30.01"}
    )
    assert refund(Balance(billed=1), 1) == BillingProblem(
        "more_than_owed", {"owed": "$0.00", "asked": "$0.01"}
    )
    assert refund(owed, 0) == BillingProblem("not_positive")


def test_a_write_off_needs_a_reason_and_something_due() -> None:
    due = Balance(billed=5_000)
    assert write_off(due, 5_000, " moved away ") == Tender("other", 5_000, "moved away")
    assert write_off(due, 5_000, " ") == BillingProblem("reason_missing")
    assert write_off(due, 0, "x") == BillingProblem("not_positive")
    assert write_off(due, 5_001, "x") == BillingProblem(
        "more_than_due", {"due": "$50.00", "asked": "$50.01"}
    )


@given(st.integers(1, 300_000), TENDERS)
def test_kept_and_change_are_what_was_tendered(billed: int, tenders: list[Tender]) -> None:
    taken = take(Balance(billed=billed), tenders)
    cash = sum(one.cents for one in tenders if one.means == "cash")
    total = sum(one.cents for one in tenders)
    if isinstance(taken, BillingProblem):
        assert taken.code == "overpaid"
        assert total - cash > billed
        return
    kept = sum(one.cents for one in taken.tenders)
    assert kept + taken.change_cents == total
    assert kept == min(total, billed) == billed - taken.balance.due
    assert all(one.cents > 0 for one in taken.tenders)
    assert [one for one in taken.tenders if one.means != "cash"] == [
        one for one in tenders if one.means != "cash"
    ]
