"""What is doubtful about a card among the others: days that no card covers, two from one day."""

from collections.abc import Callable, Collection, Mapping, Sequence
from datetime import date, timedelta
from fractions import Fraction
from typing import TYPE_CHECKING

from shared.billing.card_dates import check_cards
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard
from shared.carcass.anatomy import species

if TYPE_CHECKING:
    from printing.words import Words
    from shared.billing.rates import Charge

STEEP_RATE = Fraction(2_500)
"""A rate of $25 or more for a pound, package or mile is asked about: common practice, no source."""
STEEP_HEAD_RATE = Fraction(250_000)
"""Likewise $2,500 for a head, a day or a whole order."""
MOST_GAPS = 3
"""So many species without a card are named; one more sentence would be read by nobody."""
BACK = timedelta(days=60)
"""Animals of the last two months may still be billed."""


def doubts(
    card: RateCard,
    cards: Sequence[RateCard],
    today: date,
    sentence: Callable[[str, Mapping[str, str]], str],
    booked: Collection[tuple[str, date]] = (),
) -> str:
    """The doubts that come with this card, as sentences; "" for none.

    Looked at are the days from two months ago to the card's own, or to today if that is later.
    With one card, from 1 April, kept on 1 March, 31 December to 31 March have none. Species that
    had no card before and that this card isn't for are no doubt of this card, nor are the others'
    days of a card for one group or for inspected animals alone. Days that are over are no doubt
    where no animal of the species was `booked` on one: a shop's first card has none behind it.
    """
    particular = bool(card.group) or card.regime == "inspected"
    mine = () if particular else card.species or species()
    start, end = today - BACK, max(today, card.holds_from)
    found = [
        one
        for one in check_cards((*cards, card), start, end, mine)
        if one.code != "no_card_then" or _matters(one, today, booked)
    ]
    said = [
        sentence(one.code, one.data)
        for one in found
        if one.code == "no_card_then" or card.name in (one.data["card"], one.data["other"])
    ]
    gaps = len([one for one in found if one.code == "no_card_then"])
    return " ".join([*said[: min(gaps, MOST_GAPS)], *said[gaps:]])


def _matters(gap: BillingProblem, today: date, booked: Collection[tuple[str, date]]) -> bool:
    """Whether a day without a card is still to come, or an animal was booked on one."""
    start, end = (date.fromisoformat(gap.data[name]) for name in ("start", "end"))
    kind = gap.data["species"]
    return end >= today or any(one == kind and start <= day <= end for one, day in booked)


def steep(card: RateCard) -> "tuple[tuple[Charge, Fraction], ...]":
    """Charges with a rate that is a slip of the key more likely than a price, and that rate.

    68 typed for 68¢ a pound is $68.00: it would bill a beef of 750 lb $51,000.
    """
    rates = [(one, max((one.rate, *(step.rate for step in one.steps)))) for one in card.charges]
    return tuple(
        (one, rate)
        for one, rate in rates
        if rate >= (STEEP_HEAD_RATE if one.unit in ("head", "each", "day") else STEEP_RATE)
    )


def never_there(card: RateCard, words: "Words") -> "tuple[Charge, ...]":
    """The charges limited to single cuts of which the card's animals have none.

    A card for lambs with a charge for bacon would never bill it; a card for all animals has all.
    """
    return tuple(
        one
        for one in card.charges
        if card.species
        and one.applies_to.cuts
        and not any(
            words.has(f"cut.{cut}", animal)
            for cut in one.applies_to.cuts
            for animal in card.species
        )
    )
