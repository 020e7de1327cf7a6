"""A customer's account of some days: what stood before, what moved it, and what stands."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from shared.shop.ledger import EntryKind


@dataclass(frozen=True, slots=True)
class Move:
    """What one entry of the books moves on a customer's account: above nothing he owes it."""

    day: date
    kind: EntryKind
    number: int
    order_number: int
    memo: str
    cents: int


@dataclass(frozen=True, slots=True)
class AccountLine:
    """A move with the balance after it."""

    move: Move
    balance: int


@dataclass(frozen=True, slots=True)
class Account:
    """The account from `start` to `end`, both within; below nothing the shop owes the customer.

    Deposits are on it from the day they were taken: the bill that uses one changes it by the
    whole bill.
    """

    start: date
    end: date
    opening: int
    lines: tuple[AccountLine, ...]

    @property
    def closing(self) -> int:
        """What stands at the end of the last day."""
        return self.lines[-1].balance if self.lines else self.opening

    @property
    def charged(self) -> int:
        """All that was added to what is owed."""
        return sum(one.move.cents for one in self.lines if one.move.cents > 0)

    @property
    def taken_off(self) -> int:
        """All that was taken off what is owed; above nothing."""
        return -sum(one.move.cents for one in self.lines if one.move.cents < 0)


def account_of(moves: Iterable[Move], start: date, end: date) -> Account:
    """An account from all moves up to `end`, in the order they were entered.

    A bill of $100 in April, $60 paid on 2 May and a bill of $25 on 9 May: May opens with $100 and
    closes with $65.
    """
    opening, lines = 0, list[AccountLine]()
    for move in sorted(moves, key=lambda one: one.day):
        if move.day > end or not move.cents:
            continue
        if move.day < start:
            opening += move.cents
            continue
        before = lines[-1].balance if lines else opening
        lines.append(AccountLine(move, before + move.cents))
    return Account(start, end, opening, tuple(lines))
