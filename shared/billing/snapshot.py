"""A bill as canonical JSON, kept beside its paper, and back."""

from shared.billing.bill import Bill
from shared.billing.canonical import read_text, text_of
from shared.billing.problems import BillingProblem

VERSION = 1


def snapshot(bill: Bill) -> str:
    """The bill whole; two equal bills give one text, byte for byte."""
    return text_of(bill, "bill", VERSION)


def from_snapshot(text: str) -> Bill | BillingProblem:
    """The bill kept in a text, or "damaged" (with the place) or "too_new"."""
    return read_text(text, "bill", VERSION, Bill)
