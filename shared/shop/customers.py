"""The people the shop works for, and how they are found again by name and phone."""

import unicodedata
from dataclasses import dataclass

# Letters that carry no separate accent, so that decomposing them leaves them as they are.
PLAIN_LETTERS = str.maketrans(
    {"ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "æ": "ae", "œ": "oe", "ı": "i"}
)


@dataclass(frozen=True, slots=True)
class Customer:
    """A customer or producer. `address` may have several lines, `group` picks the rate card.

    `joined_into` is the customer this one turned out to be; its rows stay its own.
    """

    id: int = 0
    name: str = ""
    phone: str = ""
    email: str = ""
    address: str = ""
    notes: str = ""
    group: str = ""
    language: str = "en"
    joined_into: int | None = None
    version: int = 0


def name_key(text: str) -> str:
    """The text as it is searched: small letters, no accents, single spaces.

    `name_key("  Jørgen  MÜLLER ")` is `"jorgen muller"`.
    """
    small = unicodedata.normalize("NFKD", text.casefold()).translate(PLAIN_LETTERS)
    return " ".join("".join(one for one in small if not unicodedata.combining(one)).split())


def phone_digits(text: str) -> str:
    """Only the digits of a phone number: `"(555) 010-0123"` gives `"5550100123"`."""
    return "".join(one for one in text if one.isascii() and one.isdigit())


def town(address: str) -> str:
    """The last line of an address, which lists show; `""` when there is none."""
    lines = [one.strip() for one in address.splitlines() if one.strip()]
    return lines[-1] if lines else ""
