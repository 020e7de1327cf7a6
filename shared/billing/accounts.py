"""The shop's chart of accounts: few, and each with one line of what it holds.

Money by its means and the bank are what the shop has; receivable is what customers owe; deposits
and tax are held for others; income is told apart by service and species, not by account.
"""

from dataclasses import dataclass
from types import MappingProxyType
from typing import Final, Literal

from shared.shop.money import PaymentMeans

Account = Literal[
    "money:cash",
    "money:check",
    "money:card",
    "money:transfer",
    "money:other",
    "moved",
    "bank",
    "receivable",
    "deposits",
    "producers",
    "tax",
    "income",
    "written_off",
    "drawer",
    "opening",
]
Sort = Literal["assets", "liabilities", "income", "expenses", "equity"]


@dataclass(frozen=True, slots=True)
class ChartLine:
    """One account: its sort, and its name in a plain-text journal."""

    account: Account
    sort: Sort
    journal: str


CHART: Final = MappingProxyType(
    {
        line.account: line
        for line in (
            ChartLine("money:cash", "assets", "Assets:Cash"),
            ChartLine("money:check", "assets", "Assets:Checks"),
            ChartLine("money:card", "assets", "Assets:Cards"),
            ChartLine("money:transfer", "assets", "Assets:Transfers"),
            ChartLine("money:other", "assets", "Assets:Other"),
            ChartLine("bank", "assets", "Assets:Bank"),
            ChartLine("receivable", "assets", "Assets:Receivable"),
            ChartLine("deposits", "liabilities", "Liabilities:Deposits"),
            ChartLine("producers", "liabilities", "Liabilities:Producers"),
            ChartLine("moved", "liabilities", "Liabilities:Moved"),
            ChartLine("tax", "liabilities", "Liabilities:Tax"),
            ChartLine("income", "income", "Income"),
            ChartLine("written_off", "expenses", "Expenses:WrittenOff"),
            ChartLine("drawer", "expenses", "Expenses:Drawer"),
            ChartLine("opening", "equity", "Equity:Opening"),
        )
    }
)
"""Every account there is; a debit is above nothing, a credit below."""

CASH: Final[Account] = "money:cash"
"""The drawer."""
OPENABLE: Final[tuple[Account, ...]] = ("receivable", "tax", CASH, "bank")
"""Accounts that may have an opening balance; its other side is "opening". A deposit from before
these books is taken on its order instead (`work.payments.take` with `from_before`)."""

_MONEY: Final[dict[PaymentMeans, Account]] = {
    "cash": "money:cash",
    "check": "money:check",
    "card": "money:card",
    "transfer": "money:transfer",
    "other": "money:other",
    "moved": "moved",
}


def money_account(means: PaymentMeans) -> Account:
    """The account money of that kind goes to: a check to "money:check".

    What moves from one order to another goes through "moved", where nothing ever stays.
    """
    return _MONEY[means]
