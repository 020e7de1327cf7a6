"""What is doubtful about a card among the others: days that no card covers, two from one day."""

from collections.abc import Callable, Mapping, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from shared.billing.card_dates import check_cards
from shared.billing.rates import RateCard
from shared.carcass.anatomy import species

if TYPE_CHECKING:
    from printing.words import Words
    from shared.billing.rates import Charge

BACK = timedelta(days=60)
"""Animals of the last two months may still be billed."""


def doubts(
    card: RateCard,
    cards: Sequence[RateCard],
    today: date,
    sentence: Callable[[str, Mapping[str, str]], str],
) -> str:
    """The doubts that come with this card, as sentences; "" for none.

    Looked at are the days from two months ago to the card's own, or to today if that is later.
    With one card, from 1 April, kept on 1 March, 31 December to 31 March have none. Species that
    had no card before and that this card isn't for are no doubt of this card, nor are the others'
    days of a card for one group or for inspected animals alone.
    """
    particular = bool(card.group) or card.regime == "inspected"
    mine = () if particular else card.species or species()
    start, end = today - BACK, max(today, card.holds_from)
    found = check_cards((*cards, card), start, end, mine)
    said = [
        sentence(one.code, one.data)
        for one in found
        if one.code == "no_card_then" or card.name in (one.data["card"], one.data["other"])
    ]
    gaps = len([one for one in found if one.code == "no_card_then"])
    return " ".join(said if gaps <= 1 else [*said[:1], *said[gaps:]])


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
