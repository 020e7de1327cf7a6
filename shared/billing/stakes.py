"""Who has how much of each charge: the sets of owners whose amounts are worked out together.

The owners on the same rate form one set: of an animal for charges by head or hanging weight, of
all animals they share for goods made. Any other charge is each order's own.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.billing.ended import all_ended, stands
from shared.billing.lot import BilledLot, BilledShare
from shared.billing.problems import BillingProblem
from shared.billing.quantities import (
    HangingWeights,
    MadeLine,
    WeightKind,
    hanging_weights,
    head_fraction,
    matching,
)
from shared.billing.rates import HANGING, MADE, Charge
from shared.shop.holdings import check_shares, whole
from shared.shop.lots import LotShare

WaitsFor = Literal["", "hot", "chilled", "packages", "pounds_in", "not_weighed"]
PRODUCER = 0
"""The share number that stands for the producer in divisions and bills."""


@dataclass(frozen=True, slots=True)
class Stake:
    """One share's quantity of a charge; None waits for what `waits_for` says.

    `heads` is what the share has of the animals concerned, by head. `before` and `rounds` are of
    what is asked for again (`Asked`).
    """

    share: int
    quantity: Fraction | None
    heads: Fraction
    waits_for: WaitsFor = ""
    by_table: bool = False
    estimated: bool = False
    before: Fraction = Fraction(0)
    rounds: int = 0


@dataclass(frozen=True, slots=True)
class ChargeSet:
    """A charge and the shares it is worked out for together; animal 0 is the whole lot."""

    charge: Charge
    animal: int
    stakes: tuple[Stake, ...]
    to_producer: bool = False

    @property
    def key(self) -> str:
        """How the division is kept: "kill:1"."""
        return f"{self.charge.code}:{self.animal}"


Weights = Mapping[tuple[WeightKind, int], HangingWeights]


def charge_sets(lot: BilledLot) -> tuple[ChargeSet, ...] | BillingProblem:
    """All sets of a lot, in the order of the cards' charges.

    "producer_card_lacks": an owner's card leaves a charge to the producer, whose card hasn't it.
    """
    weights = lot_weights(lot)
    if isinstance(weights, BillingProblem):
        return weights
    card = lot.the_producers_card
    producers = () if card is None else card.charges
    his = [charge for charge in producers if charge.falls_to == "producer"]
    codes = {charge.code for charge in his}
    sets = [one for charge in his for one in _producer_sets(lot, charge, weights)]
    groups: dict[Charge, list[BilledShare]] = {}
    for share in lot.shares:
        for charge in share.card.charges:
            if charge.code in codes:
                continue
            if charge.falls_to == "producer":
                data = {"charge": charge.code, "share": str(share.number)}
                return BillingProblem("producer_card_lacks", data)
            groups.setdefault(charge, []).append(share)
    for charge, members in groups.items():
        sets.extend(_owner_sets(lot, charge, members, weights))
    return tuple(sets)


def lot_weights(lot: BilledLot) -> Weights | BillingProblem:
    """Hanging weights by kind and share; share 0 holds every animal whole.

    "shares_over": a place on an animal is held by more than one share; "no_such_animal".
    """
    if not 0 < lot.fore_share < 1:
        return BillingProblem("fore_share_absurd", {"fore_share": str(lot.fore_share)})
    sold_twice = _sold_twice(lot)
    if sold_twice is not None:
        return sold_twice
    every = [one for place in range(len(lot.animals)) for one in whole(place)]
    held = [(share.number, share.holdings) for share in lot.shares] + [(PRODUCER, tuple(every))]
    kinds: tuple[WeightKind, ...] = ("hot", "chilled")
    weights: dict[tuple[WeightKind, int], HangingWeights] = {}
    for kind in kinds:
        for number, holdings in held:
            found = hanging_weights(lot.animals, holdings, kind, lot.fore_share, lot.expected)
            if isinstance(found, BillingProblem):
                return found
            weights[kind, number] = found
    return weights


def _sold_twice(lot: BilledLot) -> BillingProblem | None:
    shares = [LotShare(one.number, None, holdings=one.holdings) for one in lot.shares]
    for fault in check_shares(len(lot.animals), shares):
        if fault.code == "over":
            data = {"animal": str(fault.carcass + 1), "side": str(fault.side)}
            return BillingProblem("shares_over", data)
    return None


def _owner_sets(
    lot: BilledLot, charge: Charge, members: Sequence[BilledShare], weights: Weights
) -> Iterator[ChargeSet]:
    if charge.basis in MADE:
        for together in _sharing(members):
            stakes = [_made_stake(lot, charge, share) for share in together]
            yield from _set(charge, 0, [one for one in stakes if one is not None])
    elif charge.basis == "per_head" or charge.basis in HANGING:
        for place in range(len(lot.animals)):
            yield from _set(charge, place + 1, _animal_stakes(lot, charge, place, members, weights))
    else:
        for share in members:
            yield from _set(charge, 0, _order_stake(lot, charge, share))


def _producer_sets(lot: BilledLot, charge: Charge, weights: Weights) -> Iterator[ChargeSet]:
    """The producer pays once for all shares together; what is flat, once for the lot."""
    if charge.basis in MADE:
        made = [_made_stake(lot, charge, share) for share in lot.shares]
        yield from _set(charge, 0, [one for one in made if one is not None], to_producer=True)
    elif charge.basis == "per_head" or charge.basis in HANGING:
        for place in range(len(lot.animals)):
            stakes = _animal_stakes(lot, charge, place, lot.shares, weights)
            yield from _set(charge, place + 1, stakes, to_producer=True)
    else:
        owed = [stake for share in lot.shares for stake in _order_stake(lot, charge, share)]
        stakes = owed if charge.asked else owed[:1]
        yield from _set(charge, 0, stakes, to_producer=True)


def _set(
    charge: Charge, animal: int, stakes: Sequence[Stake], *, to_producer: bool = False
) -> Iterator[ChargeSet]:
    if stakes:
        ordered = tuple(sorted(stakes, key=lambda stake: stake.share))
        yield ChargeSet(charge, animal, ordered, to_producer)


def _animal_stakes(
    lot: BilledLot,
    charge: Charge,
    place: int,
    members: Sequence[BilledShare],
    weights: Weights,
) -> list[Stake]:
    animal, limits = lot.animals[place], charge.applies_to
    if limits.ages and animal.age not in limits.ages:
        return []
    how, kind = lot.ended_of(place), _weight_kind(charge)
    hot = weights["hot", PRODUCER].of(place)
    if not stands(charge, how, weighed=weights[kind, PRODUCER].of(place) is not None):
        return []
    unsure = False
    if limits.by_weight:
        unsure = hot is None
        if how and unsure:  # it will never be weighed
            return []
        if hot is not None and not _within(hot, limits.hot_from, limits.hot_below):
            return []
    stakes: list[Stake] = []
    for share in members:
        heads = head_fraction(share.holdings, place)
        if heads and _lets_in(charge, share):
            stake = _animal_stake(charge, share, place, heads, weights)
            stakes.append(Stake(share.number, None, heads, "hot") if unsure else stake)
    return stakes


def _animal_stake(
    charge: Charge, share: BilledShare, place: int, heads: Fraction, weights: Weights
) -> Stake:
    if charge.basis == "per_head":
        return Stake(share.number, heads, heads)
    kind = _weight_kind(charge)
    held = [one for one in weights[kind, share.number].held if one.carcass == place]
    own = HangingWeights(kind, tuple(held))
    pounds = own.pounds
    return Stake(
        share=share.number,
        quantity=None if pounds is None else pounds * (1 - charge.shrink),
        heads=heads,
        waits_for=kind if pounds is None else "",
        by_table=own.by_table,
        estimated=own.estimated,
    )


def _weight_kind(charge: Charge) -> WeightKind:
    return "chilled" if charge.basis == "per_lb_chilled" else "hot"


def _made_stake(lot: BilledLot, charge: Charge, share: BilledShare) -> Stake | None:
    lines = _lines(charge, share)
    heads = sum(
        (head_fraction(share.holdings, place) for place in range(len(lot.animals))), Fraction(0)
    )
    estimated = any(line.estimated for line in lines)
    if not lines or (_all_gone(lot, share) and not any(line.packages for line in lines)):
        return None
    if charge.basis == "per_lb_in":
        if any(line.into is None for line in lines):
            return Stake(share.number, None, heads, "pounds_in")
        pounds = sum((line.into for line in lines if line.into is not None), Fraction(0))
        return Stake(share.number, pounds, heads, estimated=estimated)
    if not all(line.complete for line in lines):
        return Stake(share.number, None, heads, "packages")
    if charge.basis == "per_package":
        count = Fraction(sum(line.packages for line in lines))
        return Stake(share.number, count, heads, estimated=estimated)
    if any(line.not_weighed for line in lines):
        return Stake(share.number, None, heads, "not_weighed")
    finished = sum((line.finished for line in lines), Fraction(0))
    return Stake(share.number, finished, heads, estimated=estimated)


def _all_gone(lot: BilledLot, share: BilledShare) -> bool:
    return all_ended(lot.ended_of(one.carcass) for one in share.holdings)


def _order_stake(lot: BilledLot, charge: Charge, share: BilledShare) -> list[Stake]:
    """Days, miles and flat charges: what was asked for, else once for a flat one.

    Of animals that all ended before they were cut a flat one is owed if it is of any of them.
    """
    asked = [one for one in share.asked if one.code == charge.code]
    if not _lets_in(charge, share):
        return []
    if asked:
        much = sum((one.quantity for one in asked), Fraction(0))
        before = max(one.before for one in asked)
        rounds = max(one.rounds for one in asked)
        return [Stake(share.number, much, Fraction(1), before=before, rounds=rounds)]
    if charge.asked or charge.basis != "flat":
        return []
    if not any(stands(charge, lot.ended_of(one.carcass)) for one in share.holdings):
        return []
    return [Stake(share.number, Fraction(1), Fraction(1))]


def _lets_in(charge: Charge, share: BilledShare) -> bool:
    """Whether the order has a line the charge is limited to, and asked for it if it must."""
    if charge.asked and all(one.code != charge.code for one in share.asked):
        return False
    return not charge.applies_to.by_line or bool(_lines(charge, share))


def _lines(charge: Charge, share: BilledShare) -> tuple[MadeLine, ...]:
    limits = charge.applies_to
    return matching(share.made, limits.cuts, limits.kinds, limits.finishes)


def _within(pounds: Fraction, low: Fraction | None, high: Fraction | None) -> bool:
    return (low is None or pounds >= low) and (high is None or pounds < high)


def _sharing(members: Sequence[BilledShare]) -> list[list[BilledShare]]:
    """The shares in groups that have animals in common."""
    groups: list[tuple[set[int], list[BilledShare]]] = []
    for share in members:
        animals = {holding.carcass for holding in share.holdings}
        together = [share]
        apart: list[tuple[set[int], list[BilledShare]]] = []
        for theirs, others in groups:
            if theirs & animals:
                animals |= theirs
                together = [*others, *together]
            else:
                apart.append((theirs, others))
        groups = [*apart, (animals, together)]
    return [together for _, together in groups]
