"""The language a customer's papers speak: his own where it is kept and spoken."""

from typing import TYPE_CHECKING

from printing.words import LANGUAGES

if TYPE_CHECKING:
    from printing.words import Words
    from shared.shop.customers import Customer


def in_language(words: "Words", language: str) -> "Words":
    """The catalogue in a language; the shop's own names are of the window's."""
    from printing.words import Words as Catalogued

    return words if words.language == language else Catalogued(language)


def words_for(customer: "Customer | None", words: "Words") -> "Words":
    """The customer's language where it is kept and spoken, else the window's (`words`)."""
    if customer is None or customer.language not in LANGUAGES:
        return words
    return in_language(words, customer.language)
