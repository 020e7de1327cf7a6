"""What is on an order's next bill beside the cutting, who said so, and what was billed before."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from fractions import Fraction

from shared.billing.bill import Bill
from shared.billing.lot import Asked, Credit
from shared.billing.rates import RateCard
from shared.billing.storage import StorageDays, days_stored, nth_day


@dataclass(frozen=True, slots=True)
class Extras:
    """What is asked for and credited on the next bill of an order."""

    asked: tuple[Asked, ...] = ()
    credits: tuple[Credit, ...] = ()


@dataclass(frozen=True, slots=True)
class SaidExtras:
    """The extras of an order as they stand: who said so and when. `id` 0: nobody has yet."""

    extras: Extras = Extras()
    id: int = 0
    by: str = ""
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class BilledExtra:
    """A line of an order that was asked for and stands on a bill; order None: the producer's."""

    order_id: int | None
    key: str
    code: str
    quantity: Fraction
    bill: int
    day: date


@dataclass(frozen=True, slots=True)
class Storing:
    """Days of storage not billed yet: from the day after `since` to `until`, `days` of them.

    `since` is the day of the last storage billed (`bill` is its number, `billed` the days on all
    such bills), else the day the order was ready; the card's steps then say how many are free.
    `which` days count, less the `closed` ones.
    """

    since: date
    until: date
    billed: Fraction = Fraction(0)
    bill: int = 0
    which: StorageDays = "every_day"
    closed: frozenset[date] = frozenset()

    @property
    def days(self) -> int:
        """The new days."""
        return days_stored(self.since, self.until, self.which, self.closed)


def storing(
    ready: date | None,
    until: date,
    before: Sequence[BilledExtra],
    which: StorageDays = "every_day",
    closed: Collection[date] = (),
    code: str = "storage",
) -> Storing | None:
    """What storage an order is still to be billed for; None where it was never ready.

    Ready on 1 May, 8 days billed on 9 May, looked at on 14 May: 5 days.
    """
    theirs = sorted((one for one in before if one.code == code), key=lambda one: one.day)
    if theirs:
        billed = sum((one.quantity for one in theirs), Fraction(0))
        last = theirs[-1]
        return Storing(last.day, until, billed, last.bill, which, frozenset(closed))
    if ready is None:
        return None
    return Storing(ready, until, which=which, closed=frozenset(closed))


def free_days(card: RateCard, code: str = "storage") -> int:
    """The days that cost nothing: a first rate of nothing, up to its step; 0 without."""
    for charge in card.charges:
        if charge.code == code and charge.steps and not charge.rate:
            return int(charge.steps[0].above)
    return 0


def first_day_that_costs(told: Storing, card: RateCard) -> date:
    """The day from which storage costs something.

    Ready on 1 May with 5 days free: 7 May (the days are counted from the day after).
    """
    left = max(0, free_days(card) - int(told.billed))
    return nth_day(told.since, left + 1, told.which, told.closed)


def told_again(said: Extras, before: Collection[BilledExtra], card: RateCard) -> Extras:
    """The extras, told what of them stands on earlier bills.

    Days are counted on from what was billed, so that free days are free once; a delivery or its
    miles begin anew with each bill.
    """
    daily = {one.code for one in card.charges if one.basis == "per_day"}
    asked: list[Asked] = []
    for one in said.asked:
        theirs = [line for line in before if line.code == one.code]
        rounds = max((round_of(line.key) for line in theirs), default=0)
        days = sum((line.quantity for line in theirs), Fraction(0))
        told = days if one.code in daily else Fraction(0)
        asked.append(replace(one, rounds=rounds, before=told))
    taken = max((int(one.key.split(":")[1]) for one in before if one.code == "credit"), default=0)
    off = [replace(one, number=n) for n, one in enumerate(said.credits, start=taken + 1)]
    return Extras(tuple(asked), tuple(off))


def round_of(key: str) -> int:
    """Which bill of a charge a line's key is for: "storage:0" is 1, "storage:0:2" is 2."""
    parts = key.split(":")
    return int(parts[2]) if len(parts) > 2 else 1


def left_over(said: Extras, bill: Bill, producers: Collection[str], *, own: bool) -> Extras:
    """What of an order's extras a bill doesn't have: what falls to the producer waits for his.

    `own`: it is the order's own bill, which has what is taken off; of any other bill only the
    charges in `producers`, which fall to the producer, can be this order's.
    """
    on_it = {line.code for line in bill.lines if own or line.code in producers}
    waiting = tuple(one for one in said.asked if one.code not in on_it)
    return Extras(waiting, () if own else said.credits)


def put_back(said: Extras, taken: Extras) -> Extras:
    """The extras once a bill that took `taken` of them was credited whole.

    What was said again meanwhile stays as it was said last.
    """
    codes = {one.code for one in said.asked}
    again = tuple(one for one in taken.asked if one.code not in codes)
    return Extras((*said.asked, *again), said.credits or taken.credits)


def given_back(said: Extras, bill: Bill, card: RateCard) -> Extras:
    """As `put_back` for a bill of which it isn't known what it took: what its own lines have."""
    codes = {one.code for one in card.charges if one.asked} - {one.code for one in said.asked}
    asked = [
        Asked(line.code, line.quantity or Fraction(0)) for line in bill.lines if line.code in codes
    ]
    off = [Credit(line.reason, -line.amount_cents) for line in bill.lines if line.kind == "credit"]
    return Extras((*said.asked, *asked), said.credits or tuple(off))
