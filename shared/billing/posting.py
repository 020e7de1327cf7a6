"""What a bill, a credit or a payment moves on the shop's accounts; it always adds up to nothing.

A debit is above nothing, a credit below. Deposits are held for the customer until a bill is
there; then as much of them as is owed is used for it, in the same entry.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.billing.accounts import CASH, Account, money_account
from shared.billing.bill import BillLine
from shared.billing.credit_note import CreditLine
from shared.shop.money import PaymentKind, PaymentMeans


@dataclass(frozen=True, slots=True)
class Posting:
    """Cents moved on one account. Income and tax say the charge's code, species and tax rate."""

    account: Account
    cents: int
    code: str = ""
    species: str = ""
    tax_rate: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Standing:
    """What a payer owes on an order and has deposited for it, before the entry at hand.

    `owes` below nothing is owed to the customer; `held` is never below nothing.
    """

    owes: int = 0
    held: int = 0


def bill_postings(
    total_cents: int, lines: Iterable[BillLine], species: str, standing: Standing
) -> tuple[Posting, ...]:
    """A bill: the customer owes its total, income and tax are earned line by line.

    $100.00 at 6 % with $50.00 deposited: receivable +106.00, income −100.00, tax −6.00, then
    deposits +50.00, receivable −50.00. What the lines don't account for is income without a code.
    """
    made = [Posting("receivable", total_cents)]
    rest = total_cents
    for line in lines:
        rate = line.tax_rate or None
        made.append(Posting("income", -line.amount_cents, line.code, species, rate))
        made.append(Posting("tax", -line.tax_cents, line.code, species, rate))
        rest -= line.amount_cents + line.tax_cents
    made.append(Posting("income", -rest, "", species))
    return _moving([*made, *_used(min(standing.owes + total_cents, standing.held))])


def credit_postings(
    total_cents: int, lines: Iterable[CreditLine], species: str, rates: Mapping[str, Fraction]
) -> tuple[Posting, ...]:
    """A credit note: the same with the sign turned. `rates` are the bill's tax rates by code."""
    made = [Posting("receivable", -total_cents)]
    rest = total_cents
    for line in lines:
        rate = rates.get(line.code)
        made.append(Posting("income", line.amount_cents, line.code, species, rate))
        made.append(Posting("tax", line.tax_cents, line.code, species, rate))
        rest -= line.amount_cents + line.tax_cents
    made.append(Posting("income", rest, "", species))
    return _moving(made)


def payment_postings(
    kind: PaymentKind,
    means: PaymentMeans,
    cents: int,
    standing: Standing,
    *,
    from_before: bool = False,
) -> tuple[Posting, ...]:
    """Money taken, given back or given up; `from_before` was taken before these books.

    A $50.00 deposit with nothing billed: cash +50.00, deposits −50.00. A refund comes out of what
    is owed to the customer first, then out of his deposits: $30.00 back of $50.00 held is
    cash −30.00, deposits +30.00.
    """
    money: Account = "opening" if from_before else money_account(means)
    if kind == "deposit":
        used = _used(min(standing.owes, standing.held + cents))
        return _moving([Posting(money, cents), Posting("deposits", -cents), *used])
    if kind == "payment":
        return _moving([Posting(money, cents), Posting("receivable", -cents)])
    if kind == "write_off":
        return _moving([Posting("written_off", cents), Posting("receivable", -cents)])
    first = min(cents, max(0, -standing.owes))
    second = min(cents - first, standing.held)
    return _moving(
        [
            Posting(money, -cents),
            Posting("receivable", cents - second),
            Posting("deposits", second),
        ]
    )


def opening_postings(account: Account, cents: int) -> tuple[Posting, ...]:
    """What stood on an account before these books: $20.00 owed is +20.00 against opening."""
    return _moving([Posting(account, cents), Posting("opening", -cents)])


def on_account_postings(means: PaymentMeans, cents: int) -> tuple[Posting, ...]:
    """Money for what was owed before these books; below nothing it is given back."""
    return _moving([Posting(money_account(means), cents), Posting("receivable", -cents)])


def collected_postings(means: PaymentMeans, cents: int) -> tuple[Posting, ...]:
    """Money a buyer pays for the producer's animal, held for him; below nothing it is paid out.

    $2,457.00 by check is check +2,457.00, producers −2,457.00: never income of the plant.
    """
    return _moving([Posting(money_account(means), cents), Posting("producers", -cents)])


def drawer_postings(expected: int, counted: int) -> tuple[Posting, ...]:
    """The drawer's difference: $2.00 short is cash −2.00, drawer +2.00. None without one."""
    return _moving([Posting(CASH, counted - expected), Posting("drawer", expected - counted)])


def cash_moved_postings(cents: int) -> tuple[Posting, ...]:
    """Cash carried from the drawer to the bank; below nothing, from the bank to the drawer."""
    return _moving([Posting("bank", cents), Posting(CASH, -cents)])


def adds_up(postings: Sequence[Posting]) -> bool:
    """Whether debits and credits are the same; an entry of nothing isn't one."""
    return bool(postings) and sum(one.cents for one in postings) == 0


def _used(cents: int) -> tuple[Posting, ...]:
    """So much of the deposits set against what is owed; nothing where nothing is owed or held."""
    used = max(0, cents)
    return Posting("deposits", used), Posting("receivable", -used)


def _moving(made: Iterable[Posting]) -> tuple[Posting, ...]:
    return tuple(one for one in made if one.cents)
