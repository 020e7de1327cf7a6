"""Trying a card on animals already billed: every bill under the old card and the new, beside."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from shared.billing.bill import Bill, make_bill
from shared.billing.lot import BilledLot
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard, card_for
from shared.carcass.carcass import Regime


@dataclass(frozen=True, slots=True)
class TriedLot:
    """A lot to try the card on; `groups` are the owners' customer groups by share.

    The producer's own stands under 0.
    """

    number: int
    day: date
    regime: Regime
    billed: BilledLot
    groups: Mapping[int, str] = field(default_factory=dict[int, str])


@dataclass(frozen=True, slots=True)
class TriedBill:
    """One share's bill under the old card and under the new; a problem where there is none."""

    lot: int
    share: int
    owner: str
    old: Bill | BillingProblem
    new: Bill | BillingProblem

    @property
    def difference(self) -> int | None:
        """Cents more under the new card; None where one of the bills can't be made."""
        if isinstance(self.old, BillingProblem) or isinstance(self.new, BillingProblem):
            return None
        return self.new.total_cents - self.old.total_cents


@dataclass(frozen=True, slots=True)
class Trial:
    """All shares the card would hold for, and the sums of those that can be billed both ways."""

    bills: tuple[TriedBill, ...]
    old_cents: int
    new_cents: int


def try_card(new: RateCard, cards: Sequence[RateCard], lots: Iterable[TriedLot]) -> Trial:
    """What the card would have made of some lots, as if it had held on their days.

    A share the card isn't for (another species, regime or group, or a more particular card) is
    left out. What was divided before isn't kept: both bills are made afresh. 100 lb billed at
    $0.70 and tried at $0.75 is $70.00 beside $75.00.
    """
    rows: list[TriedBill] = []
    for lot in lots:
        old = replace(lot.billed, kept=())
        tried = _under(new, cards, lot)
        chosen = [one.number for one in tried.shares if one.card == _from(new, lot.day)]
        rows += [
            TriedBill(
                lot.number,
                number,
                next(one.owner for one in old.shares if one.number == number),
                make_bill(old, number),
                make_bill(tried, number),
            )
            for number in chosen
        ]
    both = [
        (row.old.total_cents, row.new.total_cents)
        for row in rows
        if isinstance(row.old, Bill) and isinstance(row.new, Bill)
    ]
    return Trial(tuple(rows), sum(old for old, _ in both), sum(new for _, new in both))


def _from(card: RateCard, day: date) -> RateCard:
    """The card as if it held on that day already, and were the last one kept."""
    return replace(card, holds_from=day)


def _under(new: RateCard, cards: Sequence[RateCard], lot: TriedLot) -> BilledLot:
    """The lot with the card wherever it would be the one that holds."""
    trial = _from(new, lot.day)
    others = [card for card in cards if card.id != new.id or not new.id]

    def card_of(share: int, now: RateCard) -> RateCard:
        found = card_for(
            [replace(one, id=0) for one in others] + [replace(trial, id=1)],
            lot.day,
            species=lot.billed.species,
            regime=lot.regime,
            group=lot.groups.get(share, ""),
        )
        return trial if found is not None and found.id == 1 else now

    shares = tuple(replace(one, card=card_of(one.number, one.card)) for one in lot.billed.shares)
    his = lot.billed.producer_card
    producer = lot.billed.producer_share
    card = None if his is None else card_of(producer or 0, his)
    return replace(lot.billed, shares=shares, kept=(), producer_card=card)
