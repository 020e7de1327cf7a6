"""Rate cards: what the shop charges, from which day on, for which animals and customers.

A rate is a `Fraction` of cents for one unit and may hold fractions of a cent; minimums are whole
cents. A card never changes once a bill used it; new rates are a new card with a later date.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from itertools import pairwise
from typing import Final, Literal

from shared.billing.problems import BillingProblem
from shared.carcass.carcass import Age, Regime
from shared.money import rate_text

Basis = Literal[
    "per_head",
    "per_lb_hot",
    "per_lb_hot_less_shrink",
    "per_lb_chilled",
    "per_lb_in",
    "per_lb_finished",
    "per_package",
    "flat",
    "per_day",
    "per_mile",
]
Unit = Literal["head", "lb", "package", "each", "day", "working_day", "mile"]

HANGING: Final[tuple[Basis, ...]] = ("per_lb_hot", "per_lb_hot_less_shrink", "per_lb_chilled")
"""Bases on the hanging weight, divided animal by animal."""
MADE: Final[tuple[Basis, ...]] = ("per_lb_in", "per_lb_finished", "per_package")
"""Bases on what was made of an order."""

CHARGE_CODES: Final = (
    "kill",
    "cut_and_wrap",
    "cure_and_smoke",
    "smoke",
    "slice",
    "sausage",
    "links",
    "patties",
    "jerky",
    "tenderize",
    "vacuum",
    "package",
    "disposal",
    "over_30_months",
    "offal",
    "storage",
    "delivery",
    "delivery_miles",
    "hide_credit",
    "other",
)
"""Charges the words catalogue has names for (`charge.<code>`); a shop may add its own."""

OF_MEAT: Final = frozenset(CHARGE_CODES) - {
    "kill",
    "disposal",
    "over_30_months",
    "storage",
    "delivery",
    "delivery_miles",
    "hide_credit",
    "other",
}
"""Charges for work on meat: none is owed where there is none."""

MOST_RATE: Final = Fraction(100_000)
"""A rate of $1,000 or more for one pound, package or mile is taken for a slip of the key."""
MOST_HEAD_RATE: Final = Fraction(10_000_000)
"""Likewise $100,000 for a head, a day or a whole order."""

_UNITS: Final[dict[Basis, Unit]] = {
    "per_head": "head",
    "per_lb_hot": "lb",
    "per_lb_hot_less_shrink": "lb",
    "per_lb_chilled": "lb",
    "per_lb_in": "lb",
    "per_lb_finished": "lb",
    "per_package": "package",
    "flat": "each",
    "per_day": "day",
    "per_mile": "mile",
}


@dataclass(frozen=True, slots=True)
class Step:
    """What lies above that much costs this rate instead.

    Storage free for five days, then $5 a day: rate 0 and Step(5, 500).
    """

    above: Fraction
    rate: Fraction


@dataclass(frozen=True, slots=True)
class AppliesTo:
    """What a charge is limited to; an empty list limits nothing, of a list any one will do.

    `cuts`, `kinds` and `finishes` look at order lines: a charge on made goods counts only the
    lines that match, any other charge is billed only to owners who have such a line. `ages`, and
    the hot pounds of the whole animal from `hot_from` up to but not including `hot_below`, look
    at the animal and limit only charges by head or by hanging weight.
    """

    cuts: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    finishes: tuple[str, ...] = ()
    ages: tuple[Age, ...] = ()
    hot_from: Fraction | None = None
    hot_below: Fraction | None = None

    @property
    def by_line(self) -> bool:
        """Whether it looks at the order's lines."""
        return bool(self.cuts or self.kinds or self.finishes)

    @property
    def by_weight(self) -> bool:
        """Whether it looks at what the animal weighs."""
        return self.hot_from is not None or self.hot_below is not None


@dataclass(frozen=True, slots=True)
class Charge:
    """One line of a rate card.

    `name` is the shop's own words, "" for those of the catalogue. A `minimum` holds for each
    animal, for a part of one in proportion, or with `per_share_minimum` for each owner's share.
    `falls_to` says who pays: the share's owner, or the producer who brought the animal. `steps`
    are counted for each animal where the charge is divided, else for each order. `shrink` is
    taken off the hot weight for "per_lb_hot_less_shrink". A `credit` is taken off the bill (the
    hide's price). An `asked` charge is billed only where the order asks for it.
    """

    code: str
    basis: Basis
    rate: Fraction
    name: str = ""
    minimum: int = 0
    per_share_minimum: bool = False
    tax_rate: Fraction = Fraction(0)
    falls_to: Literal["owner", "producer"] = "owner"
    applies_to: AppliesTo = AppliesTo()
    steps: tuple[Step, ...] = ()
    shrink: Fraction = Fraction(0)
    credit: bool = False
    asked: bool = False

    @property
    def unit(self) -> Unit:
        """What the rate is for one of."""
        return _UNITS[self.basis]


