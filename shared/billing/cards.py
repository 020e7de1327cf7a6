"""A rate card as text for the store, and back."""

from shared.billing.canonical import read_text, text_of
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard

VERSION = 2
ADDED = {1: {"late": None}}
"""What texts of an earlier version lack, and what it was then."""


def card_text(card: RateCard) -> str:
    """The card as canonical JSON; two equal cards give one text."""
    return text_of(card, "rate_card", VERSION)


def card_from_text(text: str) -> RateCard | BillingProblem:
    """The card kept in a text, or "damaged" (with the place) or "too_new"."""
    return read_text(text, "rate_card", VERSION, RateCard, ADDED)
