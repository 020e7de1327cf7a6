"""The books as values: entries, who owes what, deposits, takings, tax, income, counts, periods."""

from dataclasses import dataclass
from datetime import date, datetime
from fractions import Fraction
from typing import Literal

EntryKind = Literal[
    "bill",
    "credit",
    "deposit",
    "payment",
    "refund",
    "write_off",
    "on_account",
    "opening",
    "drawer",
    "cash_moved",
    "collected",
    "paid_out",
]


@dataclass(frozen=True, slots=True)
class EntryLine:
    """Cents on one account: above nothing a debit, below a credit. `customer` is a name or ""."""

    account: str
    cents: int
    code: str = ""
    species: str = ""
    tax_rate: Fraction | None = None
    customer: str = ""


@dataclass(frozen=True, slots=True)
class Entry:
    """One happening in the books; its lines add up to nothing. Never changed.

    `id` is its number in the journal, without gaps; `number` the bill's, credit's or receipt's.
    """

    id: int
    kind: EntryKind
    day: date
    number: int
    memo: str
    person: str
    lines: tuple[EntryLine, ...]


@dataclass(frozen=True, slots=True)
class Owed:
    """What one customer owes, how long, and the oldest day that isn't paid.

    `ages` are cents owed up to 30 days, 31 to 60, 61 to 90, and longer. A customer to whom the
    shop owes has `cents` below nothing and no ages. `orders` are numbers of the orders concerned.
    """

    customer_id: int | None
    customer: str
    phone: str
    cents: int
    since: date | None
    ages: tuple[int, int, int, int]
    orders: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class HeldDeposit:
    """A deposit that no bill has used yet, and since when the shop has it."""

    customer_id: int | None
    customer: str
    order_number: int | None
    cents: int
    since: date


@dataclass(frozen=True, slots=True)
class Takings:
    """Money taken on a day by one means, less what was given back."""

    day: date
    means: str
    cents: int


@dataclass(frozen=True, slots=True)
class TaxOfRate:
    """What was sold at one tax rate in a period, and the tax on it; rate 0 is untaxed."""

    rate: Fraction
    net_cents: int
    tax_cents: int


@dataclass(frozen=True, slots=True)
class Income:
    """Income of one service on one species in a period, credits taken off; code "" isn't told."""

    code: str
    species: str
    cents: int


@dataclass(frozen=True, slots=True)
class DrawerCount:
    """The cash counted, beside what the books expected."""

    id: int
    day: date
    expected_cents: int
    counted_cents: int
    reason: str
    at: datetime
    person: str

    @property
    def difference(self) -> int:
        """Above nothing there is too much in the drawer, below it is short."""
        return self.counted_cents - self.expected_cents


@dataclass(frozen=True, slots=True)
class ClosedPeriod:
    """The books are closed through this day; nothing is dated on it or before it any more."""

    through: date
    note: str
    at: datetime
    person: str
