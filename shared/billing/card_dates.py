"""Whether the cards cover every day: holes in their dates, and two that hold from the same day."""

from collections.abc import Sequence
from datetime import date, timedelta

from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard


def uncovered(
    cards: Sequence[RateCard],
    start: date,
    end: date,
    *,
    species: str,
    regime: str = "",
    group: str = "",
) -> tuple[date, date] | None:
    """The days of a span on which no card holds for such an animal and customer, or None.

    A card holds until a later one does, so a hole lies before the first: with one card from
    1 March the span from 1 January to 30 June lacks 1 January to 28 February.
    """
    first = min(
        (
            card.holds_from
            for card in cards
            if (not card.species or species in card.species)
            and card.regime in ("", regime)
            and card.group in ("", group)
        ),
        default=None,
    )
    if first is None or first > end:
        return start, end
    return None if first <= start else (start, first - timedelta(days=1))


def check_cards(
    cards: Sequence[RateCard], start: date, end: date, species: Sequence[str]
) -> tuple[BillingProblem, ...]:
    """What is wrong with the cards together for the days of a span.

    "no_card_then" names a species and the days without a card; "two_cards" two cards for the same
    animals and customers from the same day, of which the one kept last would win.
    """
    problems: list[BillingProblem] = []
    for one in species:
        lacking = uncovered(cards, start, end, species=one, regime="custom")
        if lacking is not None:
            first, last = (day.isoformat() for day in lacking)
            data = {"species": one, "start": first, "end": last}
            problems.append(BillingProblem("no_card_then", data))
    seen: dict[tuple[date, frozenset[str], str, str], RateCard] = {}
    for card in cards:
        scope = card.holds_from, frozenset(card.species), card.regime, card.group
        other = seen.setdefault(scope, card)
        if other is not card:
            data = {"card": card.name, "other": other.name, "day": card.holds_from.isoformat()}
            problems.append(BillingProblem("two_cards", data))
    return tuple(problems)