@dataclass(frozen=True, slots=True)
class LateTerms:
    """Interest on late payment: so many days without it, a rate for a year, a least amount.

    Interest below `least_cents` isn't billed at all.
    """

    free_days: int = 30
    yearly_rate: Fraction = Fraction(0)
    least_cents: int = 0


@dataclass(frozen=True, slots=True)
class RateCard:
    """The shop's rates from a day on; an empty species, regime or group stands for all.

    `id` is the store's, 0 while it isn't kept. `late` None: no interest on late payment.
    """

    code: str
    name: str
    holds_from: date
    species: tuple[str, ...] = ()
    regime: Regime | Literal[""] = ""
    group: str = ""
    charges: tuple[Charge, ...] = ()
    id: int = 0
    late: LateTerms | None = None


def card_for(
    cards: Sequence[RateCard],
    day: date,
    *,
    species: str = "",
    regime: str = "",
    group: str = "",
) -> RateCard | None:
    """The card that holds on a day for such an animal and customer, or None.

    The most particular card wins (customer group before regime before species), of those the one
    that holds from the latest day, and of those the one kept last.
    """
    fitting = [
        card
        for card in cards
        if card.holds_from <= day
        and (not card.species or species in card.species)
        and card.regime in ("", regime)
        and card.group in ("", group)
    ]
    return max(
        fitting,
        key=lambda card: (
            card.group != "",
            card.regime != "",
            card.species != (),
            card.holds_from,
            card.id,
        ),
        default=None,
    )


def check_card(card: RateCard) -> tuple[BillingProblem, ...]:
    """All that is wrong with a card, in the order of its charges; empty when it can be used.

    A kill charge of −$5 gives "rate_negative" with the charge's code.
    """
    problems = [] if card.code.strip() else [BillingProblem("code_missing")]
    if card.late is not None:
        problems += check_terms(card.late)
    seen: set[str] = set()
    for charge in card.charges:
        if charge.code in seen:
            problems.append(BillingProblem("same_code", {"charge": charge.code}))
        seen.add(charge.code)
        problems.extend(
            BillingProblem(code, {"charge": charge.code, **data})
            for code, data in _charge_faults(charge)
        )
    return tuple(problems)


def check_terms(terms: LateTerms) -> tuple[BillingProblem, ...]:
    """What is wrong with them; half of the debt a year and more is taken for a slip of the key."""
    found: list[BillingProblem] = []
    if terms.yearly_rate < 0 or terms.least_cents < 0:
        found.append(BillingProblem("rate_negative", {"rate": str(terms.yearly_rate)}))
    if terms.yearly_rate >= Fraction(1, 2):
        found.append(BillingProblem("rate_absurd", {"rate": str(terms.yearly_rate)}))
    if terms.free_days < 0:
        found.append(BillingProblem("days_negative", {"days": str(terms.free_days)}))
    return tuple(found)


def _charge_faults(charge: Charge) -> Iterator[tuple[str, dict[str, str]]]:
    if not charge.code or ":" in charge.code or charge.code != charge.code.strip():
        yield "bad_code", {}
    yield from _rate_faults(charge)
    if charge.minimum < 0:
        yield "minimum_negative", {}
    if charge.per_share_minimum and not charge.minimum:
        yield "minimum_per_share", {}
    if charge.tax_rate < 0:
        yield "tax_negative", {}
    if charge.tax_rate >= 1:
        yield "tax_absurd", {"tax": str(charge.tax_rate)}
    limits = (Fraction(0), *(step.above for step in charge.steps))
    if any(low >= high for low, high in pairwise(limits)):
        yield "steps_not_rising", {}
    if (charge.basis == "per_lb_hot_less_shrink") != (charge.shrink > 0):
        yield "shrink_missing", {}
    if not 0 <= charge.shrink < Fraction(1, 5):
        yield "shrink_absurd", {"shrink": str(charge.shrink)}
    low, high = charge.applies_to.hot_from, charge.applies_to.hot_below
    if low is not None and high is not None and low >= high:
        yield "weights_crossed", {}


def _rate_faults(charge: Charge) -> Iterator[tuple[str, dict[str, str]]]:
    most = MOST_HEAD_RATE if charge.unit in ("head", "each", "day") else MOST_RATE
    for rate in (charge.rate, *(step.rate for step in charge.steps)):
        if rate < 0:
            yield "rate_negative", {"rate": str(rate)}
        elif rate >= most:
            yield "rate_absurd", {"rate": _shown(rate)}


def _shown(rate: Fraction) -> str:
    try:
        return rate_text(rate)
    except ValueError:
        return str(rate)
