"""The producer's statement to his buyers: his price for the animal, in his name, not the plant's.

The plant's bill carries the plant's services only. What a buyer pays for the meat in all is the
two papers together; `take_home` puts it beside the pounds he carries away.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.billing.canonical import text_of
from shared.billing.division import share_out
from shared.billing.lot import BilledLot, BilledShare
from shared.billing.problems import BillingProblem
from shared.billing.quantities import (
    HangingWeights,
    WeightKind,
    hanging_weights,
    head_fraction,
)
from shared.billing.rates import Basis, Charge
from shared.billing.stakes import ChargeSet, Stake
from shared.money import round_half_up

VERSION = 1
PriceBasis = Literal["per_lb_hot", "per_lb_chilled", "per_head", "per_share"]


@dataclass(frozen=True, slots=True)
class Price:
    """The farmer's price in cents: for a pound hanging, for the head, or for each share."""

    basis: PriceBasis
    rate: Fraction


@dataclass(frozen=True, slots=True)
class StatementLine:
    """One animal at the farmer's price; animal 0 is a price for the share as a whole."""

    animal: int
    tag: str
    basis: PriceBasis
    quantity: Fraction
    unit: Literal["lb", "head", "each"]
    rate: Fraction
    amount_cents: int


@dataclass(frozen=True, slots=True)
class Statement:
    """What one buyer owes the producer for his share of the animals."""

    producer: str
    owner: str
    share: int
    species: str
    animals: tuple[str, ...]
    hanging: HangingWeights
    lines: tuple[StatementLine, ...]
    deposit_cents: int = 0

    @property
    def total_cents(self) -> int:
        """The price of the share."""
        return sum(line.amount_cents for line in self.lines)

    @property
    def due_cents(self) -> int:
        """The price less what the buyer has paid the producer already."""
        return self.total_cents - self.deposit_cents


@dataclass(frozen=True, slots=True)
class TakeHome:
    """What the meat costs in all, for each pound carried home.

    `under_percent` is how far that lies under the retail price, whole per cent rounded half up;
    below nothing it lies over. None without a retail price.
    """

    total_cents: int
    pounds: Fraction
    per_lb_cents: int
    under_percent: int | None


def statement(
    lot: BilledLot, share: int, price: Price, *, deposit_cents: int = 0
) -> Statement | BillingProblem:
    """The statement to one buyer; all buyers' amounts add up to the animal's.

    819 lb hanging at $3.00 are $2,457.00. "weight_missing" names the animal that isn't weighed:
    a statement doesn't wait.
    """
    owner = lot.share(share)
    if owner is None:
        return BillingProblem("no_such_share", {"share": str(share)})
    if price.rate < 0:
        return BillingProblem("rate_negative", {"rate": str(price.rate)})
    kind: WeightKind = "chilled" if price.basis == "per_lb_chilled" else "hot"
    held: dict[int, HangingWeights] = {}
    for one in lot.shares:
        weights = hanging_weights(lot.animals, one.holdings, kind, lot.fore_share, lot.expected)
        if isinstance(weights, BillingProblem):
            return weights
        held[one.number] = weights
    lines = _lines(lot, owner, price, held)
    if isinstance(lines, BillingProblem):
        return lines
    places = sorted({holding.carcass for holding in owner.holdings})
    return Statement(
        producer=lot.producer,
        owner=owner.owner,
        share=share,
        species=lot.species,
        animals=tuple(lot.animals[place].tag for place in places),
        hanging=held[share],
        lines=lines,
        deposit_cents=deposit_cents,
    )


def take_home(cents: int, packaged: Fraction, retail: Fraction | None = None) -> TakeHome:
    """Both papers' cents over the pounds taken home, beside a retail price in cents a pound.

    $3,130.30 over 556.92 lb is $5.62 a pound, 22 % under $7.20. Raises ValueError for no pounds
    and for a retail price that isn't above nothing.
    """
    if packaged <= 0 or (retail is not None and retail <= 0):
        raise ValueError("a price a pound needs pounds and a retail price above nothing")
    exact = cents / packaged
    under = None if retail is None else round_half_up((1 - exact / retail) * 100)
    return TakeHome(cents, packaged, round_half_up(exact), under)


def statement_text(value: Statement) -> str:
    """The statement as canonical JSON, kept beside its paper."""
    return text_of(value, "statement", VERSION)


def _lines(
    lot: BilledLot, owner: BilledShare, price: Price, held: dict[int, HangingWeights]
) -> tuple[StatementLine, ...] | BillingProblem:
    if price.basis == "per_share":
        cents = round_half_up(price.rate)
        return (StatementLine(0, "", "per_share", Fraction(1), "each", price.rate, cents),)
    lines: list[StatementLine] = []
    for place, animal in enumerate(lot.animals):
        if not head_fraction(owner.holdings, place):
            continue
        one = ChargeSet(
            _as_charge(price.basis, price.rate), place + 1, _stakes(lot, price, place, held)
        )
        mine = next(part for part in share_out(one) if part.share == owner.number)
        if mine.cents is None or mine.quantity is None:
            return BillingProblem("weight_missing", {"tag": animal.tag, "animal": str(place + 1)})
        lines.append(
            StatementLine(
                animal=place + 1,
                tag=animal.tag,
                basis=price.basis,
                quantity=mine.quantity,
                unit="head" if price.basis == "per_head" else "lb",
                rate=price.rate,
                amount_cents=mine.cents,
            )
        )
    return tuple(lines)


def _stakes(
    lot: BilledLot, price: Price, place: int, held: dict[int, HangingWeights]
) -> tuple[Stake, ...]:
    stakes: list[Stake] = []
    for share in sorted(lot.shares, key=lambda one: one.number):
        heads = head_fraction(share.holdings, place)
        if heads:
            quantity = heads if price.basis == "per_head" else held[share.number].of(place)
            stakes.append(Stake(share.number, quantity, heads))
    return tuple(stakes)


def _as_charge(basis: Basis, rate: Fraction) -> Charge:
    return Charge("price", basis, rate)
