"""Dividing each charge among its owners so that the shares add up to the animal to the cent.

A set's amount is worked out once on its total quantity and rounded half up; it is divided by
quantity (by share for charges by head), largest remainder, ties to the lower share number. The
division is kept when the first bill is issued, and what was kept wins from then on.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from shared.billing.lot import BilledLot, Division
from shared.billing.problems import BillingProblem
from shared.billing.rates import HANGING, MADE, Charge
from shared.billing.stakes import PRODUCER, ChargeSet, WaitsFor, charge_sets
from shared.money import round_half_up, split_cents

Rule = Literal["", "shared", "minimum", "steps", "kept", "reason"]


@dataclass(frozen=True, slots=True)
class Portion:
    """One share's part of a charge. cents None waits; a credit's cents are below nothing.

    `whole_quantity` and `whole_cents` are the set's where it has several owners. `fresh_cents` is
    what the division would be now where another one was kept.
    """

    charge: Charge
    animal: int
    share: int
    quantity: Fraction | None
    cents: int | None
    rule: Rule = ""
    waits_for: WaitsFor = ""
    whole_quantity: Fraction | None = None
    whole_cents: int | None = None
    by_table: bool = False
    estimated: bool = False
    fresh_cents: int | None = None
    rounds: int = 0

    @property
    def key(self) -> str:
        """How the division is kept: "kill:1"; on a second bill of it "storage:0:2"."""
        again = f":{self.rounds + 1}" if self.rounds else ""
        return f"{self.charge.code}:{self.animal}{again}"


def divide(lot: BilledLot) -> tuple[Division, ...] | BillingProblem:
    """Every division of the lot that waits for nothing, as it is to be kept.

    A $50.01 kill charge on two halves is $25.01 for share 1 and $25.00 for share 2.
    """
    found = portions(lot)
    if isinstance(found, BillingProblem):
        return found
    return tuple(
        Division(one.key, one.share, one.cents)
        for one in found
        if one.cents is not None and not one.estimated and _divided(one.charge)
    )


def new_divisions(lot: BilledLot) -> tuple[Division, ...] | BillingProblem:
    """What `divide` gives beyond what the lot has kept: the rows to keep with the next bill."""
    found = divide(lot)
    if isinstance(found, BillingProblem):
        return found
    kept = {(one.charge, one.share) for one in lot.kept}
    return tuple(one for one in found if (one.charge, one.share) not in kept)


def portions(lot: BilledLot) -> tuple[Portion, ...] | BillingProblem:
    """What every share and the producer has to pay of every charge."""
    sets = charge_sets(lot)
    if isinstance(sets, BillingProblem):
        return sets
    kept = {(one.charge, one.share): one.cents for one in lot.kept}
    return tuple(portion for one in sets for portion in settle(one, kept))


def settle(one: ChargeSet, kept: Mapping[tuple[str, int], int]) -> tuple[Portion, ...]:
    """The portions of one set; what was kept stays, the rest is divided among the others.

    Where all that was kept is what today's division gives, the others have theirs of it too: two
    halves of $14.08 that are billed one after the other stay $7.04 each.
    """
    fresh = share_out(one)
    if one.to_producer:
        fresh = (_gathered(fresh),) if fresh else ()
    held = {part.share for part in fresh if (one.key, part.share) in kept}
    if not held:
        return fresh
    if all(part.cents == kept[one.key, part.share] for part in fresh if part.share in held):
        return fresh
    rest = replace(one, stakes=tuple(stake for stake in one.stakes if stake.share not in held))
    others = {} if one.to_producer else {part.share: part for part in share_out(rest)}
    return tuple(
        _as_kept(part, kept[one.key, part.share]) if part.share in held else others[part.share]
        for part in fresh
    )


def share_out(one: ChargeSet) -> tuple[Portion, ...]:
    """A set divided among its owners.

    On an animal everybody waits until every weight is there, because the amount is worked out on
    the total. For goods made, those whose packages are complete are divided and the others wait.
    """
    known = [stake for stake in one.stakes if stake.quantity is not None]
    if len(known) < len(one.stakes) and one.charge.basis not in MADE:
        known = []
    settled = {part.share: part for part in _parts(replace(one, stakes=tuple(known)))}
    waiting = _first(stake.waits_for for stake in one.stakes)
    return tuple(
        settled[stake.share]
        if stake.share in settled
        else Portion(
            charge=one.charge,
            animal=one.animal,
            share=stake.share,
            quantity=stake.quantity,
            cents=None,
            waits_for=stake.waits_for or waiting,
            by_table=stake.by_table,
            estimated=stake.estimated,
        )
        for stake in one.stakes
    )


def exact_amount(charge: Charge, quantity: Fraction, heads: Fraction = Fraction(1)) -> Fraction:
    """Cents for a quantity by rate and steps, before rounding and minimum.

    Seven days at nothing for five and $5 beyond are 1,000.
    """
    amount, below, rate = Fraction(0), Fraction(0), charge.rate
    for step in charge.steps:
        above = step.above * heads
        amount += rate * (min(quantity, above) - min(quantity, below))
        below, rate = above, step.rate
    return amount + rate * (quantity - min(quantity, below))


def _parts(one: ChargeSet) -> list[Portion]:
    """The set's amount, rounded once, and each owner's part of it."""
    charge, stakes = one.charge, one.stakes
    quantities = [stake.quantity or Fraction(0) for stake in stakes]
    quantity = sum(quantities, Fraction(0))
    if not quantity:
        return [Portion(charge, one.animal, stake.share, Fraction(0), 0) for stake in stakes]
    scale = sum((stake.heads for stake in stakes), Fraction(0)) if _divided(charge) else Fraction(1)
    before = max(stake.before for stake in stakes)
    exact = exact_amount(charge, quantity + before, scale)
    least = Fraction(0) if charge.per_share_minimum else charge.minimum * scale
    amount = round_half_up(max(exact, least))
    if before:
        amount -= round_half_up(max(exact_amount(charge, before, scale), least))
    cents = list(split_cents(amount, quantities))
    floor = charge.minimum if charge.per_share_minimum and not before else 0
    rules: list[Rule] = [
        _rule(one, exact < least or part < floor, quantity + before, scale) for part in cents
    ]
    paid = [max(part, floor) if own else part for part, own in zip(cents, quantities, strict=True)]
    sign = -1 if charge.credit else 1
    several = len(stakes) > 1
    return [
        Portion(
            charge=charge,
            animal=one.animal,
            share=stake.share,
            quantity=own,
            cents=sign * part,
            rule=rule,
            whole_quantity=quantity if several else None,
            whole_cents=sign * sum(paid) if several else None,
            by_table=stake.by_table,
            estimated=stake.estimated,
            rounds=max(stake.rounds for stake in stakes),
        )
        for stake, own, part, rule in zip(stakes, quantities, paid, rules, strict=True)
    ]


def _rule(one: ChargeSet, at_minimum: bool, quantity: Fraction, scale: Fraction) -> Rule:
    if at_minimum:
        return "minimum"
    steps = one.charge.steps
    if steps and quantity > steps[0].above * scale:
        return "steps"
    return "shared" if len(one.stakes) > 1 else ""


def _first(waits: Iterable[WaitsFor]) -> WaitsFor:
    for one in waits:
        if one:
            return one
    return ""


def _gathered(parts: Sequence[Portion]) -> Portion:
    """All owners' parts in one, for the producer."""
    first = parts[0]
    waiting = _first(part.waits_for for part in parts)
    quantities = [part.quantity for part in parts if part.quantity is not None]
    return replace(
        first,
        share=PRODUCER,
        quantity=None if waiting else sum(quantities, Fraction(0)),
        cents=None if waiting else sum(part.cents or 0 for part in parts),
        rule="" if first.rule == "shared" else first.rule,
        waits_for=waiting,
        whole_quantity=None,
        whole_cents=None,
        by_table=any(part.by_table for part in parts),
        estimated=any(part.estimated for part in parts),
    )


def _as_kept(part: Portion, cents: int) -> Portion:
    """The kept amount; told apart from today's where the two differ.

    Goods made may have been divided in another set, whose parts lie within a cent of these.
    """
    slack = 1 if part.charge.basis in MADE else 0
    if part.cents is not None and abs(part.cents - cents) <= slack:
        return replace(part, cents=cents)
    return replace(part, cents=cents, rule="kept", waits_for="", fresh_cents=part.cents)


def _divided(charge: Charge) -> bool:
    return charge.basis == "per_head" or charge.basis in HANGING or charge.basis in MADE
