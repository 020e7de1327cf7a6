"""Every account, every kind of entry and every refusal of the books has words in both languages."""

from typing import get_args

import pytest

from printing.words import Words
from shared.billing.accounts import CHART
from shared.shop.ledger import EntryKind

REFUSED = (
    "period_closed", "not_over", "closed_already", "not_openable", "customer_missing", "nothing",
    "not_yet", "more_than_there", "difference", "negative", "no_card_then", "two_cards",
    "days_negative",
)  # fmt: skip


@pytest.mark.parametrize("language", ["en", "es"])
def test_nothing_of_the_books_is_without_words(language: str) -> None:
    words = Words(language, strict=True)
    keys = [f"money.account_{account.replace(':', '_')}" for account in CHART]
    keys += [f"money.entry_{kind}" for kind in get_args(EntryKind)]
    keys += [f"money.problem_{code}" for code in REFUSED]
    assert [key for key in keys if not words.has(key)] == []


def test_a_refusal_says_what_to_do() -> None:
    said = Words("en", strict=True).say("money.problem_period_closed", through="2026-02-28")
    assert said == (
        "The books are closed through 2026-02-28. See that the computer's date is right."
    )
