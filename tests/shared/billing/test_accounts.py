"""The chart of accounts: every means of payment has one, and none is there twice."""

from typing import get_args

from shared.billing.accounts import CASH, CHART, OPENABLE, Account, money_account
from shared.shop.money import PaymentMeans


def test_the_chart_has_every_means_and_each_account_once() -> None:
    assert money_account("card") == "money:card"
    assert money_account("cash") == CASH
    assert {money_account(means) for means in get_args(PaymentMeans)} <= set(CHART)
    assert set(CHART) == set(get_args(Account))
    assert len({one.journal for one in CHART.values()}) == len(CHART)


def test_what_is_earned_has_no_opening_balance() -> None:
    assert {CHART[one].sort for one in OPENABLE} == {"assets", "liabilities"}
